package merese.shelf;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Stream;
import merese.model.Edition;
import merese.model.Work;
import merese.search.Hits.SourceHit;
import merese.search.NoteIndex;
import merese.store.LibraryJson;

/**
 * What the works and editions of a library are called, and what a new one has in common with them:
 * each a question to the index for just that, and a look at the works that were written since.
 */
public final class KnownNames {
  private final NoteIndex index;

  /** By file; null for one that is gone. */
  private final Map<String, Work> since;

  KnownNames(NoteIndex index, Map<String, Work> since) {
    this.index = index;
    this.since = new TreeMap<>(since);
  }

  /**
   * An edition with its work.
   *
   * @param file the path of the work's file below the library folder
   * @param edition its key; empty for a work that has no edition
   */
  public record Known(String file, String work, Optional<String> edition) {
    boolean isCalled(String name) {
      return work.equalsIgnoreCase(name) || edition.filter(name::equalsIgnoreCase).isPresent();
    }
  }

  /**
   * That two have one name.
   *
   * @param noun what they are, "edition" or "work"
   */
  public record Repeated(String noun, String name) {}

  /**
   * The editions of a key, and those of the work of this id, whatever its capitals. In the order of
   * files, and in a file as they stand there.
   */
  public List<Known> called(String name) {
    List<Known> known = indexed(index.sourcesCalledLike(name, name + ".json"));
    since.forEach(
        (file, work) ->
            known(file, work).stream().filter(k -> k.isCalled(name)).forEach(known::add));
    known.sort(Comparator.comparing(Known::file));
    return known;
  }

  /**
   * Editions among which are all that have a number in common with a source, or its title and its
   * maker: those with its numbers first, then in the order of files.
   */
  public List<Known> like(Fingerprint print) {
    Set<Known> like = new LinkedHashSet<>();
    for (String mark : print.marks()) {
      List<Known> marked = indexed(index.sourcesMarked(mark));
      since.forEach(
          (file, work) -> {
            for (Known known : known(file, work)) {
              if (known.edition().isPresent()
                  && Fingerprint.of(alone(known)).marks().contains(mark)) {
                marked.add(known);
              }
            }
          });
      marked.sort(Comparator.comparing(Known::file));
      like.addAll(marked);
    }
    return List.copyOf(like);
  }

  private List<Known> indexed(List<SourceHit> hits) {
    List<Known> known = new ArrayList<>();
    for (SourceHit hit : hits) {
      if (!since.containsKey(hit.file())) {
        String work = PackedSource.unpack(hit.payload()).workId();
        known.add(new Known(hit.file(), work, Optional.of(hit.edition())));
      }
    }
    return known;
  }

  /**
   * @param work null for one that is gone
   */
  private static List<Known> known(String file, Work work) {
    List<Known> known = new ArrayList<>();
    if (work != null) {
      for (Edition edition : work.editions()) {
        known.add(new Known(file, work.id(), Optional.of(edition.key())));
      }
      if (work.editions().isEmpty()) {
        known.add(new Known(file, work.id(), Optional.empty()));
      }
    }
    return known;
  }

  /** A work as one of its editions alone shows it, without the notes. */
  public Work alone(Known known) {
    String key = known.edition().orElseThrow();
    Work work = since.get(known.file());
    return work == null
        ? LibraryJson.decodeWork(index.wholeSource(key))
        : work.withOnly(work.edition(key).withoutNotes());
  }

  /**
   * A name that two works, or two editions, have; the index itself holds none that is in another
   * file of it.
   */
  public Optional<Repeated> repeated() {
    for (Map.Entry<String, Work> each : since.entrySet()) {
      Set<String> own = new HashSet<>();
      for (Known known : known(each.getKey(), each.getValue())) {
        if (known.edition().isPresent()) {
          String key = known.edition().get();
          if (!own.add(key) || others(each.getKey(), key).anyMatch(k -> isKey(k, key))) {
            return Optional.of(new Repeated("edition", key));
          }
        }
      }
      if (each.getValue() != null) {
        String id = each.getValue().id();
        if (others(each.getKey(), id).anyMatch(k -> k.work().equals(id))) {
          return Optional.of(new Repeated("work", id));
        }
      }
    }
    return Optional.empty();
  }

  private Stream<Known> others(String file, String name) {
    return called(name).stream().filter(known -> !known.file().equals(file));
  }

  private static boolean isKey(Known known, String key) {
    return known.edition().filter(key::equals).isPresent();
  }
}
