package merese.store;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.file.AccessDeniedException;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.nio.file.attribute.BasicFileAttributes;
import java.nio.file.attribute.PosixFileAttributeView;
import java.nio.file.attribute.PosixFilePermission;
import java.util.Set;
import java.util.concurrent.atomic.AtomicLong;

/** Reading whole files, and replacing them so that a crash leaves the old one or the new one. */
final class Disk {
  /** The size from which a file is taken for a mistake; a work of 10,000 notes has some 5 MB. */
  static final long LARGEST = 64L << 20;

  private static final AtomicLong COUNTER = new AtomicLong();

  private Disk() {}

  /** The bytes of a regular file; null where there is none. */
  static byte[] readIfThere(Path file) {
    try {
      BasicFileAttributes found = Files.readAttributes(file, BasicFileAttributes.class);
      if (!found.isRegularFile()) {
        throw new LibraryException(
            file,
            found.isDirectory() ? "this must be a file, not a folder" : "this is no regular file",
            "move it out of the way");
      }
      if (found.size() > LARGEST) {
        throw new LibraryException(
            file,
            "the file is " + (found.size() >> 20) + " MB large",
            "one file may have " + (LARGEST >> 20) + " MB; divide it");
      }
      return Files.readAllBytes(file);
    } catch (NoSuchFileException e) {
      return null;
    } catch (IOException e) {
      throw unreadable(file, e);
    }
  }

  static byte[] read(Path file) {
    byte[] bytes = readIfThere(file);
    if (bytes == null) {
      throw new LibraryException(file, "there is no such file", "");
    }
    return bytes;
  }

  /** The bytes of a file of a library, which no link leads out of; null where there is none. */
  static byte[] readInsideIfThere(Path root, Path file) {
    requireInside(root, file);
    return readIfThere(file);
  }

  static byte[] readInside(Path root, Path file) {
    requireInside(root, file);
    return read(file);
  }

  /**
   * Refuses a file that is, or stands behind, a link out of the library: a library may come from
   * anybody, and what else is on the disk is not theirs to show. The library itself may be reached
   * through a link.
   */
  static void requireInside(Path root, Path file) {
    if (!isInside(root, file)) {
      throw new LibraryException(
          file,
          Files.isSymbolicLink(file)
              ? "this is a link that leads out of the library, and is not followed"
              : "this stands behind a link that leads out of the library, and is not followed",
          "put the file itself there");
    }
  }

  /** Whether no link leads from a file out of its library; so it is where there is no file. */
  static boolean isInside(Path root, Path file) {
    try {
      return file.toRealPath().startsWith(root.toRealPath());
    } catch (NoSuchFileException e) {
      return true;
    } catch (IOException e) {
      throw unreadable(file, e);
    }
  }

  /** Refuses a target that a rename would replace against the user's will. */
  static void requireReplaceable(Path file) {
    if (Files.isSymbolicLink(file)) {
      throw new LibraryException(
          file,
          "this is a symbolic link, and saving would replace the link, not what it leads to",
          "put the file itself here");
    }
    if (Files.exists(file) && isReadOnly(file)) {
      throw new LibraryException(
          file,
          "the file is read-only; nothing was written",
          "allow writing to it, then save again");
    }
  }

  private static boolean isReadOnly(Path file) {
    Set<PosixFilePermission> permissions = permissions(file);
    return permissions == null
        ? !Files.isWritable(file)
        : !permissions.contains(PosixFilePermission.OWNER_WRITE);
  }

  /** Null on a file system without them. */
  private static Set<PosixFilePermission> permissions(Path file) {
    try {
      PosixFileAttributeView view =
          Files.getFileAttributeView(file, PosixFileAttributeView.class, LinkOption.NOFOLLOW_LINKS);
      return view == null ? null : view.readAttributes().permissions();
    } catch (IOException e) {
      throw unreadable(file, e);
    }
  }

