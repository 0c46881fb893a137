package merese.search;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.channels.FileChannel;
import java.nio.file.DirectoryStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import merese.search.CommitTables.ListedFile;
import merese.search.CommitTables.ListedTable;
import org.apache.lucene.index.DirectoryReader;
import org.apache.lucene.index.LeafReader;
import org.apache.lucene.index.LeafReaderContext;
import org.apache.lucene.index.SegmentInfo;
import org.apache.lucene.index.SegmentReader;
import org.apache.lucene.util.Bits;
import org.apache.lucene.util.FixedBitSet;
import org.apache.lucene.util.StringHelper;

/**
 * Makes the tables that the newest commit lacks, and takes away those of segments that are gone.
 */
final class CommitTablesMaker {
  private static final String NEW = ".new";
  private static final long[] ALL = {};

  private final Path folder;

  private CommitTablesMaker(Path folder) {
    this.folder = folder;
  }

  /**
   * Whoever calls this holds the index's lock for writing.
   *
   * @param reader of the newest commit
   */
  static void make(Path folder, DirectoryReader reader) throws IOException {
    new CommitTablesMaker(folder).make(reader);
  }

  /** Takes all tables away. */
  static void removeAll(Path folder) throws IOException {
    new CommitTablesMaker(folder).removeAllBut(Set.of());
  }

  private void make(DirectoryReader reader) throws IOException {
    List<ListedTable> tables = new ArrayList<>();
    List<Path> made = new ArrayList<>();
    Set<String> files = new HashSet<>(reader.getIndexCommit().getFileNames());
    for (LeafReaderContext context : reader.leaves()) {
      LeafReader leaf = context.reader();
      String name = name(((SegmentReader) leaf).getSegmentInfo().info);
      Path table = folder.resolve(name);
      if (!Files.exists(table)) {
        SegmentTableWriter.write(leaf, folder.resolve(name + NEW));
        Files.move(folder.resolve(name + NEW), table, StandardCopyOption.ATOMIC_MOVE);
        made.add(table);
      }
      tables.add(new ListedTable(name, live(leaf)));
      files.add(name);
    }
    boolean checked = size(files) <= NoteIndex.CHECKED_SIZE;
    if (!checked) { // then no check sum will tell what a power cut has left of them
      for (Path table : made) {
        force(table);
      }
    }
    String commit = reader.getIndexCommit().getSegmentsFileName();
    Path list = folder.resolve(CommitTables.LIST + NEW);
    try (OutputStream out = Files.newOutputStream(list)) {
      out.write(CommitTables.list(commit, listed(files, checked), tables));
    }
    Files.move(
        list,
        folder.resolve(CommitTables.LIST),
        StandardCopyOption.REPLACE_EXISTING,
        StandardCopyOption.ATOMIC_MOVE);
    removeAllBut(files);
  }

  /**
   * A segment is known by a name that Lucene gives once in an index, and one that it gives once.
   */
  private static String name(SegmentInfo segment) {
    return CommitTables.SEGMENT + segment.name + '-' + StringHelper.idToString(segment.getId());
  }

  private static long[] live(LeafReader leaf) {
    Bits live = leaf.getLiveDocs();
    if (live == null) {
      return ALL;
    }
    FixedBitSet bits = new FixedBitSet(leaf.maxDoc());
    for (int id = 0; id < leaf.maxDoc(); id++) {
      if (live.get(id)) {
        bits.set(id);
      }
    }
    return bits.getBits();
  }

  private static void force(Path file) throws IOException {
    try (FileChannel channel = FileChannel.open(file, StandardOpenOption.WRITE)) {
      channel.force(true);
    }
  }

  private long size(Set<String> files) throws IOException {
    long size = 0;
    for (String file : files) {
      size += Files.size(folder.resolve(file));
    }
    return size;
  }

  private List<ListedFile> listed(Set<String> files, boolean checked) throws IOException {
    List<ListedFile> listed = new ArrayList<>();
    for (String file : files) {
      Path path = folder.resolve(file);
      int sum = checked ? CommitTables.checkSum(Files.readAllBytes(path), 0) : 0;
      listed.add(new ListedFile(file, Files.size(path), sum));
    }
    return listed;
  }

  private void removeAllBut(Set<String> files) throws IOException {
    try (DirectoryStream<Path> tables =
        Files.newDirectoryStream(folder, CommitTables.SEGMENT + "*")) {
      for (Path table : tables) {
        if (!files.contains(table.getFileName().toString())) {
          remove(table);
        }
      }
    }
  }

  /** One that somebody still reads may not be removed on every system: then the next time. */
  private static void remove(Path table) {
    try {
      Files.delete(table);
    } catch (IOException e) {
      // It stands beside the others and is in no list.
    }
  }
}
