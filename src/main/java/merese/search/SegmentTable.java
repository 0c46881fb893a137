package merese.search;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.channels.FileChannel.MapMode;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.Arrays;
import java.util.BitSet;
import java.util.List;
import merese.search.Hits.Owner;

/**
 * The postings and values of one of Lucene's segments, as {@link SegmentTableWriter} has written
 * them out. A segment never changes, so neither does its table: which of its documents have been
 * deleted since, {@link CommitTables} knows.
 *
 * <pre>
 * payloads  the bytes that the documents give back, one after another
 * documents for each: int owner, int order, int start of its payload
 * owners    what a value begins with, one after another
 * starts    int start of each owner, and where the last one ends
 * terms     int length, its UTF-8, int count, int number of each document; one after another
 * starts    int start of each term, in their order
 * slots     int number of a term, from 1, in the first free slot from that of its hash on; else 0
 * end       int documents, int where they are; the same of owners' and terms' starts, and of slots
 * </pre>
 */
final class SegmentTable {
  static final int DOCUMENT = 3 * Integer.BYTES;
  static final int END = 8 * Integer.BYTES;

  /** A smaller file is read at once, a larger one as it is asked. */
  private static final int READ_WHOLE = 4 << 20;

  private final ByteBuffer bytes;

  /** The same; null where the file is read as it is asked. */
  private final byte[] whole;

  /** Null where all documents are there. */
  private final BitSet live;

  private final int documents;
  private final int documentsAt;
  private final Owner[] owners;
  private final int ownersAt;
  private final int terms;
  private final int termsAt;
  private final int slots;
  private final int slotsAt;

  private SegmentTable(ByteBuffer bytes, byte[] whole, BitSet live) {
    this.bytes = bytes;
    this.whole = whole;
    this.live = live;
    int end = bytes.limit() - END;
    documents = bytes.getInt(end);
    documentsAt = bytes.getInt(end + 4);
    owners = new Owner[bytes.getInt(end + 8)];
    ownersAt = bytes.getInt(end + 12);
    terms = bytes.getInt(end + 16);
    termsAt = bytes.getInt(end + 20);
    slots = bytes.getInt(end + 24);
    slotsAt = bytes.getInt(end + 28);
  }

  /**
   * Opens a table.
   *
   * @param live the numbers of the documents that are still there; null for all
   */
  static SegmentTable open(Path file, BitSet live) throws IOException {
    if (Files.size(file) < READ_WHOLE) {
      byte[] whole = Files.readAllBytes(file);
      return new SegmentTable(ByteBuffer.wrap(whole), whole, live);
    }
    try (FileChannel channel = FileChannel.open(file, StandardOpenOption.READ)) {
      return new SegmentTable(channel.map(MapMode.READ_ONLY, 0, channel.size()), null, live);
    }
  }

  /** The numbers of the documents that have at least one of the terms, as they are stored. */
  BitSet having(List<String> wanted) {
    BitSet found = new BitSet();
    for (String term : wanted) {
      int at = find(term);
      if (at >= 0) {
        int count = bytes.getInt(at);
        for (int i = 1; i <= count; i++) {
          found.set(bytes.getInt(at + 4 * i));
        }
      }
    }
    if (live != null) {
      found.and(live);
    }
    return found;
  }

  /** The numbers of the documents of a selection. */
  BitSet having(Postings.Selection selection) {
    BitSet found = null;
    for (List<String> anyOf : selection.allOf()) {
      if (found == null) {
        found = having(anyOf);
      } else {
        found.and(having(anyOf));
      }
    }
    found.andNot(having(List.of(selection.without())));
    return found;
  }

  int count(String term) {
    int at = find(term);
    if (at < 0) {
      return 0;
    }
    int all = bytes.getInt(at);
    if (live == null) {
      return all;
    }
    int count = 0;
    for (int i = 1; i <= all; i++) {
      count += live.get(bytes.getInt(at + 4 * i)) ? 1 : 0;
    }
    return count;
  }

  /** The first document that has a term; -1 for none. */
  int any(String term) {
    int at = find(term);
    int count = at < 0 ? 0 : bytes.getInt(at);
    for (int i = 1; i <= count; i++) {
      int document = bytes.getInt(at + 4 * i);
      if (live == null || live.get(document)) {
        return document;
      }
    }
    return -1;
  }

