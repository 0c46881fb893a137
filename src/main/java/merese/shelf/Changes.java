package merese.shelf;

import java.util.ArrayList;
import java.util.Collections;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import merese.search.FileStamp;
import merese.store.LibraryFile;
import merese.store.LibraryFolder;

/**
 * What differs between the files of a library and what its index was made from.
 *
 * @param changed files that are new or other than they were, in the order of their paths
 * @param removed paths of files that are gone
 * @param settled new stamps of files that are as they were, and old enough by now that their time
 *     alone will tell
 * @param folders the times of a large library's folders, for the next comparison; empty in one that
 *     is not large
 * @param compared how many files were looked at
 */
record Changes(
    List<LibraryFile> changed,
    List<String> removed,
    List<FileStamp> settled,
    Optional<FolderTimes> folders,
    int compared) {
  static final Changes NONE = new Changes(List.of(), List.of(), List.of(), Optional.empty(), 0);

  /** The path under which the index keeps what is wrong between the files of the vocabulary. */
  static final String WHOLE_VOCABULARY = "vocabulary";

  /** Paths under which the index keeps what is of no one file. */
  static final Set<String> OF_NO_FILE = Set.of(WHOLE_VOCABULARY, FolderTimes.PATH);

  Changes {
    changed = List.copyOf(changed);
    removed = List.copyOf(removed);
    settled = List.copyOf(settled);
  }

  /** The same with files that are to be read again for another reason. */
  Changes with(Set<String> more, LibraryFolder folder) {
    Set<String> known = paths();
    List<LibraryFile> all = new ArrayList<>(changed);
    for (String path : more) {
      if (!known.contains(path)) {
        folder.look(path).ifPresent(all::add);
      }
    }
    Collections.sort(all);
    return new Changes(all, removed, settled, folders, compared);
  }

  boolean none() {
    return changed.isEmpty() && removed.isEmpty();
  }

  /** How many files differ. */
  int count() {
    return changed.size() + removed.size();
  }

  /** The path of the first file that differs. */
  String first() {
    Set<String> sorted = new TreeSet<>(paths());
    return sorted.iterator().next();
  }

  boolean touchVocabulary() {
    for (String path : paths()) {
      if (isVocabulary(path)) {
        return true;
      }
    }
    return false;
  }

  /** Whether a path is among what differs. */
  boolean concerns(String path) {
    return paths().contains(path);
  }

  /** The paths of what differs. */
  Set<String> paths() {
    Set<String> paths = new HashSet<>(removed);
    for (LibraryFile file : changed) {
      paths.add(file.relative());
    }
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
