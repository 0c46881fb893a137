package merese.exchange.bibtex;

import java.io.IOException;
import java.io.StringWriter;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import merese.exchange.Outgoing;
import merese.model.Edition;
import merese.model.Note;
import merese.shelf.Shelf;
import merese.shelf.Source;
import merese.shelf.SourcedNote;

/** Whole libraries as files. */
final class BibExports {
  private BibExports() {}

  /** All sources of a library, and the parts that somebody signed. */
  static List<Outgoing> sources(Shelf shelf) {
    List<Outgoing> all = new ArrayList<>();
    for (Source source : shelf.sources()) {
      List<Note> notes = shelf.notesOf(source).stream().map(SourcedNote::note).toList();
      Stream<Optional<Edition.Part>> parts =
          source.edition().parts().stream().filter(p -> !p.authors().isEmpty()).map(Optional::of);
      Stream.concat(Stream.of(Optional.<Edition.Part>empty()), parts)
          .map(part -> new Outgoing(source.work(), source.edition(), part, notes))
          .forEach(all::add);
    }
    return all;
  }

  static String of(Shelf shelf, Flavour flavour) throws IOException {
    StringWriter out = new StringWriter();
    new BibtexWriter(
            flavour,
            shelf.thesaurus()::label,
            shelf.sources().stream().map(Source::edition).toList())
        .write(sources(shelf), List.of(), out);
    return out.toString();
  }
}
