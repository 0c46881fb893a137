package merese.change;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import java.util.function.Predicate;
import merese.change.Effect.Sort;
import merese.change.WorkDirectory.Named;
import merese.model.Edition;
import merese.model.Edition.OwnTitle;
import merese.model.Work;
import merese.model.WorkLink;
import merese.store.ChangeSet;
import merese.store.LibraryFolder;
import merese.store.Stored;

/**
 * Makes editions of a work a work of their own, with the same contributors, language and kind. What
 * they descend from stays said of them; the links stay with the old work.
 */
public final class Split {
  private final WorkDirectory directory;
  private final List<Effect> effects = new ArrayList<>();
  private final Stored<Work> old;
  private final Work rest;
  private final Work made;

  private Split(LibraryFolder folder, SplitRequest request) {
    this.directory = WorkDirectory.of(folder);
    Set<String> keys = new LinkedHashSet<>();
    Optional<String> work = Optional.empty();
    for (String typed : request.keys()) {
      Named named = directory.find(typed);
      keys.add(key(named));
      if (work.isPresent() && !work.get().equals(named.work())) {
        throw new ChangeRefusedException(
            typed
                + " is of the work "
                + named.work()
                + ", not of "
                + work.get()
                + "; split one work at a time");
      }
      work = Optional.of(named.work());
    }
    this.old = directory.read(work.orElseThrow());
    List<Edition> all = old.value().editions();
    List<Edition> moved = all.stream().filter(e -> keys.contains(e.key())).toList();
    List<Edition> staying = all.stream().filter(e -> !keys.contains(e.key())).toList();
    if (staying.isEmpty()) {
      throw new ChangeRefusedException(
          "nothing would stay of the work "
              + old.value().id()
              + ", which has no other editions; there is nothing to split");
    }
    this.rest = old.value().withEditions(staying);
    this.made = made(request, moved);
    folder.requireAddable(made);
    tellOfLinks();
    tellOfDescent(moved, staying);
  }

  /** What a split would do; nothing is changed. */
  public static SplitPreview preview(LibraryFolder folder, SplitRequest request) {
    return new Split(folder, request).preview();
  }

  /** Does it, all or nothing; what is returned has been done. */
  public static SplitPreview apply(LibraryFolder folder, SplitRequest request) {
    return make(folder, request, preview -> true).result();
  }

  /**
   * Does it if what it does is agreed to; the library cannot change in between.
   *
   * @param agreed to what it would do now
   * @return what it did; with no change where that was not agreed to
   */
  public static Made<SplitPreview> make(
      LibraryFolder folder, SplitRequest request, Predicate<SplitPreview> agreed) {
    try (ChangeSet change = folder.change(request.words())) {
      Split split = new Split(folder, request);
      if (!agreed.test(split.preview())) {
        return new Made<>(split.preview(), OptionalInt.empty());
      }
      change.save(split.old, split.rest);
      change.add(split.made, List.of(split.old));
      change.commit();
      return new Made<>(split.preview(), change.number());
    }
  }

  private String key(Named named) {
    if (named.edition().isEmpty()) {
      List<Edition> editions = directory.read(named.work()).value().editions();
      throw new ChangeRefusedException(
          named.typed()
              + " is a work; name those of its editions that leave it: "
              + String.join(", ", editions.stream().map(Edition::key).toList()));
    }
    return named.edition().get();
  }

  private Work made(SplitRequest request, List<Edition> moved) {
    Work was = old.value();
    OwnTitle title =
        request
            .title()
            .map(given -> titled(given, ownTitle(moved)))
            .or(() -> ownTitle(moved))
            .orElse(new OwnTitle(was.title(), was.subtitle()));
    return new Work(
        request.id().orElseGet(() -> freeId(moved.get(0).key())),
        was.kind(),
        title.title(),
        title.subtitle(),
        List.of(),
        was.contributors(),
        was.language(),
        was.mine(),
        moved.stream().map(edition -> under(title, edition)).toList(),
        List.of());
  }

  /** With its subtitle, where the editions know one of that title. */
  private static OwnTitle titled(String given, Optional<OwnTitle> own) {
    return own.filter(title -> title.title().equals(given) || title.whole().equals(given))
        .orElse(new OwnTitle(given, Optional.empty()));
  }

  /** The title that all these editions have of their own. */
  private static Optional<OwnTitle> ownTitle(List<Edition> moved) {
    Optional<OwnTitle> first = moved.get(0).imprint().title();
    boolean all = moved.stream().allMatch(e -> e.imprint().title().equals(first));
    return first.filter(title -> all);
  }

  /** A title that has become the work's is no longer the edition's own. */
  private static Edition under(OwnTitle title, Edition edition) {
    return edition.imprint().title().equals(Optional.of(title))
        ? edition.withImprint(edition.imprint().withTitle(Optional.empty()))
        : edition;
  }

  private String freeId(String key) {
    String id = key;
    for (int number = 2; directory.hasWork(id); number++) {
      id = key + "-" + number;
    }
    return id;
  }

  private void tellOfLinks() {
    for (WorkLink link : old.value().links()) {
      effects.add(new Effect(Sort.STAYS, "link: " + WorkJoin.words(old.value().id(), link)));
    }
    for (String id : directory.referringTo(List.of(old.value().id()), List.of())) {
      for (WorkLink link : directory.read(id).value().links()) {
        if (link.to().equals(old.value().id())) {
          effects.add(new Effect(Sort.STAYS, "link: " + WorkJoin.words(id, link)));
        }
      }
    }
  }

  private void tellOfDescent(List<Edition> moved, List<Edition> staying) {
    List<String> there = staying.stream().map(Edition::key).toList();
    List<String> here = moved.stream().map(Edition::key).toList();
    moved.forEach(edition -> tellOfDescent(edition, there));
    staying.forEach(edition -> tellOfDescent(edition, here));
  }

  private void tellOfDescent(Edition edition, List<String> elsewhere) {
    edition
        .lineage()
        .filter(l -> l.parent().filter(elsewhere::contains).isPresent())
        .ifPresent(
            l ->
                effects.add(
                    new Effect(
                        Sort.STAYS,
                        edition.key() + ": " + WorkJoin.descent(l.form(), l.parent().get()))));
  }

  private SplitPreview preview() {
    return new SplitPreview(
        old.value().id(),
        made.id(),
        made.title(),
        made.editions().stream().map(Edition::key).toList(),
        rest.editions().stream().map(Edition::key).toList(),
        effects);
  }
}
