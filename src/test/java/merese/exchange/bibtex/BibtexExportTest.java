package merese.exchange.bibtex;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.StringReader;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import merese.model.Edition;
import merese.model.Work;
import merese.shelf.Shelf;
import merese.testing.DemoLibrary;
import merese.testing.Exports;
import merese.testing.HostileLibrary;
import merese.testing.SmallLibrary;
import org.jbibtex.BibTeXDatabase;
import org.jbibtex.BibTeXEntry;
import org.jbibtex.BibTeXParser;
import org.jbibtex.Key;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Types of entry: BibTeXing, 1988, section 3.1, and common practice of the trade. */
class BibtexExportTest {
  @TempDir private Path folder;

  private BibTeXDatabase demo(String... keys) throws Exception {
    try (Shelf shelf = DemoLibrary.open(folder)) {
      return parsed(Exports.bibtex(shelf, List.of(keys)));
    }
  }

  private static BibTeXDatabase parsed(String bib) throws Exception {
    return new BibTeXParser().parse(new StringReader(bib));
  }

  private static String field(BibTeXEntry entry, String name) {
    return entry.getField(new Key(name)) == null
        ? ""
        : entry.getField(new Key(name)).toUserString();
  }

  @ParameterizedTest
  @CsvSource({
    "quenby-1926, book",
    "osmere-1979, book",
    "osmere-1988#feet, incollection",
    "harkaway-1937, misc",
    "saltrey-1824, unpublished",
    "brannock-yelland-1842, booklet",
    "cordwent-1955, booklet",
    "farrow-1988, article",
    "cullet-newsletter-1994, misc",
    "ashlock-1996, phdthesis",
    "yelland-1869, misc",
    "scarthwaite-2019, misc",
    "tolland-1972, misc"
  })
  void eachKindOfSourceHasItsType(String key, String type) throws Exception {
    BibTeXEntry entry = demo(key).getEntries().values().iterator().next();
    assertEquals(type, entry.getType().getValue());
    assertEquals(key.replace('#', ':'), entry.getKey().getValue());
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "hoeck-1961 | author | van der Hoeck, Pieter",
        "varnell-1938 | author | Varnell, Jr, Lucius",
        "harkaway-1937 | author | {Harkaway \\& Lisle}",
        "harkaway-1937 | note | Consignor as printed: the executors of the late Mrs E. Thornaby",
        "lantern-street-2016 | author | {Lantern Street Glass Circle} and Calloway, Hetty",
        "osmere-1988 | editor | von der Strand, Hugo",
        "osmere-1988 | note | Exhibition: 4 June -- 28 August 1988; Osmere",
        "quenby-1968 | edition | 3rd",
        "quenby-1977 | origdate | 1926",
        "osmere-1979 | volumes | 2",
        "haskeld-1983 | series | Primers for Collectors",
        "haskeld-1983 | number | 14",
        "ollerby-1958 | pages | 41--52",
        "cruet-frame-1904 | key | Cruet Frame",
        "brosserie-1974 | address | Paris and Li{\\`e}ge",
        "tolland-1972 | annote | ``cotton stems'' fol. 1r / ``collar'' fol. 1v / ``rings like"
            + " knives'' fol. 2r",
        "quenby-1977#intro | annote | ``bladed ring'' p. ix / ``{}``Irish'' rings'' p. xi / ``ring of"
            + " three ridges'' p. xii / ``snake or spiral trail'' p. xiv"
      })
  void aFieldHoldsWhatTheTradeExpects(String key, String field, String value) throws Exception {
    assertEquals(value, field(demo(key).getEntries().values().iterator().next(), field));
  }

  @Test
  void aFacsimileSaysOfWhat() throws Exception {
    BibTeXEntry entry = demo("quenby-1977").getEntries().values().iterator().next();
    assertTrue(
        field(entry, "note").startsWith("Facsimile of the 1926 edn. New introduction by Stella"),
        field(entry, "note"));
  }

  @Test
  void whatASourceSaysItDoesNotShowIsMarked() throws Exception {
    BibTeXEntry entry = demo("haskeld-1983").getEntries().values().iterator().next();
    assertTrue(field(entry, "annote").contains("p. 12 (says not shown)"), field(entry, "annote"));
  }

  @Nested
  class TheFile {
    @Test
    void isTheSameInAnyOrderAndAnyLocale() throws IOException {
      try (Shelf shelf = DemoLibrary.open(folder)) {
        List<String> keys = new ArrayList<>();
        shelf.sources().forEach(source -> keys.add(source.key()));
        String once = Exports.bibtex(shelf, keys);
        Collections.reverse(keys);
        Locale before = Locale.getDefault();
        try {
          Locale.setDefault(Locale.forLanguageTag("tr-TR"));
          assertEquals(once, Exports.bibtex(shelf, keys));
        } finally {
          Locale.setDefault(before);
        }
        assertTrue(once.endsWith("}\n") && once.indexOf('\r') < 0);
      }
    }

    @Test
    void ofAHostileLibraryHasOneEntryASourceAndNothingElse() throws Exception {
      try (Shelf shelf = HostileLibrary.make().open(folder)) {
        BibTeXDatabase read = parsed(Exports.bibtex(shelf, List.of()));
        assertEquals(shelf.sources().size() * 2, read.getObjects().size());
        assertEquals(shelf.sources().size() * 2, read.getEntries().size());
      }
    }
  }

  @Nested
  class Keys {
    private Set<String> keysOf(String... keys) throws Exception {
      SmallLibrary library = new SmallLibrary();
      int year = 1900;
      for (String key : keys) {
        Work work = SmallLibrary.monograph("A" + year, year, "T");
        Edition edition = SmallLibrary.edition(key, year++);
        library.work(work.withOnly(edition));
      }
      try (Shelf shelf = library.open(folder)) {
        Set<String> read = new HashSet<>();
        parsed(Exports.bibtex(shelf, List.of()))
            .getEntries()
            .keySet()
            .forEach(key -> read.add(key.getValue()));
        return read;
      }
    }

    @Test
    void holdOnlyWhatEveryProgramTakes() throws Exception {
      assertEquals(Set.of("tove-1926", "a-b-c", "source"), keysOf("töve-1926", "a b,{c}", "%\\#~"));
    }

    @Test
    void differInMoreThanCapitals() throws Exception {
      assertEquals(Set.of("A-1", "a-1-2", "a-1-3"), keysOf("a-1", "A-1", "a 1"));
    }
  }

  @Nested
  class Names {
    private static final Optional<String> NO = Optional.empty();

    private static String written(String family, String given, String particle, String suffix) {
      return BibtexNames.of(
              new merese.model.Name.Person(
                  family,
                  Optional.ofNullable(given),
                  Optional.ofNullable(particle),
                  Optional.ofNullable(suffix)))
          .orElseThrow();
    }

    @Test
    void thatWouldBeTakenApartAreHeldTogether() {
      assertEquals("{de Vries}, Ann", written("de Vries", "Ann", null, null));
      assertEquals("{Brinch Hansen}", written("Brinch Hansen", null, null, null));
      assertEquals("{Rose and Crown}, A.", written("Rose and Crown", "A.", null, null));
      assertEquals("{others}", written("others", null, null, null));
      assertEquals("{Varnell, Jr}", written("Varnell", null, null, "Jr"));
      assertEquals("{A, b C, D, E}", written("C, D", "A,", "b", "E"));
    }

    @Test
    void withACapitalInTheParticleKeepItInTheFamilyName() {
      assertEquals("Van Hoeck, P.", written("Hoeck", "P.", "Van", null));
    }

    @Test
    void ofBodiesAreNeverSplit() {
      assertEquals(
          Optional.of("{Smith and Sons, Ltd}"),
          BibtexNames.of(new merese.model.Name.Body("Smith and Sons, Ltd")));
      assertEquals(NO, BibtexNames.of(new merese.model.Name.Body("\u202e")));
    }
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "2nd edn | 2nd | ''",
        "2nd edn, revised | 2nd | 2nd edn, revised",
        "The third edition | 3rd | ''",
        "Twelfth edition | Twelfth | ''",
        "11th ed. | 11th | ''",
        "English edn | English | ''",
        "1st edn | '' | ''",
        "reprinted with corrections | '' | reprinted with corrections"
      })
  void anEditionLeavesTheWordToTheStyle(String printed, String field, String rest) {
    Edition.Imprint plain = SmallLibrary.edition("k", 1900).imprint();
    EditionStatement statement =
        EditionStatement.of(
            new Edition.Imprint(
                Optional.of(printed),
                plain.number(),
                plain.year(),
                plain.yearPrinted(),
                plain.places(),
                plain.publisher(),
                plain.volumes(),
                plain.series(),
                plain.identifiers(),
                plain.notedAs()));
    assertEquals(field, statement.field().orElse(""));
    assertEquals(rest, statement.rest().orElse(""));
  }
}
