package merese.store;

import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.text.Normalizer;
import java.text.Normalizer.Form;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * The names that a library's files have, for new ones to keep clear of, and where a new work goes:
 * flat, or in a sub-folder once the library is large. Files that are there stay where they are.
 *
 * <p>Of a large library a few names cost a look at the folders that each could stand in: those in
 * which it would be the same name to some system are listed, and in the others it is looked for as
 * it is. Where many names are claimed together, all are listed once.
 */
final class TakenNames {
  /** How many works may stand in one folder. */
  static final int FLAT = 2_000;

  /** So many works are looked for one by one. */
  private static final int FEW = 20;

  private final Path root;
  private final Map<String, String> taken = new HashMap<>();
  private final Set<String> listed = new HashSet<>();

  /** The sub-folders of {@code works}; null until they are asked for. */
  private List<String> shards;

  private int flat;
  private boolean sharded;
  private int claimed;

  private TakenNames(Path root) {
    this.root = root;
  }

  static TakenNames of(Path root) {
    return new TakenNames(root);
  }

  /** Finds out whatever could be the same name. */
  private void know(String folder, String name) {
    if (!folder.equals(FolderScan.WORKS)) {
      listAll(folder);
      return;
    }
    listFlat();
    claimed++;
    if (!sharded) {
      return;
    } else if (claimed > FEW) {
      shards.forEach(this::listAll);
      return;
    }
    Path works = root.resolve(FolderScan.WORKS);
    Set<String> like = new HashSet<>();
    for (Form form : Form.values()) {
      Path shard = FileNames.shard(works, Normalizer.normalize(name, form));
      like.add(FileNames.folded(shard.getFileName().toString()));
    }
    for (String shard : shards) {
      if (like.contains(FileNames.folded(shard.substring(FolderScan.WORKS.length() + 1)))) {
        listAll(shard);
      } else if (!listed.contains(shard)) {
        String file = shard + '/' + name + FolderScan.ENDING;
        if (Files.exists(root.resolve(file), LinkOption.NOFOLLOW_LINKS)) {
          taken.put(FolderScan.WORKS + '/' + FileNames.folded(name), file);
        }
      }
    }
  }

  /** The works that stand in no sub-folder. */
  private void listFlat() {
    if (shards != null) {
      return;
    }
    shards = List.of();
    Optional<LibraryFolder.Listing> works = new FolderScan(root).list(FolderScan.WORKS);
    if (works.isPresent()) {
      works.get().files().forEach(this::add);
      flat = works.get().files().size();
      shards = works.get().folders();
      for (String shard : shards) {
        sharded = sharded || hasFile(shard);
      }
    }
  }

  private boolean hasFile(String folder) {
    return !new FolderScan(root).below(folder).isEmpty();
  }

  private void listAll(String folder) {
    if (listed.add(folder)) {
      new FolderScan(root).below(folder).forEach(this::add);
    }
  }

  private void add(LibraryFile file) {
    taken.putIfAbsent(folder(file.relative()) + FileNames.folded(file.name()), file.relative());
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
    know(folder, name);
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
    listFlat();
    Path works = root.resolve(FolderScan.WORKS);
    boolean large = sharded || flat + adding > FLAT;
    Path folder = large ? FileNames.shard(works, work) : works;
    return folder.resolve(work + FolderScan.ENDING);
  }
}
