package merese.answer.vocabulary;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Optional;
import merese.answer.Coverage;
import merese.answer.Coverage.ConceptLine;
import merese.answer.CoverageQuestion;
import merese.answer.Covers;
import merese.model.Concept;
import merese.model.Homonym;
import merese.model.Mine.Coinage;
import merese.model.Mine.Preference;
import merese.shelf.Shelf;
import merese.vocabulary.Thesaurus;

/**
 * All that is known of one concept.
 *
 * @param concept as it stands in the vocabulary
 * @param label the preferred one, with its scope
 * @param preference the label that the user prefers, and why
 * @param coined labels of the user's own
 * @param broader directly, in the concept's order
 * @param narrower directly, in the vocabulary's order
 * @param register the homonyms of which it is a meaning
 * @param coverage what the sources have on it; {@link Coverage.Section#howToTell} has the
 *     look-alikes, whichever side states them
 */
public record ConceptSheet(
    Concept concept,
    String label,
    Optional<Preference> preference,
    List<Coinage> coined,
    List<ConceptLine> broader,
    List<ConceptLine> narrower,
    List<Register> register,
    Coverage coverage) {

  /**
   * A word that is never guessed at.
   *
   * @param others what else it may mean
   * @param remark a meaning outside the vocabulary
   */
  public record Register(String word, List<ConceptLine> others, Optional<String> remark) {}

  /**
   * Reads it.
   *
   * @throws merese.answer.UnknownConceptException where there is no such concept
   */
  public static ConceptSheet of(Shelf shelf, String id) {
    return shelf.ask(s -> read(s, id));
  }

  private static ConceptSheet read(Shelf shelf, String id) {
    Coverage coverage = Covers.answer(shelf, CoverageQuestion.ofConcept(id));
    Thesaurus thesaurus = shelf.thesaurus();
    Concept concept = thesaurus.concept(id).orElseThrow();
    List<Register> register = new ArrayList<>();
    for (Homonym homonym : thesaurus.register()) {
      if (homonym.concepts().contains(id)) {
        List<String> others = new ArrayList<>(homonym.concepts());
        others.remove(id);
        register.add(new Register(homonym.word(), lines(thesaurus, others), homonym.remark()));
      }
    }
    return new ConceptSheet(
        concept,
        Thesaurus.display(concept.preferred()),
        shelf.mine().preferences().stream().filter(p -> p.concept().equals(id)).findFirst(),
        shelf.mine().coinages().stream().filter(c -> c.concept().equals(id)).toList(),
        lines(thesaurus, concept.broader()),
        lines(thesaurus, thesaurus.children(id)),
        register,
        coverage);
  }

  private static List<ConceptLine> lines(Thesaurus thesaurus, Collection<String> ids) {
    return ids.stream().map(id -> new ConceptLine(id, thesaurus.label(id))).toList();
  }
}
