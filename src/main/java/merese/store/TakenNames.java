package merese.store;

import java.nio.file.Path;
import java.util.HashMap;
import java.util.Map;

/**
 * The names that a library's files have, for new ones to keep clear of, and where a new work goes:
 * flat, or in a sub-folder once the library is large. Files that are there stay where they are.
 */
final class TakenNames {
  /** How many works may stand in one folder. */
  static final int FLAT = 2_000;

  private final Path root;
  private final Map<String, String> taken = new HashMap<>();
  private int flat;
  private boolean sharded;

  private TakenNames(Path root) {
    this.root = root;
  }

  static TakenNames of(Path root) {
    TakenNames names = new TakenNames(root);
    for (LibraryFile file : new FolderScan(root).files()) {
      String folder = folder(file.relative());
      if (!folder.isEmpty()) {
        names.taken.put(folder + FileNames.folded(file.name()), file.relative());
      }
      if (folder.equals(FolderScan.WORKS + '/')) {
        boolean isFlat = file.relative().indexOf('/', folder.length()) < 0;
        names.flat += isFlat ? 1 : 0;
        names.sharded |= !isFlat;
      }
    }
    return names;
  }

  private static String folder(String relative) {
    int slash = relative.indexOf('/');
    return relative.substring(0, slash + 1);
  }

  /**
   * Takes a name for a new file.
   *
   * @param folder one of those in which each file has a name of its own
   */
  void claim(String folder, String name) {
    Path path = root.resolve(folder);
    FileNames.requireUsable(path, name);
    if (folder.equals(FolderScan.VOCABULARY)) {
      String file = FileNames.folded(name + FolderScan.ENDING);
      requireFacet(path, file, FolderScan.HOMONYMS, "the register of homonyms");
      requireFacet(path, file, FolderScan.CHARACTERS, "the key to look-alikes");
    }
    String own = folder + '/' + name + FolderScan.ENDING;
    String other = taken.putIfAbsent(folder + '/' + FileNames.folded(name), own);
    if (other == null) {
      return;
    }
    String called = LibraryFile.nameOf(Path.of(other));
    throw called.equals(name)
        ? new LibraryException(
            root.resolve(other),
            "there is a file of this name already; nothing was written",
            "look at it, then make your change again")
        : new LibraryException(
            root.resolve(other),
            "some systems take "
                + Quote.of(name)
                + " for the same name as "
                + Quote.of(called)
                + ", which is here already; nothing was written",
            "call one of the two something else");
  }

  private static void requireFacet(Path folder, String file, String other, String whatItIs) {
    if (file.equals(other)) {
      throw new LibraryException(
          folder.resolve(other),
          "this file is " + whatItIs + ", and no facet",
          "call the facet something else");
    }
  }

  /**
   * Where a new work's file goes.
   *
   * @param adding how many are added together
   */
  Path placeOf(String work, int adding) {
    Path works = root.resolve(FolderScan.WORKS);
    boolean large = sharded || flat + adding > FLAT;
    Path folder = large ? FileNames.shard(works, work) : works;
    return folder.resolve(work + FolderScan.ENDING);
  }
}
