package merese.citation;

import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import merese.model.Contributor;
import merese.model.Contributor.Role;
import merese.model.Edition;
import merese.model.Locator;
import merese.model.Name;
import merese.model.SourceKind;
import merese.model.Work;

/** Builds sources for tests; whatever has no source named beside it is invented. */
final class Invented {
  private final SourceKind kind;
  private final String title;
  private Optional<String> subtitle = Optional.empty();
  private final List<Contributor> contributors = new java.util.ArrayList<>();
  private Optional<String> language = Optional.empty();
  private String key = "key";
  private Optional<String> statement = Optional.empty();
  private OptionalInt number = OptionalInt.empty();
  private OptionalInt year = OptionalInt.empty();
  private Optional<String> yearPrinted = Optional.empty();
  private List<String> places = List.of();
  private Optional<String> publisher = Optional.empty();
  private OptionalInt volumes = OptionalInt.empty();
  private Optional<String> series = Optional.empty();
  private Optional<String> notedAs = Optional.empty();
  private Optional<Edition.Lineage> lineage = Optional.empty();
  private Optional<Edition.Container> container = Optional.empty();
  private Optional<Edition.Occasion> occasion = Optional.empty();
  private Optional<Edition.Archive> archive = Optional.empty();
  private Optional<Edition.Online> online = Optional.empty();
  private Optional<Edition.Part> part = Optional.empty();

  private Invented(SourceKind kind, String title) {
    this.kind = kind;
    this.title = title;
  }

  static Invented a(SourceKind kind, String title) {
    return new Invented(kind, title);
  }

  static Invented book(String title) {
    return a(SourceKind.MONOGRAPH, title);
  }

  Invented by(String given, String family) {
    return with(Role.AUTHOR, person(given, family));
  }

  Invented editedBy(String given, String family) {
    return with(Role.EDITOR, person(given, family));
  }

  Invented with(Role role, Name name) {
    contributors.add(new Contributor(role, name));
    return this;
  }

  static Name person(String given, String family) {
    return new Name.Person(family, Optional.of(given), Optional.empty(), Optional.empty());
  }

  static Name person(String given, String particle, String family) {
    return new Name.Person(family, Optional.of(given), Optional.of(particle), Optional.empty());
  }

  Invented subtitle(String words) {
    subtitle = Optional.of(words);
    return this;
  }

  Invented language(String tag) {
    language = Optional.of(tag);
    return this;
  }

  Invented key(String key) {
    this.key = key;
    return this;
  }

  Invented edition(String words) {
    statement = Optional.of(words);
    return this;
  }

  Invented edition(int number) {
    this.number = OptionalInt.of(number);
    return this;
  }

  Invented year(int year) {
    this.year = OptionalInt.of(year);
    return this;
  }

  Invented yearPrinted(String words) {
    yearPrinted = Optional.of(words);
    return this;
  }

  Invented at(String place, String publisher) {
    places = List.of(place);
    this.publisher = Optional.of(publisher);
    return this;
  }

  Invented places(String... places) {
    this.places = List.of(places);
    return this;
  }

  Invented publisher(String words) {
    publisher = Optional.of(words);
    return this;
  }

  Invented volumes(int number) {
    volumes = OptionalInt.of(number);
    return this;
  }

  Invented series(String words) {
    series = Optional.of(words);
    return this;
  }

  Invented notedAs(String words) {
    notedAs = Optional.of(words);
    return this;
  }

  Invented from(Edition.Lineage.Form form, int originalYear) {
    lineage =
        Optional.of(
            new Edition.Lineage(
                form, Optional.empty(), OptionalInt.of(originalYear), Optional.empty(), List.of()));
    return this;
  }

  Invented in(String title, String volume, String issue, String pages) {
    return in(title, Optional.of(volume), Optional.ofNullable(issue), OptionalInt.empty(), pages);
  }

  Invented in(
      String title,
      Optional<String> volume,
      Optional<String> issue,
      OptionalInt coverYear,
      String pages) {
    container =
        Optional.of(
            new Edition.Container(
                title,
                Optional.empty(),
                volume,
                Optional.empty(),
                issue,
                coverYear,
                Optional.ofNullable(pages).map(Locator::parse)));
    return this;
  }

  Invented sale(String house, String city, String dates) {
    occasion =
        Optional.of(
            new Edition.Occasion(
                Optional.of(house),
                Optional.of(city),
                Optional.of(dates),
                Optional.empty(),
                Optional.empty(),
                List.of()));
    return this;
  }

  Invented kept(String repository, String shelfMark, String firm, String degree) {
    archive =
        Optional.of(
            new Edition.Archive(
                repository,
                Optional.ofNullable(shelfMark),
                Optional.ofNullable(firm),
                Optional.empty(),
                Optional.ofNullable(degree)));
    return this;
  }

  Invented online(String url, String accessed) {
    online = Optional.of(new Edition.Online(url, Optional.ofNullable(accessed), Optional.empty()));
    return this;
  }

  Invented part(String title, Name author, String extent) {
    part =
        Optional.of(
            new Edition.Part(
                "part", title, List.of(author), Optional.of(extent).map(Locator::parse)));
    return this;
  }

  Source source() {
    return new Source(work(), edition(), part);
  }

  Work work() {
    return new Work(
        "work",
        kind,
        title,
        subtitle,
        List.of(),
        contributors,
        language,
        false,
        List.of(edition()),
        List.of());
  }

  Edition edition() {
    return new Edition(
        key,
        new Edition.Imprint(
            statement,
            number,
            year,
            yearPrinted,
            places,
            publisher,
            volumes,
            series,
            List.of(),
            notedAs),
        lineage,
        container,
        occasion,
        archive,
        online,
        Optional.empty(),
        List.of(),
        List.of(),
        List.of(),
        List.of(),
        List.of());
  }

  static List<Locator> locators(String... printed) {
    return List.of(printed).stream().map(Locator::parse).toList();
  }
}
