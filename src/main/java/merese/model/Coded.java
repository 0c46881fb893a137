package merese.model;

import java.util.Locale;

/**
 * A closed set of words that stands in a library's files. The code is what is written there: the
 * constant's name in lower case with hyphens, as in {@code says-absent}.
 */
public interface Coded {
  String name();

  default String code() {
    return name().toLowerCase(Locale.ROOT).replace('_', '-');
  }
}
