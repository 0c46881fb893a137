package merese.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.StringReader;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import javax.swing.text.MutableAttributeSet;
import javax.swing.text.html.HTML;
import javax.swing.text.html.HTMLEditorKit;
import javax.swing.text.html.parser.ParserDelegator;
import merese.shelf.Shelf;
import merese.testing.DemoLibrary;
import merese.testing.HostileLibrary;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The citations are those of the MHRA style as CitationsTest checks it. */
class CiteAndExportTest {
  @TempDir private static Path folder;

  @BeforeAll
  static void copyTheDemo() throws IOException {
    DemoLibrary.copyTo(folder);
  }

  private static Ran merese(String... args) {
    return Ran.in(folder, Map.of("COLUMNS", "80"), args);
  }

  @Nested
  class Cite {
    @Test
    void givesNoteShortNoteAndEntryAndSaysWhichEdition() {
      Ran ran = merese("cite", "quenby-1949", "pl. 31");
      assertEquals(0, ran.code(), ran.err());
      assertEquals(
          """
          Note          Mabel Quenby, Neck and Stopper: Notes on Old Decanters, 2nd edn,
                        revised (Thorne & Aldwick, 1949), pl. 31.
          Short note    Quenby, Neck and Stopper, pl. 31.
          Bibliography  Quenby, Mabel, Neck and Stopper: Notes on Old Decanters, 2nd edn,
                        revised (Thorne & Aldwick, 1949)
          Edition       2nd edn, revised, 1949: one of 4 in this library, beside
                        quenby-1926 (1926); quenby-1968 (3rd edn, 1968); quenby-1977
                        (facsimile of the 1926 edn, 1977)
          """,
          ran.out());
    }

    @Test
    void aloneIsFitForPasting() {
      Ran ran = merese("cite", "quenby-1949", "pl.", "31", "--form", "short");
      assertEquals("Quenby, Neck and Stopper, pl. 31.\n", ran.out());
    }

    @Test
    void takesAPartEitherWay() {
      Ran ran = merese("cite", "osmere-1988#feet", "p. 7", "--form", "short", "--as", "markdown");
      assertEquals("Yarrowby, ‘On Feet’, p. 7.\n", ran.out());
      assertEquals(
          ran,
          merese(
              "cite",
              "osmere-1988",
              "p. 7",
              "--part",
              "feet",
              "--form",
              "short",
              "--as",
              "markdown"));
    }

    @Test
    void namesNoEditionWhereThereIsOne() {
      assertFalse(merese("cite", "tressick-1954").out().contains("Edition"));
    }

    @Test
    void saysWhatAStyleWithoutNotesDoes() {
      Ran ran = merese("cite", "tressick-1954", "--style", "apa");
      assertTrue(ran.out().contains("\nRemark "), ran.out());
      Ran alone = merese("cite", "tressick-1954", "--style", "apa", "--form", "note");
      assertEquals(1, alone.out().lines().count());
      assertTrue(alone.err().contains("This style has no notes"), alone.err());
    }

    @Test
    void ofAnUnknownSourceNamesNearOnes() {
      Ran ran = merese("cite", "tressik-1954");
      assertEquals(1, ran.code());
      assertEquals("", ran.out());
      assertEquals("merese cite: no source tressik-1954; did you mean tressick-1954?\n", ran.err());
      assertEquals(
          "merese cite: no part foot in osmere-1988; its parts are feet, list\n",
          merese("cite", "osmere-1988#foot").err());
    }

    @ParameterizedTest
    @ValueSource(strings = {"p", "plate", "pl. XII fig 3 )"})
    void ofALocatorThatCannotBeReadIsWrongUse(String locator) {
      Ran ran = merese("cite", "quenby-1949", locator);
      assertEquals(2, ran.code());
      assertTrue(
          ran.err().startsWith("merese cite: cannot read the locator \"" + locator + "\""),
          ran.err());
    }

    @Test
    void ofAFormThatIsNoneIsWrongUse() {
      assertEquals(2, merese("cite", "quenby-1949", "--form", "long").code());
      assertEquals(2, merese("cite", "quenby-1949", "--as", "rtf").code());
      assertEquals(2, merese("cite").code());
      assertEquals(2, merese("cite", "osmere-1988#feet", "--part", "list").code());
    }
  }

