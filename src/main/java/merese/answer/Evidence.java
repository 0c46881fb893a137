package merese.answer;

import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.Iterator;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import merese.answer.Classifier.Classified;
import merese.answer.Coverage.CaptionConflict;
import merese.answer.Coverage.ConceptLine;
import merese.answer.Coverage.Entry;
import merese.answer.Coverage.ExperienceLine;
import merese.answer.Coverage.OtherUse;
import merese.answer.Coverage.Passage;
import merese.answer.Coverage.PieceLine;
import merese.answer.Coverage.SharedPicture;
import merese.answer.Coverage.WordUse;
import merese.model.Locator;
import merese.model.Mine.Experience;
import merese.model.Note;
import merese.model.OwnObject;
import merese.model.Place;
import merese.search.Census;
import merese.search.NoteCriterion;
import merese.search.SourceSet;
import merese.shelf.Shelf;
import merese.shelf.Source;
import merese.shelf.SourcedNote;
import merese.vocabulary.Folding;
import merese.vocabulary.Thesaurus;

/** What stands beside the sources of a section: warnings, and what the user has found alone. */
final class Evidence {
  /** Where only the first sources are shown, so many other meanings of a word are. */
  private static final int FEW_MEANINGS = 3;

  private static final int FEW_SOURCES = 3;

  private final Shelf shelf;
  private final Thesaurus thesaurus;
  private final SourceLines lines;

  Evidence(Shelf shelf, SourceLines lines) {
    this.shelf = shelf;
    this.thesaurus = shelf.thesaurus();
    this.lines = lines;
  }

  ConceptLine line(String concept) {
    return new ConceptLine(concept, thesaurus.label(concept));
  }

  /** Adds captions that disagree with the text, and pictures that an earlier source has too. */
  List<Entry> withConflictsAndPictures(List<Entry> entries, List<Classified> notes) {
    Map<String, Map<String, Note>> bySource = withAllOnTheirPieces(notes);
    Captions captions = new Captions(shelf);
    Map<String, SharedPicture> firstSeen = new HashMap<>();
    List<Entry> completed = new ArrayList<>();
    for (Entry entry : entries) {
      Collection<Note> own = bySource.get(entry.source().key()).values();
      List<CaptionConflict> conflicts = captions.conflicts(own);
      completed.add(
          new Entry(
              entry.source(),
              withoutPlacesOf(conflicts, entry.passages()),
              conflicts,
              readings(own, conflicts),
              entry.claims(),
              shared(entry, own, firstSeen)));
    }
    return completed;
  }

  /** The notes by source and id, with what else their source says of the pieces they speak of. */
  private Map<String, Map<String, Note>> withAllOnTheirPieces(List<Classified> notes) {
    Map<String, Map<String, Note>> bySource = new HashMap<>();
    List<NoteCriterion> pieces = new ArrayList<>();
    for (Classified classified : notes) {
      Note note = classified.sourced().note();
      String key = classified.sourced().source().key();
      Map<String, Note> known = bySource.get(key);
      if (known == null) {
        known = new LinkedHashMap<>();
        bySource.put(key, known);
      }
      known.put(note.id(), note);
      for (Place place : note.places()) {
        if (place.piece().isPresent()) {
          pieces.add(new NoteCriterion.SpeaksOf(key, place.piece().get()));
        }
      }
    }
    for (SourcedNote sourced : shelf.notes(pieces)) {
      bySource.get(sourced.source().key()).putIfAbsent(sourced.note().id(), sourced.note());
    }
    return bySource;
  }

  /** A text that the warning quotes with its page need not be given twice. */
  private static List<Passage> withoutPlacesOf(
      List<CaptionConflict> conflicts, List<Passage> passages) {
    if (conflicts.isEmpty()) {
      return passages;
    }
    Set<Locator> quoted = new LinkedHashSet<>();
    for (CaptionConflict conflict : conflicts) {
      if (conflict.text().isPresent()) {
        quoted.add(conflict.text().get());
      }
    }
    List<Passage> rest = new ArrayList<>();
    for (Passage passage : passages) {
      List<Locator> inWords = new ArrayList<>(passage.inWords());
      if (!passage.pictured().isEmpty()) {
        inWords.removeAll(quoted);
      }
      rest.add(
          new Passage(
              passage.concept(),
              passage.narrower(),
              passage.printed(),
              passage.pictured(),
              inWords,
              passage.photos()));
    }
    return rest;
  }

  /** What the user makes of the captions and texts that disagree, and of nothing else. */
  private static List<String> readings(Collection<Note> notes, List<CaptionConflict> conflicts) {
    Set<Locator> disputed = new LinkedHashSet<>();
    for (CaptionConflict conflict : conflicts) {
      disputed.add(conflict.captionAt());
      if (conflict.text().isPresent()) {
        disputed.add(conflict.text().get());
      }
    }
    Set<String> readings = new LinkedHashSet<>();
    for (Note note : notes) {
      for (Place place : note.places()) {
        if (note.reading().isPresent() && disputed.contains(place.locator())) {
          readings.add(note.reading().get());
        }
      }
    }
    return List.copyOf(readings);
  }

