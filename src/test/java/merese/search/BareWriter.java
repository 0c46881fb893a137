package merese.search;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import org.apache.lucene.document.Document;
import org.apache.lucene.index.IndexWriter;
import org.apache.lucene.index.IndexWriterConfig;
import org.apache.lucene.store.Directory;
import org.apache.lucene.store.FSDirectory;

/**
 * Makes documents of the index's fields, analyses and writes them with Lucene and nothing else:
 * what a benchmark holds building the index against.
 */
public final class BareWriter {
  private final List<IndexedFile> files;
  private final int size;

  /**
   * @param files what the documents are made of; all that makes of works what the index takes is
   *     done
   */
  public BareWriter(List<IndexedFile> files) {
    this.files = files;
    this.size = files.stream().mapToInt(file -> Documents.of(file).size()).sum();
  }

  /** How many documents it writes. */
  public int size() {
    return size;
  }

  /** Writes them with the index's analyzer and commits. */
  public void write(Path folder) throws IOException {
    IndexWriterConfig config = new IndexWriterConfig(new FoldedText()).setRAMBufferSizeMB(48);
    try (Directory directory = FSDirectory.open(folder);
        IndexWriter writer = new IndexWriter(directory, config)) {
      for (IndexedFile file : files) {
        for (Document document : Documents.of(file)) {
          writer.addDocument(document);
        }
      }
      writer.commit();
    }
  }
}
