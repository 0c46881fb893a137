package merese.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import merese.answer.Coverage.Group;
import merese.answer.Coverage.SourceLine;
import merese.answer.quote.Quotations;
import merese.answer.quote.Quotations.Grouped;
import merese.answer.quote.Quotations.Quotation;
import merese.answer.quote.Quotations.Section;
import merese.citation.Output;
import merese.model.SourceKind;
import org.junit.jupiter.api.Test;

/** Domain, A 15 and F 8: spelling, marks and ellipses stay as they were printed. */
class QuoteDocumentTest {
  private static String document(Output output, String words) {
    SourceLine source =
        new SourceLine(
            "quenby-1926",
            "Quenby 1926",
            "Neck and Stopper",
            SourceKind.MONOGRAPH,
            OptionalInt.of(1926),
            true,
            Optional.empty());
    Quotation quotation =
        new Quotation(
            source,
            "n1",
            List.of(),
            false,
            List.of(),
            words,
            List.of(),
            Optional.empty(),
            "Quenby",
            false,
            List.of(),
            List.of());
    return new QuoteDocument(output)
        .of(
            new Quotations(
                List.of(
                    new Section(
                        Optional.empty(),
                        Optional.of(source),
                        Optional.empty(),
                        1,
                        1,
                        0,
                        List.of(new Grouped(Group.COUNTED, List.of(quotation))))),
                List.of(),
                List.of()));
  }

  @Test
  void marksAsTypedAreNotSetInType() {
    String words = "6 \"sharp\" rings,  neck'd & collar'd <sic> ...";
    assertTrue(
        document(Output.MARKDOWN, words)
            .contains("> 6 \"sharp\" rings,  neck'd & collar'd \\<sic\\> ...\n"),
        document(Output.MARKDOWN, words));
    assertTrue(
        document(Output.HTML, words)
            .contains("6 &quot;sharp&quot; rings,  neck&#39;d &amp; collar&#39;d &lt;sic&gt; ..."));
  }

  @Test
  void linesStayInTheirBlock() {
    String markdown = document(Output.MARKDOWN, "# one\n- two");
    assertEquals(
        List.of("> \\# one\\", "> \\- two"),
        markdown.lines().filter(line -> line.startsWith(">")).toList());
    assertTrue(document(Output.HTML, "one\ntwo").contains("<blockquote>one<br>\ntwo</blockquote>"));
  }
}
