package merese.shelf;

import java.time.Clock;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Collections;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalLong;
import java.util.Set;
import java.util.TreeSet;
import merese.search.FileStamp;
import merese.search.NoteIndex;
import merese.shelf.FolderTimes.Time;
import merese.store.LibraryFile;
import merese.store.LibraryFolder;
import merese.store.LibraryFolder.Listing;

/**
 * Compares the files of a library with what its index was made from, folder by folder. In a large
 * library a quick one trusts the times of the folders of works. For one use.
 */
final class Comparison {
  private static final String ROOT = "";

  private final Optional<NoteIndex> index;
  private final LibraryFolder library;
  private final Instant now;
  private final int large;
  private final Optional<FolderTimes> before;

  private final List<LibraryFile> changed = new ArrayList<>();
  private final Set<String> removed = new TreeSet<>();
  private final List<FileStamp> settled = new ArrayList<>();
  private final Map<String, Time> times = new HashMap<>();
  private final Set<String> done = new HashSet<>();
  private final Set<String> trusted = new HashSet<>();
  private int compared;

  private Comparison(
      Optional<NoteIndex> index,
      LibraryFolder library,
      Clock clock,
      int large,
      Optional<FolderTimes> before) {
    this.index = index;
    this.library = library;
    this.now = clock.instant();
    this.large = large;
    this.before = before;
  }

  /**
   * @param large more files than this are many
   * @param before the times of folders whose files were compared; empty where the library is not
   *     large
   */
  Comparison(
      NoteIndex index,
      LibraryFolder library,
      Clock clock,
      int large,
      Optional<FolderTimes> before) {
    this(Optional.of(index), library, clock, large, before);
  }

  /** With no index: every file is new. */
  static Changes withNothing(LibraryFolder library, Clock clock, int large) {
    return new Comparison(Optional.empty(), library, clock, large, Optional.empty()).whole();
  }

  /** Every file is looked at. */
  Changes whole() {
    return folders(false);
  }

  /**
   * Of the works, only the files in folders whose time is another are looked at. In a library that
   * is not large, every file is.
   *
   * @param also paths of works that are looked at in any case
   */
  Changes quick(Collection<String> also) {
    boolean trusting = before.isPresent();
    Changes found = folders(trusting);
    if (!trusting) {
      return found;
    }
    for (String path : new TreeSet<>(also)) {
      if (trusted.contains(folderOf(path))) {
        one(path);
      }
    }
    return changes(true);
  }

  private static String folderOf(String path) {
    return path.substring(0, Math.max(0, path.lastIndexOf('/')));
  }

  /** Whether one of some files is other than it was; stops at the first. */
  boolean anyOther(Collection<String> paths) {
    for (String path : paths) {
      one(path);
      if (!changed.isEmpty() || !removed.isEmpty()) {
        return true;
      }
    }
    return false;
  }

  private void one(String path) {
    FileStamp stamp = index.orElseThrow().stamp(path).orElse(null);
    Optional<LibraryFile> file = library.look(path);
    if (file.isPresent()) {
      compare(file.get(), stamp);
    } else if (stamp != null) {
      removed.add(path);
    }
  }

  private Changes folders(boolean trusting) {
    folder(ROOT, trusting);
    for (String top : LibraryFolder.tops()) {
      if (index.isPresent() && !(trusting && FolderTimes.isOfMany(top))) { // those are all below
        for (String folder : index.get().folders(top)) {
          folder(folder, trusting);
        }
      }
    }
    if (before.isPresent()) {
      for (String folder : before.get().times().keySet()) {
        folder(folder, trusting);
      }
    }
    return changes(trusting || compared > large);
  }

  private void folder(String folder, boolean trusting) {
    if (!done.add(folder)) {
      return;
    }
    if (trusting && FolderTimes.isOfMany(folder)) {
      OptionalLong time = library.timeOf(folder);
      if (time.isPresent() && before.get().tells(folder, time.getAsLong())) {
        times.put(folder, before.get().times().get(folder));
        trusted.add(folder);
        return;
      }
    }
    Optional<Listing> listing = library.list(folder);
    Map<String, FileStamp> stamps = stampsIn(folder);
    if (listing.isPresent()) {
      if (FolderTimes.isOfMany(folder)) {
        long modified = listing.get().modified();
        times.put(folder, new Time(modified, LibraryReading.isSettled(modified, now)));
      }
      for (LibraryFile file : listing.get().files()) {
        if (file.kind() != LibraryFile.Kind.RECEIVED) { // no question reads it
          compare(file, stamps.remove(file.relative()));
        }
      }
    }
    removed.addAll(stamps.keySet());
    if (listing.isPresent()) {
      for (String inside : listing.get().folders()) {
        folder(inside, trusting);
      }
    }
  }

  private Map<String, FileStamp> stampsIn(String folder) {
    Map<String, FileStamp> stamps = new HashMap<>();
    if (index.isPresent()) {
      for (FileStamp stamp : index.get().stampsIn(folder)) {
        stamps.put(stamp.path(), stamp);
      }
    }
    stamps.keySet().removeAll(Changes.OF_NO_FILE);
    return stamps;
  }

  /**
   * @param stamp null for a new file
   */
  private void compare(LibraryFile file, FileStamp stamp) {
    compared++;
    if (stamp == null || !isSame(stamp, file)) {
      changed.add(file);
    } else if (!stamp.settled()
        && !stamp.hash().isEmpty()
        && LibraryReading.isSettled(file.modified(), now)) {
      settled.add(stamp.asSettled());
    }
  }

  /** A file whose time could not settle it is compared by its bytes. */
  private static boolean isSame(FileStamp stamp, LibraryFile file) {
    return stamp.sameAs(file.size(), file.modified())
        && (stamp.settled() || stamp.hash().equals(LibraryReading.hash(file)));
  }

  private Changes changes(boolean isLarge) {
    Collections.sort(changed);
    Optional<FolderTimes> folders =
        isLarge ? Optional.of(new FolderTimes(times)) : Optional.empty();
    return new Changes(changed, List.copyOf(removed), settled, folders, compared);
  }
}
