package merese.store;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import merese.model.Facet;
import merese.model.OwnObject;
import merese.model.Work;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** No name that stands in data leads out of the library. */
class NamesInsideTest {
  @TempDir private Path dir;
  private Path root;
  private LibraryFolder library;

  @BeforeEach
  void aLibrary() throws IOException {
    library = Fixture.in(dir);
    root = library.path();
    Fixture.write(dir.resolve("x.json"), "outside");
    Fixture.write(root.resolve("pictures/d-1/front.jpg"), "a picture");
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "../x",
        "../../x",
        "/x",
        "a/../../x",
        "..",
        ".",
        "..\\x",
        "C:x",
        "a\u0000b",
        "a/b"
      })
  void aWorkAPieceAndAFacetAreNeitherReadNorWrittenOutside(String name) throws IOException {
    assertEquals(Optional.empty(), library.findWork(name));
    assertEquals(Optional.empty(), library.findObject(name));
    Work work = Changed.work(name, "A work");
    OwnObject piece = Changed.object(name);
    VocabularyFile facet =
        new VocabularyFile(new Facet(name, Optional.empty(), List.of()), List.of());
    assertThrows(LibraryException.class, () -> library.add(work));
    assertThrows(LibraryException.class, () -> library.add(piece));
    assertThrows(LibraryException.class, () -> library.add(facet));
    try (ChangeSet change = library.change("a test")) {
      assertThrows(LibraryException.class, () -> change.add(work));
      assertThrows(LibraryException.class, () -> change.add(piece));
      assertThrows(LibraryException.class, () -> change.add(facet));
      Path kept = change.reject(name, new byte[] {1});
      assertTrue(kept.normalize().startsWith(root.resolve("rejected")), kept.toString());
    }
    assertEquals("outside", Files.readString(dir.resolve("x.json")));
  }

  private String refusal(String picture) {
    LibraryException refused =
        assertThrows(LibraryException.class, () -> library.picture(picture), picture);
    assertTrue(refused.getMessage().contains("name a file below"), refused.getMessage());
    return refused.getMessage();
  }

  @Test
  void aPictureIsInTheFolderOfPictures() {
    assertEquals(root.resolve("pictures/d-1/front.jpg"), library.picture("d-1/front.jpg"));
    assertEquals(root.resolve("pictures/new/b.jpg"), library.picture("new/b.jpg"));
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "",
        "../mine.json",
        "/etc/passwd",
        "d-1/../../mine.json",
        "d-1/..",
        ".",
        "a\\b",
        "C:/x",
        "d-1//front.jpg",
        "a\u0000b",
        ".hidden",
        "d-1"
      })
  void aNameThatIsNoneOfAPictureIsRefused(String name) {
    refusal(name);
  }

  @Test
  void aLinkIsNotFollowedWhereverItStands() throws IOException {
    Files.createSymbolicLink(root.resolve("pictures/out.jpg"), dir.resolve("x.json"));
    Files.createSymbolicLink(root.resolve("pictures/away"), dir);
    Files.createSymbolicLink(
        root.resolve("pictures/in.jpg"), root.resolve("pictures/d-1/front.jpg"));
    assertTrue(refusal("out.jpg").contains("is a symbolic link"));
    assertTrue(refusal("in.jpg").contains("is a symbolic link"));
    assertTrue(refusal("away/x.json").contains("behind a symbolic link"));
    Files.move(root.resolve("pictures"), dir.resolve("pictures"));
    Files.createSymbolicLink(root.resolve("pictures"), dir.resolve("pictures"));
    assertTrue(refusal("d-1/front.jpg").contains("behind a symbolic link"));
  }

  @Test
  void theCheckOfTheLibraryFindsAPhotographThatIsOutside() throws IOException {
    Files.createSymbolicLink(root.resolve("pictures/out.jpg"), dir.resolve("x.json"));
    Fixture.write(
        root.resolve("objects/d-99.json"),
        """
        {
          "ref": "d-99",
          "title": "A jug",
          "photographs": [
            {"id": "p1", "file": "d-1/front.jpg"},
            {"id": "p2", "file": "out.jpg"},
            {"id": "p3", "file": "../mine.json"}
          ]
        }
        """);
    List<String> found = library.check().stream().map(Problem::toString).toList();
    assertEquals(2, found.size(), found.toString());
    assertTrue(
        found.get(0).contains("d-99.json:6:26: photographs[1].file: \"out.jpg\" is a symbolic"),
        found.toString());
    assertTrue(found.get(1).contains("d-99.json:7:26: photographs[2].file"), found.toString());
  }
}
