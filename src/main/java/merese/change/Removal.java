package merese.change;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import merese.change.Effect.Sort;
import merese.change.WorkDirectory.Named;
import merese.model.Check;
import merese.model.Copy;
import merese.model.Edition;
import merese.model.Locator;
import merese.model.LocatorException;
import merese.model.Note;
import merese.model.OwnObject;
import merese.model.PageText;
import merese.model.Place;
import merese.model.ShortReference;
import merese.model.Work;
import merese.store.ChangeSet;
import merese.store.LibraryFolder;
import merese.store.Stored;

/**
 * Takes a note, a check, a copy, an edition, a work or an object out of a library. What refers to
 * it is named first; no reference is ever left that leads nowhere.
 */
public final class Removal {
  private final LibraryFolder folder;
  private final RemovalRequest request;
  private final WorkDirectory directory;
  private final Map<Stored<Work>, Work> changed = new LinkedHashMap<>();
  private final List<Stored<?>> gone = new ArrayList<>();
  private final List<Effect> effects = new ArrayList<>();
  private final List<String> neededBy = new ArrayList<>();
  private final String what;

  private Removal(LibraryFolder folder, RemovalRequest request) {
    this.folder = folder;
    this.request = request;
    Optional<Stored<OwnObject>> object = folder.findObject(request.name());
    Set<String> holding = new LinkedHashSet<>();
    this.directory =
        WorkDirectory.of(
            folder,
            work -> {
              if (object.isPresent() && speaksOf(work.value(), request.name())) {
                holding.add(work.value().id());
              }
            });
    requireOnePart();
    boolean isObject = object.isPresent() && !directory.isName(request.name());
    if (isObject && parts() > 0) {
      throw new ChangeRefusedException(
          request.name() + " is an object; notes, checks and copies are of a source");
    }
    this.what = isObject ? object(object.get(), holding) : ofWork(directory.find(request.name()));
  }

  /** What a removal would do; nothing is changed. */
  public static RemovalPreview preview(LibraryFolder folder, RemovalRequest request) {
    return new Removal(folder, request).preview();
  }

  /** Does it, all or nothing; refused where a reference would lead nowhere. */
  public static RemovalPreview apply(LibraryFolder folder, RemovalRequest request) {
    return make(folder, request, preview -> true).result();
  }

  /**
   * Does it if what it does is agreed to; the library cannot change in between.
   *
   * @param agreed to what it would do now
   * @return what it did; with no change where that was not agreed to
   */
  public static Made<RemovalPreview> make(
      LibraryFolder folder, RemovalRequest request, Predicate<RemovalPreview> agreed) {
    try (ChangeSet change = folder.change(request.words())) {
      Removal removal = new Removal(folder, request);
      RemovalPreview preview = removal.preview();
      if (!agreed.test(preview)) {
        return new Made<>(preview, OptionalInt.empty());
      }
      if (preview.isRefused()) {
        throw new ChangeRefusedException(
            removal.what
                + " is needed by: "
                + String.join("; ", preview.neededBy())
                + ". --clear-references takes these references away as well");
      }
      removal.changed.forEach(change::save);
      removal.gone.forEach(change::delete);
      change.commit();
      return new Made<>(preview, change.number());
    }
  }

  private int parts() {
    return (int)
        List.of(request.note(), request.check(), request.copy()).stream()
            .filter(Optional::isPresent)
            .count();
  }

  private void requireOnePart() {
    if (parts() > 1) {
      throw new ChangeRefusedException("name one thing to remove: a note, a check or a copy");
    }
    if (request.extent().isPresent() && request.check().isEmpty()) {
      throw new ChangeRefusedException("--extent says which check is meant; name its --check too");
    }
  }

  private static boolean speaksOf(Work work, String ref) {
    return work.editions().stream()
        .flatMap(edition -> edition.notes().stream())
        .anyMatch(note -> note.object().filter(o -> o.ref().equals(ref)).isPresent());
  }

  private String object(Stored<OwnObject> stored, Set<String> holding) {
    OwnObject object = stored.value();
    gone.add(stored);
    Clearing clearing = new Clearing(Set.of(), Set.of(), Set.of(object.ref()));
    holding.forEach(id -> clear(directory.read(id), clearing));
    dropped(object.evidence().size(), "piece of evidence", "pieces of evidence");
    dropped(object.observations().size(), "observation", "observations");
    if (!object.photographs().isEmpty()) {
      effects.add(
          new Effect(
              Sort.STAYS,
              "the files of its photographs: "
                  + object.photographs().stream()
                      .map(OwnObject.Photograph::file)
                      .collect(Collectors.joining(", "))));
    }
    mentioned(List.of(object.ref()), List.of());
    return "the object " + object.ref() + ", " + object.title();
  }

