package merese.search;

import java.io.IOException;
import merese.vocabulary.Folding;
import org.apache.lucene.analysis.Analyzer;
import org.apache.lucene.analysis.TokenFilter;
import org.apache.lucene.analysis.TokenStream;
import org.apache.lucene.analysis.Tokenizer;
import org.apache.lucene.analysis.standard.StandardTokenizer;
import org.apache.lucene.analysis.tokenattributes.CharTermAttribute;

/** Splits running text into words and folds them as labels are folded. */
final class FoldedText extends Analyzer {
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
      term.setEmpty().append(Folding.word(term.toString()));
      return true;
    }
  }
}
