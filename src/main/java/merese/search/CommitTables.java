package merese.search;

import java.io.ByteArrayOutputStream;
import java.io.DataOutputStream;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.nio.file.DirectoryStream;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collection;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.zip.CRC32;
import merese.search.Hits.NoteTest;
import merese.search.Hits.Owner;
import merese.search.SegmentTable.Term;

/**
 * The postings and values of one commit: a table for each of its segments, beside Lucene's files.
 *
 * <p>Opening a Lucene index in a new process takes longer than all the rest of an answer. These
 * tables are a copy that can be read without. A segment's is made once, when a commit has the
 * segment first, so that what a commit costs grows with what it changed. A list says which tables
 * the newest commit has, and which of their documents are still there. It knows the commit's files
 * and the tables by name and size, and, while they are small, by check sum: where one of them is
 * not as it was, there are no tables, and Lucene says what is wrong.
 *
 * <pre>
 * int      check sum of all that follows
 * byte     1 where a table is so large that it is mapped, else 0
 * UTF      layout, name of the commit
 * files    int count, then UTF name, long size, int check sum of each (0 for one not looked through)
 * segments int count, then UTF name of the table, int longs, the longs: a bit for each document
 *          that is still there; no longs where all are
 * </pre>
 */
final class CommitTables {
  static final String LIST = "table";

  /** The tables' names begin so; what begins with "_" Lucene takes for its own. */
  static final String SEGMENT = "table-";

  private static final String COMMITS = "segments_";
  private static final int TRIES = 3;
  private static final byte MAPPED = 1;

  private final SegmentTable[] segments;

  private CommitTables(List<SegmentTable> segments) {
    this.segments = segments.toArray(new SegmentTable[0]);
  }

  /** The tables of the newest commit in a folder; empty where there are none that fit. */
  static Optional<CommitTables> open(Path folder) {
    Path list = folder.resolve(LIST);
    try {
      if (!Files.exists(list)) {
        return Optional.empty();
      }
      byte[] listed = Files.readAllBytes(list);
      FirstMapping.start(list, hasMapped(listed));
      String commit = newestCommit(folder);
      for (int left = TRIES; left > 0 && commit != null; left--) {
        Optional<CommitTables> tables = open(folder, commit, listed);
        if (tables.isPresent()) {
          return tables;
        }
        byte[] before = listed;
        listed = Files.readAllBytes(list);
        String newest = newestCommit(folder);
        if (commit.equals(newest) && Arrays.equals(before, listed)) {
          return Optional.empty();
        }
        commit = newest; // another process has just committed
      }
      return Optional.empty();
    } catch (IOException | RuntimeException e) {
      return Optional.empty();
    }
  }

  private static boolean hasMapped(byte[] list) {
    return list.length > Integer.BYTES && list[Integer.BYTES] == MAPPED;
  }

  private static Optional<CommitTables> open(Path folder, String commit, byte[] list)
      throws IOException {
    ByteBuffer bytes = ByteBuffer.wrap(list);
    if (list.length < 4 || bytes.getInt() != checkSum(list, 4)) {
      return Optional.empty();
    }
    bytes.get(); // whether there are mapped ones
    if (!utf(bytes).equals(NoteIndex.LAYOUT)
        || !utf(bytes).equals(commit)
        || !filesAreAsTheyWere(folder, bytes)) {
      return Optional.empty();
    }
    List<SegmentTable> segments = new ArrayList<>();
    try {
      for (int left = bytes.getInt(); left > 0; left--) {
        Path table = folder.resolve(utf(bytes));
        segments.add(SegmentTable.open(table, bits(bytes)));
      }
    } catch (NoSuchFileException e) {
      return Optional.empty();
    }
    return Optional.of(new CommitTables(segments));
  }

  private static NumberSet bits(ByteBuffer bytes) {
    long[] longs = new long[bytes.getInt()];
    bytes.asLongBuffer().get(longs);
    bytes.position(bytes.position() + Long.BYTES * longs.length);
    return longs.length == 0 ? null : NumberSet.ofBits(longs);
  }

  /** The commit of the highest generation, which Lucene writes to the base 36; null for none. */
  private static String newestCommit(Path folder) throws IOException {
    String newest = null;
    long generation = -1;
    try (DirectoryStream<Path> files = Files.newDirectoryStream(folder)) {
      for (Path file : files) {
        String name = file.getFileName().toString();
        if (name.startsWith(COMMITS)) {
          long number = Long.parseLong(name.substring(COMMITS.length()), Character.MAX_RADIX);
          if (number > generation) {
            generation = number;
            newest = name;
          }
        }
      }
    } catch (NumberFormatException e) {
      return null;
    }
    return newest;
  }

