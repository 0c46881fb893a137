package merese.search;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.channels.FileChannel;
import java.nio.channels.FileChannel.MapMode;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import merese.search.Hits.Owner;

/**
 * The postings and values of one of Lucene's segments, as {@link SegmentTableWriter} has written
 * them out. A segment never changes, so neither does its table: which of its documents have been
 * deleted since, {@link CommitTables} knows.
 *
 * <p>An edition with its notes and its checks is a stretch of documents. The editions of a segment
 * are numbered by year, author and key (R4), whatever their documents' order, so that a set of them
 * is a row of bits whose first are the first to be shown. Of the terms in {@link Fields#BY_SOURCE}
 * the editions are listed beside the documents.
 *
 * <pre>
 * payloads  the bytes that the documents give back, one after another
 * owners    what a value begins with, one after another; those of editions first, in their order
 * terms     int number among all, int length, its UTF-8 and zeros up to a multiple of eight, numbers
 *           of documents, for some numbers of editions; one after another, sorted
 * owner     int of each document
 * order     int of each document
 * payload   int start of each document's payload, and where the last one ends
 * starts    int start of each owner, and where the last one ends
 * starts    int start of each term, in their order
 * slots     int start of a term, and int hash, in the first free slot from that of its hash on;
 *           else 0 and 0
 * marks     longs, with three bits for each term in the one of its hash; a term whose bits are not
 *           there is not in the table
 * editions  for each: int first document, int where they end, int number of its work
 * end       int documents, int where the first owner is; the same of terms' starts, of slots and of
 *           editions; int where the owners' starts are; int longs of marks, int where they are
 * </pre>
 *
 * Numbers of documents or editions are an int count and then either ints, in order, or a bit for
 * each that there is, in longs, where that is shorter. Ints and longs have their lowest byte first,
 * and begin at a multiple of their size, zeros before them: Java puts others together byte by byte.
 */
final class SegmentTable {
  static final int EDITION = 3 * Integer.BYTES;
  static final int SLOT = 2 * Integer.BYTES;

  /** What stands before the text of a term. */
  static final int HEAD = 2 * Integer.BYTES;

  static final int END = 11 * Integer.BYTES;

  /** A smaller file is read at once, a larger one as it is asked. */
  private static final int READ_WHOLE = 4 << 20;

  /** So few numbers are read one by one. */
  private static final int FEW = 4;

  private final ByteBuffer bytes;

  /** Null where all documents are there. */
  private final NumberSet live;

  private final int documents;
  private final int documentsAt;
  private final int ownersAt;
  private final int terms;
  private final int termsAt;
  private final int slots;
  private final int slotsAt;
  private final int editions;
  private final int editionsAt;

  private final int marks;
  private final int marksAt;

  /** The editions that are still there; null for all. */
  private NumberSet liveEditions;

  /** The owner that was read last: many documents that follow each other are of one. */
  private Owner last;

  private int lastNumber = -1;

  private SegmentTable(ByteBuffer bytes, NumberSet live) {
    this.bytes = bytes.order(ByteOrder.LITTLE_ENDIAN);
    this.live = live;
    int end = bytes.limit() - END;
    documents = bytes.getInt(end);
    documentsAt = bytes.getInt(end + 4);
    terms = bytes.getInt(end + 8);
    termsAt = bytes.getInt(end + 12);
    slots = bytes.getInt(end + 16);
    slotsAt = bytes.getInt(end + 20);
    editions = bytes.getInt(end + 24);
    editionsAt = bytes.getInt(end + 28);
    ownersAt = bytes.getInt(end + 32);
    marks = bytes.getInt(end + 36);
    marksAt = bytes.getInt(end + 40);
  }

  /**
   * Opens a table.
   *
   * @param live the numbers of the documents that are still there; null for all
   */
  static SegmentTable open(Path file, NumberSet live) throws IOException {
    if (!isMapped(Files.size(file))) {
      return new SegmentTable(ByteBuffer.wrap(Files.readAllBytes(file)), live);
    }
    try (FileChannel channel = FileChannel.open(file, StandardOpenOption.READ)) {
      return new SegmentTable(channel.map(MapMode.READ_ONLY, 0, channel.size()), live);
    }
  }

  /** Whether a table of so many bytes is mapped, and not read at once. */
  static boolean isMapped(long size) {
    return size >= READ_WHOLE;
  }

  /** The numbers of the documents that have at least one of the terms, as they are stored. */
  NumberSet having(List<Term> anyOf) {
    List<NumberSet> found = new ArrayList<>();
    for (int at : find(anyOf)) {
      if (at > 0) {
        found.add(numbers(at, documents));
      }
    }
    return only(NumberSet.anyOf(found, documents), live);
  }

