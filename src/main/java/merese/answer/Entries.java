package merese.answer;

import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.function.Predicate;
import merese.answer.Classifier.Classified;
import merese.answer.Coverage.ConceptLine;
import merese.answer.Coverage.Entry;
import merese.answer.Coverage.Passage;
import merese.model.Locator;
import merese.model.Place;
import merese.model.Place.Medium;
import merese.shelf.Source;
import merese.shelf.SourcedNote;
import merese.vocabulary.Thesaurus;

/** Makes the entries of a group: one a source, its passages by concept, its places in order. */
final class Entries {
  private final SourceLines lines;
  private final Thesaurus thesaurus;
  private final Optional<String> asked;

  /**
   * @param asked the concept asked for, which its passages put first
   */
  Entries(SourceLines lines, Thesaurus thesaurus, Optional<String> asked) {
    this.lines = lines;
    this.thesaurus = thesaurus;
    this.asked = asked;
  }

  /**
   * The entries for these namings, in the order of R4.
   *
   * @param wanted which of their places belong to the group
   */
  List<Entry> of(Collection<Classified> namings, Predicate<Place> wanted) {
    Map<Source, List<Classified>> bySource = new TreeMap<>(Source.BY_YEAR);
    for (Classified classified : namings) {
      if (classified.places().stream().anyMatch(wanted)) {
        bySource
            .computeIfAbsent(classified.sourced().source(), s -> new ArrayList<>())
            .add(classified);
      }
    }
    List<Entry> entries = new ArrayList<>();
    bySource.forEach((source, found) -> entries.add(entry(source, found, wanted)));
    entries.sort(Comparator.comparingInt((Entry e) -> rank(e))); // stable: year, author stay
    return entries;
  }

  private Entry entry(Source source, List<Classified> found, Predicate<Place> wanted) {
    Map<Optional<String>, List<Classified>> byConcept = new LinkedHashMap<>();
    for (Classified classified : found) {
      byConcept
          .computeIfAbsent(classified.naming().concept(), c -> new ArrayList<>())
          .add(classified);
    }
    List<Passage> passages = new ArrayList<>();
    byConcept.forEach((concept, namings) -> passages.add(passage(concept, namings, wanted)));
    passages.sort(
        Comparator.comparingInt((Passage p) -> rank(p))
            .thenComparing(p -> p.concept().map(ConceptLine::label).orElse("")));
    return new Entry(lines.of(source), passages, List.of(), List.of(), List.of(), List.of());
  }

  private Passage passage(
      Optional<String> concept, List<Classified> namings, Predicate<Place> wanted) {
    TreeSet<Locator> pictured = new TreeSet<>();
    TreeSet<Locator> inWords = new TreeSet<>();
    namings.sort(Comparator.comparing(c -> firstPlace(c.sourced())));
    LinkedHashSet<String> printed = new LinkedHashSet<>();
    for (Classified classified : namings) {
      if (!classified.naming().printed().isEmpty()) {
        printed.add(classified.naming().printed());
      }
      List<Place> places = classified.places().stream().filter(wanted).toList();
      for (Place place : places) {
        if (place.medium().isPicture()) {
          pictured.add(place.locator());
        } else if (!isCaptionOfAPicture(place, places)) {
          inWords.add(place.locator());
        }
      }
    }
    inWords.removeAll(pictured);
    return new Passage(
        concept.map(this::line),
        isNarrower(concept),
        List.copyOf(printed),
        List.copyOf(pictured),
        List.copyOf(inWords));
  }

  private boolean isNarrower(Optional<String> concept) {
    return asked.isPresent()
        && concept.isPresent()
        && thesaurus.isBroader(asked.get(), concept.get());
  }

  /** A caption goes with its picture; it is a place of its own only where there is none. */
  private static boolean isCaptionOfAPicture(Place place, List<Place> places) {
    return place.medium() == Medium.CAPTION
        && places.stream().anyMatch(p -> p.medium().isPicture() && samePiece(p, place));
  }

  private static boolean samePiece(Place a, Place b) {
    return a.piece().isPresent() ? a.piece().equals(b.piece()) : a.locator().equals(b.locator());
  }

  private static Locator firstPlace(SourcedNote sourced) {
    return sourced.note().places().stream().map(Place::locator).min(Locator::compareTo).get();
  }

  ConceptLine line(String concept) {
    return new ConceptLine(concept, thesaurus.label(concept));
  }

  static boolean isPictured(Entry entry) {
    return entry.passages().stream().anyMatch(p -> !p.pictured().isEmpty());
  }

  private static int rank(Entry entry) {
    return entry.passages().stream().mapToInt(p -> rank(p)).min().orElse(Integer.MAX_VALUE);
  }

  /** R4: exact and pictured, exact in words, narrower and pictured, narrower in words. */
  private static int rank(Passage passage) {
    return (passage.narrower() ? 2 : 0) + (passage.pictured().isEmpty() ? 1 : 0);
  }
}
