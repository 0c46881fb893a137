package merese.testing;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Random;
import merese.model.Check;
import merese.model.Contributor;
import merese.model.Copy;
import merese.model.Edition;
import merese.model.Edition.Archive;
import merese.model.Edition.Container;
import merese.model.Edition.Imprint;
import merese.model.Edition.Lineage;
import merese.model.Edition.Occasion;
import merese.model.Edition.Online;
import merese.model.Locator;
import merese.model.Name;
import merese.model.Note;
import merese.model.SourceKind;
import merese.model.Work;
import merese.model.WorkLink;

/** Makes one work of a union list: what its title pages say, its editions and their copies. */
final class UnionSources {
  /** Of a hundred works, in the order of {@link #KINDS}. */
  private static final int[] SHARES = {38, 24, 9, 5, 7, 4, 3, 2, 2, 2, 2, 2};

  private static final SourceKind[] KINDS = {
    SourceKind.MONOGRAPH,
    SourceKind.JOURNAL_ARTICLE,
    SourceKind.SALE_CATALOGUE,
    SourceKind.EXHIBITION_CATALOGUE,
    SourceKind.MUSEUM_CATALOGUE,
    SourceKind.NEWSLETTER,
    SourceKind.TRADE_LIST,
    SourceKind.MANUSCRIPT,
    SourceKind.THESIS,
    SourceKind.LEAFLET,
    SourceKind.WEB_PAGE,
    SourceKind.PATENT
  };

  private final UnionWords words;
  private final UnionThesaurus thesaurus;
  private final int number;
  private final String id;
  private final Random random;

  UnionSources(UnionWords words, UnionThesaurus thesaurus, int number, String id, Random random) {
    this.words = words;
    this.thesaurus = thesaurus;
    this.number = number;
    this.id = id;
    this.random = random;
  }

  /**
   * @param notes how many its editions have together
   * @param related the id of a work that it may depend on
   */
  Work work(int notes, Optional<String> related) {
    SourceKind kind = kind();
    String family = words.name(random);
    List<Edition> editions = editions(kind, family, notes);
    List<WorkLink> links = new ArrayList<>();
    if (related.isPresent() && one(30)) {
      WorkLink.Kind how = one(3) ? WorkLink.Kind.REPEATS : WorkLink.Kind.CITES;
      String evidence = words.text(random, 5);
      links.add(new WorkLink(how, related.get(), Optional.empty(), Optional.of(evidence)));
    }
    return new Work(
        id,
        kind,
        InventedWords.capital(words.text(random, 2 + random.nextInt(7))),
        one(4) ? Optional.of(words.text(random, 3 + random.nextInt(5))) : Optional.empty(),
        List.of(),
        contributors(kind, family),
        one(20) ? Optional.of(one(2) ? "de" : "fr") : Optional.empty(),
        false,
        editions,
        links);
  }

  private boolean one(int in) {
    return random.nextInt(in) == 0;
  }

  private SourceKind kind() {
    int drawn = random.nextInt(100);
    int kind = 0;
    while (drawn >= SHARES[kind]) {
      drawn -= SHARES[kind];
      kind++;
    }
    return KINDS[kind];
  }

  private List<Contributor> contributors(SourceKind kind, String family) {
    if (kind == SourceKind.SALE_CATALOGUE || kind == SourceKind.TRADE_LIST) {
      return List.of();
    }
    List<Contributor> all = new ArrayList<>();
    all.add(author(family));
    if (one(5)) {
      all.add(author(words.name(random)));
    }
    if (one(25)) {
      all.add(new Contributor(Contributor.Role.EDITOR, person(words.name(random))));
    }
    return all;
  }

  private Contributor author(String family) {
    return new Contributor(Contributor.Role.AUTHOR, person(family));
  }

  private Name person(String family) {
    Optional<String> particle = one(25) ? Optional.of("van der") : Optional.empty();
    String given = InventedWords.given(random);
    return new Name.Person(family, Optional.of(given), particle, Optional.empty());
  }

  private List<Edition> editions(SourceKind kind, String family, int notes) {
    int drawn = random.nextInt(100);
    int count = kind != SourceKind.MONOGRAPH || drawn < 60 ? 1 : drawn < 88 ? 2 : 3;
    boolean undated = count == 1 && one(20);
    int year = 2025 - Math.min(random.nextInt(276), random.nextInt(276));
    String name = family.toLowerCase(Locale.ROOT);
    List<Edition> editions = new ArrayList<>();
    Optional<String> parent = Optional.empty();
    for (int edition = 0; edition < count; edition++) {
      // of several editions the last is the one that is worked with
      int share = edition == count - 1 ? notes : notes / (count + 1);
      notes -= share;
      String key = name + "-" + (undated ? "undated" : String.valueOf(year)) + "-" + number;
      OptionalInt printed = undated ? OptionalInt.empty() : OptionalInt.of(year);
      editions.add(edition(kind, key, printed, edition + 1, parent, share));
      parent = Optional.of(key);
      year = Math.min(2025 + edition, year + 1 + random.nextInt(30));
      year = Math.max(year, printed.orElse(0) + 1);
    }
    return editions;
  }

