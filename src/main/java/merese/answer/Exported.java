package merese.answer;

import java.io.IOException;
import java.io.Writer;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import merese.exchange.Outgoing;
import merese.exchange.RecordWriter;
import merese.exchange.bibtex.BibtexWriter;
import merese.exchange.bibtex.Flavour;
import merese.exchange.csl.CslJsonWriter;
import merese.exchange.csv.CsvWriter;
import merese.exchange.marc.MarcXmlWriter;
import merese.model.Edition;
import merese.model.Note;
import merese.shelf.Shelf;
import merese.shelf.Source;
import merese.shelf.SourcedNote;

/** Sources with their notes, for other programs. */
public final class Exported {
  /** The formats that sources are given out in. */
  public enum Format {
    BIBTEX("bibtex"),
    BIBLATEX("biblatex"),
    CSL_JSON("csl-json"),
    MARCXML("marcxml"),
    CSV("csv");

    private final String code;

    Format(String code) {
      this.code = code;
    }

    /** What {@code --as} calls it. */
    public String code() {
      return code;
    }
  }

  private Exported() {}

  /**
   * Writes the sources of a choice.
   *
   * @return how many records were written
   * @throws UnknownSourceException for a key that no source has
   */
  public static int write(Shelf shelf, SourceChoice choice, Format format, Writer out)
      throws IOException {
    Map<String, Outgoing> chosen = new LinkedHashMap<>();
    Map<Source, List<Note>> notes = new LinkedHashMap<>();
    for (NamedSource named : choice.of(shelf)) {
      Source source = named.source();
      Outgoing record =
          new Outgoing(
              source.work(),
              source.edition(),
              named.part(),
              notes.computeIfAbsent(source, s -> notes(shelf, s)));
      chosen.put(record.id(), record);
    }
    writer(shelf, format).write(chosen.values(), shelf.kept(), out);
    return chosen.size();
  }

  private static RecordWriter writer(Shelf shelf, Format format) {
    return switch (format) {
      case BIBTEX -> bib(shelf, Flavour.BIBTEX);
      case BIBLATEX -> bib(shelf, Flavour.BIBLATEX);
      case CSL_JSON -> new CslJsonWriter();
      case MARCXML -> new MarcXmlWriter();
      case CSV -> new CsvWriter();
    };
  }

  /** It knows the whole library, so that a source has the same key in each export. */
  private static RecordWriter bib(Shelf shelf, Flavour flavour) {
    List<Edition> library = shelf.sources().stream().map(Source::edition).toList();
    return new BibtexWriter(flavour, shelf.thesaurus()::label, library);
  }

  private static List<Note> notes(Shelf shelf, Source source) {
    return shelf.notesOf(source).stream().map(SourcedNote::note).toList();
  }
}
