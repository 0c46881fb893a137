package merese.cli;

import java.util.Map;

/**
 * How wide a text may be and whether it may carry colour. The launcher says which streams are
 * terminals and how wide they are, since Java 17 can't tell.
 *
 * @param terminal whether a person is looking
 * @param width columns, at least {@value #NARROWEST}
 * @param colour whether escape sequences are welcome; never the only sign of anything
 */
record Screen(boolean terminal, int width, boolean colour) {
  static final int NARROWEST = 40;
  static final int USUAL = 80;

  /**
   * The variable in which the launcher names the streams that are terminals, as {@code out err}.
   */
  static final String TERMINALS = "MERESE_TTY";

  /**
   * The variable in which the launcher gives the columns of the terminal. What is piped or stored
   * does not depend on the window: it has {@value #USUAL} columns, or what {@code COLUMNS} says.
   */
  static final String COLUMNS = "MERESE_COLUMNS";

  static Screen ofAnswers(Map<String, String> environment) {
    return of("out", environment);
  }

  static Screen ofErrors(Map<String, String> environment) {
    return of("err", environment);
  }

  private static Screen of(String stream, Map<String, String> environment) {
    boolean terminal = environment.getOrDefault(TERMINALS, "").contains(stream);
    String columns = environment.getOrDefault(terminal ? COLUMNS : "COLUMNS", "");
    return new Screen(terminal, width(columns), terminal && allowsColour(environment));
  }

  /** See no-color.org: any value but the empty one says no. */
  private static boolean allowsColour(Map<String, String> environment) {
    return environment.getOrDefault("NO_COLOR", "").isEmpty()
        && !environment.getOrDefault("TERM", "dumb").equals("dumb");
  }

  private static int width(String typed) {
    try {
      int columns = Integer.parseInt(typed);
      return columns <= 0 ? USUAL : Math.max(NARROWEST, columns);
    } catch (NumberFormatException e) {
      return USUAL;
    }
  }
}
