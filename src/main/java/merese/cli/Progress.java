package merese.cli;

import java.io.PrintWriter;
import java.util.function.LongSupplier;

/**
 * Shows how far a long piece of work has come: a bar that is drawn over itself on a terminal, else
 * a line when it starts and one when it ends. Not for several threads at once.
 *
 * <pre>
 * Indexing notes  [##########----------]  10,000 of 20,000 (50 %)  4,100 a second
 * </pre>
 */
final class Progress implements AutoCloseable {
  private static final long BETWEEN_DRAWINGS = 100_000_000L;
  private static final int LONGEST_BAR = 30;

  private final PrintWriter err;
  private final Screen screen;
  private final LongSupplier nanoseconds;
  private String what = "";
  private long total;
  private long done;
  private long started;
  private long drawn;
  private int onScreen;
  private boolean open;

  /**
   * @param nanoseconds a clock that only goes forward, as {@link System#nanoTime}
   */
  Progress(PrintWriter err, Screen screen, LongSupplier nanoseconds) {
    this.err = err;
    this.screen = screen;
    this.nanoseconds = nanoseconds;
  }

  /**
   * Starts a piece of work, and ends the one before it.
   *
   * @param what the work and what is counted, as in "Indexing notes"
   * @param total how many there are; 0 when that is not known
   */
  void start(String what, long total) {
    close();
    this.what = what;
    this.total = total;
    done = 0;
    started = nanoseconds.getAsLong();
    open = true;
    if (screen.terminal()) {
      draw(started);
    } else {
      err.println(what + (total > 0 ? ": " + grouped(total) : "") + " …");
      err.flush();
    }
  }

  /** Says that {@code done} of the total are finished; cheap enough to call for each one. */
  void at(long done) {
    this.done = done;
    if (screen.terminal()) {
      long now = nanoseconds.getAsLong();
      if (now - drawn >= BETWEEN_DRAWINGS) {
        draw(now);
      }
    }
  }

  /** Ends the work with one line that stays: how many, and how long they took. */
  @Override
  public void close() {
    if (!open) {
      return;
    }
    open = false;
    long tenths = (nanoseconds.getAsLong() - started) / 100_000_000L;
    String line = what + ": " + grouped(done) + " in " + tenths / 10 + "." + tenths % 10 + " s";
    if (screen.terminal()) {
      redraw(line);
      onScreen = 0;
    } else {
      err.print(line);
    }
    err.println();
    err.flush();
  }

  private void draw(long now) {
    drawn = now;
    StringBuilder numbers = new StringBuilder(grouped(done));
    if (total > 0) {
      numbers.append(" of ").append(grouped(total));
      numbers.append(" (").append(Math.min(100, done * 100 / total)).append(" %)");
    }
    long milliseconds = (now - started) / 1_000_000L;
    if (done > 0 && milliseconds >= 500) {
      numbers.append("  ").append(grouped(done * 1000 / milliseconds)).append(" a second");
    }
    int room = screen.width() - 1 - Wrap.columns(what) - numbers.length() - 6;
    int bar = Math.min(LONGEST_BAR, room);
    if (total <= 0 || bar < 5) {
      redraw(what + "  " + numbers);
      return;
    }
    int filled = (int) (bar * Math.min(done, total) / total);
    redraw(what + "  [" + "#".repeat(filled) + "-".repeat(bar - filled) + "]  " + numbers);
  }

  /** Writes over the line that stands there; blanks hide what is left of a longer one. */
  private void redraw(String line) {
    String shown = line.length() < screen.width() ? line : line.substring(0, screen.width() - 1);
    err.print('\r');
    err.print(shown);
    err.print(" ".repeat(Math.max(0, onScreen - shown.length())));
    err.flush();
    onScreen = shown.length();
  }

  /** With a comma between thousands. */
  static String grouped(long number) {
    StringBuilder digits = new StringBuilder(Long.toString(number));
    for (int at = digits.length() - 3; at > 0; at -= 3) {
      digits.insert(at, ',');
    }
    return digits.toString();
  }
}
