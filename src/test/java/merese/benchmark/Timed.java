package merese.benchmark;

import java.io.IOException;
import java.lang.ProcessBuilder.Redirect;
import java.nio.file.Path;
import java.util.List;

/** A command line that is run and timed as a whole process. */
record Timed(List<String> words, Path folder) {
  /**
   * Runs it once, its output thrown away.
   *
   * @return milliseconds from start to exit
   * @throws IllegalStateException if it fails, since a failure is no answer to time
   */
  double once() throws IOException, InterruptedException {
    long before = System.nanoTime();
    Process process =
        new ProcessBuilder(words)
            .directory(folder.toFile())
            .redirectOutput(Redirect.DISCARD)
            .redirectError(Redirect.INHERIT)
            .start();
    int code = process.waitFor();
    double milliseconds = (System.nanoTime() - before) / 1e6;
    if (code != 0) {
      throw new IllegalStateException(words + " ended with exit code " + code);
    }
    return milliseconds;
  }
}
