package merese.store;

import java.io.IOException;
import java.nio.file.DirectoryIteratorException;
import java.nio.file.DirectoryStream;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.NotDirectoryException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;

/**
 * The hidden folder of a library with a file for each change, named by its number. The last {@value
 * #MOST} changes are kept, and fewer where they take more than {@value #LARGEST} bytes.
 */
final class HistoryFolder {
  static final String FOLDER = ".history";
  static final int MOST = 1_000;
  static final long LARGEST = 100L << 20;

  private static final int DIGITS = 8;

  /** The files of an import of many thousands are written without white space. */
  private static final int MOST_FOR_READERS = 1_000;

  /** Looking for what is too old takes a look at each file, so it is not done at each change. */
  private static final int BETWEEN_PRUNINGS = 20;

  private final Path root;
  private final Path folder;

  HistoryFolder(Path root) {
    this.root = root;
    this.folder = root.resolve(FOLDER);
  }

  /** The numbers of the changes that are kept, in their order. */
  List<Integer> numbers() {
    List<Integer> numbers = new ArrayList<>();
    if (Files.isSymbolicLink(folder)) {
      throw new LibraryException(
          folder, "the history is a link, and is not followed", "put the folder itself here");
    }
    try (DirectoryStream<Path> stream = Files.newDirectoryStream(folder)) {
      for (Path path : stream) {
        int number = number(path.getFileName().toString());
        if (number > 0) {
          numbers.add(number);
        }
      }
    } catch (NoSuchFileException e) {
      return numbers;
    } catch (NotDirectoryException e) {
      throw new LibraryException(folder, "this must be a folder", "move the file out of the way");
    } catch (IOException | DirectoryIteratorException e) {
      throw Disk.unreadable(folder, e);
    }
    Collections.sort(numbers);
    return numbers;
  }

  /** 0 for what is no change's file. */
  private static int number(String name) {
    if (name.length() != DIGITS + FolderScan.ENDING.length() || !name.endsWith(FolderScan.ENDING)) {
      return 0;
    }
    int number = 0;
    for (int i = 0; i < DIGITS; i++) {
      char c = name.charAt(i);
      if (c < '0' || c > '9') {
        return 0;
      }
      number = number * 10 + c - '0';
    }
    return number;
  }

  Path file(int number) {
    String digits = Integer.toString(number);
    return folder.resolve("0".repeat(DIGITS - digits.length()) + digits + FolderScan.ENDING);
  }

  /** Its path below the library folder. */
  String relative(int number) {
    return FOLDER + '/' + file(number).getFileName();
  }

  static byte[] bytes(HistoryEntry entry) {
    Json json = ObjectBuilder.object(entry, new HistoryCodec(entry.number()));
    boolean forReaders = entry.files().size() <= MOST_FOR_READERS;
    return forReaders ? JsonPrinter.lines(json) : JsonPrinter.compact(json);
  }

  HistoryEntry read(int number) {
    Path file = file(number);
    return Stored.of(file, Disk.readInside(root, file), new HistoryCodec(number)).value();
  }

  void write(HistoryEntry entry) {
    Disk.replace(file(entry.number()), bytes(entry));
  }

  void remove(int number) {
    try {
      Files.deleteIfExists(file(number));
    } catch (IOException e) {
      throw Disk.unwritable(file(number), e);
    }
  }

  /**
   * The number of the next change. A change of one file is written here first, so one that was
   * broken off then is forgotten now; the caller has the lock.
   */
  int next() {
    List<Integer> numbers = numbers();
    int last = numbers.isEmpty() ? 0 : numbers.get(numbers.size() - 1);
    if (last > 0 && wasBrokenOff(last)) {
      remove(last);
      return last;
    }
    return last + 1;
  }

  /** Whether a change, the last one, was not carried out. */
  boolean wasBrokenOff(int last) {
    HistoryEntry entry;
    try {
      entry = read(last);
    } catch (LibraryException e) {
      return false; // somebody else's damage is kept to be looked at
    }
    if (entry.files().size() != 1) {
      return false;
    }
    AlteredFile file = entry.files().get(0);
    byte[] now;
    try {
      now = Disk.readIfThere(root.resolve(file.file()));
    } catch (LibraryException e) {
      return false;
    }
    return !file.was().equals(file.is()) && Hash.of(now).equals(file.was());
  }

  /** Forgets what is too old; that it cannot is no reason to fail, since it is tried again. */
  void prune(int newest) {
    if (newest % BETWEEN_PRUNINGS != 0) {
      return;
    }
    try {
      List<Integer> numbers = numbers();
      long bytes = 0;
      for (int i = numbers.size() - 1; i >= 0; i--) {
        Path file = file(numbers.get(i));
        bytes += Files.size(file);
        if (numbers.size() - i > MOST || (bytes > LARGEST && numbers.get(i) != newest)) {
          Files.deleteIfExists(file);
        }
      }
    } catch (IOException | LibraryException e) {
      return;
    }
  }
}
