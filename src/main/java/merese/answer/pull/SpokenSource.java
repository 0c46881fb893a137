package merese.answer.pull;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import merese.model.Edition.Lineage;
import merese.model.Edition.Lineage.Form;
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

  /** A year that is only guessed at is said so. */
  private static String brief(Source source) {
    if (source.year().isEmpty()) {
      return "the undated " + noun(source);
    }
    String year = Spoken.year(source.year().getAsInt());
    String printed = source.edition().imprint().yearPrinted().orElse("");
    return printed.contains("?") || printed.contains("c.")
        ? "the " + noun(source) + " of about " + year
        : "the " + year + " " + noun(source);
  }

  /** The reference without its year. */
  private static String author(Source source) {
    String reference = source.reference();
    String year = source.year().isPresent() ? " " + source.year().getAsInt() : " n.d.";
    return reference.endsWith(year)
        ? reference.substring(0, reference.length() - year.length())
        : reference;
  }

  private static String noun(Source source) {
    Optional<Form> form = source.edition().lineage().map(Lineage::form);
    if (form.isPresent()) {
      switch (form.get()) {
        case FACSIMILE, REPRINT, TRANSLATION -> {
          return form.get().code();
        }
        case REVISED, TWIN -> {}
      }
    }
    return noun(source.kind());
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
