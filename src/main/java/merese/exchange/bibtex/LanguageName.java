package merese.exchange.bibtex;

import java.util.Locale;
import java.util.Map;
import java.util.Optional;

/** The names by which LaTeX's babel knows languages, for the field {@code langid}. */
final class LanguageName {
  private static final Map<String, String> NAMES =
      Map.ofEntries(
          Map.entry("en", "english"),
          Map.entry("cs", "czech"),
          Map.entry("cy", "welsh"),
          Map.entry("da", "danish"),
          Map.entry("de", "ngerman"),
          Map.entry("es", "spanish"),
          Map.entry("fi", "finnish"),
          Map.entry("fr", "french"),
          Map.entry("ga", "irish"),
          Map.entry("hu", "magyar"),
          Map.entry("it", "italian"),
          Map.entry("la", "latin"),
          Map.entry("nb", "norsk"),
          Map.entry("no", "norsk"),
          Map.entry("nl", "dutch"),
          Map.entry("pl", "polish"),
          Map.entry("pt", "portuguese"),
          Map.entry("ru", "russian"),
          Map.entry("sv", "swedish"));

  private LanguageName() {}

  static Optional<String> of(String tag) {
    Locale locale = Locale.forLanguageTag(tag.strip());
    if (locale.getLanguage().equals("en")) {
      return Optional.of(
          switch (locale.getCountry()) {
            case "GB", "IE" -> "british";
            case "US" -> "american";
            default -> "english";
          });
    }
    return Optional.ofNullable(NAMES.get(locale.getLanguage()));
  }
}
