package merese.search;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;
import merese.vocabulary.Folding;
import org.apache.lucene.analysis.Analyzer;
import org.apache.lucene.analysis.TokenFilter;
import org.apache.lucene.analysis.TokenStream;
import org.apache.lucene.analysis.Tokenizer;
import org.apache.lucene.analysis.standard.StandardTokenizer;
import org.apache.lucene.analysis.tokenattributes.CharTermAttribute;
import org.apache.lucene.analysis.tokenattributes.OffsetAttribute;

/** Splits running text into words and folds them as labels are folded. */
final class FoldedText extends Analyzer {
  /** The folded words of a text in their order. */
  List<String> words(String text) {
    List<String> words = new ArrayList<>();
    scan(text, (word, start, end) -> words.add(word));
    return words;
  }

  /** Hands over each word of a text, folded, with its place in chars. */
  void scan(String text, Folding.Sink sink) {
    try (TokenStream stream = tokenStream("", text)) {
      CharTermAttribute term = stream.addAttribute(CharTermAttribute.class);
      OffsetAttribute offset = stream.addAttribute(OffsetAttribute.class);
      stream.reset();
      while (stream.incrementToken()) {
        if (!term.isEmpty()) {
          sink.word(term.toString(), offset.startOffset(), offset.endOffset());
        }
      }
      stream.end();
    } catch (IOException e) {
      throw new UncheckedIOException("a text in memory could not be read", e);
    }
  }

  @Override
  protected TokenStreamComponents createComponents(String field) {
    Tokenizer tokenizer = new StandardTokenizer();
    return new TokenStreamComponents(tokenizer, new FoldingFilter(tokenizer));
  }

  @Override
  public int getPositionIncrementGap(String field) {
    return 100;
  }

  private static final class FoldingFilter extends TokenFilter {
    private final CharTermAttribute term = addAttribute(CharTermAttribute.class);

    FoldingFilter(TokenStream input) {
      super(input);
    }

    @Override
    public boolean incrementToken() throws IOException {
      if (!input.incrementToken()) {
        return false;
      }
      String folded = Folding.word(term.toString());
      term.setEmpty().append(folded);
      return true;
    }
  }
}
