package merese.store;

import java.io.IOException;
import java.nio.file.DirectoryIteratorException;
import java.nio.file.DirectoryStream;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.HashSet;
import java.util.Set;

/**
 * The hidden folder of a library that holds the new bytes of a change until all of them are safely
 * on the disk. Whoever holds the library's lock owns it; one that was left behind without a {@link
 * Journal} was never decided on, and is discarded.
 */
final class Staging {
  static final String FOLDER = ".change";

  private final Path root;
  private final Path folder;
  private final Steps steps;
  private int count;

  Staging(Path root, Steps steps) {
    this.root = root;
    this.folder = root.resolve(FOLDER);
    this.steps = steps;
  }

  /** Whether nothing has been put by. */
  boolean isEmpty() {
    return count == 0;
  }

  static boolean isThere(Path root) {
    return Files.exists(root.resolve(FOLDER), LinkOption.NOFOLLOW_LINKS);
  }

  static Path file(Path root, int staged) {
    return root.resolve(FOLDER).resolve(Integer.toString(staged));
  }

  /**
   * Puts bytes by, forced to the disk.
   *
   * @param target the file that they are for, whose permissions they take over where it exists
   * @return the number that they are kept under
   */
  int put(Path target, byte[] bytes) {
    try {
      if (count == 0) {
        steps.before("make the staging folder");
        Files.createDirectory(folder);
        Disk.forceFolder(root);
      }
      steps.before("stage a file");
      Path file = file(root, count);
      Disk.write(file, bytes);
      Disk.copyPermissions(target, file);
      return count++;
    } catch (IOException e) {
      throw Disk.unwritable(target, e);
    }
  }

  /**
   * Makes sure, before anything is decided, that the files can be renamed to where they belong:
   * that each folder can be written to and is on the same disk.
   *
   * @param targets paths below the library folder
   */
  void tryFolders(Iterable<String> targets) {
    Set<Path> tried = new HashSet<>();
    for (String target : targets) {
      Path below = root.resolve(target).getParent();
      while (!Files.exists(below)) {
        below = below.getParent();
      }
      if (tried.add(below)) {
        tryFolder(below);
      }
    }
  }

  private void tryFolder(Path below) {
    Path probe = folder.resolve("probe");
    Path moved = below.resolve(".probe-" + ProcessHandle.current().pid() + ".tmp");
    try {
      steps.before("try a folder");
      if (!Files.isDirectory(folder)) {
        Files.createDirectory(folder); // a change that only deletes has staged nothing
      }
      Disk.write(probe, new byte[0]);
      try {
        Files.move(probe, moved, StandardCopyOption.ATOMIC_MOVE);
      } finally {
        Files.deleteIfExists(moved);
      }
    } catch (IOException e) {
      throw Disk.unwritable(below, e);
    }
  }

  /** Removes the folder and what is in it; there must be no journal. */
  static void discard(Path root) {
    Path folder = root.resolve(FOLDER);
    if (!isThere(root)) {
      return;
    }
    try {
      if (Files.isDirectory(folder, LinkOption.NOFOLLOW_LINKS)) {
        try (DirectoryStream<Path> content = Files.newDirectoryStream(folder)) {
          for (Path file : content) {
            Files.delete(file);
          }
        }
      }
      Files.delete(folder);
    } catch (IOException | DirectoryIteratorException e) {
      LibraryException failure =
          new LibraryException(
              folder,
              "what a change that was broken off has left here cannot be removed",
              "delete this folder; nothing in it is of the library");
      failure.initCause(e);
      throw failure;
    }
  }
}