  private String ofWork(Named named) {
    Stored<Work> stored = directory.read(named.work());
    if (parts() > 0) {
      return part(stored, edition(named, stored.value()));
    }
    List<Edition> editions = stored.value().editions();
    boolean whole = named.edition().isEmpty() || editions.size() == 1;
    return whole ? work(stored) : edition(stored, stored.value().edition(named.edition().get()));
  }

  private static Edition edition(Named named, Work work) {
    if (named.edition().isPresent()) {
      return work.edition(named.edition().get());
    }
    if (work.editions().size() == 1) {
      return work.editions().get(0);
    }
    throw new ChangeRefusedException(
        named.typed()
            + " has "
            + (work.editions().isEmpty()
                ? "no editions"
                : "several editions; name the one that is meant: "
                    + work.editions().stream()
                        .map(Edition::key)
                        .collect(Collectors.joining(", "))));
  }

  private String work(Stored<Work> stored) {
    Work work = stored.value();
    Set<String> keys = work.editions().stream().map(Edition::key).collect(Collectors.toSet());
    gone.add(stored);
    work.editions().forEach(this::droppedWith);
    Clearing clearing = new Clearing(Set.of(work.id()), keys, Set.of());
    for (String id : directory.referringTo(List.of(work.id()), List.copyOf(keys))) {
      if (!id.equals(work.id())) {
        clear(directory.read(id), clearing);
      }
    }
    List<String> names = new ArrayList<>(keys.stream().sorted().toList());
    if (!keys.contains(work.id())) {
      names.add(work.id());
    }
    mentioned(names, List.of(work.id()));
    return "the work " + work.id() + ", " + work.title();
  }

  private String edition(Stored<Work> stored, Edition edition) {
    Work work = stored.value();
    droppedWith(edition);
    List<Edition> rest =
        work.editions().stream().filter(e -> !e.key().equals(edition.key())).toList();
    Clearing clearing = new Clearing(Set.of(), Set.of(edition.key()), Set.of());
    changed.put(stored, clearing.of(work.withEditions(rest)));
    neededBy.addAll(clearing.cleared());
    Clearing elsewhere = new Clearing(Set.of(), Set.of(edition.key()), Set.of());
    for (String id : directory.referringTo(List.of(), List.of(edition.key()))) {
      if (!id.equals(work.id())) {
        clear(directory.read(id), elsewhere);
      }
    }
    mentioned(List.of(edition.key()), List.of());
    return ShortReference.of(work.withOnly(edition), edition)
        + " ("
        + edition.key()
        + "), an edition of "
        + work.id();
  }

  private void clear(Stored<Work> stored, Clearing clearing) {
    int before = clearing.cleared().size();
    Work now = clearing.of(stored.value());
    if (clearing.cleared().size() > before) {
      neededBy.addAll(clearing.cleared().subList(before, clearing.cleared().size()));
      changed.put(stored, now);
    }
  }

  private void droppedWith(Edition edition) {
    List<String> all = new ArrayList<>();
    count(all, edition.notes().size(), "note", "notes");
    count(all, edition.copies().size(), "copy", "copies");
    count(all, edition.checks().size(), "check", "checks");
    count(all, edition.received().size(), "received record", "received records");
    for (Stored<PageText> pages : new EditionPages(folder).of(edition.key())) {
      gone.add(pages);
      all.add(EditionPages.words(pages.value()));
    }
    effects.add(
        new Effect(
            Sort.DROPPED,
            edition.key() + (all.isEmpty() ? "" : " with " + String.join(", ", all))));
  }

  private void dropped(int count, String one, String many) {
    List<String> words = new ArrayList<>();
    count(words, count, one, many);
    words.forEach(w -> effects.add(new Effect(Sort.DROPPED, w)));
  }

  private static void count(List<String> all, int count, String one, String many) {
    if (count > 0) {
      all.add(count + " " + (count == 1 ? one : many));
    }
  }

  private void mentioned(List<String> names, List<String> works) {
    Map<String, Work> now = new LinkedHashMap<>();
    changed.values().forEach(work -> now.put(work.id(), work));
    for (Effect effect : new Mentions(names).in(folder, now, works)) {
      boolean own = gone.stream().anyMatch(stored -> effect.what().startsWith(relative(stored)));
      if (!own) {
        effects.add(effect);
      }
    }
  }

  private String relative(Stored<?> stored) {
    return folder.path().relativize(stored.file()).toString().replace('\\', '/') + " ";
  }

