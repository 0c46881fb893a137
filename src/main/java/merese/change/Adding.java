package merese.change;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import java.util.stream.Collectors;
import merese.change.WorkFinder.Named;
import merese.change.records.Doubles;
import merese.change.records.NewNames;
import merese.model.Copy;
import merese.model.Edition;
import merese.model.Edition.Lineage;
import merese.model.Edition.OwnTitle;
import merese.model.ShortReference;
import merese.model.SourceKind;
import merese.model.Work;
import merese.shelf.KnownNames.Known;
import merese.shelf.Watcher;
import merese.shelf.WritingShelf;
import merese.store.ChangeSet;
import merese.store.LibraryFolder;
import merese.store.Stored;

/** Adds a work with its edition, a further edition of a work, or a copy of an edition. */
public final class Adding {
  private final LibraryFolder folder;
  private final AddRequest request;
  private final WorkFinder works;

  private Adding(WritingShelf shelf, AddRequest request) {
    this.folder = shelf.folder();
    this.request = request;
    this.works = new WorkFinder(shelf);
  }

  /**
   * Adds it, as one change.
   *
   * @param watcher is told where the index has to be made first
   * @throws DoubleException where it looks like a source that is there
   */
  public static AddResult apply(LibraryFolder folder, AddRequest request, Watcher watcher) {
    return make(folder, request, watcher).result();
  }

  /** The same, with what the history calls it. */
  public static Made<AddResult> make(LibraryFolder folder, AddRequest request, Watcher watcher) {
    try (ChangeSet change = folder.change(words(request));
        WritingShelf shelf = WritingShelf.open(folder, watcher)) {
      AddResult result = new Adding(shelf, request).add(change);
      return new Made<>(result, change.number());
    }
  }

  private static String words(AddRequest request) {
    if (request.entry().isEmpty()) {
      return "add a copy of " + request.of().orElseThrow();
    }
    return request
        .of()
        .map(of -> "add an edition of " + of)
        .orElseGet(() -> "add “" + newWork(request).title() + "”");
  }

  private static Work newWork(AddRequest request) {
    return request.entry().orElseThrow().work(SourceKind.MONOGRAPH, "untitled");
  }

  private AddResult add(ChangeSet change) {
    if (request.of().isEmpty()) {
      return work(change);
    }
    Named named = works.find(request.of().get());
    return request.entry().isPresent() ? edition(change, named) : copy(change, named);
  }

  private AddResult work(ChangeSet change) {
    Work made = newWork(request);
    requireNew(made, "");
    Work named = named(made, withCopy(made.editions().get(0)));
    Work work =
        new Work(
            NewNames.work(named, works::hasWorkLike),
            named.kind(),
            named.title(),
            named.subtitle(),
            List.of(),
            named.contributors(),
            named.language(),
            request.mine(),
            named.editions(),
            List.of());
    change.add(work);
    change.commit();
    Path file = folder.findWork(work.id()).orElseThrow().file();
    return result("new " + work.kind().words(), file, work, work.editions().get(0));
  }

  private AddResult edition(ChangeSet change, Named named) {
    Stored<Work> stored = works.read(named);
    Work work = stored.value();
    Work made = request.entry().orElseThrow().work(work.kind(), work.title());
    OwnTitle title = new OwnTitle(made.title(), made.subtitle());
    Edition edition = withCopy(made.editions().get(0));
    if (request.entry().get().has(SourceField.TITLE)
        && !title.equals(new OwnTitle(work.title(), work.subtitle()))) {
      edition = edition.withImprint(edition.imprint().withTitle(Optional.of(title)));
    }
    if (request.form().isPresent()) {
      Optional<String> parent = named.edition().or(() -> onlyEdition(work));
      edition =
          edition.withLineage(
              new Lineage(
                  request.form().get(),
                  parent,
                  request.originalYear(),
                  Optional.empty(),
                  List.of()));
    }
    Work beside = work.withEditions(List.of(edition));
    requireNew(beside.withOnly(edition), work.id());
    Edition keyed = named(beside, edition).editions().get(0);
    List<Edition> editions = new ArrayList<>(work.editions());
    editions.add(keyed);
    Work now = work.withEditions(editions);
    change.save(stored, now);
    change.commit();
    return result("edition of " + work.id(), stored.file(), now, keyed);
  }

  private static Optional<String> onlyEdition(Work work) {
    return work.editions().size() == 1
        ? Optional.of(work.editions().get(0).key())
        : Optional.empty();
  }

