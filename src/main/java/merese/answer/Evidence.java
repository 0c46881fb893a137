package merese.answer;

import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import merese.answer.Classifier.Classified;
import merese.answer.Coverage.CaptionConflict;
import merese.answer.Coverage.ConceptLine;
import merese.answer.Coverage.Entry;
import merese.answer.Coverage.ExperienceLine;
import merese.answer.Coverage.Grouped;
import merese.answer.Coverage.OtherUse;
import merese.answer.Coverage.Passage;
import merese.answer.Coverage.PieceLine;
import merese.answer.Coverage.SharedPicture;
import merese.answer.Coverage.WordUse;
import merese.model.Mine.Experience;
import merese.model.Naming;
import merese.model.Naming.Why;
import merese.model.Note;
import merese.model.OwnObject;
import merese.model.Place;
import merese.search.NoteCriterion;
import merese.shelf.Shelf;
import merese.shelf.Source;
import merese.shelf.SourcedNote;
import merese.vocabulary.Thesaurus;

/** What stands beside the sources of a section: warnings, and what the user has found alone. */
final class Evidence {
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
    Map<String, Set<Note>> bySource = new LinkedHashMap<>();
    Set<NoteCriterion> pieces = new LinkedHashSet<>();
    for (Classified classified : notes) {
      SourcedNote sourced = classified.sourced();
      String key = sourced.source().key();
      bySource.computeIfAbsent(key, k -> new LinkedHashSet<>()).add(sourced.note());
      for (Place place : sourced.note().places()) {
        place.piece().ifPresent(piece -> pieces.add(new NoteCriterion.SpeaksOf(key, piece)));
      }
    }
    for (SourcedNote sourced : shelf.notes(pieces)) {
      bySource.get(sourced.source().key()).add(sourced.note());
    }
    Captions captions = new Captions(thesaurus);
    Map<String, SharedPicture> firstSeen = new LinkedHashMap<>();
    List<Entry> completed = new ArrayList<>();
    for (Entry entry : entries) {
      Set<Note> own = bySource.get(entry.source().key());
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

  /** A text that the warning quotes with its page need not be given twice. */
  private static List<Passage> withoutPlacesOf(
      List<CaptionConflict> conflicts, List<Passage> passages) {
    List<Passage> rest = new ArrayList<>();
    for (Passage passage : passages) {
      rest.add(
          new Passage(
              passage.concept(),
              passage.narrower(),
              passage.printed(),
              passage.pictured(),
              passage.inWords().stream()
                  .filter(
                      l ->
                          passage.pictured().isEmpty()
                              || conflicts.stream()
                                  .noneMatch(c -> c.text().filter(l::equals).isPresent()))
                  .toList()));
    }
    return rest;
  }

  /** What the user makes of the captions and texts that disagree, and of nothing else. */
  private static List<String> readings(Collection<Note> notes, List<CaptionConflict> conflicts) {
    List<String> readings = new ArrayList<>();
    for (Note note : notes) {
      boolean disputed =
          note.places().stream()
              .map(Place::locator)
              .anyMatch(
                  at ->
                      conflicts.stream()
                          .anyMatch(
                              c -> c.captionAt().equals(at) || c.text().equals(Optional.of(at))));
      if (disputed && note.reading().isPresent() && !readings.contains(note.reading().get())) {
        readings.add(note.reading().get());
      }
    }
    return readings;
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

  /** Printed words of the section that others, or the vocabulary, use for something else. */
  List<WordUse> otherUsesOfWords(List<Grouped> groups, List<Classified> counted) {
    Map<String, Set<String>> meaningsHere = new LinkedHashMap<>();
    for (Classified classified : counted) {
      if (!classified.naming().printed().isEmpty()) {
        meaningsHere
            .computeIfAbsent(classified.naming().printed(), p -> new LinkedHashSet<>())
            .add(classified.naming().concept().get());
      }
    }
    List<NoteCriterion> criteria = new ArrayList<>();
    meaningsHere.keySet().forEach(p -> criteria.addAll(Words.printedAs(thesaurus, p)));
    List<SourcedNote> printing = shelf.notes(criteria);
    Map<String, WordUse> uses = new LinkedHashMap<>();
    meaningsHere.forEach(
        (printed, here) -> {
          Map<String, Set<Source>> others = new TreeMap<>();
          thesaurus.meaningsOf(printed).forEach(id -> others.put(id, new LinkedHashSet<>()));
          for (SourcedNote sourced : printing) {
            for (Naming naming : sourced.note().namings()) {
              if (naming.why().isPresent()
                  && naming.why().get() == Why.TEXT
                  && thesaurus.areSameWords(naming.printed(), printed)) {
                others
                    .computeIfAbsent(naming.concept().get(), id -> new LinkedHashSet<>())
                    .add(sourced.source());
              }
            }
          }
          others
              .keySet()
              .removeIf(
                  other -> here.stream().anyMatch(h -> thesaurus.areRelatedByHierarchy(h, other)));
          if (!others.isEmpty()) {
            uses.putIfAbsent(
                merese.vocabulary.Folding.key(printed), new WordUse(printed, uses(others)));
          }
        });
    return List.copyOf(uses.values());
  }

  private List<OtherUse> uses(Map<String, Set<Source>> others) {
    List<OtherUse> uses = new ArrayList<>();
    others.forEach(
        (concept, sources) ->
            uses.add(
                new OtherUse(
                    line(concept),
                    sources.stream().sorted(Source.BY_YEAR).map(lines::reference).toList())));
    return uses;
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
