package merese.answer.quote;

import static merese.testing.SmallLibrary.edition;
import static merese.testing.SmallLibrary.monograph;
import static merese.testing.SmallLibrary.own;
import static merese.testing.SmallLibrary.says;
import static merese.testing.SmallLibrary.withEditions;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.StringJoiner;
import merese.answer.Correction;
import merese.answer.TermException;
import merese.answer.UnknownSourceException;
import merese.answer.quote.Quotations.Grouped;
import merese.answer.quote.Quotations.Quotation;
import merese.answer.quote.Quotations.Section;
import merese.citation.Citations;
import merese.citation.Output;
import merese.model.Note;
import merese.model.PageBreaks;
import merese.shelf.Shelf;
import merese.shelf.Source;
import merese.shelf.SourcedNote;
import merese.testing.DemoLibrary;
import merese.testing.Shuffles;
import merese.testing.SmallLibrary;
import merese.testing.SmallLibrary.NoteMaker;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Whole answers, again with names, ids and order shuffled; names and titles are invented. */
class QuotingTest {
  private static final Citations CITATIONS = Citations.inStyle("mhra-notes", "en-GB");

  @TempDir private Path folder;

  private void assertAnswer(SmallLibrary library, QuoteQuestion question, String expected) {
    Shuffles.assertAnswer(
        folder, library, "", expected, (shelf, named) -> lines(ask(shelf, question), false));
  }

  private static Quotations ask(Shelf shelf, QuoteQuestion question) {
    return Quoting.answer(shelf, question, CITATIONS, Output.TEXT);
  }

  private static String lines(Quotations answer, boolean cited) {
    StringJoiner lines = new StringJoiner("\n", "", "\n");
    for (Section section : answer.sections()) {
      lines.add(
          section.count() + " from " + section.sources() + ", " + section.without() + " without");
      for (Grouped grouped : section.groups()) {
        for (Quotation each : grouped.quotations()) {
          lines.add(
              grouped.group()
                  + " "
                  + each.source().reference()
                  + " "
                  + each.places()
                  + ": "
                  + each.words()
                  + (each.narrower() ? " (" + each.concepts().get(0).id() + ")" : "")
                  + each.doubt().map(d -> " (" + d + ")").orElse("")
                  + (each.correction() ? " corrects " + each.corrects() : "")
                  + (cited ? " / " + each.citation() : ""));
          for (Correction correction : each.corrected()) {
            lines.add(
                "  by "
                    + correction.by().reference()
                    + " "
                    + correction.at()
                    + " "
                    + correction.words());
          }
        }
      }
    }
    return lines.toString();
  }

  private static NoteMaker blade(String page) {
    return says("bladed ring", "ring-bladed").text(page);
  }

  /** Domain, R1, R3, R4 (years and authors), R5, R9 and A 15. */
  @Test
  void quotesTheExactThenTheNarrowerAndTheRestApart() {
    assertAnswer(
        new SmallLibrary()
            .book(
                "Quenby",
                1949,
                "Neck and Stopper",
                blade("p. 70").quotes("A blade, so call'd, it is."),
                blade("pp. 41–42").quotes("the antient [sic] ring of re|vival days …"),
                blade("p. 9"))
            .book(
                "Tressick",
                1926,
                "Cut and Blown",
                says("feathered ring", "ring-feathered").text("p. 3").quotes("like a feather"),
                says("neck ring", "neck-ring").text("p. 5").quotes("any ring at all"))
            .book("Haskeld", 1983, "A Primer", blade("p. 5").quotes("sharp"))
            .book(
                "Lathbury",
                1930,
                "Wine",
                says("bladed ring", "ring-bladed").absent("p. 11").quotes("not shown here"))
            .work(own(monograph("Ruddick", 1920, "My Talk", blade("p. 1").quotes("I say blade")))),
        QuoteQuestion.of("ring-bladed"),
        """
        5 from 3, 1 without
        COUNTED Quenby 1949 [pp. 41–42]: the antient [sic] ring of re[41|42]vival days …
        COUNTED Quenby 1949 [p. 70]: A blade, so call'd, it is.
        COUNTED Haskeld 1983 [p. 5]: sharp
        SAYS_NOT_SHOWN Lathbury 1930 [p. 11]: not shown here
        OWN_WORK Ruddick 1920 [p. 1]: I say blade
        """);
  }

