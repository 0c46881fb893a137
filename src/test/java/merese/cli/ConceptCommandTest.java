package merese.cli;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import merese.testing.DemoLibrary;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Common practice, no source, but where a scenario of the project's domain.md is named. */
class ConceptCommandTest {
  @TempDir Path home;

  @BeforeEach
  void copyTheDemo() throws IOException {
    DemoLibrary.copyTo(home);
  }

  private Ran merese(String... words) {
    return Ran.in(home, Map.of("COLUMNS", "80"), words);
  }

  /** As somebody at a terminal, who types. */
  private Ran typing(String typed, String... words) {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    ByteArrayOutputStream err = new ByteArrayOutputStream();
    int code =
        Main.run(
            new ByteArrayInputStream(typed.getBytes(StandardCharsets.UTF_8)),
            out,
            err,
            Map.of("COLUMNS", "80", Screen.TERMINALS, "in out err"),
            home,
            words);
    return new Ran(
        code, out.toString(StandardCharsets.UTF_8), err.toString(StandardCharsets.UTF_8));
  }

  private byte[] ring() throws IOException {
    return Files.readAllBytes(home.resolve("library/vocabulary/ring.json"));
  }

  /** How many sources the answer counts. */
  private String counted(String... term) {
    String[] words = new String[term.length + 1];
    words[0] = "covers";
    System.arraycopy(term, 0, words, 1, term.length);
    return merese(words)
        .out()
        .lines()
        .filter(line -> line.matches("(\\d+ sources?|No source).* covers? it.*"))
        .findFirst()
        .orElseThrow();
  }

  @Test
  void whatRewritesManyPlacesIsOnlyShownUntilToldToDoIt() throws IOException {
    byte[] before = ring();
    for (String words :
        new String[] {
          "concept|rename|ring-bladed|--id|ring-sharp",
          "concept|merge|ring-annulated|--into|ring-set-three",
          "concept|split|ring-cut|ring-notched|--label|notch ring|--printed|cut rings",
          "concept|move|ring-cut|--facet|cut"
        }) {
      Ran shown = merese(words.split("\\|"));
      assertEquals(0, shown.code(), shown.err());
      assertTrue(shown.out().contains("Nothing is changed yet; --apply does it ("), shown.out());
      assertArrayEquals(before, ring());
      assertFalse(Files.exists(home.resolve("library/.lock")), "not even the lock is taken");
    }
  }

  @Test
  void answersFollowARenamedConcept() {
    String before = counted("bladed ring");
    Ran done = merese("concept", "rename", "bladed ring", "--id", "ring-sharp", "--apply");
    assertEquals(0, done.code(), done.err());
    assertTrue(done.out().contains("37 notes in 29 sources, printed as they are"), done.out());
    assertEquals(before, counted("bladed ring"));
    assertEquals(before, counted("--concept", "ring-sharp"));
    assertEquals(1, merese("covers", "--concept", "ring-bladed").code());
    assertEquals(0, merese("check").code());
    assertTrue(merese("history").out().contains("concept ring-bladed renamed ring-sharp"));
    assertTrue(merese("identify", "edge=sharp").out().contains("bladed ring"));
  }

  @Test
  void answersFollowAMergeAndASplit() {
    assertEquals(
        0,
        merese("concept", "merge", "stopper-target", "--into", "stopper-disc", "--apply").code());
    String merged = counted("target stopper");
    assertEquals(merged, counted("--concept", "stopper-disc"));
    Ran split =
        merese(
            "concept",
            "split",
            "stopper-disc",
            "stopper-target",
            "--label",
            "target stopper",
            "--printed",
            "target stopper",
            "--apply");
    assertEquals(0, split.code(), split.err());
    assertTrue(split.out().contains("stay where they are; --printed"), split.out());
    assertFalse(counted("--concept", "stopper-target").startsWith("No"));
    assertEquals(0, merese("check").code());
  }