  private AddResult copy(ChangeSet change, Named named) {
    Stored<Work> stored = works.read(named);
    Work work = stored.value();
    String key =
        named
            .edition()
            .or(() -> onlyEdition(work))
            .orElseThrow(
                () ->
                    new ChangeRefusedException(
                        named.typed()
                            + " has several editions; name the one that it is a copy of: "
                            + work.editions().stream()
                                .map(Edition::key)
                                .collect(Collectors.joining(", "))));
    Edition edition = withCopy(work.edition(key));
    Work now =
        work.withEditions(
            work.editions().stream().map(e -> e.key().equals(key) ? edition : e).toList());
    change.save(stored, now);
    change.commit();
    return result("copy of " + key, stored.file(), now, edition);
  }

  /** With the copy that is asked for, under an id that none of the others has. */
  private Edition withCopy(Edition edition) {
    if (request.copy().isEmpty()) {
      return edition;
    }
    Set<String> taken = edition.copies().stream().map(Copy::id).collect(Collectors.toSet());
    int number = edition.copies().size() + 1;
    while (taken.contains("c" + number)) {
      number++;
    }
    Copy copy = request.copy().get();
    List<Copy> copies = new ArrayList<>(edition.copies());
    copies.add(
        new Copy(
            "c" + number,
            copy.holder(),
            copy.shelfMark(),
            copy.lentTo(),
            copy.missing(),
            copy.remark()));
    return edition.withCopies(copies);
  }

  private Work named(Work work, Edition edition) {
    Work one = work.withEditions(List.of(edition));
    String key =
        request.key().isPresent()
            ? request.key().get().strip()
            : NewNames.key(Optional.empty(), one, works::hasKeyLike);
    if (request.key().isPresent() && !isKey(key)) {
      throw new ChangeRefusedException(
          "--key: \""
              + key
              + "\" is no key; it takes letters, digits and - _ . : +, and starts with a letter or"
              + " digit, as in quenby-1949");
    }
    if (!NewNames.key(Optional.of(key), one, taken -> false).equals(key)) {
      throw new ChangeRefusedException(
          "--key: \""
              + key
              + "\" would have to be quoted where it is typed; use letters, digits and hyphens, as"
              + " in quenby-1949");
    }
    if (works.hasKeyLike(key)) {
      throw new ChangeRefusedException(
          "--key: " + key + " is the key of a source already; choose another, or leave it out");
    }
    return work.withEditions(List.of(edition.withKey(key)));
  }

  /** Keys that are in a library already may have more in them, as BibTeX's have. */
  private static boolean isKey(String key) {
    return !key.isEmpty()
        && Character.isLetterOrDigit(key.codePointAt(0))
        && key.codePoints().allMatch(c -> Character.isLetterOrDigit(c) || "-_.:+".indexOf(c) >= 0);
  }

  /** Another edition of its own work has its title and maker, and may have its ISBN. */
  private void requireNew(Work made, String ownWork) {
    if (request.anyway()) {
      return;
    }
    for (Known known : works.like(made)) {
      Work there = works.alone(known);
      Optional<String> why = Doubles.why(made, there);
      if (why.isPresent()) {
        Edition edition = there.editions().get(0);
        if (known.work().equals(ownWork) && !isSameYear(edition, made)) {
          return;
        }
        throw refusal(edition, why.get());
      }
    }
  }

  private static DoubleException refusal(Edition there, String why) {
    String key = there.key();
    String year = year(there);
    return new DoubleException(
        key,
        key + (year.isEmpty() ? "" : " (" + year + ")") + " has " + why,
        "If it is another edition: --edition-of "
            + key
            + "; if another copy: --copy-of "
            + key
            + "; if something else: --anyway");
  }

  private static boolean isSameYear(Edition there, Work made) {
    OptionalInt year = made.editions().get(0).imprint().year();
    return year.isPresent() && year.equals(there.imprint().year());
  }

  private static String year(Edition edition) {
    OptionalInt year = edition.imprint().year();
    return year.isPresent() ? Integer.toString(year.getAsInt()) : "";
  }

  private AddResult result(String what, Path file, Work work, Edition edition) {
    List<Copy> copies = edition.copies();
    return new AddResult(
        what,
        edition.key(),
        ShortReference.of(work.withOnly(edition), edition),
        work.withOnly(edition).title(),
        work.id(),
        file,
        request.copy().map(copy -> copies.get(copies.size() - 1)),
        works.unread());
  }
}
