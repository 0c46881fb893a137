package merese.exchange.marc;

import java.util.HashMap;
import java.util.Locale;
import java.util.Map;
import java.util.OptionalInt;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** The number in a statement of edition: "2nd ed., rev.", "Zweite Auflage", "3e éd.". */
final class EditionNumber {
  private static final Pattern EDITION =
      Pattern.compile(
          "(?iu)\\b(?:ed|edn|edition|éd|édition|edición|edizione|edição|aufl|auflage"
              + "|uitg|uitgave|druk|udg|udgave|uppl|upplaga|utg|wyd|wydanie|vyd|vydání|изд)\\b");
  private static final Pattern BEFORE =
      Pattern.compile(
          "(?iu)^\\[?(?:the )?(\\d{1,3})(?:st|nd|rd|th|d|\\.|e|er|re|ère|eme|ème|a|ª|º|o|de|ste|:a)?"
              + "[\\s,\\]].*");
  private static final Pattern AFTER =
      Pattern.compile("(?iu)^\\[?(?:ed|edn|edition|éd|édition|aufl|auflage)\\.?:? (\\d{1,3})\\b.*");
  private static final Pattern WORD = Pattern.compile("(?iu)^\\[?(?:the )?(\\p{L}+).*");
  private static final Map<String, Integer> WORDS = new HashMap<>();

  static {
    String[][] all = {
      {"first", "erste", "première", "primera", "prima", "eerste"},
      {"second", "zweite", "deuxième", "segunda", "seconda", "tweede", "seconde"},
      {"third", "dritte", "troisième", "tercera", "terza", "derde"},
      {"fourth", "vierte", "quatrième", "cuarta", "quarta", "vierde"},
      {"fifth", "fünfte", "cinquième", "quinta", "vijfde"},
      {"sixth", "sechste", "sixième", "sexta", "sesta", "zesde"},
      {"seventh", "siebte", "septième", "séptima", "settima", "zevende"},
      {"eighth", "achte", "huitième", "octava", "ottava", "achtste"},
      {"ninth", "neunte", "neuvième", "novena", "nona", "negende"},
      {"tenth", "zehnte", "dixième", "décima", "decima", "tiende"},
    };
    for (int i = 0; i < all.length; i++) {
      for (String word : all[i]) {
        WORDS.put(word, i + 1);
      }
    }
  }

  private EditionNumber() {}

  static OptionalInt of(String statement) {
    if (!EDITION.matcher(statement).find()) {
      return OptionalInt.empty();
    }
    Matcher before = BEFORE.matcher(statement);
    if (before.matches()) {
      return number(before.group(1));
    }
    Matcher after = AFTER.matcher(statement);
    if (after.matches()) {
      return number(after.group(1));
    }
    Matcher word = WORD.matcher(statement);
    Integer named = word.matches() ? WORDS.get(word.group(1).toLowerCase(Locale.ROOT)) : null;
    return named == null ? OptionalInt.empty() : OptionalInt.of(named);
  }

  private static OptionalInt number(String digits) {
    int number = Integer.parseInt(digits);
    return number == 0 ? OptionalInt.empty() : OptionalInt.of(number);
  }
}
