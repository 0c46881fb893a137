package merese.exchange.identifier;

/** Whether an ISBN has the right check digit (ISO 2108). */
final class Isbn {
  private Isbn() {}

  static boolean isValid(String printed) {
    String digits = printed.replace("-", "").replace(" ", "").replace("–", "");
    int sum = 0;
    if (digits.matches("\\d{9}[\\dXx]")) {
      for (int i = 0; i < 10; i++) {
        char c = digits.charAt(i);
        sum += (10 - i) * (c > '9' ? 10 : c - '0');
      }
      return sum % 11 == 0;
    }
    if (!digits.matches("97[89]\\d{10}")) {
      return false;
    }
    for (int i = 0; i < 13; i++) {
      sum += (i % 2 == 0 ? 1 : 3) * (digits.charAt(i) - '0');
    }
    return sum % 10 == 0;
  }
}
