package merese.search;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.OptionalInt;
import java.util.Set;
import merese.search.Hits.Owner;
import merese.search.IndexedFile.IndexedCheck;
import merese.search.IndexedFile.IndexedLabels;
import merese.search.IndexedFile.IndexedRecord;
import merese.search.IndexedFile.IndexedSource;
import merese.search.IndexedFile.SourceTraits;
import merese.search.IndexedNote.InText;
import merese.vocabulary.PageReading;
import merese.vocabulary.PageWord;
import org.apache.lucene.document.BinaryDocValuesField;
import org.apache.lucene.document.Document;
import org.apache.lucene.document.Field.Store;
import org.apache.lucene.document.SortedDocValuesField;
import org.apache.lucene.document.StoredField;
import org.apache.lucene.document.StringField;
import org.apache.lucene.util.BytesRef;

/** Makes the index's documents. */
final class Documents {
  private static final String NONE = "";
  private static final byte[] NOWHERE = {};

  /** Makes years numbers of equal length, those before the common era too. */
  private static final long FIRST_YEAR = 10_000_000_000L;

  /** A printed term of up to so many words is found by all runs of its words. */
  private static final int WHOLE_TERM = 60;

  /** One that is longer is no term, and is found by runs of so many. */
  private static final int LONG_RUN = 6;

  private static final int LONGEST_MEANT = 1_000;

  private Documents() {}

  /** All that a file brings. */
  static List<Document> of(IndexedFile file) {
    String path = file.stamp().path();
    List<Document> documents = new ArrayList<>();
    for (IndexedSource source : file.sources()) {
      addSource(path, source, file, documents);
    }
    for (IndexedSource source : file.sources()) {
      documents.add(whole(path, source));
    }
    for (IndexedLabels labels : file.labels()) {
      documents.add(labels(path, labels));
    }
    for (IndexedRecord item : file.records()) {
      documents.add(record(path, item));
    }
    documents.add(stamp(file.stamp()));
    return documents;
  }

  /**
   * Adds an edition with its notes and its checks, one after another: a table of a segment knows
   * them as a stretch of documents, of which the first is what every answer needs of it.
   */
  private static void addSource(
      String path, IndexedSource source, IndexedFile file, List<Document> to) {
    Owner owner = new Owner(path, source.edition(), source.standing());
    to.add(brief(owner, source));
    for (IndexedNote note : file.notes()) {
      if (note.edition().equals(source.edition())) {
        to.add(note(owner, note));
      }
    }
    for (IndexedCheck check : file.checks()) {
      if (check.edition().equals(source.edition())) {
        to.add(check(owner, check));
      }
    }
  }

  private static Document note(Owner owner, IndexedNote note) {
    Document document = of(owner, note.order(), note.payload());
    add(document, Fields.IN_SOURCE, note.edition());
    addAll(document, Fields.CONCEPT, note.concepts());
    addAll(document, Fields.MEANING, note.meanings());
    for (NoteCriterion.Says says : note.says()) {
      add(document, Fields.SAYS, Fields.says(says));
    }
    for (InText meant : note.inText()) {
      addMeant(document, meant);
    }
    for (NoteCriterion.Together what : note.together()) {
      add(document, Fields.TOGETHER, Fields.together(what));
    }
    addAll(document, Fields.POSSIBLE, note.possible());
    if (note.unassigned()) {
      add(document, Fields.UNASSIGNED, Fields.YES);
    }
    for (List<String> words : note.printed()) {
      add(document, Fields.PRINTED_WHOLE, String.join(" ", words));
    }
    addAll(document, Fields.PRINTED, runs(note.printed()));
    for (String piece : note.pieces()) {
      add(document, Fields.PIECE, Fields.piece(note.edition(), piece));
    }
    addAll(document, Fields.CORRECTS, note.corrects());
    if (note.object().isPresent()) {
      add(document, Fields.OBJECT, note.object().get());
    }
    SearchFields.add(document, HitKind.NOTE, note.edition(), note.searchable());
    return document;
  }

  /** What is too long for a term gives no word its meaning. */
  private static void addMeant(Document document, InText meant) {
    String words = String.join(" ", meant.words());
    if (words.length() <= LONGEST_MEANT) {
      add(document, Fields.MEANT_IN_TEXT, words);
      add(document, Fields.MEANT_IN_TEXT, Fields.meant(meant.words(), meant.concept()));
      if (meant.several()) {
        add(document, Fields.WORDS_IN_TEXT, meant.concept() + '\n' + words);
      }
    }
  }

  static Document page(String file, IndexedPage page) {
    Owner owner = new Owner(file, page.edition(), NOWHERE);
    Document document = of(owner, page.page(), page.payload());
    add(document, Fields.UNIQUE, Fields.page(file, page.page()));
    String inFile = Fields.bounded(file);
    document.add(new SortedDocValuesField(Fields.PAGE_FILE, new BytesRef(inFile)));
    for (String key : page.at()) {
      add(document, Fields.PAGE_AT, Fields.at(page.edition(), key));
    }
    for (Map.Entry<String, Integer> name : page.names().entrySet()) {
      add(document, Fields.PAGE_NAMES, name.getKey());
      for (int count = 2; count <= name.getValue(); count++) {
        add(document, Fields.PAGE_PLACES, Fields.places(name.getKey(), count));
      }
    }
    List<List<String>> exact = new ArrayList<>();
    List<List<String>> loose = new ArrayList<>();
    for (PageReading.Run run : page.reading().runs()) {
      exact.add(run.words().stream().map(w -> Fields.bounded(w.exact())).toList());
      loose.add(run.words().stream().map(w -> Fields.bounded(w.loose())).toList());
    }
    for (PageWord broken : OverPageEnd.brokenWords(page.reading())) {
      exact.add(List.of(Fields.bounded(broken.exact())));
      loose.add(List.of(Fields.bounded(broken.loose())));
    }
    document.add(SearchFields.words(Fields.PAGE, exact));
    document.add(SearchFields.words(Fields.PAGE_LOOSE, loose));
    addAll(document, Fields.PAGE_END, OverPageEnd.of(page.reading()));
    document.add(new StoredField(Fields.PAGE_TEXT, page.reading().kept()));
    add(document, Fields.FOUND, HitKind.PAGE.code());
    add(document, Fields.EDITION, page.edition());
    return document;
  }

