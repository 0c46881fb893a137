package merese.cli;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import merese.change.notes.NoteTaking.Taken;
import merese.change.notes.Sitting;
import merese.change.notes.Sitting.NotedThere;
import merese.change.notes.Sitting.TakenBack;
import merese.change.notes.Suggestions;
import merese.cli.SittingLines.GivenUpException;
import merese.model.Check.Method;
import merese.model.Locator;
import merese.model.LocatorException;
import merese.model.Naming;
import merese.model.Note;
import merese.shelf.SourceAddress;
import merese.shelf.WritingShelf;
import picocli.CommandLine.Model.OptionSpec;
import picocli.CommandLine.ParameterException;

/** Note after note in one source, page by page. */
final class SittingCommand extends WritingCommand {
  /** What a line may be that is no note. */
  static final List<String> WORDS = List.of("next", "back", "here", "undo", "help", "end");

  /** What people type who want something else than to note it. */
  private static final Set<String> MISTAKEN = Set.of("exit", "quit", "q", "bye", "redo");

  private final Given<String> named =
      word(String.class, "SOURCE", "The source that lies open: its key, or words.");

  private final Given<List<String>> terms =
      options("TERM", "What its pages are looked through for, for the check log.", "--for");

  private final Given<Boolean> read = flag("They are read.", "--read");
  private final Given<Boolean> leafed = flag("They are leafed through.", "--leafed");
  private final Given<Boolean> index = flag("Only its index is looked at.", "--index");

  private final Given<String> pages =
      option(
          String.class,
          "LOCATOR",
          "Which pages are; else those that were turned or noted.",
          "--pages");

  private final Given<String> copy = option(String.class, "ID", "Which copy is in hand.", "--copy");

  private final Given<String> by =
      option(String.class, "NAME", "Who notes; else MERESE_BY, else me.", "--by");

  private WritingShelf shelf;
  private Sitting sitting;
  private SittingLines lines;
  private SittingCompletion completion;
  private int number;
  private boolean refused;

  SittingCommand(Context context) {
    super(
        context,
        "Sit over one source and note page after page, a line each.\n"
            + "A line is a place to open it (p. 41), a term that the open page prints, or both:"
            + " pl. XII, fig. 3 | bladed ring --pictured. The options are those of merese note,"
            + " and need no quotes. + turns the page, - turns back, undo takes the last note of"
            + " this sitting back, help says more, end ends. At the end you are asked what the"
            + " pages were looked through for.",
        "merese sitting quenby-1926",
        "merese sitting quenby-1926 --for neck-ring --read < lines.txt");
  }

  @Override
  int run() throws IOException {
    Optional<Method> method = method();
    if (method.isPresent() != terms.value().isPresent()) {
      throw CommandException.wrongUse(
          "the check log needs both: what was looked for, with --for, and one of --read, --leafed"
              + " and --index");
    }
    try (WritingShelf open = writingShelf()) {
      shelf = open;
      SourceAddress source = source(shelf, named.required());
      sitting = new Sitting(shelf, source, clock());
      List<String> concepts = new ArrayList<>();
      for (String term : terms.value().orElse(List.of())) {
        concepts.add(concept(shelf, term, "--for"));
      }
      completion = new SittingCompletion(context(), new Suggestions(sitting), shelf.thesaurus());
      try (SittingLines typed = SittingLines.of(context(), completion)) {
        lines = typed;
        ask(typed.somebody() ? Optional.of(Asking.by(context(), this::answer)) : Optional.empty());
        begin(source);
        boolean asks = notes();
        end(method, concepts, asks && typed.somebody());
      }
    }
    return refused && !lines.somebody() ? ExitCode.FAILED : ExitCode.DONE;
  }

  private Optional<Method> method() {
    int said = (read.isSet() ? 1 : 0) + (leafed.isSet() ? 1 : 0) + (index.isSet() ? 1 : 0);
    if (said > 1) {
      throw CommandException.wrongUse("give one of --read, --leafed and --index");
    }
    return said == 0
        ? Optional.empty()
        : Optional.of(
            read.isSet() ? Method.READ : leafed.isSet() ? Method.LEAFED : Method.INDEX_ONLY);
  }

  private String answer(String question) throws IOException {
    return answer(question, "");
  }

  private String answer(String question, String begun) throws IOException {
    completion.turnOff(true);
    try {
      return lines.next(question, begun);
    } finally {
      completion.turnOff(false);
    }
  }

  private Page page() {
    return new Page(context().out(), context().screen());
  }

  private void begin(SourceAddress source) {
    page().text(source.words() + ": " + Page.many(sitting.notes(), "note") + " so far.");
    if (lines.somebody()) {
      page().text("Type a page to open it (p. 41), then what it prints. help says more, end ends.");
    }
  }

