package merese.change;

import java.nio.charset.StandardCharsets;

/**
 * Where values stand in the text of a JSON file.
 *
 * @param line from 1
 * @param column from 1, in code points
 */
record Position(int line, int column) {
  /**
   * The place of the last of some string values, each looked for after the one before; that of the
   * last that is found, for a file that writes one of them with escapes.
   */
  static Position of(byte[] content, String... values) {
    String text = new String(content, StandardCharsets.UTF_8);
    int at = 0;
    int found = 0;
    for (String value : values) {
      int next = text.indexOf('"' + value + '"', at);
      if (next >= 0) {
        found = next;
        at = next + value.length() + 2;
      }
    }
    int line = 1;
    int start = 0;
    for (int i = 0; i < found; i++) {
      if (text.charAt(i) == '\n') {
        line++;
        start = i + 1;
      }
    }
    return new Position(line, text.codePointCount(start, found) + 1);
  }
}