  private static boolean filesAreAsTheyWere(Path folder, ByteBuffer bytes) throws IOException {
    for (int left = bytes.getInt(); left > 0; left--) {
      Path file = folder.resolve(utf(bytes));
      long size = bytes.getLong();
      int sum = bytes.getInt();
      if (!Files.exists(file)
          || Files.size(file) != size
          || sum != 0 && checkSum(Files.readAllBytes(file), 0) != sum) {
        return false;
      }
    }
    return true;
  }

  private static String utf(ByteBuffer bytes) {
    byte[] text = new byte[bytes.getShort() & 0xFFFF];
    bytes.get(text);
    return new String(text, StandardCharsets.UTF_8);
  }

  static int checkSum(byte[] bytes, int from) {
    CRC32 sum = new CRC32();
    sum.update(bytes, from, bytes.length - from);
    return (int) sum.getValue();
  }

  /** A list as {@link #open(Path)} reads it. */
  static byte[] list(String commit, List<ListedFile> files, List<ListedTable> tables)
      throws IOException {
    ByteArrayOutputStream all = new ByteArrayOutputStream();
    DataOutputStream out = new DataOutputStream(all);
    out.writeInt(0); // the check sum comes here
    out.writeByte(hasMapped(files) ? MAPPED : 0);
    out.writeUTF(NoteIndex.LAYOUT);
    out.writeUTF(commit);
    out.writeInt(files.size());
    for (ListedFile file : files) {
      out.writeUTF(file.name());
      out.writeLong(file.size());
      out.writeInt(file.checkSum());
    }
    out.writeInt(tables.size());
    for (ListedTable table : tables) {
      out.writeUTF(table.name());
      out.writeInt(table.live().length);
      for (long word : table.live()) {
        out.writeLong(word);
      }
    }
    byte[] bytes = all.toByteArray();
    ByteBuffer.wrap(bytes).putInt(0, checkSum(bytes, 4));
    return bytes;
  }

  private static boolean hasMapped(List<ListedFile> files) {
    for (ListedFile file : files) {
      if (file.name().startsWith(SEGMENT) && SegmentTable.isMapped(file.size())) {
        return true;
      }
    }
    return false;
  }

  /**
   * @param checkSum 0 for a file that is too large to be looked through at each opening
   */
  record ListedFile(String name, long size, int checkSum) {}

  /**
   * @param live a bit for each document that is still there; none where all are
   */
  record ListedTable(String name, long[] live) {}

  /** Takes values one by one. */
  interface Taker {
    void take(StoredValue value);
  }

  /** The table of each of the commit's segments. */
  SegmentTable[] segments() {
    return segments;
  }

  /**
   * The values of all documents that have at least one of the terms, sorted.
   *
   * @param terms as {@link Fields} makes them
   */
  List<StoredValue> values(List<String> terms) {
    Gathering gathering = new Gathering();
    each(terms, gathering);
    StoredValue[] sorted = gathering.found.toArray(new StoredValue[0]);
    Arrays.sort(sorted);
    return Arrays.asList(sorted);
  }

  private static final class Gathering implements Taker {
    private final List<StoredValue> found = new ArrayList<>();

    @Override
    public void take(StoredValue value) {
      found.add(value);
    }
  }

  /** The same one by one, unsorted: nothing is kept of those that the taker lets go. */
  void each(List<String> terms, Taker taker) {
    List<Term> wanted = terms(terms);
    NumberSet[] documents = new NumberSet[segments.length];
    for (int i = 0; i < segments.length; i++) {
      documents[i] = segments[i].having(wanted);
    }
    each(documents, taker);
  }

  /**
   * @param documents by segment
   */
  void each(NumberSet[] documents, Taker taker) {
    int before = 0;
    for (int i = 0; i < segments.length; i++) {
      for (int id : documents[i].numbers()) {
        taker.take(segments[i].value(id, before + id));
      }
      before += segments[i].size();
    }
  }

  /**
   * @param documents by segment
   */
  NumberSet[] only(NumberSet[] documents, NoteTest test) {
    NumberSet[] found = new NumberSet[segments.length];
    for (int i = 0; i < segments.length; i++) {
      int[] passed = new int[documents[i].size()];
      int count = 0;
      for (int id : documents[i].numbers()) {
        if (test.test(segments[i].payload(id))) {
          passed[count++] = id;
        }
      }
      found[i] = NumberSet.of(Arrays.copyOf(passed, count));
    }
    return found;
  }

  static List<Term> terms(Collection<String> texts) {
    List<Term> terms = new ArrayList<>();
    for (String text : texts) {
      terms.add(Term.of(text));
    }
    return terms;
  }

