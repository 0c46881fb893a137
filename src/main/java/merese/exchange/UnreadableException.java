package merese.exchange;

import merese.model.ForTheUser;

/**
 * That a whole file could not be read as the format that it should be in. The message is for a
 * person: place, what is wrong, what to do.
 */
public final class UnreadableException extends RuntimeException implements ForTheUser {
  private final transient FilePlace place;
  private final String what;
  private final String remedy;

  public UnreadableException(FilePlace place, String what, String remedy) {
    super(place(place) + ": " + what + (remedy.isEmpty() ? "" : "; " + remedy));
    this.place = place;
    this.what = what;
    this.remedy = remedy;
  }

  /** A fault of a file as a whole. */
  public UnreadableException(String file, String what, String remedy) {
    this(new FilePlace(file, 0, 0, 0), what, remedy);
  }

  /** {@link FilePlace#line()} is 0 where the fault has no place inside the file. */
  public FilePlace place() {
    return place;
  }

  public String what() {
    return what;
  }

  public String remedy() {
    return remedy;
  }

  private static String place(FilePlace place) {
    return place.line() == 0 && place.record() == 0 ? place.file() : place.toString();
  }
}
