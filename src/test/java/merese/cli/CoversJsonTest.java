package merese.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.json.JsonMapper;
import java.lang.reflect.ParameterizedType;
import java.lang.reflect.RecordComponent;
import java.lang.reflect.Type;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import merese.answer.Coverage;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What {@code --json} prints is the whole record of the answer, and says what the screen says. */
class CoversJsonTest {
  private static Shelves shelves;

  @BeforeAll
  static void prepare(@TempDir Path folder) {
    shelves = new Shelves(folder);
  }

  private static JsonNode asked(String library, String... words) throws Exception {
    List<String> all = new ArrayList<>(List.of("covers", "--json"));
    all.addAll(List.of(words));
    Ran ran = Ran.in(shelves.of(library), Map.of(), all.toArray(String[]::new));
    assertEquals("", ran.err());
    return JsonMapper.builder().build().readTree(ran.out());
  }

  @Test
  void everyComponentOfEveryRecordIsAField() throws Exception {
    Set<String> seen = new TreeSet<>();
    assertIs(Coverage.class, asked("rings", "bladed ring", "--place", "Ireland"), seen);
    assertIs(Coverage.class, asked("rings", "bladed ring", "--owned"), seen);
    assertIs(Coverage.class, asked("demo", "triple ring"), seen);
    assertIs(Coverage.class, asked("rings", "bishop's ring"), seen);
    for (Class<?> type : Coverage.class.getDeclaredClasses()) {
      assertTrue(type.isEnum() || seen.contains(type.getSimpleName()), type + " was not looked at");
    }
  }

  private static void assertIs(Type type, JsonNode json, Set<String> seen) {
    if (type instanceof ParameterizedType generic) {
      Type inner = generic.getActualTypeArguments()[0];
      if (json.isArray()) {
        json.forEach(each -> assertIs(inner, each, seen));
      } else if (!json.isNull()) {
        assertIs(inner, json, seen);
      }
    } else if (type instanceof Class<?> record && record.isRecord()) {
      Set<String> names = new TreeSet<>();
      for (RecordComponent component : record.getRecordComponents()) {
        names.add(component.getName());
        assertTrue(json.has(component.getName()), record + " lacks " + component.getName());
        assertIs(component.getGenericType(), json.get(component.getName()), seen);
      }
      Set<String> fields = new TreeSet<>();
      json.fieldNames().forEachRemaining(fields::add);
      assertEquals(names, fields);
      seen.add(record.getSimpleName());
    }
  }

  @Test
  void valuesAreThoseOfTheScreen() throws Exception {
    JsonNode answer = asked("rings", "bladed ring");
    JsonNode section = answer.at("/sections/0");
    assertEquals("bladed ring", answer.get("asked").asText());
    assertEquals(4, section.get("count").asInt());
    assertEquals(3, section.get("works").asInt());
    assertEquals("knife ring", section.at("/heading/label").asText());
    JsonNode first = section.at("/groups/0/entries/0");
    assertEquals("COUNTED", section.at("/groups/0/group").asText());
    assertEquals(1926, first.at("/source/year").asInt());
    assertEquals("monograph", first.at("/source/kind").asText().toLowerCase(java.util.Locale.ROOT));
    assertEquals("pl. XII", first.at("/passages/0/pictured/0").asText());
    assertEquals("knife-edged rings", first.at("/passages/0/printed/0").asText());
  }

  @Test
  void whatIsAbsentIsNullAndNoneIsAnEmptyList() throws Exception {
    JsonNode answer = asked("rings", "bladed ring", "--year", "1926");
    assertTrue(answer.get("ask").isNull());
    assertEquals(0, answer.get("nearTerms").size());
    assertTrue(answer.at("/sections/0/groups/0/entries/0/source/whereabouts").isNull());
  }

  @Test
  void aLimitDoesNotCutTheAnswer() throws Exception {
    assertEquals(asked("rings", "bladed ring"), asked("rings", "bladed ring", "--limit", "1"));
  }

  @Test
  void anUnknownWordFailsAsOnTheScreenAndNamesThoseNearIt() {
    Ran ran = Ran.in(shelves.of("rings"), Map.of(), "covers", "--json", "bladed rnig");
    assertEquals(1, ran.code());
    assertTrue(ran.out().contains("\"nearTerms\" : [ \"bladed ring\""), ran.out());
  }
}
