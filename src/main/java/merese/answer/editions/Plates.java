package merese.answer.editions;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import merese.answer.editions.EditionGrid.Cell;
import merese.answer.editions.EditionGrid.OtherObject;
import merese.answer.editions.EditionGrid.State;
import merese.model.Edition.Lineage;
import merese.model.Edition.Lineage.Form;
import merese.model.Edition.PlateChange;
import merese.model.Locator;
import merese.model.Naming;
import merese.model.Note;
import merese.model.Place;
import merese.shelf.Shelf;
import merese.shelf.Source;
import merese.shelf.SourcedNote;

/** What the notes and the plate lists of editions say of pictures. */
final class Plates {
  /** A picture in one edition, by that edition's own notes and list. */
  private static final class Own {
    final Set<Locator> locators = new LinkedHashSet<>();
    final Set<String> printed = new LinkedHashSet<>();
    final List<OtherObject> others = new ArrayList<>();
    boolean dropped;
    Optional<String> words = Optional.empty();
  }

  private final Map<String, Source> editions;
  private final Map<String, String> years;
  private final Map<String, Map<String, Own>> own = new LinkedHashMap<>();

  /**
   * @param editions by key, in their order
   * @param years how each is called in short
   */
  Plates(Shelf shelf, Map<String, Source> editions, Map<String, String> years) {
    this.editions = editions;
    this.years = years;
    for (Source source : editions.values()) {
      Map<String, Own> known = new TreeMap<>();
      for (SourcedNote sourced : shelf.notesOf(source)) {
        addNote(known, sourced.note());
      }
      source.edition().lineage().ifPresent(lineage -> addList(known, lineage));
      own.put(source.key(), known);
    }
  }

  private static void addNote(Map<String, Own> known, Note note) {
    for (Place place : note.places()) {
      if (place.picture().isEmpty()
          || !place.medium().isPicture()
          || place.stance() == Place.Stance.SAYS_ABSENT) {
        continue;
      }
      Own picture = known.computeIfAbsent(place.picture().get(), p -> new Own());
      picture.locators.add(place.locator());
      for (Naming naming : note.namings()) {
        if (!naming.printed().isEmpty() && note.placesOf(naming).contains(place)) {
          picture.printed.add(naming.printed());
        }
      }
    }
  }

  private static void addList(Map<String, Own> known, Lineage lineage) {
    for (PlateChange change : lineage.plates()) {
      Own picture = known.computeIfAbsent(change.picture(), p -> new Own());
      switch (change.fate()) {
        case KEPT -> {
          change.locator().ifPresent(picture.locators::add);
          picture.words = picture.words.or(change::words);
        }
        case DROPPED -> {
          picture.dropped = true;
          picture.words = picture.words.or(change::words);
        }
        case OTHER_OBJECT ->
            change.locator().ifPresent(l -> picture.others.add(new OtherObject(l, change.words())));
      }
    }
  }

  /** Ids, in the order of the editions and of the places in each. */
  List<String> pictures() {
    Set<String> ids = new LinkedHashSet<>();
    for (Map<String, Own> known : own.values()) {
      List<String> here = new ArrayList<>(known.keySet());
      here.sort((a, b) -> compare(known.get(a), known.get(b)));
      ids.addAll(here);
    }
    return List.copyOf(ids);
  }

  private static int compare(Own a, Own b) {
    if (a.locators.isEmpty() || b.locators.isEmpty()) {
      return Boolean.compare(a.locators.isEmpty(), b.locators.isEmpty());
    }
    return sorted(a.locators).get(0).compareTo(sorted(b.locators).get(0));
  }

  private static List<Locator> sorted(Set<Locator> locators) {
    List<Locator> sorted = new ArrayList<>(locators);
    sorted.sort(null);
    return sorted;
  }

  /** The year of the edition whose plates this one repeats without a list of its own. */
  Optional<String> platesAs(String edition) {
    return repeated(edition).map(years::get);
  }

  private Optional<String> repeated(String edition) {
    Optional<Lineage> lineage = editions.get(edition).edition().lineage();
    if (lineage.isEmpty()
        || !lineage.get().plates().isEmpty()
        || lineage.get().form() != Form.FACSIMILE && lineage.get().form() != Form.REPRINT) {
      return Optional.empty();
    }
    return lineage.get().parent().filter(editions::containsKey);
  }

  boolean areRecorded(String edition) {
    return !own.get(edition).isEmpty()
        || repeated(edition).isPresent() && !own.get(repeated(edition).get()).isEmpty();
  }

  Cell cell(String edition, String picture) {
    Optional<String> as = Optional.empty();
    String at = edition;
    Set<String> seen = new LinkedHashSet<>();
    while (!own.get(at).containsKey(picture) && seen.add(at) && repeated(at).isPresent()) {
      at = repeated(at).get();
      as = Optional.of(years.get(at));
    }
    Own found = own.get(at).get(picture);
    if (found == null) {
      return new Cell(
          edition,
          State.NOT_RECORDED,
          List.of(),
          Optional.empty(),
          List.of(),
          Optional.empty(),
          List.of());
    }
    List<Locator> locators = sorted(found.locators);
    return new Cell(
        edition,
        state(edition, picture, found, locators),
        locators,
        as,
        List.copyOf(found.printed),
        found.words,
        List.copyOf(found.others));
  }

  private State state(String edition, String picture, Own found, List<Locator> locators) {
    if (locators.isEmpty()) {
      return found.dropped ? State.DROPPED : State.OTHER_OBJECT;
    }
    Optional<String> above = editions.get(edition).edition().lineage().flatMap(Lineage::parent);
    Set<String> seen = new LinkedHashSet<>(Set.of(edition));
    while (above.isPresent() && editions.containsKey(above.get()) && seen.add(above.get())) {
      Own before = own.get(above.get()).get(picture);
      if (before != null && !before.locators.isEmpty()) {
        return sorted(before.locators).equals(locators) ? State.KEPT : State.RENUMBERED;
      }
      above = editions.get(above.get()).edition().lineage().flatMap(Lineage::parent);
    }
    return State.FIRST;
  }
}
