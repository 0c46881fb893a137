package merese.store;

/**
 * One record's keys, read and written in the order in which they stand in a file.
 *
 * <p>A codec reads all its keys even where one is wrong: {@link Fields} records the problem and
 * gives a stand-in, and what was made from it is thrown away. It need not check anything that a
 * constructor checks: an {@link IllegalArgumentException} becomes a problem of the object.
 */
interface Codec<T> {
  T read(Fields in);

  void write(T value, ObjectBuilder out);

  /** The value that a text alone stands for; null where it must be an object. */
  default T fromText(String text) {
    return null;
  }

  /** What stands for a value, as a message says it. */
  default String shape() {
    return "an object";
  }

  /** The same as an example. */
  default String example() {
    return "{ \"…\": … }";
  }

  /** The text that says all there is to say of the value; null where there is more. */
  default String asText(T value) {
    return null;
  }
}