  /** Those of some documents that have at least one of the terms. Of few, each is looked for. */
  NumberSet among(NumberSet some, List<Term> anyOf) {
    if (!some.isFew()) {
      return having(anyOf).and(some);
    }
    List<NumberSet> found = new ArrayList<>();
    if (!some.isEmpty()) {
      for (int at : find(anyOf)) {
        if (at > 0) {
          found.add(among(some, at));
        }
      }
    }
    return NumberSet.anyOf(found, documents);
  }

  private NumberSet among(NumberSet few, int at) {
    int count = bytes.getInt(at);
    if (!NumberSet.isMany(count, documents)) {
      return numbers(at, documents).and(few);
    }
    int bits = aligned(at + 4);
    int[] all = few.numbers();
    int[] found = new int[all.length];
    int size = 0;
    for (int document : all) {
      if ((bytes.getLong(bits + Long.BYTES * (document >> 6)) & 1L << document) != 0) {
        found[size++] = document;
      }
    }
    return NumberSet.of(Arrays.copyOf(found, size));
  }

  /** The numbers of the editions that have a document with at least one of the terms. */
  NumberSet editionsHaving(List<Term> anyOf) {
    List<NumberSet> found = new ArrayList<>();
    for (int at : find(anyOf)) {
      if (at > 0) {
        found.add(numbers(afterNumbers(at), editions));
      }
    }
    return only(NumberSet.anyOf(found, editions), liveEditions());
  }

  /**
   * Where the documents of some terms are; 0 for a term that no document has. One place in a large
   * file is far from the next: all are asked for in each step, so that none waits for the one
   * before.
   */
  private int[] find(List<Term> terms) {
    int[] found = new int[terms.size()];
    for (int i = 0; i < found.length; i++) {
      found[i] = likely(terms.get(i));
    }
    for (int i = 0; i < found.length; i++) {
      Term term = terms.get(i);
      if (found[i] > 0) {
        found[i] = isTermAt(found[i], term) ? afterTerm(found[i], term.bytes.length) : find(term);
      }
    }
    return found;
  }

  /** Where a term may be, unread, by its first slot; 0 where it is nowhere. */
  private int likely(Term term) {
    if (isMissing(term)) {
      return 0;
    }
    int slot = slotsAt + SLOT * (term.hash & slots - 1);
    int at = bytes.getInt(slot);
    return at == 0 || bytes.getInt(slot + 4) == term.hash ? at : start(term);
  }

  private static NumberSet only(NumberSet found, NumberSet alive) {
    return alive == null ? found : found.and(alive);
  }

  /** The numbers of the editions that some documents are of; a document of none is left out. */
  NumberSet editionsOf(NumberSet some) {
    int[] found = new int[some.size()];
    int count = 0;
    int last = -1;
    for (int id : some.numbers()) {
      int owner = bytes.getInt(documentsAt + 4 * id);
      if (owner < editions && owner != last) {
        found[count++] = owner;
        last = owner;
      }
    }
    return editions(Arrays.copyOf(found, count));
  }

  /**
   * @param numbers of editions, in any order; they are sorted
   */
  NumberSet editions(int[] numbers) {
    return NumberSet.sorted(numbers, editions);
  }

  /** The number of the edition that a document is of; negative for none. */
  int editionOf(int document) {
    int owner = bytes.getInt(documentsAt + 4 * document);
    return owner < editions ? owner : -1;
  }

  /** All numbers of the documents of some editions. */
  NumberSet documentsOf(NumberSet some) {
    int count = 0;
    for (int edition : some.numbers()) {
      count += endOf(edition) - firstOf(edition);
    }
    if (NumberSet.isMany(count, documents)) {
      long[] bits = new long[NumberSet.longs(documents)];
      for (int edition : some.numbers()) {
        NumberSet.set(bits, firstOf(edition), endOf(edition));
      }
      return NumberSet.ofBits(bits);
    }
    int[] found = new int[count];
    int size = 0;
    for (int edition : some.numbers()) {
      int end = endOf(edition);
      for (int document = firstOf(edition); document < end; document++) {
        found[size++] = document;
      }
    }
    return NumberSet.sorted(found, documents);
  }

  /** The first document of each of some editions. */
  NumberSet firstsOf(NumberSet some) {
    int[] firsts = new int[some.size()];
    int count = 0;
    for (int edition : some.numbers()) {
      firsts[count++] = firstOf(edition);
    }
    return NumberSet.sorted(firsts, documents);
  }

  /** The first document of an edition: what every answer needs of it. */
  int firstOf(int edition) {
    return bytes.getInt(editionsAt + EDITION * edition);
  }

  /** The number after those of an edition's documents. */
  int endOf(int edition) {
    return bytes.getInt(editionsAt + EDITION * edition + 4);
  }

