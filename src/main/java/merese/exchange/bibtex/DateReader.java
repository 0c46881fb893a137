package merese.exchange.bibtex;

import java.util.Optional;
import java.util.OptionalInt;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Years as BibTeX has them, in words or digits, and dates of biblatex, which are those of EDTF
 * (Library of Congress, Extended Date/Time Format, 2019, levels 0 and 1).
 *
 * @param year the first that is named in full
 * @param printed as it stands, where that is more than a year or a day
 */
record DateReader(OptionalInt year, Optional<String> printed) {
  static final DateReader NONE = new DateReader(OptionalInt.empty(), Optional.empty());

  private static final Pattern YEAR = Pattern.compile("-?\\d{1,4}");
  private static final Pattern EDTF = Pattern.compile("[-+0-9XxuTZ:./?~%]+");
  private static final Pattern DAY =
      Pattern.compile("(-?\\d{4})-\\d{2}(?:-\\d{2}(?:T[\\d:.Z+-]*)?)?");
  private static final Pattern SOME_YEAR = Pattern.compile("(?<!\\d)(-?\\d{3,4})(?![\\dXxu])");

  static DateReader of(EntryFields fields) {
    return edtf(fields, "date").or(() -> fields.plain("year")).map(DateReader::of).orElse(NONE);
  }

  /** The year of a first publication. */
  static OptionalInt original(EntryFields fields) {
    return edtf(fields, "origdate")
        .or(() -> fields.plain("origyear"))
        .map(DateReader::of)
        .orElse(NONE)
        .year();
  }

  /** To EDTF a tilde is "circa", and not LaTeX's space. */
  private static Optional<String> edtf(EntryFields fields, String name) {
    return fields
        .latex(name)
        .map(String::strip)
        .filter(date -> EDTF.matcher(date).matches())
        .or(() -> fields.plain(name));
  }

  static DateReader of(String text) {
    if (YEAR.matcher(text).matches()) {
      return new DateReader(OptionalInt.of(Integer.parseInt(text)), Optional.empty());
    }
    Matcher day = DAY.matcher(text);
    if (day.matches()) {
      return new DateReader(OptionalInt.of(Integer.parseInt(day.group(1))), Optional.empty());
    }
    Matcher some = SOME_YEAR.matcher(text);
    boolean startsOpen = text.startsWith("/") || text.startsWith("../");
    OptionalInt year =
        !startsOpen && some.find() ? OptionalInt.of(year(some)) : OptionalInt.empty();
    return new DateReader(year, Optional.of(text));
  }

  /** A hyphen is a minus only where the text starts with it. */
  private static int year(Matcher matcher) {
    String digits = matcher.group(1);
    boolean hyphen = digits.startsWith("-") && matcher.start() > 0;
    return Integer.parseInt(hyphen ? digits.substring(1) : digits);
  }
}
