package merese.search;

import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import merese.search.Hits.NoteHit;
import merese.search.Hits.Owner;
import org.apache.lucene.util.BytesRef;

/**
 * What a document gives back. Values sort by file, edition and order, then as they came in.
 *
 * @param order among the notes of the edition, from 0; 0 for what is no note
 * @param arrival the document's number
 */
record StoredValue(Owner owner, int order, int arrival, byte[] payload)
    implements Comparable<StoredValue> {
  private static final int OWNER_PARTS = 3;

  String file() {
    return owner.file();
  }

  String edition() {
    return owner.edition();
  }

  NoteHit note() {
    return new NoteHit(owner, order, payload);
  }

  /** A document's value: whose it is, its order, then what a caller gave. */
  static byte[] bytes(Owner owner, int order, byte[] payload) {
    byte[] path = owner.file().getBytes(StandardCharsets.UTF_8);
    byte[] key = owner.edition().getBytes(StandardCharsets.UTF_8);
    int size = 16 + path.length + key.length + owner.standing().length + payload.length;
    ByteBuffer bytes = ByteBuffer.allocate(size);
    bytes.putInt(path.length).put(path).putInt(key.length).put(key);
    bytes.putInt(owner.standing().length).put(owner.standing());
    return bytes.putInt(order).put(payload).array();
  }

  static StoredValue of(BytesRef value, int arrival) {
    byte[] bytes = value.bytes;
    int head = ownerLength(bytes, value.offset);
    Owner owner = owner(Arrays.copyOfRange(bytes, value.offset, value.offset + head));
    int order = value.offset + head;
    return new StoredValue(
        owner,
        number(bytes, order),
        arrival,
        Arrays.copyOfRange(bytes, order + 4, value.offset + value.length));
  }

  /** Reads whose a document is. */
  static Owner owner(byte[] bytes) {
    int edition = 4 + number(bytes, 0);
    int standing = edition + 4 + number(bytes, edition);
    return new Owner(
        text(bytes, 0),
        text(bytes, edition),
        Arrays.copyOfRange(bytes, standing + 4, bytes.length));
  }

  /** How many bytes at the start of a value say whose it is. */
  static int ownerLength(byte[] bytes, int from) {
    int length = 0;
    for (int part = 0; part < OWNER_PARTS; part++) {
      length += 4 + number(bytes, from + length);
    }
    return length;
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
    return new FileStamp(value.file(), size, modified, hash, settled);
  }

  @Override
  public int compareTo(StoredValue other) {
    int byFile = file().compareTo(other.file());
    if (byFile != 0) {
      return byFile;
    }
    int byEdition = edition().compareTo(other.edition());
    if (byEdition != 0) {
      return byEdition;
    }
    return order != other.order
        ? Integer.compare(order, other.order)
        : Integer.compare(arrival, other.arrival);
  }
}
