package merese.exchange.skos;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.SequenceInputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import merese.exchange.UnreadableException;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;

/**
 * Files that are not read at all: broken ones, and ones that would make a reader fetch something or
 * never end. Each is a case, named for what is wrong, with what is said of it in a file of the same
 * name with ".txt" behind. {@code -Dscreens=write} writes these anew, to be read before they are
 * kept.
 */
class SkosRefusedFilesTest {
  private static final Path CASES = Path.of("src/test/resources/merese/exchange/skos/refused");
  private static final boolean WRITE = "write".equals(System.getProperty("screens"));

  @TestFactory
  Stream<DynamicTest> eachIsRefusedWithItsPlaceAndARemedy() throws IOException {
    try (Stream<Path> files = Files.list(CASES)) {
      List<Path> cases = files.filter(file -> !file.toString().endsWith(".txt")).sorted().toList();
      assertTrue(cases.size() > 20, cases::toString);
      return cases.stream()
          .map(file -> DynamicTest.dynamicTest(file.getFileName().toString(), () -> check(file)));
    }
  }

  private static void check(Path file) throws IOException {
    String name = file.getFileName().toString();
    byte[] bytes = Files.readAllBytes(file);
    String said =
        assertThrows(UnreadableException.class, () -> SkosFiles.read(name, bytes)).getMessage()
            + "\n";
    Path expected = file.resolveSibling(name + ".txt");
    if (WRITE) {
      Files.writeString(expected, said);
    }
    assertEquals(Files.readString(expected), said);
  }

  @Test
  void whatNestsWithoutEndIsRefused() {
    String start = SkosFiles.PREFIXES + "ex:a skos:broader ";
    for (String nested : List.of("[ skos:broader ", "( ")) {
      UnreadableException refused =
          assertThrows(
              UnreadableException.class,
              () -> SkosFiles.read("deep.ttl", start + nested.repeat(200_000)));
      assertEquals(
          "deep.ttl: what is written inside brackets or elements nests too deeply; write the"
              + " concepts one beside the other",
          refused.getMessage());
    }
  }

  @Test
  void aFileThatNeverEndsIsRefusedAtTheLimit() {
    InputStream endless =
        new InputStream() {
          @Override
          public int read() {
            return ' ';
          }

          @Override
          public int read(byte[] bytes, int from, int length) {
            java.util.Arrays.fill(bytes, from, from + length, (byte) ' ');
            return length;
          }
        };
    for (String name : List.of("endless.ttl", "endless.jsonld")) {
      UnreadableException refused =
          assertThrows(UnreadableException.class, () -> SkosReader.usual().read(name, endless));
      assertTrue(
          refused.getMessage().startsWith(name + ": the file is larger than "),
          refused.getMessage());
    }
  }

  @Test
  void aPrologThatIsTooLongIsRefused() {
    String text = "<!-- " + " ".repeat(XmlProlog.LONGEST) + " --><rdf:RDF/>";
    UnreadableException refused =
        assertThrows(UnreadableException.class, () -> SkosFiles.read("long.rdf", text));
    assertEquals(
        "long.rdf: no element begins in the first 65536 bytes, which is the limit; move long"
            + " comments down",
        refused.getMessage());
  }

  @Test
  void aStreamThatFailsIsNoFaultOfTheFile() {
    InputStream failing = thenFails(new byte[0]);
    IOException thrown =
        assertThrows(IOException.class, () -> SkosReader.usual().read("a.ttl", failing));
    assertEquals("the disk is gone", thrown.getMessage());
  }

  @Test
  void aStreamThatFailsLaterIsNoFaultOfTheFileEither() {
    byte[] start =
        (SkosFiles.PREFIXES + "# ".repeat(200_000))
            .getBytes(java.nio.charset.StandardCharsets.UTF_8);
    InputStream failing = thenFails(start);
    IOException thrown =
        assertThrows(IOException.class, () -> SkosReader.usual().read("a.ttl", failing));
    assertEquals("the disk is gone", thrown.getMessage());
  }

  private static InputStream thenFails(byte[] start) {
    return new SequenceInputStream(
        new ByteArrayInputStream(start),
        new InputStream() {
          @Override
          public int read() throws IOException {
            throw new IOException("the disk is gone");
          }

          @Override
          public int read(byte[] bytes, int from, int length) throws IOException {
            return read();
          }
        });
  }
}
