package merese.answer;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import merese.answer.Coverage.Heading;
import merese.shelf.Shelf;

/**
 * What the user has to settle of a term of several meanings, where one is needed.
 *
 * @param reason why it has to be asked
 * @param remark a meaning outside the vocabulary
 * @param meanings the likeliest first; two or more
 */
public record Choice(String term, String reason, Optional<String> remark, List<Heading> meanings) {

  /**
   * The choices among some terms; none for a concept's id, or for a word of one meaning or of none.
   *
   * @param facets whether a term may be a facet, which stands for all its concepts
   */
  public static List<Choice> among(Shelf shelf, List<String> terms, boolean facets) {
    return shelf.ask(asked -> all(asked, terms, facets));
  }

  private static List<Choice> all(Shelf shelf, List<String> terms, boolean facets) {
    List<Choice> choices = new ArrayList<>();
    for (String term : terms) {
      boolean whole = facets && shelf.thesaurus().facet(term).isPresent();
      if (!whole && shelf.thesaurus().concept(term).isEmpty()) {
        Interpretation meant = Interpretation.of(shelf, CoverageQuestion.of(term));
        meant.ask().ifPresent(ask -> choices.add(of(shelf, term, ask, meant)));
      }
    }
    return choices;
  }

  private static Choice of(Shelf shelf, String term, Coverage.Ask ask, Interpretation meant) {
    List<Heading> meanings = new ArrayList<>();
    meant.concepts().forEach(id -> meanings.add(Headings.of(shelf, id)));
    return new Choice(term, ask.reason(), ask.remark(), meanings);
  }
}
