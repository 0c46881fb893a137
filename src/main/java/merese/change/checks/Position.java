package merese.change.checks;

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
    return found(new String(content, StandardCharsets.UTF_8), 0, 0, values);
  }

  /** The same within the object that has a name under a key, such as {@code "id": "n3"}. */
  static Position within(byte[] content, String key, String name, String... values) {
    String text = new String(content, StandardCharsets.UTF_8);
    int at = named(text, key, name, 0);
    return found(text, at, at, values);
  }

  /** The same within an edition. */
  static Position inEdition(byte[] content, String edition, String... values) {
    return within(content, "key", edition, values);
  }

  /** The same within a note of an edition. */
  static Position inNote(byte[] content, String edition, String note, String... values) {
    String text = new String(content, StandardCharsets.UTF_8);
    int at = named(text, "id", note, named(text, "key", edition, 0));
    return found(text, at, at, values);
  }

  private static int named(String text, String key, String name, int from) {
    for (String between : new String[] {"\": \"", "\":\""}) {
      int at = text.indexOf('"' + key + between + name + '"', from);
      if (at >= 0) {
        return at + key.length() + between.length();
      }
    }
    return from;
  }

  private static Position found(String text, int from, int otherwise, String... values) {
    int at = from;
    int found = otherwise;
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
