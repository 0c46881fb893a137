package merese.search;

import java.util.List;
import merese.search.IndexedFile.IndexedCheck;
import merese.search.IndexedFile.IndexedRecord;
import merese.search.IndexedFile.IndexedSource;
import org.apache.lucene.document.Document;
import org.apache.lucene.document.Field;
import org.apache.lucene.document.Field.Store;
import org.apache.lucene.document.StoredField;
import org.apache.lucene.document.StringField;

/** Makes the index's documents. */
final class Documents {
  private Documents() {}

  static Document note(String file, IndexedNote note) {
    Document document = of(Fields.NOTE, file, note.payload());
    document.add(new StringField(Fields.EDITION, note.edition(), Store.YES));
    document.add(new StoredField(Fields.ORDER, note.order()));
    String unique = Fields.unique(note.edition(), note.order());
    document.add(new StringField(Fields.UNIQUE, unique, Store.NO));
    addAll(document, Fields.CONCEPT, note.concepts());
    addAll(document, Fields.MEANING, note.meanings());
    addAll(document, Fields.POSSIBLE, note.possible());
    if (note.unassigned()) {
      document.add(new StringField(Fields.UNASSIGNED, "yes", Store.NO));
    }
    document.add(SearchFields.words(Fields.PRINTED, note.printed()));
    for (List<String> printed : note.printed()) {
      document.add(new StringField(Fields.PRINTED_KEY, String.join(" ", printed), Store.NO));
    }
    for (String piece : note.pieces()) {
      document.add(new StringField(Fields.PIECE, Fields.piece(note.edition(), piece), Store.NO));
    }
    SearchFields.add(document, HitKind.NOTE, note.searchable(), false);
    return document;
  }

  static Document source(String file, IndexedSource source) {
    Document document = of(Fields.SOURCE, file, source.payload());
    document.add(new StringField(Fields.EDITION, source.edition(), Store.YES));
    document.add(new StoredField(Fields.FILING, source.filing()));
    SearchFields.add(document, HitKind.SOURCE, source.searchable(), true);
    return document;
  }

  static Document check(String file, IndexedCheck check) {
    Document document = of(Fields.CHECK, file, check.payload());
    document.add(new StringField(Fields.EDITION, check.edition(), Store.YES));
    document.add(new StringField(Fields.CONCEPT, check.concept(), Store.NO));
    return document;
  }

  static Document record(String file, IndexedRecord item) {
    Document document = of(item.type(), file, item.payload());
    if (item.found().isPresent()) {
      SearchFields.add(document, item.found().get().kind(), item.found().get().by(), true);
    }
    return document;
  }

  static Document stamp(FileStamp stamp) {
    Document document = new Document();
    document.add(new StringField(Fields.TYPE, Fields.STAMP, Store.NO));
    document.add(new StringField(Fields.FILE, stamp.path(), Store.YES));
    document.add(new StoredField(Fields.SIZE, stamp.size()));
    document.add(new StoredField(Fields.MODIFIED, stamp.modified()));
    document.add(new StoredField(Fields.HASH, stamp.hash()));
    document.add(new StoredField(Fields.SETTLED, stamp.settled() ? 1 : 0));
    return document;
  }

  private static Document of(String type, String file, byte[] payload) {
    Document document = new Document();
    document.add(new StringField(Fields.TYPE, type, Store.NO));
    document.add(new StringField(Fields.FILE, file, Store.YES));
    document.add(new StoredField(Fields.PAYLOAD, payload));
    return document;
  }

  private static void addAll(Document document, String field, Iterable<String> values) {
    for (String value : values) {
      document.add(new StringField(field, value, Field.Store.NO));
    }
  }
}
