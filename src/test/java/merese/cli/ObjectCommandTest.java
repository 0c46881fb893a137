package merese.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import javax.imageio.ImageIO;
import merese.model.OwnObject;
import merese.store.LibraryFolder;
import merese.testing.DemoLibrary;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What an observation is, is by the project's domain.md 0; the rest common practice, no source. */
class ObjectCommandTest {
  @TempDir Path home;

  @BeforeEach
  void copyTheDemoAndAddAPiece() throws IOException {
    DemoLibrary.copyTo(home);
    Ran added = merese("object", "add", "d-23", "--title", "Pint decanter with one ring");
    assertEquals(0, added.code(), added.err());
  }

  private Ran merese(String... words) {
    return Ran.in(home, Map.of("COLUMNS", "80"), words);
  }

  private OwnObject piece() {
    return LibraryFolder.open(home.resolve("library")).findObject("d-23").orElseThrow().value();
  }

  @Test
  void whatIsRecordedOfItIsUsedByTheKey() {
    Ran felt = merese("object", "observe", "d-23", "ring", "overlap", "--felt");
    assertTrue(felt.out().contains("Key       join: felt on the outside"), felt.out());
    Ran ridges = merese("object", "observe", "d-23", "ring", "ridges", "--value", "two of them");
    assertTrue(ridges.out().contains("Key       ridges: 2"), ridges.out());
    String fits = merese("identify", "--object", "d-23").out();
    assertTrue(fits.contains("felt on the outside (felt) – “ring: overlap”"), fits);
    assertFalse(fits.contains("not read by the key"), fits);
  }

  /** "Looked for, not found" differs from "not looked for", and rules nothing out. */
  @Test
  void whatWasLookedForInVainIsKeptApart() {
    Ran none = merese("object", "observe", "d-23", "ring", "mould seam", "--not-found");
    assertTrue(none.out().contains("ring: mould seam, looked for and not found"), none.out());
    assertFalse(piece().observations().get(0).found());
    String fits = merese("identify", "--object", "d-23").out();
    assertTrue(fits.contains("looked for, not found: rules nothing out"), fits);
    assertEquals(
        2,
        merese("object", "observe", "d-23", "ring", "seam", "--not-found", "--value", "x").code());
  }

  @Test
  void whatTheKeyCannotReadIsSaidWithWhatItKnows() {
    Ran value = merese("object", "observe", "d-23", "ring", "edge", "--value", "keen");
    assertTrue(value.out().contains("begin --value with one of sharp, rounded"), value.out());
    Ran character = merese("object", "observe", "d-23", "ring", "joins visible", "--value", "x");
    assertFalse(character.out().contains("near it: seam"), character.out());
    Ran unknown = merese("object", "observe", "d-23", "ring", "tint", "--value", "grey");
    assertTrue(unknown.out().contains("the key has no such character"), unknown.out());
    assertEquals(3, piece().observations().size(), "all are recorded");
  }

  @Test
  void aSecondObservationStandsBesideTheFirstUnlessItReplacesIt() {
    merese("object", "observe", "d-23", "ring", "edge", "--value", "sharp");
    Ran beside = merese("object", "observe", "d-23", "Ring", "edge", "--value", "rounded");
    assertTrue(beside.out().contains("(--instead replaces it)"), beside.out());
    assertEquals(2, piece().observations().size());
    merese("object", "observe", "d-23", "ring", "edge", "--value", "square", "--instead");
    assertEquals(1, piece().observations().size());
    assertEquals("square", piece().observations().get(0).value().orElseThrow());
  }

  @Test
  void evidenceIsOfOneKindForEachConcept() {
    assertEquals(0, merese("object", "evidence", "D-23", "bladed ring").code());
    Ran mixed =
        merese("object", "evidence", "d-23", "ring-bladed", "--as", "mixed", "--words", "blunt");
    assertTrue(mixed.out().contains("before: example of ring-bladed"), mixed.out());
    assertEquals(1, piece().evidence().size());
    assertTrue(merese("covers", "bladed ring").out().contains("d-23"), "an answer shows the piece");
    Ran again =
        merese("object", "evidence", "d-23", "ring-bladed", "--as", "mixed", "--words", "blunt");
    assertTrue(again.out().contains("It is so already"), again.out());
  }

