package merese.exchange.bibtex;

import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import java.util.function.UnaryOperator;
import merese.exchange.Outgoing;
import org.jbibtex.BibTeXDatabase;
import org.jbibtex.BibTeXEntry;
import org.jbibtex.BibTeXFormatter;
import org.jbibtex.Key;
import org.jbibtex.StringValue;

/**
 * Writes sources as a .bib file for BibTeX and its successors.
 *
 * <p>Guarantees: the same sources give the same text, sorted by key; every entry is whole on its
 * own, without cross-references; what comes from a library is literal text, of which nothing is a
 * command to BibTeX or LaTeX; lines end in a line feed. See {@code LatexText} for what is ASCII and
 * what UTF-8.
 */
public final class BibtexExport {
  private final BibtexKeys keys;
  private final UnaryOperator<String> labels;

  /**
   * @param ids of all sources of the library, so that a source has the same key in each export
   * @param labels the label of a concept, by its id
   */
  public BibtexExport(Collection<String> ids, UnaryOperator<String> labels) {
    this.keys = new BibtexKeys(ids);
    this.labels = labels;
  }

  /**
   * The sources, each once, as the text of a file.
   *
   * @throws IllegalArgumentException for a source whose id is not among those of the library
   */
  public String write(Collection<Outgoing> sources) {
    List<Outgoing> sorted =
        sources.stream().sorted(Comparator.comparing(source -> keyOf(source))).toList();
    BibTeXDatabase database = new BibTeXDatabase();
    sorted.forEach(source -> database.addObject(entry(source)));
    StringWriter out = new StringWriter();
    try {
      BibTeXFormatter formatter = new BibTeXFormatter();
      formatter.setIndent("  ");
      formatter.format(database, out);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    String text = out.toString();
    return text.isEmpty() || text.endsWith("\n") ? text : text + "\n";
  }

  private String keyOf(Outgoing source) {
    String key = keys.of(source.id());
    if (key == null) {
      throw new IllegalArgumentException(source.id() + " is no source of the library");
    }
    return key;
  }

  private BibTeXEntry entry(Outgoing source) {
    EntryMaker.Made made = EntryMaker.make(source, labels);
    BibTeXEntry entry = new BibTeXEntry(new Key(made.type().code()), new Key(keyOf(source)));
    made.fields()
        .forEach(
            (name, latex) ->
                entry.addField(new Key(name), new StringValue(latex, StringValue.Style.BRACED)));
    return entry;
  }
}
