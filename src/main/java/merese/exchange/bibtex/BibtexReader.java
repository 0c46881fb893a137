package merese.exchange.bibtex;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Path;
import merese.exchange.Receiver;
import merese.exchange.RecordReader;
import merese.exchange.Wrapping;

/**
 * Reads the entries of a BibTeX or BibLaTeX file.
 *
 * <p>Guarantees beyond those of {@link RecordReader}: a record's fields are in their order, each
 * name in lower case, each value with its strings put in and its white space as BibTeX has it, and
 * LaTeX as it stands (see {@code bibtex.md}); which of the two formats it is holds for the whole
 * file; a broken entry is refused by itself, down to the next line that starts like an entry.
 *
 * <p>Bytes that are not UTF-8 are read as Windows-1252, and the first entry with such says so. The
 * stream is copied to a temporary file where it is longer than a mebibyte, since entries may
 * inherit from what stands after them; only entries that others inherit from are held in memory,
 * and all keys.
 */
public final class BibtexReader implements RecordReader {
  private final Path temporary;
  private Wrapping wrapping = Wrapping.NONE;

  public BibtexReader() {
    this(Spool.USUAL_FOLDER);
  }

  /**
   * @param temporary the folder for a copy of a long stream
   */
  BibtexReader(Path temporary) {
    this.temporary = temporary;
  }

  @Override
  public void read(String file, InputStream in, Receiver to) throws IOException {
    try (Spool bytes = Spool.of(in, temporary)) {
      BibtexReading reading = new BibtexReading(file, bytes, Survey.of(bytes), to);
      reading.run();
      wrapping = reading.wrapping();
    }
  }

  /** The file's strings stand before what was refused. */
  @Override
  public Wrapping wrapping() {
    return wrapping;
  }
}
