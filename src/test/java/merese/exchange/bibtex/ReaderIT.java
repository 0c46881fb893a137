package merese.exchange.bibtex;

import static java.util.stream.Collectors.joining;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import merese.exchange.Incoming;
import merese.model.ReceivedRecord;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What real programs make of received records, beside the file that they were read from. */
class ReaderIT {
  @TempDir private Path folder;

  private static byte[] file(String name) throws IOException {
    try (InputStream in = ReaderIT.class.getResourceAsStream(name)) {
      return in.readAllBytes();
    }
  }

  /** Each record as it is, the preamble first. */
  private static String written(Handed handed) {
    assertEquals(List.of(), handed.refused);
    StringBuilder out = new StringBuilder();
    for (ReceivedRecord record :
        Stream.concat(handed.kept.stream(), handed.sources.stream().map(Incoming::received))
            .toList()) {
      if (record.type().equals("preamble")) {
        out.append("@preamble{" + StoredValue.written(record.fields().get(0).value()) + "}\n");
      } else {
        out.append("@" + record.type() + "{" + record.id() + ",\n");
        record
            .fields()
            .forEach(f -> out.append(f.name() + " = " + StoredValue.written(f.value()) + ",\n"));
        out.append("}\n");
      }
    }
    return out.toString();
  }

  private String bbl(String style, byte[] bib) throws IOException, InterruptedException {
    Files.write(folder.resolve("all.bib"), bib);
    Files.writeString(
        folder.resolve("all.aux"),
        "\\relax\n\\citation{*}\n\\bibdata{all}\n\\bibstyle{" + style + "}\n");
    Program ran = Program.run(folder, "bibtex", "all");
    assertTrue(ran.code() < 2, ran.output());
    return Files.readString(folder.resolve("all.bbl"), StandardCharsets.UTF_8);
  }

  @ParameterizedTest
  @ValueSource(strings = {"plain", "abbrv", "alpha"})
  void bibtexPrintsTheSameOfItsExamples(String style) throws Exception {
    byte[] original = file("/merese/checks/xampl.bib");
    String again = written(Handed.read(original));
    assertEquals(bbl(style, original), bbl(style, again.getBytes(StandardCharsets.UTF_8)));
  }

  @ParameterizedTest
  @ValueSource(strings = {"months.bib", "strings.bib", "concatenation-and-white-space.bib"})
  void bibtexPrintsTheSameOfOurFixtures(String name) throws Exception {
    byte[] original = file("reading/" + name);
    String again = written(Handed.read(original));
    assertEquals(bbl("plain", original), bbl("plain", again.getBytes(StandardCharsets.UTF_8)));
  }

  @Test
  void biberReadsTheSameOfTheExamplesOfBiblatex() throws Exception {
    byte[] original = file("/merese/checks/biblatex-examples.bib");
    // Biber writes a name for each text that a string of the file has
    String strings = new String(original, StandardCharsets.UTF_8);
    strings = strings.lines().filter(l -> l.startsWith("@string")).collect(joining("\n"));
    String again = strings + "\n" + written(Handed.read(original));
    assertEquals(biber(original), biber(again.getBytes(StandardCharsets.UTF_8)));
  }

  private String biber(byte[] bib) throws IOException, InterruptedException {
    Files.write(folder.resolve("all.bib"), bib);
    Program ran = Program.run(folder, "biber", "--tool", "--output-file=out.bib", "all.bib");
    assertEquals(0, ran.code(), ran.output());
    return Files.readString(folder.resolve("out.bib"), StandardCharsets.UTF_8)
        .lines()
        .sorted() // @set and @xdata were moved to the front
        .collect(joining("\n"));
  }
}
