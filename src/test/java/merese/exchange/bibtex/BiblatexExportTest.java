package merese.exchange.bibtex;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.stream.Stream;
import merese.exchange.Outgoing;
import merese.model.Contributor;
import merese.model.Contributor.Role;
import merese.model.Edition;
import merese.model.Identifier;
import merese.model.Identifier.Scheme;
import merese.model.Name;
import merese.model.SourceKind;
import merese.model.Work;
import merese.shelf.Shelf;
import merese.testing.DemoLibrary;
import merese.testing.SmallLibrary;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Types and fields: the biblatex package, version 3.17, sections 2.1 and 2.2. */
class BiblatexExportTest {
  @TempDir private Path folder;

  private MadeEntry demo(String id) throws Exception {
    try (Shelf shelf = DemoLibrary.open(folder)) {
      return BibExports.sources(shelf).stream()
          .filter(source -> source.id().equals(id))
          .map(source -> BiblatexMaker.make(source, shelf.thesaurus()::label))
          .findFirst()
          .orElseThrow();
    }
  }

  @ParameterizedTest
  @CsvSource({
    "quenby-1926, book",
    "brackenford-directory-1817, book",
    "osmere-1979, mvcollection",
    "osmere-1988, collection",
    "osmere-1988#feet, incollection",
    "severn-1965#necks, inbook",
    "harkaway-1937, book",
    "saltrey-1824, unpublished",
    "brannock-yelland-1842, booklet",
    "few-words-undated, booklet",
    "farrow-1988, article",
    "cullet-newsletter-1994, article",
    "ashlock-1996, thesis",
    "yelland-1869, patent",
    "brindleholt-2014, online",
    "scarthwaite-2019, video",
    "tolland-1972, unpublished"
  })
  void eachKindOfSourceHasItsType(String key, String type) throws Exception {
    assertEquals(type, demo(key).type());
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "quenby-1968 | edition | 3",
        "quenby-1949 | edition | 2nd edn, revised",
        "quenby-1926 | subtitle | Notes on {Old} {Decanters}",
        "quenby-1926 | editoratype | photographer",
        "quenby-1977 | origdate | 1926",
        "quenby-1977#intro | bookauthor | Quenby, Mabel",
        "farrow-1988 | journaltitle | Cullet Society Journal",
        "cullet-newsletter-1994 | sorttitle | Ringing Changes",
        "brosserie-1974 | location | Paris and Li{\\`e}ge",
        "brosserie-1974 | langid | french",
        "ashlock-1996 | type | phdthesis",
        "ashlock-1996 | institution | University of Wessex Vale",
        "saltrey-1824 | date | 1824~",
        "cordwent-1955 | date | 1955?",
        "yelland-1869 | date | 1869-06-14",
        "harkaway-1937 | date | 1937-03-09/1937-03-10",
        "brindleholt-2014 | urldate | 2025-09-01",
        "scarthwaite-2019 | organization | {Rummer and Rinser channel}",
        "tolland-1972 | annotation | ``cotton stems'' fol. 1r / ``collar'' fol. 1v / ``rings like"
            + " knives'' fol. 2r"
      })
  void aFieldHoldsWhatTheManualExpects(String key, String field, String value) throws Exception {
    assertEquals(value, demo(key).fields().get(field));
  }

  private static MadeEntry made(
      SourceKind kind, List<Contributor> people, Edition.Imprint imprint) {
    Edition plain = SmallLibrary.edition("k", 1900);
    Edition edition =
        new Edition(
            "k",
            imprint,
            plain.lineage(),
            plain.container(),
            plain.occasion(),
            plain.archive(),
            plain.online(),
            plain.scope(),
            plain.parts(),
            plain.copies(),
            plain.notes(),
            plain.checks(),
            plain.received());
    Work work =
        new Work(
            "w",
            kind,
            "T",
            Optional.empty(),
            List.of(),
            people,
            Optional.empty(),
            false,
            List.of(edition),
            List.of());
    return BiblatexMaker.make(
        new Outgoing(work, edition, Optional.empty(), List.of()), label -> label);
  }

  private static Edition.Imprint imprint(String series, Identifier... identifiers) {
    return new Edition.Imprint(
        Optional.empty(),
        OptionalInt.empty(),
        OptionalInt.of(1900),
        Optional.empty(),
        List.of(),
        Optional.empty(),
        OptionalInt.empty(),
        Optional.of(series).filter(s -> !s.isEmpty()),
        List.of(identifiers),
        Optional.empty());
  }

  private static List<Contributor> people(Role... roles) {
    return Stream.of(roles)
        .map(role -> new Contributor(role, new Name.Body("The " + role.code())))
        .toList();
  }

  @Test
  void whoOrganisedItStandsForAnEditor() {
    MadeEntry made = made(SourceKind.EXHIBITION_CATALOGUE, people(Role.ORGANISER), imprint(""));
    assertEquals("collection", made.type());
    assertEquals("{The organiser}", made.fields().get("editor"));
    assertEquals("organizer", made.fields().get("editortype"));
  }

  @Test
  void aPatentHasItsNumber() {
    MadeEntry made =
        made(SourceKind.PATENT, people(Role.AUTHOR), imprint("Registered design no. 231407"));
    assertEquals("231407", made.fields().get("number"));
    assertEquals("Registered design", made.fields().get("type"));
  }

  /** ISO 2108's, ISO 3297's and the DOI Handbook's own examples; the last ISBN's digit is wrong. */
  @Test
  void numbersHaveTheirFieldsAndWrongOnesTheNote() {
    MadeEntry made =
        made(
            SourceKind.MONOGRAPH,
            people(Role.AUTHOR),
            imprint(
                "",
                Identifier.of(Scheme.ISBN, "0-306-40615-2"),
                Identifier.of(Scheme.ISSN, "0317-8471"),
                Identifier.of(Scheme.DOI, "10.1000/182"),
                new Identifier(Scheme.ISBN, "0-306-40615-3", Optional.empty(), true)));
    assertEquals("0-306-40615-2", made.fields().get("isbn"));
    assertEquals("10.1000/182", made.fields().get("doi"));
    assertEquals("ISSN 0317-8471. ISBN as printed: 0-306-40615-3", made.fields().get("note"));
  }
}
