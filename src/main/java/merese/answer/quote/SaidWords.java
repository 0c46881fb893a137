package merese.answer.quote;

import java.util.Collections;
import java.util.List;
import merese.vocabulary.Folding;

/** Whether words stand in a text one after another, whatever their spelling (R7). */
final class SaidWords {
  private SaidWords() {}

  static boolean areIn(String text, String words) {
    List<String> wanted = Folding.words(words);
    return !wanted.isEmpty() && Collections.indexOfSubList(Folding.words(text), wanted) >= 0;
  }
}
