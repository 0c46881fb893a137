package merese.search;

import java.io.Closeable;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collection;
import java.util.Collections;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import java.util.TreeMap;
import merese.search.Hits.CheckHit;
import merese.search.Hits.NoteHit;
import merese.search.Hits.NoteTaker;
import merese.search.Hits.NoteTest;
import merese.search.Hits.Owner;
import merese.search.Hits.RecordHit;
import merese.search.Hits.SourceHit;
import merese.search.Hits.SourceTaker;
import merese.search.PageHits.PageHit;
import merese.search.PageHits.PageTaker;
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
  static final String LAYOUT = "62";

  static final String LAYOUT_KEY = "merese.layout";

  /** Below this an index is checked against its check sums each time it is opened; in bytes. */
  static final long CHECKED_SIZE = 32L << 20;

  private final Path folder;
  private final CommitTables postings;

  /** Lucene's own index, opened for the first question in words. */
  private LuceneCommit lucene;

  private NoteIndex(Path folder, CommitTables postings) {
    this.folder = folder;
    this.postings = postings;
  }

  /**
   * Opens the newest commit.
   *
   * @throws IndexDamagedException where there is none that can be read
   */
  public static NoteIndex open(Path folder) {
    Optional<CommitTables> tables = CommitTables.open(folder);
    if (tables.isEmpty()) {
      closeQuietly(LuceneCommit.open(folder)); // says what is wrong where more than the tables is
      IndexUpdate.of(folder).withNewTables().close();
      tables = CommitTables.open(folder);
    }
    if (tables.isEmpty()) {
      throw new IndexDamagedException("the index lacks a part", null);
    }
    return new NoteIndex(folder, tables.get());
  }

  /** The notes that meet at least one of the criteria. */
  public List<NoteHit> notes(Collection<? extends NoteCriterion> anyOf) {
    return notesWith(terms(anyOf));
  }

  /** The same one by one, in no order: nothing is kept of those that the taker lets go. */
  public void each(Collection<? extends NoteCriterion> anyOf, NoteTaker taker) {
    try {
      postings.each(terms(anyOf), new TakingNotes(taker));
    } catch (RuntimeException e) {
      throw damaged(e);
    }
  }

  /** Some notes one by one, in no order. */
  public void each(NoteSet notes, NoteTaker taker) {
    try {
      postings.each(notes.bySegment(), new TakingNotes(taker));
    } catch (RuntimeException e) {
      throw damaged(e);
    }
  }

  /** Those of some notes that pass a test. */
  public NoteSet only(NoteSet notes, NoteTest test) {
    try {
      return new NoteSet(postings.only(notes.bySegment(), test));
    } catch (RuntimeException e) {
      throw damaged(e);
    }
  }

  /** Some editions one by one, in no order. */
  public void each(SourceSet sources, SourceTaker taker) {
    try {
      postings.each(new Census(postings).briefs(sources), new TakingSources(taker));
    } catch (RuntimeException e) {
      throw damaged(e);
    }
  }

  /** Some lines of check logs, in the order of files and editions. */
  public List<CheckHit> checks(NoteSet checks) {
    List<StoredValue> values = new ArrayList<>();
    try {
      postings.each(checks.bySegment(), new Adding(values));
    } catch (RuntimeException e) {
      throw damaged(e);
    }
    Collections.sort(values);
    return checks(values);
  }

  private record Adding(List<StoredValue> values) implements CommitTables.Taker {
    @Override
    public void take(StoredValue value) {
      values.add(value);
    }
  }

  /** Counts what notes say, and which editions they are of, unread. */
  public Census census() {
    return new Census(postings);
  }

  /** Each meaning that the text of some note gives a term, and of how many notes. */
  public Map<String, Integer> meantInText(List<String> words) {
    try {
      String term = Fields.term(Fields.MEANT_IN_TEXT, String.join(" ", words));
      Map<String, Integer> meanings = new TreeMap<>();
      for (Map.Entry<String, Integer> longer : postings.countLongerThan(term).entrySet()) {
        if (longer.getKey().charAt(term.length()) == '\n') {
          meanings.put(longer.getKey().substring(term.length() + 1), longer.getValue());
        }
      }
      return meanings;
    } catch (RuntimeException e) {
      throw damaged(e);
    }
  }

  /**
   * The printed terms of several words of which a text says that they mean a concept: their folded
   * words, with a space between, in no order.
   */
  public Set<String> wordsInText(String concept) {
    try {
      return postings.endings(Fields.term(Fields.WORDS_IN_TEXT, concept + '\n'));
    } catch (RuntimeException e) {
      throw damaged(e);
    }
  }

  private record TakingNotes(NoteTaker taker) implements CommitTables.Taker {
    @Override
    public void take(StoredValue value) {
      taker.take(value.note());
    }
  }

  private record TakingSources(SourceTaker taker) implements CommitTables.Taker {
    @Override
    public void take(StoredValue value) {
      taker.take(source(value));
    }
  }

  static List<String> terms(Collection<? extends NoteCriterion> criteria) {
    List<String> terms = new ArrayList<>();
    for (NoteCriterion criterion : criteria) {
      terms.add(Fields.term(criterion));
    }
    return terms;
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
          hits.add(of.note());
        }
      }
      return hits;
    } catch (RuntimeException e) {
      throw new IndexDamagedException("the index cannot be read", e);
    }
  }

  private List<NoteHit> notesWith(List<String> terms) {
    List<NoteHit> hits = new ArrayList<>();
    for (StoredValue value : values(terms)) {
      hits.add(value.note());
    }
    return hits;
  }

  /** What every answer needs of one edition; empty where none has the key. */
  public Optional<SourceHit> source(String edition) {
    try {
      Optional<StoredValue> value = postings.anyValue(Fields.term(Fields.BRIEF_SOURCE, edition));
      return value.isPresent() ? Optional.of(source(value.get())) : Optional.empty();
    } catch (RuntimeException e) {
      throw damaged(e);
    }
  }

  private static SourceHit source(StoredValue value) {
    return new SourceHit(value.file(), value.edition(), value.payload());
  }

  /** How many editions have this author and year. */
  public int sourcesCalled(String reference) {
    try {
      return postings.count(Fields.term(Fields.REFERENCE, reference));
    } catch (RuntimeException e) {
      throw damaged(e);
    }
  }

  /** The keys of the editions that are the user's own work. */
  public Set<String> ownWork() {
    Set<String> keys = new HashSet<>();
    for (StoredValue value : values(List.of(Fields.term(Fields.OWN_WORK, Fields.YES)))) {
      keys.add(value.edition());
    }
    return keys;
  }

  /** The keys of some editions, by year, author and key (R4). */
  public List<String> keys(SourceSet sources) {
    List<Owner> owners = new ArrayList<>();
    try {
      postings.each(new Census(postings).briefs(sources), new TakingOwners(owners));
    } catch (RuntimeException e) {
      throw damaged(e);
    }
    owners.sort(new ByStanding());
    List<String> keys = new ArrayList<>();
    for (Owner owner : owners) {
      keys.add(owner.edition());
    }
    return keys;
  }

  private record TakingOwners(List<Owner> owners) implements CommitTables.Taker {
    @Override
    public void take(StoredValue value) {
      owners.add(value.owner());
    }
  }

  private static final class ByStanding implements Comparator<Owner> {
    @Override
    public int compare(Owner a, Owner b) {
      return Arrays.compareUnsigned(a.standing(), b.standing());
    }
  }

  /** The years that editions have, the earliest first; an empty one, for undated, comes last. */
  public List<OptionalInt> years() {
    String none = Fields.term(Fields.SOURCE_YEAR, "");
    try {
      List<OptionalInt> years = new ArrayList<>();
      for (String term : postings.termsFrom(none, Integer.MAX_VALUE)) {
        years.add(Documents.year(Fields.textOf(term)));
      }
      return years;
    } catch (RuntimeException e) {
      throw damaged(e);
    }
  }

  /**
   * Editions among which are all that can be called by each of some words.
   *
   * @param words folded; at least one
   */
  public List<SourceHit> sourcesNamed(List<String> words) {
    try {
      String rarest = "";
      int fewest = Integer.MAX_VALUE;
      for (String word : words) {
        int count = postings.count(Fields.term(Fields.NAMED_BY, word));
        if (count < fewest) {
          fewest = count;
          rarest = word;
        }
      }
      return sourcesWith(List.of(Fields.term(Fields.NAMED_BY, rarest)));
    } catch (RuntimeException e) {
      throw damaged(e);
    }
  }

  /** The same of those that can be called by words that begin so. */
  public List<SourceHit> sourcesBegun(List<String> words) {
    String longest = "";
    for (String word : words) {
      longest = word.length() > longest.length() ? word : longest;
    }
    try {
      return sourcesWith(
          postings.termsFrom(Fields.term(Fields.NAMED_BY, longest), Integer.MAX_VALUE));
    } catch (RuntimeException e) {
      throw damaged(e);
    }
  }

  private List<SourceHit> sourcesWith(List<String> terms) {
    List<SourceHit> hits = new ArrayList<>();
    values(terms).forEach(value -> hits.add(source(value)));
    return hits;
  }

  /**
   * The editions that have a key, or whose file has a name, or one that differs in capitals alone.
   */
  public List<SourceHit> sourcesCalledLike(String key, String file) {
    String smallKey = Fields.small(key);
    String smallFile = Fields.small(file);
    return sourcesInOrder(
        List.of(
            Fields.term(Fields.BRIEF_SOURCE, smallKey),
            Fields.term(Fields.KEY_IN_SMALL, smallKey),
            Fields.term(Fields.FILE_NAME, smallFile),
            Fields.term(Fields.FILE_IN_SMALL, smallFile)));
  }

  /** The editions that have a mark, as {@link IndexedFile.SourceTraits} has them. */
  public List<SourceHit> sourcesMarked(String mark) {
    return sourcesInOrder(List.of(Fields.term(Fields.MARK, mark)));
  }

  /** In the order of files, and in a file as they stand there. */
  private List<SourceHit> sourcesInOrder(List<String> terms) {
    List<SourceHit> hits = new ArrayList<>();
    try {
      postings.each(terms, new TakingSources(hits::add));
    } catch (RuntimeException e) {
      throw damaged(e);
    }
    hits.sort(Comparator.comparing(SourceHit::file)); // what a file brings comes in its order
    return hits;
  }

  /** All editions. */
  public List<SourceHit> sources() {
    List<SourceHit> hits = new ArrayList<>();
    for (StoredValue value : ofType(Fields.SOURCE)) {
      hits.add(source(value));
    }
    return hits;
  }

  /** All that is known of one edition, but its notes and its check log. */
  public byte[] wholeSource(String edition) {
    Optional<SourceHit> found = findWholeSource(edition);
    if (found.isEmpty()) {
      throw new IndexDamagedException("the index lacks " + edition, null);
    }
    return found.get().payload();
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
    return checks(values(terms));
  }

  private static List<CheckHit> checks(List<StoredValue> values) {
    List<CheckHit> hits = new ArrayList<>();
    for (StoredValue value : values) {
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

  /** Whether anything is stored under this type. */
  public boolean hasRecords(String type) {
    try {
      return postings.anyValue(Fields.term(Fields.TYPE, type)).isPresent();
    } catch (RuntimeException e) {
      throw damaged(e);
    }
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
   * <p>Of notes, and of sources, that fit equally well the order is that of the sources' standing.
   *
   * @param thesaurus what concepts that are asked for are looked up in
   */
  public FoundHits find(FindQuery asked, int limit, Thesaurus thesaurus) {
    return Finder.ask(lucene(), asked, limit, thesaurus);
  }

  /**
   * Pages of books that have all that a question in words asks for; arguments as for {@link #find}.
   */
  public PageHits findPages(FindQuery asked, int limit, Thesaurus thesaurus) {
    return Finder.pages(lucene(), asked, limit, thesaurus, this::standing);
  }

  /** Where a source stands among all; nowhere, and before all, where there is none any more. */
  private byte[] standing(String edition) {
    try {
      Optional<StoredValue> brief = postings.anyValue(Fields.term(Fields.BRIEF_SOURCE, edition));
      return brief.isPresent() ? brief.get().owner().standing() : new byte[0];
    } catch (RuntimeException e) {
      throw damaged(e);
    }
  }

  /**
   * The pages on which a name of one of the concepts, or of what is narrower, stands: by their
   * source, unread.
   */
  public Collection<PagesOfSource> gatherPagesNaming(Collection<String> concepts) {
    try {
      return postings.gather(namesOnPages(concepts));
    } catch (RuntimeException e) {
      throw damaged(e);
    }
  }

  private static List<String> namesOnPages(Collection<String> concepts) {
    List<String> terms = new ArrayList<>();
    for (String concept : concepts) {
      terms.add(Fields.term(Fields.PAGE_NAMES, concept));
    }
    return terms;
  }

  /**
   * How many names of a concept, and of what is narrower, stand on the pages of some sources: each
   * spelling once a page.
   *
   * @param naming the pages of these sources that {@link #gatherPagesNaming} found for it
   */
  public int countPlaces(String concept, Collection<PagesOfSource> naming) {
    Set<String> sources = new HashSet<>();
    int places = 0;
    for (PagesOfSource pages : naming) {
      sources.add(pages.owner().edition());
      places += pages.count();
    }
    try {
      int before = -1;
      for (int count = 2; places > before; count++) {
        before = places;
        String more = Fields.term(Fields.PAGE_PLACES, Fields.places(concept, count));
        for (PagesOfSource pages : postings.gather(List.of(more))) {
          places += sources.contains(pages.owner().edition()) ? pages.count() : 0;
        }
      }
      return places;
    } catch (RuntimeException e) {
      throw damaged(e);
    }
  }

  /**
   * The numbers of those of some pages that may be at some places, by source: all that are, and
   * perhaps others.
   *
   * @param around by source, what {@link merese.model.Locator#keysAround} gave of the places
   */
  public List<int[]> pagesAt(List<PagesOfSource> pages, Map<String, Set<String>> around) {
    Map<String, List<SegmentTable.Term>> terms = new HashMap<>();
    for (Map.Entry<String, Set<String>> source : around.entrySet()) {
      List<String> at = new ArrayList<>();
      for (String key : source.getValue()) {
        at.add(Fields.term(Fields.PAGE_AT, Fields.at(source.getKey(), key)));
      }
      terms.put(source.getKey(), CommitTables.terms(at));
    }
    try {
      return postings.among(pages, terms);
    } catch (RuntimeException e) {
      throw damaged(e);
    }
  }

  /** A page by its number in this commit. */
  public PageHit page(int document) {
    try {
      return PageFinder.hit(postings.value(document));
    } catch (RuntimeException e) {
      throw damaged(e);
    }
  }

  /**
   * The pages on which a name of one of the concepts, or of what is narrower, stands, and those
   * that have all words of one of the labels somewhere, if only loosely; each once, in no order.
   *
   * @param labels each as folded words
   */
  public void eachPage(
      Collection<String> concepts, Collection<List<String>> labels, PageTaker taker) {
    new PageFinder(lucene()).each(concepts, labels, taker);
  }

  /** The text of a page, its lines with a newline between. */
  public String pageText(String file, int page) {
    return new PageFinder(lucene()).text(file, page);
  }

  /** Words like those of the question that nothing here has. */
  public List<NearWord> near(FindQuery asked) {
    return Finder.near(lucene(), asked);
  }

  private LuceneCommit lucene() {
    if (lucene == null) {
      lucene = LuceneCommit.open(folder);
    }
    return lucene;
  }

  /** What a file looked like that this commit was made from; empty where it was not. */
  public Optional<FileStamp> stamp(String path) {
    try {
      Optional<StoredValue> value = postings.anyValue(Fields.term(Fields.STAMP_OF, path));
      return value.isPresent() ? Optional.of(StoredValue.stamp(value.get())) : Optional.empty();
    } catch (RuntimeException e) {
      throw damaged(e);
    }
  }

  /** The files of one folder that this commit was made from; not those of folders in it. */
  public List<FileStamp> stampsIn(String folder) {
    List<FileStamp> stamps = new ArrayList<>();
    for (StoredValue value : values(List.of(Fields.term(Fields.STAMP_IN, folder)))) {
      stamps.add(StoredValue.stamp(value));
    }
    return stamps;
  }

  /**
   * The folders of the files that this commit was made from.
   *
   * @param begun what their paths begin with
   */
  public List<String> folders(String begun) {
    try {
      List<String> folders = new ArrayList<>();
      for (String term :
          postings.termsFrom(Fields.term(Fields.STAMP_IN, begun), Integer.MAX_VALUE)) {
        folders.add(Fields.textOf(term));
      }
      return folders;
    } catch (RuntimeException e) {
      throw damaged(e);
    }
  }

  /** The path of the file of a name that brought sources; empty where none did. */
  public Optional<String> fileNamed(String name) {
    try {
      Optional<StoredValue> value = postings.anyValue(Fields.term(Fields.FILE_NAME, name));
      return value.isPresent() ? Optional.of(value.get().file()) : Optional.empty();
    } catch (RuntimeException e) {
      throw damaged(e);
    }
  }

  private List<StoredValue> ofType(String type) {
    return values(List.of(Fields.term(Fields.TYPE, type)));
  }

  private List<StoredValue> values(List<String> terms) {
    try {
      return postings.values(terms);
    } catch (RuntimeException e) {
      throw damaged(e);
    }
  }

  static IndexDamagedException damaged(RuntimeException cause) {
    return cause instanceof IndexDamagedException known
        ? known
        : new IndexDamagedException("the index cannot be read", cause);
  }

  @Override
  public void close() {
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