  /**
   * Puts bytes where a file is or shall be: written to a hidden file beside it, forced to the disk,
   * renamed over it, and the folder forced too.
   */
  static void replace(Path file, byte[] bytes) {
    Path temporary = temporaryFor(file);
    try {
      createFolders(file.getParent());
      write(temporary, bytes);
      copyPermissions(file, temporary);
      Files.move(
          temporary, file, StandardCopyOption.ATOMIC_MOVE, StandardCopyOption.REPLACE_EXISTING);
    } catch (IOException e) {
      LibraryException failure = unwritable(file, e);
      try {
        Files.deleteIfExists(temporary);
      } catch (IOException left) {
        failure.addSuppressed(left); // hidden, so nothing to a reader
      }
      throw failure;
    }
    forceFolder(file.getParent());
  }

  /** Deletes a file so that it stays deleted. */
  static void delete(Path file) {
    try {
      Files.delete(file);
    } catch (IOException e) {
      throw unwritable(file, e);
    }
    forceFolder(file.getParent());
  }

  /** Gives a file the permissions of one that it will replace; nothing where that is not there. */
  static void copyPermissions(Path from, Path to) throws IOException {
    Set<PosixFilePermission> permissions = Files.exists(from) ? permissions(from) : null;
    if (permissions != null) {
      Files.setPosixFilePermissions(to, permissions);
    }
  }

  /** Hidden, so that no scan takes it for a file of the library. */
  private static Path temporaryFor(Path file) {
    return file.resolveSibling("." + shortened(file) + "." + unique() + ".tmp");
  }

  /** A word that no other process, and nothing else in this one, makes. */
  static String unique() {
    long pid = ProcessHandle.current().pid();
    return pid + "-" + Long.toString(System.nanoTime(), 36) + COUNTER.incrementAndGet();
  }

  private static String shortened(Path file) {
    String name = file.getFileName().toString();
    return name.length() <= 40 ? name : name.substring(0, name.offsetByCodePoints(0, 20));
  }

  private static void createFolders(Path folder) throws IOException {
    if (!Files.isDirectory(folder)) {
      Files.createDirectories(folder);
      forceFolder(folder.getParent());
    }
  }

  /** A new file, forced to the disk. */
  static void write(Path file, byte[] bytes) throws IOException {
    try (FileChannel channel =
        FileChannel.open(file, StandardOpenOption.WRITE, StandardOpenOption.CREATE_NEW)) {
      ByteBuffer buffer = ByteBuffer.wrap(bytes);
      while (buffer.hasRemaining()) {
        channel.write(buffer);
      }
      channel.force(true);
    }
  }

  static void force(Path file) throws IOException {
    try (FileChannel channel = FileChannel.open(file, StandardOpenOption.WRITE)) {
      channel.force(true);
    }
  }

  /** Makes a rename last; where a system cannot open a folder, it has no need of it. */
  static void forceFolder(Path folder) {
    FileChannel opened;
    try {
      opened = FileChannel.open(folder, StandardOpenOption.READ);
    } catch (IOException e) {
      return; // Windows refuses to open folders and keeps their entries safe itself.
    }
    try (FileChannel channel = opened) {
      channel.force(true);
    } catch (IOException e) {
      throw failure(folder, "was written to, but the disk does not confirm that it will last", e);
    }
  }

  static LibraryException unreadable(Path file, Exception cause) {
    return failure(file, "cannot be read", cause);
  }

  static LibraryException unwritable(Path file, IOException cause) {
    return failure(file, "cannot be written, and nothing was changed", cause);
  }

  private static LibraryException failure(Path file, String what, Exception cause) {
    String remedy =
        cause instanceof AccessDeniedException
            ? "look at its permissions"
            : "look at the disk and its permissions";
    LibraryException result = new LibraryException(file, what + reason(cause), remedy);
    result.initCause(cause);
    return result;
  }

  /** ": " and what the system says; "" where it says nothing. */
  static String reason(Exception cause) {
    if (cause instanceof AccessDeniedException) {
      return ": access is denied";
    }
    String reason = cause instanceof FileSystemException e ? e.getReason() : cause.getMessage();
    return reason == null ? "" : ": " + reason;
  }
}
