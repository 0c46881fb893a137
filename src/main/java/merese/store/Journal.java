package merese.store;

import java.io.BufferedReader;
import java.io.BufferedWriter;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;

/**
 * The list of what a change of several files does. Once it stands in the staging folder, the change
 * is decided: it is carried out, by whoever next has the library's lock if need be. That can be
 * done any number of times: what is done already, or was taken away since, is passed over.
 *
 * <p>It is text: a first line, a line a file with the path at its end, and the number of the files.
 */
final class Journal {
  private static final String FIRST = "merese change 1";
  private static final String LAST = "end ";
  private static final String PUT = "put ";
  private static final String DELETE = "delete ";

  private final Path root;
  private final Path folder;
  private final Path file;
  private final Steps steps;

  Journal(Path root, Steps steps) {
    this.root = root;
    this.folder = root.resolve(Staging.FOLDER);
    this.file = folder.resolve("journal");
    this.steps = steps;
  }

  boolean isThere() {
    return Files.exists(file, LinkOption.NOFOLLOW_LINKS);
  }

  /** Decides: after this the change is made, whatever happens. */
  void write(List<FileChange> changes) {
    Path draft = folder.resolve("journal.tmp");
    try {
      steps.before("write the journal");
      try (BufferedWriter out = Files.newBufferedWriter(draft, StandardCharsets.UTF_8)) {
        out.write(FIRST + '\n');
        for (FileChange change : changes) {
          String what = change.deletes() ? DELETE : PUT + change.staged() + ' ';
          out.write(what + change.was() + ' ' + change.to() + '\n');
        }
        out.write(LAST + changes.size() + '\n');
      }
      steps.before("force the journal");
      Disk.force(draft);
      Disk.forceFolder(folder);
      steps.before("decide");
      Files.move(draft, file, StandardCopyOption.ATOMIC_MOVE);
    } catch (IOException e) {
      throw Disk.unwritable(root, e);
    }
  }

  /** Does what a journal that was found here says; the caller has the lock. */
  void finish() {
    List<FileChange> changes = read();
    for (FileChange change : changes) {
      requireUntouched(change);
    }
    carryOut(changes);
  }

  private List<FileChange> read() {
    List<FileChange> changes = new ArrayList<>();
    try (BufferedReader in = Files.newBufferedReader(file, StandardCharsets.UTF_8)) {
      boolean whole = FIRST.equals(in.readLine());
      String line = in.readLine();
      while (whole && line != null && !line.startsWith(LAST)) {
        changes.add(parse(line));
        line = in.readLine();
      }
      if (whole && (LAST + changes.size()).equals(line)) {
        return changes;
      }
    } catch (IOException | IllegalArgumentException e) {
      throw damaged(e);
    }
    throw damaged(null);
  }

  private static FileChange parse(String line) {
    String[] words = line.split(" ", line.startsWith(PUT) ? 4 : 3);
    boolean put = line.startsWith(PUT) && words.length == 4;
    if (!put && !(line.startsWith(DELETE) && words.length == 3)) {
      throw new IllegalArgumentException(line);
    }
    String to = words[words.length - 1];
    if (!isOfALibrary(to)) {
      throw new IllegalArgumentException(to);
    }
    int staged = put ? Integer.parseUnsignedInt(words[1]) : FileChange.DELETED;
    return new FileChange(staged, to, words[words.length - 2]);
  }

  /** A library may come from anybody, so its journal must not reach beyond it. */
  private static boolean isOfALibrary(String path) {
    boolean history = path.startsWith(HistoryFolder.FOLDER + '/');
    for (String name : (history ? path.substring(1) : path).split("/", -1)) {
      if (name.isEmpty() || name.startsWith(".") || name.indexOf('\\') >= 0) {
        return false;
      }
    }
    return path.indexOf(':') < 0;
  }

  private LibraryException damaged(Exception cause) {
    LibraryException failure =
        new LibraryException(
            file,
            "a change of several files was broken off, and the list of what is left to do is"
                + " damaged",
            "move the folder "
                + Staging.FOLDER
                + " out of the library, compare the files in it with those of the library, and run"
                + " merese check");
    failure.initCause(cause);
    return failure;
  }

  /** What somebody has written in the meantime is never written over. */
  private void requireUntouched(FileChange change) {
    Path target = root.resolve(change.to());
    if (!change.deletes() && !Files.exists(Staging.file(root, change.staged()))) {
      return; // it is in its place
    }
    String now = Hash.of(Disk.readIfThere(target));
    if (!now.equals(Hash.NONE) && !now.equals(change.was())) {
      throw new LibraryException(
          target,
          "a change of several files was broken off before it came to this one, and somebody has"
              + " edited it since",
          "move it out of the library and run merese again, which finishes that change; then make"
              + " your edit again");
    }
  }

  /**
   * Puts every file in its place. Readers that compare {@link ChangeMark} before and after see that
   * they were disturbed.
   */
  void carryOut(List<FileChange> changes) {
    Set<Path> folders = new LinkedHashSet<>();
    try {
      steps.before("force the decision");
      Disk.forceFolder(folder);
      steps.before("mark the change");
      ChangeMark.renew(root);
      for (FileChange change : changes) {
        Path target = root.resolve(change.to());
        if (!change.deletes()) {
          put(Staging.file(root, change.staged()), target, folders);
        }
      }
      for (FileChange change : changes) {
        if (change.deletes()) {
          steps.before("delete a file");
          Files.deleteIfExists(root.resolve(change.to()));
          folders.add(root.resolve(change.to()).getParent());
        }
      }
      for (Path each : folders) {
        steps.before("force a folder");
        Disk.forceFolder(each);
      }
      steps.before("remove the journal");
      Files.delete(file);
      Disk.forceFolder(folder);
    } catch (IOException e) {
      throw unfinished(e);
    }
  }

  private void put(Path staged, Path target, Set<Path> folders) throws IOException {
    Path parent = target.getParent();
    for (Path missing = parent; !Files.isDirectory(missing); missing = missing.getParent()) {
      folders.add(missing.getParent());
    }
    steps.before("make a folder");
    Files.createDirectories(parent);
    steps.before("put a file in its place");
    if (Files.exists(staged, LinkOption.NOFOLLOW_LINKS)) {
      Files.move(
          staged, target, StandardCopyOption.ATOMIC_MOVE, StandardCopyOption.REPLACE_EXISTING);
    }
    folders.add(parent);
  }

  private LibraryException unfinished(IOException cause) {
    LibraryException failure =
        new LibraryException(
            root,
            "the change is decided and begun, but could not be finished" + Disk.reason(cause),
            "put that right; the next merese command on this library finishes the change");
    failure.initCause(cause);
    return failure;
  }
}
