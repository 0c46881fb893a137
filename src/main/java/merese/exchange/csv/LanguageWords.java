package merese.exchange.csv;

import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import merese.exchange.Readings;

/** A language by its tag, or by its English name. */
final class LanguageWords {
  private static final Map<String, String> NAMES =
      Map.ofEntries(
          Map.entry("english", "en"),
          Map.entry("czech", "cs"),
          Map.entry("welsh", "cy"),
          Map.entry("danish", "da"),
          Map.entry("german", "de"),
          Map.entry("spanish", "es"),
          Map.entry("finnish", "fi"),
          Map.entry("french", "fr"),
          Map.entry("irish", "ga"),
          Map.entry("hungarian", "hu"),
          Map.entry("italian", "it"),
          Map.entry("latin", "la"),
          Map.entry("norwegian", "no"),
          Map.entry("dutch", "nl"),
          Map.entry("polish", "pl"),
          Map.entry("portuguese", "pt"),
          Map.entry("russian", "ru"),
          Map.entry("swedish", "sv"));

  private LanguageWords() {}

  static Optional<String> of(String words) {
    String name = NAMES.get(words.toLowerCase(Locale.ROOT));
    return name != null ? Optional.of(name) : Optional.of(words).filter(Readings::isLanguageTag);
  }
}
