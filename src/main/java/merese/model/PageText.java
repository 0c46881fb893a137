package merese.model;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * The words of a book itself, file page by file page: what was read from one file that belongs to
 * one edition. They are kept as they were read, with long s and hyphens; what is folded is folded
 * for matching only. Words on a page are no notes.
 *
 * @param source the key of the edition
 * @param file the name of the file that the text came from
 * @param sha256 of that file, or of the files of a folder one after the other; 64 hex digits
 * @param from what kind of file it was
 * @param map which printed page or plate a file page is; names no page beyond the last
 * @param pages one entry a file page, in the order of the file; at least one
 */
public record PageText(
    String source, String file, String sha256, Origin from, PageMap map, List<PageLines> pages) {

  /** What page texts are read from. */
  public enum Origin implements Coded {
    PDF("PDF"),
    PLAIN_TEXT("plain text"),
    HOCR("hOCR"),
    FOLDER("folder of page texts");

    private final String words;

    Origin(String words) {
      this.words = words;
    }

    @Override
    public String code() {
      return words;
    }
  }

  /** Copies the pages, and holds the map to them. */
  public PageText {
    Require.text(source, "source");
    Require.text(file, "file");
    Require.text(sha256, "sha256");
    pages = List.copyOf(pages);
    Require.that(!pages.isEmpty(), "page texts have no page; attach them again");
    map.requireWithin(pages.size());
  }

  public PageText withMap(PageMap other) {
    return new PageText(source, file, sha256, from, other, pages);
  }

  /** The same text, of another edition. */
  public PageText withSource(String key) {
    return new PageText(key, file, sha256, from, map, pages);
  }

  /** How many file pages have no text. */
  public int withoutText() {
    return (int) pages.stream().filter(PageLines::isEmpty).count();
  }

  /**
   * The printed pages and plates that have text, as "pp. iv–xii; pp. 1–48; pl. I"; empty where none
   * has a number, or where they are too many for one locator.
   */
  public Optional<Locator> printedPages() {
    List<Locator> printed = new ArrayList<>();
    for (int page = 1; page <= pages.size(); page++) {
      if (!pages.get(page - 1).isEmpty()) {
        map.at(page).ifPresent(at -> printed.addAll(at.members()));
      }
    }
    try {
      return printed.isEmpty() ? Optional.empty() : Optional.of(Locator.ofPages(printed));
    } catch (LocatorException e) {
      return Optional.empty();
    }
  }

  /** How many pages with text are not among {@link #printedPages}. */
  public int unnumbered() {
    int with = pages.size() - withoutText();
    if (printedPages().isEmpty()) {
      return with;
    }
    int unnumbered = 0;
    for (int page = 1; page <= pages.size(); page++) {
      unnumbered += !pages.get(page - 1).isEmpty() && map.at(page).isEmpty() ? 1 : 0;
    }
    return unnumbered;
  }
}
