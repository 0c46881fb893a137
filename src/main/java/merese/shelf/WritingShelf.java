package merese.shelf;

import java.io.Closeable;
import java.nio.file.Path;
import java.time.Clock;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Collections;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import merese.model.Edition;
import merese.model.Note;
import merese.model.Work;
import merese.search.Hits.RecordHit;
import merese.search.Hits.SourceHit;
import merese.search.NoteIndex;
import merese.search.SourceSet;
import merese.store.LibraryException;
import merese.store.LibraryFile;
import merese.store.LibraryFolder;
import merese.store.LibraryJson;
import merese.store.Problem;
import merese.store.Stored;
import merese.vocabulary.Folding;
import merese.vocabulary.Thesaurus;

/**
 * A library as somebody who writes into it needs it: what its words mean and where its sources are.
 * It reads the index as it last was and the few works that were written since, so that a note need
 * not wait for the index to be brought up to date; the next question does that.
 *
 * <p>Not for several threads at once.
 */
public final class WritingShelf implements Lexicon, Closeable {
  private static final String WORKS = "works/";

  private final LibraryFolder folder;
  private final NoteIndex index;

  /** The works that the index does not hold as they are, by file; null for one that is gone. */
  private final Map<String, Work> since = new LinkedHashMap<>();

  private final Map<String, Problem> unread = new TreeMap<>();

  private Thesaurus thesaurus;

  private WritingShelf(LibraryFolder folder, NoteIndex index) {
    this.folder = folder;
    this.index = index;
  }

  /**
   * Where very much was written since, or the vocabulary, the index is brought up to date first.
   *
   * @throws LibraryException where a newer program made the library
   */
  public static WritingShelf open(LibraryFolder folder, Watcher watcher) {
    folder.requireKnownFormat();
    IndexKeeper keeper = new IndexKeeper(folder, watcher, Clock.systemUTC(), IndexKeeper.LARGE);
    IndexKeeper.AsItWas opened = keeper.openAsItWas();
    WritingShelf shelf = new WritingShelf(folder, opened.index());
    for (String gone : opened.changes().removed()) {
      shelf.since.put(gone, null);
    }
    for (Shortfall shortfall : IndexKeeper.shortfalls(opened.index(), folder)) {
      boolean lost =
          shortfall.effect() == Shortfall.Effect.UNREADABLE
              || shortfall.effect() == Shortfall.Effect.REPEATS;
      if (lost
          && shortfall.file().startsWith(WORKS)
          && !opened.changes().removed().contains(shortfall.file())) {
        shelf.unread.put(shortfall.file(), shortfall.problems().get(0));
      }
    }
    for (LibraryFile file : opened.changes().changed()) {
      if (file.kind() == LibraryFile.Kind.WORK) {
        shelf.reread(file.relative());
      }
    }
    return shelf;
  }

  /** Takes note that a work has been written. */
  public void reread(String file) {
    try {
      since.put(file, folder.readWork(folder.resolve(file)).value());
      unread.remove(file);
    } catch (LibraryException e) {
      since.put(file, null); // a question, and writing to it, will say what is wrong
      unread.put(file, e.problems().get(0));
    }
  }

  /**
   * What everything is called. Read for it are also the few files that the index leaves out, for
   * what other files have, and those of works without an edition.
   */
  public KnownNames names() {
    List.copyOf(unread.keySet()).forEach(this::reread);
    for (RecordHit bare : index.recordHits(RecordTypes.BARE_WORK)) {
      if (!since.containsKey(bare.file())) {
        reread(bare.file());
      }
    }
    return new KnownNames(index, since);
  }

  public LibraryFolder folder() {
    return folder;
  }

  /**
   * What is wrong with the files of works that are left out, since they cannot be read or have what
   * another has: a problem a file, by its path below the library folder.
   */
  public Map<String, Problem> unread() {
    return Collections.unmodifiableMap(unread);
  }

