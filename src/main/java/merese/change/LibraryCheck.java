package merese.change;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import merese.change.checks.Checking;
import merese.model.CharacterKey;
import merese.model.Homonym;
import merese.model.Mine;
import merese.model.OwnObject;
import merese.model.Work;
import merese.shelf.Watcher;
import merese.store.LibraryFile;
import merese.store.LibraryFolder;
import merese.store.Problem;
import merese.store.Problem.Severity;
import merese.store.Stored;
import merese.store.VocabularyFile;

/**
 * What a library holds and what is wrong in it, by its files alone.
 *
 * <p>Beyond what the store finds file by file, the vocabulary is held to the integrity conditions
 * of SKOS (W3C, SKOS Reference, Recommendation of 18 August 2009), and what is likely to be a slip
 * is warned of.
 *
 * @param holdings of the files that could be read
 * @param problems in the order of the files, and in a file from top to bottom
 */
public record LibraryCheck(Holdings holdings, List<Problem> problems) {

  public LibraryCheck {
    problems = List.copyOf(problems);
  }

  /** How much there is in a library. */
  public record Holdings(int works, int editions, int notes, int concepts, int objects) {}

  /** Of the library as it is at one moment: with all or nothing of a change of several files. */
  public static LibraryCheck of(LibraryFolder folder) {
    return of(folder, Watcher.NONE);
  }

  /** The same; the watcher is told of each file. */
  public static LibraryCheck of(LibraryFolder folder, Watcher watcher) {
    return of(folder, watcher, Map.of());
  }

  /**
   * The same, as if other bytes stood in some of the files: what would be wrong then.
   *
   * @param instead by the paths that a scan of the library gives
   */
  public static LibraryCheck of(LibraryFolder folder, Watcher watcher, Map<Path, byte[]> instead) {
    while (true) {
      String moment = folder.moment();
      LibraryCheck check = read(folder, watcher, instead);
      if (folder.isStill(moment)) {
        return check;
      }
    }
  }

  private static LibraryCheck read(
      LibraryFolder folder, Watcher watcher, Map<Path, byte[]> instead) {
    Counting counting = new Counting(folder, watcher, instead.keySet());
    List<Problem> problems = new ArrayList<>(folder.check(counting, instead));
    boolean vocabulary =
        problems.stream().noneMatch(p -> p.severity() == Severity.ERROR && isVocabulary(folder, p));
    problems.addAll(counting.checking.problems(vocabulary));
    watcher.end();
    Holdings holdings =
        new Holdings(
            counting.works,
            counting.editions,
            counting.notes,
            counting.checking.concepts(),
            counting.objects);
    return new LibraryCheck(holdings, inOrder(counting.order, problems));
  }

  private static boolean isVocabulary(LibraryFolder folder, Problem problem) {
    return problem.file().startsWith(folder.resolve("vocabulary"));
  }

  /** What is of no file of the library, such as a leftover, comes last. */
  private static List<Problem> inOrder(Map<Path, Integer> order, List<Problem> problems) {
    List<Problem> sorted = new ArrayList<>(problems);
    sorted.sort(
        Comparator.comparingInt((Problem p) -> order.getOrDefault(p.file(), Integer.MAX_VALUE))
            .thenComparingInt(Problem::line)
            .thenComparingInt(Problem::column));
    return sorted;
  }

  /** Hands each file that could be read to the checks, and counts what is in it. */
  private static final class Counting implements LibraryFolder.Visitor {
    private final Checking checking;
    private final Watcher watcher;
    private final Set<Path> instead;
    private final Map<Path, Integer> order = new HashMap<>();
    private int works;
    private int editions;
    private int notes;
    private int objects;
    private int done;

    Counting(LibraryFolder folder, Watcher watcher, Set<Path> instead) {
      this.instead = instead;
      this.checking = new Checking(folder);
      this.watcher = watcher;
    }

    @Override
    public void start(List<LibraryFile> files) {
      files.forEach(file -> order.put(file.path(), order.size()));
      watcher.start(2 * files.size());
    }

    @Override
    public void read(LibraryFile file, Stored<?> stored) {
      switch (file.kind()) {
        case WORK -> {
          Stored<Work> work = stored.as(Work.class);
          works++;
          editions += work.value().editions().size();
          work.value().editions().forEach(edition -> notes += edition.notes().size());
          checking.work(work);
          if (instead.contains(file.path())) {
            checking.keep(work);
          }
        }
        case VOCABULARY -> checking.vocabulary(stored.as(VocabularyFile.class));
        case OBJECT -> {
          objects++;
          checking.object(stored.as(OwnObject.class));
        }
        case MINE -> checking.mine(stored.as(Mine.class));
        case HOMONYMS -> checking.homonyms(homonyms(stored));
        case CHARACTERS -> checking.characters(stored.as(CharacterKey.class).value());
        case RECEIVED, SETTINGS, PAGES -> {} // the store's own check reads them
      }
      watcher.at(++done);
    }

    @SuppressWarnings("unchecked") // the store reads nothing else from a file of this kind
    private static Stored<List<Homonym>> homonyms(Stored<?> stored) {
      return (Stored<List<Homonym>>) stored;
    }

    @Override
    public void unreadable(LibraryFile file) {
      checking.lacks(file);
    }

    @Override
    public void done(LibraryFile file) {
      watcher.at(++done);
    }
  }

  /** How many of the problems keep the library from being used as it is. */
  public int errors() {
    return (int) problems.stream().filter(p -> p.severity() == Severity.ERROR).count();
  }

  public int warnings() {
    return problems.size() - errors();
  }
}
