package merese.desk.note;

import java.util.List;
import java.util.Optional;
import merese.change.notes.TermChoice;
import merese.desk.web.Typed;
import merese.model.Naming;
import merese.model.Naming.Why;
import merese.shelf.Lexicon;

/** Reads from a form what a term means: by its words, as was chosen, or left open. */
final class Meaning {
  private final Lexicon lexicon;
  private final Typed typed;
  private final List<Choosing> choosing;

  /**
   * @param choosing takes what somebody has yet to choose
   */
  Meaning(Lexicon lexicon, Typed typed, List<Choosing> choosing) {
    this.lexicon = lexicon;
    this.typed = typed;
    this.choosing = choosing;
  }

  /**
   * The term with its meaning; left open as long as somebody has to choose.
   *
   * @param field that takes the choice
   * @param why the field that says what it rests on
   */
  Naming of(String printed, Optional<String> facet, String field, String why) {
    String chosen = typed.get(field);
    if (chosen.equals(Choosing.LEFT_OPEN)) {
      return new Naming(printed, Optional.empty(), Optional.empty());
    } else if (!chosen.isEmpty()) {
      return TermChoice.chosen(lexicon, printed, chosen, why(why).orElse(Why.MY_READING));
    }
    TermChoice choice = TermChoice.of(lexicon, printed, facet);
    if (choice.mustChoose()) {
      choosing.add(Choosing.of(printed, choice, field, why, true));
    }
    return rests(choice.naming(), why(why));
  }

  /** The id of a concept that is named by its id or by a word; empty where somebody must choose. */
  Optional<String> concept(String word, String at, String field) {
    if (typed.has(field)) {
      return Optional.of(typed.get(field));
    }
    TermChoice choice = TermChoice.named(lexicon, word);
    if (choice.mustChoose()) {
      choosing.add(Choosing.of(word, choice, field, "", false));
      return Optional.empty();
    }
    return Optional.of(
        choice.naming().concept().orElseThrow(() -> new WrongFieldException(at, choice.noWord())));
  }

  private static Naming rests(Naming naming, Optional<Why> why) {
    return naming.concept().isPresent() && why.isPresent()
        ? new Naming(naming.printed(), naming.concept(), why)
        : naming;
  }

  Optional<Why> why(String field) {
    return typed.has(field)
        ? Optional.of(Codes.of(Why.values(), typed.get(field), field))
        : Optional.empty();
  }
}
