package merese.cli;

import java.io.File;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

/** The user's own editor, which VISUAL or else EDITOR names, with words for it if there are any. */
final class Editor {
  /** What a shell says of a command that it does not find, or cannot run (POSIX, sh, 2.8.2). */
  private static final int NOT_FOUND = 127;

  private static final int NOT_STARTED = 126;

  private final Context context;
  private final String variable;
  private final String command;

  private Editor(Context context, String variable, String command) {
    this.context = context;
    this.variable = variable;
    this.command = command;
  }

  static Editor of(Context context) {
    for (String variable : new String[] {"VISUAL", "EDITOR"}) {
      String command = context.environment().getOrDefault(variable, "").strip();
      if (!command.isEmpty()) {
        return new Editor(context, variable, command);
      }
    }
    throw new CommandException(
        "no editor is named; set VISUAL or EDITOR to the command that starts yours, as in"
            + " EDITOR=vi merese edit …");
  }

  /** Waits until the editor has ended. */
  void open(Path file) {
    context.out().flush();
    context.err().flush();
    try {
      int code =
          new ProcessBuilder(words(file))
              .directory(context.workingDirectory().toFile())
              .inheritIO()
              .start()
              .waitFor();
      if (code == NOT_FOUND || code == NOT_STARTED) {
        throw new CommandException(
            "the editor could not be started: "
                + variable
                + " is \""
                + command
                + "\"; set it to"
                + " the command that starts yours");
      }
      if (code != 0) {
        throw new CommandException(
            "the editor (" + command + ") ended with code " + code + "; nothing was taken");
      }
    } catch (IOException e) {
      throw new CommandException(
          "the editor could not be started: "
              + variable
              + " is \""
              + command
              + "\"; set it to the"
              + " command that starts yours",
          e);
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      throw new CommandException("broken off while the editor was open; nothing was taken", e);
    }
  }

  /** By a shell where there is one, so that the command may have words and quotes of its own. */
  private List<String> words(Path file) {
    if (File.separatorChar == '/') {
      return List.of("sh", "-c", command + " \"$@\"", command, file.toString());
    }
    List<String> words = new ArrayList<>(List.of(command.split(" ", -1)));
    words.removeIf(String::isEmpty);
    words.add(file.toString());
    return words;
  }
}
