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
import java.util.stream.Stream;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A photograph that is kept with a note. */
class PhotographTest {
  @TempDir private Path folder;
  private Path shelf;

  @BeforeEach
  void makeTheShelfAndAPhotograph() throws IOException {
    shelf = new Shelves(folder).of("rings");
    ImageIO.write(
        new BufferedImage(8, 4, BufferedImage.TYPE_INT_RGB),
        "jpg",
        shelf.resolve("IMG 1.JPG").toFile());
  }

  @Test
  void isNamedByItsSourceAndPlaceAndGoesWithTheNote() throws IOException {
    Ran ran = note("pl. XIII, fig. 2", "--pictured", "--text", "p. 44");
    assertEquals("", ran.err());
    assertTrue(ran.out().contains("usually in copyright"), ran.out());
    String file = "quenby-1926/quenby-1926-pl-xiii-fig-2.jpg";
    assertEquals(List.of(file), pictures());
    assertTrue(work().contains("\"photo\": \"" + file + "\""), work());

    assertEquals(0, Ran.in(shelf, Map.of(), "undo").code());
    assertEquals(List.of(), pictures());
    assertFalse(work().contains("photo\": \"quenby"), work());
    assertEquals(0, Ran.in(shelf, Map.of(), "undo", "--redo").code());
    assertEquals(List.of(file), pictures());
  }

  @Test
  void isKeptUnderANameOfItsOwn() throws IOException {
    note("pl. XIII", "--pictured");
    note("pl. XIII", "--pictured", "--again");
    assertEquals(
        List.of("quenby-1926/quenby-1926-pl-xiii-2.jpg", "quenby-1926/quenby-1926-pl-xiii.jpg"),
        pictures());
  }

  @Test
  void isNotKeptTwiceWhereTheNoteIsThere() throws IOException {
    note("pl. XIII", "--pictured");
    Ran again = note("pl. XIII", "--pictured");
    assertEquals(1, again.code());
    assertTrue(again.err().contains("has this very note already"), again.err());
    assertEquals(1, pictures().size());
  }

  @Test
  void thatCannotBeReadWritesNoNote() throws IOException {
    String before = work();
    Files.writeString(shelf.resolve("IMG 1.JPG"), "no picture");
    Ran ran = note("pl. XIII", "--pictured");
    assertEquals(1, ran.code());
    assertTrue(ran.err().contains("export it as JPEG"), ran.err());
    assertEquals(before, work());
    assertEquals(List.of(), pictures());
  }

  @Test
  void aPathThatLeavesTheFolderOfPicturesIsNoPhotograph() throws IOException {
    note("pl. XIII", "--pictured");
    Path file = shelf.resolve("library/works/quenby-1926.json");
    for (String path : List.of("../library.json", "/etc/hosts", "a//b", "a/../b", "C:/a")) {
      Files.writeString(
          file, work().replaceFirst("\"photo\": \"[^\"]*\"", "\"photo\": \"" + path + "\""));
      Ran check = Ran.in(shelf, Map.of(), "check");
      assertEquals(1, check.code(), path);
      assertTrue((check.out() + check.err()).contains("below library/pictures"), check.out());
    }
  }

  private Ran note(String locator, String... more) {
    return Ran.in(
        shelf,
        Map.of(),
        Stream.concat(
                Stream.of(
                    "note",
                    "quenby-1926",
                    locator,
                    "bladed ring",
                    "--as",
                    "ring-bladed",
                    "--photo",
                    "IMG 1.JPG"),
                Stream.of(more))
            .toArray(String[]::new));
  }

  private String work() throws IOException {
    return Files.readString(shelf.resolve("library/works/quenby-1926.json"));
  }

  private List<String> pictures() throws IOException {
    Path pictures = shelf.resolve("library/pictures");
    if (!Files.exists(pictures)) {
      return List.of();
    }
    try (Stream<Path> files = Files.walk(pictures)) {
      return files
          .filter(Files::isRegularFile)
          .map(f -> pictures.relativize(f).toString())
          .sorted()
          .toList();
    }
  }
}
