package merese.shelf;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import merese.search.IndexDamagedException;

/** Reads what a {@link Packer} has packed. Bytes that end too soon are a damaged index. */
final class Unpacker {
  private final byte[] bytes;
  private int at;

  Unpacker(byte[] bytes) {
    this(bytes, 0);
  }

  Unpacker(byte[] bytes, int from) {
    if (from < 0) {
      throw cutShort();
    }
    this.bytes = bytes;
    this.at = from;
  }

  int number() {
    int value = 0;
    for (int shift = 0; ; shift += 7) {
      int next = next();
      value |= (next & 0x7F) << shift;
      if (next >= 0) {
        return value;
      }
    }
  }

  private byte next() {
    if (at >= bytes.length) {
      throw cutShort();
    }
    return bytes[at++];
  }

  boolean flag() {
    return next() != 0;
  }

  /** A text that many others of the index are the same as. */
  String text(RecurringTexts known) {
    int length = length();
    at += length;
    return known.of(bytes, at - length, length);
  }

  String text() {
    int length = length();
    at += length;
    return new String(bytes, at - length, length, StandardCharsets.UTF_8);
  }

  void passText() {
    int length = length();
    at += length;
  }

  /** Passes over a list of numbers. */
  void passNumbers() {
    for (int left = number(); left > 0; left--) {
      number();
    }
  }

  byte[] bytes() {
    int length = length();
    at += length;
    return Arrays.copyOfRange(bytes, at - length, at);
  }

  private int length() {
    int length = number();
    if (length < 0 || length > bytes.length - at) {
      throw cutShort();
    }
    return length;
  }

  Optional<String> optionalText() {
    return flag() ? Optional.of(text()) : Optional.empty();
  }

  OptionalInt optionalNumber() {
    return flag() ? OptionalInt.of(number()) : OptionalInt.empty();
  }

  List<String> texts() {
    int size = number();
    if (size == 0) {
      return List.of();
    }
    List<String> values = new ArrayList<>();
    for (int i = 0; i < size; i++) {
      values.add(text());
    }
    return values;
  }

  /** One of {@code all}, which are an enum's values. */
  <E extends Enum<E>> E constant(E[] all) {
    int position = number();
    if (position >= all.length) {
      throw cutShort();
    }
    return all[position];
  }

  <E extends Enum<E>> Optional<E> optionalConstant(E[] all) {
    int position = number();
    return position == 0 || position > all.length
        ? Optional.empty()
        : Optional.of(all[position - 1]);
  }

  private static IndexDamagedException cutShort() {
    return new IndexDamagedException("the index holds what cannot be read", null);
  }
}
