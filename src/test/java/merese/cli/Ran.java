package merese.cli;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.Map;

/**
 * What one run of the command line left behind.
 *
 * @param errAsShown what stands on the error stream, broken at the width of the screen
 */
record Ran(int code, String out, String errAsShown) {
  /** What stands on the error stream, a message a line. */
  String err() {
    return errAsShown.replaceAll("\n {4,}(?=[^ ^])", " ");
  }

  static Ran merese(String... args) {
    return in(Path.of("").toAbsolutePath(), Map.of(), args);
  }

  static Ran with(Map<String, String> environment, String... args) {
    return in(Path.of("").toAbsolutePath(), environment, args);
  }

  static Ran in(Path folder, Map<String, String> environment, String... args) {
    return run(InputStream.nullInputStream(), folder, environment, args);
  }

  /** With a person at the terminal, who types this. */
  static Ran typing(String typed, Path folder, String... args) {
    Map<String, String> environment =
        Map.of(Screen.TERMINALS, "in err", Screen.COLUMNS, "80", "TERM", "dumb");
    InputStream in = new ByteArrayInputStream(typed.getBytes(StandardCharsets.UTF_8));
    return run(in, folder, environment, args);
  }

  /** With lines from a script. */
  static Ran piped(String lines, Path folder, String... args) {
    return run(lines, folder, Map.of(), args);
  }

  static Ran run(String lines, Path folder, Map<String, String> environment, String... args) {
    InputStream in = new ByteArrayInputStream(lines.getBytes(StandardCharsets.UTF_8));
    return run(in, folder, environment, args);
  }

  private static Ran run(
      InputStream in, Path folder, Map<String, String> environment, String... args) {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    ByteArrayOutputStream err = new ByteArrayOutputStream();
    int code = Main.run(in, out, err, environment, folder, args);
    return new Ran(
        code, out.toString(StandardCharsets.UTF_8), err.toString(StandardCharsets.UTF_8));
  }
}
