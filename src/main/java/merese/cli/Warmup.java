package merese.cli;

import java.io.InputStream;
import java.io.OutputStream;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;

/**
 * Runs the commands whose classes belong into the class-data archive. The launcher starts it, with
 * the folder of the demonstration, when it makes the archive; nothing that it prints is shown.
 */
final class Warmup {
  /** The commands that a user waits for most. Each must succeed on the demo library. */
  static final List<List<String>> COMMANDS =
      List.of(
          List.of("covers", "bladed ring", "--pictured"), // makes the index
          List.of("covers", "bladed ring", "--pictured"), // finds it made
          List.of("covers", "triple ring"),
          List.of("find", "knife-edged rings"),
          List.of("covers", "--help"),
          List.of("covers", "--no-such-option"),
          List.of("--help"),
          List.of("--version"));

  private Warmup() {}

  public static void main(String[] args) {
    Path folder = Path.of(args[0]).toAbsolutePath();
    Map<String, String> environment = System.getenv();
    for (List<String> command : COMMANDS) {
      Main.run(
          InputStream.nullInputStream(),
          OutputStream.nullOutputStream(),
          OutputStream.nullOutputStream(),
          environment,
          folder,
          command.toArray(String[]::new));
    }
  }
}
