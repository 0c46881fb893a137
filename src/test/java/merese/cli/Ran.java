package merese.cli;

import java.io.ByteArrayOutputStream;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.Map;

/** What one run of the command line left behind. */
record Ran(int code, String out, String err) {
  static Ran merese(String... args) {
    return in(Path.of("").toAbsolutePath(), Map.of(), args);
  }

  static Ran with(Map<String, String> environment, String... args) {
    return in(Path.of("").toAbsolutePath(), environment, args);
  }

  static Ran in(Path folder, Map<String, String> environment, String... args) {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    ByteArrayOutputStream err = new ByteArrayOutputStream();
    int code = Main.run(InputStream.nullInputStream(), out, err, environment, folder, args);
    return new Ran(
        code, out.toString(StandardCharsets.UTF_8), err.toString(StandardCharsets.UTF_8));
  }
}
