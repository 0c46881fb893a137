package merese.answer.pull;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import merese.model.SourceKind;
import merese.shelf.Source;

/**
 * A source as one names it aloud: "the nineteen twenty-six book", with its author where another of
 * the year is taken as well.
 */
final class SpokenSource {
  private final Map<String, Integer> uses = new HashMap<>();

  SpokenSource(List<Source> taken) {
    for (Source source : taken) {
      uses.merge(brief(source), 1, Integer::sum);
    }
  }

  String of(Source source) {
    String brief = brief(source);
    boolean alone = uses.getOrDefault(brief, 0) < 2 && source.year().isPresent();
    return alone ? brief : brief + " by " + author(source);
  }

  private static String brief(Source source) {
    String year = source.year().isPresent() ? Spoken.year(source.year().getAsInt()) : "undated";
    return "the " + year + " " + noun(source.kind());
  }

  /** The reference without its year. */
  private static String author(Source source) {
    String reference = source.reference();
    String year = source.year().isPresent() ? " " + source.year().getAsInt() : " n.d.";
    return reference.endsWith(year)
        ? reference.substring(0, reference.length() - year.length())
        : reference;
  }

  private static String noun(SourceKind kind) {
    return switch (kind) {
      case MONOGRAPH -> "book";
      case JOURNAL_ARTICLE -> "article";
      case EXHIBITION_CATALOGUE, MUSEUM_CATALOGUE -> "catalogue";
      case TRADE_LIST -> "trade list";
      case TRADE_DIRECTORY -> "directory";
      case PATENT -> "registration";
      case VIDEO -> "film";
      case STATEMENT -> "statement";
      case NEWSLETTER, SALE_CATALOGUE, MANUSCRIPT, LEAFLET, THESIS, WEB_PAGE -> kind.words();
    };
  }
}
