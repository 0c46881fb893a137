package merese.desk.shelf;

import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;
import java.util.Optional;

/**
 * The bytes of a file as a form can hold them. A form sends every end of a line as CR LF, and
 * cannot hold what is no text; so the ends of lines are put back as the file has them, and a file
 * that would not come back as it went out is not opened.
 *
 * @param text with LF at the ends of lines
 * @param windows whether the file has CR LF there
 * @param hash of the bytes
 * @param closed why a form cannot hold it
 */
record FileText(String text, boolean windows, String hash, Optional<String> closed) {
  /** A form may bring 4 MB, in which a byte can take up three. */
  private static final int MOST = 1_200_000;

  static FileText of(byte[] bytes) {
    String hash = hash(bytes);
    if (bytes.length > MOST) {
      return closed(hash, "is larger than can be edited in a page");
    }
    String all;
    try {
      all = StandardCharsets.UTF_8.newDecoder().decode(ByteBuffer.wrap(bytes)).toString();
    } catch (CharacterCodingException e) {
      return closed(hash, "is not in UTF-8");
    }
    String text = plain(all);
    boolean windows = all.contains("\r\n");
    boolean whole = all.equals(windows ? text.replace("\n", "\r\n") : text);
    if (!whole || text.indexOf('\0') >= 0) {
      return closed(hash, "has characters that a page cannot hold");
    }
    return new FileText(text, windows, hash, Optional.empty());
  }

  private static FileText closed(String hash, String why) {
    return new FileText(
        "", false, hash, Optional.of("This file " + why + ". Edit it with an editor of texts."));
  }

  /** Text as a form sends it, with LF at the ends of lines. */
  static String plain(String typed) {
    return typed.replace("\r\n", "\n").replace('\r', '\n');
  }

  /** What was typed, with the ends of lines of this file. */
  byte[] bytes(String typed) {
    return (windows ? typed.replace("\n", "\r\n") : typed).getBytes(StandardCharsets.UTF_8);
  }

  private static String hash(byte[] bytes) {
    try {
      return HexFormat.of().formatHex(MessageDigest.getInstance("SHA-256").digest(bytes));
    } catch (NoSuchAlgorithmException e) {
      throw new IllegalStateException(e);
    }
  }
}
