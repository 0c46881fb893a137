package merese.search;

import java.io.ByteArrayOutputStream;
import java.io.DataOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.nio.file.DirectoryStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.BitSet;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;
import java.util.zip.CRC32;

/**
 * The postings and values of one commit of a small index, written out as one file beside it.
 *
 * <p>Opening a Lucene index in a new process takes longer than all the rest of an answer. This
 * table is a copy, made at each commit, that can be read without. It knows the commit's files by
 * name, size and check sum: where one of them, or the table itself, is not as it was, there is no
 * table, and Lucene says what is wrong.
 *
 * <pre>
 * int     check sum of all that follows
 * UTF     layout, name of the commit
 * files   int count, then UTF name, long size, int check sum of each
 * values  int count, int start of each in the block, int size of the block, the block
 * terms   int count, int start of each in the block, int size of the block, the block;
 *         a term is int length, its UTF-8, int count, int number of each value
 * </pre>
 */
final class TermTable implements Postings {
  private static final int LARGEST = 20_000;

  private static final String NAME = "table";
  private static final String COMMITS = "segments_";

  private final byte[] all;
  private final ByteBuffer bytes;
  private final int[] values;
  private final int valueBlock;
  private final int[] terms;
  private final int termBlock;

  private TermTable(byte[] all, ByteBuffer bytes) {
    this.all = all;
    this.bytes = bytes;
    values = ints(bytes);
    int size = bytes.getInt();
    valueBlock = bytes.position();
    bytes.position(valueBlock + size);
    terms = ints(bytes);
    bytes.getInt();
    termBlock = bytes.position();
  }

  /** Whether an index is small enough to have a table; a larger one is read by Lucene alone. */
  static boolean isMadeFor(int documents) {
    return documents <= LARGEST;
  }

  private static int[] ints(ByteBuffer bytes) {
    int[] ints = new int[bytes.getInt()];
    bytes.asIntBuffer().get(ints);
    bytes.position(bytes.position() + 4 * ints.length);
    return ints;
  }

