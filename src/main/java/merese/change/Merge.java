package merese.change;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import java.util.function.Predicate;
import merese.change.Effect.Sort;
import merese.change.MergePreview.MovedEdition;
import merese.change.WorkDirectory.Named;
import merese.model.Edition;
import merese.model.Work;
import merese.store.ChangeSet;
import merese.store.LibraryFolder;
import merese.store.Stored;

/**
 * Makes several works one, and where that is asked for their editions too. Every note, copy, check
 * and received record is there afterwards; what refers to something that goes is led to what stays.
 */
public final class Merge {
  private final LibraryFolder folder;
  private final WorkDirectory directory;
  private final Named keep;
  private final List<Named> others = new ArrayList<>();
  private final List<Effect> effects = new ArrayList<>();
  private final Stored<Work> kept;
  private final List<Stored<Work>> gone = new ArrayList<>();
  private final EditionPages pages;
  private final List<String> goneKeys = new ArrayList<>();
  private final Map<Stored<Work>, Work> referring = new LinkedHashMap<>();
  private Work merged;

  private Merge(LibraryFolder folder, MergeRequest request) {
    this.folder = folder;
    this.pages = new EditionPages(folder);
    this.directory = WorkDirectory.of(folder);
    this.keep = named(request.keep(), request.oneEdition());
    for (String other : request.others()) {
      others.add(named(other, request.oneEdition()));
    }
    this.kept = directory.read(keep.work());
    requireSeveral(request.oneEdition());
    readOthers();
    joinWorks();
    if (request.oneEdition()) {
      joinEditions();
    }
    leadOver();
  }

  /** What a merge would do; nothing is changed. */
  public static MergePreview preview(LibraryFolder folder, MergeRequest request) {
    return new Merge(folder, request).preview();
  }

  /** Does it, all or nothing; what is returned has been done. */
  public static MergePreview apply(LibraryFolder folder, MergeRequest request) {
    return make(folder, request, preview -> true).result();
  }

  /**
   * Does it if what it does is agreed to; the library cannot change in between.
   *
   * @param agreed to what it would do now
   * @return what it did; with no change where that was not agreed to
   */
  public static Made<MergePreview> make(
      LibraryFolder folder, MergeRequest request, Predicate<MergePreview> agreed) {
    try (ChangeSet change = folder.change(request.words())) {
      Merge merge = new Merge(folder, request);
      if (!agreed.test(merge.preview())) {
        return new Made<>(merge.preview(), OptionalInt.empty());
      }
      merge.stage(change);
      change.commit();
      return new Made<>(merge.preview(), change.number());
    }
  }

  /** Where editions are to be named, the only one of a work stands for it. */
  private Named named(String typed, boolean asEdition) {
    Named named = directory.find(typed);
    if (!asEdition || named.edition().isPresent()) {
      return named;
    }
    List<Edition> editions = directory.read(named.work()).value().editions();
    if (editions.size() != 1) {
      throw new ChangeRefusedException(
          "--one-edition: the work "
              + named.work()
              + " has "
              + (editions.isEmpty()
                  ? "no editions"
                  : editions.size() + " editions; name the one that is meant: " + keys(editions)));
    }
    return new Named(typed, named.work(), Optional.of(editions.get(0).key()));
  }

  private static String keys(List<Edition> editions) {
    return String.join(", ", editions.stream().map(Edition::key).toList());
  }

  private void requireSeveral(boolean asEditions) {
    Set<String> seen = new HashSet<>();
    seen.add(asEditions ? keep.edition().orElseThrow() : keep.work());
    for (Named other : others) {
      String name = asEditions ? other.edition().orElseThrow() : other.work();
      if (!seen.add(name)) {
        throw new ChangeRefusedException(
            asEditions
                ? other.typed() + " is named twice; name each edition once"
                : other.typed()
                    + " is of the work "
                    + name
                    + ", which is named already; two editions of one work become one edition with"
                    + " --one-edition");
      }
    }
  }

  private void readOthers() {
    Set<String> read = new HashSet<>(Set.of(keep.work()));
    for (Named other : others) {
      if (read.add(other.work())) {
        gone.add(directory.read(other.work()));
      }
    }
  }

