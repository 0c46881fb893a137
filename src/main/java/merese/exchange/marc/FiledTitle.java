package merese.exchange.marc;

import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

/** How many characters of a title are not filed: its article with the space after it. */
final class FiledTitle {
  /** Articles that a title may start with (MARC 21, appendix F, initial articles; from memory). */
  private static final Map<String, List<String>> ARTICLES =
      Map.of(
          "en", List.of("the ", "a ", "an "),
          "fr", List.of("le ", "la ", "les ", "l'", "l’", "un ", "une "),
          "de", List.of("der ", "die ", "das ", "ein ", "eine "),
          "it",
              List.of(
                  "il ", "lo ", "la ", "i ", "gli ", "le ", "l'", "l’", "un ", "uno ", "una ",
                  "un'", "un’"),
          "es", List.of("el ", "la ", "lo ", "los ", "las ", "un ", "una "));

  private FiledTitle() {}

  /**
   * @param language a tag; without one, the articles are those of English
   */
  static char nonfiling(String title, Optional<String> language) {
    String code = language.orElse("en").split("-", 2)[0].toLowerCase(Locale.ROOT);
    String small = title.toLowerCase(Locale.ROOT);
    for (String article : ARTICLES.getOrDefault(code, List.of())) {
      if (small.startsWith(article) && small.length() > article.length()) {
        return (char) ('0' + article.length());
      }
    }
    return '0';
  }
}