  /**
   * What a document gives back.
   *
   * @param arrival its number among the documents of all segments
   */
  StoredValue value(int document, int arrival) {
    int row = documentsAt + DOCUMENT * document;
    Owner owner = owner(bytes.getInt(row));
    int from = bytes.getInt(row + 8);
    int to = document + 1 < documents ? bytes.getInt(row + DOCUMENT + 8) : documentsAt;
    byte[] payload = new byte[to - from];
    bytes.get(from, payload);
    return new StoredValue(owner, bytes.getInt(row + 4), arrival, payload);
  }

  /** What a document is of. */
  Owner ownerOf(int document) {
    return owner(bytes.getInt(documentsAt + DOCUMENT * document));
  }

  /** Many notes are of one edition. */
  private Owner owner(int number) {
    Owner owner = owners[number];
    if (owner == null) {
      int from = bytes.getInt(ownersAt + 4 * number);
      byte[] head = new byte[bytes.getInt(ownersAt + 4 * number + 4) - from];
      bytes.get(from, head);
      owner = StoredValue.owner(head);
      owners[number] = owner;
    }
    return owner;
  }

  /** Adds the terms that begin so to a list, sorted. */
  void addTermsFrom(String begun, int most, List<String> found) {
    byte[] prefix = begun.getBytes(StandardCharsets.UTF_8);
    int full = found.size() + Math.min(most, terms);
    for (int i = firstFrom(prefix); i < terms && found.size() < full; i++) {
      int at = bytes.getInt(termsAt + 4 * i);
      int length = bytes.getInt(at);
      if (length < prefix.length || compare(at + 4, prefix.length, prefix) != 0) {
        break;
      }
      if (live == null || any(at + 4 + length)) {
        found.add(text(at + 4, length));
      }
    }
  }

  private boolean any(int postings) {
    for (int i = bytes.getInt(postings); i > 0; i--) {
      if (live.get(bytes.getInt(postings + 4 * i))) {
        return true;
      }
    }
    return false;
  }

  private String text(int at, int length) {
    byte[] text = new byte[length];
    bytes.get(at, text);
    return new String(text, StandardCharsets.UTF_8);
  }

  /** How many documents it has, those included that are deleted. */
  int size() {
    return documents;
  }

  /** Where the documents of a term are; negative where no document has it. */
  private int find(String term) {
    byte[] wanted = term.getBytes(StandardCharsets.UTF_8);
    for (int slot = slot(wanted, slots); ; slot = slot + 1 & slots - 1) {
      int number = bytes.getInt(slotsAt + 4 * slot);
      if (number == 0) {
        return -1;
      }
      if (compareTerm(number - 1, wanted) == 0) {
        int at = bytes.getInt(termsAt + 4 * (number - 1));
        return at + 4 + bytes.getInt(at);
      }
    }
  }

  /**
   * Where a term is looked for first.
   *
   * @param slots how many there are, a power of two
   */
  static int slot(byte[] term, int slots) {
    int hash = 0;
    for (byte letter : term) {
      hash = 31 * hash + letter;
    }
    hash *= 0x9E3779B9; // spreads what is alike
    return (hash ^ hash >>> 16) & slots - 1;
  }

  /** The number of the first term that does not sort before this one. */
  private int firstFrom(byte[] term) {
    int low = 0;
    int high = terms;
    while (low < high) {
      int middle = (low + high) >>> 1;
      if (compareTerm(middle, term) < 0) {
        low = middle + 1;
      } else {
        high = middle;
      }
    }
    return low;
  }

  private int compareTerm(int index, byte[] term) {
    int at = bytes.getInt(termsAt + 4 * index);
    return compare(at + 4, bytes.getInt(at), term);
  }

  private int compare(int at, int length, byte[] term) {
    if (whole != null) {
      return Arrays.compareUnsigned(whole, at, at + length, term, 0, term.length);
    }
    int common = Math.min(length, term.length);
    int i = 0;
    while (i + Long.BYTES <= common && bytes.getLong(at + i) == eight(term, i)) {
      i += Long.BYTES;
    }
    for (; i < common; i++) {
      int difference = (bytes.get(at + i) & 0xFF) - (term[i] & 0xFF);
      if (difference != 0) {
        return difference;
      }
    }
    return length - term.length;
  }

  private static long eight(byte[] term, int from) {
    long upper = StoredValue.number(term, from);
    return upper << Integer.SIZE | StoredValue.number(term, from + Integer.BYTES) & 0xFFFFFFFFL;
  }
}
