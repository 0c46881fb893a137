package merese.exchange.bibtex;

import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * The field {@code edition}: a number, an ordinal in digits or English words, or a statement. The
 * styles of BibTeX add the word "edition" to a few words, so that it is added here too.
 */
record EditionReader(Optional<String> statement, OptionalInt number) {
  private static final Pattern NUMBER =
      Pattern.compile(
          "(\\d{1,3})(?:st|nd|rd|th|\\.)?(?: (?:edition|edn?\\.?))?", Pattern.CASE_INSENSITIVE);
  private static final Pattern WORDS = Pattern.compile("\\p{L}+(?:[ -]\\p{L}+){0,2}");
  private static final Pattern SAYS_EDITION =
      Pattern.compile(
          "(?i).*\\b(?:ed|edn|edition|aufl|auflage|ausgabe|édition|edizione|edición)\\b.*");
  private static final Map<String, Integer> ORDINALS =
      Map.ofEntries(
          Map.entry("first", 1),
          Map.entry("second", 2),
          Map.entry("third", 3),
          Map.entry("fourth", 4),
          Map.entry("fifth", 5),
          Map.entry("sixth", 6),
          Map.entry("seventh", 7),
          Map.entry("eighth", 8),
          Map.entry("ninth", 9),
          Map.entry("tenth", 10),
          Map.entry("eleventh", 11),
          Map.entry("twelfth", 12));

  static EditionReader of(EntryFields fields) {
    return fields
        .plain("edition")
        .map(EditionReader::of)
        .orElse(new EditionReader(Optional.empty(), OptionalInt.empty()));
  }

  private static EditionReader of(String text) {
    Matcher numbered = NUMBER.matcher(text);
    if (numbered.matches()) {
      return new EditionReader(
          Optional.empty(), OptionalInt.of(Integer.parseInt(numbered.group(1))));
    }
    Integer ordinal = ORDINALS.get(text.toLowerCase(Locale.ROOT));
    if (ordinal != null) {
      return new EditionReader(Optional.empty(), OptionalInt.of(ordinal));
    }
    boolean fewWords =
        text.length() < 100
            && WORDS.matcher(text).matches()
            && !SAYS_EDITION.matcher(text).matches();
    return new EditionReader(Optional.of(fewWords ? text + " edition" : text), OptionalInt.empty());
  }
}
