package merese.exchange.marc;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.From;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import org.junit.jupiter.api.Test;

/** Against the XML parser of the Java library. */
class PlainXmlTest {
  private static final String RECORD =
      "<m:record a='b' c=\"d\">\n <m:leader>00000nam a2200000 a 4500</m:leader>"
          + "<m:controlfield tag=\"001\">x&#233;&#x1F377;&amp;</m:controlfield>\n"
          + "<m:datafield tag=\"245\" ind1=\"1\" ind2=' ' ><m:subfield code=\"a\">Verre à "
          + "jambe &lt;&gt;&quot;&apos;\n\tx</m:subfield><m:subfield code='b'></m:subfield>"
          + "</m:datafield></m:record>";

  private static final List<String> INSERTS =
      List.of(
          "<",
          ">",
          "&",
          ";",
          "\"",
          "'",
          "/",
          "=",
          " ",
          "\n",
          "\r\n",
          "\u0001",
          "\uffff",
          "]]>",
          "<!-- c -->",
          "<![CDATA[<x>]]>",
          "<?p i?>",
          "&foo;",
          "&#0;",
          "&#xD800;",
          "&#13;",
          "&#x;",
          "a=\"1\"",
          "<m:x/>",
          "#",
          ":",
          "é",
          "\u0085",
          "\u00a0");

  /** A change: some characters are replaced by a text. */
  record Change(double where, int taken, String put) {
    String of(String text) {
      int at = (int) (where * text.length());
      return text.substring(0, at) + put + text.substring(Math.min(text.length(), at + taken));
    }
  }

  @Provide
  Arbitrary<Change> change() {
    return Combinators.combine(
            Arbitraries.doubles().between(0, 1).ofScale(9).filter(d -> d < 1),
            Arbitraries.integers().between(0, 2),
            Arbitraries.of(INSERTS).injectNull(0.1).map(s -> s == null ? "" : s))
        .as(Change::new);
  }

  private static void assertAgrees(String text) {
    Optional<MarcRecord> plain = PlainXml.read(text);
    if (plain.isPresent()) {
      List<String> remarks = new ArrayList<>();
      try {
        MarcRecord whole = new XmlFields().read(text, remarks);
        assertEquals(whole.received(), plain.get().received());
        assertEquals(List.of(), remarks);
      } catch (XmlFields.Broken | BadRecord e) {
        throw new AssertionError("taken, though it is broken: " + text, e);
      }
    }
  }

  @Test
  void aPlainRecordIsRead() {
    assertTrue(PlainXml.read(RECORD).isPresent());
    assertAgrees(RECORD);
  }

  @Test
  void whatTheLibraryWritesIsPlain() throws IOException {
    String xml = new String(SandburgTest.xml(), StandardCharsets.UTF_8);
    int end = xml.indexOf("</record>") + "</record>".length();
    assertTrue(PlainXml.read(xml.substring(xml.indexOf("<record>"), end)).isPresent());
  }

  @Property(tries = 4000, seed = "25577")
  void whatIsReadIsReadAsAParserDoes(@ForAll @From("change") Change change) {
    assertAgrees(change.of(RECORD));
  }

  @Property(tries = 2000, seed = "25577")
  void alsoAfterTwoChanges(
      @ForAll @From("change") Change one, @ForAll @From("change") Change other) {
    assertAgrees(other.of(one.of(RECORD)));
  }
}
