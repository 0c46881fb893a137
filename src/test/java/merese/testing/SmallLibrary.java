package merese.testing;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import merese.model.Check;
import merese.model.Claim;
import merese.model.Contributor;
import merese.model.Copy;
import merese.model.Edition;
import merese.model.Edition.Lineage;
import merese.model.Locator;
import merese.model.Mine;
import merese.model.Name;
import merese.model.Naming;
import merese.model.Naming.Why;
import merese.model.Note;
import merese.model.OwnObject;
import merese.model.PageLines;
import merese.model.PageMap;
import merese.model.PageText;
import merese.model.PictureRights;
import merese.model.Place;
import merese.model.Place.Medium;
import merese.model.Place.Shows;
import merese.model.Place.Stance;
import merese.model.SourceKind;
import merese.model.Work;
import merese.model.WorkLink;
import merese.shelf.Shelf;
import merese.shelf.Watcher;
import merese.store.ChangeSet;
import merese.store.LibraryFolder;

/** Small libraries for tests, with the starter vocabulary, written to disk as a user's are. */
public final class SmallLibrary {
  private final List<Work> works = new ArrayList<>();
  private final List<OwnObject> objects = new ArrayList<>();
  private final List<PageText> texts = new ArrayList<>();
  private Mine mine = Mine.NOTHING;

  /** A monograph of one edition with one owned copy; its key is the family name and the year. */
  public SmallLibrary book(String family, int year, String title, Object... notesAndChecks) {
    works.add(monograph(family, year, title, notesAndChecks));
    return this;
  }

  public SmallLibrary work(Work work) {
    works.add(work);
    return this;
  }

  public SmallLibrary object(OwnObject object) {
    objects.add(object);
    return this;
  }

  public SmallLibrary mine(Mine mine) {
    this.mine = mine;
    return this;
  }

  /**
   * The text of an edition's pages.
   *
   * @param map which printed page each is
   * @param pages each with its lines; one that is empty has no text
   */
  public SmallLibrary pages(String source, String map, String... pages) {
    List<PageLines> all = new ArrayList<>();
    for (String page : pages) {
      all.add(page.isEmpty() ? PageLines.NONE : new PageLines(List.of(page.split("\n"))));
    }
    texts.add(
        new PageText(
            source,
            source + ".txt",
            "0".repeat(64),
            PageText.Origin.PLAIN_TEXT,
            PageMap.parse(map),
            all));
    return this;
  }

  public List<Work> works() {
    return works;
  }

  /** The same pieces and opinions of the user's with other works. */
  public SmallLibrary withWorks(List<Work> others) {
    SmallLibrary library = new SmallLibrary().mine(mine);
    objects.forEach(library::object);
    others.forEach(library::work);
    return library;
  }

  public static Work monograph(String family, int year, String title, Object... notesAndChecks) {
    String key = family.toLowerCase(java.util.Locale.ROOT) + "-" + year;
    return new Work(
        key,
        SourceKind.MONOGRAPH,
        title,
        Optional.empty(),
        List.of(),
        List.of(
            new Contributor(
                Contributor.Role.AUTHOR,
                new Name.Person(family, Optional.empty(), Optional.empty(), Optional.empty()))),
        Optional.empty(),
        false,
        List.of(edition(key, year, notesAndChecks)),
        List.of());
  }

  public static Edition edition(String key, int year, Object... notesAndChecks) {
    List<Note> notes = new ArrayList<>();
    List<Check> checks = new ArrayList<>();
    for (Object each : notesAndChecks) {
      if (each instanceof NoteMaker maker) {
        notes.add(maker.note("n" + (notes.size() + 1)));
      } else if (each instanceof Note note) {
        notes.add(note);
      } else {
        checks.add((Check) each);
      }
    }
    return new Edition(
        key,
        new Edition.Imprint(
            Optional.empty(),
            OptionalInt.empty(),
            OptionalInt.of(year),
            Optional.empty(),
            List.of(),
            Optional.empty(),
            OptionalInt.empty(),
            Optional.empty(),
            List.of(),
            Optional.empty()),
        Optional.empty(),
        Optional.empty(),
        Optional.empty(),
        Optional.empty(),
        Optional.empty(),
        Optional.empty(),
        List.of(),
        List.of(
            new Copy(
                "c1",
                Optional.empty(),
                Optional.of("A1"),
                Optional.empty(),
                false,
                Optional.empty())),
        notes,
        checks,
        List.of());
  }

  /** A note that prints a term whose meaning its text gives. */
  public static NoteMaker says(String printed, String concept) {
    return new NoteMaker().naming(printed, concept, Why.TEXT);
  }

  /** A note that prints a term without a meaning. */
  public static NoteMaker prints(String printed) {
    return new NoteMaker().unassigned(printed);
  }

  public static Check check(String concept, String extent, Check.Method method) {
    return new Check(
        concept,
        Optional.ofNullable(extent).map(Locator::parse),
        method,
        Check.Result.NONE,
        Optional.empty(),
        Optional.empty(),
        Optional.empty(),
        Optional.empty());
  }

  /** The work with these editions in the place of its own. */
  public static Work withEditions(Work work, Edition... editions) {
    return work.withEditions(List.of(editions));
  }

