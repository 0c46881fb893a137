package merese.answer;

import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import merese.exchange.Outgoing;
import merese.exchange.bibtex.BibtexWriter;
import merese.exchange.bibtex.Flavour;
import merese.model.Edition;
import merese.model.Note;
import merese.shelf.Shelf;
import merese.shelf.Source;
import merese.shelf.SourcedNote;

/** Sources with their notes, for other programs. */
public final class Exported {
  private Exported() {}

  /**
   * Some sources as BibTeX, or all of them. Parts that somebody signed are sources of their own;
   * they are among all, and among some where they are named.
   *
   * @param typed keys, each with a part's id after "#" where just that is wanted; none for all
   * @throws UnknownSourceException for a key that no source has
   */
  public static String bibtex(Shelf shelf, List<String> typed) {
    Map<String, Outgoing> all = new LinkedHashMap<>();
    List<Edition> library = shelf.sources().stream().map(Source::edition).toList();
    if (typed.isEmpty()) {
      shelf.sources().forEach(source -> addAll(shelf, source, all));
    }
    for (String word : typed) {
      NamedSource named = NamedSource.find(shelf, word);
      add(named.source(), named.part(), notes(shelf, named.source()), all);
    }
    StringWriter out = new StringWriter();
    try {
      new BibtexWriter(Flavour.BIBTEX, shelf.thesaurus()::label, library)
          .write(all.values(), List.of(), out);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return out.toString();
  }

  private static void addAll(Shelf shelf, Source source, Map<String, Outgoing> all) {
    List<Note> notes = notes(shelf, source);
    add(source, Optional.empty(), notes, all);
    for (Edition.Part part : source.edition().parts()) {
      if (!part.authors().isEmpty()) {
        add(source, Optional.of(part), notes, all);
      }
    }
  }

  private static void add(
      Source source, Optional<Edition.Part> part, List<Note> notes, Map<String, Outgoing> all) {
    Outgoing made = new Outgoing(source.work(), source.edition(), part, notes);
    all.put(made.id(), made);
  }

  private static List<Note> notes(Shelf shelf, Source source) {
    return shelf.notesOf(source).stream().map(SourcedNote::note).toList();
  }
}
