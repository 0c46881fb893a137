package merese.exchange.csl;

/** Well-formed UTF-8, as RFC 3629, section 4, has it. */
final class Utf8 {
  private Utf8() {}

  /** Whether bytes are well-formed from their first to their last. */
  static boolean isSound(byte[] bytes) {
    int i = 0;
    while (i < bytes.length) {
      byte first = bytes[i];
      if (first >= 0) {
        i++;
      } else {
        i = end(bytes, i, first & 0xFF);
        if (i < 0) {
          return false;
        }
      }
    }
    return true;
  }

  /** Where a character of several bytes ends; -1 where it is none. */
  private static int end(byte[] bytes, int at, int first) {
    if (first >= 0xC2 && first < 0xE0 && at + 1 < bytes.length) { // mostly
      return (bytes[at + 1] & 0xC0) == 0x80 ? at + 2 : -1;
    }
    int length = first < 0xE0 ? 0 : first < 0xF0 ? 3 : first < 0xF5 ? 4 : 0;
    if (length == 0 || at + length > bytes.length) {
      return -1;
    }
    int second = bytes[at + 1] & 0xFF;
    int lowest = first == 0xE0 ? 0xA0 : first == 0xF0 ? 0x90 : 0x80;
    int highest = first == 0xED ? 0x9F : first == 0xF4 ? 0x8F : 0xBF;
    if (second < lowest || second > highest) {
      return -1;
    }
    for (int i = at + 2; i < at + length; i++) {
      if ((bytes[i] & 0xC0) != 0x80) {
        return -1;
      }
    }
    return at + length;
  }
}
