package merese.shelf;

import java.io.ByteArrayOutputStream;
import java.nio.charset.StandardCharsets;
import java.util.Collection;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;

/**
 * Packs values into bytes for the index, where they are read at every question: a text is its
 * length and its UTF-8, a list its size and its elements. {@link Unpacker} reads them in the same
 * order.
 */
final class Packer {
  private final ByteArrayOutputStream out = new ByteArrayOutputStream(512);

  Packer number(int value) {
    int rest = value;
    while ((rest & ~0x7F) != 0) {
      out.write((rest & 0x7F) | 0x80);
      rest >>>= 7;
    }
    out.write(rest);
    return this;
  }

  Packer flag(boolean value) {
    out.write(value ? 1 : 0);
    return this;
  }

  Packer text(String value) {
    return bytes(value.getBytes(StandardCharsets.UTF_8));
  }

  Packer bytes(byte[] value) {
    number(value.length);
    out.write(value, 0, value.length);
    return this;
  }

  Packer text(Optional<String> value) {
    flag(value.isPresent());
    return value.isPresent() ? text(value.get()) : this;
  }

  Packer number(OptionalInt value) {
    flag(value.isPresent());
    return value.isPresent() ? number(value.getAsInt()) : this;
  }

  Packer texts(Collection<String> values) {
    number(values.size());
    for (String value : values) {
      text(value);
    }
    return this;
  }

  /** Enums are packed by their position: raise the index's layout when one is reordered. */
  Packer constant(Enum<?> value) {
    return number(value.ordinal());
  }

  Packer constant(Optional<? extends Enum<?>> value) {
    return number(value.isPresent() ? value.get().ordinal() + 1 : 0);
  }

  <T> Packer list(List<T> values, Packing<T> packing) {
    number(values.size());
    for (T value : values) {
      packing.pack(this, value);
    }
    return this;
  }

  /** How many bytes there are so far. */
  int size() {
    return out.size();
  }

  byte[] toBytes() {
    return out.toByteArray();
  }

  /** How one value is packed. */
  interface Packing<T> {
    void pack(Packer to, T value);
  }
}