  @Test
  void whatIsNarrowerIsSaidToBeSoAndComesAfterWhatIsExact() {
    assertAnswer(
        new SmallLibrary()
            .book("Quenby", 1926, "Neck and Stopper", blade("p. 41").quotes("a sharp one"))
            .book(
                "Tressick",
                1954,
                "Cut and Blown",
                says("neck ring", "neck-ring").text("p. 5").quotes("any ring at all")),
        QuoteQuestion.of("neck-ring"),
        """
        2 from 2, 0 without
        COUNTED Tressick 1954 [p. 5]: any ring at all
        COUNTED Quenby 1926 [p. 41]: a sharp one (ring-bladed)
        """);
  }

  /** An erratum stands beside what it corrects, and beside nothing else. */
  @Test
  void aCorrectionStandsBesideWhatItCorrects() {
    assertAnswer(
        new SmallLibrary()
            .work(
                withEditions(
                    monograph("Quenby", 1926, "Neck and Stopper"),
                    edition(
                        "quenby-1926",
                        1926,
                        blade("p. 61").quotes("the sharp ring"),
                        blade("p. 62").quotes("another page"),
                        says("rounded ring", "ring-plain").text("p. 60").quotes("a round one"),
                        says("folded foot", "foot-folded").text("p. 61").quotes("a fold")),
                    edition(
                        "quenby-1949",
                        1949,
                        blade("p. 61").quotes("the same page of another edition"),
                        blade("p. 70")
                            .corrects("p. 70, n. 1", "quenby-1926", "pp. 60–61")
                            .quotes("for sharp read bladed"))))
            .book(
                "Farrow",
                1930,
                "What Was It",
                blade("p. 8").corrects("p. 9", "quenby-1926", null).quotes("all wrong"))
            .book("Ollerby", 1931, "Cords", correcting("p. 50").quotes("a figure was turned")),
        new QuoteQuestion(
            List.of("ring-bladed", "foot-folded"), Optional.empty(), List.of(), Optional.empty()),
        """
        6 from 4, 0 without
        COUNTED Quenby 1926 [p. 61]: the sharp ring
          by Farrow 1930 [p. 9] [all wrong]
          by Quenby 1949 [p. 70, n. 1] [for sharp read bladed]
        COUNTED Quenby 1926 [p. 62]: another page
          by Farrow 1930 [p. 9] [all wrong]
        COUNTED Farrow 1930 [p. 8, p. 9]: all wrong corrects [Quenby 1926]
        COUNTED Ollerby 1931 [p. 50]: a figure was turned corrects []
        COUNTED Quenby 1949 [p. 61]: the same page of another edition
        COUNTED Quenby 1949 [p. 70, p. 70, n. 1]: for sharp read bladed corrects [Quenby 1926, pp. 60–61]
        1 from 1, 0 without
        COUNTED Quenby 1926 [p. 61]: a fold
        """);
  }

  private static NoteMaker correcting(String page) {
    return says("bladed ring", "ring-bladed")
        .place(
            page,
            merese.model.Place.Stance.CORRECTS,
            merese.model.Place.Medium.TEXT,
            null,
            null,
            null);
  }

  @Test
  void aCorrectionThatChangesTheMeaningStandsBesideItsPlaceAlone() {
    assertAnswer(
        new SmallLibrary()
            .book(
                "Norrish",
                1971,
                "The Ringed Decanter",
                says("square ring", "ring-square").text("p. 9").quotes("a square ring"),
                says("square ring", "ring-square").text("p. 10").quotes("once more"))
            .book(
                "Farrow",
                1988,
                "What Was It",
                blade("p. 2").corrects("p. 3", "norrish-1971", "p. 9").quotes("it is a blade")),
        QuoteQuestion.of("ring-square"),
        """
        2 from 1, 0 without
        COUNTED Norrish 1971 [p. 9]: a square ring
          by Farrow 1988 [p. 3] [it is a blade]
        COUNTED Norrish 1971 [p. 10]: once more
        """);
  }

