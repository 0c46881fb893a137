package merese.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import merese.testing.DemoLibrary;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class MergeAndSplitTest {
  @TempDir Path home;

  @BeforeEach
  void copyTheDemo() throws IOException {
    DemoLibrary.copyTo(home);
  }

  private Ran merese(String... words) {
    return Ran.in(home, Map.of("COLUMNS", "80"), words);
  }

  private boolean isThere(String work) {
    return Files.exists(home.resolve("library/works/" + work + ".json"));
  }

  @Test
  void withoutApplyNothingHappens() {
    Ran shown = merese("merge", "quenby-1949", "tressick-1954");
    assertEquals(0, shown.code(), shown.err());
    assertTrue(isThere("tressick-cut-and-blown"));
    assertFalse(Files.exists(home.resolve("library/.lock")), "not even the lock is taken");
    assertEquals(0, merese("split", "varnell-1939").code());
    assertFalse(isThere("varnell-1939"));
  }

  @Test
  void aMergeKeepsAnswersAndASplitUndoesIt() {
    String before = sources();
    String notes = merese("check").out();
    Ran merged = merese("merge", "quenby-1949", "tressick-1954", "--apply");
    assertEquals(0, merged.code(), merged.err());
    assertTrue(merged.out().endsWith("Done: 4 files written or deleted.\n"), merged.out());
    assertFalse(isThere("tressick-cut-and-blown"));
    assertEquals(0, merese("check").code(), merese("check").out());
    assertEquals(notes.replace("36 works", "35 works"), merese("check").out());
    Ran split =
        merese(
            "split",
            "tressick-1954",
            "--id",
            "tressick-cut-and-blown",
            "--title",
            "Cut and Blown",
            "--apply");
    assertEquals(0, split.code(), split.err());
    assertEquals(notes, merese("check").out());
    assertEquals(before, sources());
  }

  private String sources() {
    return merese("covers", "bladed ring")
        .out()
        .lines()
        .filter(line -> line.contains(" sources cover it"))
        .findFirst()
        .orElseThrow();
  }

  @Test
  void aNameThatIsTakenOrNoneIsRefused() {
    Ran taken = merese("split", "varnell-1939", "--id", "imberry-the-stem");
    assertEquals(1, taken.code());
    assertTrue(taken.err().contains("there is a file of this name already"), taken.err());
    Ran none = merese("split", "varnell-1939", "--id", "a/b", "--apply");
    assertTrue(none.err().contains("\"a/b\" cannot be the name of a file"), none.err());
    assertEquals(2, merese("merge", "quenby-1949").code());
    assertEquals(2, merese("split").code());
  }

  @Test
  void jsonHasTheWholePreview() throws IOException {
    JsonNode merge =
        new ObjectMapper()
            .readTree(merese("merge", "quenby-1949", "tressick-1954", "--json").out());
    assertEquals("quenby-neck-and-stopper", merge.get("work").asText());
    assertEquals(5, merge.get("editions").size());
    assertEquals("tressick-cut-and-blown", merge.get("gone").get(0).asText());
    assertTrue(merge.get("effects").size() > 2);
    JsonNode split = new ObjectMapper().readTree(merese("split", "varnell-1939", "--json").out());
    assertEquals("varnell-1939", split.get("work").asText());
  }
}
