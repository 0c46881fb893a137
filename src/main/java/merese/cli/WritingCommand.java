package merese.cli;

import java.time.Clock;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import merese.change.notes.SourceChoice;
import merese.change.notes.TermChoice;
import merese.change.notes.TermChoice.Choice;
import merese.model.Naming;
import merese.model.Naming.Why;
import merese.shelf.SourceAddress;
import merese.shelf.WritingShelf;

/**
 * A command that writes of sources: it finds the source and the meaning, and asks where it must.
 */
abstract class WritingCommand extends LibraryCommand {
  /** Who notes, where nothing else says so. */
  private static final String ME = "me";

  private Optional<Asking> asking;

  WritingCommand(Context context, String description, String... examples) {
    super(context, description, examples);
  }

  final WritingShelf writingShelf() {
    return WritingShelf.open(library(), new ShelfProgress(context()));
  }

  static Clock clock() {
    return new LocalClock();
  }

  /** Who notes: what an option says, else MERESE_BY, else "me". */
  final String by(Given<String> option) {
    return option.value().orElse(context().environment().getOrDefault("MERESE_BY", ME));
  }

  /** Asks in another way from now on. */
  final void ask(Optional<Asking> other) {
    asking = other;
  }

  final Optional<Asking> asking() {
    if (asking == null) {
      asking = Asking.of(context());
    }
    return asking;
  }

  /** The source that a key or words single out; where they fit several, the user is asked. */
  final SourceAddress source(WritingShelf shelf, String typed) {
    SourceChoice choice = SourceChoice.of(shelf, typed);
    List<SourceAddress> found = choice.found();
    if (choice.source().isPresent()) {
      return choice.source().get();
    } else if (found.size() > 1 && found.size() <= SourceChoice.MOST && asking().isPresent()) {
      return found.get(asking().get().choice("“" + typed + "” may be:", choice.words()));
    }
    throw CommandException.wrongUse(choice.refusal());
  }

  /**
   * What a printed term means: by its words, or as the user chooses.
   *
   * @param facet the heading that it stands under
   */
  final Naming meaning(
      WritingShelf shelf, String printed, Optional<String> facet, MeaningOptions options) {
    if (options.concept().isPresent()) {
      return TermChoice.chosen(shelf, printed, options.concept().get(), options.why());
    }
    TermChoice choice = TermChoice.of(shelf, printed, facet);
    if (options.unassigned()) {
      return new Naming(printed, Optional.empty(), Optional.empty());
    } else if (!choice.mustChoose()) {
      return options.giveReason(choice.naming());
    }
    String open = "leave it open";
    Optional<String> id =
        chosen(printed, choice, "with --as, or leave it open with --unassigned", open);
    return id.isEmpty()
        ? choice.naming()
        : TermChoice.chosen(shelf, printed, id.get(), options.reason().orElseGet(this::askWhy));
  }

  /** What a printed term means, where nothing is said but its words. */
  final Naming meaning(WritingShelf shelf, String printed) {
    TermChoice choice = TermChoice.of(shelf, printed, Optional.empty());
    if (!choice.mustChoose()) {
      return choice.naming();
    }
    Optional<String> id = chosen(printed, choice, "with merese note", "leave it open");
    return id.isEmpty() ? choice.naming() : TermChoice.chosen(shelf, printed, id.get(), askWhy());
  }

  /**
   * The concept that a term is meant for, by its words or as the user chooses.
   *
   * @param option by which the user can name it
   */
  final String concept(WritingShelf shelf, String term, String option) {
    TermChoice choice = TermChoice.named(shelf, term);
    if (choice.mustChoose()) {
      return chosen(term, choice, "by its id with " + option, "").orElseThrow();
    }
    return choice.naming().concept().orElseThrow(() -> CommandException.wrongUse(choice.noWord()));
  }

  /**
   * @param none what choosing none of the concepts is called; "" where one must be chosen
   */
  private Optional<String> chosen(String term, TermChoice choice, String how, String none) {
    List<String> words = new ArrayList<>();
    for (Choice each : choice.choices()) {
      words.add(each.words());
    }
    if (asking().isEmpty()) {
      throw CommandException.wrongUse(
          "“"
              + term
              + "”: "
              + choice.reason()
              + "; nothing was written. Say which "
              + how
              + ":\n  "
              + String.join("\n  ", words));
    }
    if (!none.isEmpty()) {
      words.add(none);
    }
    int chosen = asking().get().choice("“" + term + "”: " + choice.reason() + ".", words);
    return chosen == choice.choices().size()
        ? Optional.empty()
        : Optional.of(choice.choices().get(chosen).concept());
  }

  private Why askWhy() {
    List<String> words =
        List.of("the text says so", "the picture shows it", "it is my reading of it");
    return switch (asking().orElseThrow().choice("What does that rest on?", words)) {
      case 0 -> Why.TEXT;
      case 1 -> Why.PICTURE;
      default -> Why.MY_READING;
    };
  }
}
