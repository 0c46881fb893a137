package merese.shelf;

/** Who is told while a shelf brings its index up to date. */
public interface Watcher {
  /** Nobody is told. */
  Watcher NONE = new Watcher() {};

  /** The index is built from nothing, and why: it is not there yet, or it was damaged. */
  default void building(String why) {}

  /** A piece of work starts: this many files are to be read. */
  default void start(int files) {}

  /** So many files have been read. */
  default void at(int files) {}

  /** The piece of work is done. */
  default void end() {}

  /**
   * After an answer: files of a large library had been changed by other hands, and it lacks that.
   *
   * @param files how many
   * @param first the path of the first below the library
   */
  default void lacking(int files, String first) {}
}
