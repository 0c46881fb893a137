package merese.search;

import static java.nio.file.StandardOpenOption.CREATE;
import static java.nio.file.StandardOpenOption.TRUNCATE_EXISTING;
import static java.nio.file.StandardOpenOption.WRITE;
import static org.apache.lucene.search.DocIdSetIterator.NO_MORE_DOCS;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.channels.FileChannel;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.BitSet;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import merese.search.Hits.Owner;
import merese.search.SegmentTable.Term;
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
  /** Of so many editions one is few. */
  private static final int FEW = 256;

  private final LeafReader segment;
  private final FileChannel out;
  private final ByteBuffer buffer =
      ByteBuffer.allocateDirect(1 << 18).order(ByteOrder.LITTLE_ENDIAN);

  /** How much was written out of the buffer. */
  private long written;

  /** What documents are of, as they are met. */
  private final List<BytesRef> owners = new ArrayList<>();

  /** By such an owner: its first document where it is an edition, else -1. */
  private final Numbers firsts = new Numbers();

  private final Numbers ends = new Numbers();

  /** How many of the owners are editions, and the number of each owner in the table. */
  private int editions;

  private int[] ranks;

  /** By document: its owner, by its number in the table. */
  private final int[] ownerOf;

  private final int[] orders;

  /** The hash of each term. */
  private final Numbers hashes = new Numbers();

  private SegmentTableWriter(LeafReader segment, FileChannel out) {
    this.segment = segment;
    this.out = out;
    ownerOf = new int[segment.maxDoc()];
    orders = new int[segment.maxDoc()];
  }

  static void write(LeafReader segment, Path file) throws IOException {
    try (FileChannel out = FileChannel.open(file, CREATE, TRUNCATE_EXISTING, WRITE)) {
      SegmentTableWriter writer = new SegmentTableWriter(segment, out);
      writer.write();
      writer.flush();
    }
  }

  private void write() throws IOException {
    Numbers payloads = payloads();
    Owner[] read = editionsRead();
    List<Integer> byRank = rank(read);
    Numbers ownerStarts = new Numbers();
    for (int met : byRank) {
      ownerStarts.add(at());
      BytesRef owner = owners.get(met);
      write(owner.bytes, owner.offset, owner.length);
    }
    ownerStarts.add(at());
    Numbers termStarts = new Numbers();
    for (String field : Fields.ASKED.stream().sorted().toList()) {
      Terms terms = segment.terms(field);
      if (terms != null) {
        terms(field, terms.iterator(), termStarts);
      }
    }
    align();
    int documentsAt = write(ownerOf, ownerOf.length);
    write(orders, orders.length);
    write(payloads);
    int ownersAt = write(ownerStarts);
    int termsAt = write(termStarts);
    int[] slots = slots();
    align();
    int slotsAt = at();
    for (int number : slots) {
      writeInt(number == 0 ? 0 : termStarts.all[number - 1]);
      writeInt(number == 0 ? 0 : hashes.all[number - 1]);
    }
    long[] marks = marks();
    align();
    int marksAt = at();
    for (long word : marks) {
      writeLong(word);
    }
    int editionsAt = at();
    editions(byRank, read);
    for (int number :
        new int[] {
          segment.maxDoc(),
          documentsAt,
          termStarts.count,
          termsAt,
          slots.length,
          slotsAt,
          editions,
          editionsAt,
          ownersAt,
          marks.length,
          marksAt
        }) {
      writeInt(number);
    }
  }

  /** Half of the slots or more are free. */
  private int[] slots() {
    int size = Integer.highestOneBit(Math.max(1, hashes.count)) << 2;
    int[] slots = new int[size];
    for (int i = 0; i < hashes.count; i++) {
      int slot = hashes.all[i] & size - 1;
      while (slots[slot] != 0) {
        slot = slot + 1 & size - 1;
      }
      slots[slot] = i + 1;
    }
    return slots;
  }

  /** Sixteen bits or more a term: of a hundred terms that are not there three or so seem to be. */
  private long[] marks() {
    long[] marks = new long[Math.max(1, Integer.highestOneBit(hashes.count) >> 1)];
    for (int i = 0; i < hashes.count; i++) {
      marks[Term.markedAt(hashes.all[i], marks.length)] |= Term.marks(hashes.all[i]);
    }
    return marks;
  }

  /** Writes what the documents give back, and takes note of what they are of. */
  private Numbers payloads() throws IOException {
    BitSet briefs = briefs();
    Numbers starts = new Numbers();
    BinaryDocValues stored = segment.getBinaryDocValues(Fields.STORED);
    Map<BytesRef, Integer> known = new HashMap<>();
    int met = -1;
    for (int id = 0; id < ownerOf.length; id++) {
      stored.advanceExact(id);
      BytesRef value = stored.binaryValue();
      int head = StoredValue.ownerLength(value.bytes, value.offset);
      BytesRef owner = new BytesRef(value.bytes, value.offset, head);
      boolean isBrief = briefs.get(id);
      if (isBrief || met < 0 || !owner.equals(owners.get(met))) { // most follow each other
        met = isBrief ? -1 : known.getOrDefault(owner, -1);
        if (met < 0) {
          met = owners.size();
          BytesRef copy = BytesRef.deepCopyOf(owner);
          owners.add(copy);
          known.put(copy, met);
          firsts.add(isBrief ? id : -1);
          ends.add(id);
        }
      }
      ends.all[met] = id + 1;
      ownerOf[id] = met;
      orders[id] = StoredValue.number(value.bytes, value.offset + head);
      starts.add(at());
      int from = head + Integer.BYTES;
      write(value.bytes, value.offset + from, value.length - from);
    }
    starts.add(at());
    return starts;
  }

  /** The documents that an edition's stretch begins with. */
  private BitSet briefs() throws IOException {
    BitSet briefs = new BitSet(ownerOf.length);
    PostingsEnum postings =
        segment.postings(new org.apache.lucene.index.Term(Fields.TYPE, Fields.SOURCE));
    if (postings != null) {
      for (int id = postings.nextDoc(); id != NO_MORE_DOCS; id = postings.nextDoc()) {
        briefs.set(id);
      }
    }
    return briefs;
  }

  /** The editions among the owners; null for the others. */
  private Owner[] editionsRead() {
    Owner[] read = new Owner[owners.size()];
    for (int met = 0; met < read.length; met++) {
      if (firsts.all[met] >= 0) {
        read[met] = StoredValue.owner(owners.get(met).bytes); // a copy: it begins at 0
      }
    }
    return read;
  }

  /** Numbers the editions by their standing, and then the other owners as they were met. */
  private List<Integer> rank(Owner[] read) {
    List<Integer> byRank = new ArrayList<>();
    List<Integer> others = new ArrayList<>();
    for (int met = 0; met < owners.size(); met++) {
      (read[met] == null ? others : byRank).add(met);
    }
    byRank.sort((a, b) -> Arrays.compareUnsigned(read[a].standing(), read[b].standing()));
    editions = byRank.size();
    byRank.addAll(others);
    ranks = new int[owners.size()];
    for (int rank = 0; rank < ranks.length; rank++) {
      ranks[byRank.get(rank)] = rank;
    }
    for (int id = 0; id < ownerOf.length; id++) {
      ownerOf[id] = ranks[ownerOf[id]];
    }
    return byRank;
  }

  private void editions(List<Integer> byRank, Owner[] read) throws IOException {
    Map<String, Integer> works = new HashMap<>();
    for (int met : byRank.subList(0, editions)) {
      Integer known = works.putIfAbsent(read[met].file(), works.size());
      writeInt(firsts.all[met]);
      writeInt(ends.all[met]);
      writeInt(known == null ? works.size() - 1 : known);
    }
  }

  private void terms(String field, TermsEnum terms, Numbers starts) throws IOException {
    byte[] prefix = (field + '\0').getBytes(StandardCharsets.UTF_8);
    boolean bySource = Fields.BY_SOURCE.contains(field);
    Numbers documents = new Numbers();
    PostingsEnum postings = null;
    for (BytesRef text = terms.next(); text != null; text = terms.next()) {
      byte[] whole = Arrays.copyOf(prefix, prefix.length + text.length);
      System.arraycopy(text.bytes, text.offset, whole, prefix.length, text.length);
      hashes.add(Term.hash(whole));
      align();
      starts.add(at());
      writeInt(starts.count - 1);
      writeInt(whole.length);
      write(whole, 0, whole.length);
      align();
      documents.count = 0;
      postings = terms.postings(postings, PostingsEnum.NONE);
      for (int id = postings.nextDoc(); id != NO_MORE_DOCS; id = postings.nextDoc()) {
        documents.add(id);
      }
      writeNumbers(documents, segment.maxDoc());
      if (bySource) {
        writeNumbers(editionsOf(documents), editions);
      }
    }
  }

  private Numbers editionsOf(Numbers documents) {
    Numbers found = new Numbers();
    if (documents.count > editions / FEW) { // sooner thrown together than sorted
      BitSet all = new BitSet(editions);
      for (int i = 0; i < documents.count; i++) {
        if (ownerOf[documents.all[i]] < editions) {
          all.set(ownerOf[documents.all[i]]);
        }
      }
      for (int edition = all.nextSetBit(0); edition >= 0; edition = all.nextSetBit(edition + 1)) {
        found.add(edition);
      }
      return found;
    }
    int[] all = new int[documents.count];
    for (int i = 0; i < all.length; i++) {
      all[i] = ownerOf[documents.all[i]];
    }
    Arrays.sort(all);
    int last = -1;
    for (int owner : all) {
      if (owner != last && owner < editions) {
        found.add(owner);
        last = owner;
      }
    }
    return found;
  }

  private void writeNumbers(Numbers numbers, int of) throws IOException {
    writeInt(numbers.count);
    if (!NumberSet.isMany(numbers.count, of)) {
      write(numbers);
      return;
    }
    long[] bits = new long[NumberSet.longs(of)];
    for (int i = 0; i < numbers.count; i++) {
      bits[numbers.all[i] >> 6] |= 1L << numbers.all[i];
    }
    align();
    for (long word : bits) {
      writeLong(word);
    }
  }

  /** Goes on at a multiple of eight. */
  private void align() throws IOException {
    require(Long.BYTES);
    for (int left = -at() & Long.BYTES - 1; left > 0; left--) {
      buffer.put((byte) 0);
    }
  }

  private void writeLong(long word) throws IOException {
    require(Long.BYTES);
    buffer.putLong(word);
  }

  private void require(int bytes) throws IOException {
    if (buffer.remaining() < bytes) {
      flush();
    }
  }

  private void flush() throws IOException {
    buffer.flip();
    written += buffer.remaining();
    while (buffer.hasRemaining()) {
      out.write(buffer);
    }
    buffer.clear();
  }

  private int write(Numbers numbers) throws IOException {
    return write(numbers.all, numbers.count);
  }

  private int write(int[] numbers, int count) throws IOException {
    int at = at();
    for (int i = 0; i < count; i++) {
      writeInt(numbers[i]);
    }
    return at;
  }

  private int at() throws IOException {
    long at = written + buffer.position();
    if (at > Integer.MAX_VALUE) {
      throw new IOException("a segment of the index is too large");
    }
    return (int) at;
  }

  private void writeInt(int value) throws IOException {
    require(Integer.BYTES);
    buffer.putInt(value);
  }

  private void write(byte[] bytes, int from, int length) throws IOException {
    int start = from;
    int left = length;
    while (left > buffer.remaining()) {
      int part = buffer.remaining();
      buffer.put(bytes, start, part);
      start += part;
      left -= part;
      flush();
    }
    buffer.put(bytes, start, left);
  }

  /** Any number of ints. */
  private static final class Numbers {
    private int[] all = new int[16];
    private int count;

    void add(int number) {
      if (count == all.length) {
        all = Arrays.copyOf(all, 2 * count);
      }
      all[count++] = number;
    }
  }
}
