package merese.shelf;

import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import merese.model.CharacterKey;
import merese.model.Check;
import merese.model.Concept;
import merese.model.Edition;
import merese.model.Homonym;
import merese.model.Mine;
import merese.model.Naming;
import merese.model.Note;
import merese.model.OwnObject;
import merese.model.Place;
import merese.model.PlaceTest;
import merese.model.ShortReference;
import merese.model.Work;
import merese.search.FileStamp;
import merese.search.IndexedFile;
import merese.search.IndexedFile.IndexedCheck;
import merese.search.IndexedFile.IndexedLabels;
import merese.search.IndexedFile.IndexedRecord;
import merese.search.IndexedFile.IndexedSource;
import merese.search.IndexedFile.SourceTraits;
import merese.search.IndexedNote;
import merese.store.LibraryJson;
import merese.store.VocabularyFile;
import merese.vocabulary.Filing;
import merese.vocabulary.PossibleMeaning;
import merese.vocabulary.Thesaurus;

/** Makes of the library's files what the index takes. Terms recur, so each is folded once. */
final class ForIndex {
  private final Thesaurus thesaurus;
  private final Map<String, List<List<String>>> forms = new HashMap<>();

  ForIndex(Thesaurus thesaurus) {
    this.thesaurus = thesaurus;
  }

  IndexedFile work(FileStamp stamp, Work work) {
    List<IndexedSource> sources = new ArrayList<>();
    List<IndexedNote> notes = new ArrayList<>();
    List<IndexedCheck> checks = new ArrayList<>();
    for (Edition edition : work.editions()) {
      Work one = work.withOnly(edition.withoutNotes());
      byte[] filing = filing(one);
      byte[] standing = standing(one, filing);
      sources.add(source(one, filing, standing));
      for (int order = 0; order < edition.notes().size(); order++) {
        Note note = edition.notes().get(order);
        notes.add(note(work, edition.key(), standing, order, note));
      }
      for (Check check : edition.checks()) {
        checks.add(new IndexedCheck(edition.key(), check.concept(), PackedNote.pack(check)));
      }
    }
    return new IndexedFile(stamp, sources, notes, checks, List.of(), List.of());
  }

  private static IndexedSource source(Work one, byte[] filing, byte[] standing) {
    Edition edition = one.editions().get(0);
    return new IndexedSource(
        edition.key(),
        standing,
        new SourceTraits(
            edition.imprint().year(),
            one.kind().code(),
            edition.owned(),
            one.mine(),
            ShortReference.of(one, edition),
            SourceAddress.of("", one, edition).ownWords()),
        Findable.source(one, edition),
        PackedSource.pack(one, edition, filing),
        LibraryJson.encodeWork(one));
  }

  /** The filing key of a work's one edition. */
  private static byte[] filing(Work one) {
    return Filing.WORD_BY_WORD.key(FilingHeading.of(one, one.editions().get(0)));
  }

  /** Bytes whose order is that of {@link Source#BY_YEAR}. */
  private static byte[] standing(Work one, byte[] filing) {
    Edition edition = one.editions().get(0);
    byte[] key = edition.key().getBytes(StandardCharsets.UTF_8);
    int year = edition.imprint().year().orElse(Integer.MAX_VALUE);
    ByteBuffer bytes = ByteBuffer.allocate(5 + filing.length + key.length);
    bytes.putInt(year ^ Integer.MIN_VALUE).put(filing); // only its last byte is 0
    return bytes.put((byte) 0).put(key).array();
  }

  /**
   * A note by itself.
   *
   * @param one the note's work with its edition alone; its notes may be left out
   */
  IndexedNote note(Work one, int order, Note note) {
    byte[] standing = standing(one, filing(one));
    return note(one, one.editions().get(0).key(), standing, order, note);
  }

