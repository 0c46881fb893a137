package merese.cli;

import java.util.Optional;
import merese.store.History;
import merese.store.HistoryEntry;

/** Takes a change of the library back. */
final class UndoCommand extends LibraryCommand {
  private final Given<Integer> number =
      optionalWord(
          Integer.class,
          "NUMBER",
          "Which change, as merese history numbers it; else the last one.");

  private final Given<Boolean> redo = flag("Put back what was last taken back.", "--redo");

  UndoCommand(Context context) {
    super(
        context,
        "Take the last change of the library back, whenever it was made.\n"
            + "Run it again for the one before.",
        "merese undo",
        "merese undo 41",
        "merese undo --redo");
  }

  @Override
  int run() {
    if (redo.isSet() && number.value().isPresent()) {
      throw CommandException.wrongUse("--redo puts back the last one; leave out the number");
    }
    History history = History.of(library());
    Page page = new Page(context().out(), context().screen());
    Optional<HistoryEntry> done =
        redo.isSet()
            ? history.redo()
            : number.value().isPresent() ? history.undo(number.value().get()) : history.undo();
    if (done.isEmpty()) {
      page.text(nothing());
      return ExitCode.FAILED;
    }
    HistoryEntry entry = done.get();
    String files = Page.many(entry.paths().size(), "file");
    page.text((redo.isSet() ? "Put back: " : "Taken back: ") + what(entry) + " (" + files + ").");
    return ExitCode.DONE;
  }

  /** "undo of 41: note …" is put back as what it took back. */
  private static String what(HistoryEntry entry) {
    return entry.undoes().isPresent()
        ? entry.what().substring("undo of ".length())
        : entry.number() + ": " + entry.what();
  }

  private String nothing() {
    if (redo.isSet()) {
      return "Nothing was taken back since the last change.";
    }
    return number.value().isPresent()
        ? "Change "
            + number.value().get()
            + " is taken back already, or is not kept; merese history lists them."
        : "There is no change to take back.";
  }
}
