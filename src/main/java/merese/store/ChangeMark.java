package merese.store;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;

/**
 * A hidden file with a word that is another after every change of several files. A reader that
 * finds the same word, and no journal, before and after its reading has read the library as it was
 * at one moment.
 */
final class ChangeMark {
  static final String FILE = ".changed";

  private ChangeMark() {}

  /** "" before the first change. */
  static String read(Path root) {
    Path file = root.resolve(FILE);
    try {
      return Files.exists(file) ? Files.readString(file, StandardCharsets.UTF_8) : "";
    } catch (IOException e) {
      throw Disk.unreadable(file, e);
    }
  }

  /** Called while the journal stands, so that whoever misses the one notices the other. */
  static void renew(Path root) throws IOException {
    Path draft = root.resolve(FILE + ".tmp");
    Files.writeString(draft, Disk.unique() + '\n', StandardCharsets.UTF_8);
    Files.move(
        draft,
        root.resolve(FILE),
        StandardCopyOption.ATOMIC_MOVE,
        StandardCopyOption.REPLACE_EXISTING);
  }
}
