package merese.shelf;

import java.nio.ByteBuffer;
import java.util.Collections;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import merese.search.FileStamp;
import merese.search.IndexedFile;
import merese.search.IndexedFile.IndexedRecord;
import merese.search.NoteIndex;

/**
 * The times that the folders of a large library had just before their files were compared, or read,
 * for the index. A file that is added, removed or saved by renaming changes the time of its folder,
 * so that a folder with the same time need not be looked into; a file overwritten in place does
 * not. Only the folders of works and of page texts are there: the others are looked into each time.
 */
record FolderTimes(Map<String, Time> times) {
  /** The path under which the index keeps them; no file can have it, since a folder has. */
  static final String PATH = "works";

  static final FolderTimes NONE = new FolderTimes(Map.of());

  private static final String BELOW = PATH + '/';
  private static final String PAGES = "pages";
  private static final String BELOW_PAGES = PAGES + '/';

  /**
   * @param modified nanoseconds since 1970
   * @param settled false where the folder was so fresh that a later change could bear the same time
   */
  record Time(long modified, boolean settled) {
    /**
     * Said at length, since a start pays dearly for the first comparison that Java makes itself.
     */
    private boolean isSameAs(Time other) {
      return other != null && modified == other.modified && settled == other.settled;
    }
  }

  FolderTimes {
    times = Collections.unmodifiableMap(times);
  }

  /** Whether a folder is of works or of page texts, of which there may be many. */
  static boolean isOfMany(String folder) {
    return folder.equals(PATH)
        || folder.startsWith(BELOW)
        || folder.equals(PAGES)
        || folder.startsWith(BELOW_PAGES);
  }

  /** Those of an index; empty where it is of a library that was not large. */
  static Optional<FolderTimes> of(NoteIndex index) {
    for (byte[] packed : index.records(RecordTypes.FOLDERS)) {
      return Optional.of(unpack(packed));
    }
    return Optional.empty();
  }

  /** Whether a folder was last changed when it was before, so that all in it is known. */
  boolean tells(String folder, long modified) {
    Time time = times.get(folder);
    return time != null && time.settled() && time.modified() == modified;
  }

  /** Whether more is known here than there of folders that were compared. */
  boolean tellsMoreThan(FolderTimes other) {
    for (Map.Entry<String, Time> each : times.entrySet()) {
      if (each.getValue().settled() && !each.getValue().isSameAs(other.times.get(each.getKey()))) {
        return true;
      }
    }
    return false;
  }

  IndexedFile forIndex() {
    return IndexedFile.of(
        new FileStamp(PATH, 0, 0, "", true),
        List.of(new IndexedRecord(RecordTypes.FOLDERS, pack())));
  }

  private byte[] pack() {
    Packer packer = new Packer();
    packer.list(
        List.copyOf(new TreeMap<>(times).entrySet()),
        (to, e) ->
            to.text(e.getKey()).bytes(bytes(e.getValue().modified())).flag(e.getValue().settled()));
    return packer.toBytes();
  }

  private static byte[] bytes(long number) {
    return ByteBuffer.allocate(Long.BYTES).putLong(number).array();
  }

  private static FolderTimes unpack(byte[] packed) {
    Unpacker unpacker = new Unpacker(packed);
    Map<String, Time> times = new HashMap<>();
    for (int left = unpacker.number(); left > 0; left--) {
      String folder = unpacker.text();
      long modified = ByteBuffer.wrap(unpacker.bytes()).getLong();
      times.put(folder, new Time(modified, unpacker.flag()));
    }
    return new FolderTimes(times);
  }
}
