package merese.exchange.csl;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Collectors;
import merese.exchange.Incoming;
import merese.exchange.Received;
import merese.exchange.Refused;
import merese.exchange.Sources;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.IntRange;

class CslPropertiesTest {
  private static final String NAME = "abc \"\\{}[]:,-1é\n\ud800";

  @Provide
  Arbitrary<Json> values() {
    Arbitrary<Json> texts =
        Arbitraries.strings().ofMaxLength(8).withChars(NAME.toCharArray()).map(Json::of);
    Arbitrary<Json> literals =
        Arbitraries.of("1", "1.0", "-0", "1e+5", "01", "true", "null", "nul", "{}", "[1]")
            .map(Json::of);
    Arbitrary<Json> bare =
        Arbitraries.of("1", "1.0", "-0", "1e+5", "true", "false", "null").map(Json.Bare::new);
    return Arbitraries.lazyOf(
        () -> texts,
        () -> literals,
        () -> bare,
        () -> values().list().ofMaxSize(3).map(Json.Items::new),
        () ->
            Combinators.combine(texts, values())
                .as((n, v) -> new Json.Member(n.asText().orElse(""), v))
                .list()
                .ofMaxSize(3)
                .map(Json.Members::new));
  }

  @Property(seed = "1")
  void aValueIsTheSameAfterItWasAField(@ForAll("values") Json value) {
    assertEquals(value, FieldText.read(FieldText.of(value)));
  }

  @Property(seed = "1")
  void aFieldHoldsNoHalfCharacter(@ForAll("values") Json value) {
    String field = FieldText.of(value);
    assertEquals(JsonText.whole(field), field);
  }

  @Property(seed = "1")
  void anItemIsTheSameAfterItWasARecord(@ForAll("values") Json one, @ForAll("values") Json two) {
    Json.Members item =
        new Json.Members(
            List.of(
                new Json.Member("id", one),
                new Json.Member("type", two),
                new Json.Member("title", Json.of("T")),
                new Json.Member("x", one),
                new Json.Member("title", two)));
    assertEquals(byName(item), byName(ItemRecord.item(ItemRecord.of(item))));
  }

  private static List<Json.Member> byName(Json.Members item) {
    return item.members().stream().sorted(Comparator.comparing(Json.Member::name)).toList();
  }

  private static List<String> file() {
    List<String> items = new ArrayList<>();
    for (int i = 0; i < 8; i++) {
      items.add(
          "  {\"id\": \"k"
              + i
              + "\", \"type\": \"book\", \"title\": \"Glass, {old} [new] \\\"x\\\"\",\n   \"author\":"
              + " [{\"family\": \"A\"}, {\"family\": \"B\"}], \"issued\": {\"date-parts\": [[1949,"
              + " 5]]}}");
    }
    return items;
  }

  private static Received read(String text) {
    return Received.of(new CslJsonReader(), text);
  }

  private static List<String> keys(Received received) {
    return received.sources().stream().map(s -> s.key().orElse("")).toList();
  }

  /** Whatever happens to one item, the other seven come in. */
  @Property(seed = "1")
  void aBrokenItemCostsNoOther(
      @ForAll @IntRange(max = 7) int which,
      @ForAll @IntRange(max = 160) int from,
      @ForAll @IntRange(max = 12) int length,
      @ForAll("damage") String with) {
    List<String> items = file();
    String item = items.get(which);
    int start = Math.min(3 + from, item.length());
    int end = Math.min(start + length, item.length());
    items.set(which, item.substring(0, start) + with + item.substring(end));
    Received received = read("[\n" + String.join(",\n", items) + "\n]\n");
    List<String> others = new ArrayList<>(List.of("k0", "k1", "k2", "k3", "k4", "k5", "k6", "k7"));
    others.remove("k" + which);
    assertTrue(keys(received).containsAll(others), () -> received.text());
  }

  @Provide
  Arbitrary<String> damage() {
    return Arbitraries.strings().ofMaxLength(6).withChars("\"\\{}[]:,x1é \n".toCharArray());
  }

  /** No exception, no end, and no byte of text that is in neither a source nor a refusal. */
  @Property(seed = "1")
  void anyBytesAreReadToTheirEnd(@ForAll("nearlyJson") String text, @ForAll byte[] noise) {
    byte[] start = text.getBytes(StandardCharsets.UTF_8);
    byte[] all = new byte[start.length + noise.length];
    System.arraycopy(start, 0, all, 0, start.length);
    System.arraycopy(noise, 0, all, start.length, noise.length);
    Received received = Received.of(new CslJsonReader(), all);
    for (Incoming source : received.sources()) {
      assertEquals(source.work(), CslMeaning.of(source.received()).orElseThrow().work());
    }
  }

  @Provide
  Arbitrary<String> nearlyJson() {
    return Arbitraries.of(
            "{",
            "}",
            "[",
            "]",
            ",",
            ":",
            "\"",
            "\\",
            "\n",
            "\"id\"",
            "\"title\"",
            "\"a\"",
            "1",
            "null",
            "{\"id\":\"k\",\"title\":\"T\"}",
            " ",
            "\"custom\":{\"merese\":",
            "x")
        .list()
        .ofMaxSize(40)
        .map(parts -> String.join("", parts));
  }

  /** What is refused can be put together again with what came in. */
  @Property(seed = "1")
  void everyLetterIsInASourceOrARefusal(@ForAll("nearlyJson") String text) {
    Received received = read("[" + text);
    int sources =
        received.sources().stream()
            .mapToInt(s -> letters(FieldText.of(ItemRecord.item(s.received()))))
            .sum();
    int refused =
        received.refusals().stream()
            .map(Refused::verbatim)
            .mapToInt(v -> letters(new String(v, StandardCharsets.UTF_8)))
            .sum();
    assertEquals(letters(text), sources + refused, received::text);
  }

  private static int letters(String text) {
    return (int) text.chars().filter(c -> c >= 'a' && c <= 'z' || c == '1').count();
  }

  @Property(seed = "1")
  void whatIsWrittenIsReadAgainWordForWord(@ForAll("values") Json value) {
    Received first =
        read(
            "{\"id\":\"k\",\"title\":\"T\",\"author\":"
                + value.compact()
                + ",\"issued\":"
                + value.compact()
                + "}");
    Received again = read(Sources.written(new CslJsonWriter(), Sources.of(first)));
    assertEquals(
        first.sources().stream().map(Incoming::received).collect(Collectors.toList()),
        again.sources().stream().map(Incoming::received).collect(Collectors.toList()));
  }
}
