package merese.search;

import java.io.Closeable;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.ToIntFunction;
import merese.search.Hits.CheckHit;
import merese.search.Hits.NoteHit;
import merese.search.Hits.RecordHit;
import merese.search.Hits.SourceHit;
import merese.search.PageHits.PageHit;
import merese.vocabulary.Thesaurus;

/**
 * One commit of the index, open for questions. Every answer is complete (no cut-off) and in the
 * order of files, editions and notes, so that it is the same however the index came about.
 */
public final class NoteIndex implements Closeable {
  /**
   * The layout of the documents and of all that is packed into them; an index of another one is
   * built again. Raise it with any change of either.
   */
  static final String LAYOUT = "10";

  static final String LAYOUT_KEY = "merese.layout";

  /** Below this an index is checked against its check sums each time it is opened; in bytes. */
  static final long CHECKED_SIZE = 32L << 20;

  private final Path folder;
  private final Postings postings;

  /** Lucene's own index, opened for the first question in words. */
  private LucenePostings lucene;

  private NoteIndex(Path folder, Postings postings) {
    this.folder = folder;
    this.postings = postings;
  }

  /**
   * Opens the newest commit.
   *
   * @throws IndexDamagedException where there is none that can be read
   */
  public static NoteIndex open(Path folder) {
    Optional<TermTable> table = TermTable.open(folder);
    if (table.isPresent()) {
      return new NoteIndex(folder, table.get());
    }
    LucenePostings lucene = LucenePostings.open(folder);
    if (TermTable.isMadeFor(lucene.reader().numDocs())) {
      closeQuietly(lucene);
      throw new IndexDamagedException("the index lacks a part", null);
    }
    return new NoteIndex(folder, lucene);
  }

  /** The notes that meet at least one of the criteria. */
  public List<NoteHit> notes(Collection<? extends NoteCriterion> anyOf) {
    List<String> terms = new ArrayList<>();
    for (NoteCriterion criterion : anyOf) {
      terms.add(Fields.term(criterion));
    }
    return notesWith(terms);
  }

  /**
   * One note for each printed term that begins so.
   *
   * @param begun folded, with a space between words
   * @param most how many terms at most
   */
  public List<NoteHit> printing(String begun, int most) {
    try {
      List<NoteHit> hits = new ArrayList<>();
      for (String term : postings.termsFrom(Fields.term(Fields.PRINTED_WHOLE, begun), most)) {
        Optional<StoredValue> value = postings.anyValue(term);
        if (value.isPresent()) {
          StoredValue of = value.get();
          hits.add(new NoteHit(of.file(), of.edition(), of.order(), of.payload()));
        }
      }
      return hits;
    } catch (IOException | RuntimeException e) {
      throw new IndexDamagedException("the index cannot be read", e);
    }
  }

  /** The notes whose place in the index depends on these concepts, or on labels at large. */
  public List<NoteHit> notesDependingOn(Collection<String> concepts) {
    List<String> terms = new ArrayList<>();
    for (String concept : concepts) {
      terms.add(Fields.term(Fields.CONCEPT, concept));
    }
    terms.add(Fields.term(Fields.UNASSIGNED, Fields.YES));
    return notesWith(terms);
  }

  private List<NoteHit> notesWith(List<String> terms) {
    List<NoteHit> hits = new ArrayList<>();
    for (StoredValue value : values(terms)) {
      hits.add(new NoteHit(value.file(), value.edition(), value.order(), value.payload()));
    }
    return hits;
  }

  /** All editions. */
  public List<SourceHit> sources() {
    List<SourceHit> hits = new ArrayList<>();
    for (StoredValue value : ofType(Fields.SOURCE)) {
      hits.add(new SourceHit(value.file(), value.edition(), value.payload()));
    }
    return hits;
  }

  /** All that is known of one edition, but its notes and its check log. */
  public byte[] wholeSource(String edition) {
    return findWholeSource(edition)
        .orElseThrow(() -> new IndexDamagedException("the index lacks " + edition, null))
        .payload();
  }

  /** The same with its file; empty where no edition has the key. */
  public Optional<SourceHit> findWholeSource(String edition) {
    for (StoredValue value : values(List.of(Fields.term(Fields.WHOLE_SOURCE, edition)))) {
      return Optional.of(new SourceHit(value.file(), edition, value.payload()));
    }
    return Optional.empty();
  }

