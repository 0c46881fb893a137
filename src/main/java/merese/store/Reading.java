package merese.store;

import java.util.ArrayList;
import java.util.List;

/** One file being decoded: collects everything that is wrong with it. */
final class Reading {
  private final Source source;
  private final boolean warns;
  private final List<Problem> problems = new ArrayList<>();

  /**
   * @param warns whether keys that look misspelt are looked for
   */
  Reading(Source source, boolean warns) {
    this.source = source;
    this.warns = warns;
  }

  /**
   * The value of a whole file.
   *
   * @throws LibraryException with all that is wrong
   */
  static <T> T decode(Source source, Json.Obj root, Codec<T> codec) {
    Reading reading = new Reading(source, false);
    T value = reading.value(new Fields(reading, null, Spot.top(root)), codec);
    if (!reading.problems.isEmpty()) {
      throw new LibraryException(reading.problems);
    }
    return value;
  }

  /** What an object stands for; null, with a problem recorded, where that fails. */
  <T> T value(Fields fields, Codec<T> codec) {
    T value = null;
    try {
      value = codec.read(fields);
    } catch (IllegalArgumentException e) {
      if (!fields.failed()) {
        fields.refuse(e.getMessage());
      }
    } catch (NullPointerException e) {
      // A constructor met the stand-in for a value that is already reported.
      if (!fields.failed()) {
        throw e;
      }
    }
    if (warns) {
      fields.warnOfMisspeltKeys();
    }
    return fields.failed() ? null : value;
  }

  void error(int offset, String where, String what, String remedy) {
    problems.add(source.problem(offset, where, what, remedy, Problem.Severity.ERROR));
  }

  void warning(int offset, String where, String what, String remedy) {
    problems.add(source.problem(offset, where, what, remedy, Problem.Severity.WARNING));
  }

  /** A place as another message can name it: file and line. */
  String place(int offset) {
    Problem place = source.problem(offset, "", "", "", Problem.Severity.ERROR);
    return place.file() + ":" + place.line();
  }

  List<Problem> problems() {
    return problems;
  }

  boolean warns() {
    return warns;
  }
}
