package merese.exchange;

import java.io.IOException;
import java.io.InputStream;

/**
 * Reads the records of one format.
 *
 * <p>Guarantees: every record of the file is handed on once, as a source, as kept or as refused; a
 * bad record changes none of the others; a file is read as a stream, so that its size does not
 * matter; nothing is fetched.
 */
public interface RecordReader {
  /**
   * @param file as the user named it, for messages
   * @throws IOException where the stream itself fails
   */
  void read(String file, InputStream in, Receiver to) throws IOException;

  /** What refused records need round them to be read again once mended; known after a reading. */
  default Wrapping wrapping() {
    return Wrapping.NONE;
  }
}
