package merese.change.notes;

import java.util.ArrayList;
import java.util.List;

/** A source's own list of kinds as somebody typed it. */
public final class HeadingList {
  private static final String BETWEEN_NAMES = " or ";

  private HeadingList() {}

  /**
   * The headings, each with its names; two names of one heading have " or " between them.
   *
   * @param mark what stands between headings
   */
  public static List<List<String>> of(String typed, String mark) {
    List<List<String>> headings = new ArrayList<>();
    for (String heading : split(typed, mark)) {
      headings.add(split(heading, BETWEEN_NAMES));
    }
    return headings;
  }

  private static List<String> split(String text, String mark) {
    List<String> parts = new ArrayList<>();
    int from = 0;
    while (from <= text.length()) {
      int at = text.indexOf(mark, from);
      int end = at < 0 ? text.length() : at;
      String part = text.substring(from, end).strip();
      if (!part.isEmpty()) {
        parts.add(part);
      }
      from = end + mark.length();
    }
    return parts;
  }
}