  /**
   * Takes lines until the end.
   *
   * @return whether the end may ask
   */
  private boolean notes() throws IOException {
    String begun = "";
    while (true) {
      String line;
      try {
        line = lines.next(prompt(), begun);
      } catch (GivenUpException e) {
        if (e.atNothing()) {
          return false;
        }
        begun = "";
        continue;
      }
      number++;
      begun = "";
      if (line == null || line.strip().equals("end")) {
        return true;
      }
      try {
        take(line.strip());
      } catch (GivenUpException e) {
        page().text("Not noted.");
      } catch (ParameterException e) {
        refuse(Errors.uncapitalised(e.getMessage()));
        begun = line;
      } catch (RuntimeException e) {
        String message = Errors.messageForTheUser(e);
        if (message == null) {
          throw e;
        }
        refuse(message);
        begun = line;
      }
      context().out().flush();
    }
  }

  private String prompt() {
    return sitting.place().map(Locator::printed).orElse(sitting.source().key()) + "> ";
  }

  private void refuse(String message) {
    refused = true;
    String where = lines.somebody() ? "" : "line " + number + ": ";
    Page page = new Page(context().err(), context().errorScreen());
    for (String line : (where + message).split("\n", -1)) {
      page.hanging(line.startsWith(" ") ? "    " : "", line.strip());
    }
    if (lines.edited()) {
      page.text("Mend the line, or Ctrl-U clears it.");
    }
    context().err().flush();
  }

  private void take(String line) {
    switch (line) {
      case "" -> {}
      case "next" -> show(sitting.turn(1));
      case "back" -> show(sitting.turn(-1));
      case "here" -> show(sitting.place(""));
      case "undo" -> undo();
      case "help", "?" -> help();
      default -> {
        requireNoCommand(line);
        OptionalInt turns = Sitting.turns(line);
        if (turns.isPresent()) {
          show(sitting.turn(turns.getAsInt()));
        } else {
          note(line);
        }
      }
    }
  }

  private static void requireNoCommand(String line) {
    String word = line.toLowerCase(Locale.ROOT);
    if (MISTAKEN.contains(word)) {
      throw CommandException.wrongUse(
          "“"
              + line
              + "” is no command here; "
              + (word.equals("redo") ? "help lists what is" : "end ends the sitting")
              + ". To note it as a term, write it after a bar: | "
              + line);
    }
  }

  private void show(Locator at) {
    show(at, Optional.empty());
  }

  /**
   * @param but a note that need not be shown
   */
  private void show(Locator at, Optional<Note> but) {
    List<NotedThere> noted = new ArrayList<>();
    for (NotedThere each : sitting.noted(at)) {
      if (but.isEmpty() || !each.note().id().equals(but.get().id())) {
        noted.add(each);
      }
    }
    if (noted.isEmpty()) {
      if (but.isEmpty()) {
        page().text(at.printed() + ": nothing noted yet.");
      }
      return;
    }
    NotedText words = new NotedText(context(), shelf);
    String on = (at.count() == 1 ? at.page() : at).printed();
    page().text(on + ": " + Page.many(noted.size(), "note") + " already.");
    for (NotedThere each : noted) {
      page().hanging("  ", words.words(each.note(), each.places()));
    }
  }

  private void note(String line) {
    NoteLine options = new NoteLine(context());
    TypedLine typed = TypedLine.of(line, options, sitting::isPlace);
    options.read(typed.options());
    if (typed.parts().size() == 1 && !typed.quoted() && sitting.isPlace(typed.parts().get(0))) {
      String place = typed.parts().get(0);
      if (!typed.options().isEmpty()) {
        throw CommandException.wrongUse(
            "what is it called there? Type "
                + place
                + " | TERM, or "
                + place
                + " | \"\" where it has no name");
      }
      show(sitting.open(place));
      return;
    }
    if (typed.parts().isEmpty()) {
      throw CommandException.wrongUse(
          "what is it called there? Type the term, or \"\" where it has no name");
    } else if (typed.parts().size() > 3) {
      throw CommandException.wrongUse(
          "a note is PLACE | TERM | TEXT; put quotes round what has a bar between blanks in it");
    }
    boolean alone = typed.parts().size() == 1;
    Locator at = place(alone ? "" : typed.parts().get(0));
    String term = typed.parts().get(alone ? 0 : 1);
    Optional<String> text =
        typed.parts().size() == 3 ? Optional.of(typed.parts().get(2)) : Optional.empty();
    Naming naming = meaning(shelf, term, options.facet(), options.meaning());
    Optional<Locator> open = sitting.place();
    Taken taken =
        sitting.note(options.note(at, naming, text, by(by)), options.photo(), options.again());
    new NotedText(context(), shelf).printShort(taken, options.facet());
    if (!sitting.place().equals(open)) {
      show(sitting.place().orElseThrow(), Optional.of(taken.notes().get(0)));
    }
  }

