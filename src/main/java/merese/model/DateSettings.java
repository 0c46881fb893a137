package merese.model;

import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;

/**
 * What a library sets of the rules by which dates in words become years. What is left out is as in
 * the rules that the program brings along.
 *
 * @param name what to call these rules; "default" alone stands for those of the program
 * @param circaYears how far "about 1790" reaches to each side
 * @param circaMonths the same for "about June 1790"
 * @param circaDays the same for "about 11 June 1790"
 * @param centuryFirstYear 0 where the 18th century is 1700–1799, 1 where it is 1701–1800
 * @param yearsBeyondEnd how many years a generous reading adds at the end of a century, a half, a
 *     third or a quarter
 * @param parts parts of a century, such as "late"
 * @param periods period words, such as "Regency"
 */
public record DateSettings(
    Optional<String> name,
    OptionalInt circaYears,
    OptionalInt circaMonths,
    OptionalInt circaDays,
    OptionalInt centuryFirstYear,
    OptionalInt yearsBeyondEnd,
    List<DateWord> parts,
    List<DateWord> periods) {
  /** The name of the rules that the program brings along. */
  public static final String DEFAULT_NAME = "default";

  /** Those rules as they are. */
  public static final DateSettings DEFAULT =
      new DateSettings(
          Optional.of(DEFAULT_NAME),
          OptionalInt.empty(),
          OptionalInt.empty(),
          OptionalInt.empty(),
          OptionalInt.empty(),
          OptionalInt.empty(),
          List.of(),
          List.of());

  private static final int MOST = 100;

  public DateSettings {
    requireReach("circaYears", circaYears);
    requireReach("circaMonths", circaMonths);
    requireReach("circaDays", circaDays);
    requireReach("yearsBeyondEnd", yearsBeyondEnd);
    Require.that(
        centuryFirstYear.orElse(0) == 0 || centuryFirstYear.orElse(0) == 1,
        "\"centuryFirstYear\" is "
            + centuryFirstYear.orElse(0)
            + "; write 0 for 1700–1799, or 1 for 1701–1800");
    parts = List.copyOf(parts);
    periods = List.copyOf(periods);
    for (DateWord part : parts) {
      Require.that(
          part.earliest() >= 0 && part.latest() <= MOST,
          "the part \""
              + part.word()
              + "\" lies outside its century; count its years from 0 to 100");
    }
  }

  private static void requireReach(String key, OptionalInt value) {
    Require.that(
        value.orElse(0) >= 0 && value.orElse(0) <= MOST,
        "\"" + key + "\" is " + value.orElse(0) + "; write a number from 0 to " + MOST);
  }
}
