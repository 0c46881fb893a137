package merese.exchange.skos;

import java.io.IOException;
import java.io.InputStream;
import java.util.Optional;
import merese.exchange.UnreadableException;

/**
 * Reads a vocabulary in SKOS from Turtle, N-Triples, RDF/XML or JSON-LD.
 *
 * <p>Guarantees: nothing is fetched, neither an entity nor a context nor an import; a fault of the
 * syntax is an {@link UnreadableException} with file, line and column; a concept that breaks a
 * condition of SKOS changes none of the others. Statements about anything but concepts, collections
 * and schemes are left out with a remark.
 *
 * <p>Of the conditions of the SKOS Reference, S9, S14 and S37 refuse the concept: nothing tells
 * whether it is one, or which of two labels is preferred, since the order of a file means nothing
 * in RDF. S13, S27 and S46 take it with a remark: a label stated twice over is one label, kept as
 * the stronger kind; of a concept that is both related and broader the hierarchy stays; of matches
 * to one concept that contradict each other none is taken.
 */
public final class SkosReader {
  /**
   * What the relative addresses of a file are resolved against that names no base of its own; by
   * RFC 2606 a name that never leads anywhere. Such addresses identify nothing outside the file.
   */
  public static final String NO_BASE = "https://relative.invalid/";

  private final Optional<SkosSyntax> syntax;
  private final String base;

  private SkosReader(Optional<SkosSyntax> syntax, String base) {
    this.syntax = syntax;
    this.base = base;
  }

  /** A reader that knows the syntax by the file's name or, failing that, by its beginning. */
  public static SkosReader usual() {
    return new SkosReader(Optional.empty(), NO_BASE);
  }

  public SkosReader as(SkosSyntax given) {
    return new SkosReader(Optional.of(given), base);
  }

  /** A reader that resolves relative addresses against a base, where a file names none. */
  public SkosReader withBase(String given) {
    if (!Turtle.isAbsoluteIri(given)) {
      throw new IllegalArgumentException(
          "\"" + given + "\" is no address that others can be resolved against");
    }
    return new SkosReader(syntax, given);
  }

  /**
   * @param file as the user named it, for messages
   * @throws IOException where the stream itself fails
   * @throws UnreadableException where the file is not what it should be
   */
  public SkosReading read(String file, InputStream in) throws IOException {
    RdfFile.Parsed parsed = RdfFile.parse(file, syntax, base, in);
    return new ReadingMaker(file, parsed).make();
  }
}
