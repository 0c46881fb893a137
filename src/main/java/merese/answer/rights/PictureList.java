package merese.answer.rights;

import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import merese.model.Locator;
import merese.model.Place;
import merese.shelf.Source;
import merese.shelf.SourcedNote;

/** The pictures that notes speak of, the same one in several sources once. */
final class PictureList {
  private final Optional<String> asked;
  private final Map<String, Map<Source, Shown>> pictures = new LinkedHashMap<>();

  /**
   * @param asked the concept asked for; empty where a source is
   */
  PictureList(Optional<String> asked) {
    this.asked = asked;
  }

  /** A picture in one source, with what the notes say that it shows. */
  static final class Shown {
    private final Source source;
    private final Optional<String> picture;
    private final Set<Locator> where = new TreeSet<>();
    private final Set<String> narrower = new LinkedHashSet<>();
    private final Set<SourcedNote> notes = new LinkedHashSet<>();
    private boolean drawn;
    private boolean exact;
    private boolean kind;

    private Shown(Source source, Optional<String> picture) {
      this.source = source;
      this.picture = picture;
    }

    Source source() {
      return source;
    }

    Optional<String> picture() {
      return picture;
    }

    List<Locator> where() {
      return List.copyOf(where);
    }

    /** What it shows; none where that is what was asked. */
    Set<String> narrower() {
      return exact ? Set.of() : narrower;
    }

    Set<SourcedNote> notes() {
      return notes;
    }

    boolean isDrawn() {
      return drawn;
    }

    /** Whether it shows how the thing is made and nothing else. */
    boolean isOfProcess() {
      return !kind;
    }
  }

  /**
   * Adds a place, where it is a picture.
   *
   * @param concept what the note says that it shows
   */
  void add(SourcedNote note, Place place, Optional<String> concept) {
    if (!place.isPictured() && !place.showsProcess()) {
      return;
    }
    String key =
        place.picture().isPresent()
            ? place.picture().get()
            : note.source().key() + '\n' + place.locator();
    Shown shown =
        pictures
            .computeIfAbsent(key, k -> new TreeMap<>(Source.BY_YEAR))
            .computeIfAbsent(note.source(), source -> new Shown(source, place.picture()));
    shown.where.add(place.locator());
    shown.notes.add(note);
    shown.drawn |= place.medium() == Place.Medium.DRAWING;
    shown.kind |= !place.showsProcess();
    shown.exact |= asked.isEmpty() || concept.equals(asked);
    concept.ifPresent(shown.narrower::add);
  }

  /**
   * Each picture with its sources: first what was asked, then what is narrower, last how it is
   * made; in each by year and author of the first source, then in physical order.
   *
   * @param at only those at this place
   */
  List<List<Shown>> pictures(Optional<Locator> at) {
    List<List<Shown>> found = new ArrayList<>();
    for (Map<Source, Shown> picture : pictures.values()) {
      List<Shown> shown = List.copyOf(picture.values());
      if (at.isEmpty() || shown.stream().anyMatch(each -> meet(each.where, at.get()))) {
        found.add(shown);
      }
    }
    found.sort(
        Comparator.comparing(
                (List<Shown> picture) -> picture.get(0), Comparator.comparing(Shown::isOfProcess))
            .thenComparing(picture -> picture.stream().noneMatch(each -> each.exact))
            .thenComparing(picture -> picture.get(0).source, Source.BY_YEAR)
            .thenComparing(picture -> picture.get(0).where().get(0)));
    return found;
  }

  /** Whether one of some places has a page, plate or figure that the other place has too. */
  static boolean meet(Set<Locator> places, Locator other) {
    for (Locator place : places) {
      if (place.equals(other) || !Collections.disjoint(place.members(), other.members())) {
        return true;
      }
    }
    return false;
  }
}
