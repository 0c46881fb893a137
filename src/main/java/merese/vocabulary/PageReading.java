package merese.vocabulary;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * The words of a page, for looking for them; the text itself stays as it was read.
 *
 * <p>A hyphen at the end of a line tells not whether the word has one. So where a small letter
 * follows, the word is read mended ("deca-/nter" is decanter), and again in two ("knife-/edged" is
 * knife, edged); before a capital or a digit it is the other way round. A soft hyphen and ¬ only
 * break a word. What runs over the end of the page is read too, with the first words of the next
 * one: see {@link PageEnd}. It stands on the page where it begins.
 */
public final class PageReading {
  /** How many words a second reading takes along on either side, so that phrases go through it. */
  static final int AROUND = 8;

  /** Stands before what the next page begins with, where a page is kept. */
  private static final String ONWARD = "\n\f";

  private static final String HYPHENS = "-\u2010\u2011\u00AD\u00AC\u2E17\u2E40";
  private static final String BREAKS_ONLY = "\u00AD\u00AC";

  private final String text;
  private final PageEnd end;

  /** Read when first asked for: a page that is only shown needs none. */
  private List<Run> runs;

  private PageReading(String text, PageEnd end) {
    this.text = text;
    this.end = end;
  }

  /**
   * Words that stand side by side.
   *
   * @param from the first word that no earlier run has read so
   * @param to after the last such word
   */
  public record Run(List<PageWord> words, int from, int to) {}

  /** Reads a page by its lines, from the top. */
  public static PageReading of(List<String> lines) {
    return of(lines, List.of());
  }

  /**
   * The same.
   *
   * @param next the lines of the page after it; none where there is no such page
   */
  public static PageReading of(List<String> lines, List<String> next) {
    String text = String.join("\n", lines);
    return new PageReading(text, PageEnd.of(text, next));
  }

  /** Reads again what {@link #kept} gave. */
  public static PageReading ofKept(String kept) {
    int end = kept.lastIndexOf(ONWARD);
    String text = kept.substring(0, end);
    return new PageReading(text, PageEnd.at(text, kept.substring(end + ONWARD.length())));
  }

  /** The text with as much of the next page as is read with it. */
  public String kept() {
    return text + ONWARD + end.onward();
  }

  /** The lines with a newline between, which the words' places refer to. */
  public String text() {
    return text;
  }

  /** The whole page, then the second readings with what stands around them. */
  public List<Run> runs() {
    if (runs == null) {
      runs = runs(text);
    }
    return runs;
  }

  /**
   * What runs over the end of the page, with what stands around it. Words of the next page have
   * places after the end of the text.
   */
  public List<Run> overTheEnd() {
    return end.runs();
  }

  /** Whether something that ends at a place runs over the end of the page. */
  public boolean isOverTheEnd(int place) {
    return place > text.length();
  }

  /** What stands between two places, also where the second is on the next page. */
  public String between(int start, int to) {
    return isOverTheEnd(to) ? end.between(start, to) : text.substring(start, to);
  }

  /**
   * Some words of a run as they stand in the text, on one line.
   *
   * @param first of them
   * @param last of them, inclusive
   */
  public String printed(Run run, int first, int last) {
    StringBuilder printed = new StringBuilder();
    for (int i = first; i <= last; i++) {
      PageWord word = run.words().get(i);
      if (i > first) {
        between(run.words().get(i - 1).end(), word.start(), printed);
      }
      if (isOverTheEnd(word.end())) {
        printed.append(end.between(word.start(), word.end()));
        continue;
      }
      for (int at = word.start(); at < word.end(); at++) {
        int gap = lineEnd(at);
        if (gap > at) {
          at = gap - 1;
        } else {
          printed.append(text.charAt(at));
        }
      }
    }
    return printed.toString();
  }

  /** The text on one line. */
  public OneLine oneLine() {
    StringBuilder line = new StringBuilder(text.length());
    return new OneLine(line, oneLine(line, text.length(), text.length() + 1));
  }

  /** The text on one line, with the first words of the next page after a bar. */
  public OneLine oneLineOverTheEnd() {
    StringBuilder line = new StringBuilder(text.length());
    int[] at = oneLine(line, end.body(), end.length() + 1);
    end.appendOnward(line, at);
    return new OneLine(line, at);
  }

  /**
   * @param to where the text ends that is wanted
   * @return where each place is on the line, the rest at its end
   */
  private int[] oneLine(StringBuilder line, int to, int places) {
    int[] at = new int[places];
    for (int i = 0; i < to; i++) {
      at[i] = line.length();
      char c = text.charAt(i);
      int next = lineEnd(i);
      if (next > i && next < to) {
        if (BREAKS_ONLY.indexOf(c) < 0) {
          line.append(c);
        }
        while (i + 1 < next) {
          i++;
          at[i] = line.length();
        }
      } else {
        line.append(c == '\n' ? ' ' : c);
      }
    }
    Arrays.fill(at, to, places, line.length());
    return at;
  }

