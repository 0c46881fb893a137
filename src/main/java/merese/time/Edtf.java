package merese.time;

import java.util.List;

/**
 * A date in the Extended Date/Time Format (Library of Congress, 4 February 2019; ISO 8601-2:2019),
 * levels 0 to 2.
 *
 * <p>Where the specification leaves a question open, we go by the test lists of
 * unt-libraries/edtf-validate: an interval must not start after the first day of its end; letter
 * years stand by themselves, not in an interval.
 */
public sealed interface Edtf permits EdtfPoint, EdtfTime, EdtfInterval, EdtfSet {
  /** What is longer is refused; a set of dates is the only thing that comes near it. */
  int LONGEST = 1_000;

  /**
   * @throws EdtfException that says where it is no EDTF, why, and what to write
   */
  static Edtf parse(String text) {
    return EdtfReader.read(text);
  }

  /** The lowest level of EDTF that has it: 0, 1 or 2. */
  int level();

  /**
   * The plain reading, from the first day that may be meant to the last. A year with significant
   * digits is the year that is estimated.
   */
  Span core();

  /** A generous reading: approximate dates reach as far as the profile says. */
  Span outer(Circa circa);

  /** A generous reading by the default profile. */
  default Span outer() {
    return outer(Circa.DEFAULT);
  }

  /** What is said of a part of it; of an interval or set, anywhere in it. */
  Qualification qualification(Unit unit);

  /** What is said anywhere in it. */
  default Qualification qualification() {
    Qualification all = Qualification.NONE;
    for (Unit unit : Unit.values()) {
      all = all.and(qualification(unit));
    }
    return all;
  }

  /** The ends of an interval that are known, or the members of a set; else only itself. */
  default List<Edtf> parts() {
    return List.of(this);
  }

  /** Just as it was parsed. */
  String printed();
}
