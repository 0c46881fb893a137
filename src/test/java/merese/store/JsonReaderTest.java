package merese.store;

import static merese.store.Fixture.parse;
import static merese.store.Fixture.refusal;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.charset.StandardCharsets;
import java.util.List;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class JsonReaderTest {
  @Test
  void eachValueKnowsWhereItStood() {
    String text = "{\"a\": \"bé\\n\",\n \"c\" :[ -1.50E+3 , true,{ }, [], null]}";
    Json.Obj root = parse(text);
    assertEquals("\"bé\\n\"", slice(text, root.get("a")));
    Json.Arr list = (Json.Arr) root.get("c");
    assertEquals("[ -1.50E+3 , true,{ }, [], null]", slice(text, list));
    List<String> items = list.items().stream().map(item -> slice(text, item)).toList();
    assertEquals(List.of("-1.50E+3", "true", "{ }", "[]", "null"), items);
    assertEquals(text, slice(text, root));
    assertEquals('"', text.charAt(root.members().get(1).start()));
  }

  @Test
  void everyValueOfALargeFileKnowsWhereItStood() {
    String text = Fixture.text(Fixture.WORK).repeat(1);
    assertSlicesParse(text, parse(text));
  }

  /** Each slice, read on its own, is the same value. */
  private static void assertSlicesParse(String text, Json value) {
    Json again = parse("{\"x\":" + slice(text, value) + "}").get("x");
    assertTrue(again.sameAs(value), slice(text, value));
    if (value instanceof Json.Obj object) {
      object.members().forEach(member -> assertSlicesParse(text, member.value()));
    } else if (value instanceof Json.Arr array) {
      array.items().forEach(item -> assertSlicesParse(text, item));
    }
  }

  private static String slice(String text, Json value) {
    return text.substring(value.start(), value.end());
  }

  @ParameterizedTest
  @ValueSource(strings = {"1.50", "-0", "1E400", "123456789012345678901234567890", "0.10"})
  void numbersKeepTheirSpelling(String spelling) {
    Json.Obj root = parse("{\"n\": " + spelling + "}");
    assertEquals(
        "{\"n\":" + spelling + "}", new String(JsonPrinter.compact(root), StandardCharsets.UTF_8));
  }

  @Test
  void halfASurrogatePairIsKept() {
    Json.Obj root = parse("{\"n\": \"a\\ud83db\\ud83d\\ude00\\udead\"}");
    assertEquals(
        "{\"n\":\"a\\ud83db\uD83D\uDE00\\udead\"}",
        new String(JsonPrinter.compact(root), StandardCharsets.UTF_8));
  }

  @Nested
  @DisplayName("says what is wrong and where")
  class Refuses {
    // RFC 8259 is the grammar: no comments, no comma at the end, double quotation marks.
    @ParameterizedTest
    @CsvSource(
        delimiter = '|',
        quoteCharacter = '`',
        value = {
          "{\"a\": 1, // why⏎ \"b\": 2}|f.json:1:10: JSON has no comments",
          "{\"a\": 1 /* why */}|f.json:1:9: JSON has no comments",
          "{⏎# why⏎\"a\": 1}|f.json:2:1: JSON has no comments",
          "{\"a\": [1, 2,]}|f.json:1:13: nothing follows the last comma",
          "{\"a\": 1,}|f.json:1:9: nothing follows the last comma",
          "{\"a\": 'b'}|f.json:1:7: texts and keys stand in straight double quotation marks",
          "{“a”: 1}|f.json:1:2: texts and keys stand in straight double quotation marks",
          "{\"a\": 1⏎ \"b\": 2}|f.json:2:2: a comma or a colon is missing before this",
          "{\"a\" \"b\"}|f.json:1:6: a comma or a colon is missing before this",
          "{\"a\": \"b⏎c\"}|f.json:1:9: a line end or a tab stands inside a text",
          "{\"a\": [1, 2|f.json:1:12: the file ends in the middle of an object or a list",
          "{\"a\": \"xy|f.json:1:10: the file ends in the middle of a text",
          "{\"a\": 1, \"b\": 2,⏎ \"a\": 3}|f.json:2:2: the key \"a\" stands twice here",
          "{\"é\uD83D\uDE00\": 1, \"b\": 2, \"b\": 3}|f.json:1:19: the key \"b\" stands twice here",
          "[1]|f.json:1:1: the file holds a list [ ]",
          "12|f.json:1:1: the file holds the number 12",
          "{} {}|f.json:1:4: something follows the closing \"}\"",
          "{} x|f.json:1:4: x is not a value of JSON",
          "{\"a\": 01}|f.json:1:8: this is not JSON: Invalid numeric value",
          "{\"a\": NaN}|f.json:1:7: NaN is not a value of JSON",
          "{\"a\": nul}|f.json:1:7: nul is not a value of JSON",
          "{\"a\": \"\\x\"}|f.json:1:9: this is not JSON",
          "  ⏎ |f.json: the file is empty",
        })
    void brokenText(String text, String message) {
      String found = refusal(() -> parse(text.replace("⏎", "\n")));
      assertTrue(found.startsWith(message), found);
    }

    @Test
    void bytesThatAreNotUtf8() {
      byte[] latin1 = "{\"a\":\n \"é\"}".getBytes(StandardCharsets.ISO_8859_1);
      assertEquals(
          "f.json:2:3: the bytes here are not UTF-8; save the file as UTF-8",
          refusal(() -> parse(latin1)));
      byte[] utf16 = "{}".getBytes(StandardCharsets.UTF_16);
      assertEquals(
          "f.json: the file is in UTF-16; save the file as UTF-8", refusal(() -> parse(utf16)));
      byte[] unmarked = "{}".getBytes(StandardCharsets.UTF_16LE);
      assertEquals(
          "f.json:1:2: there is a zero byte here; save the file as UTF-8",
          refusal(() -> parse(unmarked)));
      String mark = "f.json: the file starts with a byte-order mark; save it as UTF-8 without one";
      assertEquals(mark, refusal(() -> parse("\uFEFF{}")));
    }

    @Test
    void nothingAtAll() {
      assertTrue(refusal(() -> parse("")).startsWith("f.json: the file is empty; bring it back"));
    }

    @Test
    void aDuplicateAmongManyKeys() {
      StringBuilder text = new StringBuilder("{");
      for (int i = 0; i < 40; i++) {
        text.append("\"k").append(i).append("\": 1,\n");
      }
      String found = refusal(() -> parse(text + "\"k3\": 1}"));
      assertTrue(found.startsWith("f.json:41:1: the key \"k3\" stands twice"), found);
    }

    @Test
    void nestingWithoutEnd() {
      String deep = "{\"a\":" + "[".repeat(100_000);
      assertEquals(
          "f.json:1:69: the values are nested deeper than 64 levels; flatten them",
          refusal(() -> parse(deep)));
    }

    @Test
    void aNumberWithoutEnd() {
      String found = refusal(() -> parse("{\"a\": " + "1".repeat(5000) + "}"));
      assertTrue(found.contains("a number, text or key here is too long"), found);
    }
  }

  @Test
  void theReplacementCharacterItselfIsAllowed() {
    assertEquals("the text \"\uFFFD\"", parse("{\"a\": \"\uFFFD\"}").get("a").described());
  }
}
