package merese.exchange.skos;

import com.apicatalog.jsonld.JsonLdError;
import com.apicatalog.jsonld.JsonLdErrorCode;
import com.apicatalog.jsonld.JsonLdOptions;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.SequenceInputStream;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import merese.exchange.FilePlace;
import merese.exchange.UnreadableException;
import org.apache.jena.graph.Node;
import org.apache.jena.graph.Triple;
import org.apache.jena.riot.Lang;
import org.apache.jena.riot.RDFParser;
import org.apache.jena.riot.RDFParserBuilder;
import org.apache.jena.riot.lang.LangJSONLD11;
import org.apache.jena.riot.system.ErrorHandler;
import org.apache.jena.riot.system.StreamRDFBase;
import org.apache.jena.sparql.core.Quad;

/** Reads the statements of a file through Apache Jena. Nothing is fetched. */
final class RdfFile {
  /** Megabytes; Turtle, N-Triples and RDF/XML are read as a stream. */
  static final int LARGEST = 256;

  /** Megabytes; a JSON-LD file is held in memory whole. */
  static final int LARGEST_JSON = 32;

  private static final int MOST_WARNINGS = 200;
  private static final String DETAIL = "message=";
  private static final String BAD_IRI = "Bad IRI: <";
  private static final String BAD_TAG = "Language not valid: ";
  private static final String XSD_STRING = "http://www.w3.org/2001/XMLSchema#string";

  private final String file;
  private final SkosSyntax syntax;
  private final String base;
  private final Statements statements;
  private final List<String> warnings = new ArrayList<>();

  private RdfFile(String file, SkosSyntax syntax, String base) {
    this.file = file;
    this.syntax = syntax;
    this.base = base;
    this.statements = new Statements(file);
  }

  /** The statements of a file, with what is odd about it and was read all the same. */
  record Parsed(SkosSyntax syntax, Statements statements, List<String> warnings) {}

  /**
   * @param syntax by the file's name or its beginning where it is empty
   * @param base what relative addresses are resolved against
   */
  static Parsed parse(String file, Optional<SkosSyntax> syntax, String base, InputStream in)
      throws IOException {
    byte[] head = in.readNBytes(XmlProlog.LONGEST);
    SkosSyntax known =
        syntax.or(() -> SkosSyntax.ofName(file)).orElseGet(() -> SkosSyntax.ofBeginning(head));
    RdfFile reading = new RdfFile(file, known, base);
    reading.parse(head, new SequenceInputStream(new ByteArrayInputStream(head), in));
    return new Parsed(known, reading.statements, List.copyOf(reading.warnings));
  }

  private void parse(byte[] head, InputStream whole) throws IOException {
    String format = syntax.words();
    int most = syntax == SkosSyntax.JSON_LD ? LARGEST_JSON : LARGEST;
    Limited in = new Limited(whole, file, format, most);
    try {
      read(head, in);
    } catch (UnreadableException e) {
      if (in.failure().isPresent()) {
        throw in.failure().get(); // no fault of the file
      }
      throw e;
    }
  }

  private void read(byte[] head, InputStream in) throws IOException {
    String format = syntax.words();
    switch (syntax) {
      case TURTLE -> jena(Lang.TURTLE, new Utf8Stream(in, file, format));
      case N_TRIPLES -> jena(Lang.NTRIPLES, new Utf8Stream(in, file, format));
      case RDF_XML -> {
        XmlProlog.check(file, head);
        jena(Lang.RDFXML, in);
      }
      case JSON_LD -> {
        byte[] json = new Utf8Stream(in, file, format).readAllBytes();
        JsonLdScan.check(file, json);
        jena(Lang.JSONLD, new ByteArrayInputStream(json));
      }
    }
  }

  /** Jena has marked the option for removal and gives no other; without it tags are rewritten. */
  @SuppressWarnings("removal")
  private void jena(Lang lang, InputStream in) {
    RDFParserBuilder parser =
        RDFParser.create()
            .source(in)
            .forceLang(lang)
            .base(base)
            .langTagAsGiven()
            .errorHandler(new Faults())
            .set(LangJSONLD11.JSONLD_OPTIONS, jsonLd());
    try {
      parser.parse(new Sink());
    } catch (RuntimeException e) {
      throw cause(e);
    } catch (StackOverflowError e) {
      // Jena reads what is nested by calling itself.
      throw new UnreadableException(
          file,
          "what is written inside brackets or elements nests too deeply",
          "write the concepts one beside the other");
    }
  }

