package merese.store;

import java.util.Arrays;
import java.util.Optional;

/**
 * What a change did to one file: enough to give back what it held, from what it holds now.
 *
 * @param file its path below the library folder, with "/" on every system
 * @param was the {@link Hash} of what it held before; {@link Hash#NONE} where it was made
 * @param is that of what it held afterwards; {@link Hash#NONE} where it was deleted
 * @param from how many bytes at its start are the same before and after
 * @param length how many bytes after these are not what they were
 * @param before what stood there before, up to where both are the same again; empty for a new file
 * @param after what stands there now; empty for a file that was made or deleted, and where it is
 *     too long to keep
 */
record AlteredFile(
    String file,
    String was,
    String is,
    int from,
    int length,
    Optional<Fragment> before,
    Optional<Fragment> after) {
  /** How many bytes of what a change has put into a file are kept. */
  private static final int LONGEST_AFTER = 256 << 10;

  /** How many bytes must be found again before they are taken for what a change put in. */
  private static final int SHORTEST_FOUND = 8;

  /**
   * @param old null for a file that is made
   * @param now null for a file that is deleted
   */
  static AlteredFile of(String file, byte[] old, byte[] now) {
    String was = Hash.of(old);
    String is = Hash.of(now);
    if (old == null) {
      return new AlteredFile(file, was, is, 0, 0, Optional.empty(), Optional.empty());
    } else if (now == null) {
      Fragment whole = Fragment.of(old, 0, old.length);
      return new AlteredFile(file, was, is, 0, 0, Optional.of(whole), Optional.empty());
    }
    int shorter = Math.min(old.length, now.length);
    int mismatch = Arrays.mismatch(old, now);
    int start = mismatch < 0 ? shorter : mismatch;
    while (start > 0 && (isInsideALetter(old, start) || isInsideALetter(now, start))) {
      start--;
    }
    int end = 0; // counted from the end
    while (end < shorter - start && old[old.length - 1 - end] == now[now.length - 1 - end]) {
      end++;
    }
    while (end > 0 && isInsideALetter(old, old.length - end)) {
      end--;
    }
    int length = now.length - end - start;
    Optional<Fragment> after =
        length > LONGEST_AFTER
            ? Optional.empty()
            : Optional.of(Fragment.of(now, start, start + length));
    Fragment before = Fragment.of(old, start, old.length - end);
    return new AlteredFile(file, was, is, start, length, Optional.of(before), after);
  }

  static AlteredFile made(String file, String is) {
    return new AlteredFile(file, Hash.NONE, is, 0, 0, Optional.empty(), Optional.empty());
  }

  /** Whether the byte at a place is a later one of a letter's several in UTF-8. */
  private static boolean isInsideALetter(byte[] text, int at) {
    return at < text.length && (text[at] & 0xC0) == 0x80;
  }

  boolean wasMade() {
    return was.equals(Hash.NONE);
  }

  boolean wasDeleted() {
    return is.equals(Hash.NONE);
  }

  /**
   * What the file held before; null for none.
   *
   * @param now what it holds, which must be what the change left
   * @throws IllegalArgumentException where this does not give back what was
   */
  byte[] restored(byte[] now) {
    byte[] restored = null;
    if (wasDeleted()) {
      restored = before.orElseThrow(IllegalArgumentException::new).bytes();
    } else if (!wasMade()) {
      byte[] middle = before.orElseThrow(IllegalArgumentException::new).bytes();
      restored = spliced(now, from, from + length, middle);
    }
    if (!Hash.of(restored).equals(was)) {
      throw new IllegalArgumentException("this is not what " + file + " held");
    }
    return restored;
  }

  /**
   * A later text of the file with what this change put in taken out again; null where that does not
   * stand there just once.
   */
  byte[] takenOut(byte[] now) {
    if (after.isEmpty() || before.isEmpty()) {
      return null;
    }
    byte[] put = after.get().bytes();
    int at = put.length < SHORTEST_FOUND ? -1 : indexOf(now, put, 0);
    if (at < 0 || indexOf(now, put, at + 1) >= 0) {
      return null;
    }
    return spliced(now, at, at + put.length, before.get().bytes());
  }

  private static int indexOf(byte[] text, byte[] part, int from) {
    for (int i = from; i <= text.length - part.length; i++) {
      if (Arrays.equals(text, i, i + part.length, part, 0, part.length)) {
        return i;
      }
    }
    return -1;
  }

  private static byte[] spliced(byte[] text, int from, int to, byte[] middle) {
    if (from < 0 || from > to || to > text.length) {
      throw new IllegalArgumentException("the file is too short");
    }
    byte[] result = Arrays.copyOf(text, from + middle.length + text.length - to);
    System.arraycopy(middle, 0, result, from, middle.length);
    System.arraycopy(text, to, result, from + middle.length, text.length - to);
    return result;
  }
}
