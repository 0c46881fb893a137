package merese.change;

import java.nio.file.Path;
import java.util.List;
import merese.store.LibraryFile;
import merese.store.LibraryFolder;
import merese.store.Problem;

/** That what was looked for may be in files of the library that cannot be read. */
public final class Unread {
  private static final int SHOWN = 3;

  private Unread() {}

  /** The first of a file's problems, with the file as its path below the library folder. */
  public static Problem below(LibraryFolder folder, LibraryFile file, List<Problem> problems) {
    return below(folder.path(), file.relative(), problems.get(0));
  }

  /** The same of a file whose path below the library folder is known. */
  public static Problem below(Path root, String relative, Problem first) {
    return new Problem(
        root.getFileSystem().getPath(relative),
        first.line(),
        first.column(),
        first.where(),
        first.what(),
        "",
        first.severity());
  }

  /**
   * The words to add to a refusal, on lines of their own; "" where every file can be read.
   *
   * @param unread a problem a file
   */
  public static String words(List<Problem> unread) {
    if (unread.isEmpty()) {
      return "";
    }
    StringBuilder words = new StringBuilder("\nIt may be in a file that cannot be read:");
    for (Problem problem : unread.subList(0, Math.min(SHOWN, unread.size()))) {
      words.append("\n  ").append(problem);
    }
    int more = unread.size() - SHOWN;
    words.append(more > 0 ? "\n  and " + more + " more" : "");
    return words.append("\nmerese check says more.").toString();
  }
}
