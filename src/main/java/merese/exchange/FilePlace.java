package merese.exchange;

/**
 * Where in a file something stands.
 *
 * @param file as the user named it
 * @param line from 1; 0 for a file without lines
 * @param column from 1, in characters (code points); 0 where only the line is known
 * @param record which record of the file it is, from 1
 */
public record FilePlace(String file, int line, int column, int record) {
  /** For an error message: "glass.bib:41:3", or "glass.mrc: record 7". */
  @Override
  public String toString() {
    return line == 0
        ? file + ": record " + record
        : column == 0 ? file + ":" + line : file + ":" + line + ":" + column;
  }
}
