package merese.exchange.marc;

import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import merese.exchange.identifier.Identifiers;
import merese.model.Contributor;
import merese.model.Edition;
import merese.model.Edition.Imprint;
import merese.model.Identifier;
import merese.model.Locator;
import merese.model.Name;
import merese.model.SourceKind;
import merese.model.Work;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Builders;
import net.jqwik.api.Combinators;

/** Works with one edition, whose texts are of the sort that is handed in. */
final class GeneratedWorks {
  private final Arbitrary<String> texts;

  GeneratedWorks(Arbitrary<String> texts) {
    this.texts = texts;
  }

  /** Titles and names as they are met, with stops and marks in all the wrong places. */
  static Arbitrary<String> usual() {
    Arbitrary<String> word =
        Arbitraries.of(
            "Glass",
            "the",
            "Decanters",
            "à",
            "jambe",
            "Co.",
            "Ltd",
            "etc.",
            "(Firm",
            "no.",
            "4",
            "J.",
            "Jr",
            "A.B.",
            "what?",
            "1926",
            "naïve",
            "Гра",
            "&",
            "Neck's",
            "St.",
            "end");
    return word.list().ofMinSize(1).ofMaxSize(4).map(w -> "T" + String.join(" ", w));
  }

  /** Anything that a file of a library may hold, and XML can. */
  static Arbitrary<String> any() {
    return Arbitraries.strings()
        .withChars(" .,:;/=+[]()$#{}<>&\"'|\\-–\u00a0\u0098e\u0301ÀЖ中")
        .withChars('a', 'e')
        .withChars('\n', '\t', '\r')
        .ofMinLength(0)
        .ofMaxLength(12)
        .map(t -> "b" + t);
  }

  private Arbitrary<Optional<String>> maybe() {
    return texts.optional(0.4);
  }

  private Arbitrary<OptionalInt> year() {
    return Arbitraries.integers()
        .between(1000, 2099)
        .optional(0.6)
        .map(y -> y.map(OptionalInt::of).orElse(OptionalInt.empty()));
  }

  private Arbitrary<Name> name() {
    Arbitrary<Name> body = texts.map(Name.Body::new);
    Arbitrary<Name> person =
        Combinators.combine(
                texts.map(t -> t.replace(",", "")).filter(t -> !t.isBlank()),
                Arbitraries.of("Mabel", "J.", "J. P.", "Jean-Paul").optional(0.9),
                Arbitraries.of("van", "de la", "von der").optional(0.2),
                Arbitraries.of("Jr", "III", "Jr.").optional(0.1))
            .as((family, given, particle, suffix) -> person(family, given, particle, suffix));
    return Arbitraries.oneOf(body, person);
  }

  private static Name person(
      String family, Optional<String> given, Optional<String> particle, Optional<String> suffix) {
    return new Name.Person(family, given, particle, suffix);
  }

  private Arbitrary<Identifier> identifier() {
    return Arbitraries.of(
        Identifiers.isbn("0-306-40615-2 (pbk.)"),
        Identifiers.isbn("978-0-306-40615-7"),
        Identifiers.isbn("0-306-40615-3"),
        Identifiers.issn("0317-8471"),
        Identifiers.doi("10.1000/182"));
  }

  private Arbitrary<Imprint> imprint() {
    return Builders.withBuilder(() -> new ImprintParts())
        .use(maybe())
        .inSetter((p, v) -> p.statement = v)
        .use(year())
        .inSetter((p, v) -> p.year = v)
        .use(texts.list().ofMaxSize(2).uniqueElements())
        .inSetter((p, v) -> p.places = v)
        .use(maybe())
        .inSetter((p, v) -> p.publisher = v)
        .use(maybe())
        .inSetter((p, v) -> p.series = v)
        .use(identifier().list().ofMaxSize(2).uniqueElements())
        .inSetter((p, v) -> p.identifiers = v)
        .use(maybe())
        .inSetter((p, v) -> p.notedAs = v)
        .build(ImprintParts::imprint);
  }

  private static final class ImprintParts {
    private Optional<String> statement = Optional.empty();
    private OptionalInt year = OptionalInt.empty();
    private List<String> places = List.of();
    private Optional<String> publisher = Optional.empty();
    private Optional<String> series = Optional.empty();
    private List<Identifier> identifiers = List.of();
    private Optional<String> notedAs = Optional.empty();

    Imprint imprint() {
      return new Imprint(
          statement,
          statement.map(EditionNumber::of).orElse(OptionalInt.empty()),
          year,
          Optional.empty(),
          places,
          publisher,
          OptionalInt.empty(),
          series,
          identifiers,
          notedAs);
    }
  }

  private Arbitrary<Optional<Edition.Container>> container() {
    return Combinators.combine(
            texts,
            maybe(),
            Arbitraries.of("10", "XII", "3").optional(0.7),
            Arbitraries.of("2", "B").optional(0.3),
            Arbitraries.of("48", "2/3").optional(0.5),
            Arbitraries.of("pp. 22–38", "p. [3]", "p. 5", "pl. XII", "cat. nos 1–96").optional(0.7))
        .as(
            (title, society, volume, part, issue, pages) ->
                new Edition.Container(
                    title,
                    society,
                    volume,
                    part,
                    issue,
                    OptionalInt.empty(),
                    pages.map(Locator::parse)))
        .optional(0.3);
  }

  private Arbitrary<Edition> edition() {
    return Combinators.combine(
            imprint(),
            container(),
            texts.map(t -> t + "x").optional(0.2),
            Arbitraries.of("https://example.org/a?b=c&d=e#f").optional(0.2),
            maybe())
        .as(
            (imprint, container, repository, url, house) ->
                new Edition(
                    "key",
                    imprint,
                    Optional.empty(),
                    container,
                    house.map(
                        h ->
                            new Edition.Occasion(
                                house, Optional.empty(), house, house, house, List.of(h))),
                    repository.map(
                        r ->
                            new Edition.Archive(
                                r, house, Optional.empty(), Optional.empty(), Optional.empty())),
                    url.map(u -> new Edition.Online(u, Optional.of("2025-09-01"), Optional.of(u))),
                    Optional.empty(),
                    List.of(),
                    List.of(),
                    List.of(),
                    List.of(),
                    List.of()));
  }

  Arbitrary<Work> works() {
    return Combinators.combine(
            Arbitraries.of(SourceKind.values()),
            texts,
            maybe(),
            texts.map(t -> "Other " + t).list().ofMaxSize(2).uniqueElements(),
            Combinators.combine(Arbitraries.of(Contributor.Role.values()), name())
                .as(Contributor::new)
                .list()
                .ofMaxSize(3)
                .uniqueElements(),
            Arbitraries.of("en", "fr", "de", "en-GB", "grc", "nl").optional(0.5),
            edition())
        .as(
            (kind, title, subtitle, others, people, language, edition) ->
                new Work(
                    "id",
                    kind,
                    title,
                    subtitle,
                    others,
                    people,
                    language,
                    false,
                    List.of(edition),
                    List.of()));
  }
}