  private static Set<String> runs(List<List<String>> printed) {
    Set<String> runs = new HashSet<>();
    for (List<String> words : printed) {
      int longest = words.size() <= WHOLE_TERM ? words.size() : LONG_RUN;
      for (int from = 0; from < words.size(); from++) {
        StringBuilder run = new StringBuilder(words.get(from));
        runs.add(run.toString());
        for (String next : words.subList(from + 1, Math.min(words.size(), from + longest))) {
          runs.add(run.append(' ').append(next).toString());
        }
      }
    }
    return runs;
  }

  /** What every answer needs of an edition. */
  private static Document brief(Owner owner, IndexedSource source) {
    Document brief = of(owner, 0, source.brief());
    String file = owner.file();
    add(brief, Fields.TYPE, Fields.SOURCE);
    add(brief, Fields.BRIEF_SOURCE, source.edition());
    String name = file.substring(file.lastIndexOf('/') + 1);
    add(brief, Fields.FILE_NAME, name);
    addSmall(brief, Fields.KEY_IN_SMALL, source.edition());
    addSmall(brief, Fields.FILE_IN_SMALL, name);
    traits(brief, source.traits());
    SearchFields.add(brief, HitKind.SOURCE, source.edition(), source.searchable());
    return brief;
  }

  private static void addSmall(Document brief, String field, String name) {
    String small = Fields.small(name);
    if (!small.equals(name)) {
      add(brief, field, small);
    }
  }

  /** All of an edition. */
  private static Document whole(String file, IndexedSource source) {
    Document whole = of(file, source.edition(), source.whole());
    add(whole, Fields.WHOLE_SOURCE, source.edition());
    return whole;
  }

  private static void traits(Document brief, SourceTraits traits) {
    add(brief, Fields.SOURCE_YEAR, year(traits.year()));
    add(brief, Fields.SOURCE_KIND, traits.kind());
    add(brief, Fields.REFERENCE, traits.reference());
    addAll(brief, Fields.NAMED_BY, traits.namedBy());
    addAll(brief, Fields.MARK, traits.marks());
    if (traits.own()) {
      add(brief, Fields.OWN_COPY, Fields.YES);
    }
    if (traits.mine()) {
      add(brief, Fields.OWN_WORK, Fields.YES);
    }
  }

  /** A term for a year; the terms' order is that of the years, undated last. */
  static String year(OptionalInt year) {
    return year.isPresent() ? Long.toString(FIRST_YEAR + year.getAsInt()) : Fields.UNDATED;
  }

  /** What {@link #year} has made a term of. */
  static OptionalInt year(String term) {
    return term.equals(Fields.UNDATED)
        ? OptionalInt.empty()
        : OptionalInt.of((int) (Long.parseLong(term) - FIRST_YEAR));
  }

  private static Document check(Owner owner, IndexedCheck check) {
    Document document = of(owner, 0, check.payload());
    add(document, Fields.CHECKED, check.concept());
    add(document, Fields.CHECKED, Fields.checked(check.concept(), check.limited()));
    return document;
  }

  private static Document labels(String file, IndexedLabels labels) {
    Document document = of(file, NONE, labels.payload());
    for (List<String> words : labels.words()) {
      add(document, Fields.LABEL, String.join(" ", words));
    }
    return document;
  }

  private static Document record(String file, IndexedRecord item) {
    Document document = of(file, NONE, item.payload());
    add(document, Fields.TYPE, item.type());
    if (item.found().isPresent()) {
      SearchFields.add(document, item.found().get().kind(), NONE, item.found().get().by());
    }
    return document;
  }

  static Document stamp(FileStamp stamp) {
    Document document = of(stamp.path(), NONE, StoredValue.payload(stamp));
    add(document, Fields.TYPE, Fields.STAMP);
    add(document, Fields.STAMP_OF, stamp.path());
    add(document, Fields.STAMP_IN, Fields.folderOf(stamp.path()));
    return document;
  }

  private static Document of(String file, String edition, byte[] payload) {
    return of(new Owner(file, edition, NOWHERE), 0, payload);
  }

  private static Document of(Owner owner, int order, byte[] payload) {
    Document document = new Document();
    add(document, Fields.FILE, owner.file());
    document.add(
        new BinaryDocValuesField(
            Fields.STORED, new BytesRef(StoredValue.bytes(owner, order, payload))));
    return document;
  }

  private static void addAll(Document document, String field, Iterable<String> values) {
    for (String value : values) {
      add(document, field, value);
    }
  }

  private static void add(Document document, String field, String value) {
    document.add(new StringField(field, Fields.bounded(value), Store.NO));
  }
}
