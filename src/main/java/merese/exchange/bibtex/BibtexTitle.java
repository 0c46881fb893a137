package merese.exchange.bibtex;

import java.util.Locale;
import java.util.Optional;
import java.util.regex.Pattern;
import merese.model.Work;

/**
 * Titles, kept from the styles that put them into small letters: a library does not say which words
 * are names, and "mrs e. thornaby" is wrong where a capital too many is only a matter of taste.
 */
final class BibtexTitle {
  private static final Pattern COMMAND = Pattern.compile("\\\\([A-Za-z]+)");
  private static final Pattern LARGE = Pattern.compile("AE|OE|O|AA|L");
  private static final Pattern ARTICLE =
      Pattern.compile("(?:the|an?)\\s+(?=\\S)", Pattern.CASE_INSENSITIVE);

  private BibtexTitle() {}

  /**
   * A title in English with braces round each word that a style would put into small letters; in
   * another language with braces round the whole, since that keeps its own capitals.
   */
  static String of(String title, Optional<String> language) {
    String latex = LatexText.of(title);
    if (latex.isEmpty() || !isEnglish(language)) {
      return latex.isEmpty() ? "" : "{" + latex + "}";
    }
    StringBuilder out = new StringBuilder();
    boolean safe = true; // the first letter of a title, and of what follows a colon, stays
    for (String word : latex.split(" ")) {
      boolean guarded = hasCapital(safe ? withoutFirstLetter(word) : word);
      out.append(out.isEmpty() ? "" : " ").append(guarded ? "{" + word + "}" : word);
      safe = word.endsWith(":");
    }
    return out.toString();
  }

  /** The title of a work with its subtitle after a colon, where it has one. */
  static String whole(Work work) {
    return of(wholeText(work), work.language());
  }

  /** The same as plain text. */
  static String wholeText(Work work) {
    String title = work.title();
    String joint = title.endsWith("?") || title.endsWith("!") ? " " : ": ";
    return work.subtitle().map(subtitle -> title + joint + subtitle).orElse(title);
  }

  private static String withoutFirstLetter(String word) {
    return Character.isLetter(word.charAt(0)) ? word.substring(1) : word;
  }

  private static boolean hasCapital(String word) {
    boolean command =
        COMMAND.matcher(word).results().anyMatch(m -> LARGE.matcher(m.group(1)).matches());
    return command
        || COMMAND.matcher(word).replaceAll("").codePoints().anyMatch(Character::isUpperCase);
  }

  /** A title as it is filed, in English without its article. */
  static String filed(String title, Optional<String> language) {
    return isEnglish(language) ? ARTICLE.matcher(title.strip()).replaceFirst("") : title;
  }

  private static boolean isEnglish(Optional<String> language) {
    String known = language.map(l -> Locale.forLanguageTag(l).getLanguage()).orElse("");
    return known.isEmpty() || known.equals("en");
  }
}
