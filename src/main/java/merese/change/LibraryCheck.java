package merese.change;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import merese.store.LibraryException;
import merese.store.LibraryFile;
import merese.store.LibraryFolder;
import merese.store.Problem;
import merese.store.Problem.Severity;

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
    while (true) {
      String moment = folder.moment();
      LibraryCheck check = read(folder);
      if (folder.isStill(moment)) {
        return check;
      }
    }
  }

  private static LibraryCheck read(LibraryFolder folder) {
    List<Problem> problems = new ArrayList<>(folder.check());
    VocabularyCheck vocabulary = new VocabularyCheck(folder);
    Slips slips = new Slips(folder);
    int works = 0;
    int editions = 0;
    int objects = 0;
    for (LibraryFile file : folder.scan()) {
      try {
        switch (file.kind()) {
          case WORK -> {
            editions += slips.work(folder.readWork(file.path())).editions().size();
            works++;
          }
          case VOCABULARY -> vocabulary.add(folder.readVocabulary(file.path()));
          case OBJECT -> {
            slips.object(folder.readObject(file.path()));
            objects++;
          }
          case MINE -> slips.mine(folder.readMine());
          case HOMONYMS -> vocabulary.register(folder.readHomonyms());
          case CHARACTERS -> {} // the store's own check holds it to the vocabulary
          case RECEIVED -> {} // the store's own check reads it
          case SETTINGS -> {} // read when the library was opened
        }
      } catch (LibraryException e) {
        vocabulary.lacks(file); // the store's own check has said what is wrong
      }
    }
    if (problems.stream()
        .noneMatch(p -> p.severity() == Severity.ERROR && isVocabulary(folder, p))) {
      problems.addAll(vocabulary.problems());
    }
    problems.addAll(slips.problems());
    return new LibraryCheck(
        new Holdings(works, editions, slips.notes(), vocabulary.size(), objects),
        inOrder(folder, problems));
  }

  private static boolean isVocabulary(LibraryFolder folder, Problem problem) {
    return problem.file().startsWith(folder.resolve("vocabulary"));
  }

  private static List<Problem> inOrder(LibraryFolder folder, List<Problem> problems) {
    List<String> order = new ArrayList<>();
    folder.scan().forEach(file -> order.add(file.path().toString()));
    List<Problem> sorted = new ArrayList<>(problems);
    sorted.sort(
        Comparator.comparingInt((Problem p) -> order.indexOf(p.file().toString()))
            .thenComparingInt(Problem::line)
            .thenComparingInt(Problem::column));
    return sorted;
  }

  /** How many of the problems keep the library from being used as it is. */
  public int errors() {
    return (int) problems.stream().filter(p -> p.severity() == Severity.ERROR).count();
  }

  public int warnings() {
    return problems.size() - errors();
  }
}
