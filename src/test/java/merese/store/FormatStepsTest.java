package merese.store;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import merese.model.Work;
import merese.store.FormatSteps.Step;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A library of an older format is carried forward at its first change, and copied before. */
class FormatStepsTest {
  private static final String FIRST =
      "{\n  \"language\": \"en\",\n   \"format\" : 1,\n  \"title\": \"Old\", \"mine\": [1]\n}\n";

  @TempDir private Path home;
  private Path dir;
  private LibraryFolder library;

  @BeforeEach
  void aLibraryOfFormatOne() {
    dir = Fixture.in(home).path();
    Fixture.write(dir.resolve("library.json"), FIRST);
    library = LibraryFolder.open(dir);
  }

  private Path copy() {
    return dir.resolve(".history/format-1/library.json");
  }

  private String settings() throws IOException {
    return Files.readString(dir.resolve("library.json"));
  }

  private void changeAWork() {
    Stored<Work> old = library.findWork("tarnbrook").orElseThrow();
    library.save(old, Changed.work("tarnbrook", "Another"));
  }

  @Test
  void readingLeavesItAsItIs() throws IOException {
    assertEquals(1, library.settings().format());
    library.check();
    library.lock().close();
    assertEquals(FIRST, settings());
    assertFalse(Files.exists(copy()));
  }

  @Test
  void theFirstSaveCarriesItForwardAndKeepsACopy() throws IOException {
    assertEquals(1, library.settings().format());
    changeAWork();
    assertEquals(FIRST.replace("\"format\" : 1", "\"format\" : 2"), settings());
    assertEquals(FIRST, Files.readString(copy()));
    assertEquals(2, library.settings().format());
    assertEquals("Old", library.settings().title());
  }

  @Test
  void aChangeOfSeveralFilesDoesSoToo() throws IOException {
    try (ChangeSet change = library.change("a test")) {
      Stored<Work> old = library.findWork("tarnbrook").orElseThrow();
      change.save(old, Changed.work("tarnbrook", "Another"));
      change.commit();
    }
    assertTrue(settings().contains("\"format\" : 2"));
    assertEquals(FIRST, Files.readString(copy()));
  }

  @Test
  void whatIsNewerOrCannotBeReadIsNotWrittenTo() throws IOException {
    for (String said : List.of(FIRST.replace(": 1,", ": 3,"), "{", FIRST.replace("1,", "\"1\","))) {
      Fixture.write(dir.resolve("library.json"), said);
      assertThrows(LibraryException.class, this::changeAWork);
      assertEquals(said, settings());
    }
    assertFalse(library.findWork("tarnbrook").orElseThrow().value().title().equals("Another"));
    assertFalse(Files.exists(copy()));
  }

  @Test
  void aNewLibraryIsOfTheNewestFormat() {
    assertEquals(2, LibraryFolder.create(home.resolve("new"), "New").settings().format());
  }

  /** A step that some later program may need: it alters two more files. */
  private static final Step LATER =
      new Step() {
        @Override
        public int from() {
          return 2;
        }

        @Override
        public List<String> files(Path root) {
          return List.of("works/tarnbrook.json", "mine.json");
        }

        @Override
        public byte[] altered(String file, byte[] bytes) {
          String text = new String(bytes, StandardCharsets.UTF_8);
          return file.equals("library.json") || text.endsWith("\n \n")
              ? bytes
              : (text + " \n").getBytes(StandardCharsets.UTF_8);
        }
      };

  /** Stopped before each of its steps in turn, and once in none, it ends the same. */
  @Test
  void brokenOffAnywhereItIsDoneAgainAndEveryCopyIsOfWhatWasThere() throws IOException {
    byte[] work = Files.readAllBytes(dir.resolve("works/tarnbrook.json"));
    byte[] mine = Files.readAllBytes(dir.resolve("mine.json"));
    byte[] second = FIRST.replace(": 1,", ": 2,").getBytes(StandardCharsets.UTF_8);
    int stops = 0;
    for (int stop = 0; ; stop++) {
      Fixture.write(dir.resolve("library.json"), new String(second, StandardCharsets.UTF_8));
      Files.write(dir.resolve("works/tarnbrook.json"), work);
      Files.write(dir.resolve("mine.json"), mine);
      int[] left = {stop};
      Steps steps =
          what -> {
            if (left[0]-- == 0) {
              throw new IOException("stopped");
            }
          };
      boolean stopped = false;
      try {
        new FormatSteps(dir, steps).carryForward(List.of(LATER));
      } catch (LibraryException e) {
        stopped = true;
        stops++;
      }
      if (stopped) {
        assertArrayEquals(second, Files.readAllBytes(dir.resolve("library.json")));
        // what this program does not know yet is done by the next one
        new FormatSteps(dir, Steps.NONE).carryForward(List.of(LATER));
      }
      assertTrue(settings().contains(": 3,"), settings());
      Path copies = dir.resolve(".history/format-2");
      assertArrayEquals(work, Files.readAllBytes(copies.resolve("works/tarnbrook.json")));
      assertArrayEquals(mine, Files.readAllBytes(copies.resolve("mine.json")));
      assertArrayEquals(second, Files.readAllBytes(copies.resolve("library.json")));
      assertEquals(work.length + 2, Files.size(dir.resolve("works/tarnbrook.json")));
      if (!stopped) {
        break;
      }
    }
    assertEquals(6, stops);
  }
}
