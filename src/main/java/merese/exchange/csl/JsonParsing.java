package merese.exchange.csl;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonParseException;
import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.JsonToken;
import com.fasterxml.jackson.core.StreamReadConstraints;
import com.fasterxml.jackson.core.io.JsonEOFException;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import merese.exchange.csl.Json.Bare;
import merese.exchange.csl.Json.Items;
import merese.exchange.csl.Json.Member;
import merese.exchange.csl.Json.Members;
import merese.exchange.csl.Json.Text;

/** JSON as a tree, by jackson-core. */
final class JsonParsing {
  /** The most bytes of an item: 4 MiB. */
  static final int LONGEST = 4 << 20;

  /** How deep objects and lists may stand in each other. */
  static final int DEEPEST = 100;

  private static final JsonFactory FACTORY =
      JsonFactory.builder()
          .streamReadConstraints(
              StreamReadConstraints.builder()
                  .maxNestingDepth(DEEPEST)
                  .maxStringLength(LONGEST)
                  .maxNameLength(LONGEST)
                  .maxNumberLength(1000)
                  .build())
          .build();

  /** About as many variables as an item has, and as many parts as a name or a date. */
  private static final int USUAL_VARIABLES = 20;

  private static final int USUAL_PARTS = 3;

  private JsonParsing() {}

  /**
   * @throws JsonProcessingException saying where, in characters of the text, it is no JSON
   */
  static Json parse(String text) throws JsonProcessingException {
    try (JsonParser parser = FACTORY.createParser(text)) {
      return whole(parser);
    } catch (JsonProcessingException e) {
      throw e;
    } catch (IOException e) {
      throw new UncheckedIOException("a text in memory cannot be read", e);
    }
  }

  private static Json whole(JsonParser parser) throws IOException {
    parser.nextToken();
    Json value = value(parser);
    if (parser.nextToken() != null) {
      throw new JsonParseException(
          parser, "Unexpected text after the value", parser.currentTokenLocation());
    }
    return value;
  }

  /** Empty where the text is no JSON. */
  static Optional<Json> tried(String text) {
    try {
      return Optional.of(parse(text));
    } catch (JsonProcessingException e) {
      return Optional.empty();
    }
  }

  /** Empty where a text, given as sound UTF-8, is no JSON. */
  static Optional<Json> tried(byte[] utf8) {
    try (JsonParser parser = FACTORY.createParser(utf8)) {
      return Optional.of(whole(parser));
    } catch (JsonProcessingException e) {
      return Optional.empty();
    } catch (IOException e) {
      throw new UncheckedIOException("bytes in memory cannot be read", e);
    }
  }

  private static Json value(JsonParser parser) throws IOException {
    JsonToken token = parser.currentToken();
    if (token == null) {
      throw new JsonEOFException(parser, null, "nothing is here");
    }
    switch (token) {
      case START_OBJECT -> {
        boolean isItem = parser.getParsingContext().getNestingDepth() == 1;
        List<Member> members = new ArrayList<>(isItem ? USUAL_VARIABLES : USUAL_PARTS);
        while (parser.nextToken() != JsonToken.END_OBJECT) {
          String name = parser.currentName();
          parser.nextToken();
          members.add(new Member(name, value(parser)));
        }
        return new Members(members);
      }
      case START_ARRAY -> {
        List<Json> items = new ArrayList<>(USUAL_PARTS);
        while (parser.nextToken() != JsonToken.END_ARRAY) {
          items.add(value(parser));
        }
        return new Items(items);
      }
      case VALUE_STRING -> {
        return new Text(parser.getText());
      }
      default -> {
        return new Bare(parser.getText());
      }
    }
  }
}
