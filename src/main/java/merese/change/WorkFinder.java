package merese.change;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import merese.model.Edition;
import merese.model.Nearest;
import merese.model.Work;
import merese.shelf.Fingerprint;
import merese.shelf.KnownNames;
import merese.shelf.KnownNames.Known;
import merese.shelf.KnownNames.Repeated;
import merese.shelf.SourceAddress;
import merese.shelf.WritingShelf;
import merese.store.LibraryFile;
import merese.store.Problem;
import merese.store.Stored;

/**
 * Finds a work or an edition by its name, and says which names are taken, for a change that touches
 * no other work. The names of files that cannot be read are taken, and {@link #unread} says what is
 * wrong with them.
 */
final class WorkFinder {
  private static final int MOST_NEAR = 3;

  private final WritingShelf shelf;
  private final KnownNames names;

  /** The names of the files that cannot be read. */
  private final List<String> unreadNames = new ArrayList<>();

  private final List<Problem> unread = new ArrayList<>();

  /**
   * @throws ChangeRefusedException where two works, or two editions, have one name
   */
  WorkFinder(WritingShelf shelf) {
    this.shelf = shelf;
    this.names = shelf.names();
    shelf
        .unread()
        .forEach(
            (file, first) -> {
              unreadNames.add(LibraryFile.nameOf(shelf.folder().resolve(file)));
              unread.add(Unread.below(shelf.folder().path(), file, first));
            });
    Optional<Repeated> repeated = names.repeated();
    if (repeated.isPresent()) {
      throw new ChangeRefusedException(
          "two "
              + repeated.get().noun()
              + "s are called "
              + repeated.get().name()
              + "; run merese check, and give one another name");
    }
  }

  /**
   * What a user named.
   *
   * @param edition empty where they named the work
   * @param file of the work
   */
  record Named(String typed, String work, Optional<String> edition, String file) {}

  /** A problem a file that could not be read. */
  List<Problem> unread() {
    return List.copyOf(unread);
  }

  /** What a word names; capitals are forgiven where only one thing is meant. */
  Named find(String typed) {
    String word = typed.strip();
    List<Known> called = names.called(word);
    Optional<Named> exact = named(word, word, called);
    if (exact.isPresent()) {
      return exact.get();
    }
    Set<String> alike = new TreeSet<>();
    for (Known known : called) {
      known.edition().filter(word::equalsIgnoreCase).ifPresent(alike::add);
      if (word.equalsIgnoreCase(known.work())) {
        alike.add(known.work());
      }
    }
    if (alike.size() == 1) {
      return named(word, alike.iterator().next(), called).orElseThrow();
    }
    throw new UnknownWorkException(word, Nearest.to(word, allNames(), MOST_NEAR), unread());
  }

  private static Optional<Named> named(String typed, String name, List<Known> called) {
    Optional<Known> edition = called.stream().filter(k -> isKey(k, name)).findFirst();
    Optional<Known> work = called.stream().filter(k -> k.work().equals(name)).findFirst();
    if (edition.isPresent() && work.isPresent() && !edition.get().work().equals(name)) {
      throw new ChangeRefusedException(
          typed
              + " is the key of an edition of "
              + edition.get().work()
              + " and the name of another work; name the one by another key, or the work "
              + edition.get().work());
    }
    return edition
        .map(k -> new Named(typed, k.work(), k.edition(), k.file()))
        .or(() -> work.map(k -> new Named(typed, k.work(), Optional.empty(), k.file())));
  }

  private static boolean isKey(Known known, String name) {
    return known.edition().filter(name::equals).isPresent();
  }

  /** Read only where a word names nothing. */
  private Set<String> allNames() {
    Set<String> all = new TreeSet<>();
    for (SourceAddress source : shelf.sources()) {
      all.add(source.key());
      all.add(LibraryFile.nameOf(shelf.folder().resolve(source.file())));
    }
    return all;
  }

  /** Whether an edition has the key; to some systems keys that differ in capitals are one. */
  boolean hasKeyLike(String key) {
    return isUnread(key)
        || names.called(key).stream()
            .anyMatch(k -> k.edition().filter(key::equalsIgnoreCase).isPresent());
  }

  /** The same of the id of a work. */
  boolean hasWorkLike(String id) {
    return isUnread(id) || names.called(id).stream().anyMatch(k -> k.work().equalsIgnoreCase(id));
  }

  private boolean isUnread(String name) {
    return unreadNames.stream().anyMatch(name::equalsIgnoreCase);
  }

  /** Editions that a new one may be: see {@link KnownNames#like}. */
  List<Known> like(Work made) {
    return names.like(Fingerprint.of(made));
  }

  /** A work as one of its editions alone shows it. */
  Work alone(Known known) {
    return names.alone(known);
  }

  /** The work as it is on the disk now. */
  Stored<Work> read(Named named) {
    Stored<Work> stored = shelf.folder().readWork(shelf.folder().resolve(named.file()));
    List<String> keys = stored.value().editions().stream().map(Edition::key).toList();
    if (named.edition().isPresent() && !keys.contains(named.edition().get())) {
      throw new ChangeRefusedException(
          named.file()
              + " no longer has the edition "
              + named.edition().get()
              + "; nothing was written");
    }
    return stored;
  }
}
