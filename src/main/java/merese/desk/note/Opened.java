package merese.desk.note;

import java.time.Clock;
import java.util.Optional;
import merese.change.notes.Sitting;
import merese.change.notes.SourceChoice;
import merese.desk.web.Typed;
import merese.model.Locator;
import merese.model.LocatorException;
import merese.shelf.SourceAddress;
import merese.shelf.WritingShelf;

/** Finds what a form or an address names. */
final class Opened {
  private Opened() {}

  /**
   * @throws WrongFieldException where it names none, or several
   */
  static SourceAddress source(WritingShelf shelf, Typed typed) {
    String name = typed.get("source").strip();
    if (name.isEmpty()) {
      throw new WrongFieldException(
          "source", "which source lies open? Type its key, or words of its author, year and title");
    }
    SourceChoice choice = SourceChoice.of(shelf, name);
    return choice.source().orElseThrow(() -> new WrongFieldException("source", choice.refusal()));
  }

  /** Somebody who noted on another page of the desk, and goes on here. */
  static Sitting sitting(WritingShelf shelf, Typed typed, Clock clock) {
    Sitting sitting = new Sitting(shelf, source(shelf, typed), clock);
    sitting.resume(known(typed.get("open")), known(typed.get("seen")));
    return sitting;
  }

  /** A place that the desk itself has put into the form. */
  private static Optional<Locator> known(String printed) {
    try {
      return printed.isEmpty() ? Optional.empty() : Optional.of(Locator.parse(printed));
    } catch (LocatorException e) {
      return Optional.empty(); // somebody altered it: then it says nothing
    }
  }
}
