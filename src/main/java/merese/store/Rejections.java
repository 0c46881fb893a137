package merese.store;

import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.Map;

/** Where in {@code rejected} something is kept that an import could not take in. */
final class Rejections {
  private static final String STAND_IN = "records";

  private final Path folder;
  private final Map<String, String> coming = new HashMap<>();

  Rejections(Path folder) {
    this.folder = folder;
  }

  /**
   * @param isNew false where the bytes are there already
   */
  record Place(Path file, boolean isNew) {}

  /**
   * @param hash of the bytes to keep
   */
  Place placeFor(String wanted, String hash) {
    String name = FileNames.mended(wanted, STAND_IN);
    int dot = name.lastIndexOf('.');
    String stem = dot < 1 ? name : name.substring(0, dot);
    String ending = dot < 1 ? "" : name.substring(dot);
    for (int number = 1; ; number++) {
      String candidate = stem + (number == 1 ? "" : "-" + number) + ending;
      Path file = folder.resolve(candidate);
      String there = coming.get(FileNames.folded(candidate));
      if (there == null && Files.exists(file, LinkOption.NOFOLLOW_LINKS)) {
        there = Files.isRegularFile(file) ? Hash.of(Disk.readIfThere(file)) : "";
      }
      if (there == null) {
        coming.put(FileNames.folded(candidate), hash);
        return new Place(file, true);
      }
      if (there.equals(hash)) {
        return new Place(file, false);
      }
    }
  }
}