  private String part(Stored<Work> stored, Edition edition) {
    if (request.note().isPresent()) {
      Note note = note(edition, request.note().get());
      List<Note> notes = edition.notes().stream().filter(n -> !n.id().equals(note.id())).toList();
      put(stored, edition.withNotes(notes));
      note.quotation()
          .ifPresent(q -> effects.add(new Effect(Sort.DROPPED, "quotation: “" + q + "”")));
      note.reading().ifPresent(r -> effects.add(new Effect(Sort.DROPPED, "my reading: " + r)));
      note.claims()
          .forEach(c -> effects.add(new Effect(Sort.DROPPED, "claim: “" + c.words() + "”")));
      note.object().ifPresent(o -> effects.add(new Effect(Sort.DROPPED, "link to " + o.ref())));
      return "note " + words(note) + " of " + edition.key();
    }
    if (request.check().isPresent()) {
      Check check = check(edition, request.check().get());
      List<Check> checks = new ArrayList<>(edition.checks());
      checks.remove(check);
      put(stored, edition.withChecks(checks));
      return "the check for " + words(check) + " in " + edition.key();
    }
    String id = request.copy().orElseThrow();
    Copy copy =
        edition.copies().stream()
            .filter(c -> c.id().equals(id))
            .findFirst()
            .orElseThrow(
                () ->
                    new ChangeRefusedException(
                        edition.key()
                            + " has no copy "
                            + id
                            + (edition.copies().isEmpty()
                                ? "; it has none"
                                : "; it has "
                                    + edition.copies().stream()
                                        .map(Copy::id)
                                        .collect(Collectors.joining(", ")))));
    List<Check> checks = new ArrayList<>();
    for (Check check : edition.checks()) {
      boolean of = check.copy().filter(id::equals).isPresent();
      if (of) {
        neededBy.add("check: " + words(check) + " was made in this copy");
      }
      checks.add(of ? check.withoutCopy() : check);
    }
    List<Copy> copies = new ArrayList<>(edition.copies());
    copies.remove(copy);
    put(stored, edition.withCopies(copies).withChecks(checks));
    return "copy "
        + id
        + copy.shelfMark().map(m -> " (" + m + ")").orElse("")
        + " of "
        + edition.key();
  }

  private void put(Stored<Work> stored, Edition edition) {
    Work work = stored.value();
    changed.put(
        stored,
        work.withEditions(
            work.editions().stream()
                .map(e -> e.key().equals(edition.key()) ? edition : e)
                .toList()));
  }

  /** By its number; else by a place that it alone has, or else by its term. */
  private static Note note(Edition edition, String typed) {
    Optional<Note> byId =
        edition.notes().stream().filter(note -> note.id().equals(typed.strip())).findFirst();
    if (byId.isPresent()) {
      return byId.get();
    }
    List<Note> found = edition.notes().stream().filter(note -> isAt(note, typed.strip())).toList();
    if (found.isEmpty()) {
      found =
          edition.notes().stream()
              .filter(n -> n.namings().stream().anyMatch(m -> m.printed().equals(typed.strip())))
              .toList();
    }
    if (found.size() == 1) {
      return found.get(0);
    }
    throw new ChangeRefusedException(
        found.isEmpty()
            ? edition.key() + " has no note \"" + typed + "\", by number, place or term"
            : "several notes of "
                + edition.key()
                + " are meant by \""
                + typed
                + "\": "
                + found.stream().map(Removal::words).collect(Collectors.joining("; "))
                + "; name one by its number");
  }

  private static boolean isAt(Note note, String typed) {
    for (Place place : note.places()) {
      if (place.locator().printed().equals(typed)) {
        return true;
      }
    }
    try {
      Locator at = Locator.parse(typed);
      return note.places().stream().anyMatch(place -> same(place.locator(), at));
    } catch (LocatorException e) {
      return false; // it is a number or a term
    }
  }

  private static boolean same(Locator one, Locator other) {
    return Locator.inPhysicalOrder(List.of(one)).equals(Locator.inPhysicalOrder(List.of(other)));
  }

  private static String words(Note note) {
    String term = note.namings().get(0).printed();
    return note.id()
        + " ("
        + (term.isEmpty() ? "no term" : "“" + term + "”")
        + ", "
        + note.places().stream().map(p -> p.locator().printed()).collect(Collectors.joining("; "))
        + ")";
  }

  private Check check(Edition edition, String concept) {
    List<Check> found =
        edition.checks().stream()
            .filter(check -> check.concept().equals(concept))
            .filter(
                check ->
                    request.extent().isEmpty()
                        || check.extent().map(Locator::printed).equals(request.extent()))
            .toList();
    if (found.stream().distinct().count() == 1) {
      return found.get(0);
    }
    throw new ChangeRefusedException(
        found.isEmpty()
            ? edition.key()
                + " has no such check for "
                + concept
                + (edition.checks().isEmpty()
                    ? ""
                    : "; it has: "
                        + edition.checks().stream()
                            .map(Removal::words)
                            .distinct()
                            .collect(Collectors.joining("; ")))
            : edition.key()
                + " has several checks for "
                + concept
                + ": "
                + found.stream().map(Removal::words).collect(Collectors.joining("; "))
                + "; say which with --extent");
  }

  private static String words(Check check) {
    return check.concept()
        + " ("
        + check.extent().map(e -> e.printed() + ", ").orElse("")
        + check.method().words()
        + ")";
  }

  private RemovalPreview preview() {
    return new RemovalPreview(
        what, neededBy, request.clearing(), effects, changed.size() + gone.size());
  }
}
