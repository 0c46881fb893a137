package merese.store;

import java.nio.file.Path;
import java.util.List;

/**
 * A value with the file that it was read from, as it then was: what a save needs to change that
 * file and nothing else in it.
 */
public final class Stored<T> {
  private final T value;
  private final Path file;
  private final byte[] bytes;
  private final Codec<T> codec;

  /**
   * @param bytes null where there is no file yet and the value is what its absence means
   */
  Stored(T value, Path file, byte[] bytes, Codec<T> codec) {
    this.value = value;
    this.file = file;
    this.bytes = bytes;
    this.codec = codec;
  }

  static <T> Stored<T> of(Path file, byte[] bytes, Codec<T> codec) {
    Source source = Source.of(file, bytes);
    return new Stored<>(Reading.decode(source, JsonReader.read(source), codec), file, bytes, codec);
  }

  public T value() {
    return value;
  }

  /** The same, where the value is of a type. */
  @SuppressWarnings("unchecked") // the type of the value is that of the codec
  public <S> Stored<S> as(Class<S> type) {
    if (!type.isInstance(value)) {
      throw new ClassCastException(file + " holds no " + type.getSimpleName());
    }
    return (Stored<S>) this;
  }

  /** As the library was addressed. */
  public Path file() {
    return file;
  }

  /** What the file held, for a hash or a history; no bytes where there was no file. */
  public byte[] content() {
    return bytes == null ? new byte[0] : bytes.clone();
  }

  /** The keys at the top of the file that the program does not know and keeps: the user's own. */
  public List<String> ownKeys() {
    if (bytes == null) {
      return List.of();
    }
    Source source = Source.of(file, bytes);
    Fields fields = new Fields(new Reading(source, true), null, Spot.top(JsonReader.read(source)));
    codec.read(fields);
    return fields.unknownKeys();
  }

  boolean isOnDisk() {
    return bytes != null;
  }

  byte[] bytes() {
    return bytes;
  }

  Codec<T> codec() {
    return codec;
  }
}
