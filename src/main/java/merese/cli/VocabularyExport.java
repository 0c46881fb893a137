package merese.cli;

import java.io.IOException;
import java.io.Writer;
import merese.exchange.skos.SkosAddresses;
import merese.exchange.skos.SkosWriter;
import merese.shelf.Shelf;

/** The only class that loads what writes SKOS, so that no other command pays for it. */
final class VocabularyExport {
  private VocabularyExport() {}

  /** Writes a library's vocabulary as SKOS in Turtle, and says how much that was. */
  static String write(Shelf shelf, Writer out) throws IOException {
    new SkosWriter(SkosAddresses.usual(), shelf.settings().title(), shelf.settings().language())
        .write(shelf.thesaurus(), shelf.kept(), out);
    return Page.many(shelf.thesaurus().concepts().size(), "concept");
  }
}
