package merese.answer.witnesses;

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
import merese.answer.SourceLines;
import merese.answer.witnesses.Witnesses.Printing;
import merese.answer.witnesses.Witnesses.SharedPicture;
import merese.model.Edition.Lineage;
import merese.model.Edition.PlateChange;
import merese.model.Locator;
import merese.model.Place;
import merese.model.Place.Medium;
import merese.model.PlaceTest;
import merese.shelf.Source;

/** The pictures of one feature, by the ids that they have in every source. */
final class Pictures {
  private final SourceLines lines;
  private final Map<Source, List<Classified>> counted;
  private final Map<String, Map<Source, Set<Locator>>> byId = new TreeMap<>();

  Pictures(
      SourceLines lines, Map<Source, List<Classified>> counted, Map<Source, List<Classified>> own) {
    this.lines = lines;
    this.counted = counted;
    for (Map<Source, List<Classified>> sources : List.of(counted, own)) {
      sources.forEach(
          (source, namings) -> {
            for (Place place : covering(namings)) {
              if (place.isPictured() && place.picture().isPresent()) {
                byId.computeIfAbsent(place.picture().get(), p -> new TreeMap<>(Source.BY_YEAR))
                    .computeIfAbsent(source, s -> new LinkedHashSet<>())
                    .add(place.locator());
              }
            }
          });
    }
  }

  private static List<Place> covering(List<Classified> namings) {
    List<Place> places = new ArrayList<>();
    for (Classified classified : namings) {
      for (Place place : classified.places()) {
        if (PlaceTest.COVERS.holds(place)) {
          places.add(place);
        }
      }
    }
    return places;
  }

  /**
   * The source of another, earlier witness that has the pictures of this one, where these are all
   * that it has; null for one with words or a picture of its own.
   */
  Source borrowedFrom(Independence.Witness witness, Independence independence) {
    List<Source> sources = new ArrayList<>(List.of(witness.first()));
    witness.folded().forEach(f -> sources.add(f.source()));
    Source from = null;
    for (Source source : sources) {
      for (Place place : covering(counted.get(source))) {
        if (place.medium() == Medium.TEXT) {
          return null;
        } else if (place.medium().isPicture()) {
          Source first = place.picture().map(p -> firstWith(p)).orElse(null);
          if (first == null || independence.of(first).equals(witness)) {
            return null;
          }
          from = from == null ? first : from;
        }
      }
    }
    return from;
  }

  /** The earliest source of a picture that is a witness at all. */
  private Source firstWith(String picture) {
    for (Source source : byId.get(picture).keySet()) {
      if (!source.mine()) {
        return source;
      }
    }
    return null;
  }

  Set<String> ids() {
    return byId.keySet();
  }

  /** The pictures that several sources have, or that an edition's list of plates names too. */
  List<SharedPicture> shared(Collection<Source> sources) {
    List<SharedPicture> shared = new ArrayList<>();
    for (Map.Entry<String, Map<Source, Set<Locator>>> picture : byId.entrySet()) {
      Map<Source, List<Printing>> printings = new TreeMap<>(Source.BY_YEAR);
      for (Source source : sources) {
        List<Printing> here = printings(source, picture.getKey(), picture.getValue().get(source));
        if (!here.isEmpty()) {
          printings.put(source, here);
        }
      }
      if (printings.size() > 1) {
        List<Printing> all = new ArrayList<>();
        printings.values().forEach(all::addAll);
        shared.add(new SharedPicture(picture.getKey(), all));
      }
    }
    shared.sort(
        (a, b) ->
            Integer.compare(
                a.printings().get(0).source().year().orElse(Integer.MAX_VALUE),
                b.printings().get(0).source().year().orElse(Integer.MAX_VALUE))); // stable: then id
    return shared;
  }

  private List<Printing> printings(Source source, String picture, Set<Locator> noted) {
    Map<Optional<Locator>, Printing> found = new LinkedHashMap<>();
    if (noted != null) {
      for (Locator locator : noted.stream().sorted().toList()) {
        Optional<Locator> at = Optional.of(locator);
        found.put(at, new Printing(lines.of(source), at, true, source.mine()));
      }
      return List.copyOf(found.values());
    }
    Optional<Lineage> lineage = source.edition().lineage();
    if (lineage.isPresent()) {
      for (PlateChange plate : lineage.get().plates()) {
        if (plate.picture().equals(picture) && plate.fate() == PlateChange.Fate.KEPT) {
          found.put(
              plate.locator(),
              new Printing(lines.of(source), plate.locator(), false, source.mine()));
        }
      }
    }
    return List.copyOf(found.values());
  }
}
