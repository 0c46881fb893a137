package merese.search;

import java.io.IOException;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import merese.search.FindQuery.Node;
import merese.search.FindQuery.Phrase;
import merese.search.FindQuery.Words;
import org.apache.lucene.index.LeafReaderContext;
import org.apache.lucene.index.Term;
import org.apache.lucene.index.Terms;
import org.apache.lucene.search.FuzzyTermsEnum;

/**
 * Looks in the index itself for words like a mistyped one: the fewest slips first (a letter more,
 * less, other, or two swapped), then the first letter, then the word that more documents have.
 */
final class NearWords {
  private static final int SHORTEST = 3;
  private static final int SHORT = 5;

  private NearWords() {}

  static List<NearWord> of(LiveSearcher searcher, FindQuery asked) throws IOException {
    List<NearWord> near = new ArrayList<>();
    for (Node node : asked.sought()) {
      if (node instanceof Words words) {
        add(near, searcher, words.field(), words.folded(), words.start(), words.end());
      } else if (node instanceof Phrase phrase) {
        add(near, searcher, phrase.field(), phrase.folded(), phrase.start(), phrase.end());
      }
    }
    return near;
  }

  private static void add(
      List<NearWord> near,
      LiveSearcher searcher,
      Optional<FindField> field,
      List<String> words,
      int start,
      int end)
      throws IOException {
    String in = field.isPresent() ? field.get().indexField() : Fields.ALL;
    for (String word : words) {
      if (searcher.live(new Term(in, word)) == 0
          && (field.isPresent() || searcher.live(new Term(Fields.PAGE, word)) == 0)) {
        nearest(searcher, in, word).ifPresent(n -> near.add(new NearWord(start, end, word, n)));
      }
    }
  }

  private static Optional<String> nearest(LiveSearcher searcher, String field, String word)
      throws IOException {
    int most = word.length() < SHORTEST ? 0 : word.length() < SHORT ? 1 : 2;
    Map<String, Integer> frequencies = new HashMap<>();
    for (LeafReaderContext leaf : searcher.getLeafContexts()) {
      Terms terms = leaf.reader().terms(field);
      if (terms != null && most > 0 && word.length() <= 60) {
        FuzzyTermsEnum like = new FuzzyTermsEnum(terms, new Term(field, word), most, 0, true);
        while (like.next() != null) {
          int live = LiveSearcher.live(like, leaf.reader().getLiveDocs());
          if (live > 0) {
            frequencies.merge(like.term().utf8ToString(), live, Integer::sum);
          }
        }
      }
    }
    String best = null;
    for (String candidate : frequencies.keySet()) {
      if (best == null || isBetter(word, candidate, best, frequencies)) {
        best = candidate;
      }
    }
    return Optional.ofNullable(best);
  }

  private static boolean isBetter(
      String word, String a, String b, Map<String, Integer> frequencies) {
    int slips = NearNames.slips(word, a) - NearNames.slips(word, b);
    if (slips != 0) {
      return slips < 0;
    }
    boolean sameStart = a.charAt(0) == word.charAt(0);
    if (sameStart != (b.charAt(0) == word.charAt(0))) {
      return sameStart;
    }
    int more = frequencies.get(a) - frequencies.get(b);
    return more != 0 ? more > 0 : a.compareTo(b) < 0;
  }
}
