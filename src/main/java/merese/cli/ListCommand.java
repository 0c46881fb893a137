package merese.cli;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import merese.answer.json.AnswerJson;
import merese.change.notes.HeadingList;
import merese.change.notes.NoteTaking;
import merese.change.notes.NoteTaking.Taken;
import merese.change.notes.TypedNote;
import merese.model.Naming;
import merese.shelf.SourceAddress;
import merese.shelf.WritingShelf;

/** Takes a note of each heading of a source's own list. */
final class ListCommand extends WritingCommand {
  private final Given<String> source =
      word(String.class, "SOURCE", "The source: its key, or words that single it out.");

  private final Given<String> locator = word(String.class, "LOCATOR", "Where the list is.");

  private final Given<String> headings =
      word(
          String.class,
          "HEADINGS",
          "The headings as printed, with \";\" between them; two names of one heading with \" or \".");

  private final NoteOptions options = new NoteOptions(this);
  private final MeaningOptions meaning = new MeaningOptions(this);

  private final Given<String> under =
      option(String.class, "FACET", "What the list is of, as in knop.", "--under");

  private final Given<String> by =
      option(String.class, "NAME", "Who takes the notes; else MERESE_BY, else me.", "--by");

  private final Given<Boolean> again =
      flag("Write them though the same notes are there already.", "--again");

  private final Given<Boolean> json = flag("Print the notes as JSON.", "--json");

  ListCommand(Context context) {
    super(
        context,
        "Note the kinds that a source sets out by name: one note for each heading.",
        "merese list haskeld-1983 \"p. 24\" \"ball; cushion; annulated or annular\" --under knop"
            + " --drawing");
  }

  @Override
  int run() {
    try (WritingShelf shelf = writingShelf()) {
      SourceAddress where = source(shelf, source.required());
      List<TypedNote> typed = new ArrayList<>();
      for (List<String> names : HeadingList.of(headings.required(), ";")) {
        typed.add(note(shelf, names));
      }
      if (typed.isEmpty()) {
        throw CommandException.wrongUse(
            "the list has no headings; write them with \";\" between, as in \"ball; cushion\"");
      }
      Taken taken = new NoteTaking(shelf, clock()).list(where, typed, again.isSet());
      if (json.isSet()) {
        AnswerJson.print(context().out(), taken);
      } else {
        new NotedText(context(), shelf).print(taken, under.value());
      }
      return ExitCode.DONE;
    }
  }

  private TypedNote note(WritingShelf shelf, List<String> names) {
    List<Naming> namings = new ArrayList<>();
    for (String name : names) {
      namings.add(meaning(shelf, name, under.value(), meaning));
    }
    TypedNote.Where where =
        new TypedNote.Where(
            locator.required(),
            options.listing(),
            Optional.empty(),
            List.of(),
            List.of(),
            Optional.empty(),
            Optional.empty(),
            Optional.empty());
    return new TypedNote(
        namings,
        where,
        options.claims(),
        Optional.empty(),
        options.reading(),
        options.part(),
        options.object(),
        by(by));
  }
}
