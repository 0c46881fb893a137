package merese.shelf;

import java.nio.charset.StandardCharsets;
import java.util.Arrays;

/**
 * Texts that stand in many notes, such as the ids of concepts: made of their bytes once, so that
 * their hashes too are reckoned once. It keeps a bounded number, the last ones met.
 */
final class RecurringTexts {
  private static final int SLOTS = 1 << 12;

  private final byte[][] bytes = new byte[SLOTS][];
  private final String[] texts = new String[SLOTS];

  String of(byte[] all, int from, int length) {
    int slot = slot(all, from, length);
    byte[] known = bytes[slot];
    if (known != null && Arrays.equals(known, 0, known.length, all, from, from + length)) {
      return texts[slot];
    }
    bytes[slot] = Arrays.copyOfRange(all, from, from + length);
    texts[slot] = new String(all, from, length, StandardCharsets.UTF_8);
    return texts[slot];
  }

  private static int slot(byte[] all, int from, int length) {
    int hash = length;
    for (int i = from; i < from + length; i++) {
      hash = 31 * hash + all[i];
    }
    return (hash ^ hash >>> 15) & SLOTS - 1;
  }
}
