package merese.store;

import java.nio.file.Path;

/**
 * A file of a library as a listing sees it, unread.
 *
 * @param path as the library was addressed
 * @param relative below the library folder, with "/" on every system: {@code works/quenby.json}
 * @param size in bytes
 * @param modified nanoseconds since 1970, as exactly as the file system keeps it
 */
public record LibraryFile(Kind kind, Path path, String relative, long size, long modified)
    implements Comparable<LibraryFile> {
  /** What is in a file. */
  public enum Kind {
    SETTINGS,
    WORK,
    VOCABULARY,
    HOMONYMS,
    /** The key to look-alikes. */
    CHARACTERS,
    OBJECT,
    MINE,
    /** What other programs gave and describes no source. */
    RECEIVED,
    /** The text of an edition's own pages. */
    PAGES
  }

  /** By the relative path. */
  @Override
  public int compareTo(LibraryFile other) {
    return relative.compareTo(other.relative);
  }

  /** The file's name without its ending: the id of a work or facet, the reference of an object. */
  public String name() {
    return nameOf(path);
  }

  /** The same of a file that is not listed. */
  public static String nameOf(Path path) {
    String name = path.getFileName().toString();
    return name.endsWith(FolderScan.ENDING)
        ? name.substring(0, name.length() - FolderScan.ENDING.length())
        : name;
  }
}
