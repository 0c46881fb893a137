package merese.search;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import merese.search.FindQuery.Node;
import merese.search.FindQuery.Phrase;
import merese.search.FindQuery.Words;
import merese.search.Highlights.Mark;
import merese.vocabulary.MisreadWords;
import merese.vocabulary.PageReading;
import merese.vocabulary.PageReading.Run;
import merese.vocabulary.PageWord;

/**
 * Finds again, on a page, the words that a question looked for, as they stand there; where a word
 * does not stand there exactly, what is loosely the same.
 */
public final class PageHighlights {
  private final List<Wanted> wanted = new ArrayList<>();

  public PageHighlights(FindQuery asked) {
    for (Node node : asked.sought()) {
      if (node instanceof Phrase phrase && phrase.field().isEmpty()) {
        wanted.add(new Wanted(phrase.folded(), List.of()));
      } else if (node instanceof Words words && words.field().isEmpty()) {
        words.folded().forEach(w -> wanted.add(new Wanted(List.of(w), List.of())));
        if (!words.begun().isEmpty()) {
          wanted.add(new Wanted(List.of(), words.begun()));
        }
      }
    }
  }

  private record Wanted(List<String> words, List<String> begun) {
    List<Mark> marks(PageReading page, boolean loosely) {
      List<Mark> marks = new ArrayList<>();
      for (Run run : page.runs()) {
        for (int at = 0; at < run.words().size(); at++) {
          int last = at + Math.max(1, words.size()) - 1;
          if (last < run.words().size() && standsAt(run.words(), at, loosely)) {
            marks.add(new Mark(run.words().get(at).start(), run.words().get(last).end()));
          }
        }
      }
      return marks;
    }

    private boolean standsAt(List<PageWord> page, int at, boolean loosely) {
      if (words.isEmpty()) {
        return !loosely && begun.stream().anyMatch(page.get(at).exact()::startsWith);
      }
      for (int i = 0; i < words.size(); i++) {
        PageWord word = page.get(at + i);
        boolean same =
            loosely
                ? word.loose().equals(MisreadWords.loose(words.get(i)))
                : word.exact().equals(words.get(i));
        if (!same) {
          return false;
        }
      }
      return true;
    }
  }

  /** Where the words stand in the page's text, in order and apart from each other. */
  public List<Mark> in(PageReading page) {
    List<Mark> all = new ArrayList<>();
    for (Wanted each : wanted) {
      List<Mark> marks = each.marks(page, false);
      all.addAll(marks.isEmpty() ? each.marks(page, true) : marks);
    }
    return apart(all, page.text());
  }

  /** In order; what overlaps, or has nothing but one space or hyphen between, is one. */
  public static List<Mark> apart(List<Mark> marks, String text) {
    List<Mark> sorted = new ArrayList<>(marks);
    sorted.sort(Comparator.comparingInt(Mark::start).thenComparingInt(Mark::end));
    List<Mark> apart = new ArrayList<>();
    for (Mark mark : sorted) {
      Mark last = apart.isEmpty() ? null : apart.get(apart.size() - 1);
      if (last != null
          && (mark.start() <= last.end() || isJoined(text, last.end(), mark.start()))) {
        apart.set(apart.size() - 1, new Mark(last.start(), Math.max(last.end(), mark.end())));
      } else {
        apart.add(mark);
      }
    }
    return apart;
  }

  private static boolean isJoined(String text, int from, int to) {
    String between = text.substring(from, to);
    return between.equals(" ") || between.equals("-") || between.equals("\n");
  }
}
