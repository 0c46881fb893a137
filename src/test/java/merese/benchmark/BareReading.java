package merese.benchmark;

import java.io.IOException;
import java.nio.file.Path;
import java.util.zip.CRC32;
import org.apache.lucene.index.BinaryDocValues;
import org.apache.lucene.index.DirectoryReader;
import org.apache.lucene.index.DocValuesType;
import org.apache.lucene.index.FieldInfo;
import org.apache.lucene.index.LeafReader;
import org.apache.lucene.index.LeafReaderContext;
import org.apache.lucene.store.FSDirectory;
import org.apache.lucene.util.BytesRef;

/** Opens an index with Lucene alone and reads what each of its documents keeps. */
final class BareReading {
  private BareReading() {}

  /** Milliseconds. */
  static double of(Path index) throws IOException {
    long before = System.nanoTime();
    CRC32 sum = new CRC32(); // so that every byte is looked at
    int documents = 0;
    try (DirectoryReader reader = DirectoryReader.open(FSDirectory.open(index))) {
      for (LeafReaderContext context : reader.leaves()) {
        documents += read(context.reader(), sum);
      }
    }
    if (documents == 0) {
      throw new IllegalStateException("the index keeps nothing");
    }
    return (System.nanoTime() - before) / 1e6;
  }

  private static int read(LeafReader leaf, CRC32 sum) throws IOException {
    int documents = 0;
    for (FieldInfo field : leaf.getFieldInfos()) {
      if (field.getDocValuesType() == DocValuesType.BINARY) {
        BinaryDocValues kept = leaf.getBinaryDocValues(field.name);
        while (kept.nextDoc() != BinaryDocValues.NO_MORE_DOCS) {
          BytesRef bytes = kept.binaryValue();
          sum.update(bytes.bytes, bytes.offset, bytes.length);
          documents++;
        }
      }
    }
    return documents;
  }
}
