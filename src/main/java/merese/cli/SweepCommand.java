package merese.cli;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalInt;
import merese.answer.Sweep;
import merese.answer.Swept;
import merese.answer.Swept.Place;
import merese.answer.json.AnswerJson;
import merese.change.notes.NoteTaking;
import merese.change.notes.NotedAlreadyException;
import merese.change.notes.SearchedTexts;
import merese.change.notes.TypedNote;
import merese.model.Locator;
import merese.model.LocatorException;
import merese.model.Naming;
import merese.shelf.Shelf;
import merese.shelf.SourceAddress;
import merese.shelf.WritingShelf;

/** Goes through the pages of books for a feature, and offers each place as a note. */
final class SweepCommand extends WritingCommand {
  private static final int USUALLY = 50;

  private final Given<List<String>> words =
      words("TERM", "What to look for: a word or words, or a concept's id.");

  private final Given<Integer> limit =
      option(Integer.class, "N", "Offer at most N; without this, " + USUALLY + ".", "--limit");

  private final Given<String> by =
      option(String.class, "NAME", "Who takes the notes; else MERESE_BY, else me.", "--by");

  private final Given<Boolean> log =
      flag(
          "Note in the check log of each source that its page text was searched for the names, and"
              + " what came of it.",
          "--log");

  private final Given<Boolean> json = flag("Print the whole answer as JSON.", "--json");

  SweepCommand(Context context) {
    super(
        context,
        "Go through the attached pages of books for any name of a feature.\n"
            + "At a terminal each place is offered as a note, one by one: y notes it, n goes on,"
            + " q stops. Elsewhere the command that would note it is printed below each. Words on a"
            + " page are no note until somebody has read them.\n"
            + "With --log the check log says of each source that its page text was searched, so that"
            + " covers does not say that it was not checked. That is no reading: words that were"
            + " misread, and what is only pictured, are missed.",
        "merese sweep \"bladed ring\"",
        "merese sweep ring-annulated --limit 10",
        "merese sweep \"spiral neck trail\" --log");
  }

  @Override
  int run() {
    int most = limit.value().orElse(USUALLY);
    if (most < 1) {
      throw CommandException.wrongUse("--limit takes a number from 1 up, not " + most);
    }
    Swept swept;
    try (Shelf shelf = openShelf()) {
      swept = Sweep.answer(shelf, String.join(" ", words.required()), most, log.isSet());
    }
    if (json.isSet()) {
      AnswerJson.print(context().out(), swept);
      if (log.isSet()) {
        log(swept);
      }
      return code(swept);
    }
    SweptText text = new SweptText(context());
    text.head(swept);
    if (asking().isEmpty()) {
      text.commands(swept);
    } else if (!swept.places().isEmpty()) {
      offer(swept, text, asking().get());
    }
    if (log.isSet() && !swept.searched().isEmpty() && isToBeLogged(swept)) {
      text.logged(swept, log(swept));
    }
    return code(swept);
  }

  private boolean isToBeLogged(Swept swept) {
    if (asking().isEmpty()) {
      return true;
    }
    context().out().flush();
    int texts = swept.searched().size();
    String question =
        "Log that "
            + (texts == 1 ? "this page text was" : "these " + texts + " page texts were")
            + " searched, not read [y/n]?";
    while (true) {
      String typed;
      try {
        typed = asking().get().line(question).toLowerCase(Locale.ROOT);
      } catch (CommandException e) {
        return false;
      }
      if (typed.equals("y") || typed.equals("n")) {
        return typed.equals("y");
      }
    }
  }

  /** What the history calls the change. */
  private OptionalInt log(Swept swept) {
    if (swept.searched().isEmpty()) {
      return OptionalInt.empty();
    }
    try (WritingShelf shelf = writingShelf()) {
      List<SearchedTexts.Searched> texts = new ArrayList<>();
      for (Swept.Searched each : swept.searched()) {
        SourceAddress source = source(shelf, each.source().key());
        texts.add(new SearchedTexts.Searched(source, each.extent(), each.besides(), each.found()));
      }
      return new SearchedTexts(shelf, clock()).log(swept.heading().id(), texts, by(by));
    }
  }

  private static int code(Swept swept) {
    return swept.all() == 0 ? ExitCode.FAILED : ExitCode.DONE;
  }

  private void offer(Swept swept, SweptText text, Asking asking) {
    int noted = 0;
    try (WritingShelf shelf = writingShelf()) {
      for (Place place : swept.places()) {
        text.place(place);
        String answer = answer(asking);
        if (answer.equals("q")) {
          break;
        } else if (answer.equals("y")) {
          noted += note(shelf, place, asking) ? 1 : 0;
        }
      }
    }
    text.tail(swept, noted);
  }

  /** Where the input ends, that is enough. */
  private String answer(Asking asking) {
    context().out().flush();
    while (true) {
      String typed;
      try {
        typed = asking.line("Note it [y/n/q]?").toLowerCase(Locale.ROOT);
      } catch (CommandException e) {
        return "q";
      }
      if (typed.equals("y") || typed.equals("n") || typed.equals("q")) {
        return typed;
      }
    }
  }

  /** Whether it was written; it may be there already. */
  private boolean note(WritingShelf shelf, Place place, Asking asking) {
    String locator = locator(place, asking);
    String printed = place.loose() ? printed(place, asking) : place.words();
    Naming naming = meaning(shelf, printed);
    SourceAddress source = source(shelf, place.source().key());
    TypedNote typed =
        new TypedNote(
            List.of(naming),
            new TypedNote.Where(
                locator,
                TypedNote.Doing.NAMES,
                Optional.empty(),
                List.of(),
                List.of(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty()),
            List.of(),
            Optional.empty(),
            Optional.empty(),
            Optional.empty(),
            Optional.empty(),
            by(by));
    try {
      new NotedText(context(), shelf)
          .print(new NoteTaking(shelf, clock()).note(source, typed, false), Optional.empty());
      return true;
    } catch (NotedAlreadyException e) {
      asking.say("It is noted already (" + e.note() + ").");
      return false;
    }
  }

  private static String locator(Place place, Asking asking) {
    if (place.locator().isPresent() && place.locator().get().count() == 1) {
      return place.locator().get().printed();
    }
    String both = place.locator().map(Locator::printed).orElse("");
    String question =
        both.isEmpty()
            ? "The page has no number. Where is it, as a footnote has it?"
            : "Which of the two pages is it on (Return for " + both + ")?";
    while (true) {
      String typed = asking.line(question);
      try {
        return typed.isEmpty() && !both.isEmpty() ? both : Locator.parse(typed).printed();
      } catch (LocatorException e) {
        asking.say(e.getMessage());
      }
    }
  }

  private static String printed(Place place, Asking asking) {
    String typed = asking.line("What is printed there (Return for “" + place.words() + "”)?");
    return typed.isEmpty() ? place.words() : typed;
  }
}
