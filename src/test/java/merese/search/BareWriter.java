package merese.search;

import java.io.Closeable;
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
public final class BareWriter implements Closeable {
  private final Directory directory;
  private final IndexWriter writer;

  public BareWriter(Path folder) throws IOException {
    directory = FSDirectory.open(folder);
    writer =
        new IndexWriter(
            directory,
            new IndexWriterConfig(new FoldedText())
                .setRAMBufferSizeMB(IndexUpdate.bufferMegabytes()));
  }

  /**
   * Writes some documents.
   *
   * @param files what they are made of; all that makes of works what the index takes is done
   * @return how many documents it wrote
   */
  public int add(List<IndexedFile> files) throws IOException {
    int documents = 0;
    for (IndexedFile file : files) {
      for (Document document : Documents.of(file)) {
        writer.addDocument(document);
        documents++;
      }
    }
    return documents;
  }

  /** Writes the pages of a file, of which all that is made is made. */
  public void add(String file, List<IndexedPage> pages) throws IOException {
    for (IndexedPage page : pages) {
      writer.addDocument(Documents.page(file, page));
    }
  }

  /** Commits. */
  @Override
  public void close() throws IOException {
    writer.commit();
    writer.close();
    directory.close();
  }
}
