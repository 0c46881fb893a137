package merese.cli;

import java.io.BufferedInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import merese.change.records.RecordFormat;

/**
 * A file that is to be brought in, open at its start.
 *
 * @param name as it was typed
 * @param in read once
 */
record RecordFile(String name, RecordFormat format, InputStream in) implements AutoCloseable {
  private static final String STANDARD_INPUT = "-";

  /**
   * Opens a file and looks what it is.
   *
   * @param typed a path, or "-" for the standard input
   * @param said the format, where the user says it
   */
  static RecordFile open(Context context, String typed, Optional<RecordFormat> said)
      throws IOException {
    boolean piped = typed.equals(STANDARD_INPUT);
    InputStream in =
        new BufferedInputStream(piped ? context.in() : file(context, typed), RecordFormat.HEAD);
    try {
      in.mark(RecordFormat.HEAD);
      byte[] head = in.readNBytes(RecordFormat.HEAD - 1);
      in.reset();
      String name = piped ? "standard input" : typed;
      if (head.length == 0) {
        throw new CommandException(name + ": the file is empty");
      }
      RecordFormat format = said.or(() -> RecordFormat.of(head)).orElseThrow(() -> unknown(name));
      return new RecordFile(name, format, in);
    } catch (CommandException e) {
      in.close();
      throw e;
    }
  }

  private static InputStream file(Context context, String typed) throws IOException {
    Path path = context.resolve(Path.of(typed));
    if (Files.isDirectory(path)) {
      throw new CommandException(typed + " is a folder; name the files in it");
    }
    return Files.newInputStream(path);
  }

  private static CommandException unknown(String name) {
    return new CommandException(
        name
            + ": this is none of the formats that can be brought in; if it is one of them, say"
            + " which with --as: "
            + String.join(", ", RecordFormat.codes()));
  }

  /** The last part of the name, for a file of what could not be read. */
  String lastName() {
    Path last = Path.of(name).getFileName();
    return last == null ? name : last.toString();
  }

  @Override
  public void close() throws IOException {
    in.close();
  }
}
