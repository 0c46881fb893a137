package merese.search;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Words are marked as they are printed, whatever they fold to. */
class HighlightsTest {
  private static String marked(String question, Part part, String text) {
    StringBuilder marked = new StringBuilder(text);
    List<Highlights.Mark> marks = new Highlights(FindQuery.parse(question)).in(part, text);
    for (int i = marks.size() - 1; i >= 0; i--) {
      marked.insert(marks.get(i).end(), "»").insert(marks.get(i).start(), "«");
    }
    return marked.toString();
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '`',
      value = {
        "mold          | a mould and a moulded body | a «mould» and a moulded body",
        "moulded       | MOULDED and molded         | «MOULDED» and «molded»",
        "knife edged   | the knife-edged rings      | the «knife-edged» rings",
        "ring          | Rings, ringed; string      | «Rings», «ringed»; string",
        "pied ourle    | Le pied ourlé est plié     | Le «pied ourlé» est plié",
        "century       | two centuries’ use         | two «centuries»’ use",
        "ships         | a ship's decanter          | a «ship's» decanter",
        "\"wet hand\"  | a hand, a wet hand, wet    | a hand, a «wet hand», wet",
        "knife*        | knife-edge, knifes, knives | «knife»-edge, «knifes», knives",
        "ring NOT wet  | a wet ring                 | a wet «ring»",
        "é             | 𝒜 e\u0301 é                 | 𝒜 «e\u0301 é»",
        "title:ring    | a ring                     | a ring",
        "quote:ring    | a ring                     | a «ring»",
      })
  void inAQuotation(String question, String text, String expected) {
    assertEquals(expected, marked(question, Part.QUOTATION, text));
  }
}
