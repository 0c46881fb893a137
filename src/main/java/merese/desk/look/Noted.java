package merese.desk.look;

import java.util.ArrayList;
import java.util.List;
import merese.model.Concept;
import merese.model.Mine.Preference;
import merese.search.NoteCriterion;
import merese.shelf.Shelf;
import merese.vocabulary.Folding;

/** Which words of the vocabulary some note speaks of: others lead to an empty answer. */
public final class Noted {
  private Noted() {}

  /** Of the concepts that the user has an opinion on, since those are what they work on. */
  public static List<String> labels(Shelf shelf) {
    List<String> labels = new ArrayList<>();
    for (Preference each : shelf.mine().preferences()) {
      if (isNoted(shelf, each.concept())) {
        labels.add(shelf.thesaurus().label(each.concept()));
      }
    }
    return labels;
  }

  /** Of any concepts, in the order of the vocabulary. */
  public static List<String> labels(Shelf shelf, int most) {
    List<String> labels = new ArrayList<>();
    for (Concept each : shelf.thesaurus().concepts()) {
      if (labels.size() < most && isNoted(shelf, each.id())) {
        labels.add(shelf.thesaurus().label(each.id()));
      }
    }
    return labels;
  }

  /** Whether some note means just this concept. */
  private static boolean isNoted(Shelf shelf, String concept) {
    return isAny(shelf, new NoteCriterion.MeansExactly(concept));
  }

  /** Whether some note prints a word, alone or with others. */
  public static boolean isPrinted(Shelf shelf, String word) {
    return isAny(shelf, new NoteCriterion.Prints(Folding.key(word)));
  }

  private static boolean isAny(Shelf shelf, NoteCriterion criterion) {
    return !shelf.census().having(List.of(criterion)).isEmpty();
  }
}
