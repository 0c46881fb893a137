package merese.exchange.bibtex;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.nio.file.Path;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import merese.exchange.Aspect;
import merese.exchange.Incoming;
import merese.model.ReceivedRecord;
import merese.model.ReceivedRecord.Field;
import merese.model.Work;
import merese.shelf.Shelf;
import merese.store.LibraryFolder;
import merese.testing.DemoLibrary;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Fields as BibTeXing (O. Patashnik, 1988) and the manual of biblatex 3.18 define them. */
class BibtexMeaningTest {
  private static Work work(String entry) {
    Handed handed = Handed.read(entry);
    assertEquals(List.of(), handed.refused, entry);
    return handed.sources.get(0).work();
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '~',
      value = {
        // the kind, by type and by the keywords of our own export
        "@article{k, title = {T}} | KIND | journal article",
        "@phdthesis{k, title = {T}} | KIND | thesis",
        "@thesis{k, title = {T}} | KIND | thesis",
        "@unpublished{k, title = {T}} | KIND | manuscript",
        "@online{k, title = {T}} | KIND | web page",
        "@patent{k, title = {T}} | KIND | patent or registered design",
        "@misc{k, title = {T}, url = {http://a.example}} | KIND | web page",
        "@misc{k, title = {T}, howpublished = {\\url{http://a.example}}} | KIND | web page",
        "@misc{k, title = {T}, url = {http://a.example}, publisher = {P}} | KIND | monograph",
        "@misc{k, title = {T}, keywords = {sale catalogue}} | KIND | sale catalogue",
        "@misc{k, title = {T}, keywords = {video, own work}} | KIND | video",
        "@book{k, title = {T}, keywords = {sale catalogue, stems}} | KIND | monograph",
        // titles
        "@book{k, title = {Stem and {Foot}: A Study}} | TITLE | Stem and Foot: A Study",
        "@book{k, note = {A \\emph{leaflet}}} | TITLE | [A leaflet]",
        "@misc{k, howpublished = {Handed out}} | TITLE | [Handed out]",
        "@inbook{k, booktitle = {Papers}} | TITLE | [Papers]",
        "@book{k, title = {{}}} | TITLE | [k]",
        // dates
        "@book{k, title = {T}, year = {1961}} | DATE | 1961",
        "@book{k, title = {T}, year = {[c. 1926]}} | DATE | [c. 1926]",
        "@book{k, title = {T}, year = {in press}} | DATE | in press",
        "@book{k, title = {T}, date = {1984/1986}} | DATE | 1984/1986",
        "@book{k, title = {T}, date = {1991-03-07}} | DATE | 1991",
        "@book{k, title = {T}, date = {1991-03}, year = 1980} | DATE | 1991",
        "@book{k, title = {T}, date = {19XX}} | DATE | 19XX",
        // publication
        "@book{k, title = {T}, edition = {Second}} | STATEMENT | no. 2",
        "@book{k, title = {T}, edition = {2nd}} | STATEMENT | no. 2",
        "@book{k, title = {T}, edition = 15} | STATEMENT | no. 15",
        "@book{k, title = {T}, edition = {Revised}} | STATEMENT | Revised edition",
        "@book{k, title = {T}, edition = {2., verb. Aufl.}} | STATEMENT | 2., verb. Aufl.",
        "@book{k, title = {T}, address = {Bath and {Much and Wenlock}}} | PLACES | Bath; Much and Wenlock",
        "@book{k, title = {T}, publisher = {Weeden {and} Sons}} | PUBLISHER | Weeden and Sons",
        "@booklet{k, title = {T}, howpublished = {Severn Press}} | PUBLISHER | Severn Press",
        "@techreport{k, title = {T}, institution = {Osmere}} | PUBLISHER | Osmere",
        "@book{k, title = {T}, volumes = {3}} | VOLUMES | 3",
        "@book{k, title = {T}, series = {Primers}, number = 14} | SERIES | Primers 14",
        "@book{k, title = {T}, series = {Primers}, volume = 2} | SERIES | Primers, vol. 2",
        "@article{k, title = {T}, journal = {J}, series = {3}} | SERIES | ''",
        "@patent{k, title = {T}, location = {countryfr}} | PLACES | ''",
        // numbers
        "@book{k, title = {T}, isbn = {0816520666, 978-0-8165-2066-5}} | IDENTIFIERS | ISBN 0-8165-2066-6; ISBN 978-0-8165-2066-5 (wrong in print)",
        "@article{k, title = {T}, issn = {0097-8493}} | IDENTIFIERS | ISSN 0097-8493",
        "@article{k, title = {T}, doi = {https://doi.org/10.1002/a\\_b}} | IDENTIFIERS | DOI 10.1002/a_b",
        "@book{k, title = {T}, isbn = {none}} | IDENTIFIERS | ''",
        // what it is in
        "@article{k, title = {T}, journal = {J}, volume = 4, number = 3, pages = {22--38}} | CONTAINER | J, vol. 4, no. 3, pp. 22–38",
        "@article{k, title = {T}, journaltitle = {J}, issue = {Spring}, pages = {7}} | CONTAINER | J, no. Spring, p. 7",
        "@incollection{k, title = {T}, booktitle = {B}, pages = {v-xvi, 3 - 9}} | CONTAINER | B, pp. v–xvi, 3–9",
        "@inproceedings{k, title = {T}, booktitle = {B}, booksubtitle = {S}, pages = {73+}} | CONTAINER | B: S",
        "@book{k, title = {T}, booktitle = {T}} | CONTAINER | ''",
        // theses, the web, descent, language
        "@mastersthesis{k, title = {T}, school = {Wessex}} | ARCHIVE | Wessex, Master's",
        "@thesis{k, title = {T}, institution = {Wessex}, type = {phdthesis}} | ARCHIVE | Wessex, PhD",
        "@online{k, title = {T}, url = {http://a.example/b\\_c}} | ONLINE | http://a.example/b_c",
        "@book{k, title = {T}, origdate = {1926}} | LINEAGE | reprint, first 1926",
        "@book{k, title = {T}, origyear = {1926}, translator = {A B}} | LINEAGE | translation, first 1926",
        "@book{k, title = {T}, langid = {ngerman}} | LANGUAGE | de",
        "@book{k, title = {T}, langid = {british}} | LANGUAGE | en-GB",
        "@book{k, title = {T}, language = {langlatin and langgerman}, langid = {german}} | LANGUAGE | de",
        "@book{k, title = {T}, language = {Welsh}} | LANGUAGE | cy",
        "@book{k, title = {T}, language = {pt-br}} | LANGUAGE | pt-BR",
        "@book{k, title = {T}, language = {klingon}} | LANGUAGE | ''",
        // people
        "@book{k, title = {T}, author = {A B and others}, editor = {{C D}}} | PEOPLE | A B; C D (editor)",
        "@book{k, title = {T}, editor = {A B}, editortype = {redactor}} | PEOPLE | ''",
        "@book{k, title = {T}, author = {xdata=people-a}} | PEOPLE | ''",
        // no home
        "@book{k, title = {T}, annote = {x}, abstract = {y}, eprint = {z}} | NOTED_AS | ''",
      })
  void says(String entry, String aspect, String printed) {
    String expected = printed.equals("''") ? "" : printed;
    assertEquals(expected, Aspect.valueOf(aspect).printed(work(entry)), entry);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "Stem and Foot: A Study | Stem and Foot | A Study",
        "Technical section: an algorithm | Technical section: an algorithm | ",
        "One: Two: Three | One: Two: Three | ",
        "Who Made It?: A Study | Who Made It?: A Study | ",
        "Glass at 3:15 | Glass at 3:15 | ",
        "Glass, 1800–1900: 30 Cups | Glass, 1800–1900 | 30 Cups",
      })
  void aTitleIsCutOnlyWhereItWouldBeJoinedSo(String whole, String title, String subtitle) {
    Work work = work("@book{k, title = {" + whole + "}}");
    assertEquals(title, work.title());
    assertEquals(Optional.ofNullable(subtitle), work.subtitle());
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "1984/1986 | 1984",
        "1984--1986 | 1984",
        "[c. 1926] | 1926",
        "1926? | 1926",
        "1926~ | 1926",
        "-0044 | -44",
        "1817, for the year 1818 | 1817",
        "/1986 | ",
        "199X | ",
        "n.d. | ",
        "9.10.1926 | 1926",
      })
  void theYearIsTheFirstThatIsNamed(String printed, Integer year) {
    assertEquals(
        Optional.ofNullable(year), DateReader.of(printed).year().stream().boxed().findFirst());
  }

  @Nested
  class RecordsOfOtherKeys {
    private static Optional<ReceivedRecord> another(String key) {
      return Optional.of(record("biblatex", "book", Map.of("crossref", key + "x")));
    }

    private static ReceivedRecord record(String format, String type, Map<String, String> fields) {
      return new ReceivedRecord(
          format,
          type,
          "k",
          fields.entrySet().stream().map(e -> new Field(e.getKey(), e.getValue())).toList());
    }

    @Test
    void mayReferToEachOtherWithoutEnd() {
      Work work =
          BibtexMeaning.of(
              record("biblatex", "inbook", Map.of("crossref", "a")), RecordsOfOtherKeys::another);
      assertEquals("[k]", work.title());
    }
  }

  @Nested
  class OurOwnExport {
    @TempDir private Path folder;

    @Test
    void isReadAsWhatItIsAndSaysWhatTheLibrarySays() throws Exception {
      Map<String, Work> library = works();
      Handed handed;
      try (Shelf shelf = DemoLibrary.open(folder.resolve("shelf"))) {
        handed = Handed.read(BibExports.of(shelf, Flavour.BIBTEX));
      }
      assertEquals(List.of(), handed.refused);
      for (Incoming source : handed.sources) {
        assertEquals("bibtex", source.received().format());
        Work exported = library.remove(source.key().orElseThrow());
        if (exported != null) { // a part has no work of its own
          for (Aspect aspect : List.of(Aspect.KIND, Aspect.TITLE, Aspect.LANGUAGE, Aspect.ONLINE)) {
            assertEquals(aspect.printed(exported), aspect.printed(source.work()));
          }
          assertEquals(
              exported.editions().get(0).imprint().year(), source.edition().imprint().year());
          assertEquals(exported.mine(), source.work().mine());
        }
      }
      assertEquals(Map.of(), library);
    }

    private Map<String, Work> works() throws Exception {
      LibraryFolder library = DemoLibrary.copyTo(folder.resolve("library"));
      Map<String, Work> works = new HashMap<>();
      for (Path file : DemoLibrary.works(library)) {
        Work work = library.readWork(file).value();
        work.editions().forEach(e -> works.put(e.key(), work.withOnly(e)));
      }
      return works;
    }
  }

  @Provide
  Arbitrary<ReceivedRecord> records() {
    Arbitrary<String> types = Arbitraries.of("book", "article", "misc", "thesis", "online", "x");
    Arbitrary<String> names =
        Arbitraries.of(
            "title",
            "author",
            "editor",
            "year",
            "date",
            "pages",
            "isbn",
            "issn",
            "doi",
            "url",
            "edition",
            "series",
            "number",
            "journal",
            "booktitle",
            "crossref",
            "xdata",
            "language",
            "origdate",
            "howpublished",
            "keywords",
            "address",
            "note",
            "school");
    Arbitrary<String> values =
        Arbitraries.oneOf(
            Arbitraries.strings().ofMaxLength(30),
            Arbitraries.strings().withChars("{}\\'\",# jana1-=/~$ k").ofMaxLength(30),
            Arbitraries.of("jul", "acm # {}", "\"jul\"", "k", "", " ", "978-0", "10.1/2", "p. 3"));
    Arbitrary<Field> fields = Combinators.combine(names, values).as(Field::new);
    return Combinators.combine(
            Arbitraries.of("bibtex", "biblatex"), types, fields.list().ofMaxSize(8))
        .as((format, type, list) -> new ReceivedRecord(format, type, "k", list));
  }

  @Property(tries = 5000, seed = "7")
  void anyRecordIsUnderstoodTheSameEachTime(@ForAll("records") ReceivedRecord record) {
    Work once = BibtexMeaning.of(record, key -> Optional.of(record));
    assertEquals(once, BibtexMeaning.of(record, key -> Optional.of(record)));
    assertEquals(List.of(record), once.editions().get(0).received());
  }

  @Test
  void whatIsWrongWithANumberIsRemarkedOn() {
    Handed handed = Handed.read("@book{k, title = {T}, isbn = {978-0-8165-2066-5}}");
    List<String> remarks = handed.sources.get(0).remarks();
    assertEquals(1, remarks.size());
    assertEquals(
        "isbn 978-0-8165-2066-5",
        remarks.get(0).toLowerCase(Locale.ROOT).substring(0, "isbn 978-0-8165-2066-5".length()));
    assertEquals(
        "; recorded as it stands, as wrong in print",
        remarks.get(0).substring(remarks.get(0).indexOf(';')));
  }
}