  @Test
  void aPhotographIsAFileBelowThePictures() throws IOException {
    Ran missing = merese("object", "photograph", "d-23", "objects/d-23/01.jpg");
    assertEquals(1, missing.code());
    assertTrue(missing.err().contains("there is no such file"), missing.err());
    assertTrue(missing.err().contains("look at its name"), missing.err());
    Files.writeString(home.resolve("outside.jpg"), "no picture");
    Path pictures = home.resolve("library/pictures/objects/d-23");
    Files.createDirectories(pictures);
    Files.writeString(pictures.resolve("01.jpg"), "");
    Files.writeString(pictures.resolve("02.jpg"), "");
    Ran outside = merese("object", "photograph", "d-23", "outside.jpg");
    assertEquals(1, outside.code());
    assertTrue(outside.err().contains("this is no picture"), outside.err());
    assertEquals(1, merese("object", "photograph", "d-23", "../../outside.jpg").code());
    assertEquals(0, merese("object", "photograph", "d-23", "objects/d-23/01.jpg").code());
    Ran typed =
        merese(
            "object",
            "photograph",
            "d-23",
            "library/pictures/objects/d-23/02.jpg",
            "--turn",
            "lip towards you");
    assertEquals(0, typed.code(), typed.err());
    assertEquals("objects/d-23/02.jpg", piece().photographs().get(1).file());
    assertEquals("p2", piece().photographs().get(1).id());
    assertEquals(
        0,
        merese("object", "observe", "d-23", "ring", "edge", "--value", "sharp", "--photo", "p2")
            .code());
    Ran unknown = merese("object", "observe", "d-23", "ring", "edge", "--photo", "p9");
    assertTrue(unknown.err().contains("it has p1, p2"), unknown.err());
    assertEquals(
        0,
        LibraryFolder.open(home.resolve("library")).check().stream()
            .filter(p -> p.file().endsWith("d-23.json"))
            .count());
  }

  @Test
  void aPhotographFromElsewhereIsCopiedIn() throws IOException {
    BufferedImage image = new BufferedImage(8, 4, BufferedImage.TYPE_INT_RGB);
    Path taken = home.resolve("front.jpg");
    assertTrue(ImageIO.write(image, "jpg", taken.toFile()));
    Path kept = home.resolve("library/pictures/objects/d-23-p1.jpg");

    Ran front = merese("object", "photograph", "d-23", "front.jpg", "--words", "whole, front");
    assertEquals(0, front.code(), front.err());
    assertEquals("objects/d-23-p1.jpg", piece().photographs().get(0).file());
    assertEquals(8, ImageIO.read(kept.toFile()).getWidth());
    assertTrue(Files.exists(taken), "the user's own file stays");

    assertEquals(0, merese("undo").code());
    assertFalse(Files.exists(kept));
    assertEquals(List.of(), piece().photographs());
    assertEquals(0, merese("undo", "--redo").code());
    assertTrue(Files.exists(kept));

    Ran again = merese("object", "photograph", "d-23", "front.jpg", "--id", "p1");
    assertEquals(1, again.code());
    assertTrue(again.err().contains("choose another --id"), again.err());
    Ran badId = merese("object", "photograph", "d-23", "front.jpg", "--id", "a/b");
    assertEquals(1, badId.code());
    assertTrue(badId.err().contains("cannot be the name of a file"), badId.err());
    assertEquals(1, piece().photographs().size());
  }

  @Test
  void whatAPieceIsCanBeSaidLater() {
    Ran described =
        merese("object", "describe", "d-23", "--title", "Quart decanter", "--place", "cabinet 1");
    assertTrue(described.out().contains("(before: Pint decanter with one ring)"), described.out());
    assertTrue(merese("pull", "--object", "d-23").code() >= 0);
    assertEquals("cabinet 1", piece().place().orElseThrow());
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "add|d-23|--title|x|there is a piece d-23 already",
        "add|d-25|Give it with --title",
        "observe|d-23|ring|write the part and what was looked for after d-23",
        "observe|d-23|ring|edge|--felt|--seen|do not go together",
        "evidence|d-23|ring-bladed|--as|exmaple|did you mean example?",
        "evidence|d-23|ring-bladed|--place|x|--place does not go with evidence",
        "evidence|d-32|ring-bladed|did you mean d-23",
        "describe|d-23|say what to describe with",
        "describe|d-23|x|--title|y|is one word too many",
        "add|a/b|--title|x|cannot be the name of a file"
      })
  void whatCannotBeMeantIsRefusedInWords(String words) {
    String[] all = ("object|" + words).split("\\|");
    Ran ran = merese(java.util.Arrays.copyOf(all, all.length - 1));
    assertTrue(ran.code() == 1 || ran.code() == 2, ran.err());
    assertTrue(ran.err().contains(all[all.length - 1]), ran.err());
  }
}
