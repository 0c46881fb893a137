package merese.change;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;
import merese.model.Edition;
import merese.model.Nearest;
import merese.model.Place;
import merese.model.Work;
import merese.model.WorkLink;
import merese.store.LibraryFile;
import merese.store.LibraryFolder;
import merese.store.Stored;

/**
 * What the works and editions of a library are called and which refers to which, from one reading
 * of all their files, one at a time.
 */
final class WorkDirectory {
  private static final int MOST_NEAR = 3;

  /** A work without what is in it. */
  private record Known(Path file, List<String> linksTo, List<String> namesEditions) {}

  /**
   * What a user named.
   *
   * @param edition empty where they named the work
   */
  record Named(String typed, String work, Optional<String> edition) {}

  private final LibraryFolder folder;
  private final Map<String, Known> works = new LinkedHashMap<>();
  private final Map<String, String> worksOfKeys = new HashMap<>();
  private final Map<String, String> parents = new HashMap<>();

  private WorkDirectory(LibraryFolder folder) {
    this.folder = folder;
  }

  static WorkDirectory of(LibraryFolder folder) {
    return of(folder, work -> {});
  }

  /** The same; each work is handed on as it is read. */
  static WorkDirectory of(LibraryFolder folder, Consumer<Stored<Work>> reader) {
    WorkDirectory directory = new WorkDirectory(folder);
    for (LibraryFile file : folder.scan()) {
      if (file.kind() == LibraryFile.Kind.WORK) {
        Stored<Work> work = folder.readWork(file.path());
        directory.add(work);
        reader.accept(work);
      }
    }
    return directory;
  }

  private void add(Stored<Work> stored) {
    Work work = stored.value();
    List<String> above = new ArrayList<>();
    for (Edition edition : work.editions()) {
      Optional<String> parent = edition.lineage().flatMap(Edition.Lineage::parent);
      parent.ifPresent(above::add);
      edition.notes().forEach(note -> note.places().forEach(place -> addCorrected(place, above)));
      parent.ifPresent(p -> parents.put(edition.key(), p));
      requireOnce(worksOfKeys.put(edition.key(), work.id()) == null, "edition", edition.key());
    }
    List<String> to = work.links().stream().map(WorkLink::to).toList();
    Known known = new Known(stored.file(), to, above);
    requireOnce(works.put(work.id(), known) == null, "work", work.id());
  }

  private static void addCorrected(Place place, List<String> to) {
    place.corrects().ifPresent(corrected -> to.add(corrected.edition()));
  }

  private static void requireOnce(boolean once, String noun, String name) {
    if (!once) {
      throw new ChangeRefusedException(
          "two " + noun + "s are called " + name + "; run merese check, and give one another name");
    }
  }

  /** What a word names; capitals are forgiven where only one thing is meant. */
  Named find(String typed) {
    String word = typed.strip();
    Optional<Named> exact = named(word, word);
    if (exact.isPresent()) {
      return exact.get();
    }
    List<String> alike = names().stream().filter(word::equalsIgnoreCase).toList();
    if (alike.size() == 1) {
      return named(word, alike.get(0)).orElseThrow();
    }
    throw new UnknownWorkException(word, Nearest.to(word, names(), MOST_NEAR), List.of());
  }

  private Optional<Named> named(String typed, String name) {
    String ofKey = worksOfKeys.get(name);
    if (ofKey != null && works.containsKey(name) && !ofKey.equals(name)) {
      throw new ChangeRefusedException(
          typed
              + " is the key of an edition of "
              + ofKey
              + " and the name of another work; name the one by another key, or the work "
              + ofKey);
    }
    if (ofKey != null) {
      return Optional.of(new Named(typed, ofKey, Optional.of(name)));
    }
    return works.containsKey(name)
        ? Optional.of(new Named(typed, name, Optional.empty()))
        : Optional.empty();
  }

  private List<String> names() {
    List<String> names = new ArrayList<>(worksOfKeys.keySet());
    works.keySet().stream().filter(id -> !worksOfKeys.containsKey(id)).forEach(names::add);
    names.sort(null);
    return names;
  }

  boolean hasWork(String id) {
    return works.containsKey(id);
  }

  /** Whether an edition or a work is called so, letter by letter. */
  boolean isName(String name) {
    return worksOfKeys.containsKey(name) || works.containsKey(name);
  }

  Stored<Work> read(String work) {
    return folder.readWork(works.get(work).file());
  }

  /**
   * The works with a link to one of some works, or an edition that descends from one of some or
   * corrects one.
   */
  List<String> referringTo(List<String> ids, List<String> keys) {
    List<String> referring = new ArrayList<>();
    works.forEach(
        (id, known) -> {
          if (known.linksTo().stream().anyMatch(ids::contains)
              || known.namesEditions().stream().anyMatch(keys::contains)) {
            referring.add(id);
          }
        });
    return referring;
  }

  /** The key of what an edition descends from. */
  Optional<String> parent(String key) {
    return Optional.ofNullable(parents.get(key));
  }
}
