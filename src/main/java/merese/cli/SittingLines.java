package merese.cli;

import java.io.BufferedReader;
import java.io.Closeable;
import java.io.IOException;
import java.io.InputStreamReader;
import java.nio.charset.StandardCharsets;

/** Where the lines of a sitting come from. */
interface SittingLines extends Closeable {
  /** Somebody gave up the line that they were typing. */
  final class GivenUpException extends RuntimeException {
    private static final long serialVersionUID = 1L;

    private final boolean atNothing;

    /**
     * @param atNothing whether nothing was typed yet
     */
    GivenUpException(boolean atNothing) {
      super("the line was given up");
      this.atNothing = atNothing;
    }

    boolean atNothing() {
      return atNothing;
    }
  }

  /**
   * The next line.
   *
   * @param begun what stands in it already, to be mended or sent
   * @return null at the end
   * @throws GivenUpException where it is given up
   */
  String next(String prompt, String begun) throws IOException;

  /** Whether somebody is there who can be asked. */
  boolean somebody();

  /** Whether what is begun stands in the line, and can be edited. */
  default boolean edited() {
    return false;
  }

  @Override
  default void close() throws IOException {}

  /** Lines of a script, or of a terminal that cannot be steered. */
  static SittingLines plain(Context context) {
    BufferedReader in =
        new BufferedReader(new InputStreamReader(context.in(), StandardCharsets.UTF_8), 256);
    boolean terminal = isTyped(context);
    return new SittingLines() {
      @Override
      public String next(String prompt, String begun) throws IOException {
        if (terminal) {
          context.out().print(prompt);
          context.out().flush();
        }
        return in.readLine();
      }

      @Override
      public boolean somebody() {
        return terminal;
      }
    };
  }

  private static boolean isTyped(Context context) {
    return context.environment().getOrDefault(Screen.TERMINALS, "").contains("in")
        && context.screen().terminal();
  }

  /** Lines that can be edited where the terminal allows it, else plain ones. */
  static SittingLines of(Context context, SittingCompletion completion) throws IOException {
    boolean steered = !context.environment().getOrDefault("TERM", "dumb").equals("dumb");
    return isTyped(context) && steered ? EditedLines.open(context, completion) : plain(context);
  }
}
