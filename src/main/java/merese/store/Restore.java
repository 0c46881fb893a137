package merese.store;

import java.io.FilterOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.channels.Channels;
import java.nio.channels.FileChannel;
import java.nio.file.DirectoryStream;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.nio.file.attribute.FileTime;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import java.util.zip.ZipEntry;

/**
 * Makes a library of a backup. It is written under a hidden name in the folder, compared with the
 * backup's sums and forced to the disk, and only then gets its own name: what is there is whole, or
 * nothing is.
 */
public final class Restore {
  private static final String DRAFT = ".restoring-";

  private final Path zip;
  private final Path dir;
  private final Set<Path> folders = new HashSet<>();

  private Restore(Path zip, Path dir) {
    this.zip = zip;
    this.dir = dir;
  }

  /**
   * What was written.
   *
   * @param library the folder of the library
   */
  public record Written(Path library, int files, long bytes) {}

  /**
   * @param dir a folder that is not there, or is empty; the library will be {@code library} in it
   */
  public static Written to(Path dir, Path zip) {
    return new Restore(zip, dir).write();
  }

  private Written write() {
    requireEmpty();
    if (!Files.isRegularFile(zip)) {
      throw new LibraryException(
          zip, Files.exists(zip) ? "this is no file" : "there is no such file", "name a backup");
    }
    boolean made = !Files.exists(dir);
    Path draft = dir.resolve(DRAFT + Disk.unique());
    boolean done = false;
    try {
      Files.createDirectories(draft);
      BackupReader.Total total =
          BackupReader.read(zip, null, (relative, entry) -> open(draft, relative, entry));
      for (Path folder : folders) {
        Disk.forceFolder(folder);
      }
      Path library = dir.resolve(LibraryFinder.LIBRARY);
      Files.move(draft, library, StandardCopyOption.ATOMIC_MOVE);
      Disk.forceFolder(dir);
      done = true;
      return new Written(library, total.files(), total.bytes());
    } catch (IOException e) {
      throw Disk.unwritable(dir, e);
    } finally {
      if (!done) {
        discard(draft);
        if (made) {
          discard(dir);
        }
      }
    }
  }

  /** What another restoring has left behind, which was ended, is taken away. */
  private void requireEmpty() {
    if (!Files.exists(dir, LinkOption.NOFOLLOW_LINKS)) {
      return;
    }
    if (!Files.isDirectory(dir)) {
      throw new LibraryException(dir, "this is no folder", "name one that is not there yet");
    }
    try (DirectoryStream<Path> content = Files.newDirectoryStream(dir)) {
      for (Path path : content) {
        if (!path.getFileName().toString().startsWith(DRAFT)) {
          throw new LibraryException(
              dir,
              "the folder is not empty, and nothing in it is written over",
              "name one that is empty or not there yet");
        }
        discard(path);
      }
    } catch (IOException e) {
      throw Disk.unreadable(dir, e);
    }
  }

  private OutputStream open(Path draft, String relative, ZipEntry entry) throws IOException {
    Path file;
    try {
      file = draft.resolve(relative);
    } catch (InvalidPathException e) {
      throw new IOException("no file can have the name " + Quote.of(relative), e);
    }
    if (!file.normalize().startsWith(draft.normalize())) {
      throw new IOException("the name " + Quote.of(relative) + " leads out of the library");
    }
    Files.createDirectories(file.getParent());
    folders.add(file.getParent());
    FileChannel channel =
        FileChannel.open(file, StandardOpenOption.WRITE, StandardOpenOption.CREATE_NEW);
    FileTime time = entry.getLastModifiedTime();
    return new FilterOutputStream(Channels.newOutputStream(channel)) {
      @Override
      public void write(byte[] bytes, int from, int length) throws IOException {
        out.write(bytes, from, length);
      }

      @Override
      public void close() throws IOException {
        if (channel.isOpen()) {
          channel.force(true);
          channel.close();
          if (time != null) {
            Files.setLastModifiedTime(file, time);
          }
        }
      }
    };
  }

  private static void discard(Path folder) {
    if (!Files.exists(folder, LinkOption.NOFOLLOW_LINKS)) {
      return;
    }
    try (Stream<Path> content = Files.walk(folder)) {
      List<Path> paths = content.sorted(Comparator.reverseOrder()).toList();
      for (Path path : paths) {
        Files.delete(path);
      }
    } catch (IOException e) {
      throw Disk.unwritable(folder, e);
    }
  }
}