  @Test
  void aNewConceptIsFoundByItsLabels() {
    Ran added =
        merese(
            "concept",
            "add",
            "ring-wrythen",
            "--broader",
            "neck ring",
            "--label",
            "wrythen ring",
            "--definition",
            "Ring twisted while hot.",
            "--alternative",
            "twisted ring",
            "--look-alike",
            "ring-feathered=nicked, not twisted");
    assertEquals(0, added.code(), added.err());
    assertTrue(merese("covers", "twisted rings").out().startsWith("wrythen ring\n"));
    assertTrue(merese("covers", "feathered ring").out().contains("nicked, not twisted"));
    assertTrue(merese("concordance", "ring").out().contains("wrythen ring"));
  }

  @Test
  void whatIsMissingIsAskedForAtATerminalAndRefusedElsewhere() {
    Ran refused = merese("concept", "add", "ring-wrythen", "--broader", "neck-ring");
    assertEquals(2, refused.code());
    assertTrue(refused.err().contains("Give it with --label"), refused.err());
    Ran asked =
        typing(
            "wrythen ring\n\nRing twisted while hot.\n",
            "concept",
            "add",
            "ring-wrythen",
            "--broader",
            "neck-ring");
    assertEquals(0, asked.code(), asked.err());
    assertTrue(merese("covers", "wrythen ring").out().contains("Ring twisted while hot."));
  }

