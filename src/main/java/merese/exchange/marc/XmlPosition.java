package merese.exchange.marc;

/**
 * Line and column of a place in a file.
 *
 * <p>Columns count characters; of UTF-8, bytes that go on with a character are none.
 */
final class XmlPosition {
  private final boolean utf8;
  private int line = 1;
  private int column = 1;

  XmlPosition(boolean utf8) {
    this.utf8 = utf8;
  }

  int line() {
    return line;
  }

  int column() {
    return column;
  }

  void pass(byte[] bytes, int from, int to) {
    for (int i = from; i < to; i++) {
      byte b = bytes[i];
      if (b == '\n') {
        line++;
        column = 1;
      } else if (!utf8 || (b & 0xc0) != 0x80) {
        column++;
      }
    }
  }
}