  private void joinWorks() {
    List<Work> values = gone.stream().map(Stored::value).toList();
    WorkJoin join = new WorkJoin(kept.value(), values, folder.settings().language());
    merged = join.joined();
    effects.addAll(join.effects());
    Set<String> own = new HashSet<>(kept.ownKeys());
    for (Stored<Work> stored : gone) {
      for (String name : stored.ownKeys()) {
        String whose = "your own \"" + name + "\" of " + stored.value().id();
        effects.add(
            own.add(name)
                ? new Effect(Sort.ADDED, whose)
                : new Effect(Sort.DROPPED, whose + ", since one is there already"));
      }
    }
  }

  private void joinEditions() {
    String key = keep.edition().orElseThrow();
    for (Named other : others) {
      String goes = other.edition().orElseThrow();
      requireNoDescent(key, goes);
      requireNoDescent(goes, key);
      EditionJoin join = new EditionJoin(merged.edition(key), merged.edition(goes));
      Edition joined = join.joined();
      merged =
          merged.withEditions(
              merged.editions().stream()
                  .filter(edition -> !edition.key().equals(goes))
                  .map(edition -> edition.key().equals(key) ? joined : edition)
                  .toList());
      effects.addAll(join.effects());
      goneKeys.add(goes);
    }
    pages.follow(goneKeys, key, effects);
  }

  /** What a library says descends from the other cannot be the same thing. */
  private void requireNoDescent(String from, String to) {
    Set<String> seen = new HashSet<>();
    String at = from;
    while (seen.add(at)) {
      Optional<String> parent = directory.parent(at);
      if (parent.isEmpty()) {
        return;
      }
      if (parent.get().equals(to)) {
        throw new ChangeRefusedException(
            from
                + " and "
                + to
                + " cannot be the same edition: by its lineage, "
                + at
                + " descends from "
                + to
                + "; correct that first");
      }
      at = parent.get();
    }
  }

  /** The links and lineages that lead to what goes. */
  private void leadOver() {
    List<String> ids = gone.stream().map(stored -> stored.value().id()).toList();
    String key = keep.edition().orElse("");
    merged = Corrected.following(merged, goneKeys, key, effects);
    merged = WorkJoin.descending(merged, goneKeys, key, effects);
    for (String id : directory.referringTo(ids, goneKeys)) {
      if (!id.equals(kept.value().id()) && !ids.contains(id)) {
        Stored<Work> stored = directory.read(id);
        Work led = WorkJoin.ledOver(stored.value(), ids, kept.value().id(), effects);
        Work corrected = Corrected.following(led, goneKeys, key, effects);
        referring.put(stored, WorkJoin.descending(corrected, goneKeys, key, effects));
      }
    }
    Map<String, Work> changed = new LinkedHashMap<>();
    changed.put(merged.id(), merged);
    referring.values().forEach(work -> changed.put(work.id(), work));
    effects.addAll(new Mentions(namesThatGo(ids)).in(folder, changed, ids));
    effects.sort(Comparator.comparing(Effect::sort));
  }

  /** A work is often called as one of its editions is, which stays. */
  private List<String> namesThatGo(List<String> ids) {
    Set<String> names = new HashSet<>(ids);
    merged.editions().forEach(edition -> names.remove(edition.key()));
    for (String key : goneKeys) {
      if (!directory.hasWork(key) || ids.contains(key)) {
        names.add(key);
      }
    }
    return names.stream().sorted().toList();
  }

  private void stage(ChangeSet change) {
    List<Stored<Work>> from = new ArrayList<>(gone);
    from.add(kept);
    change.save(kept, merged, from);
    gone.forEach(change::delete);
    referring.forEach(change::save);
    pages.stage(change);
  }

  private MergePreview preview() {
    List<MovedEdition> editions = new ArrayList<>();
    for (Edition edition : merged.editions()) {
      Optional<String> from =
          gone.stream()
              .map(Stored::value)
              .filter(w -> w.editions().stream().anyMatch(e -> e.key().equals(edition.key())))
              .map(Work::id)
              .findFirst();
      editions.add(
          new MovedEdition(
              edition.key(),
              from,
              edition.notes().size(),
              edition.copies().size(),
              edition.checks().size()));
    }
    return new MergePreview(
        merged.id(),
        merged.title(),
        gone.stream().map(stored -> stored.value().id()).toList(),
        keep.edition().filter(key -> !goneKeys.isEmpty()),
        goneKeys,
        editions,
        effects,
        1 + gone.size() + referring.size() + pages.files());
  }
}
