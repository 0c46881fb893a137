package merese.store;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import merese.model.Nearest;

/** The ids of one kind, with the place where each was met first. */
final class Ids {
  /** What has an id, and the files that it is defined in. */
  enum Kind {
    WORK("work", LibraryFile.Kind.WORK),
    EDITION("edition", LibraryFile.Kind.WORK),
    CONCEPT("concept", LibraryFile.Kind.VOCABULARY),
    OBJECT("object", LibraryFile.Kind.OBJECT),
    NOTE("note", null),
    PART("part", null),
    COPY("copy", null),
    PHOTOGRAPH("photograph", null);

    final String noun;
    final LibraryFile.Kind in;

    Kind(String noun, LibraryFile.Kind in) {
      this.noun = noun;
      this.in = in;
    }
  }

  private final Kind kind;
  private final Map<String, String> places = new HashMap<>();
  private boolean lacking;

  Ids(Kind kind) {
    this.kind = kind;
  }

  /** The ids that stand in the objects of a list. */
  static Ids local(Kind kind, List<Spot> objects) {
    Ids result = new Ids(kind);
    for (Spot object : objects) {
      Spot id = object.at("id");
      if (id != null && id.text() != null) {
        result.places.put(id.text(), "");
      }
    }
    return result;
  }

  /** Takes an id as met first in a file. */
  void has(String id, String place) {
    places.putIfAbsent(id, place);
  }

  void lacksSome() {
    lacking = true;
  }

  /** Records an id; one that is there already is a problem. */
  void define(Spot spot, Reading reading) {
    String id = spot == null ? null : spot.text();
    if (id == null) {
      return;
    }
    int at = spot.value().start();
    String first = places.putIfAbsent(id, reading.place(at));
    if (first != null) {
      reading.error(
          at,
          spot.where(),
          "the " + kind.noun + " " + Quote.of(id) + " stands in " + first + " already",
          "give one of the two another name");
    }
  }

  /** Reports a reference that leads nowhere. */
  void require(Spot spot, Reading reading) {
    String id = spot == null ? null : spot.text();
    if (id == null || id.isBlank() || lacking || places.containsKey(id)) {
      return;
    }
    List<String> near = Nearest.bySlips(id, places.keySet().stream().sorted().toList());
    reading.error(
        spot.value().start(),
        spot.where(),
        "there is no " + kind.noun + " " + Quote.of(id),
        near.isEmpty()
            ? "correct the name, or add the " + kind.noun
            : "did you mean " + Quote.of(near.get(0)) + "?");
  }
}
