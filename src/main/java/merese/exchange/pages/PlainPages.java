package merese.exchange.pages;

/** A plain text: a form feed ends a page. One at the very end begins no other. */
final class PlainPages {
  private static final char FORM_FEED = '\f';

  private PlainPages() {}

  static void read(byte[] bytes, PageSink sink) throws java.io.IOException {
    String text = TextBytes.decode(bytes);
    int begin = 0;
    for (int end = text.indexOf(FORM_FEED); end >= 0; end = text.indexOf(FORM_FEED, begin)) {
      sink.page(text.substring(begin, end));
      begin = end + 1;
    }
    String last = text.substring(begin);
    if (begin == 0 || !last.isBlank()) {
      sink.page(last);
    }
  }
}
