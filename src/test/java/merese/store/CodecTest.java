package merese.store;

import static merese.store.Fixture.decode;
import static merese.store.Fixture.encode;
import static merese.store.Fixture.refusal;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Locale;
import java.util.Random;
import merese.model.Concept;
import merese.model.Nearest;
import merese.model.Work;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

class CodecTest {
  static List<String> files() {
    return Fixture.FILES.keySet().stream().sorted().toList();
  }

  @ParameterizedTest
  @MethodSource("files")
  void whatIsReadIsWrittenAgainByteByByte(String file) {
    assertEquals(Fixture.text(file), again(Fixture.text(file), Fixture.FILES.get(file)));
  }

  /** Rights were a text before they had layers; a text stays one. */
  @Test
  void rightsInWordsStayWords() {
    String words = "\"rights\": \"asked, not answered\"";
    assertTrue(Fixture.text(Fixture.WORK).contains(words));
    assertTrue(again(Fixture.text(Fixture.WORK), WorkCodec.WORK).contains(words));
  }

  @Test
  void aStatusThatIsNoneIsAnsweredWithThoseThereAre() {
    String text =
        Fixture.text(Fixture.WORK).replace("\"status\": \"refused\"", "\"status\": \"no\"");
    String refusal = refusal(() -> decode(text, WorkCodec.WORK));
    assertTrue(refusal.contains("\"no\" is not a status"), refusal);
    assertTrue(refusal.contains("own, given, refused, asked, not-traced, not-asked"), refusal);
  }

  private static <T> String again(String text, Codec<T> codec) {
    return encode(decode(text, codec), codec);
  }

  @ParameterizedTest
  @MethodSource("files")
  void everyKeyOfTheFixtureMatters(String file) {
    String whole = Fixture.text(file);
    List<String> without = new ArrayList<>();
    for (Json.Obj changed : withoutOneKeyEach(Fixture.parse(whole))) {
      String text = new String(JsonPrinter.lines(changed), StandardCharsets.UTF_8);
      try {
        if (again(text, Fixture.FILES.get(file)).equals(whole)) {
          without.add(text);
        }
      } catch (LibraryException e) {
        // A key that must be there matters.
      }
    }
    // Only a concept's status is written even where it is what its absence means.
    assertEquals(file.equals(Fixture.RINGS) ? 1 : 0, without.size(), () -> without.get(0));
  }

  private static List<Json.Obj> withoutOneKeyEach(Json.Obj object) {
    List<Json.Obj> result = new ArrayList<>();
    for (int i = 0; i < object.members().size(); i++) {
      Json.Member member = object.members().get(i);
      List<Json.Member> others = new ArrayList<>(object.members());
      others.remove(i);
      result.add(new Json.Obj(others));
      for (Json inner : withoutOneKey(member.value())) {
        List<Json.Member> changed = new ArrayList<>(object.members());
        changed.set(i, member.with(inner));
        result.add(new Json.Obj(changed));
      }
    }
    return result;
  }

  private static List<? extends Json> withoutOneKey(Json value) {
    if (value instanceof Json.Obj object) {
      return withoutOneKeyEach(object);
    }
    List<Json> result = new ArrayList<>();
    if (value instanceof Json.Arr array) {
      for (int i = 0; i < array.items().size(); i++) {
        for (Json inner : withoutOneKey(array.items().get(i))) {
          List<Json> changed = new ArrayList<>(array.items());
          changed.set(i, inner);
          result.add(new Json.Arr(changed));
        }
      }
    }
    return result;
  }

  @ParameterizedTest
  @MethodSource("files")
  void theOrderOfKeysDoesNotCount(String file) {
    Random random = new Random(17);
    Json shuffled = shuffle(Fixture.parse(Fixture.text(file)), random);
    String text = new String(JsonPrinter.compact(shuffled), StandardCharsets.UTF_8);
    assertNotEquals(Fixture.text(file), text);
    assertEquals(Fixture.text(file), again(text, Fixture.FILES.get(file)));
  }

  private static Json shuffle(Json value, Random random) {
    if (value instanceof Json.Obj object) {
      List<Json.Member> members = new ArrayList<>();
      object.members().forEach(m -> members.add(m.with(shuffle(m.value(), random))));
      Collections.shuffle(members, random);
      return new Json.Obj(members);
    }
    return value instanceof Json.Arr array
        ? new Json.Arr(array.items().stream().map(item -> shuffle(item, random)).toList())
        : value;
  }

  @ParameterizedTest
  @MethodSource("files")
  void aTurkishUserReadsAndWritesTheSame(String file) {
    Locale before = Locale.getDefault();
    try {
      Locale.setDefault(Locale.forLanguageTag("tr-TR"));
      assertEquals(Fixture.text(file), again(Fixture.text(file), Fixture.FILES.get(file)));
      // Codes of the fixture may have been made earlier; these are made here.
      Codes<Concept.Match.Kind> kinds = new Codes<>("a kind", Concept.Match.Kind.values());
      assertEquals(Concept.Match.Kind.RELATED_MATCH, kinds.get("related-match"));
      Codes<merese.model.Check.Method> methods =
          new Codes<>("a method", merese.model.Check.Method.values());
      assertEquals(merese.model.Check.Method.INDEX_ONLY, methods.get("index-only"));
      assertEquals(List.of("INDEX"), Nearest.bySlips("indexx", List.of("INDEX")));
    } finally {
      Locale.setDefault(before);
    }
  }