  /** The table of the newest commit in a folder; empty where there is none that fits. */
  static Optional<TermTable> open(Path folder) {
    try {
      String commit = newestCommit(folder);
      Path file = folder.resolve(NAME);
      if (commit == null || !Files.exists(file)) {
        return Optional.empty();
      }
      byte[] all = Files.readAllBytes(file);
      ByteBuffer bytes = ByteBuffer.wrap(all);
      if (all.length < 4 || bytes.getInt() != checkSum(all, 4)) {
        return Optional.empty();
      }
      boolean fits =
          utf(bytes).equals(NoteIndex.LAYOUT)
              && utf(bytes).equals(commit)
              && filesAreAsTheyWere(folder, bytes);
      return fits ? Optional.of(new TermTable(all, bytes)) : Optional.empty();
    } catch (IOException e) {
      return Optional.empty();
    }
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
      if (!Files.exists(file) || Files.size(file) != size || checkSum(file) != sum) {
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

  private static int checkSum(Path file) throws IOException {
    return checkSum(Files.readAllBytes(file), 0);
  }

  private static int checkSum(byte[] bytes, int from) {
    CRC32 sum = new CRC32();
    sum.update(bytes, from, bytes.length - from);
    return (int) sum.getValue();
  }

  /**
   * Writes the table of a commit, in place of an older one.
   *
   * @param files the commit's files
   * @param documents what the documents give back, in the order of their numbers
   * @param postings for each term, the numbers of its documents
   */
  static void write(
      Path folder,
      String commit,
      Collection<String> files,
      List<byte[]> documents,
      SortedMap<String, int[]> postings)
      throws IOException {
    ByteArrayOutputStream all = new ByteArrayOutputStream();
    DataOutputStream out = new DataOutputStream(all);
    out.writeInt(0); // the check sum comes here
    out.writeUTF(NoteIndex.LAYOUT);
    out.writeUTF(commit);
    out.writeInt(files.size());
    for (String file : files) {
      Path path = folder.resolve(file);
      out.writeUTF(file);
      out.writeLong(Files.size(path));
      out.writeInt(checkSum(path));
    }
    writeBlocks(out, documents);
    List<byte[]> entries = new ArrayList<>();
    for (Map.Entry<String, int[]> each : postings.entrySet()) {
      entries.add(entry(each.getKey(), each.getValue()));
    }
    writeBlocks(out, entries);
    byte[] bytes = all.toByteArray();
    ByteBuffer.wrap(bytes).putInt(0, checkSum(bytes, 4));
    Path temporary = folder.resolve(NAME + ".new");
    try (OutputStream file = Files.newOutputStream(temporary)) {
      file.write(bytes);
    }
    Files.move(
        temporary,
        folder.resolve(NAME),
        StandardCopyOption.REPLACE_EXISTING,
        StandardCopyOption.ATOMIC_MOVE);
  }

  private static byte[] entry(String term, int[] documents) {
    byte[] text = term.getBytes(StandardCharsets.UTF_8);
    ByteBuffer entry = ByteBuffer.allocate(8 + text.length + 4 * documents.length);
    entry.putInt(text.length).put(text).putInt(documents.length);
    entry.asIntBuffer().put(documents);
    return entry.array();
  }

  private static void writeBlocks(DataOutputStream out, List<byte[]> blocks) throws IOException {
    out.writeInt(blocks.size());
    int start = 0;
    for (byte[] block : blocks) {
      out.writeInt(start);
      start += block.length;
    }
    out.writeInt(start);
    for (byte[] block : blocks) {
      out.write(block);
    }
  }

  @Override
  public List<StoredValue> values(List<String> wanted) throws IOException {
    BitSet seen = new BitSet(values.length);
    for (String term : wanted) {
      int at = find(term.getBytes(StandardCharsets.UTF_8));
      if (at >= 0) {
        int count = bytes.getInt(at);
        for (int i = 1; i <= count; i++) {
          seen.set(bytes.getInt(at + 4 * i));
        }
      }
    }
    StoredValue[] found = new StoredValue[seen.cardinality()];
    int next = 0;
    for (int id = seen.nextSetBit(0); id >= 0; id = seen.nextSetBit(id + 1)) {
      found[next++] = value(id);
    }
    Arrays.sort(found);
    return Arrays.asList(found);
  }

  @Override
  public List<String> termsFrom(String begun, int most) {
    byte[] prefix = begun.getBytes(StandardCharsets.UTF_8);
    List<String> found = new ArrayList<>();
    for (int i = firstFrom(prefix); i < terms.length && found.size() < most; i++) {
      int at = termBlock + terms[i];
      int length = bytes.getInt(at);
      if (!beginsWith(at + 4, length, prefix)) {
        break;
      }
      found.add(new String(all, at + 4, length, StandardCharsets.UTF_8));
    }
    return found;
  }

  private boolean beginsWith(int start, int length, byte[] prefix) {
    return length >= prefix.length
        && Arrays.equals(all, start, start + prefix.length, prefix, 0, prefix.length);
  }

  @Override
  public Optional<StoredValue> anyValue(String term) {
    int at = find(term.getBytes(StandardCharsets.UTF_8));
    return at < 0 || bytes.getInt(at) == 0
        ? Optional.empty()
        : Optional.of(value(bytes.getInt(at + 4)));
  }

  private StoredValue value(int id) {
    int from = valueBlock + values[id];
    int to = id + 1 < values.length ? valueBlock + values[id + 1] : valueEnd();
    return StoredValue.of(all, from, to - from, id);
  }

  /** The values end where the terms' own counts begin. */
  private int valueEnd() {
    return termBlock - 4 - 4 * terms.length - 4;
  }

  /** Where the documents of a term are; negative where no document has it. */
  private int find(byte[] term) {
    int index = firstFrom(term);
    if (index == terms.length || compare(index, term) != 0) {
      return -1;
    }
    int at = termBlock + terms[index];
    return at + 4 + bytes.getInt(at);
  }

  /** The number of the first term that does not sort before this one. */
  private int firstFrom(byte[] term) {
    int low = 0;
    int high = terms.length;
    while (low < high) {
      int middle = (low + high) >>> 1;
      if (compare(middle, term) < 0) {
        low = middle + 1;
      } else {
        high = middle;
      }
    }
    return low;
  }

  private int compare(int index, byte[] term) {
    int at = termBlock + terms[index];
    int length = bytes.getInt(at);
    return Arrays.compareUnsigned(all, at + 4, at + 4 + length, term, 0, term.length);
  }

  @Override
  public void close() {}
}