  /** The work of a source as it is on the disk now. */
  public Stored<Work> read(SourceAddress source) {
    Path file = folder.resolve(source.file());
    return folder.readWork(file);
  }

  @Override
  public Thesaurus thesaurus() {
    if (thesaurus == null) {
      thesaurus = VocabularyRecords.forWriting(index);
    }
    return thesaurus;
  }

  @Override
  public Map<String, Set<String>> meanings(Collection<String> terms) {
    return TextMeanings.ofLabels(index, thesaurus(), terms);
  }

  @Override
  public Set<String> meaningsInText(String term) {
    SourceSet changed = index.census().inFiles(since.keySet());
    Set<String> concepts = TextMeanings.inText(index, thesaurus(), term, Optional.of(changed));
    for (Work work : since.values()) {
      if (work != null) {
        for (Edition edition : work.editions()) {
          for (Note note : edition.notes()) {
            TextMeanings.add(thesaurus(), term, note, concepts);
          }
        }
      }
    }
    return concepts;
  }

  /**
   * The sources that somebody may mean: the one whose key was typed, else those that each of the
   * words is a word of, else those of which each begins one. In the order of years.
   */
  public List<SourceAddress> find(String typed) {
    String key = typed.strip();
    Optional<SourceAddress> exact = withKey(key);
    if (exact.isPresent()) {
      return List.of(exact.get());
    }
    List<String> words = Folding.words(key);
    if (words.isEmpty()) {
      return List.of();
    }
    List<SourceAddress> found = best(words, SourceAddress.WHOLE_WORDS, index.sourcesNamed(words));
    if (found.isEmpty()) {
      found = best(words, SourceAddress.BEGUN, index.sourcesBegun(words));
    }
    found.sort(
        Comparator.comparing((SourceAddress s) -> s.year().orElse(Integer.MAX_VALUE))
            .thenComparing(SourceAddress::key));
    return found;
  }

  /**
   * The sources that words name best.
   *
   * @param least how well at least
   */
  private List<SourceAddress> best(List<String> words, int least, List<SourceHit> indexed) {
    List<SourceAddress> found = new ArrayList<>();
    int best = least;
    for (SourceAddress source : asTheyAre(indexed)) {
      int fit = source.answersTo(words);
      if (fit > best) {
        found.clear();
        best = fit;
      }
      if (fit == best) {
        found.add(source);
      }
    }
    return found;
  }

  private Optional<SourceAddress> withKey(String key) {
    for (Map.Entry<String, Work> entry : since.entrySet()) {
      if (entry.getValue() != null) {
        for (Edition edition : entry.getValue().editions()) {
          if (edition.key().equals(key)) {
            return Optional.of(SourceAddress.of(entry.getKey(), entry.getValue(), edition));
          }
        }
      }
    }
    Optional<SourceHit> hit = index.findWholeSource(key);
    if (hit.isEmpty() || since.containsKey(hit.get().file())) {
      return Optional.empty();
    }
    Work work = LibraryJson.decodeWork(hit.get().payload());
    return Optional.of(SourceAddress.of(hit.get().file(), work, work.editions().get(0)));
  }

  /** All sources. */
  public List<SourceAddress> sources() {
    return asTheyAre(index.sources());
  }

  /** Sources of the index, and those that were written since. */
  private List<SourceAddress> asTheyAre(List<SourceHit> indexed) {
    List<SourceAddress> sources = new ArrayList<>();
    for (SourceHit hit : indexed) {
      if (!since.containsKey(hit.file())) {
        sources.add(SourceAddress.of(hit.file(), PackedSource.unpack(hit.payload())));
      }
    }
    for (Map.Entry<String, Work> entry : since.entrySet()) {
      if (entry.getValue() != null) {
        for (Edition edition : entry.getValue().editions()) {
          sources.add(SourceAddress.of(entry.getKey(), entry.getValue(), edition));
        }
      }
    }
    return sources;
  }

  @Override
  public void close() {
    index.close();
  }
}
