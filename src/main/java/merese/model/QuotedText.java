package merese.model;

import java.util.ArrayList;
import java.util.List;

/**
 * A quotation as a note holds it. A bar "|" marks where a page of the source ends, within a word
 * too ("re|vival"); two bars "||", read from the left, are one bar that the source prints. All else
 * is the source's: spelling, ellipses, and whatever the one who noted it put in square brackets.
 * The marks are ours; common practice, no source.
 *
 * @param pages what stands on each page, in order; one for a quotation without a mark
 */
public record QuotedText(List<String> pages) {
  private static final char BAR = '|';

  public QuotedText {
    pages = List.copyOf(pages);
    Require.that(!pages.isEmpty(), "a quotation stands on one page at least");
  }

  /** Reads a note's quotation. */
  public static QuotedText of(String noted) {
    List<String> pages = new ArrayList<>();
    StringBuilder page = new StringBuilder();
    for (int at = 0; at < noted.length(); at++) {
      char c = noted.charAt(at);
      if (c != BAR) {
        page.append(c);
      } else if (at + 1 < noted.length() && noted.charAt(at + 1) == BAR) {
        page.append(BAR);
        at++;
      } else {
        pages.add(page.toString());
        page.setLength(0);
      }
    }
    pages.add(page.toString());
    return new QuotedText(pages);
  }

  /** How many pages end within it. */
  public int breaks() {
    return pages.size() - 1;
  }

  /** The source's words without our marks, so that a word over two pages is one word. */
  public String words() {
    return String.join("", pages);
  }

  /**
   * The words with each break in square brackets, as all is that the source does not print: with
   * the two pages' numbers, "re[41|42]vival", or "[|]" where they are not known.
   *
   * @param numbers one for each page, or none
   */
  public String marked(List<String> numbers) {
    Require.that(
        numbers.isEmpty() || numbers.size() == pages.size(), "one number belongs to each page");
    StringBuilder marked = new StringBuilder(pages.get(0));
    for (int i = 1; i < pages.size(); i++) {
      marked.append('[');
      if (!numbers.isEmpty()) {
        marked.append(numbers.get(i - 1));
      }
      marked.append(BAR);
      if (!numbers.isEmpty()) {
        marked.append(numbers.get(i));
      }
      marked.append(']').append(pages.get(i));
    }
    return marked.toString();
  }
}