  /** How many works some editions are of. */
  int works(NumberSet some) {
    int[] works = new int[some.size()];
    int count = 0;
    for (int edition : some.numbers()) {
      works[count++] = bytes.getInt(editionsAt + EDITION * edition + 8);
    }
    return editions(works).size();
  }

  /** The numbers of the editions that are there. */
  NumberSet allEditions() {
    return only(NumberSet.below(editions), liveEditions());
  }

  /** An edition that was taken out has lost all of its documents, so that the deleted tell. */
  private NumberSet liveEditions() {
    if (live != null && liveEditions == null) {
      NumberSet gone = NumberSet.below(documents).without(live);
      liveEditions = NumberSet.below(editions).without(editionsOf(gone));
    }
    return liveEditions;
  }

  /** How many documents have a term. */
  int count(Term term) {
    int at = find(term);
    return at == 0 ? 0 : count(at);
  }

  private int count(int at) {
    return live == null ? bytes.getInt(at) : only(numbers(at, documents), live).size();
  }

  /** The first document that has a term; -1 for none. */
  int any(Term term) {
    int at = find(term);
    return at == 0 ? -1 : any(at);
  }

  private int any(int at) {
    int count = bytes.getInt(at);
    if (count <= FEW && !NumberSet.isMany(count, documents)) {
      for (int i = 1; i <= count; i++) {
        int document = bytes.getInt(at + 4 * i);
        if (live == null || live.contains(document)) {
          return document;
        }
      }
      return -1;
    }
    return only(numbers(at, documents), live).next(0);
  }

  /**
   * Reads numbers.
   *
   * @param limit what all are below
   */
  private NumberSet numbers(int at, int limit) {
    int count = bytes.getInt(at);
    if (NumberSet.isMany(count, limit)) {
      long[] bits = new long[NumberSet.longs(limit)];
      part(aligned(at + 4), Long.BYTES * bits.length).asLongBuffer().get(bits);
      return NumberSet.ofBits(bits);
    }
    int[] numbers = new int[count];
    if (count <= FEW) {
      for (int i = 0; i < count; i++) {
        numbers[i] = bytes.getInt(at + 4 + 4 * i);
      }
    } else {
      part(at + 4, Integer.BYTES * count).asIntBuffer().get(numbers);
    }
    return NumberSet.of(numbers);
  }

  private ByteBuffer part(int at, int length) {
    return bytes.slice(at, length).order(ByteOrder.LITTLE_ENDIAN);
  }

  /** Where the numbers of documents end, and those of editions begin. */
  private int afterNumbers(int at) {
    int count = bytes.getInt(at);
    return NumberSet.isMany(count, documents)
        ? aligned(at + Integer.BYTES) + Long.BYTES * NumberSet.longs(documents)
        : at + Integer.BYTES + Integer.BYTES * count;
  }

  /**
   * What a document gives back.
   *
   * @param arrival its number among the documents of all segments
   */
  StoredValue value(int document, int arrival) {
    int at = documentsAt + 4 * document;
    Owner owner = owner(bytes.getInt(at));
    int order = bytes.getInt(at + 4 * documents);
    return new StoredValue(owner, order, arrival, payload(document));
  }

  byte[] payload(int document) {
    int at = documentsAt + 8 * documents + 4 * document;
    int from = bytes.getInt(at);
    byte[] payload = new byte[bytes.getInt(at + 4) - from];
    bytes.get(from, payload);
    return payload;
  }

  /** What a document is of. */
  Owner ownerOf(int document) {
    return owner(bytes.getInt(documentsAt + 4 * document));
  }

  /**
   * @param number that of an edition, or of what else a document is of
   */
  Owner owner(int number) {
    if (number != lastNumber) {
      int from = bytes.getInt(ownersAt + 4 * number);
      byte[] head = new byte[bytes.getInt(ownersAt + 4 * number + 4) - from];
      bytes.get(from, head);
      last = StoredValue.owner(head);
      lastNumber = number;
    }
    return last;
  }

  /** Adds the terms that begin so to a list, sorted. */
  void addTermsFrom(String begun, int most, List<String> found) {
    byte[] prefix = begun.getBytes(StandardCharsets.UTF_8);
    addTermsFrom(firstFrom(prefix), prefix, most, found);
  }

  /**
   * Counts the documents of the terms that begin with one that is a term itself, but not of that.
   *
   * @param counts takes them
   */
  void countLongerThan(Term term, Map<String, Integer> counts) {
    byte[] prefix = term.bytes;
    int start = start(term);
    if (start == 0) {
      return;
    }
    for (int i = bytes.getInt(start) + 1; i < terms; i++) {
      byte[] longer = term(i);
      if (!beginsWith(longer, prefix)) {
        return;
      }
      int count = count(afterTerm(bytes.getInt(termsAt + 4 * i), longer.length));
      if (count > 0) {
        String text = new String(longer, StandardCharsets.UTF_8);
        Integer known = counts.get(text);
        counts.put(text, known == null ? count : known + count);
      }
    }
  }

