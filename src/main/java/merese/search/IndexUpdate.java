package merese.search;

import java.io.Closeable;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.apache.lucene.document.Document;
import org.apache.lucene.index.DirectoryReader;
import org.apache.lucene.index.IndexWriter;
import org.apache.lucene.index.IndexWriterConfig;
import org.apache.lucene.index.IndexWriterConfig.OpenMode;
import org.apache.lucene.index.MergePolicy;
import org.apache.lucene.index.Term;
import org.apache.lucene.index.TieredMergePolicy;
import org.apache.lucene.search.BooleanClause.Occur;
import org.apache.lucene.search.BooleanQuery;
import org.apache.lucene.search.Query;
import org.apache.lucene.search.TermQuery;
import org.apache.lucene.store.Directory;
import org.apache.lucene.store.FSDirectory;
import org.apache.lucene.store.Lock;
import org.apache.lucene.store.LockObtainFailedException;
import org.apache.lucene.store.NIOFSDirectory;

/**
 * A change of the index. Nothing of it is seen before {@link #commit()}; closed without that, or
 * killed, it leaves the last commit as it was.
 */
public final class IndexUpdate implements Closeable {
  /** What one segment is written from: of more segments each question asks more. */
  private static final int LARGEST_BUFFER_MEGABYTES = 128;

  private static final int MEGABYTE = 1 << 20;
  private static final double LARGEST_SEGMENT_MEGABYTES = 1_000;

  private final boolean isNew;
  private final Path folder;
  private final Directory directory;
  private final IndexWriter writer;

  private IndexUpdate(boolean isNew, Path folder, Directory directory, IndexWriter writer) {
    this.isNew = isNew;
    this.folder = folder;
    this.directory = directory;
    this.writer = writer;
  }

  /** An update of the index that is there. */
  public static IndexUpdate of(Path folder) {
    return open(folder, OpenMode.APPEND);
  }

  /** A new index in the place of whatever is there. */
  public static IndexUpdate fromNothing(Path folder) {
    return open(folder, OpenMode.CREATE);
  }

  /**
   * Only looks.
   *
   * @throws IndexBusyException where another process is writing the index
   */
  public static void requireFree(Path folder) {
    if (!Files.isDirectory(folder)) {
      return;
    }
    try (Directory directory = FSDirectory.open(folder);
        Lock lock = directory.obtainLock(IndexWriter.WRITE_LOCK_NAME)) {
      lock.ensureValid();
    } catch (LockObtainFailedException e) {
      throw new IndexBusyException(folder, e);
    } catch (IOException e) {
      throw new UncheckedIOException("the index cannot be written: " + folder, e);
    }
  }

  private static IndexUpdate open(Path folder, OpenMode mode) {
    try {
      Files.createDirectories(folder);
      Directory directory = directory(folder, mode);
      try {
        if (mode == OpenMode.CREATE) {
          empty(directory);
        }
        IndexWriterConfig config =
            new IndexWriterConfig(new FoldedText())
                .setOpenMode(mode)
                .setRAMBufferSizeMB(bufferMegabytes())
                .setMergePolicy(merging())
                .setCommitOnClose(false);
        IndexWriter writer = new IndexWriter(directory, config);
        return new IndexUpdate(mode == OpenMode.CREATE, folder, directory, writer);
      } catch (IOException | RuntimeException e) {
        directory.close();
        throw e;
      }
    } catch (LockObtainFailedException e) {
      throw new IndexBusyException(folder, e);
    } catch (IOException e) {
      if (mode == OpenMode.APPEND) {
        throw new IndexDamagedException("the index cannot be written to", e);
      }
      throw new UncheckedIOException("the index cannot be written: " + folder, e);
    }
  }

  /** A small change looks at little of many files, which to map into memory takes longer. */
  private static Directory directory(Path folder, OpenMode mode) throws IOException {
    return mode == OpenMode.CREATE ? FSDirectory.open(folder) : new NIOFSDirectory(folder);
  }

  /** A quarter of the memory at most. */
  static double bufferMegabytes() {
    double most = Runtime.getRuntime().maxMemory() / (4.0 * MEGABYTE);
    return Math.min(most, LARGEST_BUFFER_MEGABYTES);
  }

  /** A segment's table is one file of less than two gigabytes. */
  private static MergePolicy merging() {
    return new TieredMergePolicy().setMaxMergedSegmentMB(LARGEST_SEGMENT_MEGABYTES);
  }

  /** Takes away what is left of an index, which may lack any part that Lucene would look for. */
  private static void empty(Directory directory) throws IOException {
    try (Lock lock = directory.obtainLock(IndexWriter.WRITE_LOCK_NAME)) {
      lock.ensureValid();
      for (String file : directory.listAll()) {
        if (!file.equals(IndexWriter.WRITE_LOCK_NAME)) {
          directory.deleteFile(file);
        }
      }
    }
  }

  /** Puts what a file brings in the place of what it brought before. */
  public void replace(IndexedFile file) {
    String path = file.stamp().path();
    if (!isNew) {
      remove(path);
    }
    List<Document> documents = Documents.of(file);
    writing(() -> writer.addDocuments(documents));
  }

  /** Adds a page to what a file brings. */
  public void add(String file, IndexedPage page) {
    writing(() -> writer.addDocument(Documents.page(file, page)));
  }

  /** Puts a page in the place of the one with the same file and number. */
  public void replace(String file, IndexedPage page) {
    Term unique = new Term(Fields.UNIQUE, Fields.bounded(Fields.page(file, page.page())));
    writing(() -> writer.updateDocument(unique, Documents.page(file, page)));
  }

  /** Puts a file's stamp in the place of the one it has; what it brought stays. */
  public void replace(FileStamp stamp) {
    Query old =
        new BooleanQuery.Builder()
            .add(new TermQuery(new Term(Fields.FILE, stamp.path())), Occur.FILTER)
            .add(new TermQuery(new Term(Fields.TYPE, Fields.STAMP)), Occur.FILTER)
            .build();
    writing(
        () -> {
          writer.deleteDocuments(old);
          writer.addDocument(Documents.stamp(stamp));
        });
  }

  /** Takes out all that a file brought. */
  public void remove(String path) {
    writing(() -> writer.deleteDocuments(new Term(Fields.FILE, path)));
  }

  public void commit() {
    writing(
        () -> {
          writer.setLiveCommitData(Map.of(NoteIndex.LAYOUT_KEY, NoteIndex.LAYOUT).entrySet());
          writer.commit();
        });
    writing(this::makeTables);
  }

  private void makeTables() throws IOException {
    try (DirectoryReader reader = DirectoryReader.open(directory)) {
      CommitTablesMaker.make(folder, reader);
    }
  }

  /** Makes the tables of the newest commit anew. */
  IndexUpdate withNewTables() {
    writing(
        () -> {
          CommitTablesMaker.removeAll(folder);
          makeTables();
        });
    return this;
  }

  @Override
  public void close() {
    writing(
        () -> {
          writer.rollback();
          directory.close();
        });
  }

  private static void writing(Step step) {
    try {
      step.run();
    } catch (IOException e) {
      throw new UncheckedIOException("the index cannot be written", e);
    }
  }

  private interface Step {
    void run() throws IOException;
  }
}
