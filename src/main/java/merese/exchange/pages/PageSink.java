package merese.exchange.pages;

import java.io.IOException;

/** Takes the pages of a file, one after the other. */
interface PageSink {
  /**
   * @param text lines with "\n" between them; "" for a page without text
   */
  void page(String text) throws IOException;
}
