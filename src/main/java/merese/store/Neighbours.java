package merese.store;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collection;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * What the rest of a library has, as its reader knows it, for one file to be held against. It says
 * where in the file the contradiction stands; the file is read for that.
 *
 * @param works the file of each work, by its name
 * @param editions the file of each edition, by its key
 * @param concepts the ids of all concepts
 */
public record Neighbours(
    Map<String, Path> works, Map<String, Path> editions, Collection<String> concepts) {

  /** Where a work's name, or a key in it, stands that another file has already. */
  public List<Problem> repeats(LibraryFile file) {
    Map<Ids.Kind, Ids> ids = ids();
    works.forEach((id, path) -> ids.get(Ids.Kind.WORK).has(id, path.toString()));
    editions.forEach((key, path) -> ids.get(Ids.Kind.EDITION).has(key, path.toString()));
    Source source = Source.of(file.path(), Disk.read(file.path()));
    Reading reading = new Reading(source, false);
    new Definitions(file, reading, ids).visit(Spot.top(JsonReader.read(source)));
    return new ArrayList<>(reading.problems());
  }

  /** Where a file names concepts that are not there. */
  public List<Problem> unknownConcepts(LibraryFile file) {
    Map<Ids.Kind, Ids> ids = ids();
    concepts.forEach(id -> ids.get(Ids.Kind.CONCEPT).has(id, ""));
    Source source = Source.of(file.path(), Disk.read(file.path()));
    Reading reading = new Reading(source, false);
    new References(reading, ids, Set.of(Ids.Kind.CONCEPT))
        .visit(file.kind(), Spot.top(JsonReader.read(source)));
    return new ArrayList<>(reading.problems());
  }

  private static Map<Ids.Kind, Ids> ids() {
    Map<Ids.Kind, Ids> ids = new EnumMap<>(Ids.Kind.class);
    for (Ids.Kind kind : Ids.Kind.values()) {
      ids.put(kind, new Ids(kind));
    }
    return ids;
  }
}
