package merese.search;

import java.io.IOException;
import java.nio.channels.FileChannel;
import java.nio.channels.FileChannel.MapMode;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;

/**
 * Has Java map a file, so that it has done so once: the first time takes some 5 ms, all but a tenth
 * of a millisecond of which another thread can wait for.
 */
final class FirstMapping extends Thread {
  private static boolean done;

  private final Path file;

  private FirstMapping(Path file) {
    super("first mapping");
    this.file = file;
  }

  /**
   * Starts, where no file has been mapped yet.
   *
   * @param file any
   * @param wanted whether one will be mapped
   */
  static synchronized void start(Path file, boolean wanted) {
    if (wanted && !done) {
      done = true;
      FirstMapping mapping = new FirstMapping(file);
      mapping.setDaemon(true);
      mapping.start();
    }
  }

  @Override
  public void run() {
    try (FileChannel channel = FileChannel.open(file, StandardOpenOption.READ)) {
      channel.map(MapMode.READ_ONLY, 0, channel.size());
    } catch (IOException e) {
      // Whoever opens the tables meets what is wrong, and says it.
    }
  }
}
