package merese.citation;

import static merese.citation.Invented.a;
import static merese.citation.Invented.book;
import static merese.citation.Invented.person;

import java.util.EnumMap;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import merese.model.Contributor.Role;
import merese.model.Name;
import merese.model.SourceKind;

/** An invented source of every kind. */
final class OneOfEach {
  private OneOfEach() {}

  static Map<SourceKind, Source> sources() {
    Map<SourceKind, Source> all = new EnumMap<>(SourceKind.class);
    for (SourceKind kind : SourceKind.values()) {
      all.put(kind, of(kind));
    }
    return all;
  }

  static Source of(SourceKind kind) {
    return switch (kind) {
      case MONOGRAPH ->
          book("Neck and Stopper")
              .key("quenby-1949")
              .by("Maud", "Quenby")
              .edition("2nd edn")
              .year(1949)
              .at("London", "Harrowgate Press")
              .source();
      case JOURNAL_ARTICLE ->
          a(kind, "Triple Rings and their Makers")
              .key("farrow-1988")
              .by("Edith", "Farrow")
              .year(1988)
              .in("Cullet Society Journal", "12", null, "pp. 5–20")
              .source();
      case NEWSLETTER ->
          a(kind, "A Ringed Cruet")
              .key("lantern-48")
              .yearPrinted("May 1998")
              .year(1998)
              .in(
                  "Lantern Street Newsletter",
                  Optional.empty(),
                  Optional.of("48"),
                  OptionalInt.empty(),
                  null)
              .source();
      case EXHIBITION_CATALOGUE ->
          a(kind, "Clear and Cut")
              .key("clear-1977")
              .editedBy("Ralph", "Penhallow")
              .year(1977)
              .at("Bristol", "Wickmoor Gallery")
              .notedAs("Exhibition, Wickmoor Gallery, 3 May–1 June 1977")
              .source();
      case MUSEUM_CATALOGUE ->
          a(kind, "Drinking Glasses in the Ashlode Museum")
              .key("ashlode-1962")
              .with(Role.AUTHOR, new Name.Body("Ashlode Museum"))
              .year(1962)
              .at("Ashlode", "Ashlode Museum")
              .series("Ashlode Museum Handbooks, 4")
              .source();
      case SALE_CATALOGUE ->
          a(kind, "Fine English and Irish Glass")
              .key("brackley-1988")
              .year(1988)
              .sale("Brackley & Thorne", "London", "12 May 1988")
              .source();
      case MANUSCRIPT ->
          a(kind, "Prices of Cut Goods")
              .key("prices-1803")
              .yearPrinted("[c. 1803]")
              .kept(
                  "Ashlode, Ashlode Record Office", "MS 214/3", "Vance & Sons, glass-cutters", null)
              .source();
      case TRADE_LIST ->
          a(kind, "List of Table Glass")
              .key("vance-1832")
              .year(1832)
              .places("Bristol")
              .kept("Ashlode Record Office", null, "Vance & Sons", null)
              .source();
      case TRADE_DIRECTORY ->
          a(kind, "Tolley’s Directory of Bristol")
              .key("tolley-1830")
              .year(1830)
              .at("Bristol", "J. Tolley")
              .source();
      case PATENT ->
          a(kind, "Improvements in Stoppers for Decanters")
              .key("patent-1871")
              .by("Josiah", "Marl")
              .year(1871)
              .series("British Patent 12,345")
              .source();
      case LEAFLET ->
          a(kind, "Decanters, List 7")
              .key("orrin-7")
              .with(Role.AUTHOR, new Name.Body("Orrin Antiques"))
              .yearPrinted("[1961?]")
              .places("Bath")
              .source();
      case THESIS ->
          a(kind, "Ring-Necked Bottles in the Two Islands")
              .key("dunlavin-1985")
              .by("Cara", "Dunlavin")
              .year(1985)
              .kept("University of Lissadeel", null, null, "unpublished doctoral thesis")
              .source();
      case WEB_PAGE ->
          a(kind, "How Neck Rings were Applied")
              .key("pell-2019")
              .by("Ivo", "Pell")
              .year(2019)
              .publisher("The Gaffer’s Bench")
              .online("https://gaffer.example/rings_and_necks", "2025-03-02")
              .source();
      case VIDEO ->
          a(kind, "Three Rings, One Neck")
              .key("lantern-film")
              .with(Role.AUTHOR, new Name.Body("Lantern Street Glass Circle"))
              .year(2021)
              .online("https://film.example/w?v=3", "2025-03-02")
              .source();
      case STATEMENT ->
          a(kind, "Letter to Maud Quenby")
              .key("norrish-letter")
              .by("S.", "Norrish")
              .yearPrinted("4 June 1971")
              .source();
    };
  }

  static Source essay() {
    return a(SourceKind.EXHIBITION_CATALOGUE, "Clear and Cut")
        .key("clear-1977")
        .editedBy("Ralph", "Penhallow")
        .year(1977)
        .at("Bristol", "Wickmoor Gallery")
        .part("Rings Cut from the Solid", person("Jan", "van der", "Meeuwen"), "pp. 21–34")
        .source();
  }

  static Source facsimile() {
    return book("Neck and Stopper")
        .key("quenby-1977")
        .by("Maud", "Quenby")
        .year(1977)
        .at("Wakefield", "Oakapple")
        .from(merese.model.Edition.Lineage.Form.FACSIMILE, 1926)
        .source();
  }
}
