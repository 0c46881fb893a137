package merese.cli;

import java.io.InputStream;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.Map;

/**
 * What a command may touch of the process that runs it.
 *
 * @param out answers only, so that they can be piped
 * @param err errors, warnings and progress
 * @param workingDirectory absolute
 * @param screen how to lay out what goes to {@code out}
 * @param errorScreen how to lay out what goes to {@code err}
 */
record Context(
    InputStream in,
    PrintWriter out,
    PrintWriter err,
    Map<String, String> environment,
    Path workingDirectory,
    Screen screen,
    Screen errorScreen) {

  /** A path as the user typed it, against the folder that the user is in. */
  Path resolve(Path typed) {
    return workingDirectory.resolve(typed).normalize();
  }

  /** A file as the user would type it, so that it can be opened by a click. */
  Path fromHere(Path file) {
    return file.startsWith(workingDirectory) ? workingDirectory.relativize(file) : file;
  }

  Progress progress() {
    return new Progress(err, errorScreen, System::nanoTime);
  }
}
