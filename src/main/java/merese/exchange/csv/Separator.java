package merese.exchange.csv;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;

/** The sign that parts cells: comma, semicolon or tab. */
final class Separator {
  private static final char[] ALL = {',', ';', '\t'};

  private Separator() {}

  /** The one with which most cells of the first row are known headers, then most cells at all. */
  static char of(byte[] line, int most) {
    String text = new String(line, StandardCharsets.UTF_8);
    char best = ',';
    int bestScore = -1;
    for (char each : ALL) {
      List<String> cells = cells(text, each);
      long known = cells.stream().filter(c -> Column.named(c).isPresent()).count();
      int score = (int) known * 10_000 + Math.min(cells.size(), most);
      if (score > bestScore) {
        best = each;
        bestScore = score;
      }
    }
    return best;
  }

  static String name(char separator) {
    return switch (separator) {
      case ',' -> "comma";
      case ';' -> "semicolon";
      default -> "tab";
    };
  }

  private static List<String> cells(String line, char separator) {
    List<String> cells = new ArrayList<>();
    boolean inQuotes = false;
    int start = 0;
    for (int i = 0; i <= line.length(); i++) {
      if (i == line.length() || !inQuotes && line.charAt(i) == separator) {
        cells.add(line.substring(start, i));
        start = i + 1;
      } else if (line.charAt(i) == '"') {
        inQuotes = !inQuotes;
      }
    }
    return cells;
  }
}
