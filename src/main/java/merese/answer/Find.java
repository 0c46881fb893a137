package merese.answer;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import merese.answer.Found.Hit;
import merese.search.FindQuery;
import merese.search.Highlights;
import merese.search.NearWord;
import merese.shelf.Finding;
import merese.shelf.Shelf;

/**
 * Finds words wherever a library has them, best first, and shows each in its sentence. It is a
 * search of words: what covers a feature, under any name, is for {@link Covers} to say.
 */
public final class Find {
  private static final int SPELLINGS_FROM = 20;

  private final Shelf shelf;

  private Find(Shelf shelf) {
    this.shelf = shelf;
  }

  /**
   * @param limit how many hits to give, from 1
   * @throws merese.search.FindQueryException where the question cannot be read, or names a concept
   *     or a source that is not there
   */
  public static Found answer(Shelf shelf, String question, int limit) {
    return new Find(shelf).answer(question, limit);
  }

  private Found answer(String question, int limit) {
    FindQuery asked = FindQuery.parse(question);
    Finding finding = shelf.find(asked, limit);
    HitMaker maker = new HitMaker(shelf, new Highlights(asked));
    List<Hit> hits = finding.things().stream().map(maker::hit).toList();
    return new Found(
        question,
        finding.withAll(),
        finding.withSome(),
        hits,
        didYouMean(asked, finding),
        new PageLines(shelf, asked).of(finding.pages()),
        finding.allPages());
  }

  /** Puts right the words that nothing has, from the end, so that their places stay true. */
  private Optional<String> didYouMean(FindQuery asked, Finding before) {
    List<NearWord> near = new ArrayList<>(shelf.nearWords(asked));
    if (near.isEmpty()) {
      return Optional.empty();
    }
    near.sort(Comparator.comparingInt(NearWord::start).reversed());
    StringBuilder text = new StringBuilder(asked.text());
    int start = -1;
    int end = -1;
    for (NearWord word : near) {
      if (word.start() != start) { // "cutt/knopped" is one place with two words
        start = word.start();
        end = word.end();
      }
      String right = replaced(text.substring(start, end), word);
      text.replace(start, end, right);
      end = start + right.length();
    }
    String meant = text.toString();
    if (meant.equals(asked.text())) {
      return Optional.empty();
    }
    Finding after = shelf.find(FindQuery.parse(meant), 1);
    boolean better =
        after.withAll() > before.withAll()
            || after.withAll() + after.withSome() > before.withAll() + before.withSome();
    return better ? Optional.of(meant) : Optional.empty();
  }

  /** One word of what was typed put right, and the rest of it left as it is. */
  private String replaced(String typed, NearWord word) {
    List<String> printed = Highlights.printed(typed, Set.of(word.folded()));
    if (printed.isEmpty()) {
      return typed;
    }
    int at = typed.indexOf(printed.get(0));
    return typed.substring(0, at)
        + spelling(word.near())
        + typed.substring(at + printed.get(0).length());
  }

  /** How a folded word is mostly spelt where it stands. */
  private String spelling(String folded) {
    Map<String, Integer> counts = new HashMap<>();
    Finding having = shelf.find(FindQuery.parse(folded), SPELLINGS_FROM);
    for (Finding.Thing thing : having.things()) {
      for (String text : HitTexts.all(thing)) {
        for (String printed : Highlights.printed(text, Set.of(folded))) {
          counts.merge(printed.toLowerCase(Locale.ROOT), 1, Integer::sum);
        }
      }
    }
    return counts.entrySet().stream()
        .max(
            Map.Entry.<String, Integer>comparingByValue()
                .thenComparing(Map.Entry.<String, Integer>comparingByKey().reversed()))
        .map(Map.Entry::getKey)
        .orElse(folded);
  }
}
