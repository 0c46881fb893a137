package merese.time;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import merese.model.DateSettings;
import merese.model.DateWord;

/**
 * The rules by which dates in words become years, to be printed beside results (R8). There is no
 * agreed rule in the trade, so all of it can be set.
 *
 * @param circa how far an approximate date reaches
 * @param centuryFirstYear 0 where the 18th century is 1700–1799, 1 where it is 1701–1800
 * @param yearsBeyondEnd what a generous reading adds at the end of a century, half, third, quarter
 * @param parts parts of a century, their years counted from its first, which is 0
 * @param periods period words
 */
public record DateProfile(
    String name,
    Circa circa,
    int centuryFirstYear,
    int yearsBeyondEnd,
    List<DateWord> parts,
    List<DateWord> periods) {

  /**
   * R8. The reigns are common knowledge, from memory, and their outer years our own choice; so is
   * what is generous about "Georgian" and "Edwardian".
   */
  public static final DateProfile DEFAULT =
      new DateProfile(
          DateSettings.DEFAULT_NAME,
          Circa.DEFAULT,
          0,
          1,
          List.of(
              DateWord.of("early", 0, 33, 0, 40),
              DateWord.of("mid", 34, 66, 30, 70),
              DateWord.of("late", 67, 99, 60, 100)),
          List.of(
              DateWord.of("William and Mary", 1689, 1694, 1689, 1702),
              DateWord.of("Queen Anne", 1702, 1714, 1702, 1714),
              DateWord.of("George I", 1714, 1727, 1714, 1727),
              DateWord.of("George II", 1727, 1760, 1727, 1760),
              DateWord.of("George III", 1760, 1820, 1760, 1820),
              DateWord.of("George IV", 1820, 1830, 1820, 1830),
              DateWord.of("William IV", 1830, 1837, 1830, 1837),
              DateWord.of("Georgian", 1714, 1830, 1714, 1837),
              DateWord.of("Regency", 1811, 1820, 1800, 1830),
              DateWord.of("Victorian", 1837, 1901, 1837, 1901),
              DateWord.of("Edwardian", 1901, 1910, 1901, 1914)));

  public DateProfile {
    parts = List.copyOf(parts);
    periods = List.copyOf(periods);
  }

  /** The default with what a library sets put in its place. */
  public static DateProfile of(Optional<DateSettings> settings) {
    if (settings.isEmpty() || settings.get().equals(DateSettings.DEFAULT)) {
      return DEFAULT;
    }
    DateSettings set = settings.get();
    return new DateProfile(
        set.name().orElse("the library's own"),
        new Circa(
            set.circaYears().orElse(Circa.DEFAULT.years()),
            set.circaMonths().orElse(Circa.DEFAULT.months()),
            set.circaDays().orElse(Circa.DEFAULT.days())),
        set.centuryFirstYear().orElse(DEFAULT.centuryFirstYear),
        set.yearsBeyondEnd().orElse(DEFAULT.yearsBeyondEnd),
        merged(DEFAULT.parts, set.parts()),
        merged(DEFAULT.periods, set.periods()));
  }

  /** A word that is set takes the place of the same word. */
  private static List<DateWord> merged(List<DateWord> known, List<DateWord> set) {
    List<DateWord> merged = new ArrayList<>(known);
    for (DateWord word : set) {
      int at = indexOf(merged, word.word());
      if (at < 0) {
        merged.add(word);
      } else {
        merged.set(at, word);
      }
    }
    return merged;
  }

  private static int indexOf(List<DateWord> words, String word) {
    for (int i = 0; i < words.size(); i++) {
      if (words.get(i).word().toLowerCase(Locale.ROOT).equals(word.toLowerCase(Locale.ROOT))) {
        return i;
      }
    }
    return -1;
  }

  /** The first year of a century; 1700 or 1701 for the 18th. */
  int firstYear(int century) {
    return 100 * (century - 1) + centuryFirstYear;
  }
}
