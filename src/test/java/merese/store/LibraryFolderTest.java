package merese.store;

import static merese.store.Fixture.refusal;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.FileTime;
import java.time.Instant;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Deque;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalLong;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class LibraryFolderTest {
  private static final String STARTER = "merese/store/starter/";

  @TempDir Path dir;

  @Test
  void aScanNamesEachFileOfTheLibraryAndNoOther() throws IOException {
    LibraryFolder library = Fixture.in(dir);
    for (String other :
        List.of("works/notes.txt", "works/.x.json", "pages/a.json", ".history/1.json")) {
      Fixture.write(library.resolve(other), "{}");
    }
    Fixture.write(library.resolve("works/ab/cd/abc.json"), "{}");
    Files.createSymbolicLink(library.resolve("works/loop"), library.resolve("works"));
    Files.createDirectories(library.resolve("works/folder.json"));
    assertEquals(
        List.of(
            "library.json SETTINGS " + Fixture.bytes("library.json").length,
            "mine.json MINE " + Fixture.bytes("mine.json").length,
            "objects/d-17.json OBJECT " + Fixture.bytes("objects/d-17.json").length,
            "pages/a.json PAGES 2",
            "vocabulary/homonyms.json HOMONYMS " + Fixture.bytes("vocabulary/homonyms.json").length,
            "vocabulary/ring.json VOCABULARY " + Fixture.bytes(Fixture.RINGS).length,
            "works/ab/cd/abc.json WORK 2",
            "works/tarnbrook.json WORK " + Fixture.bytes(Fixture.WORK).length),
        library.scan().stream().map(f -> f.relative() + " " + f.kind() + " " + f.size()).toList());
    LibraryFile work = library.scan().get(7);
    assertEquals("tarnbrook", work.name());
    assertEquals(library.resolve(Fixture.WORK), work.path());
    assertEquals(
        Files.getLastModifiedTime(work.path()).to(java.util.concurrent.TimeUnit.NANOSECONDS),
        work.modified());
  }

  @Test
  void listingFolderByFolderFindsWhatAScanFinds() throws IOException {
    LibraryFolder library = Fixture.in(dir);
    Fixture.write(library.resolve("works/ab/cd/abc.json"), "{}");
    Fixture.write(library.resolve("works/ab/.draft.json"), "{}");
    Fixture.write(library.resolve("works/.hidden/abc.json"), "{}");
    Fixture.write(library.resolve("linked/abc.json"), "{}");
    Files.createSymbolicLink(library.resolve("works/link"), library.resolve("linked"));
    List<LibraryFile> found = new ArrayList<>();
    Deque<String> folders = new ArrayDeque<>(List.of(""));
    while (!folders.isEmpty()) {
      String folder = folders.pop();
      LibraryFolder.Listing listing = library.list(folder).orElseThrow();
      assertEquals(
          Files.getLastModifiedTime(library.resolve(folder)).to(TimeUnit.NANOSECONDS),
          listing.modified());
      found.addAll(listing.files());
      listing.folders().stream().filter(f -> library.timeOf(f).isPresent()).forEach(folders::push);
    }
    Collections.sort(found);
    assertEquals(library.scan(), found);
    for (LibraryFile file : found) {
      assertEquals(Optional.of(file), library.look(file.relative()));
    }
    for (String none : List.of("works/none", "works/link", "works/tarnbrook.json")) {
      assertEquals(Optional.empty(), library.list(none), none);
      assertTrue(library.timeOf(none).isEmpty(), none);
    }
    for (String none : List.of("works/none.json", "none.json", "works/ab")) {
      assertEquals(Optional.empty(), library.look(none), none);
    }
  }

  @Test
  void ofTheWorksThatLieElsewhereTheTimeIsThatOfTheirFolder() throws IOException {
    LibraryFolder library = Fixture.in(dir);
    Path elsewhere = dir.resolve("elsewhere");
    Files.move(library.resolve("works"), elsewhere);
    FileTime time = FileTime.from(Instant.parse("2020-01-01T00:00:00Z"));
    Files.setLastModifiedTime(elsewhere, time);
    Files.createSymbolicLink(library.resolve("works"), elsewhere);
    assertEquals(OptionalLong.of(time.to(TimeUnit.NANOSECONDS)), library.timeOf("works"));
  }

  @Nested
  @DisplayName("What is no library is refused:")
  class NoLibrary {
    @Test
    void aFolderWithoutSettings() {
      assertEquals(
          "no library here: " + dir + " has no library.json; make one with: merese new DIR",
          refusal(() -> LibraryFolder.open(dir)));
    }

    @Test
    void noFolderAndAFile() {
      Path none = dir.resolve("none");
      String found = refusal(() -> LibraryFolder.open(none));
      assertTrue(found.startsWith("no library here: there is no folder " + none), found);
      Fixture.write(none, "x");
      found = refusal(() -> LibraryFolder.open(none));
      assertTrue(found.startsWith("no library here: " + none + " is a file, not a folder"), found);
    }

    @Test
    void aLayoutOfALaterProgram() {
      Fixture.write(dir.resolve("library.json"), "{\n  \"name\": {},\n  \"format\": 3\n}");
      assertEquals(
          dir.resolve("library.json")
              + ":3:13: this library was made by a newer merese: its format is 3, and this one"
              + " knows 2; use that newer merese",
          refusal(() -> LibraryFolder.open(dir).settings()));
    }

    @Test
    void settingsThatAreBrokenOrAFolder() throws IOException {
      Fixture.write(dir.resolve("library.json"), "{\"format\": 2}");
      String found = refusal(() -> LibraryFolder.open(dir).settings());
      assertTrue(
          found.startsWith(dir.resolve("library.json") + ":1:1: \"title\" is missing"), found);
      Files.delete(dir.resolve("library.json"));
      Files.createDirectory(dir.resolve("library.json"));
      found = refusal(() -> LibraryFolder.open(dir).settings());
      assertTrue(found.contains("this must be a file, not a folder"), found);
    }

    @Test
    void worksThatAreAFile() {
      Fixture.write(dir.resolve("library.json"), Fixture.text("library.json"));
      Fixture.write(dir.resolve("works"), "");
      LibraryFolder library = LibraryFolder.open(dir);
      String found = refusal(library::scan);
      assertTrue(found.startsWith(dir.resolve("works") + ": this must be a folder"), found);
    }
  }

  @Test
  void aFileThatIsFarTooLargeIsNotRead() throws IOException {
    LibraryFolder library = Fixture.in(dir);
    Path large = library.resolve("works/large.json");
    try (var file = new java.io.RandomAccessFile(large.toFile(), "rw")) {
      file.setLength(65L << 20);
    }
    assertEquals(
        large + ": the file is 65 MB large; one file may have 64 MB; divide it",
        refusal(() -> library.readWork(large)));
  }

  @Nested
  @DisplayName("The library is found")
  class Finding {
    private Path find(Optional<String> option, Map<String, String> environment) {
      return LibraryFolder.find(option, environment, dir);
    }

    @Test
    void byOptionThenEnvironmentThenWorkingDirectory() {
      Path here = Fixture.in(dir).path();
      Path there = Fixture.in(dir.resolve("there")).path();
      Path third = Fixture.in(dir.resolve("third")).path();
      Map<String, String> environment = Map.of("MERESE_LIBRARY", third.toString());
      assertEquals(here, find(Optional.empty(), Map.of()));
      assertEquals(here, find(Optional.empty(), Map.of("MERESE_LIBRARY", "")));
      assertEquals(third, find(Optional.empty(), environment));
      assertEquals(there, find(Optional.of("there"), environment));
      assertEquals(there, find(Optional.of("there/library"), environment));
    }

    @Test
    void orTheAddressIsNamed() {
      assertEquals(
          "no library here: there is no folder "
              + dir.resolve("gone")
              + " (MERESE_LIBRARY); make one with: merese new DIR",
          refusal(() -> find(Optional.empty(), Map.of("MERESE_LIBRARY", "gone"))));
      assertEquals(
          "no library here: " + dir + " has no library.json; make one with: merese new DIR",
          refusal(() -> find(Optional.empty(), Map.of())));
      String found = refusal(() -> find(Optional.of("a\0b"), Map.of()));
      assertTrue(found.contains("(--library) is not a path"), found);
    }

    @Test
    void andItsIndexLiesBesideIt() {
      assertEquals(Path.of("index"), LibraryFinder.indexOf(Path.of("library")));
      assertEquals(Path.of("/a/index"), LibraryFinder.indexOf(Path.of("/a/glass")));
      Path above = Path.of("").toAbsolutePath().getParent();
      assertEquals(above.resolve("index"), LibraryFinder.indexOf(Path.of("")));
      assertEquals(above.resolve("index"), LibraryFinder.indexOf(Path.of(".")));
    }
  }

  @Nested
  @DisplayName("A new library")
  class Creating {
    @Test
    void isWholeAndConsistent() throws IOException {
      LibraryFolder library = LibraryFolder.create(dir.resolve("new"), "My shelf", STARTER);
      assertEquals(dir.resolve("new/library"), library.path());
      assertEquals("My shelf", library.settings().title());
      assertEquals(
          List.of("library.json", "mine.json", "vocabulary/homonyms.json", "vocabulary/ring.json"),
          library.scan().stream().map(LibraryFile::relative).toList());
      assertEquals(List.of(), library.check());
      assertTrue(Files.isDirectory(library.resolve("works")));
      assertTrue(Files.isDirectory(library.resolve("objects")));
      assertTrue(Fixture.read(library.index().resolve("README.md")).contains("can be deleted"));
      assertEquals(
          "{\n  \"format\": 2,\n  \"title\": \"My shelf\",\n  \"language\": \"en-GB\"\n}\n",
          Fixture.read(library.resolve("library.json")));
      assertEquals("{}\n", Fixture.read(library.resolve("mine.json")));
      try (Stream<Path> made = Files.list(dir.resolve("new"))) {
        assertEquals(2, made.count());
      }
    }

    /** The licence of the AAT (ODC-By 1.0, 4.2) asks for the notice wherever its data goes. */
    @Test
    void saysWhoseThesaurusItsVocabularyLinksTo() throws IOException {
      LibraryFolder library = LibraryFolder.create(dir.resolve("new"), "My shelf");
      String readme = Fixture.read(library.path().resolve("vocabulary/README.md"));
      assertTrue(readme.replaceAll("\\s+", " ").contains("the ODC Attribution License"), readme);
      assertEquals(List.of(), library.check());
    }

    @Test
    void mayTakeThePlaceOfAnEmptyFolderAndOfNothingElse() throws IOException {
      Files.createDirectories(dir.resolve("library"));
      LibraryFolder.create(dir, "One", STARTER);
      String found = refusal(() -> LibraryFolder.create(dir, "Two", STARTER));
      assertEquals(
          dir.resolve("library")
              + ": there is something here already; nothing was changed; name another folder",
          found);
      assertEquals("One", LibraryFolder.open(dir.resolve("library")).settings().title());
      Fixture.write(dir.resolve("x/library"), "a file");
      refusal(() -> LibraryFolder.create(dir.resolve("x"), "Two", STARTER));
      assertEquals("a file", Fixture.read(dir.resolve("x/library")));
    }

    @Test
    void needsATitle() {
      refusal(() -> LibraryFolder.create(dir.resolve("y"), " ", STARTER));
      assertFalse(Files.exists(dir.resolve("y")));
    }
  }
}
