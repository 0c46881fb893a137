package merese.answer.concordance;

import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import merese.model.Naming;
import merese.model.PlaceTest;
import merese.search.NoteCriterion;
import merese.shelf.Shelf;
import merese.shelf.SourcedNote;
import merese.vocabulary.Thesaurus;

/** All namings that have to do with some concepts, each under the nearest that was asked about. */
final class Uses {
  private final Thesaurus thesaurus;
  private final Set<String> asked;
  private final Map<String, List<String>> homes = new HashMap<>();

  final List<Use> covering = new ArrayList<>();
  final List<Use> own = new ArrayList<>();
  final List<Use> made = new ArrayList<>();
  final List<Use> absent = new ArrayList<>();
  final List<Use> notStated = new ArrayList<>();

  Uses(Shelf shelf, Collection<String> concepts) {
    this.thesaurus = shelf.thesaurus();
    this.asked = new LinkedHashSet<>(concepts);
    List<NoteCriterion> criteria = new ArrayList<>();
    for (String concept : asked) {
      criteria.add(new NoteCriterion.Means(concept));
      criteria.add(new NoteCriterion.MayMean(concept));
    }
    for (SourcedNote note : shelf.notes(criteria)) {
      for (Naming naming : note.note().namings()) {
        add(note, naming);
      }
    }
    for (List<Use> each : List.of(covering, own, made, absent, notStated)) {
      each.sort(Use.IN_ORDER);
    }
  }

  private void add(SourcedNote note, Naming naming) {
    if (naming.concept().isEmpty()) {
      addNotStated(note, naming);
      return;
    }
    for (String home : homes(naming.concept().get())) {
      Use use = new Use(note, naming, home);
      boolean covers = use.has(PlaceTest.COVERS);
      if (note.source().mine()) {
        addIf(covers, own, use);
      } else {
        addIf(covers, covering, use);
        addIf(!covers && use.has(PlaceTest.PROCESS), made, use);
        addIf(use.has(PlaceTest.ABSENCE), absent, use);
      }
    }
  }

  private static void addIf(boolean holds, List<Use> to, Use use) {
    if (holds) {
      to.add(use);
    }
  }

  private void addNotStated(SourcedNote note, Naming naming) {
    for (String concept : note.mayMean().getOrDefault(naming.printed(), List.of())) {
      List<String> possible = homes(concept);
      if (!possible.isEmpty() && !note.source().mine()) {
        Use use = new Use(note, naming, possible.get(0));
        addIf(use.has(PlaceTest.PRESENT), notStated, use);
        return;
      }
    }
  }

  /** The concepts asked about that a concept stands under: itself, else the nearest broader. */
  private List<String> homes(String concept) {
    List<String> known = homes.get(concept);
    if (known == null) {
      known = asked.contains(concept) ? List.of(concept) : nearestBroader(concept);
      homes.put(concept, known);
    }
    return known;
  }

  private List<String> nearestBroader(String concept) {
    List<String> broader = new ArrayList<>();
    for (String each : asked) {
      if (thesaurus.isBroader(each, concept)) {
        broader.add(each);
      }
    }
    List<String> nearest = new ArrayList<>(broader);
    for (String each : broader) {
      nearest.removeIf(other -> thesaurus.isBroader(other, each));
    }
    return nearest;
  }
}
