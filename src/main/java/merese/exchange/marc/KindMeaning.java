package merese.exchange.marc;

import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import merese.exchange.marc.MarcField.Subfield;
import merese.model.SourceKind;

/**
 * The kind of source: the library's own words in 655 with the source "local" first, then a thesis
 * note, then type and level of the record (leader, positions 6 and 7), then words of genre and form
 * (655, 6XX $v; those of the Library of Congress, from memory), then the codes of field 008.
 */
final class KindMeaning {
  private static final Map<String, SourceKind> GENRES =
      Map.ofEntries(
          Map.entry("exhibition catalogs", SourceKind.EXHIBITION_CATALOGUE),
          Map.entry("exhibition catalogues", SourceKind.EXHIBITION_CATALOGUE),
          Map.entry("exhibitions", SourceKind.EXHIBITION_CATALOGUE),
          Map.entry("ausstellungskatalog", SourceKind.EXHIBITION_CATALOGUE),
          Map.entry("catalogues d'exposition", SourceKind.EXHIBITION_CATALOGUE),
          Map.entry("auction catalogs", SourceKind.SALE_CATALOGUE),
          Map.entry("sales catalogs", SourceKind.SALE_CATALOGUE),
          Map.entry("auktionskatalog", SourceKind.SALE_CATALOGUE),
          Map.entry("catalogues de vente", SourceKind.SALE_CATALOGUE),
          Map.entry("museum catalogs", SourceKind.MUSEUM_CATALOGUE),
          Map.entry("collection catalogs", SourceKind.MUSEUM_CATALOGUE),
          Map.entry("bestandskatalog", SourceKind.MUSEUM_CATALOGUE),
          Map.entry("trade catalogs", SourceKind.TRADE_LIST),
          Map.entry("commercial catalogs", SourceKind.TRADE_LIST),
          Map.entry("price lists", SourceKind.TRADE_LIST),
          Map.entry("directories", SourceKind.TRADE_DIRECTORY),
          Map.entry("trade directories", SourceKind.TRADE_DIRECTORY),
          Map.entry("patents", SourceKind.PATENT),
          Map.entry("leaflets", SourceKind.LEAFLET),
          Map.entry("pamphlets", SourceKind.LEAFLET),
          Map.entry("newsletters", SourceKind.NEWSLETTER),
          Map.entry("academic theses", SourceKind.THESIS),
          Map.entry("theses", SourceKind.THESIS),
          Map.entry("hochschulschrift", SourceKind.THESIS),
          Map.entry("manuscripts", SourceKind.MANUSCRIPT),
          Map.entry("video recordings", SourceKind.VIDEO),
          Map.entry("web sites", SourceKind.WEB_PAGE),
          Map.entry("websites", SourceKind.WEB_PAGE));

  private KindMeaning() {}

  static SourceKind of(MarcRecord record, List<String> remarks) {
    for (MarcField genre : record.all("655")) {
      Optional<SourceKind> own = own(genre);
      if (own.isPresent()) {
        return own.get();
      }
    }
    if (record.any("502", ThesisNote::isOfThesisItself)) {
      return SourceKind.THESIS;
    }
    char type = record.code(MarcField.LEADER, 6);
    char level = record.code(MarcField.LEADER, 7);
    return switch (type) {
      case 't', 'd', 'f', 'p' -> byGenre(record).orElse(SourceKind.MANUSCRIPT);
      case 'g' -> isSlides(record) ? monograph(record) : SourceKind.VIDEO;
      default ->
          switch (level) {
            case 'a', 'b' -> part(record, level);
            case 's', 'i' -> byGenre(record).orElseGet(() -> serial(record, remarks));
            default -> monograph(record);
          };
    };
  }

  /** The kind in the library's own words. */
  static Optional<SourceKind> own(MarcField genre) {
    boolean local =
        genre.is("655")
            && genre.first('2').filter(s -> s.toLowerCase(Locale.ROOT).equals("local")).isPresent();
    if (local) {
      String words = MarcText.bare(genre.first('a').orElse(""), true);
      for (SourceKind kind : SourceKind.values()) {
        if (kind.words().equals(words)) {
          return Optional.of(kind);
        }
      }
    }
    return Optional.empty();
  }

  private static boolean isSlides(MarcRecord record) {
    return "sft".indexOf(record.code("008", 33)) >= 0;
  }

  private static SourceKind monograph(MarcRecord record) {
    return byGenre(record).orElseGet(() -> byCodes(record));
  }

  private static SourceKind byCodes(MarcRecord record) {
    String fixed = record.control("008");
    String contents = fixed.length() > 27 ? fixed.substring(24, 28) : "";
    return contents.indexOf('m') >= 0
        ? SourceKind.THESIS
        : contents.indexOf('j') >= 0
            ? SourceKind.PATENT
            : contents.indexOf('r') >= 0 ? SourceKind.TRADE_DIRECTORY : SourceKind.MONOGRAPH;
  }

  /** Of a component part: an article, unless what it stands in is a book. */
  private static SourceKind part(MarcRecord record, char level) {
    if (level == 'b') {
      return SourceKind.JOURNAL_ARTICLE;
    }
    for (MarcField host : record.all("773")) {
      String coded = host.first('7').orElse("");
      char of = coded.length() > 3 ? coded.charAt(3) : ' ';
      boolean serial = of == 's' || host.has('x');
      boolean book = of == 'm' || of == 'c' || host.has('z');
      if (serial || book) {
        return serial ? SourceKind.JOURNAL_ARTICLE : SourceKind.MONOGRAPH;
      }
    }
    return SourceKind.JOURNAL_ARTICLE;
  }

  private static SourceKind serial(MarcRecord record, List<String> remarks) {
    if (record.code("008", 21) == 'w') {
      return SourceKind.WEB_PAGE;
    }
    remarks.add("it describes a periodical as a whole; taken in as a monograph");
    return SourceKind.MONOGRAPH;
  }

  private static Optional<SourceKind> byGenre(MarcRecord record) {
    boolean ofMuseum = false;
    for (MarcField field : record.fields()) {
      boolean genre = field.is("655");
      boolean subject = field.tag().startsWith("6") && field.control().isEmpty();
      for (Subfield subfield : field.subfields()) {
        boolean form = genre ? "av".indexOf(subfield.code()) >= 0 : subfield.code() == 'v';
        if (subject && form) {
          String words = MarcText.bare(MarcText.tidy(subfield.text()), true);
          String small = words.toLowerCase(Locale.ROOT);
          if (GENRES.containsKey(small)) {
            return Optional.of(GENRES.get(small));
          }
          ofMuseum |= field.is("610") && small.equals("catalogs");
        }
      }
    }
    return ofMuseum ? Optional.of(SourceKind.MUSEUM_CATALOGUE) : Optional.empty();
  }
}
