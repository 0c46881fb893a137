package merese.desk.list;

import java.util.List;
import merese.citation.StyleCatalogue;
import merese.shelf.Shelf;

/** The citation styles that a page offers; any other can be named. */
public final class Styles {
  private static final List<Style> OFFERED =
      List.of(
          new Style("mhra-notes", "MHRA: notes and a bibliography"),
          new Style("chicago-notes-bibliography", "Chicago: notes and a bibliography"),
          new Style("new-harts-rules-notes", "New Hart’s Rules: notes"),
          new Style("iso690-full-note-en", "ISO 690: notes"),
          new Style("modern-language-association", "MLA: author and page in the text"),
          new Style("chicago-author-date", "Chicago: author and date"),
          new Style("harvard-cite-them-right", "Harvard: author and date"),
          new Style("iso690-author-date-en", "ISO 690: author and date"),
          new Style("apa", "APA: author and date"),
          new Style("iso690-numeric-en", "ISO 690: numbers"));

  private Styles() {}

  /** A CSL style by its name, with words for it. */
  public record Style(String name, String words) {}

  static List<Style> offered() {
    return OFFERED;
  }

  /** Listed once, since the class path does not change. */
  private static final class All {
    static final List<String> NAMES = StyleCatalogue.load().names();
  }

  /** The names of all styles that have rules of their own, A–Z. */
  static List<String> all() {
    return All.NAMES;
  }

  /** The one that is named in the box, else the one that is chosen, else the library's. */
  static String asked(Shelf shelf, Question asked) {
    if (asked.has("other")) {
      return asked.get("other");
    }
    return asked.has("style")
        ? asked.get("style")
        : shelf.settings().style().orElse(StyleCatalogue.DEFAULT);
  }
}
