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
import java.util.BitSet;
import java.util.Collection;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeSet;
import java.util.zip.CRC32;
import merese.search.Hits.Owner;

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
 * UTF      layout, name of the commit
 * files    int count, then UTF name, long size, int check sum of each (0 for one not looked through)
 * segments int count, then UTF name of the table, int longs, the longs: a bit for each document
 *          that is still there; no longs where all are
 * </pre>
 */
final class CommitTables implements Postings {
  static final String LIST = "table";

  /** The tables' names begin so; what begins with "_" Lucene takes for its own. */
  static final String SEGMENT = "table-";

  private static final String COMMITS = "segments_";
  private static final int TRIES = 3;

  private final SegmentTable[] segments;

  private CommitTables(List<SegmentTable> segments) {
    this.segments = segments.toArray(new SegmentTable[0]);
  }

  /** The tables of the newest commit in a folder; empty where there are none that fit. */
  static Optional<CommitTables> open(Path folder) {
    try {
      String commit = newestCommit(folder);
      for (int left = TRIES; left > 0 && commit != null; left--) {
        Optional<CommitTables> tables = open(folder, commit);
        String newest = newestCommit(folder);
        if (tables.isPresent() || commit.equals(newest)) {
          return tables;
        }
        commit = newest; // another process has just committed
      }
      return Optional.empty();
    } catch (IOException | RuntimeException e) {
      return Optional.empty();
    }
  }

  private static Optional<CommitTables> open(Path folder, String commit) throws IOException {
    Path list = folder.resolve(LIST);
    if (!Files.exists(list)) {
      return Optional.empty();
    }
    byte[] all = Files.readAllBytes(list);
    ByteBuffer bytes = ByteBuffer.wrap(all);
    if (all.length < 4
        || bytes.getInt() != checkSum(all, 4)
        || !utf(bytes).equals(NoteIndex.LAYOUT)
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

  private static BitSet bits(ByteBuffer bytes) {
    long[] longs = new long[bytes.getInt()];
    bytes.asLongBuffer().get(longs);
    bytes.position(bytes.position() + Long.BYTES * longs.length);
    return longs.length == 0 ? null : BitSet.valueOf(longs);
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

  /**
   * @param checkSum 0 for a file that is too large to be looked through at each opening
   */
  record ListedFile(String name, long size, int checkSum) {}

  /**
   * @param live a bit for each document that is still there; none where all are
   */
  record ListedTable(String name, long[] live) {}

  @Override
  public List<StoredValue> values(List<String> terms) {
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

  @Override
  public void each(List<String> terms, Taker taker) {
    int before = 0;
    for (SegmentTable segment : segments) {
      each(segment, segment.having(terms), before, taker);
      before += segment.size();
    }
  }

  @Override
  public void each(Selection selection, Taker taker) {
    int before = 0;
    for (SegmentTable segment : segments) {
      each(segment, segment.having(selection), before, taker);
      before += segment.size();
    }
  }

  private static void each(SegmentTable segment, BitSet documents, int before, Taker taker) {
    for (int id = documents.nextSetBit(0); id >= 0; id = documents.nextSetBit(id + 1)) {
      taker.take(segment.value(id, before + id));
    }
  }

  @Override
  public Collection<NotesOfSource> gather(
      List<String> terms, List<String> pictured, BitSet without) {
    Map<String, NotesOfSource> gathered = new HashMap<>();
    int before = 0;
    for (SegmentTable segment : segments) {
      BitSet documents = segment.having(terms);
      BitSet withPicture = segment.having(pictured);
      NotesOfSource last = null;
      for (int id = documents.nextSetBit(0); id >= 0; id = documents.nextSetBit(id + 1)) {
        if (!without.get(before + id)) {
          Owner owner = segment.ownerOf(id);
          if (last == null || !last.owner().edition().equals(owner.edition())) {
            last = gathered.get(owner.edition());
            if (last == null) {
              last = new NotesOfSource(owner);
              gathered.put(owner.edition(), last);
            }
          }
          last.add(before + id, withPicture.get(id));
        }
      }
      before += segment.size();
    }
    return gathered.values();
  }

  @Override
  public StoredValue value(int document) {
    int before = 0;
    for (SegmentTable segment : segments) {
      if (document < before + segment.size()) {
        return segment.value(document - before, document);
      }
      before += segment.size();
    }
    throw new IndexDamagedException("the index lacks a document", null);
  }

  @Override
  public int count(Selection selection) {
    int count = 0;
    for (SegmentTable segment : segments) {
      count += segment.having(selection).cardinality();
    }
    return count;
  }

  @Override
  public int count(String term) {
    int count = 0;
    for (SegmentTable segment : segments) {
      count += segment.count(term);
    }
    return count;
  }

  @Override
  public List<String> termsFrom(String begun, int most) {
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

  @Override
  public Optional<StoredValue> anyValue(String term) {
    int before = 0;
    for (SegmentTable segment : segments) {
      int id = segment.any(term);
      if (id >= 0) {
        return Optional.of(segment.value(id, before + id));
      }
      before += segment.size();
    }
    return Optional.empty();
  }

  @Override
  public void close() {}
}
