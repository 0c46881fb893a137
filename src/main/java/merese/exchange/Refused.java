package merese.exchange;

/**
 * A record that could not be read.
 *
 * @param what is wrong, with the value that is
 * @param remedy what to do about it
 * @param verbatim the bytes of the record, just as they stand in the file
 */
public record Refused(FilePlace place, String what, String remedy, byte[] verbatim) {
  @Override
  public String toString() {
    return place + ": " + what + (remedy.isEmpty() ? "" : "; " + remedy);
  }
}
