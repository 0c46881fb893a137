package merese.benchmark;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Random;
import java.util.Set;
import merese.answer.Words;
import merese.search.NoteCriterion;
import merese.testing.UnionList;
import merese.vocabulary.LookAlikePair;
import merese.vocabulary.Thesaurus;

/**
 * The questions of a run, drawn once and kept beside the library, so that every process and every
 * reference asks the same ones.
 *
 * @param evenly concepts, each as likely as any other
 * @param asNamed concepts, each as likely as notes name it
 * @param words two words each, as likely as texts have them
 */
record Drawn(List<String> evenly, List<String> asNamed, List<String> words) {
  private static final int QUESTIONS = 200;
  private static final int SEED = 11;
  private static final String EVENLY = "evenly.txt";
  private static final String AS_NAMED = "as-named.txt";
  private static final String WORDS = "words.txt";

  static Drawn from(UnionList list) {
    Random random = new Random(SEED);
    List<String> evenly = new ArrayList<>();
    List<String> asNamed = new ArrayList<>();
    List<String> words = new ArrayList<>();
    for (int i = 0; i < QUESTIONS; i++) {
      evenly.add(list.concepts().get(random.nextInt(list.concepts().size())).id());
      asNamed.add(list.namedConcept(random));
      words.add(list.word(random) + " " + list.word(random));
    }
    return new Drawn(evenly, asNamed, words);
  }

  void write(Path folder) throws IOException {
    Files.write(folder.resolve(EVENLY), evenly);
    Files.write(folder.resolve(AS_NAMED), asNamed);
    Files.write(folder.resolve(WORDS), words);
  }

  static Drawn read(Path folder) throws IOException {
    return new Drawn(
        Files.readAllLines(folder.resolve(EVENLY)),
        Files.readAllLines(folder.resolve(AS_NAMED)),
        Files.readAllLines(folder.resolve(WORDS)));
  }

  /**
   * What the groups of an answer about a concept are found by: what means it, narrower kinds too;
   * what may; what means something broader, or a look-alike; and what prints one of its labels.
   */
  static List<NoteCriterion> groups(Thesaurus thesaurus, String concept) {
    List<NoteCriterion> groups = new ArrayList<>();
    groups.add(new NoteCriterion.Means(concept));
    groups.add(new NoteCriterion.MayMean(concept));
    Set<String> exactly = new LinkedHashSet<>(thesaurus.broader(concept));
    for (LookAlikePair pair : thesaurus.lookAlikes(concept)) {
      exactly.add(pair.other().id());
    }
    exactly.forEach(id -> groups.add(new NoteCriterion.MeansExactly(id)));
    groups.addAll(new Words(thesaurus, thesaurus.wordsFor(concept)).criteria());
    return groups;
  }
}