  /**
   * Jena wraps what a stream throws, and now and then stumbles over a broken file by an exception
   * of its own.
   */
  private UnreadableException cause(RuntimeException e) {
    for (Throwable at = e; at != null; at = at.getCause()) {
      if (at instanceof UnreadableException known) {
        return known;
      }
    }
    return refused(0, 0, e.getMessage());
  }

  private static JsonLdOptions jsonLd() {
    return new JsonLdOptions(
        (address, options) -> {
          throw new JsonLdError(
              JsonLdErrorCode.LOADING_REMOTE_CONTEXT_FAILED, "nothing is fetched: " + address);
        });
  }

  private UnreadableException refused(long line, long column, String said) {
    String what = said == null ? "unknown fault" : said.strip();
    int at = what.startsWith("[line:") ? what.indexOf(']') : -1;
    what = at < 0 ? what : what.substring(at + 1).strip();
    int detail = what.startsWith("JsonLdError[") ? what.indexOf(DETAIL) : -1;
    if (detail >= 0) {
      what = what.substring(detail + DETAIL.length(), what.length() - 1);
    }
    what = what.endsWith(".") ? what.substring(0, what.length() - 1) : what;
    return new UnreadableException(
        new FilePlace(file, (int) Math.max(0, line), (int) Math.max(0, column), 0),
        "this can't be read as " + syntax.words() + ": " + what,
        "mend it there, or name the file for what it is (.ttl, .nt, .rdf, .jsonld)");
  }

  private void warn(String message) {
    if (warnings.size() < MOST_WARNINGS && !warnings.contains(message)) {
      warnings.add(message);
    }
  }

  private final class Faults implements ErrorHandler {
    @Override
    public void warning(String message, long line, long column) {
      warn((line > 0 ? "line " + line + ": " : "") + inOurWords(message));
    }

    /** The two that occur in good faith; Jena's words say nothing to most people. */
    private static String inOurWords(String message) {
      int end = message.indexOf('>');
      if (message.startsWith(BAD_IRI) && end > 0) {
        String address = message.substring(BAD_IRI.length(), end);
        return "the address <" + address + "> is not well formed; taken as it stands";
      }
      return message.startsWith(BAD_TAG)
          ? "\"" + message.substring(BAD_TAG.length()) + "\" is no language tag; taken as it stands"
          : message;
    }

    @Override
    public void error(String message, long line, long column) {
      throw refused(line, column, message);
    }

    @Override
    public void fatal(String message, long line, long column) {
      throw refused(line, column, message);
    }
  }

  private final class Sink extends StreamRDFBase {
    @Override
    public void triple(Triple triple) {
      Node object = triple.getObject();
      if (triple.getSubject().isTripleTerm() || object.isTripleTerm()) {
        warn("a statement about a statement is left out");
        return;
      }
      statements.add(
          name(triple.getSubject()),
          triple.getPredicate().getURI(),
          object.isLiteral() ? literal(object) : new RdfTerm.Resource(name(object)));
    }

    @Override
    public void quad(Quad quad) {
      if (!quad.isDefaultGraph()) {
        statements.inNamedGraphs++;
      }
      triple(quad.asTriple());
    }

    private String name(Node node) {
      return node.isBlank() ? statements.blank(node.getBlankNodeLabel()) : node.getURI();
    }

    private RdfTerm literal(Node node) {
      String tag = node.getLiteralLanguage();
      String type = node.getLiteralDatatypeURI();
      boolean plain = !tag.isEmpty() || type == null || type.equals(XSD_STRING);
      return new RdfTerm.Literal(
          node.getLiteralLexicalForm(),
          tag.isEmpty() ? Optional.empty() : Optional.of(tag),
          plain ? Optional.empty() : Optional.of(type));
    }
  }
}
