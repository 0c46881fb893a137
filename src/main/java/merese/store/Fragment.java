package merese.store;

import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.Base64;

/**
 * A part of a file, as a history keeps it.
 *
 * @param text as it stands in the file; where that is no UTF-8, its bytes in Base64 (RFC 4648)
 */
record Fragment(String text, boolean isBase64) {
  static Fragment of(byte[] file, int from, int to) {
    byte[] bytes = Arrays.copyOfRange(file, from, to);
    try {
      String text = StandardCharsets.UTF_8.newDecoder().decode(ByteBuffer.wrap(bytes)).toString();
      return new Fragment(text, false);
    } catch (CharacterCodingException e) {
      return new Fragment(Base64.getEncoder().encodeToString(bytes), true);
    }
  }

  /**
   * @throws IllegalArgumentException for what should be Base64 and is not
   */
  byte[] bytes() {
    return isBase64 ? Base64.getDecoder().decode(text) : text.getBytes(StandardCharsets.UTF_8);
  }
}
