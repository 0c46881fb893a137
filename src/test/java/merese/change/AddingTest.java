package merese.change;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Random;
import java.util.Set;
import java.util.TreeSet;
import merese.change.records.Doubles;
import merese.change.records.NewNames;
import merese.model.Edition;
import merese.model.Edition.OwnTitle;
import merese.model.SourceKind;
import merese.model.Work;
import merese.shelf.Fingerprint;
import merese.shelf.Shelf;
import merese.shelf.Watcher;
import merese.store.LibraryException;
import merese.store.LibraryFile;
import merese.store.LibraryFolder;
import merese.store.Stored;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * What a new source is called, and what it is taken for, is asked of the index; here it is held to
 * a reading of all works.
 */
class AddingTest {
  private static final Clock CLOCK =
      Clock.fixed(Instant.parse("2026-03-01T12:00:00Z"), ZoneOffset.UTC);

  private static final String[] TITLES = {
    "Rings", "The Rings", "Rings & Rims", "Rings and Rims", "Céramic Rims", "Ceramic rims", "☙"
  };
  private static final String[] NAMES = {"Oxley, Ann", "O'Dály, Bo", "Odály, C.", "Rim Society"};

  /**
   * The first two are one, in ten digits and in thirteen: the example of the ISBN Users' Manual;
   * the third is another much used one (both from memory).
   */
  private static final String[] ISBNS = {"0306406152", "9780306406157", "9783161484100"};

  @TempDir private Path home;
  private Random random;
  private LibraryFolder library;

  @Test
  void keysAndDoublesAreThoseThatReadingAllWorksFinds() throws IOException {
    int added = 0;
    int refused = 0;
    for (int seed = 0; seed < 20; seed++) {
      random = new Random(seed);
      library = LibraryFolder.create(home.resolve("l" + seed), "Generated");
      for (int works = 12; works > 0; works--) {
        library.add(work(works));
      }
      Shelf.open(library, Watcher.NONE).close();
      changeSinceTheIndexWasMade();
      for (int asked = 0; asked < 15; asked++) {
        AddRequest request = request();
        String expected = byReading(request);
        assertEquals(expected, byIndex(request), "library " + seed + ", request " + asked);
        added += expected.startsWith("added") ? 1 : 0;
        refused += expected.contains(" has the same ") ? 1 : 0;
        if (one(5)) {
          Shelf.open(library, Watcher.NONE).close();
        }
      }
    }
    assertTrue(added > 50 && refused > 50, added + " added, " + refused + " refused");
  }

  private boolean one(int in) {
    return random.nextInt(in) == 0;
  }

  private String any(String... of) {
    return of[random.nextInt(of.length)];
  }

  private Work work(int number) {
    Work made = entry().work(SourceKind.MONOGRAPH, "Rings");
    List<Edition> editions = new ArrayList<>();
    int count = one(8) ? 0 : 1 + random.nextInt(2);
    for (int i = 0; i < count; i++) {
      Edition edition = entry().work(SourceKind.MONOGRAPH, "Rings").editions().get(0);
      if (one(3)) {
        OwnTitle title = new OwnTitle(any(TITLES), Optional.of("of Tarn"));
        edition = edition.withImprint(edition.imprint().withTitle(Optional.of(title)));
      }
      String like = any("oxley-1950", "Oxley-1950-B", "odaly-1950", "ODALY-1950-b", "rings");
      editions.add(
          edition.withKey(one(2) ? like + "-x" + (i + 2 * number) : freeKey(like, editions)));
    }
    String id = any("oxley-rings", "Oxley-Rings-2", "rings", "k-1950");
    return made.withAlternateTitles(one(3) ? List.of(any(TITLES)) : List.of())
        .withEditions(editions)
        .withId(freeId(id));
  }

  private String freeKey(String wanted, List<Edition> beside) {
    List<String> taken = new ArrayList<>(keys());
    beside.forEach(edition -> taken.add(edition.key()));
    String key = wanted;
    for (int n = 2; taken.contains(key); n++) {
      key = wanted + n;
    }
    return key;
  }

  /** No two files may have one name to any system. */
  private String freeId(String wanted) {
    String id = wanted;
    for (int n = 2; isWork(id); n++) {
      id = wanted + "-" + n;
    }
    return id;
  }

  private boolean isWork(String id) {
    return library.scan().stream()
        .filter(file -> file.kind() == LibraryFile.Kind.WORK)
        .anyMatch(file -> file.name().equalsIgnoreCase(id));
  }

