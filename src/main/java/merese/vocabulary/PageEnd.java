package merese.vocabulary;

import java.util.ArrayList;
import java.util.List;
import merese.vocabulary.PageReading.Run;

/**
 * The end of a page together with the first words of the next one, so that a word broken over it
 * ("annu-" / "lated") and a term of which a part stands on either page are found.
 *
 * <p>Between the two stand a catchword, a signature or a page number below, and a running head
 * above, and nothing marks them as such. So a short last line and a catchword are left out; on the
 * next page the text goes on with the first of its upper lines that begins with a small letter, and
 * where there is none, or a sentence ends with the page, nothing is read over the end (common
 * practice of printers, no source).
 */
final class PageEnd {
  /** A running head may have two lines. */
  private static final int UPPER_LINES = 3;

  /** A page number or a signature has at most so many chars. */
  private static final int SHORT = 4;

  /** How many chars of the next page are read, and of this one. */
  private static final int AHEAD = 100;

  private static final int BACK = 240;

  private final String text;
  private final int body;
  private final String onward;
  private List<Run> runs;

  private PageEnd(String text, int body, String onward) {
    this.text = text;
    this.body = body;
    this.onward = onward;
  }

  static PageEnd of(String text, List<String> next) {
    return at(text, onward(next));
  }

  /**
   * @param onward with what the next page goes on; "" where it does not
   */
  static PageEnd at(String text, String onward) {
    int body = onward.isEmpty() ? 0 : body(text, onward);
    boolean ends = body == 0 || ".!?:;".indexOf(text.charAt(body - 1)) >= 0;
    return ends ? new PageEnd(text, text.length(), "") : new PageEnd(text, body, onward);
  }

  /** As much of the next page as is read; "" for none. */
  String onward() {
    return onward;
  }

  /** Where the text of this page ends that goes on. */
  int body() {
    return body;
  }

  /** The end of the last place on the next page. */
  int length() {
    return onward.isEmpty() ? text.length() : text.length() + 1 + onward.length();
  }

  private static String onward(List<String> next) {
    int seen = 0;
    for (int i = 0; i < next.size() && seen < UPPER_LINES; i++) {
      String line = next.get(i).strip();
      if (line.isEmpty()) {
        continue;
      }
      seen++;
      if (Character.isLowerCase(line.codePointAt(0)) && !isNumber(line)) {
        StringBuilder onward = new StringBuilder(line);
        for (int j = i + 1; j < next.size() && onward.length() < AHEAD; j++) {
          onward.append('\n').append(next.get(j).strip());
        }
        return shortened(onward.toString());
      }
    }
    return "";
  }

  private static String shortened(String onward) {
    if (onward.length() <= AHEAD) {
      return onward;
    }
    int end = Math.max(onward.lastIndexOf(' ', AHEAD), onward.lastIndexOf('\n', AHEAD));
    return end > 0 ? onward.substring(0, end).strip() : "";
  }

  private static boolean isSignature(String line) {
    return line.length() <= SHORT && !PageReading.isHyphen(line.charAt(line.length() - 1));
  }

  private static boolean isNumber(String line) {
    for (int i = 0; i < line.length(); i++) {
      if ("ivxlc[]().- ".indexOf(line.charAt(i)) < 0 && !Character.isDigit(line.charAt(i))) {
        return false;
      }
    }
    return true;
  }

  /** Where the last line ends that is neither a number nor a signature nor a catchword. */
  private static int body(String text, String onward) {
    int end = stripped(text, text.length());
    for (int left = 2; left > 0 && end > 0; left--) {
      String line = text.substring(text.lastIndexOf('\n', end - 1) + 1, end).strip();
      boolean catchword = line.indexOf(' ') < 0 && onward.startsWith(line);
      if (!catchword && !isSignature(line) && !isNumber(line)) {
        break;
      }
      end = stripped(text, Math.max(0, text.lastIndexOf('\n', end - 1)));
    }
    return end;
  }

  private static int stripped(String text, int to) {
    int end = to;
    while (end > 0 && Character.isWhitespace(text.charAt(end - 1))) {
      end--;
    }
    return end;
  }

  private boolean isBroken() {
    return PageReading.isHyphen(text.charAt(body - 1));
  }

  /** The readings of what runs over the end, and of nothing else. */
  List<Run> runs() {
    if (runs == null) {
      runs = onward.isEmpty() ? List.of() : read();
    }
    return runs;
  }

  private List<Run> read() {
    int from = Math.max(0, body - BACK);
    while (from > 0 && !Character.isWhitespace(text.charAt(from - 1))) {
      from--;
    }
    List<Run> over = new ArrayList<>();
    for (Run run : PageReading.runs(text.substring(from, body) + '\n' + onward)) {
      List<PageWord> words = new ArrayList<>(run.words().size());
      for (PageWord word : run.words()) {
        int start = moved(from + word.start());
        words.add(word.at(start, moved(from + word.end())));
      }
      int first = 0;
      while (first < words.size() && words.get(first).end() <= text.length()) {
        first++;
      }
      boolean one = first < words.size() && words.get(first).start() < text.length();
      int after = one ? first + 1 : first;
      boolean again = run.from() > 0 || run.to() < words.size();
      if (first == words.size() || !one && first == 0 || again && !reads(run, first)) {
        continue;
      }
      int begin = Math.max(0, first - PageReading.AROUND);
      int end = Math.min(words.size(), after + PageReading.AROUND);
      over.add(new Run(List.copyOf(words.subList(begin, end)), first - begin, after - begin));
    }
    return List.copyOf(over);
  }

  /** Whether a second reading reads anew what stands at the end. */
  private static boolean reads(Run run, int first) {
    return run.from() <= first && run.to() > first;
  }

  /** A place in the two texts put together is one in the text, or after it. */
  private int moved(int place) {
    return place <= body ? place : place - body + text.length();
  }

  /** What is printed from one place to another on the next page. */
  String between(int start, int to) {
    int next = text.length() + 1;
    if (start >= next) {
      return onward.substring(start - next, to - next);
    }
    String here = text.substring(start, Math.max(start, isBroken() ? body - 1 : body));
    return here + (isBroken() ? "" : " ") + onward.substring(0, to - next).replace('\n', ' ');
  }

  /** What stands between two words. */
  String separator(int from, int to) {
    return from <= text.length() ? (isBroken() ? "-" : " ") : between(from, to).replace('\n', ' ');
  }

  void appendOnward(StringBuilder line, int[] at) {
    line.append('|');
    for (int i = 0; i <= onward.length(); i++) {
      at[text.length() + 1 + i] = line.length();
      if (i < onward.length()) {
        line.append(onward.charAt(i) == '\n' ? ' ' : onward.charAt(i));
      }
    }
  }
}
