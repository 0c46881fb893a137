package merese.search;

import java.util.Iterator;
import java.util.Map;
import org.apache.lucene.analysis.TokenStream;
import org.apache.lucene.analysis.tokenattributes.CharTermAttribute;
import org.apache.lucene.analysis.tokenattributes.TermFrequencyAttribute;

/** Words with how often each counts, for a field that keeps no positions. */
final class WeightedWords extends TokenStream {
  private final CharTermAttribute term = addAttribute(CharTermAttribute.class);
  private final TermFrequencyAttribute frequency = addAttribute(TermFrequencyAttribute.class);
  private final Iterator<Map.Entry<String, Integer>> words;

  WeightedWords(Map<String, Integer> words) {
    this.words = words.entrySet().iterator();
  }

  @Override
  public boolean incrementToken() {
    clearAttributes();
    if (!words.hasNext()) {
      return false;
    }
    Map.Entry<String, Integer> word = words.next();
    term.setEmpty().append(word.getKey());
    frequency.setTermFrequency(word.getValue());
    return true;
  }
}
