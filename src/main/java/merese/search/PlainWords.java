package merese.search;

import static org.apache.lucene.search.DocIdSetIterator.NO_MORE_DOCS;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import merese.search.FindQuery.All;
import merese.search.FindQuery.Condition;
import merese.search.FindQuery.Node;
import merese.search.FindQuery.Words;
import merese.vocabulary.MisreadWords;
import org.apache.lucene.index.LeafReader;
import org.apache.lucene.index.PostingsEnum;
import org.apache.lucene.index.Term;
import org.apache.lucene.util.FixedBitSet;

/**
 * A question for pages that is a few words and nothing else, as most are. Where many pages have
 * each, they are found as rows of bits, which takes a tenth of the time of going from page to page.
 * Pages and scores are those of {@link PageQuery}.
 */
final class PlainWords {
  /** Where fewer than one in so many documents have a word, Lucene goes through these alone. */
  private static final int RARE = 64;

  private final List<String> words;
  private final int conditions;

  private PlainWords(List<String> words, int conditions) {
    this.words = words;
    this.conditions = conditions;
  }

  static Optional<PlainWords> of(Node root) {
    List<String> words = new ArrayList<>();
    int conditions = 0;
    for (Node node : root instanceof All all ? all.nodes() : List.of(root)) {
      if (node instanceof Words plain
          && plain.field().isEmpty()
          && plain.begun().isEmpty()
          && plain.folded().size() == 1) {
        words.add(Fields.bounded(plain.folded().get(0)));
      } else if (node instanceof Condition condition
          && condition.field() == FindField.IS
          && condition.value().equals(HitKind.PAGE.code())) {
        conditions++;
      } else {
        return Optional.empty();
      }
    }
    return words.isEmpty() ? Optional.empty() : Optional.of(new PlainWords(words, conditions));
  }

  private record Standing(FixedBitSet exact, FixedBitSet loose) {}

  /**
   * The pages of a segment that have the words; empty where going from one to the next is quicker.
   */
  Optional<PageMatches> in(LeafReader segment) throws IOException {
    List<Standing> standing = new ArrayList<>();
    for (String word : words) {
      Term exact = new Term(Fields.PAGE, word);
      Term loose = new Term(Fields.PAGE_LOOSE, Fields.bounded(MisreadWords.loose(word)));
      if (segment.docFreq(exact) + segment.docFreq(loose) < segment.maxDoc() / RARE) {
        return Optional.empty();
      }
    }
    FixedBitSet all = null;
    FixedBitSet best = null;
    for (String word : words) {
      FixedBitSet exact = bits(segment, new Term(Fields.PAGE, word));
      FixedBitSet loose =
          bits(segment, new Term(Fields.PAGE_LOOSE, Fields.bounded(MisreadWords.loose(word))));
      standing.add(new Standing(exact, loose));
      FixedBitSet either = exact.clone();
      either.or(loose);
      FixedBitSet both = exact.clone();
      both.and(loose);
      if (all == null) {
        all = either;
        best = both;
      } else {
        all.and(either);
        best.and(both);
      }
    }
    FixedBitSet onThePage = all.clone();
    FixedBitSet over = new FixedBitSet(segment.maxDoc());
    if (OverPageEnd.canBe(words)) {
      over = bits(segment, new Term(Fields.PAGE_END, Fields.bounded(OverPageEnd.term(words))));
      all.or(over);
    }
    if (segment.getLiveDocs() != null) {
      for (int id = all.nextSetBit(0);
          id != NO_MORE_DOCS;
          id = id + 1 < all.length() ? all.nextSetBit(id + 1) : NO_MORE_DOCS) {
        if (!segment.getLiveDocs().get(id)) {
          all.clear(id);
        }
      }
    }
    return Optional.of(new OfBits(standing, all, best, onThePage, over));
  }

  private static FixedBitSet bits(LeafReader segment, Term term) throws IOException {
    FixedBitSet bits = new FixedBitSet(segment.maxDoc());
    PostingsEnum postings = segment.postings(term, PostingsEnum.NONE);
    if (postings != null) {
      for (int id = postings.nextDoc(); id != NO_MORE_DOCS; id = postings.nextDoc()) {
        bits.set(id);
      }
    }
    return bits;
  }

  private final class OfBits implements PageMatches {
    private final List<Standing> standing;
    private final FixedBitSet all;
    private final FixedBitSet best;
    private final FixedBitSet onThePage;
    private final FixedBitSet over;
    private final int bestScore = conditions + words.size() * (PageQuery.EXACT + PageQuery.LOOSE);
    private int at = -1;

    private OfBits(
        List<Standing> standing,
        FixedBitSet all,
        FixedBitSet best,
        FixedBitSet onThePage,
        FixedBitSet over) {
      this.standing = standing;
      this.all = all;
      this.best = best;
      this.onThePage = onThePage;
      this.over = over;
    }

    @Override
    public int next() {
      at = at + 1 < all.length() ? all.nextSetBit(at + 1) : NO_MORE_DOCS;
      return at;
    }

    @Override
    public int score() {
      int score = best.get(at) ? bestScore : conditions + onThePage();
      return over.get(at) ? score + PageQuery.EXACT : score;
    }

    private int onThePage() {
      int score = 0;
      if (onThePage.get(at)) {
        for (Standing each : standing) {
          score += each.exact().get(at) ? PageQuery.EXACT : 0;
          score += each.loose().get(at) ? PageQuery.LOOSE : 0;
        }
      }
      return score;
    }
  }
}