  private static List<SharedPicture> shared(
      Entry entry, Collection<Note> notes, Map<String, SharedPicture> firstSeen) {
    List<SharedPicture> shared = new ArrayList<>();
    Set<String> here = new LinkedHashSet<>();
    for (Note note : notes) {
      for (Place place : note.places()) {
        if (place.isPictured() && place.picture().isPresent() && here.add(place.picture().get())) {
          SharedPicture first =
              firstSeen.putIfAbsent(
                  place.picture().get(),
                  new SharedPicture(place.locator(), entry.source().reference(), place.locator()));
          if (first != null) {
            shared.add(new SharedPicture(place.locator(), first.otherReference(), first.there()));
          }
        }
      }
    }
    return shared;
  }

  /**
   * Words printed for the concept that others, or the vocabulary, use for something else.
   *
   * @param wanted the concept and all that is narrower
   * @param whole whether all other meanings of a word are named, and all sources of each
   */
  List<WordUse> otherUsesOfWords(List<Classified> counted, Set<String> wanted, boolean whole) {
    Map<String, Set<String>> meaningsHere = new LinkedHashMap<>();
    for (Classified classified : counted) {
      String printed = classified.naming().printed();
      if (!printed.isEmpty()) {
        Set<String> meanings = meaningsHere.get(printed);
        if (meanings == null) {
          meanings = new LinkedHashSet<>();
          meaningsHere.put(printed, meanings);
        }
        meanings.add(classified.naming().concept().get());
      }
    }
    Map<String, Set<String>> ordinary = shelf.meanings(meaningsHere.keySet());
    Map<String, WordUse> uses = new LinkedHashMap<>();
    for (Map.Entry<String, Set<String>> word : meaningsHere.entrySet()) {
      String printed = word.getKey();
      String key = Folding.key(printed);
      if (!uses.containsKey(key)) {
        Map<String, Integer> others = new TreeMap<>();
        for (String meaning : ordinary.get(printed)) {
          others.put(meaning, 0);
        }
        List<List<String>> forms = thesaurus.forms(printed);
        for (List<String> form : forms) {
          for (Map.Entry<String, Integer> meant : shelf.meantInText(form).entrySet()) {
            others.put(meant.getKey(), others.getOrDefault(meant.getKey(), 0) + meant.getValue());
          }
        }
        removeRelated(others, word.getValue(), wanted);
        if (!others.isEmpty()) {
          uses.put(key, use(printed, forms, others, whole));
        }
      }
    }
    return List.copyOf(uses.values());
  }

  /**
   * @param forms of the printed word
   * @param others how many notes have each meaning
   */
  private WordUse use(
      String printed, List<List<String>> forms, Map<String, Integer> others, boolean whole) {
    boolean isCut = !whole && others.size() > FEW_MEANINGS;
    Set<String> shown = isCut ? commonest(others, FEW_MEANINGS) : others.keySet();
    Census census = shelf.census();
    List<OtherUse> uses = new ArrayList<>();
    for (String concept : shown) {
      SourceSet all = census.meaningInText(forms, concept);
      List<Source> sources = shelf.sources(whole ? all : census.first(all, FEW_SOURCES));
      uses.add(new OtherUse(line(concept), lines.references(sources), all.size()));
    }
    return new WordUse(printed, uses, others.size());
  }

  /** Of equally common ones the first by their ids. */
  private static Set<String> commonest(Map<String, Integer> others, int most) {
    Set<String> commonest = new TreeSet<>();
    while (commonest.size() < most) {
      Map.Entry<String, Integer> next = null;
      for (Map.Entry<String, Integer> each : others.entrySet()) {
        if (!commonest.contains(each.getKey())
            && (next == null || each.getValue() > next.getValue())) {
          next = each;
        }
      }
      commonest.add(next.getKey());
    }
    return commonest;
  }

  /**
   * What is the same as, broader or narrower than a meaning is nothing else.
   *
   * @param wanted all that is narrower than one of the meanings is among these
   */
  private void removeRelated(
      Map<String, Integer> others, Set<String> meanings, Set<String> wanted) {
    for (String meaning : meanings) {
      others.remove(meaning);
      Set<String> broader = thesaurus.broader(meaning);
      Iterator<String> each = others.keySet().iterator();
      while (each.hasNext()) {
        String other = each.next();
        if (broader.contains(other)
            || wanted.contains(other) && thesaurus.isBroader(meaning, other)) {
          each.remove();
        }
      }
    }
  }

  List<PieceLine> ownPieces(Set<String> wanted) {
    List<PieceLine> pieces = new ArrayList<>();
    for (OwnObject object : shelf.objects()) {
      for (OwnObject.Evidence evidence : object.evidence()) {
        if (wanted.contains(evidence.concept())) {
          pieces.add(
              new PieceLine(
                  object.ref(),
                  object.title(),
                  evidence.kind(),
                  line(evidence.concept()),
                  evidence.words(),
                  evidence.photo()));
        }
      }
    }
    return pieces;
  }

  List<ExperienceLine> experience(Set<String> wanted) {
    List<ExperienceLine> found = new ArrayList<>();
    for (Experience e : shelf.mine().experience()) {
      if (wanted.contains(e.concept())) {
        found.add(
            new ExperienceLine(line(e.concept()), e.kind(), e.words(), e.pieces(), e.until()));
      }
    }
    return found;
  }
}
