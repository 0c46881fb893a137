package merese.store;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.JsonToken;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

/** Text to tree. A key that stands twice in one object is an error, as is too deep a nesting. */
final class JsonReader {
  /** Far beyond what a library nests (about ten), far below what a stack bears. */
  static final int DEEPEST = 64;

  private static final int FEW = 12;

  private static final JsonFactory FACTORY =
      JsonFactory.builder().disable(JsonFactory.Feature.INTERN_FIELD_NAMES).build();

  private final Source source;
  private final JsonParser parser;

  private JsonReader(Source source, JsonParser parser) {
    this.source = source;
    this.parser = parser;
  }

  /**
   * The object that a file holds.
   *
   * @throws LibraryException for anything else
   */
  static Json.Obj read(Source source) {
    char[] text = source.text().toCharArray();
    try (JsonParser parser = FACTORY.createParser(text)) {
      return new JsonReader(source, parser).document();
    } catch (JsonProcessingException e) {
      throw JsonFault.explain(source, e);
    } catch (IOException e) {
      throw new UncheckedIOException("reading from memory", e);
    }
  }

  private Json.Obj document() throws IOException {
    Json root = value(parser.nextToken(), 1);
    if (!(root instanceof Json.Obj object)) {
      throw source.error(
          root.start(), "the file holds " + root.described(), "it must be one object { … }");
    }
    if (parser.nextToken() != null) {
      throw source.error(
          start(), "something follows the closing \"}\" of the file", "delete it or join the two");
    }
    return object;
  }

  private Json value(JsonToken token, int depth) throws IOException {
    int start = start();
    if (depth > DEEPEST) {
      throw source.error(
          start, "the values are nested deeper than " + DEEPEST + " levels", "flatten them");
    }
    switch (token) {
      case START_OBJECT:
        return object(start, depth);
      case START_ARRAY:
        return array(start, depth);
      case VALUE_STRING:
        String text = parser.getText();
        return new Json.Text(text, start, end());
      default:
        String spelling = parser.getText();
        return new Json.Word(spelling, start, start + spelling.length());
    }
  }

  private Json object(int start, int depth) throws IOException {
    List<Json.Member> members = new ArrayList<>();
    Set<String> keys = null;
    while (parser.nextToken() != JsonToken.END_OBJECT) {
      String key = parser.currentName();
      int keyStart = start();
      if (members.size() == FEW) {
        keys = new HashSet<>();
        for (Json.Member member : members) {
          keys.add(member.key());
        }
      }
      if (keys == null ? has(members, key) : !keys.add(key)) {
        throw source.error(
            keyStart, "the key " + Quote.of(key) + " stands twice here", "keep one of the two");
      }
      members.add(new Json.Member(key, keyStart, value(parser.nextToken(), depth + 1)));
    }
    return new Json.Obj(members, start, end());
  }

  private static boolean has(List<Json.Member> members, String key) {
    for (int i = 0; i < members.size(); i++) {
      if (members.get(i).key().equals(key)) {
        return true;
      }
    }
    return false;
  }

  private Json array(int start, int depth) throws IOException {
    List<Json> items = new ArrayList<>();
    for (JsonToken t = parser.nextToken(); t != JsonToken.END_ARRAY; t = parser.nextToken()) {
      items.add(value(t, depth + 1));
    }
    return new Json.Arr(items, start, end());
  }

  private int start() {
    return (int) parser.currentTokenLocation().getCharOffset();
  }

  private int end() {
    return (int) parser.currentLocation().getCharOffset();
  }
}
