package merese.shelf;

import java.time.Clock;
import java.util.ArrayList;
import java.util.Collections;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import merese.search.FileStamp;
import merese.store.LibraryFile;
import merese.store.LibraryFolder;

/**
 * What differs between the files of a library and what its index was made from.
 *
 * @param changed files that are new or other than they were
 * @param removed paths of files that are gone
 * @param settled new stamps of files that are as they were, and old enough by now that their time
 *     alone will tell
 */
record Changes(List<LibraryFile> changed, List<String> removed, List<FileStamp> settled) {
  /** The path under which the index keeps what is wrong between the files of the vocabulary. */
  static final String WHOLE_VOCABULARY = "vocabulary";

  static Changes since(Map<String, FileStamp> stamps, LibraryFolder folder, Clock clock) {
    List<LibraryFile> changed = new ArrayList<>();
    List<FileStamp> settled = new ArrayList<>();
    Set<String> removed = new TreeSet<>(stamps.keySet());
    removed.remove(WHOLE_VOCABULARY);
    for (LibraryFile file : indexed(folder)) {
      removed.remove(file.relative());
      FileStamp stamp = stamps.get(file.relative());
      if (stamp == null || !isSame(stamp, file)) {
        changed.add(file);
      } else if (!stamp.settled()
          && !stamp.hash().isEmpty()
          && LibraryReading.isSettled(file, clock)) {
        settled.add(stamp.asSettled());
      }
    }
    return new Changes(List.copyOf(changed), List.copyOf(removed), List.copyOf(settled));
  }

  /** The files that an index is made from: not records that describe no source, nor page texts. */
  static List<LibraryFile> indexed(LibraryFolder folder) {
    List<LibraryFile> files = new ArrayList<>(folder.scan());
    files.removeIf(
        file -> file.kind() == LibraryFile.Kind.RECEIVED || file.kind() == LibraryFile.Kind.PAGES);
    return files;
  }

  /** The same with files that are to be read again for another reason. */
  Changes with(Set<String> more, LibraryFolder folder) {
    Set<String> known = paths();
    List<LibraryFile> all = new ArrayList<>(changed);
    for (LibraryFile file : indexed(folder)) {
      if (more.contains(file.relative()) && !known.contains(file.relative())) {
        all.add(file);
      }
    }
    Collections.sort(all);
    return new Changes(all, removed, settled);
  }

  /** A file whose time could not settle it is compared by its bytes. */
  private static boolean isSame(FileStamp stamp, LibraryFile file) {
    return stamp.sameAs(file.size(), file.modified())
        && (stamp.settled() || stamp.hash().equals(LibraryReading.hash(file)));
  }

  boolean none() {
    return changed.isEmpty() && removed.isEmpty();
  }

  boolean touchVocabulary() {
    return changed.stream().anyMatch(f -> isVocabulary(f.relative()))
        || removed.stream().anyMatch(Changes::isVocabulary);
  }

  /** Whether a path is among what differs. */
  boolean concerns(String path) {
    return paths().contains(path);
  }

  private Set<String> paths() {
    Set<String> paths = new HashSet<>(removed);
    changed.forEach(f -> paths.add(f.relative()));
    return paths;
  }

  /** Whether a path is that of a file that defines concepts. */
  static boolean isFacet(String path) {
    return isVocabulary(path)
        && !path.equals("vocabulary/homonyms.json")
        && !path.equals("vocabulary/characters.json");
  }

  private static boolean isVocabulary(String path) {
    return path.startsWith("vocabulary/");
  }
}
