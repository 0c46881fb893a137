package merese.exchange.skos;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonLocation;
import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.JsonToken;
import com.fasterxml.jackson.core.StreamReadConstraints;
import java.io.IOException;
import java.util.ArrayDeque;
import merese.exchange.FilePlace;
import merese.exchange.UnreadableException;

/**
 * Goes through a JSON-LD file before it is read: faults of its JSON are found with line and column,
 * contexts that are to be fetched are refused, and so is what nests too deeply.
 */
final class JsonLdScan {
  private static final int DEEPEST = 200;
  private static final String CONTEXT = "@context";

  private final String file;

  private JsonLdScan(String file) {
    this.file = file;
  }

  static void check(String file, byte[] json) throws IOException {
    new JsonLdScan(file).scan(json);
  }

  private void scan(byte[] json) throws IOException {
    StreamReadConstraints constraints =
        StreamReadConstraints.builder()
            .maxNestingDepth(Integer.MAX_VALUE) // ours comes first, with words of our own
            .maxStringLength(Integer.MAX_VALUE)
            .maxNameLength(Integer.MAX_VALUE)
            .build();
    JsonFactory factory = JsonFactory.builder().streamReadConstraints(constraints).build();
    try (JsonParser parser = factory.createParser(json)) {
      // Whether each open object or array is the value of "@context", itself or as a list.
      ArrayDeque<Boolean> open = new ArrayDeque<>();
      JsonToken token = parser.nextToken();
      if (token == null) {
        throw new UnreadableException(file, "the file is empty", "is it JSON-LD?");
      }
      for (; token != null; token = parser.nextToken()) {
        boolean ofContext = isOfContext(parser, open);
        if (token.isStructStart()) {
          open.push(ofContext && token == JsonToken.START_ARRAY);
          if (open.size() > DEEPEST) {
            throw refused(
                parser.currentTokenLocation(),
                "this nests deeper than " + DEEPEST + ", which is the limit",
                "write the concepts one beside the other");
          }
        } else if (token.isStructEnd()) {
          open.pop();
        } else if (token == JsonToken.VALUE_STRING
            && (ofContext || "@import".equals(parser.currentName()))) {
          throw refused(
              parser.currentTokenLocation(),
              "the context \"" + parser.getText() + "\" would have to be fetched, and nothing is",
              "put what it says into the file in its place");
        }
      }
    } catch (JsonProcessingException e) {
      throw refused(
          e.getLocation(), "this is not JSON: " + e.getOriginalMessage(), "mend it there");
    }
  }

  private static boolean isOfContext(JsonParser parser, ArrayDeque<Boolean> open)
      throws IOException {
    boolean listed = !open.isEmpty() && open.peek();
    return listed || (!parser.currentToken().isStructEnd() && isNamed(parser));
  }

  private static boolean isNamed(JsonParser parser) throws IOException {
    return parser.currentToken() != JsonToken.FIELD_NAME
        && parser.getParsingContext() != null
        && CONTEXT.equals(
            parser.currentToken().isStructStart()
                ? parser.getParsingContext().getParent().getCurrentName()
                : parser.getParsingContext().getCurrentName());
  }

  private UnreadableException refused(JsonLocation at, String what, String remedy) {
    FilePlace place =
        at == null
            ? new FilePlace(file, 0, 0, 0)
            : new FilePlace(file, Math.max(0, at.getLineNr()), Math.max(0, at.getColumnNr()), 0);
    return new UnreadableException(place, what, remedy);
  }
}