  /** The lines of the check logs that are about one of these concepts. */
  public List<CheckHit> checks(Collection<String> concepts) {
    List<String> terms = new ArrayList<>();
    for (String concept : concepts) {
      terms.add(Fields.term(Fields.CHECKED, concept));
    }
    List<CheckHit> hits = new ArrayList<>();
    for (StoredValue value : values(terms)) {
      hits.add(new CheckHit(value.edition(), value.payload()));
    }
    return hits;
  }

  /**
   * What the vocabulary has under one of these labels.
   *
   * @param labels each as folded words
   */
  public List<byte[]> labelled(Collection<List<String>> labels) {
    List<String> terms = new ArrayList<>();
    for (List<String> words : labels) {
      terms.add(Fields.term(Fields.LABEL, String.join(" ", words)));
    }
    return payloads(values(terms));
  }

  /** What was stored whole under this type, in the order of files. */
  public List<byte[]> records(String type) {
    return payloads(ofType(type));
  }

  private static List<byte[]> payloads(List<StoredValue> values) {
    List<byte[]> payloads = new ArrayList<>();
    for (StoredValue value : values) {
      payloads.add(value.payload());
    }
    return payloads;
  }

  /** What was stored whole under this type, with the file that each is from. */
  public List<RecordHit> recordHits(String type) {
    List<RecordHit> hits = new ArrayList<>();
    for (StoredValue value : ofType(type)) {
      hits.add(new RecordHit(value.file(), value.payload()));
    }
    return hits;
  }

  /**
   * Answers a question in words, best first.
   *
   * @param thesaurus what concepts that are asked for are looked up in
   * @param rank the place of an edition, by its key, among hits that are otherwise equal; it is
   *     asked with an empty key for what is of no edition
   */
  public FoundHits find(
      FindQuery asked, int limit, Thesaurus thesaurus, ToIntFunction<String> rank) {
    return Finder.ask(lucene(), asked, limit, thesaurus, rank);
  }

  /**
   * Pages of books that have all that a question in words asks for; arguments as for {@link #find}.
   */
  public PageHits findPages(
      FindQuery asked, int limit, Thesaurus thesaurus, ToIntFunction<String> rank) {
    return Finder.pages(lucene(), asked, limit, thesaurus, rank);
  }

  /** The pages on which a name of one of the concepts, or of what is narrower, stands. */
  public List<PageHit> pagesNaming(Collection<String> concepts) {
    List<String> terms = new ArrayList<>();
    for (String concept : concepts) {
      terms.add(Fields.term(Fields.PAGE_NAMES, concept));
    }
    List<PageHit> hits = new ArrayList<>();
    for (StoredValue value : values(terms)) {
      hits.add(PageFinder.hit(value));
    }
    return hits;
  }

  /** The pages that have all words of one of the labels somewhere, if only loosely. */
  public List<PageHit> pagesHolding(Collection<List<String>> labels) {
    return new PageFinder(lucene()).holding(labels);
  }

  /** The text of a page, its lines with a newline between. */
  public String pageText(String file, int page) {
    return new PageFinder(lucene()).text(file, page);
  }

  /** Words like those of the question that nothing here has. */
  public List<NearWord> near(FindQuery asked) {
    return Finder.near(lucene(), asked);
  }

  private LucenePostings lucene() {
    if (lucene == null) {
      lucene = postings instanceof LucenePostings opened ? opened : LucenePostings.open(folder);
    }
    return lucene;
  }

  /** The files that this commit was made from, by path. */
  public Map<String, FileStamp> stamps() {
    Map<String, FileStamp> stamps = new HashMap<>();
    for (StoredValue value : ofType(Fields.STAMP)) {
      stamps.put(value.file(), StoredValue.stamp(value));
    }
    return stamps;
  }

  private List<StoredValue> ofType(String type) {
    return values(List.of(Fields.term(Fields.TYPE, type)));
  }

  private List<StoredValue> values(List<String> terms) {
    try {
      return postings.values(terms);
    } catch (IOException | RuntimeException e) {
      throw new IndexDamagedException("the index cannot be read", e);
    }
  }

  @Override
  public void close() {
    closeQuietly(postings);
    closeQuietly(lucene);
  }

  static void closeQuietly(Closeable open) {
    try {
      if (open != null) {
        open.close();
      }
    } catch (IOException e) {
      // Only reading was done: there is nothing to lose.
    }
  }
}
