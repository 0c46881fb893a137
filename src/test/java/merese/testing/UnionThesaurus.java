package merese.testing;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import merese.model.Concept;
import merese.model.Concept.Label;
import merese.model.Facet;
import merese.store.PlainFiles;
import merese.store.VocabularyFile;

/**
 * The starter vocabulary, grown by invented kinds in a facet of their own, and how often the notes
 * of a union list name each of its concepts: a few very often, most seldom (Zipf's law).
 */
final class UnionThesaurus {
  private static final String FACET = "union-list";

  /** One invented kind comes with so many works. */
  private static final int WORKS_A_CONCEPT = 100;

  private static final int MOST_GROWN = 2_000;

  private final UnionWords words;
  private final List<Concept> grown = new ArrayList<>();
  private final List<Concept> byRank = new ArrayList<>();
  private final Zipf zipf;

  UnionThesaurus(UnionWords words, int works) {
    this.words = words;
    PlainFiles.starter().forEach(file -> byRank.addAll(file.concepts()));
    Random random = new Random(100);
    int count = Math.min(MOST_GROWN, works / WORKS_A_CONCEPT);
    for (int number = 0; number < count; number++) {
      Concept made = grown(number, byRank.get(random.nextInt(byRank.size())), random);
      grown.add(made);
      byRank.add(made);
    }
    Collections.shuffle(byRank, random);
    zipf = new Zipf(byRank.size());
  }

  /** Its two words are in no other label. */
  private Concept grown(int number, Concept broader, Random random) {
    String own = words.plain(UnionWords.SIZE - 1 - 2 * number);
    String other = words.plain(UnionWords.SIZE - 2 - 2 * number);
    String noun = noun(broader.preferred().text());
    List<Label> alternatives =
        random.nextInt(5) < 3 ? List.of(Label.of(other + " " + noun)) : List.of();
    List<Label> hidden =
        random.nextInt(5) == 0 ? List.of(Label.of(own + own.charAt(0) + " " + noun)) : List.of();
    return new Concept(
        own + "-" + number,
        FACET,
        Label.of(own + " " + noun),
        alternatives,
        hidden,
        words.sentence(random, 8 + random.nextInt(12)),
        List.of(broader.id()),
        List.of(),
        Optional.empty(),
        Concept.Status.COMMON,
        List.of());
  }

  private static String noun(String label) {
    return label.substring(label.lastIndexOf(' ') + 1);
  }

  /** The invented kinds; empty where the library is too small to have any. */
  Optional<VocabularyFile> grown() {
    return grown.isEmpty()
        ? Optional.empty()
        : Optional.of(
            new VocabularyFile(new Facet(FACET, Optional.empty(), List.of()), List.copyOf(grown)));
  }

  /** All concepts, the one that is named most often first. */
  List<Concept> byRank() {
    return Collections.unmodifiableList(byRank);
  }

  /** A concept, as often as notes name it. */
  Concept next(Random random) {
    return byRank.get(zipf.next(random));
  }

  /** One of the words for a concept, as a source prints it; now and then in the plural. */
  String printed(Concept concept, Random random) {
    int drawn = random.nextInt(100);
    String label = concept.preferred().text();
    if (drawn < 35 && !concept.alternatives().isEmpty()) {
      label = one(concept.alternatives(), random);
    } else if (drawn < 40 && !concept.hidden().isEmpty()) {
      label = one(concept.hidden(), random);
    } else if (drawn < 50) {
      label = words.next(random) + " " + noun(label);
    }
    return random.nextInt(3) == 0 ? label + "s" : label;
  }

  private static String one(List<Label> labels, Random random) {
    return labels.get(random.nextInt(labels.size())).text();
  }
}