  /** Domain.md, scenario 2: a word of several meanings is asked about, never guessed at. */
  @Test
  void aWordOfSeveralMeaningsIsAskedOrRefusedWithTheIds() {
    Ran refused = merese("concept", "describe", "triple ring", "--uncertain");
    assertEquals(2, refused.code());
    assertTrue(refused.err().contains("ring-annulated (annulated ring), ring-set-three"));
    Ran asked = typing("2\n", "concept", "describe", "triple ring", "--definition", "Three rings.");
    assertEquals(0, asked.code(), asked.err());
    assertTrue(asked.out().startsWith("ring-set-three: set of three rings\n"), asked.out());
    Ran none = merese("concept", "describe", "tripel rign", "--uncertain");
    assertEquals(1, none.code());
    assertTrue(none.err().contains("near it: triple ring"), none.err());
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "ad|ring-x|did you mean add?",
        "add|ring-x|--into|ring-cut|--into does not go with add",
        "rename|ring-cut|say what to rename with one of --label",
        "rename|ring-cut|--drop-old|--drop-old goes with --label",
        "merge|ring-cut|ring-wavy|name what stays with --into",
        "split|ring-cut|write the id of the new concept after ring-cut",
        "look-alike|ring-cut|write the other concept after ring-cut",
        "move|ring-cut|--top|--from|ring-applied|--top stands without",
        "move|ring-cut|--also|--also goes with --broader",
        "describe|ring-cut|--definition||--definition is empty"
      })
  void wrongUseSaysWhatToWrite(String words) {
    String[] all = ("concept|" + words).split("\\|");
    String[] typed = java.util.Arrays.copyOf(all, all.length - 1);
    Ran ran = merese(typed);
    assertEquals(2, ran.code(), ran.err());
    assertTrue(ran.err().contains(all[all.length - 1]), ran.err());
  }

  @Test
  void jsonHasTheWholeChange() throws IOException {
    JsonNode change =
        new ObjectMapper()
            .readTree(
                merese(
                        "concept",
                        "split",
                        "ring-cut",
                        "ring-notched",
                        "--label",
                        "notch ring",
                        "--printed",
                        "cut rings",
                        "--json")
                    .out());
    assertEquals("ring-notched", change.get("concept").asText());
    assertEquals("tressick-1954/n6", change.get("staying").get(0).get("note").asText());
    assertTrue(change.get("effects").size() > 2);
  }

  /**
   * Domain.md, scenario 7: a coined label is for what no source names; where one does, it stays a
   * variant with its date.
   */
  @Test
  void aCoinedLabelHasItsEvidenceAndIsAVariantWhereASourceNamesTheConcept() {
    Ran alone =
        merese(
            "coin",
            "coiled thread",
            "--for",
            "spiral neck trail",
            "--object",
            "d-17",
            "--evidence",
            "photo 3",
            "--on",
            "2026-03-01");
    assertEquals(0, alone.code(), alone.err());
    assertFalse(alone.out().contains("in print"), "what the user printed is no source");
    assertTrue(alone.out().contains("2026-03-01, from object d-17: photo 3"), alone.out());
    Ran named =
        merese(
            "coin",
            "upright cog",
            "--for",
            "vertical ring",
            "--evidence",
            "d-9",
            "--on",
            "2026-03-01");
    assertTrue(named.out().contains("the coined label stays a variant of"), named.out());
    assertTrue(
        merese("covers", "upright cogs").out().startsWith("upright cog (my term)\n"),
        merese("covers", "upright cogs").out());
    assertTrue(merese("gaps", "vertical ring").out().contains("upright cog"));
    Ran taken =
        merese(
            "coin",
            "sharp rings",
            "--for",
            "vertical ring",
            "--evidence",
            "d-9",
            "--on",
            "2026-03-01");
    assertTrue(taken.out().contains("“sharp rings” also means ring-bladed"), taken.out());
    assertTrue(taken.out().contains("“sharp ring” for ring-bladed"), taken.out());
    assertEquals(0, merese("check").code());
  }

  @Test
  void aLabelCoinedAgainTakesThePlaceOfTheFirst() {
    String[] words = {
      "coin", "tail-over ring", "--for", "ring-applied", "--evidence", "d-9", "--on", "2026-03-01"
    };
    Ran again = merese(words);
    assertTrue(
        again.out().contains("before: “tail-over ring”, coined by Tom Ruddick"), again.out());
    Ran third = merese(words);
    assertTrue(third.out().contains("It is so already; nothing was written."), third.out());
  }

  @Test
  void coiningNeedsEvidenceAndAPieceThatIsThere() {
    Ran nothing = merese("coin", "x ring", "--for", "ring-applied");
    assertEquals(2, nothing.code());
    assertTrue(nothing.err().contains("Give it with --evidence"), nothing.err());
    Ran piece = merese("coin", "x ring", "--for", "ring-applied", "--object", "d-71");
    assertEquals(1, piece.code());
    assertTrue(piece.err().contains("did you mean d-17"), piece.err());
    assertEquals(
        2,
        merese("coin", "x ring", "--for", "ring-applied", "--evidence", "y", "--on", "1 May")
            .code());
  }

  @Test
  void aPreferenceHeadsAnswersAndTakesThePlaceOfTheFirst() {
    Ran preferred =
        merese(
            "prefer",
            "Sharp rings",
            "--for",
            "ring-bladed",
            "--because",
            "usage",
            "--set-aside",
            "bladed ring=nobody says it",
            "--on",
            "2026-03-01");
    assertEquals(0, preferred.code(), preferred.err());
    assertTrue(preferred.out().contains("before: “bladed ring” (describes better)"));
    String answer = merese("covers", "bladed ring").out();
    assertTrue(answer.startsWith("sharp ring (my term)\n"), answer);
    assertFalse(preferred.out().contains("set aside: “sharp ring”"), "it was before");
    assertTrue(preferred.out().contains("“knife-edged ring” (usage)"), preferred.out());
    assertEquals(0, merese("prefer", "--for", "ring-bladed", "--none").code());
    assertTrue(merese("covers", "bladed ring").out().startsWith("bladed ring\n"));
    assertEquals(1, merese("prefer", "--for", "ring-bladed", "--none").code());
  }

  @Test
  void onlyALabelOfTheConceptOneCoinedOrPrintedForItIsPreferred() {
    Ran printed = merese("prefer", "rings like knives", "--for", "ring-bladed");
    assertEquals(0, printed.code(), printed.err());
    Ran none = merese("prefer", "wafer", "--for", "ring-bladed");
    assertEquals(1, none.code());
    assertTrue(
        none.err().contains("merese concept describe ring-bladed --alternative \"wafer\""),
        none.err());
    assertEquals(
        1,
        merese("prefer", "sharp ring", "--for", "ring-bladed", "--set-aside", "sharp rings=x")
            .code());
    assertEquals(2, merese("prefer", "--for", "ring-bladed").code());
    assertEquals(2, merese("prefer", "sharp ring", "--for", "ring-bladed", "--none").code());
  }
}
