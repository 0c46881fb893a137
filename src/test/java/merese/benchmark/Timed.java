package merese.benchmark;

import java.io.IOException;
import java.lang.ProcessBuilder.Redirect;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

/** A command line that is run and timed as a whole process. */
record Timed(List<String> words, Path folder) implements InTurns.Run {
  /** Merese as a user starts it. */
  static Timed merese(Path folder, String... words) {
    return meresesHeap("", folder, words);
  }

  /**
   * The same with a limit to the heap.
   *
   * @param heap as "512m"; "" for Java's own
   */
  static Timed meresesHeap(String heap, Path folder, String... words) {
    List<String> all = new ArrayList<>();
    if (!heap.isEmpty()) {
      all.addAll(List.of("env", "MERESE_JAVA_OPTS=-Xmx" + heap));
    }
    all.add(Path.of("target/merese/bin/merese").toAbsolutePath().toString());
    all.addAll(List.of(words));
    return new Timed(all, folder);
  }

  /**
   * Runs it once, its output thrown away.
   *
   * @return milliseconds from start to exit
   * @throws IllegalStateException if it fails, since a failure is no answer to time
   */
  @Override
  public double once() throws IOException, InterruptedException {
    long before = System.nanoTime();
    Process process =
        new ProcessBuilder(words)
            .directory(folder.toFile())
            .redirectOutput(Redirect.DISCARD)
            .redirectError(Redirect.DISCARD)
            .start();
    int code = process.waitFor();
    double milliseconds = InTurns.since(before);
    if (code != 0) {
      throw new IllegalStateException(words + " ended with exit code " + code);
    }
    return milliseconds;
  }
}
