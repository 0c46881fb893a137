package merese.citation;

import static merese.citation.Invented.a;
import static merese.citation.Invented.book;
import static merese.citation.Invented.locators;
import static merese.citation.Invented.person;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import merese.model.Contributor.Role;
import merese.model.SourceKind;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class CitationsTest {

  private static Citations style(String name) {
    return Citations.inStyle(name, "en-GB");
  }

  private static List<String> texts(List<Entry> entries) {
    return entries.stream().map(Entry::text).toList();
  }

  @Nested
  class AList {
    private final Source first = quenby(1926).source();
    private final Source third = quenby(1968).edition(3).source();
    private final Source second = quenby(1949).edition("Second edition").source();

    private Invented quenby(int year) {
      return book("Neck and Stopper").key("quenby-" + year).by("Maud", "Quenby").year(year);
    }

    @Test
    void isInTheStylesOrderWhateverOrderItIsGivenIn() {
      List<String> expected =
          List.of(
              "Dunlavin, C., Glass of the Two Islands (1990)",
              "van der Meeuwen, Jan, Rings (1960)",
              "Quenby, Maud, Neck and Stopper, 2nd edn (1949)",
              "Quenby, Maud, Neck and Stopper, 3rd edn (1968)",
              "Quenby, Maud, Neck and Stopper (1926)",
              "The Ringed Decanter (1971)",
              "Sarn, I., Cut and Blown (1954)");
      List<Source> sources = new ArrayList<>(List.of(third, first, second));
      sources.add(
          book("Rings")
              .key("m")
              .with(Role.AUTHOR, person("Jan", "van der", "Meeuwen"))
              .year(1960)
              .source());
      sources.add(book("Cut and Blown").key("t").by("I.", "Sarn").year(1954).source());
      sources.add(book("The Ringed Decanter").key("n").year(1971).source());
      sources.add(
          book("Glass of the Two Islands").key("d").by("C.", "Dunlavin").year(1990).source());
      List<String> sorted = texts(style("mhra-notes").bibliography(sources, Output.TEXT));
      assertEquals(expected, sorted, "van der Meeuwen under M, The Ringed Decanter under R");
      Collections.reverse(sources);
      assertEquals(sorted, texts(style("mhra-notes").bibliography(sources, Output.TEXT)));
    }

    @Test
    void hasEachSourceOnceWithItsKey() {
      List<Entry> entries = style("mhra-notes").bibliography(List.of(first, first), Output.TEXT);
      assertEquals(List.of("quenby-1926"), entries.stream().map(Entry::id).toList());
    }

    @Test
    void ofAStyleThatLeavesLettersOutStillHasThem() {
      Source letter = OneOfEach.of(SourceKind.STATEMENT);
      List<Entry> entries = style("mhra-notes").bibliography(List.of(letter), Output.TEXT);
      assertEquals(1, entries.size());
      assertTrue(entries.get(0).text().startsWith("S. Norrish, ‘Letter to Maud Quenby’"));
    }

    @Test
    void givesAnEntryAloneJustAsInTheList() {
      Citations style = style("mhra-notes");
      assertEquals(
          style.bibliography(List.of(second), Output.HTML).get(0).text(),
          style.entry(second, Output.HTML));
    }
  }

  @Nested
  class AStyleWithoutNotes {
    private final Source quenby = OneOfEach.of(SourceKind.MONOGRAPH);

    @Test
    void citesInTheTextAndSaysSo() {
      Citations style = style("mhra-author-date");
      assertEquals(Citations.Scheme.AUTHOR_DATE, style.scheme());
      assertEquals(1, style.remarks().size());
      assertEquals("(Quenby 1949: pl. XII)", style.note(quenby, locators("pl. XII"), Output.TEXT));
    }

    @Test
    void pointsIntoTheListThatWasMadeBefore() {
      Citations style = style("ieee");
      Source other = book("Other").key("o").by("A.", "B").source();
      style.bibliography(List.of(other, quenby), Output.TEXT);
      assertEquals(Citations.Scheme.NUMERIC, style.scheme());
      assertEquals("[2, p. 41]", style.note(quenby, locators("p. 41"), Output.TEXT));
      assertEquals(
          "[2] M. Quenby, Neck and Stopper, 2nd edn. London: Harrowgate Press, 1949.",
          style.entry(quenby, Output.TEXT));
    }

    @Test
    void doesNotLoseAPlaceThatItHasNoRoomFor() {
      assertTrue(
          style("acta-paediatrica")
              .note(quenby, locators("pl. XII"), Output.TEXT)
              .contains("pl. XII"));
    }
  }

  @Nested
  class AStyleWithoutAList {
    @Test
    void listsItsNotesByAuthor() {
      Citations style = style("chicago-notes");
      assertEquals(1, style.remarks().size());
      assertEquals(
          List.of("Maud Quenby, B (n.d.).", "Ivo Tressick, A (n.d.)."),
          texts(
              style.bibliography(
                  List.of(
                      book("A").key("a").by("Ivo", "Tressick").source(),
                      book("B").key("b").by("Maud", "Quenby").source()),
                  Output.TEXT)));
    }
  }

  @Nested
  class AStyleThatPrintsNothingForAKind {
    @Test
    void isHelpedOut() {
      Source film = OneOfEach.of(SourceKind.VIDEO);
      assertEquals(
          "Lantern Street Glass Circle 2021, Three Rings, One Neck, 03:15.",
          style("catholic-biblical-association").note(film, locators("03:15"), Output.TEXT));
    }
  }

  @Nested
  class Languages {
    @Test
    void wordTheEditionAndThePlace() {
      Source quenby = OneOfEach.of(SourceKind.MONOGRAPH);
      String german =
          Citations.inStyle("chicago-notes-bibliography-17th-edition", "de-DE")
              .note(quenby, locators("figs 9–11"), Output.TEXT);
      assertTrue(german.contains("2. Aufl."), german);
      assertTrue(german.contains("Abb. 9–11"), german);
    }

    @ParameterizedTest
    @ValueSource(strings = {"xx-XX", "!!", "../../etc"})
    void thatAreUnknownAreRefused(String language) {
      CitationException e =
          assertThrows(CitationException.class, () -> Citations.inStyle("mhra-notes", language));
      assertTrue(e.getMessage().contains("en-GB"), e.getMessage());
    }
  }

  @Nested
  class OtherFields {
    @Test
    void areKept() {
      Source source =
          a(SourceKind.MONOGRAPH, "Rings")
              .by("A.", "Bell")
              .editedBy("C.", "Dray")
              .edition("rev. edn")
              .volumes(2)
              .series("Glass Studies, 4")
              .year(1900)
              .places("London", "New York")
              .source();
      assertEquals(
          "A. Bell, Rings, ed. by C. Dray, Glass Studies, 4, rev. edn, 2 vols (London, 1900).",
          style("mhra-notes").note(source, locators(), Output.TEXT));
    }
  }

  @Nested
  class AStyleOfTheUsersOwn {
    @TempDir Path folder;

    private CitationException refused(String content) throws Exception {
      Path file = Files.writeString(folder.resolve("own.csl"), content);
      return assertThrows(CitationException.class, () -> style(file.toString()));
    }

    @Test
    void isReadFromItsFile() throws Exception {
      Path file =
          Files.writeString(
              folder.resolve("own.csl"),
              "<style xmlns='http://purl.org/net/xbiblio/csl' class='note' version='1.0'>"
                  + "<citation><layout suffix='!'><text variable='title'/></layout></citation>"
                  + "</style>");
      Citations own = style(file.toString());
      assertEquals("Neck!", own.note(book("Neck").source(), locators(), Output.TEXT));
      assertEquals("Neck, p. 4!", own.note(book("Neck").source(), locators("p. 4"), Output.TEXT));
    }

    @Test
    void isRefusedWithThePlaceOfTheMistake() throws Exception {
      assertTrue(refused("<style>\n<citation></style>").getMessage().contains("line 2, column"));
      assertTrue(refused("<html/>").getMessage().contains("<html>"));
      assertTrue(refused("<style/>").getMessage().contains("no <citation>"));
      assertTrue(
          refused("<!DOCTYPE x [<!ENTITY e SYSTEM 'file:///etc/hostname'>]><style>&e;</style>")
              .getMessage()
              .contains("DOCTYPE"));
    }

    @Test
    void thatGoesRoundInCirclesIsRefused() throws Exception {
      Path file =
          Files.writeString(
              folder.resolve("own.csl"),
              "<style xmlns='http://purl.org/net/xbiblio/csl' class='note' version='1.0'>"
                  + "<macro name='m'><text macro='m'/></macro>"
                  + "<citation><layout><text macro='m'/></layout></citation></style>");
      Citations own = style(file.toString());
      CitationException e =
          assertThrows(
              CitationException.class,
              () -> own.note(book("Neck").source(), locators(), Output.TEXT));
      assertTrue(e.getMessage().contains("round in circles"), e.getMessage());
    }

    @Test
    void thatIsMissingIsNamed() {
      CitationException e =
          assertThrows(CitationException.class, () -> style(folder + "/none.csl"));
      assertTrue(e.getMessage().contains("none.csl"), e.getMessage());
    }
  }
}
