package merese.cli;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import merese.answer.written.Harmless;
import merese.change.FileEdit;
import merese.shelf.Watcher;
import merese.store.LibraryException;
import merese.store.Problem;

/** Opens a copy of a file of the library in the user's editor, and takes it if it is sound. */
final class EditCommand extends LibraryCommand {
  private static final int MOST = 20;
  private static final int WORTH_SHOWING = 1000;

  private final Given<String> what =
      word(
          String.class,
          "WHAT",
          "A source by its key, a work, an object, a facet or concept; or mine, homonyms,"
              + " characters or library.");

  EditCommand(Context context) {
    super(
        context,
        "Change a file of the library in your own editor.\n"
            + "The editor is the one that VISUAL or EDITOR names. It gets a copy; what you write is"
            + " checked, and taken just as it is. What would break the library is said, and you may"
            + " edit again; nothing that you have typed is lost.",
        "merese edit quenby-1949",
        "merese edit ring",
        "merese edit mine");
  }

  @Override
  int run() throws IOException {
    FileEdit edit = FileEdit.of(library(), what.required());
    Editor editor = Editor.of(context());
    Path folder = Files.createTempDirectory("merese-edit");
    Path copy = folder.resolve(String.valueOf(edit.file().getFileName()));
    Files.copy(new ByteArrayInputStream(edit.content()), copy); // not of the library
    boolean settled = false;
    try {
      boolean taken = edited(edit, editor, copy);
      settled = true;
      Path file = context().fromHere(edit.file());
      context().out().println(taken ? "Changed: " + file : "Nothing was changed in " + file + ".");
      return ExitCode.DONE;
    } finally {
      if (settled || Arrays.equals(edit.content(), Files.readAllBytes(copy))) {
        Files.deleteIfExists(copy);
        Files.deleteIfExists(folder);
      }
    }
  }

  /** Whether there was anything to take. */
  private boolean edited(FileEdit edit, Editor editor, Path copy) throws IOException {
    Optional<Asking> asking = Asking.of(context());
    while (true) {
      try {
        editor.open(copy);
      } catch (CommandException e) {
        throw Arrays.equals(edit.content(), read(copy)) ? e : kept(e.getMessage(), copy, e);
      }
      byte[] written = read(copy);
      if (Arrays.equals(edit.content(), written)) {
        return false;
      }
      List<Problem> wrong = take(edit, written, copy);
      if (wrong.isEmpty()) {
        return true;
      }
      tell(wrong);
      if (asking.isEmpty() || !asking.get().yes("Edit it again?")) {
        throw kept(
            "the library would have "
                + Page.many(wrong.size(), "error")
                + " with that, so nothing was taken",
            copy,
            null);
      }
    }
  }

  private List<Problem> take(FileEdit edit, byte[] written, Path copy) {
    try {
      Watcher watcher = new ShelfProgress(context(), WORTH_SHOWING);
      return edit.take(written, watcher);
    } catch (LibraryException e) {
      throw kept(e.getMessage(), copy, e);
    }
  }

  private static byte[] read(Path copy) {
    try {
      return Files.readAllBytes(copy);
    } catch (IOException e) {
      throw new CommandException("the editor has taken away the copy " + copy, e);
    }
  }

  private static CommandException kept(String message, Path copy, Exception cause) {
    return new CommandException(message + "\nWhat you wrote is kept in " + copy, cause);
  }

  private void tell(List<Problem> wrong) {
    for (Problem problem : wrong.subList(0, Math.min(MOST, wrong.size()))) {
      context()
          .err()
          .println(
              Harmless.words(
                  new Problem(
                          context().fromHere(problem.file()),
                          problem.line(),
                          problem.column(),
                          problem.where(),
                          problem.what(),
                          problem.remedy(),
                          problem.severity())
                      .toString()));
    }
    if (wrong.size() > MOST) {
      context().err().println("… and " + (wrong.size() - MOST) + " more");
    }
    context().err().flush();
  }
}
