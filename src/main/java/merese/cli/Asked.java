package merese.cli;

import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import merese.change.vocabulary.ConceptNames;

/** What a command needs to know: as it was typed, else as whoever is at the terminal answers. */
final class Asked {
  private final Context context;
  private Optional<Asking> asking;

  Asked(Context context) {
    this.context = context;
  }

  private Optional<Asking> asking() {
    if (asking == null) {
      asking = Asking.of(context);
    }
    return asking;
  }

  /**
   * What an option was given.
   *
   * @param option as it is typed: "--label"
   */
  static Optional<String> given(Given<String> given, String option) {
    Optional<String> typed = given.value().map(String::strip);
    if (typed.isPresent() && typed.get().isEmpty()) {
      throw CommandException.wrongUse(option + " is empty; write it, or leave the option out");
    }
    return typed;
  }

  static List<String> all(Given<List<String>> given, String option) {
    List<String> typed = new ArrayList<>();
    for (String each : given.value().orElse(List.of())) {
      typed.add(each.strip());
      if (each.isBlank()) {
        throw CommandException.wrongUse(option + " is empty; write it, or leave the option out");
      }
    }
    return typed;
  }

  /** What an option was given, else what is answered to a question. */
  String text(Given<String> given, String option, String question) {
    Optional<String> typed = given(given, option);
    if (typed.isPresent()) {
      return typed.get();
    }
    Asking who =
        asking().orElseThrow(() -> CommandException.wrongUse(question + " Give it with " + option));
    String answer = who.line(question);
    while (answer.isEmpty()) {
      answer = who.line(question);
    }
    return answer;
  }

  /** The id of the concept that is meant; one of several is asked for. */
  String concept(ConceptNames names, String typed) {
    ConceptNames.Named named = names.named(typed);
    if (named.id().isPresent()) {
      return named.id().get();
    }
    List<String> choices = new ArrayList<>();
    List<String> ids = new ArrayList<>();
    for (ConceptNames.Choice choice : named.choices()) {
      choices.add(choice.label() + " (" + choice.id() + "): " + choice.definition());
      ids.add(choice.id() + " (" + choice.label() + ")");
    }
    Asking who =
        asking()
            .orElseThrow(
                () ->
                    CommandException.wrongUse(
                        "“"
                            + typed
                            + "” may mean several things; name one by its id: "
                            + String.join(", ", ids)));
    return named.choices().get(who.choice("“" + typed + "”: which is meant?", choices)).id();
  }

  /** The day that an option gives, else today. */
  static LocalDate day(Given<String> given, String option) {
    Optional<String> typed = given(given, option);
    try {
      return typed.map(LocalDate::parse).orElseGet(() -> LocalDate.now(WritingCommand.clock()));
    } catch (DateTimeParseException e) {
      throw CommandException.wrongUse(
          option + ": \"" + typed.orElseThrow() + "\" is no day; write it as in 2025-03-02");
    }
  }
}
