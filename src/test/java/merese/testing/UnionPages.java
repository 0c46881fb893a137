package merese.testing;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import merese.model.PageLines;
import merese.model.PageMap;
import merese.model.PageText;

/** The page texts of one edition of a union list, in files of at most a thousand pages. */
final class UnionPages {
  private static final int MOST_A_FILE = 1_000;
  private static final int LINES = 25;
  private static final int WORDS_A_LINE = 10;

  /** Leaves before the first numbered page, in books that are long enough to have any. */
  private static final int PRELIMINARIES = 8;

  private static final int LONG_WORD = 7;

  private final UnionWords words;
  private final UnionThesaurus thesaurus;
  private final Random random;

  UnionPages(UnionWords words, UnionThesaurus thesaurus, Random random) {
    this.words = words;
    this.thesaurus = thesaurus;
    this.random = random;
  }

  List<PageText> of(String edition, int pages) {
    List<PageText> files = new ArrayList<>();
    for (int from = 0; from < pages; from += MOST_A_FILE) {
      int count = Math.min(MOST_A_FILE, pages - from);
      List<PageLines> texts = new ArrayList<>();
      for (int page = 0; page < count; page++) {
        texts.add(page());
      }
      files.add(
          new PageText(
              edition,
              "pages-from-" + (from + 1) + ".pdf",
              hash(),
              PageText.Origin.PDF,
              map(from, count),
              texts));
    }
    return files;
  }

  private static PageMap map(int before, int count) {
    if (before == 0 && count > PRELIMINARIES + 1) {
      return PageMap.parse(
          "1–"
              + PRELIMINARIES
              + " = unnumbered; "
              + (PRELIMINARIES + 1)
              + "–"
              + count
              + " = pp. 1–"
              + (count - PRELIMINARIES));
    }
    return count == 1
        ? PageMap.parse("1 = p. " + (before + 1))
        : PageMap.parse("1–" + count + " = pp. " + (before + 1) + "–" + (before + count));
  }

  private String hash() {
    StringBuilder hash = new StringBuilder();
    while (hash.length() < 64) {
      hash.append(Character.forDigit(random.nextInt(16), 16));
    }
    return hash.toString();
  }

  /**
   * One in twenty has only a picture; every second names a concept. Most have the word "stem",
   * which is one of the invented words and a concept's name as well: so something is named on most
   * pages.
   */
  private PageLines page() {
    if (random.nextInt(20) == 0) {
      return new PageLines(List.of());
    }
    int naming = random.nextInt(2 * LINES);
    List<String> lines = new ArrayList<>(LINES);
    String rest = "";
    for (int line = 0; line < LINES; line++) {
      StringBuilder text = new StringBuilder(rest);
      rest = "";
      for (int word = 0; word < WORDS_A_LINE - 1; word++) {
        text.append(text.length() == 0 ? "" : " ").append(words.next(random));
      }
      if (line == naming) {
        text.append(' ').append(thesaurus.printed(thesaurus.next(random), random));
      }
      String last = words.next(random);
      text.append(' ');
      if (last.length() >= LONG_WORD && line < LINES - 1) {
        text.append(last, 0, 4).append('-');
        rest = last.substring(4);
      } else {
        text.append(last);
      }
      lines.add(text.toString());
    }
    return new PageLines(lines);
  }
}
