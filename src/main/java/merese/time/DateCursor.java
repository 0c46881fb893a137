package merese.time;

import java.util.List;
import java.util.Set;

/** Where a reader is among the tokens of a date. */
final class DateCursor {
  private final List<String> tokens;
  private int at;

  DateCursor(List<String> tokens) {
    this.tokens = tokens;
  }

  int position() {
    return at;
  }

  void backTo(int position) {
    at = position;
  }

  boolean isAtEnd() {
    return at == tokens.size();
  }

  /** The token after so many others; "" behind the last. */
  String peek(int ahead) {
    return at + ahead < tokens.size() ? tokens.get(at + ahead) : "";
  }

  boolean is(String token) {
    return peek(0).equals(token);
  }

  String take() {
    return tokens.get(at++);
  }

  boolean accept(String token) {
    boolean found = is(token);
    at += found ? 1 : 0;
    return found;
  }

  boolean acceptOneOf(Set<String> any) {
    boolean found = any.contains(peek(0));
    at += found ? 1 : 0;
    return found;
  }

  boolean acceptAll(List<String> words) {
    for (int i = 0; i < words.size(); i++) {
      if (!peek(i).equals(words.get(i))) {
        return false;
      }
    }
    at += words.size();
    return true;
  }

  boolean acceptAny(List<List<String>> phrases) {
    List<String> longest = List.of();
    for (List<String> phrase : phrases) {
      int before = at;
      if (phrase.size() > longest.size() && acceptAll(phrase)) {
        longest = phrase;
      }
      at = before;
    }
    at += longest.size();
    return !longest.isEmpty();
  }

  boolean acceptBehindComma(List<List<String>> phrases) {
    int before = at;
    accept(",");
    if (acceptAny(phrases)) {
      return true;
    }
    at = before;
    return false;
  }
}
