package merese.shelf;

import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.EnumSet;
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
import merese.search.IndexedNote.InText;
import merese.search.NoteCriterion.Says;
import merese.search.NoteCriterion.Together;
import merese.store.LibraryJson;
import merese.store.VocabularyFile;
import merese.vocabulary.Filing;
import merese.vocabulary.PossibleMeaning;
import merese.vocabulary.Thesaurus;

/** Makes of the library's files what the index takes. Terms recur, so each is folded once. */
final class ForIndex {
  private final Thesaurus thesaurus;
  private final Map<String, List<List<String>>> forms = new HashMap<>();

  /** By concept, that and all that is broader. */
  private final Map<String, Set<String>> withBroader = new HashMap<>();

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
        notes.add(note(work, edition.key(), order, note));
      }
      for (Check check : edition.checks()) {
        boolean limited = check.scope().isPresent();
        checks.add(
            new IndexedCheck(edition.key(), check.concept(), limited, PackedNote.pack(check)));
      }
    }
    List<IndexedRecord> bare =
        work.editions().isEmpty()
            ? List.of(new IndexedRecord(RecordTypes.BARE_WORK, new byte[0]))
            : List.of();
    return new IndexedFile(stamp, sources, notes, checks, List.of(), bare);
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
            SourceAddress.of("", one, edition).ownWords(),
            Fingerprint.of(one).marks()),
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

  private IndexedNote note(Work work, String edition, int order, Note note) {
    Set<String> concepts = new LinkedHashSet<>();
    Set<String> possible = new LinkedHashSet<>();
    Map<String, List<String>> mayMean = new LinkedHashMap<>();
    Set<List<String>> printed = new LinkedHashSet<>();
    List<Says> says = new ArrayList<>();
    Set<InText> inText = new LinkedHashSet<>();
    boolean unassigned = false;
    int present = 0;
    int pictured = 0;
    for (Naming naming : note.namings()) {
      List<List<String>> words = forms.computeIfAbsent(naming.printed(), thesaurus::forms);
      printed.addAll(words);
      int places = NoteSketch.Name.places(note, naming);
      if (naming.concept().isPresent()) {
        String concept = naming.concept().get();
        concepts.add(concept);
        present += NoteSketch.Name.passes(places, PlaceTest.PRESENT) ? 1 : 0;
        pictured += NoteSketch.Name.isPictured(places, PlaceTest.PRESENT) ? 1 : 0;
        addSays(Set.of(concept), Says.How.MEANS_JUST_THIS, places, says);
        addSays(withBroader(concept), Says.How.MEANS_THIS_OR_NARROWER, places, says);
        if (naming.why().filter(Naming.Why.TEXT::equals).isPresent()) {
          boolean several = !words.isEmpty() && words.get(0).size() > 1;
          words.forEach(form -> inText.add(new InText(form, concept, several)));
        }
      } else {
        unassigned = true;
        List<String> ids = new ArrayList<>();
        for (PossibleMeaning meaning : thesaurus.possibleMeanings(naming.printed())) {
          ids.add(meaning.concept().id());
        }
        possible.addAll(ids);
        mayMean.put(naming.printed(), ids);
        addSays(withBroader(Set.copyOf(ids)), Says.How.MAY_MEAN, places, says);
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
        order,
        concepts,
        withBroader(concepts),
        says,
        inText,
        together(note.namings().size(), present, pictured),
        unassigned,
        withBroader(possible),
        List.copyOf(printed),
        pieces,
        corrects,
        note.object().map(Note.ObjectLink::ref),
        new Findable(thesaurus).note(note, Findable.authors(work)),
        PackedNote.pack(note, mayMean));
  }

  /**
   * @param all how many namings there are
   * @param present how many of them have a concept and a place that does not deny it
   * @param pictured how many have such a place that is a picture
   */
  private static Set<Together> together(int all, int present, int pictured) {
    Set<Together> together = EnumSet.noneOf(Together.class);
    if (all > 1) {
      together.add(Together.SEVERAL);
    }
    if (present == all) {
      together.add(Together.EACH_PRESENT);
    }
    if (pictured == all) {
      together.add(Together.EACH_PICTURED);
    }
    if (present % all != 0) {
      together.add(Together.SOME_PRESENT);
    }
    if (pictured % all != 0) {
      together.add(Together.SOME_PICTURED);
    }
    return together;
  }

  /** Adds what a naming says of some concepts; of two namings it may be the same. */
  private static void addSays(Set<String> concepts, Says.How how, int places, List<Says> says) {
    for (PlaceTest test : PlaceTest.ALL) {
      if (NoteSketch.Name.passes(places, test)) {
        boolean pictured = NoteSketch.Name.isPictured(places, test);
        for (String concept : concepts) {
          says.add(new Says(concept, how, test, false));
          if (pictured) {
            says.add(new Says(concept, how, test, true));
          }
        }
      }
    }
  }

  private Set<String> withBroader(Set<String> concepts) {
    if (concepts.size() == 1) {
      return withBroader(concepts.iterator().next());
    }
    Set<String> all = new LinkedHashSet<>();
    for (String concept : concepts) {
      all.addAll(withBroader(concept));
    }
    return all;
  }

  private Set<String> withBroader(String concept) {
    Set<String> known = withBroader.get(concept);
    if (known == null) {
      known = new LinkedHashSet<>();
      known.add(concept);
      known.addAll(thesaurus.broader(concept));
      withBroader.put(concept, known);
    }
    return known;
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
