package merese.exchange.csl;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import merese.exchange.CslItems;
import merese.exchange.Sources;
import merese.exchange.bibtex.Program;
import merese.testing.DemoLibrary;
import merese.testing.HostileLibrary;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** An export as pandoc 2.17 reads it and writes it again, variable by variable. */
class PandocIT {
  private static final String WORDS = "pandoc 2.17 reads a date in words and writes no date";
  private static final String ROLE = "a role that came with CSL 1.0.2; pandoc 2.17 leaves it out";

  private static final Map<String, String> REASONS =
      Map.of(
          "brackenford-directory-1817 issued", WORDS,
          "brannock-yelland-1842 issued", WORDS,
          "cordwent-1955 issued", WORDS,
          "farrow-1988 issued", WORDS,
          "few-words-undated issued", WORDS,
          "saltrey-1824 issued", WORDS,
          "* event-date", WORDS,
          "* organizer", ROLE);

  @TempDir private Path folder;

  @Test
  void readsTheDemoAsItIsButForWhatIsListedHere() throws Exception {
    String ours =
        Sources.written(
            new CslJsonWriter(),
            Sources.of(Sources.works(DemoLibrary.copyTo(folder.resolve("demo")))));
    assertEquals(
        List.of(), CslItems.unexplained(CslItems.differences(ours, pandoc(ours)), REASONS));
  }

  @Test
  void readsEveryItemOfAHostileLibrary() throws Exception {
    String ours =
        Sources.written(new CslJsonWriter(), Sources.of(HostileLibrary.make().works()));
    assertEquals(
        List.of(),
        CslItems.differences(ours, pandoc(ours)).stream()
            .filter(d -> d.variable().isEmpty())
            .toList());
  }

  private String pandoc(String csl) throws Exception {
    Files.writeString(folder.resolve("all.json"), csl);
    Program ran = Program.run(folder, "pandoc", "all.json", "--from=csljson", "--to=csljson");
    assertEquals(0, ran.code(), ran.output());
    return ran.output();
  }
}