  @Nested
  class Export {
    @Test
    void writesTheChosenSourcesToStandardOutput() {
      Ran ran = merese("export", "--as", "bibtex", "tressick-1954", "osmere-1988#feet");
      assertEquals(0, ran.code(), ran.err());
      assertEquals(
          List.of("@incollection{osmere-1988:feet,", "@book{tressick-1954,"),
          ran.out().lines().filter(line -> line.startsWith("@")).toList());
    }

    @Test
    void writesAFileAndSaysWhere() throws IOException {
      Ran ran = merese("export", "tressick-1954", "--output", "out.bib");
      assertEquals("", ran.out());
      assertTrue(
          ran.err().endsWith("Wrote 1 record to " + folder.resolve("out.bib") + ".\n"), ran.err());
      assertEquals(
          merese("export", "tressick-1954").out(), Files.readString(folder.resolve("out.bib")));
    }

    @Test
    void ofWhatIsNotThereFails() {
      assertEquals(1, merese("export", "tressik-1954").code());
      assertEquals(2, merese("export", "--as", "bib").code());
      assertEquals(1, merese("export", "-o", "no/such/folder.bib").code());
    }
  }

  @Nested
  class AHostileLibrary {
    @TempDir private Path hostile;

    private String run(String... args) throws IOException {
      try (Shelf shelf = HostileLibrary.make().open(hostile.resolve("library"))) {
        assertFalse(shelf.sources().isEmpty());
      }
      Map<String, String> where = Map.of("MERESE_LIBRARY", hostile.resolve("library").toString());
      Ran ran = Ran.in(hostile, where, args);
      assertEquals(0, ran.code(), ran.err());
      return ran.out();
    }

    @Test
    void isHarmlessInHtml() throws IOException {
      String html = run("reading-list", "bladed ring", "--as", "html");
      List<String> bad = new ArrayList<>();
      List<String> seen = new ArrayList<>();
      HTMLEditorKit.ParserCallback reader =
          new HTMLEditorKit.ParserCallback() {
            @Override
            public void handleStartTag(HTML.Tag tag, MutableAttributeSet attributes, int at) {
              seen.add(tag.toString());
              boolean known =
                  List.of(
                          "html", "head", "meta", "title", "style", "body", "h1", "h2", "ol", "li",
                          "i", "b", "p", "a", "small")
                      .contains(tag.toString());
              attributes
                  .getAttributeNames()
                  .asIterator()
                  .forEachRemaining(name -> check(tag, attributes, name));
              if (!known) {
                bad.add(tag.toString());
              }
            }

            @Override
            public void handleSimpleTag(HTML.Tag tag, MutableAttributeSet attributes, int at) {
              if (tag == HTML.Tag.META) {
                return;
              }
              handleStartTag(tag, attributes, at);
            }

            private void check(HTML.Tag tag, MutableAttributeSet attributes, Object name) {
              Object value = attributes.getAttribute(name);
              boolean link = name == HTML.Attribute.HREF && value.toString().startsWith("https://");
              boolean own = tag == HTML.Tag.HTML && name == HTML.Attribute.LANG;
              boolean implied = name == IMPLIED;
              if (!link && !own && !implied) {
                bad.add(tag + " " + name + "=" + value);
              }
            }
          };
      new ParserDelegator().parse(new StringReader(html), reader, true);
      assertEquals(List.of(), bad);
      assertTrue(seen.contains("li"), html);
    }

    /** CommonMark 0.31: outside code, only an unescaped "<" can begin raw HTML or a link. */
    @Test
    void isHarmlessInMarkdown() throws IOException {
      String markdown = run("reading-list", "bladed ring", "--as", "markdown");
      String literal = markdown.replaceAll("\\\\[\\\\`*_\\[\\]<>~|&#.+=)-]", "");
      String withoutLinks = literal.replaceAll("<https?://[^<> ]*>", "");
      assertFalse(withoutLinks.contains("<"), withoutLinks);
      assertFalse(withoutLinks.contains("]("), withoutLinks);
      assertFalse(withoutLinks.contains("`"), withoutLinks);
      assertTrue(
          markdown
              .lines()
              .allMatch(line -> line.isEmpty() || line.matches("(?:# |## |\\d+\\. |\\*).*")),
          markdown);
    }
  }
}
