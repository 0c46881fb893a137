package merese.exchange.bibtex;

import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * The language of a text, as a tag of BCP 47, from the names that babel and polyglossia give to
 * languages, biblatex's keys for them ({@code langgerman}) or a tag.
 */
final class LanguageReader {
  private static final Map<String, String> TAGS =
      Map.ofEntries(
          Map.entry("english", "en"),
          Map.entry("american", "en-US"),
          Map.entry("usenglish", "en-US"),
          Map.entry("british", "en-GB"),
          Map.entry("ukenglish", "en-GB"),
          Map.entry("australian", "en-AU"),
          Map.entry("canadian", "en-CA"),
          Map.entry("newzealand", "en-NZ"),
          Map.entry("german", "de"),
          Map.entry("ngerman", "de"),
          Map.entry("austrian", "de-AT"),
          Map.entry("naustrian", "de-AT"),
          Map.entry("nswissgerman", "de-CH"),
          Map.entry("swissgerman", "de-CH"),
          Map.entry("french", "fr"),
          Map.entry("francais", "fr"),
          Map.entry("acadian", "fr-CA"),
          Map.entry("canadien", "fr-CA"),
          Map.entry("czech", "cs"),
          Map.entry("slovak", "sk"),
          Map.entry("welsh", "cy"),
          Map.entry("danish", "da"),
          Map.entry("spanish", "es"),
          Map.entry("catalan", "ca"),
          Map.entry("galician", "gl"),
          Map.entry("basque", "eu"),
          Map.entry("finnish", "fi"),
          Map.entry("irish", "ga"),
          Map.entry("scottish", "gd"),
          Map.entry("magyar", "hu"),
          Map.entry("hungarian", "hu"),
          Map.entry("italian", "it"),
          Map.entry("latin", "la"),
          Map.entry("norsk", "nb"),
          Map.entry("norwegian", "no"),
          Map.entry("nynorsk", "nn"),
          Map.entry("dutch", "nl"),
          Map.entry("polish", "pl"),
          Map.entry("portuguese", "pt"),
          Map.entry("portuges", "pt"),
          Map.entry("brazilian", "pt-BR"),
          Map.entry("brazil", "pt-BR"),
          Map.entry("romanian", "ro"),
          Map.entry("russian", "ru"),
          Map.entry("ukrainian", "uk"),
          Map.entry("bulgarian", "bg"),
          Map.entry("serbian", "sr"),
          Map.entry("croatian", "hr"),
          Map.entry("slovene", "sl"),
          Map.entry("slovenian", "sl"),
          Map.entry("swedish", "sv"),
          Map.entry("icelandic", "is"),
          Map.entry("estonian", "et"),
          Map.entry("latvian", "lv"),
          Map.entry("lithuanian", "lt"),
          Map.entry("greek", "el"),
          Map.entry("turkish", "tr"),
          Map.entry("hebrew", "he"),
          Map.entry("arabic", "ar"),
          Map.entry("persian", "fa"),
          Map.entry("japanese", "ja"),
          Map.entry("chinese", "zh"),
          Map.entry("korean", "ko"));

  private static final Set<String> CODES = Set.copyOf(List.of(Locale.getISOLanguages()));

  private LanguageReader() {}

  /** Empty for several languages, and for what is no language that is known. */
  static Optional<String> of(EntryFields fields) {
    return fields
        .plain("language")
        .flatMap(LanguageReader::tag)
        .or(() -> fields.plain("langid", "hyphenation").flatMap(LanguageReader::tag));
  }

  private static Optional<String> tag(String text) {
    String name = text.strip().toLowerCase(Locale.ROOT);
    String known = TAGS.get(name.startsWith("lang") ? name.substring(4) : name);
    if (known != null) {
      return Optional.of(known);
    }
    Locale locale = Locale.forLanguageTag(text.strip().replace('_', '-'));
    String code = locale.getLanguage();
    boolean wellFormed = !code.isEmpty() && name.matches("[a-z]{2,3}(?:[-_][a-z0-9]{2,8})*");
    return wellFormed && CODES.contains(code)
        ? Optional.of(locale.toLanguageTag())
        : Optional.empty();
  }
}
