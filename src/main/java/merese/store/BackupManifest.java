package merese.store;

import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;
import java.util.Map;
import java.util.TreeMap;

/**
 * The list of a backup's files with the SHA-256 (FIPS 180-4) of each: a line a file, the sum in
 * hexadecimal, two spaces and the path, as in the manifests of RFC 8493, and a last line that says
 * how many there are. It can be checked without this program.
 */
final class BackupManifest {
  static final String NAME = "manifest-sha256.txt";

  /** What every path in a backup starts with. */
  static final String TOP = "library/";

  /** A line for a million files. */
  static final int LARGEST = 300 << 20;

  private static final String LAST = "# files: ";
  private static final int SUM = 64;
  private static final int BUFFER = 1 << 16;

  private final Map<String, String> sums = new TreeMap<>();

  /**
   * @throws IllegalArgumentException where these are not the bytes of one
   */
  static BackupManifest of(byte[] bytes) {
    BackupManifest manifest = new BackupManifest();
    String text;
    try {
      text = StandardCharsets.UTF_8.newDecoder().decode(ByteBuffer.wrap(bytes)).toString();
    } catch (CharacterCodingException e) {
      throw new IllegalArgumentException("it is no text", e);
    }
    int from = 0;
    int end = text.indexOf('\n');
    while (end >= 0) {
      String line = text.substring(from, end);
      from = end + 1;
      end = text.indexOf('\n', from);
      if (line.equals(LAST + manifest.size()) && from == text.length()) {
        return manifest;
      }
      boolean whole = line.length() > SUM + 2 && line.startsWith("  ", SUM);
      if (!whole || manifest.sums.put(line.substring(SUM + 2), line.substring(0, SUM)) != null) {
        throw new IllegalArgumentException("a line of it is damaged");
      }
    }
    throw new IllegalArgumentException("it is cut short");
  }

  byte[] bytes() {
    StringBuilder out = new StringBuilder();
    for (Map.Entry<String, String> file : sums.entrySet()) {
      out.append(file.getValue()).append("  ").append(file.getKey()).append('\n');
    }
    out.append(LAST).append(sums.size()).append('\n');
    return out.toString().getBytes(StandardCharsets.UTF_8);
  }

  int size() {
    return sums.size();
  }

  /** The sum of a path; null for one that is not in it. */
  String sum(String path) {
    return sums.get(path);
  }

  /** Copies a file and notes its sum; see {@link #copy(InputStream, OutputStream, long)}. */
  long copy(String path, InputStream in, OutputStream out, long most) throws IOException {
    for (int i = 0; i < path.length(); i++) {
      if (Character.isISOControl(path.charAt(i))) {
        throw new IOException("the name of this file has a control character in it; rename it");
      }
    }
    Copied copied = copy(in, out, most);
    sums.put(path, copied.sum());
    return copied.bytes();
  }

  /** What was copied. */
  record Copied(long bytes, String sum) {}

  /**
   * Copies a stream and sums it up.
   *
   * @throws IOException where there is more in it than {@code most} bytes
   */
  static Copied copy(InputStream in, OutputStream out, long most) throws IOException {
    MessageDigest digest = digest();
    byte[] buffer = new byte[BUFFER];
    long copied = 0;
    for (int read = in.read(buffer); read >= 0; read = in.read(buffer)) {
      copied += read;
      if (copied > most) {
        throw new IOException("there is more in it than it says");
      }
      digest.update(buffer, 0, read);
      out.write(buffer, 0, read);
    }
    return new Copied(copied, HexFormat.of().formatHex(digest.digest()));
  }

  private static MessageDigest digest() {
    try {
      return MessageDigest.getInstance("SHA-256");
    } catch (NoSuchAlgorithmException e) {
      throw new IllegalStateException("every Java has SHA-256", e);
    }
  }
}
