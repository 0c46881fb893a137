package merese.exchange.pages;

import java.util.Comparator;

/** Names as people count them: p2 before p10. */
final class NameOrder implements Comparator<String> {
  @Override
  public int compare(String one, String other) {
    int a = 0;
    int b = 0;
    while (a < one.length() && b < other.length()) {
      int endA = digits(one, a);
      int endB = digits(other, b);
      int compared;
      if (endA > a && endB > b) {
        compared = numbers(one.substring(a, endA), other.substring(b, endB));
        a = endA;
        b = endB;
      } else {
        compared =
            Character.compare(
                Character.toLowerCase(one.charAt(a++)), Character.toLowerCase(other.charAt(b++)));
      }
      if (compared != 0) {
        return compared;
      }
    }
    int rest = Integer.compare(one.length() - a, other.length() - b);
    return rest != 0 ? rest : one.compareTo(other);
  }

  private static int numbers(String one, String other) {
    String a = withoutZeros(one);
    String b = withoutZeros(other);
    return a.length() != b.length() ? Integer.compare(a.length(), b.length()) : a.compareTo(b);
  }

  private static String withoutZeros(String digits) {
    int at = 0;
    while (at < digits.length() - 1 && digits.charAt(at) == '0') {
      at++;
    }
    return digits.substring(at);
  }

  private static int digits(String text, int begin) {
    int end = begin;
    while (end < text.length() && text.charAt(end) >= '0' && text.charAt(end) <= '9') {
      end++;
    }
    return end;
  }
}
