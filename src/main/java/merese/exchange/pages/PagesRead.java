package merese.exchange.pages;

import java.util.List;
import merese.model.PageLines;
import merese.model.PageText.Origin;

/**
 * The text of a file, page by page.
 *
 * @param file its name, without its folder
 * @param sha256 of the file, or of a folder's files one after the other; hex digits
 * @param pages at least one; at least one of them has text
 * @param remarks what a user should know of the reading, each a sentence
 */
public record PagesRead(
    Origin from, String file, String sha256, List<PageLines> pages, List<String> remarks) {
  /** Copies the lists. */
  public PagesRead {
    pages = List.copyOf(pages);
    remarks = List.copyOf(remarks);
  }
}
