package merese.cli;

import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import merese.shelf.SourceAddress;
import merese.shelf.WritingShelf;
import merese.store.History;
import merese.store.History.Line;
import merese.store.LibraryFolder;
import merese.store.Problem;

/** Lists the changes of the library. */
final class HistoryCommand extends WritingCommand {
  private static final int USUAL = 20;
  private static final DateTimeFormatter TIME =
      DateTimeFormatter.ofPattern("yyyy-MM-dd HH:mm", Locale.ROOT);

  private final Given<String> source =
      optionalWord(String.class, "SOURCE", "Only changes of this source: its key, or words of it.");

  private final Given<Integer> limit =
      option(Integer.class, "NUMBER", "How many lines; 0 for all that are kept.", "--limit");

  HistoryCommand(Context context) {
    super(
        context,
        "List the changes of the library, the newest first.\n"
            + "The last thousand are kept; merese undo takes one back.",
        "merese history",
        "merese history quenby-1949 --limit 0");
  }

  @Override
  int run() {
    LibraryFolder library = library();
    library.requireKnownFormat();
    Optional<String> file = source.value().map(this::file);
    List<Line> lines = new ArrayList<>();
    History history = History.of(library);
    for (Line line : history.lines()) {
      if (file.isEmpty() || line.entry().paths().contains(file.get())) {
        lines.add(line);
      }
    }
    Page page = new Page(context().out(), context().screen());
    List<Problem> damaged = history.damaged();
    if (lines.isEmpty() && damaged.isEmpty()) {
      page.text(
          file.isEmpty()
              ? "No change has been made to this library with merese yet."
              : "No change of " + file.get() + " is kept.");
      return ExitCode.DONE;
    }
    int most = limit.value().orElse(USUAL);
    int shown = most <= 0 ? lines.size() : Math.min(most, lines.size());
    int width = lines.isEmpty() ? 0 : Integer.toString(lines.get(0).entry().number()).length();
    for (Line line : lines.subList(0, shown)) {
      String number = Integer.toString(line.entry().number());
      String lead = " ".repeat(width - number.length()) + number + "  ";
      String time = TIME.format(line.entry().at().atZone(ZoneId.systemDefault()));
      page.hanging(
          lead, time + "  " + line.entry().what() + (line.undone() ? " (taken back)" : ""));
    }
    if (shown < lines.size()) {
      page.text("+ " + (lines.size() - shown) + " more; --limit 0 lists them all.");
    }
    damaged.forEach(problem -> page.text(context().fromHere(problem).toString()));
    return ExitCode.DONE;
  }

  private String file(String typed) {
    try (WritingShelf shelf = writingShelf()) {
      SourceAddress found = source(shelf, typed);
      return found.file();
    }
  }
}
