package merese.cli;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;

/** Writes an answer to a file that the user names, never over one that is there. */
final class OutFile {
  private OutFile() {}

  static void write(String text, Path typed, Context context) throws IOException {
    Path target = context.resolve(typed);
    Path folder = target.getParent();
    if (folder != null && !Files.isDirectory(folder)) {
      throw new CommandException(
          "--out: there is no folder " + folder + " to write " + target.getFileName() + " in");
    } else if (Files.exists(target)) {
      throw new CommandException(
          "--out: " + target + " is there already; name another file, or remove it first");
    }
    Files.writeString(target, text, StandardCharsets.UTF_8, StandardOpenOption.CREATE_NEW);
    ErrorLines.print(context, "Wrote " + target + ".");
  }
}