  private Edition edition(
      SourceKind kind,
      String key,
      OptionalInt year,
      int count,
      Optional<String> parent,
      int notes) {
    boolean article = kind == SourceKind.JOURNAL_ARTICLE || kind == SourceKind.NEWSLETTER;
    int pages = article ? 4 + random.nextInt(30) : 16 + random.nextInt(400);
    int firstPage = article ? 1 + random.nextInt(300) : 1;
    UnionNotes maker = new UnionNotes(words, thesaurus, random, firstPage, pages);
    List<Note> made = new ArrayList<>();
    for (int note = 1; note <= notes; note++) {
      made.add(maker.note(note));
    }
    List<Check> checks = maker.checks();
    Optional<Lineage> lineage =
        parent.map(
            p ->
                new Lineage(
                    Lineage.Form.REVISED,
                    Optional.of(p),
                    OptionalInt.empty(),
                    Optional.empty(),
                    List.of()));
    return new Edition(
        key,
        imprint(kind, year, count),
        lineage,
        article ? Optional.of(container(firstPage, pages)) : Optional.empty(),
        kind == SourceKind.SALE_CATALOGUE ? Optional.of(sale()) : Optional.empty(),
        kind == SourceKind.MANUSCRIPT || kind == SourceKind.THESIS
            ? Optional.of(archive())
            : Optional.empty(),
        kind == SourceKind.WEB_PAGE ? Optional.of(online()) : Optional.empty(),
        Optional.empty(),
        List.of(),
        copies(key),
        made,
        checks,
        List.of());
  }

  private Imprint imprint(SourceKind kind, OptionalInt year, int count) {
    boolean published = kind != SourceKind.MANUSCRIPT && kind != SourceKind.WEB_PAGE;
    return new Imprint(
        count == 1 ? Optional.empty() : Optional.of(count == 2 ? "2nd edn" : "3rd edn"),
        count == 1 ? OptionalInt.empty() : OptionalInt.of(count),
        year,
        year.isPresent() ? Optional.empty() : Optional.of("[n.d.]"),
        published ? List.of(InventedWords.town(random)) : List.of(),
        published ? Optional.of(InventedWords.publisher(random)) : Optional.empty(),
        OptionalInt.empty(),
        Optional.empty(),
        List.of(),
        Optional.empty());
  }

  private Container container(int firstPage, int pages) {
    String extent = "pp. " + firstPage + "–" + (firstPage + pages - 1);
    return new Container(
        InventedWords.journal(InventedWords.journal(random)),
        Optional.empty(),
        Optional.of(String.valueOf(1 + random.nextInt(90))),
        Optional.empty(),
        Optional.empty(),
        OptionalInt.empty(),
        Optional.of(Locator.parse(extent)));
  }

  private Occasion sale() {
    return new Occasion(
        Optional.of(words.name(random) + " & " + words.name(random)),
        Optional.of(InventedWords.town(random)),
        Optional.empty(),
        Optional.empty(),
        Optional.empty(),
        List.of());
  }

  private Archive archive() {
    return new Archive(
        InventedWords.town(random) + " Record Office",
        Optional.of("MS " + (1 + random.nextInt(9_000))),
        Optional.empty(),
        Optional.empty(),
        Optional.empty());
  }

  private Online online() {
    return new Online("https://example.org/" + id, Optional.of("2024-05-01"), Optional.empty());
  }

  /** One in three sources is the user's own, others are known to be in a library. */
  private List<Copy> copies(String key) {
    Optional<String> holder =
        one(3) ? Optional.empty() : Optional.of(InventedWords.town(random) + " Library");
    if (holder.isPresent() && one(2)) {
      return List.of();
    }
    String mark = (char) ('A' + random.nextInt(26)) + String.valueOf(1 + random.nextInt(900));
    return List.of(
        new Copy(
            key + "-a",
            holder,
            Optional.of(mark),
            holder.isEmpty() && one(40) ? Optional.of(words.name(random)) : Optional.empty(),
            one(90),
            Optional.empty()));
  }
}
