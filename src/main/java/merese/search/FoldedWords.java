package merese.search;

import java.util.Iterator;
import java.util.List;
import org.apache.lucene.analysis.TokenStream;
import org.apache.lucene.analysis.tokenattributes.CharTermAttribute;
import org.apache.lucene.analysis.tokenattributes.PositionIncrementAttribute;

/**
 * Printed terms as tokens, split and folded by the vocabulary itself, so that a phrase is found
 * here exactly where the vocabulary would say that it occurs. The terms of a note lie so far apart
 * that no phrase runs from one into the next.
 */
final class FoldedWords extends TokenStream {
  private static final int GAP = 100;

  private final CharTermAttribute term = addAttribute(CharTermAttribute.class);
  private final PositionIncrementAttribute increment =
      addAttribute(PositionIncrementAttribute.class);
  private final Iterator<List<String>> printed;
  private Iterator<String> words = List.<String>of().iterator();

  FoldedWords(List<List<String>> printed) {
    this.printed = printed.iterator();
  }

  @Override
  public boolean incrementToken() {
    clearAttributes();
    boolean newTerm = false;
    while (!words.hasNext()) {
      if (!printed.hasNext()) {
        return false;
      }
      words = printed.next().iterator();
      newTerm = true;
    }
    term.setEmpty().append(words.next());
    increment.setPositionIncrement(newTerm ? GAP : 1);
    return true;
  }
}
