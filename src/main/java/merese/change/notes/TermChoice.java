package merese.change.notes;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import merese.change.ChangeRefusedException;
import merese.model.Naming;
import merese.model.Naming.Why;
import merese.model.Nearest;
import merese.shelf.Lexicon;
import merese.shelf.TermMeaning;
import merese.vocabulary.NearTerm;
import merese.vocabulary.PossibleMeaning;
import merese.vocabulary.Thesaurus;

/**
 * What a printed term is taken to mean.
 *
 * @param naming unassigned where the term is unknown, or somebody has to choose
 * @param choices the concepts to choose from; none where nobody has to
 * @param reason why somebody has to choose; "" where nobody has to
 * @param maybe what an unknown term may mean, as its words hold a label, or are near one
 */
public record TermChoice(Naming naming, List<Choice> choices, String reason, List<Choice> maybe) {
  private static final int MOST_NEAR = 3;

  public TermChoice {
    choices = List.copyOf(choices);
    maybe = List.copyOf(maybe);
  }

  /** A concept with what it is called. */
  public record Choice(String concept, String label, String definition) {
    static Choice of(Thesaurus thesaurus, String id) {
      return new Choice(id, thesaurus.label(id), thesaurus.concept(id).orElseThrow().definition());
    }

    /** In one line. */
    public String words() {
      return label + " (" + concept + "): " + definition;
    }
  }

  /**
   * The meaning of a term as its words give it (R7).
   *
   * @param facet the heading that it stands under
   */
  public static TermChoice of(Lexicon lexicon, String printed, Optional<String> facet) {
    Thesaurus thesaurus = lexicon.thesaurus();
    if (facet.isPresent() && thesaurus.facet(facet.get()).isEmpty()) {
      List<String> ids = thesaurus.facets().stream().map(f -> f.id()).toList();
      throw new ChangeRefusedException(
          "there is no facet \"" + facet.get() + "\"; the facets are " + String.join(", ", ids));
    }
    Naming unassigned = new Naming(printed, Optional.empty(), Optional.empty());
    if (printed.isBlank()) {
      return new TermChoice(unassigned, List.of(), "", List.of());
    }
    TermMeaning meaning = TermMeaning.of(lexicon, printed, facet);
    List<Choice> choices = new ArrayList<>();
    for (String id : meaning.concepts()) {
      choices.add(Choice.of(thesaurus, id));
    }
    if (meaning.doubt().isPresent()) {
      String remark = meaning.doubt().get().remark().map(r -> " (" + r + ")").orElse("");
      return new TermChoice(
          unassigned, choices, meaning.doubt().get().reason() + remark, List.of());
    } else if (choices.size() == 1) {
      Naming assigned =
          new Naming(printed, Optional.of(choices.get(0).concept()), Optional.of(Why.TEXT));
      return new TermChoice(assigned, List.of(), "", List.of());
    }
    return new TermChoice(unassigned, List.of(), "", maybe(thesaurus, printed));
  }

  private static List<Choice> maybe(Thesaurus thesaurus, String printed) {
    List<Choice> maybe = new ArrayList<>();
    for (PossibleMeaning possible : thesaurus.possibleMeanings(printed)) {
      maybe.add(Choice.of(thesaurus, possible.concept().id()));
    }
    if (maybe.isEmpty()) {
      for (NearTerm near : thesaurus.nearTerms(printed, MOST_NEAR)) {
        maybe.add(Choice.of(thesaurus, near.concept().id()));
      }
    }
    return maybe.stream().distinct().toList();
  }

  /** What somebody means who names a concept: by its id, else by a word for it. */
  public static TermChoice named(Lexicon lexicon, String typed) {
    String id = typed.strip();
    if (lexicon.thesaurus().concept(id).isEmpty()) {
      return of(lexicon, typed, Optional.empty());
    }
    Naming naming = new Naming(typed, Optional.of(id), Optional.of(Why.MY_READING));
    return new TermChoice(naming, List.of(), "", List.of());
  }

  /** A term that somebody gave a meaning. */
  public static Naming chosen(Lexicon lexicon, String printed, String concept, Why why) {
    requireConcept(lexicon, concept);
    return new Naming(printed, Optional.of(concept), Optional.of(why));
  }

  /**
   * @throws ChangeRefusedException for an id that no concept has
   */
  static void requireConcept(Lexicon lexicon, String id) {
    Thesaurus thesaurus = lexicon.thesaurus();
    if (thesaurus.concept(id).isEmpty()) {
      List<String> ids = thesaurus.concepts().stream().map(c -> c.id()).toList();
      List<String> near = Nearest.to(id, ids, MOST_NEAR);
      throw new ChangeRefusedException(
          "no concept has the id \""
              + id
              + "\""
              + (near.isEmpty() ? "" : "; near it: " + String.join(", ", near)));
    }
  }

  /** That a term is unknown, with what it may mean. */
  public String noWord() {
    List<String> near = new ArrayList<>();
    maybe.forEach(m -> near.add(m.label() + " (" + m.concept() + ")"));
    return "“"
        + naming.printed()
        + "” is no word of the vocabulary"
        + (near.isEmpty() ? "" : "; near it: " + String.join(", ", near));
  }

  public boolean mustChoose() {
    return !choices.isEmpty();
  }
}
