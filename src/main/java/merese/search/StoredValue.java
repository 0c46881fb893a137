package merese.search;

import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import org.apache.lucene.util.BytesRef;

/**
 * What a document gives back. Values sort by file, edition and order, then as they came in.
 *
 * @param edition empty for what belongs to no edition
 * @param order among the notes of the edition, from 0; 0 for what is no note
 * @param arrival the document's number
 */
record StoredValue(String file, String edition, int order, int arrival, byte[] payload)
    implements Comparable<StoredValue> {

  /** A document's value: its sort keys, then what a caller gave. */
  static byte[] bytes(String file, String edition, int order, byte[] payload) {
    byte[] path = file.getBytes(StandardCharsets.UTF_8);
    byte[] key = edition.getBytes(StandardCharsets.UTF_8);
    ByteBuffer bytes = ByteBuffer.allocate(12 + path.length + key.length + payload.length);
    bytes.putInt(path.length).put(path).putInt(key.length).put(key).putInt(order).put(payload);
    return bytes.array();
  }

  static StoredValue of(BytesRef value, int arrival) {
    byte[] bytes = value.bytes;
    int next = value.offset + 4 + number(bytes, value.offset);
    int order = value.offset + headLength(bytes, value.offset);
    return new StoredValue(
        text(bytes, value.offset),
        text(bytes, next),
        number(bytes, order),
        arrival,
        Arrays.copyOfRange(bytes, order + 4, value.offset + value.length));
  }

  /** How many bytes the file and the edition take at the start of a value. */
  static int headLength(byte[] bytes, int from) {
    int first = 4 + number(bytes, from);
    return first + 4 + number(bytes, from + first);
  }

  /** A big-endian number of four bytes. */
  static int number(byte[] bytes, int from) {
    return bytes[from] << 24
        | (bytes[from + 1] & 0xFF) << 16
        | (bytes[from + 2] & 0xFF) << 8
        | bytes[from + 3] & 0xFF;
  }

  private static String text(byte[] bytes, int from) {
    return new String(bytes, from + 4, number(bytes, from), StandardCharsets.UTF_8);
  }

  static byte[] payload(FileStamp stamp) {
    byte[] hash = stamp.hash().getBytes(StandardCharsets.UTF_8);
    ByteBuffer bytes = ByteBuffer.allocate(17 + hash.length);
    bytes.putLong(stamp.size()).putLong(stamp.modified());
    return bytes.put((byte) (stamp.settled() ? 1 : 0)).put(hash).array();
  }

  static FileStamp stamp(StoredValue value) {
    ByteBuffer bytes = ByteBuffer.wrap(value.payload);
    long size = bytes.getLong();
    long modified = bytes.getLong();
    boolean settled = bytes.get() == 1;
    String hash = new String(value.payload, 17, value.payload.length - 17, StandardCharsets.UTF_8);
    return new FileStamp(value.file, size, modified, hash, settled);
  }

  @Override
  public int compareTo(StoredValue other) {
    int byFile = file.compareTo(other.file);
    if (byFile != 0) {
      return byFile;
    }
    int byEdition = edition.compareTo(other.edition);
    if (byEdition != 0) {
      return byEdition;
    }
    return order != other.order
        ? Integer.compare(order, other.order)
        : Integer.compare(arrival, other.arrival);
  }
}
