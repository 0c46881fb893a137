package merese.model;

import java.util.OptionalInt;

/**
 * A word for a stretch of years: of a period, such as "Regency", or of a part of a century, such as
 * "late".
 *
 * @param from the first year of the plain reading; of a century's part, counted from the century's
 *     first year, which is 0
 * @param to its last year
 * @param outerFrom the first year of a generous reading; empty where it is the same
 * @param outerTo its last year
 */
public record DateWord(String word, int from, int to, OptionalInt outerFrom, OptionalInt outerTo) {
  private static final int FURTHEST = 9999;

  public DateWord {
    Require.text(word, "a word for years");
    Require.that(
        from <= to, "\"" + word + "\" ends before it begins; write the earlier year in \"from\"");
    Require.that(
        outerFrom.orElse(from) <= from,
        "the outer years of \""
            + word
            + "\" begin after the plain ones; write an earlier"
            + " \"outerFrom\", or leave it out");
    Require.that(
        outerTo.orElse(to) >= to,
        "the outer years of \""
            + word
            + "\" end before the plain ones; write a later \"outerTo\","
            + " or leave it out");
    Require.that(
        outerFrom.orElse(from) >= -FURTHEST && outerTo.orElse(to) <= FURTHEST,
        "the years of \"" + word + "\" are too far off; write years of up to four digits");
  }

  public static DateWord of(String word, int from, int to, int outerFrom, int outerTo) {
    return new DateWord(word, from, to, OptionalInt.of(outerFrom), OptionalInt.of(outerTo));
  }

  /** The first year of a generous reading. */
  public int earliest() {
    return outerFrom.orElse(from);
  }

  /** The last year of a generous reading. */
  public int latest() {
    return outerTo.orElse(to);
  }
}
