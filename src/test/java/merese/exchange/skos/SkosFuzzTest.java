package merese.exchange.skos;

import static org.junit.jupiter.api.Assertions.assertTimeoutPreemptively;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.List;
import java.util.Random;
import merese.exchange.UnreadableException;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;

/**
 * Damaged files: whatever is cut out of one, put into it or doubled in it, it is read or refused
 * with words for a person, and soon.
 */
class SkosFuzzTest {
  private static final Path FILES = Path.of("src/test/resources/merese/exchange/skos/read");
  private static final Duration FAR_TOO_LONG = Duration.ofSeconds(30);
  private static final List<String> PIECES =
      List.of(
          "<",
          ">",
          "\"",
          "\"\"\"",
          "'",
          "[",
          "]",
          "(",
          ")",
          "{",
          "}",
          ".",
          ";",
          ",",
          "@",
          "^^",
          "\\",
          "\\uD800",
          "\\u0000",
          "_:",
          "@prefix : <> .",
          "@base <x:> .",
          "null",
          "@context",
          "@id",
          "@type",
          "@graph",
          "@list",
          "@set",
          "@reverse",
          "<<( ",
          " )>>",
          "&amp;",
          "&x;",
          "<![CDATA[",
          "<?x?>",
          "rdf:parseType=\"Collection\"",
          "rdf:li",
          "rdf:nodeID='a'",
          "xml:base='::'",
          "skos:member",
          "skos:memberList",
          "skos:Concept",
          "\u0000",
          "\uFEFF",
          "\uFFFF",
          "1e999999999",
          "true",
          "GRAPH",
          "BASE",
          "a",
          "http://[",
          "%",
          "0x");

  @Property(tries = 400, seed = "1")
  void turtle(@ForAll Random random, @ForAll @IntRange(min = 1, max = 6) int times)
      throws IOException {
    survives("knops.ttl", random, times);
  }

  @Property(tries = 400, seed = "1")
  void rdfXml(@ForAll Random random, @ForAll @IntRange(min = 1, max = 6) int times)
      throws IOException {
    survives("knops.rdf", random, times);
  }

  @Property(tries = 400, seed = "1")
  void jsonLd(@ForAll Random random, @ForAll @IntRange(min = 1, max = 6) int times)
      throws IOException {
    survives("knops.jsonld", random, times);
  }

  @Property(tries = 100, seed = "1")
  void nTriples(@ForAll Random random, @ForAll @IntRange(min = 1, max = 6) int times)
      throws IOException {
    survives("knops.nt", random, times);
  }

  private static void survives(String name, Random random, int times) throws IOException {
    byte[] bytes = Files.readAllBytes(FILES.resolve(name));
    for (int i = 0; i < times; i++) {
      bytes = damaged(bytes, random);
    }
    byte[] file = bytes;
    assertTimeoutPreemptively(FAR_TOO_LONG, () -> read(name, file));
  }

  private static void read(String name, byte[] bytes) throws IOException {
    try {
      SkosReading reading = SkosReader.usual().read(name, new ByteArrayInputStream(bytes));
      for (SkosConcept concept : reading.concepts()) {
        assertTrue(concept.verbatim().length > 0);
      }
    } catch (UnreadableException e) {
      String said = e.getMessage();
      assertTrue(said.startsWith(name + ":"), said);
      assertTrue(!said.contains("Exception") && !said.matches("(?s).*: null\\b.*"), said);
    }
  }

  private static byte[] damaged(byte[] bytes, Random random) {
    int from = random.nextInt(bytes.length + 1);
    int to = Math.min(bytes.length, from + random.nextInt(40));
    byte[] middle =
        switch (random.nextInt(4)) {
          case 0 -> new byte[0];
          case 1 -> PIECES.get(random.nextInt(PIECES.size())).getBytes(StandardCharsets.UTF_8);
          case 2 -> new byte[] {(byte) random.nextInt(256)};
          default -> {
            int start = random.nextInt(bytes.length + 1);
            int length = Math.min(bytes.length - start, random.nextInt(200));
            yield java.util.Arrays.copyOfRange(bytes, start, start + length);
          }
        };
    int end = random.nextBoolean() ? from : to;
    byte[] result = new byte[from + middle.length + bytes.length - end];
    System.arraycopy(bytes, 0, result, 0, from);
    System.arraycopy(middle, 0, result, from, middle.length);
    System.arraycopy(bytes, end, result, from + middle.length, bytes.length - end);
    return result;
  }
}
