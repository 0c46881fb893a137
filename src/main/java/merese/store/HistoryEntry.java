package merese.store;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalInt;

/**
 * One change of a library, as its history keeps it.
 *
 * @param number from 1, in the order of the changes
 * @param what it did, in words
 * @param undoes the number of the change that this one took back
 */
public record HistoryEntry(
    int number, Instant at, String what, OptionalInt undoes, List<AlteredFile> files) {
  public HistoryEntry {
    files = List.copyOf(files);
  }

  /** The files that it made, altered or deleted, as paths below the library folder. */
  public List<String> paths() {
    List<String> paths = new ArrayList<>(files.size());
    for (AlteredFile file : files) {
      paths.add(file.file());
    }
    return paths;
  }

  boolean touches(String path) {
    return paths().contains(path);
  }
}
