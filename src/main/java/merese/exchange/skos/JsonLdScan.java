package merese.exchange.skos;

import com.apicatalog.jsonld.lang.LanguageTag;
import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonLocation;
import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.JsonToken;
import com.fasterxml.jackson.core.StreamReadConstraints;
import com.fasterxml.jackson.core.StreamReadFeature;
import java.io.IOException;
import java.util.ArrayDeque;
import java.util.HashSet;
import java.util.Set;
import merese.exchange.FilePlace;
import merese.exchange.UnreadableException;

/**
 * Goes through a JSON-LD file before it is read: faults of its JSON are found with line and column,
 * contexts that are to be fetched are refused, and so is what nests too deeply. What the reader
 * would drop without a word is refused as well: of a name that stands twice in an object the first,
 * and a text whose language tag is none.
 */
final class JsonLdScan {
  private static final int DEEPEST = 200;
  private static final String CONTEXT = "@context";
  private static final String LANGUAGE = "@language";
  private static final String CONTAINER = "@container";

  private final String file;
  private final byte[] json;

  /** The terms whose values are texts by language. */
  private final Set<String> byLanguage = new HashSet<>();

  private JsonLdScan(String file, byte[] json) {
    this.file = file;
    this.json = json;
  }

  static void check(String file, byte[] json) throws IOException {
    JsonLdScan scan = new JsonLdScan(file, json);
    scan.scan(false);
    scan.scan(true); // the terms are known now, wherever their context stands
  }

  /**
   * An open object or array.
   *
   * @param name under which it stands; that of the array for what is in one, "" at the top
   * @param of the name under which what it is in stands
   */
  private record Open(String name, String of, boolean array) {}

  private void scan(boolean languages) throws IOException {
    StreamReadConstraints constraints =
        StreamReadConstraints.builder()
            .maxNestingDepth(Integer.MAX_VALUE) // ours comes first, with words of our own
            .maxStringLength(Integer.MAX_VALUE)
            .maxNameLength(Integer.MAX_VALUE)
            .build();
    JsonFactory factory =
        JsonFactory.builder()
            .streamReadConstraints(constraints)
            .enable(StreamReadFeature.STRICT_DUPLICATE_DETECTION)
            .build();
    try (JsonParser parser = factory.createParser(json)) {
      ArrayDeque<Open> open = new ArrayDeque<>();
      JsonToken token = parser.nextToken();
      if (token == null) {
        throw new UnreadableException(file, "the file is empty", "is it JSON-LD?");
      }
      String name = "";
      for (; token != null; token = parser.nextToken()) {
        Open in = open.peek();
        String of = in == null ? "" : in.array() ? in.name() : name;
        switch (token) {
          case FIELD_NAME -> {
            name = parser.currentName();
            if (languages
                && in != null
                && !in.array()
                && byLanguage.contains(in.name())
                && !name.startsWith("@")) {
              language(parser, name);
            }
          }
          case START_OBJECT, START_ARRAY -> {
            open.push(new Open(of, in == null ? "" : in.name(), token == JsonToken.START_ARRAY));
            if (open.size() > DEEPEST) {
              throw tooDeep(parser);
            }
          }
          case END_OBJECT, END_ARRAY -> open.pop();
          case VALUE_STRING -> string(parser, of, in);
          default -> {}
        }
      }
    } catch (JsonProcessingException e) {
      throw refused(
          e.getLocation(), "this is not JSON: " + e.getOriginalMessage(), "mend it there");
    }
  }

  private void string(JsonParser parser, String of, Open in) throws IOException {
    if (of.equals(CONTEXT) || of.equals("@import")) {
      throw refused(
          parser.currentTokenLocation(),
          "the context \"" + parser.getText() + "\" would have to be fetched, and nothing is",
          "put what it says into the file in its place");
    }
    if (of.equals(LANGUAGE)) {
      language(parser, parser.getText());
    }
    if (of.equals(CONTAINER) && parser.getText().equals(LANGUAGE)) {
      byLanguage.add(in.array() ? in.of() : in.name());
    }
  }

  private void language(JsonParser parser, String tag) {
    if (!LanguageTag.isWellFormed(tag)) {
      throw refused(
          parser.currentTokenLocation(),
          "\"" + tag + "\" is no language tag, and its text would be lost",
          "write one such as \"en-GB\"");
    }
  }

  private UnreadableException tooDeep(JsonParser parser) {
    return refused(
        parser.currentTokenLocation(),
        "this nests deeper than " + DEEPEST + ", which is the limit",
        "write the concepts one beside the other");
  }

  private UnreadableException refused(JsonLocation at, String what, String remedy) {
    FilePlace place =
        at == null
            ? new FilePlace(file, 0, 0, 0)
            : new FilePlace(file, Math.max(0, at.getLineNr()), Math.max(0, at.getColumnNr()), 0);
    return new UnreadableException(place, what, remedy);
  }
}
