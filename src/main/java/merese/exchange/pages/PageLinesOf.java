package merese.exchange.pages;

import java.util.ArrayList;
import java.util.List;
import merese.model.PageLines;

/**
 * The lines of a page's text. White space at the ends and blank lines say nothing; a control
 * character, which no page prints, is a space.
 */
final class PageLinesOf {
  private PageLinesOf() {}

  static PageLines text(CharSequence text) {
    List<String> lines = new ArrayList<>();
    int begin = 0;
    for (int i = 0; i <= text.length(); i++) {
      if (i == text.length() || isLineEnd(text.charAt(i))) {
        String line = cleaned(text, begin, i);
        if (!line.isEmpty()) {
          lines.add(line);
        }
        begin = i + 1;
      }
    }
    return lines.isEmpty() ? PageLines.NONE : new PageLines(lines);
  }

  private static boolean isLineEnd(char c) {
    return c == '\n' || c == '\r' || c == '\u0085' || c == '\u2028' || c == '\u2029';
  }

  private static String cleaned(CharSequence text, int begin, int end) {
    StringBuilder out = new StringBuilder(end - begin);
    for (int i = begin; i < end; i++) {
      char c = text.charAt(i);
      boolean half =
          Character.isHighSurrogate(c)
              ? i + 1 == end || !Character.isLowSurrogate(text.charAt(i + 1))
              : Character.isLowSurrogate(c)
                  && (i == begin || !Character.isHighSurrogate(text.charAt(i - 1)));
      out.append(half ? '\ufffd' : Character.isISOControl(c) || c == '\ufeff' ? ' ' : c);
    }
    return out.toString().strip();
  }
}