  private byte[] term(int number) {
    int at = bytes.getInt(termsAt + 4 * number);
    byte[] term = new byte[bytes.getInt(at + 4)];
    bytes.get(at + HEAD, term);
    return term;
  }

  private static boolean beginsWith(byte[] term, byte[] prefix) {
    return term.length >= prefix.length
        && Arrays.equals(term, 0, prefix.length, prefix, 0, prefix.length);
  }

  private void addTermsFrom(int first, byte[] prefix, int most, List<String> found) {
    int full = found.size() + Math.min(most, terms);
    for (int i = first; i < terms && found.size() < full; i++) {
      byte[] term = term(i);
      if (!beginsWith(term, prefix)) {
        break;
      }
      if (live == null || any(afterTerm(bytes.getInt(termsAt + 4 * i), term.length)) >= 0) {
        found.add(new String(term, StandardCharsets.UTF_8));
      }
    }
  }

  /** How many documents it has, those included that are deleted. */
  int size() {
    return documents;
  }

  /** Where the documents of a term are; 0 where no document has it. */
  private int find(Term term) {
    int at = start(term);
    return at == 0 ? 0 : afterTerm(at, term.bytes.length);
  }

  private static int afterTerm(int at, int length) {
    return at + HEAD + aligned(length);
  }

  /** The multiple of eight that is not below. */
  private static int aligned(int at) {
    return at + Long.BYTES - 1 & -Long.BYTES;
  }

  /** Most terms are in few tables, and the marks are a twentieth of the slots. */
  private boolean isMissing(Term term) {
    long needed = Term.marks(term.hash);
    return (bytes.getLong(marksAt + Long.BYTES * Term.markedAt(term.hash, marks)) & needed)
        != needed;
  }

  /** Where a term is; 0 where no document has it. */
  private int start(Term term) {
    if (isMissing(term)) {
      return 0;
    }
    for (int slot = term.hash & slots - 1; ; slot = slot + 1 & slots - 1) {
      int at = bytes.getInt(slotsAt + SLOT * slot);
      if (at == 0 || bytes.getInt(slotsAt + SLOT * slot + 4) == term.hash && isTermAt(at, term)) {
        return at;
      }
    }
  }

  private boolean isTermAt(int at, Term term) {
    if (bytes.getInt(at + 4) != term.bytes.length) {
      return false;
    }
    int last = term.words.length - 1;
    for (int i = 0; i < last; i++) {
      if (bytes.getLong(at + HEAD + 8 * i) != term.words[i]) {
        return false;
      }
    }
    // what follows the term in its last eight bytes is cut off; the table's end is further on
    return (bytes.getLong(at + HEAD + 8 * last) & term.lastMask()) == term.words[last];
  }

  /** The number of the first term that does not sort before this one. */
  private int firstFrom(byte[] wanted) {
    int low = 0;
    int high = terms;
    while (low < high) {
      int middle = (low + high) >>> 1;
      if (Arrays.compareUnsigned(term(middle), wanted) < 0) {
        low = middle + 1;
      } else {
        high = middle;
      }
    }
    return low;
  }

  /**
   * A term that is looked for, in any number of tables.
   *
   * @param words its bytes, eight in a number, the first in the lowest place
   * @param hash by which its slot is found
   */
  record Term(byte[] bytes, long[] words, int hash) {
    private static final long SPREAD = 0x9E3779B97F4A7C15L;

    static Term of(String text) {
      byte[] bytes = text.getBytes(StandardCharsets.UTF_8);
      long[] words = new long[(bytes.length + Long.BYTES - 1) / Long.BYTES];
      for (int i = 0; i < bytes.length; i++) {
        words[i / Long.BYTES] |= (bytes[i] & 0xFFL) << Long.BYTES * (i % Long.BYTES);
      }
      return new Term(bytes, words, hash(bytes));
    }

    /** The bits of the last of its words that are its own. */
    long lastMask() {
      return -1L >>> Long.BYTES * (Long.BYTES * words.length - bytes.length);
    }

    /** The bits by which a table's marks tell of a term. */
    static long marks(int hash) {
      long spread = hash * SPREAD;
      return 1L << spread | 1L << (spread >>> 6) | 1L << (spread >>> 12);
    }

    /**
     * In which of the longs these are.
     *
     * @param longs how many there are, a power of two
     */
    static int markedAt(int hash, int longs) {
      return (int) (hash * SPREAD >>> 40) & longs - 1;
    }

    static int hash(byte[] bytes) {
      int hash = Arrays.hashCode(bytes) * 0x9E3779B9; // spreads what is alike
      return hash ^ hash >>> 16;
    }
  }
}
