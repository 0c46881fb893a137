package merese.cli;

import java.io.FilterOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.io.PrintWriter;
import java.io.UncheckedIOException;

/**
 * Standard output that stops the command when nothing can be written any more. A plain {@link
 * PrintWriter} swallows the failure, and a full disk would pass for an answer.
 */
final class AnswerStream extends FilterOutputStream {
  AnswerStream(OutputStream out) {
    super(out);
  }

  @Override
  public void write(int b) {
    try {
      out.write(b);
    } catch (IOException e) {
      throw new Lost(e);
    }
  }

  @Override
  public void write(byte[] bytes, int offset, int length) {
    try {
      out.write(bytes, offset, length);
    } catch (IOException e) {
      throw new Lost(e);
    }
  }

  @Override
  public void flush() {
    try {
      out.flush();
    } catch (IOException e) {
      throw new Lost(e);
    }
  }

  /** The reader of the answer has gone, or the answer could not be stored. */
  static final class Lost extends UncheckedIOException {
    private static final long serialVersionUID = 1;

    Lost(IOException cause) {
      super(cause);
    }

    /** Says why, unless the reader only had enough, as in {@code merese covers ring | head}. */
    int report(PrintWriter errors) {
      String reason = String.valueOf(getCause().getMessage());
      if (reason.contains("Broken pipe")) {
        return ExitCode.DONE;
      }
      errors.println("merese: the answer could not be written in full: " + reason);
      return ExitCode.FAILED;
    }
  }
}
