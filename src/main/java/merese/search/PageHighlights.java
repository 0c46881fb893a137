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
import merese.vocabulary.PageWord;

/**
 * Finds again, on a page, the words that a question looked for, as they stand there; where a word
 * does not stand there exactly, what is loosely the same.
 */
public final class PageHighlights {
  private final List<Wanted> wanted = new ArrayList<>();
  private final List<Wanted> overTheEnd = new ArrayList<>();

  public PageHighlights(FindQuery asked) {
    List<String> run = new ArrayList<>();
    for (Node node : asked.sought()) {
      if (node instanceof Phrase phrase && phrase.field().isEmpty()) {
        wanted.add(new Wanted(phrase.folded(), List.of()));
      } else if (node instanceof Words words && words.field().isEmpty()) {
        words.folded().forEach(w -> wanted.add(new Wanted(List.of(w), List.of())));
        run.addAll(words.folded());
        if (!words.begun().isEmpty()) {
          wanted.add(new Wanted(List.of(), words.begun()));
        }
      }
    }
    if (OverPageEnd.canBe(run)) {
      overTheEnd.add(new Wanted(run, List.of()));
    }
  }

  private record Wanted(List<String> words, List<String> begun) {
    List<Mark> marks(PageReading page, boolean loosely) {
      List<Mark> marks = new ArrayList<>();
      page.runs().forEach(run -> add(run.words(), loosely, marks));
      marks.addAll(overTheEnd(page, loosely));
      return marks;
    }

    List<Mark> overTheEnd(PageReading page, boolean loosely) {
      List<Mark> marks = new ArrayList<>();
      page.overTheEnd().forEach(run -> add(run.words(), loosely, marks));
      marks.removeIf(m -> page.isOverTheEnd(m.start()) || !page.isOverTheEnd(m.end()));
      return marks;
    }

    private void add(List<PageWord> run, boolean loosely, List<Mark> marks) {
      for (int at = 0; at < run.size(); at++) {
        int last = at + Math.max(1, words.size()) - 1;
        if (last < run.size() && standsAt(run, at, loosely)) {
          marks.add(new Mark(run.get(at).start(), run.get(last).end()));
        }
      }
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
    overTheEnd.forEach(each -> all.addAll(each.overTheEnd(page, false)));
    return apart(all, page);
  }

  /** In order; what overlaps, or has nothing but one space or hyphen between, is one. */
  public static List<Mark> apart(List<Mark> marks, PageReading page) {
    List<Mark> sorted = new ArrayList<>(marks);
    sorted.sort(Comparator.comparingInt(Mark::start).thenComparingInt(Mark::end));
    List<Mark> apart = new ArrayList<>();
    for (Mark mark : sorted) {
      Mark last = apart.isEmpty() ? null : apart.get(apart.size() - 1);
      if (last != null
          && (mark.start() <= last.end() || isJoined(page.between(last.end(), mark.start())))) {
        apart.set(apart.size() - 1, new Mark(last.start(), Math.max(last.end(), mark.end())));
      } else {
        apart.add(mark);
      }
    }
    return apart;
  }

  private static boolean isJoined(String between) {
    return between.equals(" ") || between.equals("-") || between.equals("\n");
  }
}