  private void between(int from, int to, StringBuilder out) {
    if (isOverTheEnd(to)) {
      out.append(end.separator(from, to));
      return;
    }
    if (lineEnd(from) == to) {
      out.append(text.charAt(from));
      return;
    }
    boolean space = false;
    for (int i = from; i < to; i++) {
      char c = text.charAt(i);
      boolean isSpace = Character.isWhitespace(c) || Character.isSpaceChar(c);
      if (!isSpace || !space) {
        out.append(isSpace ? ' ' : c);
      }
      space = isSpace;
    }
  }

  private int lineEnd(int at) {
    return lineEnd(text, at);
  }

  /** The words of a text, in all readings. */
  static List<Run> runs(String text) {
    return new Scan(text).runs();
  }

  static boolean isHyphen(char c) {
    return HYPHENS.indexOf(c) >= 0;
  }

  /**
   * Where the next line's first letter is, where a word is broken here; {@code at} itself where it
   * is not.
   */
  static int lineEnd(String text, int at) {
    int i = at;
    if (i >= text.length() || HYPHENS.indexOf(text.charAt(i)) < 0) {
      return at;
    }
    i = skipSpace(text, i + 1);
    if (i >= text.length() || text.charAt(i) != '\n') {
      return at;
    }
    i = skipSpace(text, i + 1);
    return i < text.length() && Character.isLetterOrDigit(text.codePointAt(i)) ? i : at;
  }

  private static int skipSpace(String text, int from) {
    int i = from;
    while (i < text.length()
        && text.charAt(i) != '\n'
        && (Character.isWhitespace(text.charAt(i)) || Character.isSpaceChar(text.charAt(i)))) {
      i++;
    }
    return i;
  }

  /** A stretch of letters on one line. */
  private record Piece(String letters, int start, int end, boolean broken) {}

  private static final class Scan {
    private final String text;
    private final List<Piece> pieces = new ArrayList<>();
    private final StringBuilder letters = new StringBuilder();
    private int start;
    private int end;

    Scan(String text) {
      this.text = text;
      int next;
      for (int i = 0; i < text.length(); i = next) {
        int c = text.codePointAt(i);
        next = i + Character.charCount(c);
        if (Character.isLetterOrDigit(c)) {
          if (letters.isEmpty()) {
            start = i;
          }
          Folding.appendFolded(c, letters);
          end = next;
        } else if (Folding.breaksWord(c)) {
          endPiece();
        }
      }
      endPiece();
    }

    private void endPiece() {
      if (!letters.isEmpty()) {
        pieces.add(new Piece(letters.toString(), start, end, lineEnd(text, end) > end));
        letters.setLength(0);
      }
    }

    List<Run> runs() {
      List<PageWord> words = new ArrayList<>(pieces.size());
      List<Second> seconds = new ArrayList<>();
      for (int i = 0; i < pieces.size(); i++) {
        int last = i;
        while (pieces.get(last).broken() && last + 1 < pieces.size()) {
          last++;
        }
        if (last == i) {
          words.add(word(i, i));
          continue;
        }
        List<PageWord> apart = new ArrayList<>();
        for (int each = i; each <= last; each++) {
          apart.add(word(each, each));
        }
        boolean mended = followsSmall(i, last);
        if (!mended || !onlyBroken(i, last)) {
          seconds.add(
              new Second(words.size(), mended ? 1 : apart.size(), mended ? apart : one(i, last)));
        }
        words.addAll(mended ? one(i, last) : apart);
        i = last;
      }
      List<Run> runs = new ArrayList<>();
      runs.add(new Run(List.copyOf(words), 0, words.size()));
      seconds.forEach(second -> runs.add(second.among(words)));
      return List.copyOf(runs);
    }

    private List<PageWord> one(int from, int last) {
      return List.of(word(from, last));
    }

    private PageWord word(int from, int last) {
      String letters = pieces.get(from).letters();
      for (int i = from + 1; i <= last; i++) {
        letters = letters.concat(pieces.get(i).letters());
      }
      return PageWord.of(letters, pieces.get(from).start(), pieces.get(last).end());
    }

    private boolean followsSmall(int from, int last) {
      for (int i = from + 1; i <= last; i++) {
        if (!Character.isLowerCase(text.codePointAt(pieces.get(i).start()))
            && !Character.isUpperCase(text.codePointBefore(pieces.get(i - 1).end()))) {
          return false;
        }
      }
      return true;
    }

    private boolean onlyBroken(int from, int last) {
      for (int i = from; i < last; i++) {
        if (BREAKS_ONLY.indexOf(text.charAt(pieces.get(i).end())) < 0) {
          return false;
        }
      }
      return true;
    }
  }

  /** Another reading of some words. */
  private record Second(int at, int instead, List<PageWord> read) {
    Run among(List<PageWord> words) {
      int first = Math.max(0, at - AROUND);
      int after = at + instead;
      List<PageWord> run = new ArrayList<>(words.subList(first, at));
      run.addAll(read);
      run.addAll(words.subList(after, Math.min(words.size(), after + AROUND)));
      return new Run(List.copyOf(run), at - first, at - first + read.size());
    }
  }
}
