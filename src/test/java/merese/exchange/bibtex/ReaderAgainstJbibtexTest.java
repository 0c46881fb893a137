package merese.exchange.bibtex;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.io.InputStream;
import java.io.StringReader;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import merese.exchange.Incoming;
import merese.model.ReceivedRecord;
import org.jbibtex.BibTeXDatabase;
import org.jbibtex.BibTeXEntry;
import org.jbibtex.BibTeXObject;
import org.jbibtex.BibTeXParser;
import org.jbibtex.BibTeXPreamble;
import org.jbibtex.Key;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * Every entry and field of two published files, against jbibtex 1.0.20, which reads them with a
 * grammar of its own: checks/xampl.bib (O. Patashnik) and checks/biblatex-examples.bib.
 */
class ReaderAgainstJbibtexTest {
  /** It stops at a cross-reference in other capitals, unless it is told not to. */
  private static final class Lenient extends BibTeXParser {
    Lenient() throws org.jbibtex.ParseException {}

    @Override
    public void checkCrossReferenceResolution(Key key, BibTeXEntry entry) {}
  }

  private static byte[] file(String name) throws IOException {
    try (InputStream in =
        ReaderAgainstJbibtexTest.class.getResourceAsStream("/merese/checks/" + name)) {
      return in.readAllBytes();
    }
  }

  @ParameterizedTest
  @ValueSource(strings = {"xampl.bib", "biblatex-examples.bib"})
  void everyEntryAndFieldIsInTheReceivedRecord(String name) throws Exception {
    byte[] bytes = file(name);
    Handed handed = Handed.read(bytes);
    assertEquals(List.of(), handed.refused);
    List<String> ours = new ArrayList<>();
    handed.sources.stream().map(Incoming::received).forEach(r -> ours.add(lines(r)));
    handed.kept.forEach(r -> ours.add(lines(r)));
    List<String> theirs = theirs(new String(bytes, StandardCharsets.UTF_8));
    assertEquals(
        String.join("\n", theirs.stream().sorted().toList()),
        String.join("\n", ours.stream().sorted().toList()));
  }

  private static String lines(ReceivedRecord record) {
    StringBuilder lines = new StringBuilder(record.type() + " " + record.id() + "\n");
    record.fields().stream()
        .map(f -> f.name() + " = " + StoredValue.text(f.value()).orElseThrow() + "\n")
        .sorted()
        .forEach(lines::append);
    return lines.toString();
  }

  private static List<String> theirs(String text) throws Exception {
    String withoutText = text.replaceAll("(?m)^[A-Za-z].*$", ""); // jbibtex stops at it
    BibTeXDatabase database = new Lenient().parse(new StringReader(withoutText));
    List<String> theirs = new ArrayList<>();
    for (BibTeXObject object : database.getObjects()) {
      if (object instanceof BibTeXEntry entry) {
        StringBuilder lines = new StringBuilder(lower(entry.getType()) + " " + entry.getKey());
        List<String> fields = new ArrayList<>();
        entry
            .getFields()
            .forEach(
                (key, value) -> fields.add(lower(key) + " = " + collapsed(value.toUserString())));
        lines.append('\n');
        fields.stream().sorted().forEach(f -> lines.append(f).append('\n'));
        theirs.add(lines.toString());
      } else if (object instanceof BibTeXPreamble preamble) {
        theirs.add("preamble \ntext = " + collapsed(preamble.getValue().toUserString()) + "\n");
      }
    }
    return theirs;
  }

  private static String lower(Key key) {
    return key.getValue().toLowerCase(Locale.ROOT);
  }

  private static String collapsed(String value) {
    return value.strip().replaceAll("\\s+", " ");
  }
}
