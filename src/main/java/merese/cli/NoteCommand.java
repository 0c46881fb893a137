package merese.cli;

import java.util.List;
import java.util.Optional;
import merese.answer.json.AnswerJson;
import merese.change.notes.NoteTaking;
import merese.change.notes.NoteTaking.Taken;
import merese.change.notes.TypedNote;
import merese.model.Naming;
import merese.shelf.SourceAddress;
import merese.shelf.WritingShelf;

/** Takes a note of one place in one source. */
final class NoteCommand extends WritingCommand {
  private final Given<String> source =
      word(String.class, "SOURCE", "The source: its key, or words that single it out.");

  private final Given<String> locator =
      word(String.class, "LOCATOR", "Where, as a footnote has it: \"pl. 31, fig. 3\".");

  private final Given<String> term =
      word(String.class, "TERM", "The term exactly as printed; \"\" where none is.");

  private final Given<String> text =
      optionalWord(String.class, "TEXT", "The source's words, unaltered.");

  private final NoteOptions options = new NoteOptions(this);
  private final MeaningOptions meaning = new MeaningOptions(this);
  private final PhotoOption photo = new PhotoOption(this);

  private final Given<String> under =
      option(String.class, "FACET", "The heading that the term stands under.", "--under");

  private final Given<String> by =
      option(String.class, "NAME", "Who takes the note; else MERESE_BY, else me.", "--by");

  private final Given<Boolean> again =
      flag("Write it though the same note is there already.", "--again");

  private final Given<Boolean> json = flag("Print the note as JSON.", "--json");

  NoteCommand(Context context) {
    super(
        context,
        "Note what a page says or shows, in its own words.\n"
            + "The term is matched to its meaning; where it has several, you are asked.",
        "merese note quenby-1949 \"pl. 31, fig. 3\" \"bladed ring\" --pictured"
            + " --date \"c. 1790–1810\" --place \"mainly Irish\"",
        "merese note \"haskeld primer\" \"p. 12\" \"bladed ring\" --not-shown");
  }

  @Override
  int run() {
    try (WritingShelf shelf = writingShelf()) {
      SourceAddress where = source(shelf, source.required());
      String printed = term.required();
      Naming naming = meaning(shelf, printed, under.value(), meaning);
      TypedNote typed =
          new TypedNote(
              List.of(naming),
              options.where(locator.required(), !printed.isBlank()),
              options.claims(),
              text.value().filter(t -> !t.isBlank()),
              options.reading(),
              options.part(),
              options.object(),
              by(by));
      Taken taken =
          new NoteTaking(shelf, clock()).note(where, typed, photo.picture(), again.isSet());
      if (json.isSet()) {
        AnswerJson.print(context().out(), taken);
      } else {
        new NotedText(context(), shelf).print(taken, Optional.empty());
      }
      return ExitCode.DONE;
    }
  }
}