  /** The documents that have at least one of the terms, by their edition, unread. */
  Collection<PagesOfSource> gather(List<String> terms) {
    List<Term> wanted = terms(terms);
    Map<String, PagesOfSource> gathered = new HashMap<>();
    int before = 0;
    for (SegmentTable segment : segments) {
      PagesOfSource last = null;
      for (int id : segment.having(wanted).numbers()) {
        Owner owner = segment.ownerOf(id);
        if (last == null || !last.owner().edition().equals(owner.edition())) {
          last = gathered.get(owner.edition());
          if (last == null) {
            last = new PagesOfSource(owner);
            gathered.put(owner.edition(), last);
          }
        }
        last.add(before + id, owner.file());
      }
      before += segment.size();
    }
    return gathered.values();
  }

  /**
   * The numbers of those documents of each source that have one of its terms, in their order. A
   * term is looked for only in the segments that have documents of its source.
   *
   * @param terms by the key of the source
   */
  List<int[]> among(List<PagesOfSource> sources, Map<String, List<Term>> terms) {
    List<List<Term>> bySegment = new ArrayList<>();
    int[] ends = new int[segments.length];
    int end = 0;
    for (int i = 0; i < segments.length; i++) {
      bySegment.add(new ArrayList<>());
      end += segments[i].size();
      ends[i] = end;
    }
    for (PagesOfSource source : sources) {
      List<Term> wanted = terms.getOrDefault(source.owner().edition(), List.of());
      int in = -1;
      for (int document : wanted.isEmpty() ? new int[0] : source.documents()) {
        if (in < 0 || document >= ends[in]) {
          in = segmentOf(document, ends);
          bySegment.get(in).addAll(wanted);
        }
      }
    }
    NumberSet[] having = new NumberSet[segments.length];
    for (int i = 0; i < segments.length; i++) {
      having[i] = segments[i].having(bySegment.get(i));
    }
    List<int[]> found = new ArrayList<>();
    for (PagesOfSource source : sources) {
      boolean none = !terms.containsKey(source.owner().edition());
      int[] documents = none ? new int[0] : source.documents();
      int count = 0;
      int in = 0;
      for (int document : documents) {
        while (document >= ends[in]) {
          in++;
        }
        if (having[in].contains(document - ends[in] + segments[in].size())) {
          documents[count++] = document;
        }
      }
      found.add(Arrays.copyOf(documents, count));
    }
    return found;
  }

  private static int segmentOf(int document, int[] ends) {
    int in = 0;
    while (document >= ends[in]) {
      in++;
    }
    return in;
  }

  /** The value of a document by its number. */
  StoredValue value(int document) {
    int before = 0;
    for (SegmentTable segment : segments) {
      if (document < before + segment.size()) {
        return segment.value(document - before, document);
      }
      before += segment.size();
    }
    throw new IndexDamagedException("the index lacks a document", null);
  }

  /** How many documents have a term. */
  int count(String term) {
    Term wanted = Term.of(term);
    int count = 0;
    for (SegmentTable segment : segments) {
      count += segment.count(wanted);
    }
    return count;
  }

  /** The terms, as {@link Fields} makes them, that begin so; at most so many, sorted. */
  List<String> termsFrom(String begun, int most) {
    if (segments.length == 1) {
      List<String> found = new ArrayList<>();
      segments[0].addTermsFrom(begun, most, found);
      return found;
    }
    List<String> all = new ArrayList<>();
    for (SegmentTable segment : segments) {
      segment.addTermsFrom(begun, most, all);
    }
    List<String> found = new ArrayList<>(new TreeSet<>(all));
    return found.size() > most ? found.subList(0, most) : found;
  }

  /** What follows a beginning in all terms that have it, in no order. */
  Set<String> endings(String begun) {
    List<String> all = new ArrayList<>();
    for (SegmentTable segment : segments) {
      segment.addTermsFrom(begun, Integer.MAX_VALUE, all);
    }
    Set<String> endings = new HashSet<>();
    for (String term : all) {
      endings.add(term.substring(begun.length()));
    }
    return endings;
  }

  /** How many documents have each term that begins with one that is a term itself. */
  Map<String, Integer> countLongerThan(String term) {
    Term wanted = Term.of(term);
    Map<String, Integer> counts = new TreeMap<>();
    for (SegmentTable segment : segments) {
      segment.countLongerThan(wanted, counts);
    }
    return counts;
  }

  /** The value of any one document that has a term; empty where none has. */
  Optional<StoredValue> anyValue(String term) {
    Term wanted = Term.of(term);
    int before = 0;
    for (SegmentTable segment : segments) {
      int id = segment.any(wanted);
      if (id >= 0) {
        return Optional.of(segment.value(id, before + id));
      }
      before += segment.size();
    }
    return Optional.empty();
  }
}