  private Locator place(String typed) {
    return sitting.place(typed);
  }

  private void undo() {
    Optional<TakenBack> done = sitting.undo();
    if (done.isEmpty()) {
      page().text("No note of this sitting is left to take back.");
      return;
    }
    String words = new NotedText(context(), shelf).words(done.get().taken().notes().get(0));
    page().text((done.get().already() ? "Was taken back already: " : "Taken back: ") + words + ".");
  }

  private void help() {
    Page page = page();
    String[][] rows = {
      {"p. 41", "opens that page, and shows what is noted of it"},
      {"bladed ring", "notes a term of the open page"},
      {"fig. 3 | bladed ring", "notes a term at another place"},
      {"fig. 3 | ring | TEXT", "with the source's words"},
      {"| \"\" --pictured", "notes what has no name there"},
      {"+  next  +5", "turns on; -, back and -5 turn back"},
      {"here", "shows what is noted of the open page"},
      {"undo", "takes back the last note of this sitting"},
      {"end", "ends it, as Ctrl-D does; Ctrl-C gives a line up"},
    };
    for (String[] row : rows) {
      page.columns("  ", row[0], 20).line(row[1]);
    }
    List<String> options = new ArrayList<>();
    for (OptionSpec option : new NoteLine(context()).all()) {
      options.add(option.longestName());
    }
    page.hanging("  ", "Options, as of merese note: " + String.join(" ", options));
    page.hanging("  ", "Tab completes terms, places, options, and concepts after --as.");
  }

  private void end(Optional<Method> method, List<String> concepts, boolean asks)
      throws IOException {
    page().text(Page.many(sitting.taken(), "note") + " taken in this sitting.");
    Optional<Locator> extent =
        pages.value().isPresent()
            ? Optional.of(Locator.parse(pages.value().get()))
            : sitting.lookedThrough();
    if (extent.isEmpty()) {
      return;
    }
    if (method.isPresent()) {
      log(extent.get(), concepts, method.get());
      return;
    }
    try {
      if (asks && askAndLog(extent.get())) {
        return;
      }
    } catch (GivenUpException e) {
      // not logged, then
    }
    page()
        .hanging(
            "Not logged. ",
            "merese looked "
                + sitting.source().key()
                + Wrap.together(" \"" + extent.get().printed() + "\"")
                + " --for TERM --read does it.");
  }

  private void log(Locator extent, List<String> concepts, Method how) {
    LookedCommand.print(
        context(), shelf, sitting.log(Optional.of(extent), concepts, how, by(by), copy.value()));
  }

  private boolean askAndLog(Locator proposed) throws IOException {
    Optional<Method> how = Optional.empty();
    while (how.isEmpty()) {
      page().text("How did you look through " + proposed.printed() + "?");
      String typed = answer("read, leafed or index (Return: no log) ", "");
      if (typed == null || typed.isBlank()) {
        return false;
      }
      how = howOf(typed.strip().toLowerCase(Locale.ROOT));
    }
    Locator extent = null;
    List<String> concepts = List.of();
    String begun = proposed.printed();
    while (extent == null) {
      String typed = answer("pages: ", begun);
      if (typed == null) {
        return false;
      }
      try {
        extent = typed.isBlank() ? proposed : Locator.parse(typed.strip());
      } catch (LocatorException e) {
        refuse(e.getMessage());
        begun = typed;
      }
    }
    begun = String.join(", ", sitting.lookedForInWords());
    while (concepts.isEmpty()) {
      String typed = answer("looked for: ", begun);
      if (typed == null) {
        return false;
      }
      try {
        concepts = concepts(typed);
      } catch (CommandException e) {
        refuse(e.getMessage());
      }
      begun = typed;
    }
    log(extent, concepts, how.get());
    return true;
  }

  private static Optional<Method> howOf(String typed) {
    for (Method each : Method.values()) {
      if (each != Method.WORD_SEARCH && each.code().startsWith(typed)) {
        return Optional.of(each);
      }
    }
    return Optional.empty();
  }

  private List<String> concepts(String typed) {
    List<String> concepts = new ArrayList<>();
    for (String term : typed.split(",", -1)) {
      if (!term.isBlank()) {
        concepts.add(concept(shelf, term.strip(), "a comma between several"));
      }
    }
    return concepts;
  }
}