  @Test
  void nullAndBlankCountAsLeftOut() {
    String bare = "{\"id\": \"a\", \"kind\": \"thesis\", \"title\": \"T\"";
    Work work =
        decode(bare + ", \"subtitle\": null, \"language\": \"\", \"mine\": false}", WorkCodec.WORK);
    assertEquals(decode(bare + "}", WorkCodec.WORK), work);
  }

  @Nested
  @DisplayName("A wrong value is reported with its place")
  class Errors {
    @ParameterizedTest
    @CsvSource(
        delimiter = '|',
        quoteCharacter = '`',
        value = {
          "\"stance\": \"pictures\"|\"stance\": \"pictured\"|165:25: editions[1].notes[0].places[0]"
              + ".stance: \"pictured\" is not a stance; write one of names, defines,"
              + " describes-unnamed, pictures, says-absent, corrects, lists; did you mean"
              + " \"pictures\"?",
          "\"year\": 1949|\"year\": \"1949\"|36:15: editions[1].year: the text \"1949\" stands"
              + " where a whole number belongs; write it without quotation marks",
          "\"year\": 1949|\"year\": 1949.5|36:15: editions[1].year: the number 1949.5 stands where"
              + " a whole number belongs; write digits only, unquoted",
          "\"mine\": true|\"mine\": \"yes\"|23:11: mine: the text \"yes\" stands here; write true"
              + " or false, unquoted",
          "\"publisher\": \"Ferrule & Gaunt\"|\"publisher\": 12|42:20: editions[1].publisher: the"
              + " number 12 stands where a text belongs; write \"12\"",
          "\"on\": \"2025-03-02\"|\"on\": \"2025-02-30\"|218:19: editions[1].notes[0].checked.on:"
              + " \"2025-02-30\" is not a day; write it as in 2025-03-02",
          "\"title\": \"Necks and Their Rings\"|\"title\": \" \"|4:12: title: must not be empty;"
              + " write it, or \"?\" where it is unknown",
          "\"title\": \"Necks and Their Rings\"|\"titel\": \"Necks\"|1:1: \"title\" is missing; did"
              + " you mean it by \"titel\"?",
          "\"key\": \"tarnbrook-1926\",||25:5: editions[0]: \"key\" is missing; add it with a"
              + " text",
          "\"evidence\": \"the same chip\"|\"proof\": 1|210:21: editions[1].notes[0].object:"
              + " \"same\" needs its evidence; without any, write \"similar\"",
          "\"naming\": \"plain rings\"|\"naming\": \"plane rings\"|145:9: editions[1].notes[0]: a"
              + " place speaks of the naming \"plane rings\", but the note has no naming printed"
              + " so",
        })
    void inAWork(String from, String to, String message) {
      String text = Fixture.text(Fixture.WORK).replaceFirst(quoted(from), quotedTo(to));
      assertEquals("f.json:" + message, refusal(() -> decode(text, WorkCodec.WORK)));
    }

    private String quoted(String from) {
      return java.util.regex.Pattern.quote(from);
    }

    private String quotedTo(String to) {
      return java.util.regex.Matcher.quoteReplacement(to == null ? "" : to);
    }

    @Test
    void aTextWhereAListBelongs() {
      assertEquals(
          "f.json:2:12: homonyms[0].concepts: the text \"x\" stands where a list belongs; put it in"
              + " square brackets: [ … ]",
          refusal(
              () ->
                  decode(
                      "{\"homonyms\": [{\"word\": \"w\",\n\"concepts\":\"x\"}]}",
                      VocabularyCodec.REGISTER)));
    }

    @Test
    void aNumberInAListOfTextsAndATextWhereAnObjectBelongs() {
      assertEquals(
          "f.json:1:45: homonyms[0].concepts[1]: the number 3 stands here; write a text\n"
              + "f.json:1:50: homonyms[1]: the text \"y\" stands where an object belongs;"
              + " write { \"…\": … }",
          refusal(
              () ->
                  decode(
                      "{\"homonyms\": [{\"word\": \"w\", \"concepts\":[\"x\",3]}, \"y\"]}",
                      VocabularyCodec.REGISTER)));
    }

    @Test
    void everyNoteThatIsWrongIsReportedAtOnce() {
      String text =
          Fixture.text(Fixture.WORK)
              .replace("\"medium\": \"photo\"", "\"medium\": \"foto\"")
              .replace("\"stance\": \"lists\"", "\"stance\": \"liste\"")
              .replace("\"medium\": \"drawing\"", "\"medium\": \"text\"");
      String found = refusal(() -> decode(text, WorkCodec.WORK));
      assertEquals(3, found.lines().count(), found);
      assertTrue(found.contains("notes[0].places[0].medium: \"foto\" is not a medium"), found);
      assertTrue(found.contains("notes[1].places[0].stance: \"liste\""), found);
      assertTrue(found.contains("notes[2].places[0]: stance \"pictures\" needs medium"), found);
    }

    @Test
    void moreThanTwentyAreCut() {
      String one = "{\"word\": 1}, ";
      String found =
          refusal(
              () -> decode("{\"homonyms\": [" + one.repeat(30) + "{}]}", VocabularyCodec.REGISTER));
      assertEquals(21, found.lines().count(), found);
      assertTrue(found.endsWith("… and 11 more"), found);
    }

    @Test
    void aLongOrUnprintableValueIsShownShort() {
      String value = "\\u001b[31m" + "x".repeat(200);
      String found = refusal(() -> decode(bare("\"kind\": \"" + value + "\""), WorkCodec.WORK));
      assertFalse(found.contains("\u001b"), found);
      assertTrue(found.contains("xxx…\" is not a kind of source"), found);
    }

    private String bare(String kind) {
      return "{\"id\": \"a\", " + kind + ", \"title\": \"T\"}";
    }
  }
}
