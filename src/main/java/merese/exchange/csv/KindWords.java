package merese.exchange.csv;

import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import merese.model.SourceKind;

/** Kinds of source in the words of libraries and private lists (common practice, no source). */
final class KindWords {
  private static final Map<String, SourceKind> KINDS = kinds();

  private KindWords() {}

  private static Map<String, SourceKind> kinds() {
    Map<String, SourceKind> all = new HashMap<>();
    for (SourceKind kind : SourceKind.values()) {
      all.put(Column.bare(kind.words()), kind);
      all.put(Column.bare(kind.code()), kind);
    }
    add(all, SourceKind.MONOGRAPH, "book", "books", "printed book");
    add(all, SourceKind.JOURNAL_ARTICLE, "article", "journal", "paper", "periodical article");
    add(all, SourceKind.EXHIBITION_CATALOGUE, "exhibition catalog", "exhibition");
    add(all, SourceKind.MUSEUM_CATALOGUE, "museum catalog", "collection catalogue");
    add(all, SourceKind.SALE_CATALOGUE, "auction catalogue", "auction catalog", "sale catalog");
    add(all, SourceKind.MANUSCRIPT, "ms", "manuscripts");
    add(all, SourceKind.TRADE_LIST, "trade list", "price list", "pattern book");
    add(all, SourceKind.TRADE_DIRECTORY, "directory");
    add(all, SourceKind.PATENT, "patent", "registered design", "design");
    add(all, SourceKind.LEAFLET, "pamphlet", "brochure", "booklet");
    add(all, SourceKind.THESIS, "dissertation");
    add(all, SourceKind.WEB_PAGE, "website", "web", "webpage");
    add(all, SourceKind.VIDEO, "film", "dvd");
    add(all, SourceKind.STATEMENT, "letter", "interview", "statement");
    return Map.copyOf(all);
  }

  private static void add(Map<String, SourceKind> to, SourceKind kind, String... names) {
    for (String name : names) {
      to.putIfAbsent(Column.bare(name), kind);
    }
  }

  /** Words that are no kind leave it open: an article where it is in something, else a book. */
  static SourceKind of(Optional<String> words, boolean isInSomething) {
    SourceKind plain = isInSomething ? SourceKind.JOURNAL_ARTICLE : SourceKind.MONOGRAPH;
    return words.map(w -> KINDS.getOrDefault(Column.bare(w), plain)).orElse(plain);
  }
}
