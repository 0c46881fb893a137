package merese.store;

import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;

/** What a file held, in 64 letters: SHA-256 (FIPS 180-4) in hexadecimal. */
final class Hash {
  /** Of a file that is not there. */
  static final String NONE = "-";

  private Hash() {}

  /**
   * @param bytes null where there is no file
   */
  static String of(byte[] bytes) {
    if (bytes == null) {
      return NONE;
    }
    try {
      return HexFormat.of().formatHex(MessageDigest.getInstance("SHA-256").digest(bytes));
    } catch (NoSuchAlgorithmException e) {
      throw new IllegalStateException("every Java has SHA-256", e);
    }
  }
}
