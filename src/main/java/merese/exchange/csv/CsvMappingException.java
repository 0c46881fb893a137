package merese.exchange.csv;

/** A mapping file that cannot be used; the message is for the user, with file and line. */
public final class CsvMappingException extends RuntimeException {
  private static final long serialVersionUID = 1;

  CsvMappingException(String file, int line, String what, String remedy) {
    super(file + ":" + line + ": " + what + "; " + remedy);
  }
}
