package merese.change;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.regex.Pattern;
import merese.model.Concept;
import merese.model.Edition;
import merese.model.Nearest;
import merese.shelf.Watcher;
import merese.store.ChangeSet;
import merese.store.LibraryException;
import merese.store.LibraryFile;
import merese.store.LibraryFile.Kind;
import merese.store.LibraryFolder;
import merese.store.Problem;
import merese.store.Problem.Severity;

/**
 * One file of a library that a person changes by hand. What they wrote is taken byte for byte, if
 * the library has no error with it that it did not have before, and if nobody else has changed the
 * file meanwhile.
 */
public final class FileEdit {
  private static final int MOST_NEAR = 3;

  private final LibraryFolder folder;
  private final LibraryFile file;
  private final byte[] was;

  private FileEdit(LibraryFolder folder, LibraryFile file) {
    folder.requireInside(file.path());
    this.folder = folder;
    this.file = file;
    this.was = read(file.path());
  }

  /**
   * The file of a name: the key of a source, the name of a work, the reference of an object, a
   * facet or a concept, "mine", "homonyms", "characters" or "library", or its path in the library.
   * A file that cannot be read as it is can be named by its own name.
   */
  public static FileEdit of(LibraryFolder folder, String typed) {
    return among(folder, typed, EnumSet.allOf(Kind.class));
  }

  /**
   * The same among files of some kinds, where a facet is called as a work is.
   *
   * @throws ChangeRefusedException where none of them is called so, or several are
   */
  public static FileEdit among(LibraryFolder folder, String typed, Set<Kind> kinds) {
    String name = typed.strip();
    List<LibraryFile> files =
        folder.scan().stream().filter(file -> kinds.contains(file.kind())).toList();
    Set<LibraryFile> found = new LinkedHashSet<>();
    Set<String> names = new LinkedHashSet<>();
    Map<LibraryFile, Problem> unread = new LinkedHashMap<>();
    for (LibraryFile file : files) {
      if (file.relative().equals(name) || file.relative().equals(name + ".json")) {
        return new FileEdit(folder, file);
      }
      names.add(file.name());
      if (file.name().equals(name)) {
        found.add(file);
      }
    }
    if (found.isEmpty()) {
      for (LibraryFile file : files) {
        if (namesIn(folder, file, names, unread).contains(name)) {
          found.add(file);
        }
      }
    }
    if (found.isEmpty()) {
      unread.keySet().stream().filter(file -> mentions(file, name)).forEach(found::add);
    }
    if (found.size() == 1) {
      return new FileEdit(folder, found.iterator().next());
    }
    List<String> near = Nearest.to(name, names, MOST_NEAR);
    throw new ChangeRefusedException(
        found.isEmpty()
            ? "nothing in the library is called "
                + name
                + (near.isEmpty()
                    ? "; name a source by its key, an object by its reference, a facet, or mine,"
                        + " homonyms, characters or library"
                    : "; did you mean " + String.join(" or ", near) + "?")
                + Unread.words(List.copyOf(unread.values()))
            : name
                + " is the name of several files; name one by its path: "
                + String.join(", ", found.stream().map(LibraryFile::relative).toList()));
  }

  /** The keys of a work's editions, the concepts of a facet. */
  private static Set<String> namesIn(
      LibraryFolder folder, LibraryFile file, Set<String> all, Map<LibraryFile, Problem> unread) {
    Set<String> names = new LinkedHashSet<>();
    try {
      if (file.kind() == Kind.WORK) {
        for (Edition edition : folder.readWork(file.path()).value().editions()) {
          names.add(edition.key());
        }
      } else if (file.kind() == Kind.VOCABULARY) {
        for (Concept concept : folder.readVocabulary(file.path()).value().concepts()) {
          names.add(concept.id());
        }
      }
    } catch (LibraryException e) {
      unread.put(file, Unread.below(folder, file, e.problems())); // see mentions()
    }
    all.addAll(names);
    return names;
  }

  /** Whether a file that cannot be read has the words that would give something in it a name. */
  private static boolean mentions(LibraryFile file, String name) {
    if (Files.isSymbolicLink(file.path()) || file.size() > LibraryFolder.LARGEST_FILE) {
      return false;
    }
    try {
      String text = new String(Files.readAllBytes(file.path()), StandardCharsets.UTF_8);
      return Pattern.compile("\"(key|id)\"\\s*:\\s*\"" + Pattern.quote(name) + "\"")
          .matcher(text)
          .find();
    } catch (IOException e) {
      return false;
    }
  }

  private static byte[] read(Path path) {
    try {
      return Files.readAllBytes(path);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** The file, as the library was addressed. */
  public Path file() {
    return file.path();
  }

  /** What it held when this was made. */
  public byte[] content() {
    return was.clone();
  }

  /** Its path below the library folder. */
  public String relative() {
    return file.relative();
  }

  /** Whether the file no longer is what this was made from. */
  public boolean isOvertaken() {
    try {
      return !Arrays.equals(was, Files.readAllBytes(file.path()));
    } catch (IOException e) {
      return true;
    }
  }

  /**
   * Takes what was written.
   *
   * @return the errors that the library would have with it and has not now, with nothing written;
   *     none where it was taken
   * @throws LibraryException where somebody else has changed the file
   */
  public List<Problem> take(byte[] written, Watcher watcher) {
    return make(written, watcher).result();
  }

  /** The same, with what the history calls it. */
  public Made<List<Problem>> make(byte[] written, Watcher watcher) {
    try (ChangeSet change = folder.change("edit " + file.relative())) {
      LibraryCheck then = LibraryCheck.of(folder, watcher, Map.of(file.path(), written));
      List<Problem> wrong = errors(then);
      if (!wrong.isEmpty()) {
        List<String> before =
            new ArrayList<>(
                errors(LibraryCheck.of(folder, watcher)).stream().map(FileEdit::essence).toList());
        wrong = wrong.stream().filter(problem -> !before.remove(essence(problem))).toList();
      }
      if (wrong.isEmpty() && !Arrays.equals(was, written)) {
        change.replace(file, was, written);
        change.commit();
      }
      return new Made<>(wrong, change.number());
    }
  }

  private static List<Problem> errors(LibraryCheck check) {
    return check.problems().stream().filter(p -> p.severity() == Severity.ERROR).toList();
  }

  /** Without its line, which moves when something is written above it. */
  private static String essence(Problem problem) {
    return problem.file() + ": " + problem.what();
  }
}
