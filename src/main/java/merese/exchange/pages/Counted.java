package merese.exchange.pages;

/** Numbers as a message has them: 20,000. */
final class Counted {
  private static final int GROUP = 3;

  private Counted() {}

  static String of(long number) {
    StringBuilder out = new StringBuilder(Long.toString(number));
    for (int i = out.length() - GROUP; i > 0; i -= GROUP) {
      out.insert(i, ',');
    }
    return out.toString();
  }

  /** "1 page", "2 pages". */
  static String pages(long number) {
    return of(number) + (number == 1 ? " page" : " pages");
  }
}
