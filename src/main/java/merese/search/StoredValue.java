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
    return of(value.bytes, value.offset, value.length, arrival);
  }

  static StoredValue of(byte[] bytes, int from, int length, int arrival) {
    ByteBuffer value = ByteBuffer.wrap(bytes, from, length);
    String file = text(bytes, value);
    String edition = text(bytes, value);
    int order = value.getInt();
    byte[] payload = Arrays.copyOfRange(bytes, value.position(), from + length);
    return new StoredValue(file, edition, order, arrival, payload);
  }

  private static String text(byte[] bytes, ByteBuffer value) {
    int length = value.getInt();
    String text = new String(bytes, value.position(), length, StandardCharsets.UTF_8);
    value.position(value.position() + length);
    return text;
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