  private SourceEntry entry() {
    SourceEntry entry = new SourceEntry(false, CLOCK);
    put(entry, SourceField.TITLE, any(TITLES));
    put(entry, SourceField.AUTHOR, one(5) ? "" : any(NAMES));
    put(entry, SourceField.YEAR, any("", "1950", "1951"));
    put(entry, SourceField.SUBTITLE, one(3) ? any("of Tarn", "and Rims") : "");
    put(entry, SourceField.ISBN, one(6) ? any(ISBNS) : "");
    put(entry, SourceField.DOI, one(9) ? any("10.5555/rings", "10.5555/RINGS") : "");
    String kind = any("monograph", "monograph", "journal-article", "sale-catalogue");
    put(entry, SourceField.KIND, kind);
    if (kind.equals("journal-article")) {
      put(entry, SourceField.IN, any("Tarn Papers", "Rim Papers"));
    } else if (kind.equals("sale-catalogue")) {
      put(entry, SourceField.HOUSE, any("Hob & Nob", "Oxley"));
    }
    entry.requireWhole();
    return entry;
  }

  private static void put(SourceEntry entry, SourceField field, String value) {
    if (!value.isEmpty()) {
      entry.put(field, value);
    }
  }

  private void changeSinceTheIndexWasMade() throws IOException {
    for (Stored<Work> stored : read()) {
      if (one(8)) {
        library.delete(stored);
      } else if (one(5)) {
        Work other = entry().work(SourceKind.MONOGRAPH, "Rings");
        library.save(
            stored, other.withId(stored.value().id()).withEditions(stored.value().editions()));
      } else if (one(12)) {
        Files.writeString(stored.file(), "{");
      }
    }
    library.add(work(99));
  }

  private AddRequest request() {
    List<String> names = new ArrayList<>(keys());
    read().forEach(stored -> names.add(stored.value().id()));
    names.sort(null);
    boolean edition = one(4);
    Optional<String> of = Optional.of(any(names.toArray(String[]::new)));
    return new AddRequest(
        edition ? of.map(n -> one(2) ? n.toUpperCase(java.util.Locale.ROOT) : n) : Optional.empty(),
        Optional.of(entry()),
        one(6) ? Optional.of(any("oxley-1950", "OXLEY-1951", "new-key")) : Optional.empty(),
        Optional.empty(),
        OptionalInt.empty(),
        Optional.empty(),
        false,
        one(6));
  }

  private String byIndex(AddRequest request) {
    try {
      AddResult added = Adding.apply(library, request, Watcher.NONE);
      return "added " + added.key() + " of " + added.work() + unread(added.unread().size());
    } catch (DoubleException e) {
      return e.found();
    } catch (ChangeRefusedException e) {
      return e.getMessage();
    } catch (UnknownWorkException e) {
      return "unknown";
    }
  }

  private static String unread(int files) {
    return " (" + files + " unread)";
  }

  private List<Stored<Work>> read() {
    List<Stored<Work>> works = new ArrayList<>();
    for (LibraryFile file : library.scan()) {
      if (file.kind() == LibraryFile.Kind.WORK) {
        try {
          works.add(library.readWork(file.path()));
        } catch (LibraryException e) {
          assertTrue(e.getMessage().contains(file.name())); // its name is taken, and that is all
        }
      }
    }
    return works;
  }

  private List<String> keys() {
    List<String> keys = new ArrayList<>();
    read().forEach(stored -> stored.value().editions().forEach(e -> keys.add(e.key())));
    return keys;
  }

  /** What a new source should become, with nothing asked of the index. */
  private String byReading(AddRequest request) {
    List<Work> works = read().stream().map(Stored::value).toList();
    Optional<Work> of = Optional.empty();
    if (request.of().isPresent()) {
      String name = request.of().get();
      of = named(works, name);
      if (of.isEmpty()) {
        return "unknown";
      }
      String meant = of.get().id();
      boolean twoThings = works.stream().anyMatch(w -> w.id().equals(name)) && !meant.equals(name);
      if (twoThings) {
        return name
            + " is the key of an edition of "
            + meant
            + " and the name of another work;"
            + " name the one by another key, or the work "
            + meant;
      }
    }
    Work typed = request.entry().get().work(SourceKind.MONOGRAPH, "untitled");
    Work made = of.map(work -> asEdition(work, typed)).orElse(typed);
    if (!request.anyway()) {
      Optional<String> found = found(works, made, of.map(Work::id).orElse(""));
      if (found.isPresent()) {
        return found.get();
      }
    }
    Set<String> broken = new TreeSet<>(String.CASE_INSENSITIVE_ORDER);
    for (LibraryFile file : library.scan()) {
      if (file.kind() == LibraryFile.Kind.WORK) {
        broken.add(file.name());
      }
    }
    works.forEach(work -> broken.remove(work.id()));
    Set<String> takenKeys = new TreeSet<>(String.CASE_INSENSITIVE_ORDER);
    takenKeys.addAll(broken);
    works.forEach(work -> work.editions().forEach(e -> takenKeys.add(e.key())));
    Set<String> takenIds = new TreeSet<>(String.CASE_INSENSITIVE_ORDER);
    takenIds.addAll(broken);
    works.forEach(work -> takenIds.add(work.id()));
    String key = request.key().orElse("");
    if (takenKeys.contains(key)) {
      return "--key: " + key + " is the key of a source already; choose another, or leave it out";
    }
    key =
        key.isEmpty()
            ? NewNames.key(
                Optional.empty(),
                of.map(w -> w.withEditions(made.editions())).orElse(made),
                takenKeys::contains)
            : key;
    Work keyed = made.withEditions(List.of(made.editions().get(0).withKey(key)));
    String id = of.map(Work::id).orElseGet(() -> NewNames.work(keyed, takenIds::contains));
    return "added " + key + " of " + id + unread(broken.size());
  }

