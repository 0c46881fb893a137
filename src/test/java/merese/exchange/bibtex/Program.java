package merese.exchange.bibtex;

import static org.junit.jupiter.api.Assertions.fail;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.File;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;

/** A program of the Debian packages texlive-binaries, texlive-latex-base, biber and pandoc. */
public record Program(int code, String output) {
  /** Skips the test, saying why, where the program is not installed. */
  public static Program run(Path folder, String... command)
      throws IOException, InterruptedException {
    assumeTrue(isInstalled(command[0]), command[0] + " is not installed; .ci/run installs it");
    Path output = Files.createTempFile(folder, "output", ".txt");
    Process process =
        new ProcessBuilder(command)
            .directory(folder.toFile())
            .redirectErrorStream(true)
            .redirectInput(ProcessBuilder.Redirect.from(new File("/dev/null")))
            .redirectOutput(output.toFile())
            .start();
    if (!process.waitFor(5, TimeUnit.MINUTES)) {
      process.destroyForcibly();
      fail(String.join(" ", command) + " did not end");
    }
    String said = new String(Files.readAllBytes(output), StandardCharsets.UTF_8);
    return new Program(process.exitValue(), said);
  }

  private static boolean isInstalled(String name) {
    return Stream.of(System.getenv("PATH").split(File.pathSeparator))
        .anyMatch(folder -> Files.isExecutable(Path.of(folder, name)));
  }
}