  @Test
  void aSourceIsQuotedInPhysicalOrderAndWordsNarrowIt() {
    SmallLibrary library =
        new SmallLibrary()
            .book(
                "Quenby",
                1926,
                "Neck and Stopper",
                blade("p. 70").quotes("knife-edged rings"),
                says("folded foot", "foot-folded").text("p. iv").quotes("a welt | of metal"),
                says("collar", "neck-ring").text("p. 100").quotes("knives, and ring-shaped edges"),
                blade("p. 9"));
    try (Shelf shelf = library.open(folder.resolve("one"))) {
      assertEquals(
          """
          3 from 1, 1 without
          COUNTED Quenby 1926 [p. iv]: a welt [|] of metal (a page break is marked, and no place in words names 2 pages) / Quenby, Neck and Stopper (1926), p. iv.
          COUNTED Quenby 1926 [p. 70]: knife-edged rings / Quenby, Neck and Stopper, p. 70.
          COUNTED Quenby 1926 [p. 100]: knives, and ring-shaped edges / Quenby, Neck and Stopper, p. 100.
          """,
          lines(ask(shelf, QuoteQuestion.ofSource("quenby-1926")), true));
      QuoteQuestion knives =
          new QuoteQuestion(
              List.of(), Optional.empty(), List.of("quenby-1926"), Optional.of("Knife edged ring"));
      assertEquals(
          "1 from 1, 3 without\nCOUNTED Quenby 1926 [p. 70]: knife-edged rings\n",
          lines(ask(shelf, knives), false));
    }
  }

  /** "Quenby, Neck and Stopper" alone would not say which edition has the page. */
  @Test
  void aLaterMentionIsShortOnlyWhereItNamesOneEdition() {
    SmallLibrary library =
        new SmallLibrary()
            .work(
                withEditions(
                    monograph("Quenby", 1926, "Neck and Stopper"),
                    edition(
                        "quenby-1926", 1926, blade("p. 1").quotes("a"), blade("p. 2").quotes("b")),
                    edition("quenby-1949", 1949, blade("p. 3").quotes("c"))));
    try (Shelf shelf = library.open(folder.resolve("two"))) {
      List<String> citations =
          ask(shelf, QuoteQuestion.of("ring-bladed"))
              .sections()
              .get(0)
              .groups()
              .get(0)
              .quotations()
              .stream()
              .map(Quotation::citation)
              .toList();
      assertEquals(
          List.of(
              "Quenby, Neck and Stopper (1926), p. 1.",
              "Quenby, Neck and Stopper (1926), p. 2.",
              "Quenby, Neck and Stopper (1949), p. 3."),
          citations);
    }
  }

  @Test
  void whereNothingIsNotedNothingIsQuoted() {
    try (Shelf shelf =
        new SmallLibrary().book("Quenby", 1926, "Neck", blade("p. 1")).open(folder.resolve("e"))) {
      Quotations answer = ask(shelf, QuoteQuestion.of("ring-bladed"));
      assertTrue(answer.isEmpty());
      assertEquals("0 from 0, 1 without\n", lines(answer, false));
      assertEquals(List.of(), answer.legend());
      assertThrows(TermException.class, () -> ask(shelf, QuoteQuestion.of("no such word")));
      assertThrows(
          UnknownSourceException.class, () -> ask(shelf, QuoteQuestion.ofSource("quenby-1927")));
    }
  }

  /** Every quotation of the demo is quoted once from its source, letter by letter. */
  @Test
  void everyQuotationOfTheDemoIsANoteWordForWord() throws IOException {
    try (Shelf shelf = DemoLibrary.open(folder)) {
      int quoted = 0;
      int numbered = 0;
      int corrected = 0;
      for (Source source : shelf.sources()) {
        Quotations answer = ask(shelf, QuoteQuestion.ofSource(source.key()));
        for (Grouped grouped : answer.sections().get(0).groups()) {
          for (Quotation each : grouped.quotations()) {
            Note note =
                shelf.notesOf(source).stream()
                    .map(SourcedNote::note)
                    .filter(n -> n.id().equals(each.note()))
                    .findFirst()
                    .orElseThrow();
            assertEquals(PageBreaks.of(note).marked(), each.words());
            String plain = each.words().replaceAll("\\[[0-9ivxl]*\\|[0-9ivxl]*\\]", "|");
            assertEquals(note.quotation().orElseThrow(), plain);
            assertFalse(each.places().isEmpty());
            quoted++;
            numbered += each.pages().isEmpty() ? 0 : 1;
            corrected += each.corrected().size();
          }
        }
      }
      long all =
          shelf.sources().stream()
              .flatMap(s -> shelf.notesOf(s).stream())
              .filter(n -> n.note().quotation().isPresent())
              .count();
      assertEquals(all, quoted);
      assertTrue(numbered >= 2, "quotations over a page: " + numbered);
      assertTrue(corrected >= 5, "corrected quotations: " + corrected);
    }
  }
}