  /** A further edition has its work's makers, and a title of its own where that is another. */
  private static Work asEdition(Work work, Work typed) {
    Edition edition = typed.editions().get(0);
    OwnTitle title = new OwnTitle(typed.title(), typed.subtitle());
    if (!title.equals(new OwnTitle(work.title(), work.subtitle()))) {
      edition = edition.withImprint(edition.imprint().withTitle(Optional.of(title)));
    }
    return work.withOnly(edition);
  }

  private static Optional<Work> named(List<Work> works, String name) {
    Set<String> alike = new TreeSet<>();
    for (Work work : works) {
      for (Edition edition : work.editions()) {
        if (edition.key().equals(name)) {
          return Optional.of(work);
        }
        if (edition.key().equalsIgnoreCase(name)) {
          alike.add(edition.key());
        }
      }
      if (work.id().equalsIgnoreCase(name)) {
        alike.add(work.id());
      }
    }
    if (alike.contains(name)) {
      return works.stream().filter(work -> work.id().equals(name)).findFirst();
    }
    return alike.size() == 1 ? named(works, alike.iterator().next()) : Optional.empty();
  }

  private static Optional<String> found(List<Work> works, Work made, String ownWork) {
    Fingerprint print = Fingerprint.of(made);
    List<Work> editions = new ArrayList<>();
    works.forEach(work -> work.editions().forEach(e -> editions.add(work.withOnly(e))));
    List<Work> inOrder = new ArrayList<>();
    for (String isbn : print.isbns()) {
      editions.stream().filter(w -> Fingerprint.of(w).isbns().contains(isbn)).forEach(inOrder::add);
    }
    for (String doi : print.dois()) {
      editions.stream().filter(w -> Fingerprint.of(w).dois().contains(doi)).forEach(inOrder::add);
    }
    for (String title : List.of(print.title(), print.wholeTitle())) {
      editions.stream().filter(w -> titles(w).contains(title)).forEach(inOrder::add);
    }
    for (Work there : inOrder) {
      Optional<String> why = Doubles.why(made, there);
      if (why.isPresent()) {
        Edition edition = there.editions().get(0);
        OptionalInt year = edition.imprint().year();
        boolean own = there.id().equals(ownWork);
        OptionalInt madeYear = made.editions().get(0).imprint().year();
        if (own && !(madeYear.isPresent() && madeYear.equals(year))) {
          return Optional.empty();
        }
        String dated = year.isPresent() ? " (" + year.getAsInt() + ")" : "";
        return Optional.of(edition.key() + dated + " has " + why.get());
      }
    }
    return Optional.empty();
  }

  private static Set<String> titles(Work one) {
    Fingerprint print = Fingerprint.of(one);
    Set<String> titles = new TreeSet<>(print.otherTitles());
    titles.add(print.title());
    titles.add(print.wholeTitle());
    return titles;
  }

  @Test
  void nothingIsAddedWhileTwoEditionsHaveOneKey() throws IOException {
    library = LibraryFolder.create(home, "Two");
    random = new Random(1);
    Work made = entry().work(SourceKind.MONOGRAPH, "Rings");
    Edition edition = made.editions().get(0).withKey("rings-1");
    library.add(made.withId("a").withEditions(List.of(edition)));
    library.add(made.withId("b").withEditions(List.of(edition)));
    AddRequest request =
        new AddRequest(
            Optional.empty(),
            Optional.of(entry()),
            Optional.empty(),
            Optional.empty(),
            OptionalInt.empty(),
            Optional.empty(),
            false,
            true);
    for (int time = 0; time < 2; time++) {
      String refused =
          assertThrows(
                  ChangeRefusedException.class, () -> Adding.apply(library, request, Watcher.NONE))
              .getMessage();
      assertTrue(refused.startsWith("two editions are called rings-1; run merese check"), refused);
      Files.writeString(
          library.resolve("works/c.json"), Files.readString(library.resolve("works/b.json")));
    }
    Files.delete(library.resolve("works/b.json"));
    Files.delete(library.resolve("works/c.json"));
    assertEquals(Optional.empty(), Adding.apply(library, request, Watcher.NONE).copy());
  }
}
