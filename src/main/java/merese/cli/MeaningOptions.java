package merese.cli;

import java.util.Optional;
import merese.model.Naming;
import merese.model.Naming.Why;

/** The options by which a user says what a term means. */
final class MeaningOptions {
  private final Given<String> as;
  private final Given<Boolean> open;
  private final Given<String> why;

  MeaningOptions(Command command) {
    as =
        command.option(
            String.class, "CONCEPT", "What the term means: the id of a concept.", "--as");
    why =
        command.option(
            String.class,
            "WHY",
            "What the meaning rests on: text, picture or my-reading.",
            "--why");
    open = command.flag("Leave the meaning of the term open.", "--unassigned");
  }

  Optional<String> concept() {
    return as.value().map(String::strip);
  }

  boolean unassigned() {
    return open.isSet();
  }

  /** What the meaning rests on, where that was said. */
  Optional<Why> reason() {
    if (why.value().isEmpty()) {
      return Optional.empty();
    }
    String typed = why.value().get();
    for (Why each : Why.values()) {
      if (each.code().equals(typed)) {
        return Optional.of(each);
      }
    }
    throw CommandException.wrongUse("--why is text, picture or my-reading, not \"" + typed + "\"");
  }

  /** The same for a meaning that the user gave. */
  Why why() {
    return reason().orElse(Why.MY_READING);
  }

  Naming giveReason(Naming naming) {
    return naming.concept().isPresent() && reason().isPresent()
        ? new Naming(naming.printed(), naming.concept(), reason())
        : naming;
  }
}