  /** The work with links to others. */
  public static Work linked(Work work, WorkLink... links) {
    return changed(work, work.mine(), List.of(links));
  }

  /** The work as one of the user's own. */
  public static Work own(Work work) {
    return changed(work, true, work.links());
  }

  private static Work changed(Work work, boolean mine, List<WorkLink> links) {
    return new Work(
        work.id(),
        work.kind(),
        work.title(),
        work.subtitle(),
        work.alternateTitles(),
        work.contributors(),
        work.language(),
        mine,
        work.editions(),
        links);
  }

  public static WorkLink link(WorkLink.Kind kind, String to, String evidence) {
    return new WorkLink(kind, to, Optional.empty(), Optional.of(evidence));
  }

  /** The edition as one that comes from another. */
  public static Edition descended(Lineage.Form form, String parent, Edition edition) {
    return edition.withLineage(
        new Lineage(form, Optional.of(parent), OptionalInt.empty(), Optional.empty(), List.of()));
  }

  /** Makes a note place by place. */
  public static final class NoteMaker {
    private final List<Naming> namings = new ArrayList<>();
    private final List<Place> places = new ArrayList<>();
    private final List<Claim> claims = new ArrayList<>();
    private Optional<String> quotation = Optional.empty();
    private Optional<String> reading = Optional.empty();
    private Optional<Note.ObjectLink> object = Optional.empty();
    private Optional<PictureRights> rights = Optional.empty();

    public NoteMaker naming(String printed, String concept, Why why) {
      namings.add(new Naming(printed, Optional.of(concept), Optional.of(why)));
      return this;
    }

    public NoteMaker unassigned(String printed) {
      namings.add(new Naming(printed, Optional.empty(), Optional.empty()));
      return this;
    }

    public NoteMaker text(String locator) {
      return place(locator, Stance.NAMES, Medium.TEXT, null, null, null);
    }

    public NoteMaker photo(String locator) {
      return place(locator, Stance.PICTURES, Medium.PHOTO, Shows.EXAMPLE, null, null);
    }

    public NoteMaker absent(String locator) {
      return place(locator, Stance.SAYS_ABSENT, Medium.TEXT, null, null, null);
    }

    public NoteMaker process(String locator) {
      return place(locator, Stance.PICTURES, Medium.PHOTO, Shows.PROCESS, null, null);
    }

    public NoteMaker place(
        String locator, Stance stance, Medium medium, Shows shows, String naming, String piece) {
      return place(locator, stance, medium, shows, naming, piece, null);
    }

    public NoteMaker place(
        String locator,
        Stance stance,
        Medium medium,
        Shows shows,
        String naming,
        String piece,
        String picture) {
      places.add(
          new Place(
              Locator.parse(locator),
              stance,
              medium,
              Optional.ofNullable(shows),
              Optional.ofNullable(naming),
              Optional.ofNullable(picture),
              Optional.ofNullable(piece)));
      return this;
    }

    public NoteMaker claims(Claim.Kind kind, String words, String value) {
      return claims(kind, Claim.About.FEATURE, words, value);
    }

    public NoteMaker claims(Claim.Kind kind, Claim.About about, String words) {
      return claims(kind, about, words, null);
    }

    private NoteMaker claims(Claim.Kind kind, Claim.About about, String words, String value) {
      claims.add(
          new Claim(
              kind,
              words,
              Optional.ofNullable(value),
              Optional.empty(),
              Optional.empty(),
              about,
              Optional.empty()));
      return this;
    }

    public NoteMaker quotes(String words) {
      quotation = Optional.of(words);
      return this;
    }

    /** A place that corrects an edition, at a place of it or, where that is null, as a whole. */
    public NoteMaker corrects(String locator, String edition, String where) {
      place(locator, Stance.CORRECTS, Medium.TEXT, null, null, null);
      Place last = places.remove(places.size() - 1);
      Optional<Locator> at = Optional.ofNullable(where).map(Locator::parse);
      places.add(last.withCorrects(Optional.of(new Place.Corrected(edition, at))));
      return this;
    }

    public NoteMaker of(String ref, Note.ObjectLink.Sameness sameness, String evidence) {
      object = Optional.of(new Note.ObjectLink(ref, sameness, Optional.ofNullable(evidence)));
      return this;
    }

    public NoteMaker rights(PictureRights noted) {
      rights = Optional.of(noted);
      return this;
    }

    public NoteMaker reading(String words) {
      reading = Optional.of(words);
      return this;
    }

    Note note(String id) {
      return new Note(
          id,
          namings,
          places,
          claims,
          quotation,
          reading,
          Optional.empty(),
          object,
          rights,
          Optional.empty());
    }
  }

  /** Writes the library and opens it. */
  public Shelf open(Path folder) {
    return Shelf.open(write(folder), Watcher.NONE);
  }

  public LibraryFolder write(Path folder) {
    LibraryFolder library = LibraryFolder.create(folder, "A small library");
    works.forEach(library::add);
    objects.forEach(library::add);
    for (PageText text : texts) {
      try (ChangeSet change = library.change("attach")) {
        change.add(text, "text");
        change.commit();
      }
    }
    if (!mine.equals(Mine.NOTHING)) {
      library.save(library.readMine(), mine);
    }
    return library;
  }
}
