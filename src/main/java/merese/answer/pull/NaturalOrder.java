package merese.answer.pull;

import java.util.Comparator;

/** Shelf-marks as a shelf has them: "A2" before "A10", whatever the case of letters. */
public final class NaturalOrder implements Comparator<String> {
  @Override
  public int compare(String a, String b) {
    int i = 0;
    int j = 0;
    while (i < a.length() && j < b.length()) {
      int endA = runEnd(a, i);
      int endB = runEnd(b, j);
      String one = a.substring(i, endA);
      String other = b.substring(j, endB);
      boolean numbers = isDigit(a.charAt(i)) && isDigit(b.charAt(j));
      int order = numbers ? byValue(one, other) : one.compareToIgnoreCase(other);
      if (order != 0) {
        return order;
      }
      i = endA;
      j = endB;
    }
    int order = Integer.compare(a.length() - i, b.length() - j);
    return order != 0 ? order : a.compareTo(b);
  }

  /** The end of the run of digits, or of what is no digit, that starts here. */
  private static int runEnd(String text, int begin) {
    int end = begin;
    while (end < text.length() && isDigit(text.charAt(end)) == isDigit(text.charAt(begin))) {
      end++;
    }
    return end;
  }

  private static int byValue(String a, String b) {
    String one = withoutZeros(a);
    String other = withoutZeros(b);
    int lengths = Integer.compare(one.length(), other.length());
    return lengths != 0 ? lengths : one.compareTo(other);
  }

  private static String withoutZeros(String digits) {
    int at = 0;
    while (at < digits.length() - 1 && digits.charAt(at) == '0') {
      at++;
    }
    return digits.substring(at);
  }

  private static boolean isDigit(char c) {
    return c >= '0' && c <= '9';
  }
}
