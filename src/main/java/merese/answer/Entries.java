package merese.answer;

import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import merese.answer.Classifier.Classified;
import merese.answer.Coverage.ConceptLine;
import merese.answer.Coverage.Entry;
import merese.answer.Coverage.Passage;
import merese.answer.Coverage.Photo;
import merese.model.Locator;
import merese.model.Place;
import merese.model.Place.Medium;
import merese.model.PlaceTest;
import merese.shelf.Source;
import merese.vocabulary.Thesaurus;

/** Makes the entries of a group: one a source, its passages by concept, its places in order. */
public final class Entries {
  private final SourceLines lines;
  private final Thesaurus thesaurus;
  private final Optional<String> asked;

  /**
   * @param asked the concept asked for, which its passages put first
   */
  public Entries(SourceLines lines, Thesaurus thesaurus, Optional<String> asked) {
    this.lines = lines;
    this.thesaurus = thesaurus;
    this.asked = asked;
  }

  /**
   * The entries for these namings, in the order of R4.
   *
   * @param wanted which of their places belong to the group
   */
  public List<Entry> of(Collection<Classified> namings, PlaceTest wanted) {
    Map<Source, List<Classified>> bySource = new TreeMap<>(Source.BY_YEAR);
    for (Classified classified : namings) {
      if (wanted.holdsForAny(classified.places())) {
        List<Classified> known = bySource.get(classified.sourced().source());
        if (known == null) {
          known = new ArrayList<>();
          bySource.put(classified.sourced().source(), known);
        }
        known.add(classified);
      }
    }
    List<Entry> entries = new ArrayList<>();
    for (Map.Entry<Source, List<Classified>> each : bySource.entrySet()) {
      entries.add(entry(each.getKey(), each.getValue(), wanted));
    }
    entries.sort(new ByRank()); // stable: year and author stay
    return entries;
  }

  private Entry entry(Source source, List<Classified> found, PlaceTest wanted) {
    Map<Optional<String>, List<Classified>> byConcept = new LinkedHashMap<>();
    found.sort(new ByFirstPlace());
    for (Classified classified : found) {
      List<Classified> known = byConcept.get(classified.naming().concept());
      if (known == null) {
        known = new ArrayList<>();
        byConcept.put(classified.naming().concept(), known);
      }
      known.add(classified);
    }
    List<Passage> passages = new ArrayList<>();
    for (Map.Entry<Optional<String>, List<Classified>> each : byConcept.entrySet()) {
      passages.add(passage(each.getKey(), each.getValue(), wanted));
    }
    passages.sort(new ByRankAndLabel());
    return new Entry(lines.of(source), passages, List.of(), List.of(), List.of(), List.of());
  }

  /** What namings of one source have on one concept. */
  public Passage passage(Optional<String> concept, List<Classified> namings, PlaceTest wanted) {
    Set<Locator> pictured = new TreeSet<>();
    Set<Locator> inWords = new TreeSet<>();
    Set<String> printed = new LinkedHashSet<>();
    Map<Locator, Photo> photos = new TreeMap<>();
    for (Classified classified : namings) {
      if (!classified.naming().printed().isEmpty()) {
        printed.add(classified.naming().printed());
      }
      List<Place> places = classified.places();
      for (Place place : places) {
        if (wanted.holds(place) && place.photo().isPresent()) {
          photos.put(place.locator(), new Photo(place.locator(), place.photo().get()));
        }
        if (wanted.holds(place) && place.medium().isPicture()) {
          pictured.add(place.locator());
        } else if (wanted.holds(place) && !isCaptionOfAPicture(place, places)) {
          inWords.add(place.locator());
        }
      }
    }
    inWords.removeAll(pictured);
    return new Passage(
        concept.isPresent() ? Optional.of(line(concept.get())) : Optional.empty(),
        isNarrower(concept),
        List.copyOf(printed),
        List.copyOf(pictured),
        List.copyOf(inWords),
        List.copyOf(photos.values()));
  }

  private boolean isNarrower(Optional<String> concept) {
    return asked.isPresent()
        && concept.isPresent()
        && thesaurus.isBroader(asked.get(), concept.get());
  }

  /** A caption goes with its picture; it is a place of its own only where there is none. */
  private static boolean isCaptionOfAPicture(Place place, List<Place> places) {
    if (place.medium() == Medium.CAPTION) {
      for (Place other : places) {
        if (other.medium().isPicture() && samePiece(other, place)) {
          return true;
        }
      }
    }
    return false;
  }

  private static boolean samePiece(Place a, Place b) {
    return a.piece().isPresent() ? a.piece().equals(b.piece()) : a.locator().equals(b.locator());
  }

  public ConceptLine line(String concept) {
    return new ConceptLine(concept, thesaurus.label(concept));
  }

  static boolean isPictured(Entry entry) {
    for (Passage passage : entry.passages()) {
      if (!passage.pictured().isEmpty()) {
        return true;
      }
    }
    return false;
  }

  /** R4: exact and pictured, exact in words, narrower and pictured, narrower in words. */
  private static int rank(Passage passage) {
    return (passage.narrower() ? 2 : 0) + (passage.pictured().isEmpty() ? 1 : 0);
  }

  private static final class ByRank implements Comparator<Entry> {
    @Override
    public int compare(Entry a, Entry b) {
      return Integer.compare(rank(a.passages().get(0)), rank(b.passages().get(0)));
    }
  }

  private static final class ByRankAndLabel implements Comparator<Passage> {
    @Override
    public int compare(Passage a, Passage b) {
      int ranks = Integer.compare(rank(a), rank(b));
      return ranks != 0 ? ranks : label(a).compareTo(label(b));
    }

    private static String label(Passage passage) {
      return passage.concept().isPresent() ? passage.concept().get().label() : "";
    }
  }

  private static final class ByFirstPlace implements Comparator<Classified> {
    @Override
    public int compare(Classified a, Classified b) {
      return first(a).compareTo(first(b));
    }

    private static Locator first(Classified classified) {
      Locator first = null;
      for (Place place : classified.sourced().note().places()) {
        if (first == null || place.locator().compareTo(first) < 0) {
          first = place.locator();
        }
      }
      return first;
    }
  }
}
