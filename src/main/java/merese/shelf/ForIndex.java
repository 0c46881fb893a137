package merese.shelf;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import merese.model.Check;
import merese.model.Concept;
import merese.model.Edition;
import merese.model.Homonym;
import merese.model.Mine;
import merese.model.Naming;
import merese.model.Note;
import merese.model.OwnObject;
import merese.model.Place;
import merese.model.Work;
import merese.search.FileStamp;
import merese.search.HitKind;
import merese.search.IndexedFile;
import merese.search.IndexedFile.Found;
import merese.search.IndexedFile.IndexedCheck;
import merese.search.IndexedFile.IndexedRecord;
import merese.search.IndexedFile.IndexedSource;
import merese.search.IndexedNote;
import merese.store.LibraryJson;
import merese.store.VocabularyFile;
import merese.vocabulary.Filing;
import merese.vocabulary.PossibleMeaning;
import merese.vocabulary.Thesaurus;

/** Makes of the library's files what the index takes. */
final class ForIndex {
  private final Thesaurus thesaurus;

  ForIndex(Thesaurus thesaurus) {
    this.thesaurus = thesaurus;
  }

  IndexedFile work(FileStamp stamp, Work work) {
    List<IndexedSource> sources = new ArrayList<>();
    List<IndexedNote> notes = new ArrayList<>();
    List<IndexedCheck> checks = new ArrayList<>();
    for (Edition edition : work.editions()) {
      sources.add(source(work, edition));
      for (int order = 0; order < edition.notes().size(); order++) {
        notes.add(note(work, edition.key(), order, edition.notes().get(order)));
      }
      for (Check check : edition.checks()) {
        checks.add(
            new IndexedCheck(edition.key(), check.concept(), LibraryJson.encodeCheck(check)));
      }
    }
    return new IndexedFile(stamp, sources, notes, checks, List.of());
  }

  private static IndexedSource source(Work work, Edition edition) {
    String heading = FilingHeading.of(work, edition);
    return new IndexedSource(
        edition.key(),
        Filing.WORD_BY_WORD.key(heading),
        Findable.source(work, edition),
        LibraryJson.encodeWork(work.withOnly(edition.withoutNotes())));
  }

  /**
   * @param work the note's; its notes may be left out
   */
  IndexedNote note(Work work, String edition, int order, Note note) {
    Set<String> concepts = new LinkedHashSet<>();
    Set<String> possible = new LinkedHashSet<>();
    Set<List<String>> printed = new LinkedHashSet<>();
    boolean unassigned = false;
    for (Naming naming : note.namings()) {
      printed.addAll(thesaurus.forms(naming.printed()));
      if (naming.concept().isPresent()) {
        concepts.add(naming.concept().get());
      } else {
        unassigned = true;
        for (PossibleMeaning meaning : thesaurus.possibleMeanings(naming.printed())) {
          possible.add(meaning.concept().id());
        }
      }
    }
    Set<String> pieces = new TreeSet<>();
    for (Place place : note.places()) {
      place.piece().ifPresent(pieces::add);
    }
    return new IndexedNote(
        edition,
        order,
        concepts,
        withBroader(concepts),
        unassigned,
        withBroader(possible),
        List.copyOf(printed),
        pieces,
        new Findable(thesaurus).note(note, Findable.authors(work)),
        LibraryJson.encodeNote(note));
  }

  private Set<String> withBroader(Set<String> concepts) {
    Set<String> all = new LinkedHashSet<>(concepts);
    for (String concept : concepts) {
      all.addAll(thesaurus.broader(concept));
    }
    return all;
  }

  static IndexedFile vocabulary(FileStamp stamp, VocabularyFile file) {
    List<IndexedRecord> records = new ArrayList<>();
    records.add(new IndexedRecord(RecordTypes.FACET, LibraryJson.encodeFacet(file.facet())));
    for (Concept concept : file.concepts()) {
      records.add(
          new IndexedRecord(
              RecordTypes.CONCEPT,
              Optional.of(new Found(HitKind.CONCEPT, Findable.concept(concept))),
              LibraryJson.encodeConcept(concept)));
    }
    return records(stamp, records);
  }

  static IndexedFile homonyms(FileStamp stamp, List<Homonym> register) {
    List<IndexedRecord> records = new ArrayList<>();
    for (Homonym homonym : register) {
      records.add(new IndexedRecord(RecordTypes.HOMONYM, LibraryJson.encodeHomonym(homonym)));
    }
    return records(stamp, records);
  }

  IndexedFile mine(FileStamp stamp, Mine mine) {
    return records(stamp, ForFinding.mine(thesaurus, mine));
  }

  IndexedFile object(FileStamp stamp, OwnObject object) {
    return records(stamp, List.of(ForFinding.piece(thesaurus, object)));
  }

  /** The settings are read from their file at each opening, so only their stamp is kept. */
  static IndexedFile settings(FileStamp stamp) {
    return records(stamp, List.of());
  }

  private static IndexedFile records(FileStamp stamp, List<IndexedRecord> records) {
    return new IndexedFile(stamp, List.of(), List.of(), List.of(), records);
  }
}
