package merese.exchange.pages;

import java.time.Duration;

/**
 * How much of a file is read at most, and what the reading may take. A book has some 3,000
 * characters a page.
 *
 * @param pages of one file
 * @param characters of all pages together
 * @param pageCharacters of one page
 * @param fileMegabytes of the file itself
 * @param heapMegabytes of the process that reads a PDF or hOCR
 * @param forPage from the start, or from one page to the next
 * @param forFile altogether
 */
public record Limits(
    int pages,
    long characters,
    int pageCharacters,
    int fileMegabytes,
    int heapMegabytes,
    Duration forPage,
    Duration forFile) {
  /** What the program works with. */
  public static final Limits USUAL =
      new Limits(
          20_000, 20_000_000, 2_000_000, 2_000, 384, Duration.ofMinutes(1), Duration.ofMinutes(15));
}
