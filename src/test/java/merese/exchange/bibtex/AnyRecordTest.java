package merese.exchange.bibtex;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import merese.exchange.Outgoing;
import merese.model.ReceivedRecord;
import merese.model.ReceivedRecord.Field;
import merese.model.Work;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;

/** Whatever a record holds, though somebody wrote it into the library by hand, is one entry. */
class AnyRecordTest {
  private static final List<String> PIECES =
      List.of(
          "{",
          "}",
          "\\",
          "\"",
          "%",
          "@misc{x,",
          " # ",
          "jul",
          "acm",
          "{a} # b",
          " ",
          "\n",
          "é",
          "\\'e",
          "$",
          "1926",
          "n.d.",
          ",",
          "=",
          "(",
          ")",
          "~",
          "#",
          "Neck: Stopper",
          " and ");

  @Provide
  Arbitrary<List<ReceivedRecord>> records() {
    Arbitrary<String> text =
        Arbitraries.of(PIECES).list().ofMaxSize(8).map(l -> String.join("", l));
    Arbitrary<String> name =
        Arbitraries.oneOf(
            Arbitraries.of(
                "title",
                "author",
                "year",
                "date",
                "note",
                "crossref",
                "xdata",
                "keywords",
                "url",
                "annote",
                "entryset"),
            text.filter(t -> !t.isBlank()));
    Arbitrary<Field> field = Combinators.combine(name, text).as(Field::new);
    return Combinators.combine(
            Arbitraries.of("bibtex", "biblatex"),
            Arbitraries.oneOf(Arbitraries.of("book", "article", "misc", "comment"), text),
            text,
            field.list().ofMaxSize(6))
        .as(ReceivedRecord::new)
        .list()
        .ofMaxSize(4);
  }

  @Property(tries = 300, seed = "8")
  void isWrittenAsOneEntry(@ForAll("records") List<ReceivedRecord> records) throws IOException {
    List<Outgoing> sources = new ArrayList<>();
    for (ReceivedRecord record : records) {
      Work work = BibtexMeaning.of(record, key -> Optional.empty());
      sources.add(BibLibrary.outgoing(work, "source-" + sources.size()));
    }
    BibLibrary library = new BibLibrary(sources, List.of());
    for (Flavour flavour : Flavour.values()) {
      String written = library.written(flavour);
      BibLibrary read = BibLibrary.read(written);
      assertEquals(sources.size(), read.sources().size() + read.kept().size(), written);
      assertTrue(written.isEmpty() || written.endsWith("\n}\n"), written);
    }
  }
}
