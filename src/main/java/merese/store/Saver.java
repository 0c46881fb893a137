package merese.store;

import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;

/** Makes the new bytes of a file and puts them on the disk; the caller has the lock. */
final class Saver {
  private Saver() {}

  /** Whether there is nothing to save: both would be written alike. */
  static <T> boolean isSame(Stored<T> old, T value) {
    return ObjectBuilder.object(old.value(), old.codec())
        .sameAs(ObjectBuilder.object(value, old.codec()));
  }

  /** The bytes to write for a new value. */
  static <T> byte[] bytes(Stored<T> old, T value) {
    return bytes(old, value, Donors.NONE);
  }

  /**
   * @param donors where parts of the value come from
   */
  static <T> byte[] bytes(Stored<T> old, T value, Donors donors) {
    Json after = ObjectBuilder.object(value, old.codec());
    if (!old.isOnDisk()) {
      Json nothing = new Json.Obj(List.of());
      Json whole = JsonPatch.apply(nothing, nothing, after, donors);
      return verified(old, after, JsonPrinter.lines(whole));
    }
    Source source = Source.of(old.file(), old.bytes());
    Json before = ObjectBuilder.object(old.value(), old.codec());
    Json patched = JsonPatch.apply(JsonReader.read(source), before, after, donors);
    return verified(old, after, JsonPrinter.lines(donors.withOwnKeys(patched), source));
  }

  /**
   * Reads back what is to be written, so that no save can leave a file that says something else, or
   * that cannot be read.
   */
  private static <T> byte[] verified(Stored<T> old, Json after, byte[] bytes) {
    Stored<T> again = Stored.of(old.file(), bytes, old.codec());
    if (!ObjectBuilder.object(again.value(), old.codec()).sameAs(after)) {
      throw new IllegalStateException(old.file() + ": what was to be written reads differently");
    }
    return bytes;
  }

  /** Writes where the file is still as it was read. */
  static <T> Stored<T> write(Stored<T> old, T value, byte[] bytes) {
    Disk.requireReplaceable(old.file());
    requireUnchanged(old);
    Disk.replace(old.file(), bytes);
    return new Stored<>(value, old.file(), bytes, old.codec());
  }

  static void delete(Stored<?> old) {
    Disk.requireReplaceable(old.file());
    requireUnchanged(old);
    Disk.delete(old.file());
  }

  private static void requireUnchanged(Stored<?> old) {
    byte[] now = Disk.readIfThere(old.file());
    if (!Arrays.equals(now, old.bytes())) {
      throw changed(old.file(), old.isOnDisk(), now != null);
    }
  }

  /** That a file is not as it was read. */
  static LibraryException changed(Path file, boolean wasThere, boolean isThere) {
    String what =
        !wasThere
            ? "there is a file of this name already"
            : isThere
                ? "the file has been changed by somebody else since it was read"
                : "the file has been deleted since it was read";
    return new LibraryException(
        file, what + "; nothing was written", "look at it, then make your change again");
  }
}
