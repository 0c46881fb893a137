package merese.store;

import java.io.IOException;
import java.nio.file.DirectoryIteratorException;
import java.nio.file.DirectoryStream;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.NoSuchFileException;
import java.nio.file.NotDirectoryException;
import java.nio.file.Path;
import java.nio.file.attribute.BasicFileAttributes;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.OptionalLong;
import java.util.concurrent.TimeUnit;

/**
 * Lists the files of a library without reading them: one look at each. Hidden files, among them the
 * temporary ones of a save, are not of the library. A link to a file is followed, one to a folder
 * is not, so that a scan always ends.
 */
final class FolderScan {
  static final String ENDING = ".json";
  static final String SETTINGS = "library.json";
  static final String MINE = "mine.json";
  static final String RECEIVED = "received.json";
  static final String REJECTED = "rejected";
  static final String PICTURES = "pictures";
  static final String PAGES = "pages";
  static final String WORKS = "works";
  static final String OBJECTS = "objects";
  static final String VOCABULARY = "vocabulary";
  static final String HOMONYMS = "homonyms.json";
  static final String CHARACTERS = "characters.json";

  /** The folders below the library's own. */
  static final List<String> TOPS = List.of(OBJECTS, PAGES, VOCABULARY, WORKS);

  private static final LinkOption[] FOLLOWED = {};
  private static final LinkOption[] NOT_FOLLOWED = {LinkOption.NOFOLLOW_LINKS};

  private final Path root;
  private final List<LibraryFile> files = new ArrayList<>();
  private final List<LibraryFolder.Folder> folders = new ArrayList<>();

  /** The folders in the one that is listed by itself; null where a scan goes into them. */
  private List<String> inside;

  FolderScan(Path root) {
    this.root = root;
  }

  /** In the order of their relative paths. */
  List<LibraryFile> files() {
    singles();
    walk(root.resolve(WORKS), WORKS, LibraryFile.Kind.WORK);
    walk(root.resolve(OBJECTS), OBJECTS, LibraryFile.Kind.OBJECT);
    walk(root.resolve(VOCABULARY), VOCABULARY, LibraryFile.Kind.VOCABULARY);
    walk(root.resolve(PAGES), PAGES, LibraryFile.Kind.PAGES);
    Collections.sort(files);
    return files;
  }

  /** The files in one folder of the library's, and in the folders in it. */
  List<LibraryFile> below(String folder) {
    walk(root.resolve(folder), folder, kindIn(folder));
    return files;
  }

  /** The page texts in one folder of them, in the order of their paths. */
  List<LibraryFile> pages(String folder) {
    walk(root.resolve(PAGES).resolve(folder), PAGES + '/' + folder, LibraryFile.Kind.PAGES);
    Collections.sort(files);
    return files;
  }

  /** All page texts, in the order of their paths. */
  List<LibraryFile> pages() {
    walk(root.resolve(PAGES), PAGES, LibraryFile.Kind.PAGES);
    Collections.sort(files);
    return files;
  }

  private void singles() {
    single(SETTINGS, LibraryFile.Kind.SETTINGS);
    single(MINE, LibraryFile.Kind.MINE);
    single(RECEIVED, LibraryFile.Kind.RECEIVED);
  }

  /** As {@link LibraryFolder#list}. */
  Optional<LibraryFolder.Listing> list(String relative) {
    if (relative.isEmpty()) {
      singles();
      Collections.sort(files);
      return Optional.of(new LibraryFolder.Listing(modified(root), files, TOPS));
    }
    Path folder = root.resolve(relative);
    if (!isFolder(folder, relative)) {
      return Optional.empty();
    }
    long modified = modified(folder); // before the files: a change in between then shows
    inside = new ArrayList<>();
    walk(folder, relative, kindIn(relative));
    Collections.sort(files);
    return Optional.of(new LibraryFolder.Listing(modified, files, inside));
  }

  /** As {@link LibraryFolder#timeOf}. */
  OptionalLong timeOf(String relative) {
    Path folder = root.resolve(relative);
    LinkOption[] links = TOPS.contains(relative) ? FOLLOWED : NOT_FOLLOWED;
    try {
      BasicFileAttributes found = Files.readAttributes(folder, BasicFileAttributes.class, links);
      return found.isDirectory() || links == FOLLOWED
          ? OptionalLong.of(found.lastModifiedTime().to(TimeUnit.NANOSECONDS))
          : OptionalLong.empty();
    } catch (IOException e) {
      return OptionalLong.empty();
    }
  }

