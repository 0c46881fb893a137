package merese.search;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import merese.vocabulary.PageReading;
import merese.vocabulary.PageReading.Run;
import merese.vocabulary.PageWord;

/**
 * What of a page's end goes into the index: a word that is broken over it is one of the page's
 * words; a few words of which some stand on either page are one term, so that words of the next
 * page are not found on this one.
 */
final class OverPageEnd {
  /** So many words side by side are found over the end of a page. */
  static final int MOST = 4;

  private OverPageEnd() {}

  /** The words that begin on the page and end on the next. */
  static List<PageWord> brokenWords(PageReading page) {
    List<PageWord> broken = new ArrayList<>();
    for (Run run : page.overTheEnd()) {
      if (run.to() > run.from()) {
        broken.addAll(run.words().subList(run.from(), run.to()));
      }
    }
    return broken;
  }

  /** Runs of words over the end, and each word near it, as it is and loosely. */
  static Set<String> of(PageReading page) {
    Set<String> terms = new LinkedHashSet<>();
    for (Run run : page.overTheEnd()) {
      List<PageWord> words = run.words();
      for (PageWord word : words) {
        terms.add(word.exact());
        terms.add(word.loose());
      }
      for (int first = 0; first < words.size(); first++) {
        for (int last = first + 1; last < Math.min(words.size(), first + MOST); last++) {
          if (isOver(page, words.get(first), words.get(last))) {
            List<String> side =
                words.subList(first, last + 1).stream().map(PageWord::exact).toList();
            terms.add(term(side));
          }
        }
      }
    }
    return terms;
  }

  static boolean isOver(PageReading page, PageWord first, PageWord last) {
    return !page.isOverTheEnd(first.start()) && page.isOverTheEnd(last.end());
  }

  static String term(List<String> words) {
    return String.join(" ", words);
  }

  static boolean canBe(List<String> words) {
    return words.size() > 1 && words.size() <= MOST;
  }
}
