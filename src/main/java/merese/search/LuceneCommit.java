package merese.search;

import java.io.Closeable;
import java.io.IOException;
import java.nio.file.Path;
import org.apache.lucene.index.DirectoryReader;
import org.apache.lucene.index.LeafReaderContext;
import org.apache.lucene.store.Directory;
import org.apache.lucene.store.FSDirectory;

/** A commit as Lucene reads it, for questions in words. */
final class LuceneCommit implements Closeable {
  private final Directory directory;
  private final DirectoryReader reader;
  private final PageFiles pageFiles;
  private LiveSearcher searcher;

  private LuceneCommit(Directory directory, DirectoryReader reader) {
    this.directory = directory;
    this.reader = reader;
    this.pageFiles = new PageFiles(reader.leaves().size());
  }

  /**
   * Opens the newest commit.
   *
   * @throws IndexDamagedException where there is none that can be read
   */
  static LuceneCommit open(Path folder) {
    Directory directory = null;
    try {
      directory = FSDirectory.open(folder);
      LuceneCommit opened = new LuceneCommit(directory, DirectoryReader.open(directory));
      opened.verify();
      return opened;
    } catch (IOException | RuntimeException e) {
      NoteIndex.closeQuietly(directory);
      throw e instanceof IndexDamagedException damaged
          ? damaged
          : new IndexDamagedException("the index cannot be read", e);
    }
  }

  private void verify() throws IOException {
    String layout = reader.getIndexCommit().getUserData().get(NoteIndex.LAYOUT_KEY);
    if (!NoteIndex.LAYOUT.equals(layout)) {
      throw IndexDamagedException.ofAnotherVersion();
    }
    long size = 0;
    for (String file : reader.getIndexCommit().getFileNames()) {
      size += directory.fileLength(file);
    }
    if (size <= NoteIndex.CHECKED_SIZE) {
      for (LeafReaderContext leaf : reader.leaves()) {
        leaf.reader().checkIntegrity();
      }
    }
  }

  DirectoryReader reader() {
    return reader;
  }

  /** One for all questions to a commit, since it counts the words of the whole index once. */
  synchronized LiveSearcher searcher() {
    if (searcher == null) {
      searcher = new LiveSearcher(reader);
    }
    return searcher;
  }

  /** For all questions to a commit too. */
  PageFiles pageFiles() {
    return pageFiles;
  }

  @Override
  public void close() throws IOException {
    reader.close();
    directory.close();
  }
}
