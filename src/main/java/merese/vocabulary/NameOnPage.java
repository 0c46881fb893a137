package merese.vocabulary;

import java.util.List;
import java.util.Locale;

/**
 * A name of the vocabulary on a page.
 *
 * @param words as they stand in the text, on one line
 * @param concepts ids of all that the words may mean, labels before the register; never empty
 * @param doubtful whether the words may mean something else as well: several concepts, a word of
 *     the register, or a label that is marked so
 * @param loose whether the words are only like the name, with letters taken for others
 * @param start where they begin in the page's text, in chars
 * @param end where they end, exclusive
 */
public record NameOnPage(
    String words, List<String> concepts, boolean doubtful, boolean loose, int start, int end) {
  public NameOnPage {
    concepts = List.copyOf(concepts);
  }

  /** The words less their capitals: those at the head of a sentence make no other name of it. */
  public String spelling() {
    return words.toLowerCase(Locale.ROOT);
  }
}
