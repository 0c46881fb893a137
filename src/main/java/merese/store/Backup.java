package merese.store;

import java.io.FilterOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.nio.channels.Channels;
import java.nio.channels.FileChannel;
import java.nio.charset.StandardCharsets;
import java.nio.file.FileVisitResult;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.nio.file.SimpleFileVisitor;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.nio.file.attribute.BasicFileAttributes;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;

/**
 * Writes a library, as it is at one moment, into a zip with a list of its files' sums. What is in
 * the files is not looked at, so that a damaged library can be kept as well. The zip is written
 * under a hidden name, forced to the disk, read back against the sums, and only then gets its name.
 *
 * <p>Everything below the library folder goes in, the history too, but the lock and what a change
 * has put by. A link that stays in the library goes in as the file that it leads to, if that is of
 * the library's own kinds; any other is left out, and said.
 */
public final class Backup {
  private final LibraryFolder library;
  private final Path zip;
  private final BackupManifest manifest = new BackupManifest();
  private final List<String> leftOut = new ArrayList<>();
  private long bytes;

  private Backup(LibraryFolder library, Path zip) {
    this.library = library;
    this.zip = zip;
  }

  /**
   * What was written.
   *
   * @param bytes of the files
   * @param zipped bytes of the zip
   * @param leftOut links that are not followed, below the library folder
   */
  public record Written(int files, long bytes, long zipped, List<String> leftOut) {
    public Written {
      leftOut = List.copyOf(leftOut);
    }
  }

  /** One file to be put in, by its path below the library folder. */
  private record Found(String relative, Path path) {}

  /**
   * @param replace whether a file that is there already may be replaced
   */
  public static Written write(LibraryFolder library, Path zip, boolean replace) {
    return new Backup(library, zip).write(replace);
  }

  private Written write(boolean replace) {
    requirePlace(replace);
    Path draft = zip.resolveSibling("." + zip.getFileName() + "." + Disk.unique() + ".tmp");
    try {
      try {
        fill(draft);
        BackupReader.verify(draft, manifest);
        long zipped = Files.size(draft);
        requirePlace(replace);
        Files.move(draft, zip, StandardCopyOption.ATOMIC_MOVE, StandardCopyOption.REPLACE_EXISTING);
        Disk.forceFolder(zip.toAbsolutePath().getParent());
        return new Written(manifest.size(), bytes, zipped, leftOut);
      } finally {
        Files.deleteIfExists(draft);
      }
    } catch (IOException e) {
      throw unwritable(e);
    }
  }

  private LibraryException unwritable(IOException cause) {
    LibraryException failure =
        new LibraryException(
            zip,
            "the zip could not be written" + Disk.reason(cause) + "; there is no backup",
            "look at the room on its disk and at its permissions, or name a file on another disk");
    failure.initCause(cause);
    return failure;
  }

  private void requirePlace(boolean replace) {
    Path folder = zip.toAbsolutePath().getParent();
    if (zip.getFileName() == null || folder == null || !Files.isDirectory(folder)) {
      throw new LibraryException(zip, "there is no folder for this file", "make it first");
    }
    try {
      if (folder.toRealPath().startsWith(library.path().toRealPath())) {
        throw new LibraryException(
            zip, "this is inside the library itself", "name a place outside, on another disk best");
      }
    } catch (IOException e) {
      throw Disk.unreadable(folder, e);
    }
    if (Files.isDirectory(zip)) {
      throw new LibraryException(zip, "this is a folder", "name a file in it");
    }
    if (!replace && Files.exists(zip, LinkOption.NOFOLLOW_LINKS)) {
      throw new LibraryException(
          zip,
          "there is a file of this name already; nothing was written",
          "name another, or say --replace");
    }
  }

  @SuppressWarnings("try")
  private void fill(Path draft) throws IOException {
    try (LibraryLock lock = library.lock();
        FileChannel channel =
            FileChannel.open(draft, StandardOpenOption.WRITE, StandardOpenOption.CREATE_NEW)) {
      OutputStream out = new ToZip(Channels.newOutputStream(channel));
      ZipOutputStream zipped = new ZipOutputStream(out, StandardCharsets.UTF_8);
      for (Found file : files()) {
        put(file, zipped);
      }
      zipped.putNextEntry(new ZipEntry(BackupManifest.NAME));
      zipped.write(manifest.bytes());
      zipped.closeEntry();
      zipped.finish();
      zipped.flush();
      channel.force(true);
    }
  }

  /** That it is the zip which fails, and not a file of the library that is being put into it. */
  private static final class ZipUnwritable extends IOException {
    private static final long serialVersionUID = 1;

    ZipUnwritable(IOException cause) {
      super(Disk.reason(cause).replaceFirst("^: ", ""), cause);
    }
  }

  /** Says of a failure that it is of the zip. */
  private static final class ToZip extends FilterOutputStream {
    ToZip(OutputStream out) {
      super(out);
    }

    @Override
    public void write(int one) throws IOException {
      write(new byte[] {(byte) one}, 0, 1);
    }

    @Override
    public void write(byte[] bytes, int from, int length) throws IOException {
      try {
        out.write(bytes, from, length);
      } catch (IOException e) {
        throw new ZipUnwritable(e);
      }
    }
  }

  private void put(Found file, ZipOutputStream zipped) throws IOException {
    ZipEntry entry = new ZipEntry(BackupManifest.TOP + file.relative());
    entry.setLastModifiedTime(Files.getLastModifiedTime(file.path()));
    try (InputStream in = Files.newInputStream(file.path())) {
      zipped.putNextEntry(entry);
      bytes += manifest.copy(entry.getName(), in, zipped, Long.MAX_VALUE);
      zipped.closeEntry();
    } catch (NoSuchFileException e) {
      leftOut.add(file.relative()); // somebody's editor has deleted it since
    } catch (ZipUnwritable e) {
      throw e;
    } catch (IOException e) {
      throw Disk.unreadable(file.path(), e);
    }
  }

  private List<Found> files() throws IOException {
    Path root = library.path().toRealPath();
    List<Found> files = new ArrayList<>();
    Files.walkFileTree(
        root,
        new SimpleFileVisitor<>() {
          @Override
          public FileVisitResult preVisitDirectory(Path folder, BasicFileAttributes is) {
            return relative(folder).equals(Staging.FOLDER)
                ? FileVisitResult.SKIP_SUBTREE
                : FileVisitResult.CONTINUE;
          }

          @Override
          public FileVisitResult visitFile(Path file, BasicFileAttributes is) {
            String relative = relative(file);
            String name = file.getFileName().toString();
            boolean passing = name.startsWith(".") && name.endsWith(".tmp");
            if (is.isRegularFile()) {
              if (!relative.equals(LibraryLock.FILE) && !passing) {
                files.add(new Found(relative, file));
              }
            } else if (isFileOfTheLibrary(relative)) {
              files.add(new Found(relative, file));
            } else {
              leftOut.add(relative);
            }
            return FileVisitResult.CONTINUE;
          }

          private String relative(Path path) {
            return root.relativize(path)
                .toString()
                .replace(path.getFileSystem().getSeparator(), "/");
          }
        });
    files.sort((a, b) -> a.relative().compareTo(b.relative()));
    Collections.sort(leftOut);
    return files;
  }

  private boolean isFileOfTheLibrary(String relative) {
    for (LibraryFile file : library.scan()) {
      if (file.relative().equals(relative)) {
        return Disk.isInside(library.path(), file.path());
      }
    }
    return false;
  }
}
