package merese.exchange.csl;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import org.junit.jupiter.api.Test;

/** Held against the JDK's decoder, which refuses what RFC 3629 does not have. */
class Utf8Test {
  /** The bytes at which its table of well-formed sequences changes. */
  @Provide
  Arbitrary<byte[]> bytes() {
    return Arbitraries.of(
            0x00, 0x41, 0x7F, 0x80, 0x8F, 0x90, 0x9F, 0xA0, 0xBF, 0xC0, 0xC1, 0xC2, 0xDF, 0xE0,
            0xE1, 0xEC, 0xED, 0xEE, 0xEF, 0xF0, 0xF1, 0xF3, 0xF4, 0xF5, 0xFE, 0xFF)
        .map(Integer::byteValue)
        .array(byte[].class)
        .ofMaxSize(5);
  }

  @Property(seed = "1", tries = 20_000)
  void isSoundWhereTheJdkCanDecodeIt(@ForAll("bytes") byte[] bytes) {
    assertEquals(isDecoded(bytes), Utf8.isSound(bytes));
  }

  @Test
  void everyCharacterOfItsOwnIsSound() {
    for (int c = 0; c <= Character.MAX_CODE_POINT; c++) {
      boolean half = c >= Character.MIN_SURROGATE && c <= Character.MAX_SURROGATE;
      if (!half) {
        byte[] bytes = Character.toString(c).getBytes(StandardCharsets.UTF_8);
        assertTrue(Utf8.isSound(bytes), Integer.toHexString(c));
      }
    }
  }

  private static boolean isDecoded(byte[] bytes) {
    try {
      StandardCharsets.UTF_8.newDecoder().decode(ByteBuffer.wrap(bytes));
      return true;
    } catch (CharacterCodingException e) {
      return false;
    }
  }
}
