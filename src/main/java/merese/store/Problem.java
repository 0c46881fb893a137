package merese.store;

import java.nio.file.Path;

/**
 * Something wrong in a library, with the place and the remedy.
 *
 * @param file as the user addressed the library; an empty path for bytes that are not in a file
 * @param line from 1; 0 where the problem has no place inside the file
 * @param column from 1, in characters (code points); 0 where there is no line
 * @param where the way from the top of the file, such as {@code editions[1].notes[3].id}; may be ""
 * @param what is wrong
 * @param remedy what to do about it; may be ""
 */
public record Problem(
    Path file, int line, int column, String where, String what, String remedy, Severity severity) {

  /** Whether the library can be used in spite of it. */
  public enum Severity {
    ERROR,
    WARNING
  }

  static Problem of(Path file, String what, String remedy) {
    return new Problem(file, 0, 0, "", what, remedy, Severity.ERROR);
  }

  /** One line for a person: {@code library/works/quenby.json:41:17: where: what; remedy}. */
  @Override
  public String toString() {
    StringBuilder out = new StringBuilder();
    if (!file.toString().isEmpty()) {
      out.append(file).append(':');
    }
    if (line > 0) {
      out.append(line).append(':').append(column).append(':');
    }
    if (severity == Severity.WARNING) {
      out.append(out.length() > 0 ? " " : "").append("warning:");
    }
    if (!where.isEmpty()) {
      out.append(out.length() > 0 ? " " : "").append(where).append(':');
    }
    out.append(out.length() > 0 ? " " : "").append(what);
    if (!remedy.isEmpty()) {
      out.append("; ").append(remedy);
    }
    return out.toString();
  }
}