  /** As {@link LibraryFolder#look}. */
  Optional<LibraryFile> look(String relative) {
    Path path = root.resolve(relative);
    inside = new ArrayList<>();
    if (relative.indexOf('/') >= 0) {
      look(path, relative, kindIn(relative));
    } else {
      singles();
    }
    for (LibraryFile file : files) {
      if (file.relative().equals(relative)) {
        return Optional.of(file);
      }
    }
    return Optional.empty();
  }

  /** Of the library's own folders a link is followed. */
  private static boolean isFolder(Path folder, String relative) {
    return TOPS.contains(relative)
        ? Files.exists(folder)
        : Files.isDirectory(folder, LinkOption.NOFOLLOW_LINKS);
  }

  private static long modified(Path folder) {
    try {
      return Files.getLastModifiedTime(folder).to(TimeUnit.NANOSECONDS);
    } catch (IOException e) {
      throw Disk.unreadable(folder, e);
    }
  }

  private static LibraryFile.Kind kindIn(String relative) {
    if (isIn(WORKS, relative)) {
      return LibraryFile.Kind.WORK;
    }
    if (isIn(PAGES, relative)) {
      return LibraryFile.Kind.PAGES;
    }
    return isIn(OBJECTS, relative) ? LibraryFile.Kind.OBJECT : LibraryFile.Kind.VOCABULARY;
  }

  private static boolean isIn(String top, String relative) {
    return relative.equals(top) || relative.startsWith(top + '/');
  }

  /** The folders that a scan looks into, the library's own ("") first. */
  List<LibraryFolder.Folder> folders() {
    folder(root, "");
    walk(root.resolve(WORKS), WORKS, null);
    walk(root.resolve(OBJECTS), OBJECTS, null);
    walk(root.resolve(VOCABULARY), VOCABULARY, null);
    walk(root.resolve(PAGES), PAGES, null);
    return folders;
  }

  private void single(String name, LibraryFile.Kind kind) {
    Path path = root.resolve(name);
    try {
      add(kind, path, name, Files.readAttributes(path, BasicFileAttributes.class));
    } catch (NoSuchFileException e) {
      // Any may be missing: open() has looked for the first, and without the others there is
      // nothing.
    } catch (IOException e) {
      throw Disk.unreadable(path, e);
    }
  }

  private void folder(Path path, String relative) {
    folders.add(new LibraryFolder.Folder(relative, modified(path)));
  }

  /** Lists the folders where {@code kind} is null, else the files. */
  private void walk(Path folder, String relative, LibraryFile.Kind kind) {
    List<Path> entries = new ArrayList<>();
    try (DirectoryStream<Path> stream = Files.newDirectoryStream(folder)) {
      for (Path entry : stream) {
        entries.add(entry);
      }
    } catch (NoSuchFileException e) {
      return;
    } catch (NotDirectoryException e) {
      throw new LibraryException(folder, "this must be a folder", "move the file out of the way");
    } catch (IOException | DirectoryIteratorException e) {
      throw Disk.unreadable(folder, e);
    }
    if (kind == null) {
      folder(folder, relative);
    }
    for (Path entry : entries) {
      String name = entry.getFileName().toString();
      if (!name.startsWith(".")) {
        look(entry, relative + '/' + name, kind);
      }
    }
  }

  private void look(Path path, String relative, LibraryFile.Kind kind) {
    try {
      BasicFileAttributes found =
          Files.readAttributes(path, BasicFileAttributes.class, LinkOption.NOFOLLOW_LINKS);
      if (found.isDirectory()) {
        if (inside == null) {
          walk(path, relative, kind);
        } else {
          inside.add(relative);
        }
      } else if (kind != null && relative.endsWith(ENDING)) {
        boolean link = found.isSymbolicLink();
        add(
            kindOf(relative, kind),
            path,
            relative,
            link ? Files.readAttributes(path, BasicFileAttributes.class) : found);
      }
    } catch (NoSuchFileException e) {
      // Deleted since it was listed, or a link that leads nowhere.
    } catch (IOException e) {
      throw Disk.unreadable(path, e);
    }
  }

  private static LibraryFile.Kind kindOf(String relative, LibraryFile.Kind ofFolder) {
    if (relative.equals(VOCABULARY + '/' + HOMONYMS)) {
      return LibraryFile.Kind.HOMONYMS;
    }
    return relative.equals(VOCABULARY + '/' + CHARACTERS) ? LibraryFile.Kind.CHARACTERS : ofFolder;
  }

  private void add(
      LibraryFile.Kind kind, Path path, String relative, BasicFileAttributes attributes) {
    if (attributes.isRegularFile()) {
      long modified = attributes.lastModifiedTime().to(TimeUnit.NANOSECONDS);
      files.add(new LibraryFile(kind, path, relative, attributes.size(), modified));
    }
  }
}
