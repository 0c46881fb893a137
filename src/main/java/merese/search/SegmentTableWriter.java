package merese.search;

import static org.apache.lucene.search.DocIdSetIterator.NO_MORE_DOCS;

import java.io.BufferedOutputStream;
import java.io.DataOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.Map;
import org.apache.lucene.index.BinaryDocValues;
import org.apache.lucene.index.LeafReader;
import org.apache.lucene.index.PostingsEnum;
import org.apache.lucene.index.Terms;
import org.apache.lucene.index.TermsEnum;
import org.apache.lucene.util.BytesRef;

/**
 * Writes a segment out as its {@link SegmentTable}. Documents and terms are passed on one by one;
 * what grows with the segment is a few bytes a document and a term.
 */
final class SegmentTableWriter {
  private static final int MOST_SLOTS = 1 << 30;

  private final DataOutputStream out;
  private long written;
  private final Map<BytesRef, Integer> owners = new LinkedHashMap<>();

  /** The slot of each term among so many that any number is fewer. */
  private final Starts hashed = new Starts();

  private SegmentTableWriter(DataOutputStream out) {
    this.out = out;
  }

  static void write(LeafReader segment, Path file) throws IOException {
    try (DataOutputStream out =
        new DataOutputStream(new BufferedOutputStream(Files.newOutputStream(file), 1 << 16))) {
      new SegmentTableWriter(out).write(segment);
    }
  }

  private void write(LeafReader segment) throws IOException {
    int[] rows = payloads(segment);
    int documentsAt = at();
    for (int value : rows) {
      writeInt(value);
    }
    Starts ownerStarts = new Starts();
    for (BytesRef owner : owners.keySet()) {
      ownerStarts.add(at());
      write(owner.bytes, owner.offset, owner.length);
    }
    ownerStarts.add(at());
    int ownersAt = write(ownerStarts);
    Starts termStarts = new Starts();
    for (String field : Fields.ASKED.stream().sorted().toList()) {
      Terms terms = segment.terms(field);
      if (terms != null) {
        terms(field, terms.iterator(), termStarts);
      }
    }
    int termsAt = write(termStarts);
    int slotsAt = at();
    int[] slots = slots();
    for (int number : slots) {
      writeInt(number);
    }
    writeInt(segment.maxDoc());
    writeInt(documentsAt);
    writeInt(owners.size());
    writeInt(ownersAt);
    writeInt(termStarts.count);
    writeInt(termsAt);
    writeInt(slots.length);
    writeInt(slotsAt);
  }

  /** Half of the slots or more are free. */
  private int[] slots() {
    int size = Integer.highestOneBit(Math.max(1, hashed.count)) << 2;
    int[] slots = new int[size];
    for (int i = 0; i < hashed.count; i++) {
      int slot = hashed.all[i] & size - 1;
      while (slots[slot] != 0) {
        slot = slot + 1 & size - 1;
      }
      slots[slot] = i + 1;
    }
    return slots;
  }

  /** Writes what the documents give back; returns owner, order and start of each. */
  private int[] payloads(LeafReader segment) throws IOException {
    int[] rows = new int[3 * segment.maxDoc()];
    BinaryDocValues stored = segment.getBinaryDocValues(Fields.STORED);
    BytesRef last = null;
    int number = -1;
    for (int id = 0; id < segment.maxDoc(); id++) {
      stored.advanceExact(id);
      BytesRef value = stored.binaryValue();
      int head = StoredValue.ownerLength(value.bytes, value.offset);
      BytesRef owner = new BytesRef(value.bytes, value.offset, head);
      if (!owner.equals(last)) { // the documents of one edition mostly follow each other
        last = BytesRef.deepCopyOf(owner);
        Integer known = owners.putIfAbsent(last, owners.size());
        number = known == null ? owners.size() - 1 : known;
      }
      rows[3 * id] = number;
      rows[3 * id + 1] = StoredValue.number(value.bytes, value.offset + head);
      rows[3 * id + 2] = at();
      int from = head + Integer.BYTES;
      write(value.bytes, value.offset + from, value.length - from);
    }
    return rows;
  }

  private void terms(String field, TermsEnum terms, Starts starts) throws IOException {
    byte[] prefix = (field + '\0').getBytes(StandardCharsets.UTF_8);
    PostingsEnum postings = null;
    for (BytesRef text = terms.next(); text != null; text = terms.next()) {
      starts.add(at());
      writeInt(prefix.length + text.length);
      write(prefix, 0, prefix.length);
      write(text.bytes, text.offset, text.length);
      byte[] whole = Arrays.copyOf(prefix, prefix.length + text.length);
      System.arraycopy(text.bytes, text.offset, whole, prefix.length, text.length);
      hashed.add(SegmentTable.slot(whole, MOST_SLOTS));
      writeInt(terms.docFreq());
      postings = terms.postings(postings, PostingsEnum.NONE);
      for (int id = postings.nextDoc(); id != NO_MORE_DOCS; id = postings.nextDoc()) {
        writeInt(id);
      }
    }
  }

  private int write(Starts starts) throws IOException {
    int at = at();
    for (int i = 0; i < starts.count; i++) {
      writeInt(starts.all[i]);
    }
    return at;
  }

  private int at() throws IOException {
    if (written > Integer.MAX_VALUE) {
      throw new IOException("a segment of the index is too large");
    }
    return (int) written;
  }

  private void writeInt(int value) throws IOException {
    out.writeInt(value);
    written += Integer.BYTES;
  }

  private void write(byte[] bytes, int from, int length) throws IOException {
    out.write(bytes, from, length);
    written += length;
  }

  /** Where some things start. */
  private static final class Starts {
    private int[] all = new int[1 << 10];
    private int count;

    void add(int start) {
      if (count == all.length) {
        all = Arrays.copyOf(all, 2 * count);
      }
      all[count++] = start;
    }
  }
}
