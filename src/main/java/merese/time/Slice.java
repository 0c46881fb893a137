package merese.time;

/** A part of the text that is read, which knows where it stands in it. */
record Slice(String text, int from, int to) {
  static final char END = '\0';

  static Slice of(String text) {
    return new Slice(text, 0, text.length());
  }

  boolean isEmpty() {
    return from == to;
  }

  /** Another part of the text. */
  Slice between(int start, int end) {
    return new Slice(text, start, end);
  }

  /** The character at a place of the whole text; {@link #END} outside this part. */
  char at(int place) {
    return place >= from && place < to ? text.charAt(place) : END;
  }

  boolean isDigit(int place) {
    char c = at(place);
    return c >= '0' && c <= '9';
  }

  /** Past all digits. */
  int afterDigits(int place) {
    int at = place;
    while (isDigit(at)) {
      at++;
    }
    return at;
  }

  /**
   * @return -1 where it is not in this part
   */
  int indexOf(String what) {
    int at = text.indexOf(what, from);
    return at < 0 || at + what.length() > to ? -1 : at;
  }

  boolean is(String what) {
    return to - from == what.length() && text.startsWith(what, from);
  }

  EdtfException error(int place, String problem, String remedy) {
    return new EdtfException(text, Math.min(place, text.length()), problem, remedy);
  }
}
