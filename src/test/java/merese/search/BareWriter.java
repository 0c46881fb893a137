package merese.search;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.apache.lucene.document.Document;
import org.apache.lucene.index.IndexWriter;
import org.apache.lucene.index.IndexWriterConfig;
import org.apache.lucene.store.Directory;
import org.apache.lucene.store.FSDirectory;

/**
 * Writes documents with Lucene and nothing else: what a benchmark holds building an index against.
 */
public final class BareWriter {
  private final List<Document> documents = new ArrayList<>();

  /** Makes the documents, with the fields that the index has. */
  public BareWriter(List<IndexedFile> files) {
    files.forEach(file -> documents.addAll(Documents.of(file)));
  }

  public int size() {
    return documents.size();
  }

  /** Writes them with the index's analyzer and commits. */
  public void write(Path folder) throws IOException {
    IndexWriterConfig config = new IndexWriterConfig(new FoldedText()).setRAMBufferSizeMB(48);
    try (Directory directory = FSDirectory.open(folder);
        IndexWriter writer = new IndexWriter(directory, config)) {
      for (Document document : documents) {
        writer.addDocument(document);
      }
      writer.commit();
    }
  }
}
