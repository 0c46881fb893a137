package merese.answer.editions;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import merese.model.Nearest;
import merese.shelf.Shelf;
import merese.shelf.Source;
import merese.vocabulary.Folding;

/** Finds the work that a user means. */
final class NamedWork {
  private static final int MOST_NEAR = 3;
  private static final int MOST_ALIKE = 8;

  private NamedWork() {}

  /**
   * The id of a work.
   *
   * @param typed its id, the key of an edition (capitals are forgiven), or words that all stand in
   *     author, year and title of one of its editions
   * @throws WorkException where that is no work, or several
   */
  static String find(Shelf shelf, String typed) {
    String word = typed.strip();
    Map<String, String> names = new LinkedHashMap<>();
    for (Source source : shelf.sources()) {
      names.put(source.workId().toLowerCase(Locale.ROOT), source.workId());
    }
    for (Source source : shelf.sources()) {
      names.putIfAbsent(source.key().toLowerCase(Locale.ROOT), source.workId());
    }
    String exact = names.get(word.toLowerCase(Locale.ROOT));
    if (exact != null) {
      return exact;
    }
    Set<String> found = withWords(shelf, Folding.words(word));
    if (found.size() == 1) {
      return found.iterator().next();
    } else if (found.isEmpty()) {
      throw WorkException.unknown(word, Nearest.to(word, names.keySet(), MOST_NEAR));
    }
    List<String> some = new ArrayList<>(found);
    if (some.size() > MOST_ALIKE) {
      int more = some.size() - MOST_ALIKE;
      some = new ArrayList<>(some.subList(0, MOST_ALIKE));
      some.add("and " + more + " more");
    }
    throw WorkException.several(word, some);
  }

  private static Set<String> withWords(Shelf shelf, List<String> words) {
    Set<String> found = new TreeSet<>();
    for (Source source : shelf.sources()) {
      if (!words.isEmpty()
          && Folding.words(source.reference() + " " + source.title()).containsAll(words)) {
        found.add(source.workId());
      }
    }
    return found;
  }
}