  private IndexedNote note(Work work, String edition, byte[] standing, int order, Note note) {
    Set<String> concepts = new LinkedHashSet<>();
    Set<String> present = new LinkedHashSet<>();
    Set<String> pictured = new LinkedHashSet<>();
    Set<String> possible = new LinkedHashSet<>();
    Map<String, List<String>> mayMean = new LinkedHashMap<>();
    Set<List<String>> printed = new LinkedHashSet<>();
    boolean unassigned = false;
    for (Naming naming : note.namings()) {
      printed.addAll(forms.computeIfAbsent(naming.printed(), thesaurus::forms));
      if (naming.concept().isPresent()) {
        String concept = naming.concept().get();
        concepts.add(concept);
        for (Place place : note.placesOf(naming)) {
          if (PlaceTest.PRESENT.holds(place)) {
            present.add(concept);
            if (place.medium().isPicture()) {
              pictured.add(concept);
            }
          }
        }
      } else {
        unassigned = true;
        List<String> ids = new ArrayList<>();
        for (PossibleMeaning meaning : thesaurus.possibleMeanings(naming.printed())) {
          ids.add(meaning.concept().id());
        }
        possible.addAll(ids);
        mayMean.put(naming.printed(), ids);
      }
    }
    Set<String> pieces = new TreeSet<>();
    Set<String> corrects = new TreeSet<>();
    for (Place place : note.places()) {
      place.piece().ifPresent(pieces::add);
      place.corrects().ifPresent(c -> corrects.add(c.edition()));
    }
    return new IndexedNote(
        edition,
        standing,
        order,
        concepts,
        present,
        pictured,
        withBroader(concepts),
        unassigned,
        withBroader(possible),
        List.copyOf(printed),
        pieces,
        corrects,
        note.object().map(Note.ObjectLink::ref),
        new Findable(thesaurus).note(note, Findable.authors(work)),
        PackedNote.pack(note, mayMean));
  }

  private Set<String> withBroader(Set<String> concepts) {
    Set<String> all = new LinkedHashSet<>(concepts);
    for (String concept : concepts) {
      all.addAll(thesaurus.broader(concept));
    }
    return all;
  }

  IndexedFile vocabulary(FileStamp stamp, VocabularyFile file) {
    List<IndexedLabels> labels = new ArrayList<>();
    for (Concept concept : file.concepts()) {
      Set<String> words = new LinkedHashSet<>();
      words.add(concept.preferred().text());
      for (Concept.Label label : concept.alternatives()) {
        words.add(label.text());
      }
      for (Concept.Label label : concept.hidden()) {
        words.add(label.text());
      }
      labels.add(labels(words, List.of(concept.id())));
    }
    List<IndexedRecord> records = new ArrayList<>();
    records.add(new IndexedRecord(RecordTypes.FACET, PackedVocabulary.pack(file)));
    file.concepts().forEach(concept -> records.add(ForFinding.concept(concept)));
    return records(stamp, labels, records);
  }

  IndexedFile homonyms(FileStamp stamp, List<Homonym> register) {
    List<IndexedLabels> labels = new ArrayList<>();
    for (Homonym homonym : register) {
      labels.add(labels(Set.of(homonym.word()), homonym.concepts()));
    }
    return records(
        stamp,
        labels,
        List.of(new IndexedRecord(RecordTypes.REGISTER, PackedVocabulary.pack(register))));
  }

  private IndexedLabels labels(Set<String> texts, List<String> concepts) {
    Set<List<String>> forms = new LinkedHashSet<>();
    for (String text : texts) {
      forms.addAll(thesaurus.forms(text));
    }
    return new IndexedLabels(List.copyOf(forms), PackedLabels.pack(forms, concepts));
  }

  IndexedFile mine(FileStamp stamp, Mine mine) {
    return records(stamp, List.of(), ForFinding.mine(thesaurus, mine));
  }

  IndexedFile object(FileStamp stamp, OwnObject object) {
    return records(stamp, List.of(), List.of(ForFinding.piece(thesaurus, object)));
  }

  static IndexedFile characters(FileStamp stamp, CharacterKey key) {
    return records(
        stamp,
        List.of(),
        List.of(new IndexedRecord(RecordTypes.CHARACTERS, PackedCharacters.pack(key))));
  }

  /** The settings are read from their file at each opening, so only their stamp is kept. */
  static IndexedFile settings(FileStamp stamp) {
    return new IndexedFile(stamp, List.of(), List.of(), List.of(), List.of(), List.of());
  }

  private static IndexedFile records(
      FileStamp stamp, List<IndexedLabels> labels, List<IndexedRecord> records) {
    return new IndexedFile(stamp, List.of(), List.of(), List.of(), labels, records);
  }
}
