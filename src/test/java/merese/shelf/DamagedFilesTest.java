package merese.shelf;

import static merese.testing.SmallLibrary.check;
import static merese.testing.SmallLibrary.says;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeFalse;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.FileTime;
import java.nio.file.attribute.PosixFilePermission;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import java.util.stream.Stream;
import merese.answer.CoverageQuestion;
import merese.answer.Covers;
import merese.model.Claim;
import merese.model.Mine;
import merese.model.OwnObject;
import merese.shelf.Shortfall.Effect;
import merese.store.LibraryException;
import merese.store.LibraryFolder;
import merese.testing.AnswerLines;
import merese.testing.SmallLibrary;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** A file that can't be read is named, remembered, and hides no other. */
class DamagedFilesTest {
  private static final Instant LONG_AGO = Instant.parse("2020-01-01T00:00:00Z");

  @TempDir private Path folder;
  private Path library;
  private int edits;

  @BeforeEach
  void aLibraryOfThreeBooks() throws IOException {
    OwnObject piece =
        new OwnObject(
            "d-1",
            "Quart decanter",
            Optional.empty(),
            Optional.empty(),
            List.of(
                new OwnObject.Evidence(
                    "ring-bladed",
                    OwnObject.Evidence.Kind.EXAMPLE,
                    Optional.empty(),
                    Optional.empty())),
            List.of(),
            List.of());
    Mine mine =
        new Mine(
            List.of(),
            List.of(),
            List.of(
                new Mine.Experience(
                    "ring-bladed",
                    Claim.Kind.METHOD,
                    "never felt",
                    java.util.OptionalInt.empty(),
                    java.util.OptionalInt.empty())),
            List.of());
    library =
        new SmallLibrary()
            .book("Amery", 1910, "One", says("bladed ring", "ring-bladed").photo("pl. 1"))
            .book("Brook", 1920, "Two", says("bladed ring", "ring-bladed").photo("pl. 2"))
            .book(
                "Coombe",
                1930,
                "Three",
                says("bladed ring", "ring-bladed").photo("pl. 3"),
                check("ring-bladed", "pp. 1–9", merese.model.Check.Method.READ))
            .object(piece)
            .mine(mine)
            .write(folder)
            .path();
    try (Stream<Path> files = Files.walk(library)) {
      for (Path file : files.filter(Files::isRegularFile).toList()) {
        Files.setLastModifiedTime(file, FileTime.from(LONG_AGO));
      }
    }
  }

  private Shelf open() {
    return Shelf.open(LibraryFolder.open(library), Watcher.NONE);
  }

  private UpToDate report() {
    try (Shelf shelf = open()) {
      return shelf.upToDate();
    }
  }

  private List<Shortfall> shortfalls() {
    try (Shelf shelf = open()) {
      return shelf.shortfalls();
    }
  }

  private String ask() {
    try (Shelf shelf = open()) {
      return AnswerLines.of(
          shelf.ask(s -> Covers.answer(s, CoverageQuestion.ofConcept("ring-bladed"))));
    }
  }

  private void write(String file, String text) throws IOException {
    Path path = library.resolve(file);
    Files.writeString(path, text);
    Files.setLastModifiedTime(path, FileTime.from(LONG_AGO.plusSeconds(++edits)));
  }

  private String text(String file) throws IOException {
    return Files.readString(library.resolve(file));
  }

  private void edit(String file, String old, String now) throws IOException {
    assertTrue(text(file).contains(old), old);
    write(file, text(file).replace(old, now));
  }

  private void dropIndex() throws IOException {
    try (Stream<Path> all = Files.walk(folder.resolve("index"))) {
      for (Path path : all.sorted(java.util.Comparator.reverseOrder()).toList()) {
        Files.delete(path);
      }
    }
  }

  private Shortfall only() {
    List<Shortfall> all = shortfalls();
    assertEquals(1, all.size(), all.toString());
    return all.get(0);
  }

  @Test
  void aSoundLibraryLacksNothing() {
    assertEquals(List.of(), shortfalls());
  }

  @ParameterizedTest
  @ValueSource(booleans = {false, true})
  void aWorkThatCannotBeReadIsNamedWithItsPlaceAndTheOthersAnswer(boolean indexed)
      throws IOException {
    if (indexed) {
      report();
    }
    edit("works/brook-1920.json", "\"pictures\"", "\"picturs\"");
    Shortfall shortfall = only();
    assertEquals("works/brook-1920.json", shortfall.file());
    assertEquals(Effect.UNREADABLE, shortfall.effect());
    String problem = shortfall.problems().get(0).toString();
    assertTrue(problem.startsWith(library.resolve("works/brook-1920.json") + ":"), problem);
    assertTrue(problem.contains("picturs"), problem);
    assertTrue(shortfall.problems().get(0).line() > 1, problem);
    assertTrue(ask().contains("Amery 1910, pl. 1 "), ask());
    assertTrue(ask().contains("Coombe 1930, pl. 3 "), ask());
    assertFalse(ask().contains("Brook"), ask());
  }

  @Test
  void aDamagedFileIsReportedAtEveryQuestionAndReadAgainOnlyWhenItChanged() throws IOException {
    edit("works/brook-1920.json", "\"pictures\"", "\"picturs\"");
    report();
    for (int i = 0; i < 3; i++) {
      assertEquals(List.of(), report().opened());
      assertEquals("works/brook-1920.json", only().file());
    }
    edit("works/brook-1920.json", "\"picturs\"", "\"pictures\"");
    assertEquals(List.of("works/brook-1920.json"), report().opened());
    assertEquals(List.of(), shortfalls());
    assertTrue(ask().contains("Brook 1920, pl. 2 "), ask());
  }

  /** Where permissions bind whoever runs the tests. */
  @Test
  void aFileThatMayNotBeReadIsReadAsSoonAsItMayThoughItsTimeIsTheSame() throws IOException {
    Path brook = library.resolve("works/brook-1920.json");
    Set<PosixFilePermission> usual = Files.getPosixFilePermissions(brook);
    Files.setPosixFilePermissions(brook, Set.of());
    try {
      assumeFalse(Files.isReadable(brook));
      assertTrue(only().problems().get(0).what().contains("access is denied"));
      assertEquals(List.of(), report().opened());
    } finally {
      Files.setPosixFilePermissions(brook, usual);
    }
    assertEquals(List.of(), shortfalls());
  }

  @Nested
  class AWorkThatRepeats {
    @Test
    void aKeyIsLeftOutIfItIsTheLaterByItsPath() throws IOException {
      write(
          "works/zother.json",
          text("works/amery-1910.json").replace("\"id\": \"amery-1910\"", "\"id\": \"zother\""));
      for (boolean again : new boolean[] {false, true}) {
        Shortfall shortfall = only();
        assertEquals("works/zother.json", shortfall.file());
        assertEquals(Effect.REPEATS, shortfall.effect());
        String problem = shortfall.problems().get(0).toString();
        assertTrue(problem.contains("the edition \"amery-1910\" stands in"), problem);
        assertTrue(ask().startsWith("ring-bladed “bladed ring”: 3 of 3"), ask());
        if (!again) {
          dropIndex();
        }
      }
    }

    @Test
    void isTakenInWhenTheOtherGoes() throws IOException {
      write(
          "works/zother.json",
          text("works/amery-1910.json").replace("\"id\": \"amery-1910\"", "\"id\": \"zother\""));
      report();
      Files.delete(library.resolve("works/amery-1910.json"));
      assertEquals(List.of(), shortfalls());
      assertTrue(ask().contains("Amery 1910, pl. 1 "), ask());
    }

    @Test
    void makesTheLaterGoWhereTheEarlierComesToHaveItsKey() throws IOException {
      report();
      edit("works/amery-1910.json", "\"key\": \"amery-1910\"", "\"key\": \"brook-1920\"");
      Shortfall shortfall = only();
      assertEquals("works/brook-1920.json", shortfall.file());
      assertEquals(Effect.REPEATS, shortfall.effect());
      String answer = ask();
      assertTrue(answer.contains("pl. 1 ") && !answer.contains("pl. 2 "), answer);
    }

    @Test
    void itsOwnNameInAnotherFolderIsLeftOut() throws IOException {
      Files.createDirectory(library.resolve("works/br"));
      write(
          "works/br/brook-1920.json",
          text("works/brook-1920.json").replace("\"key\": \"brook-1920\"", "\"key\": \"other\""));
      assertEquals("works/brook-1920.json", only().file());
      assertEquals(Effect.REPEATS, only().effect());
    }
  }

  @Test
  void aWorkInAFileOfAnotherNameIsLeftOut() throws IOException {
    report();
    Files.move(library.resolve("works/brook-1920.json"), library.resolve("works/brook-1921.json"));
    assertEquals("works/brook-1921.json", only().file());
    assertTrue(only().problems().get(0).what().contains("another name"));
  }

  @Nested
  class TheVocabulary {
    @Test
    void saysWhatItSaidWhereItsFileIsDamaged() throws IOException {
      String sound = ask();
      edit("vocabulary/ring.json", "\"facet\"", "facet");
      Shortfall shortfall = only();
      assertEquals("vocabulary/ring.json", shortfall.file());
      assertEquals(Effect.AS_IT_WAS, shortfall.effect());
      assertEquals(sound, ask());
      edit("vocabulary/neck.json", "\"concepts\"", "concepts");
      assertEquals(2, shortfalls().size());
      assertEquals(sound, ask());
      edit("vocabulary/ring.json", "facet", "\"facet\"");
      edit("vocabulary/neck.json", "concepts", "\"concepts\"");
    }

    @Test
    void leavesWhatNotesNameToStandForItselfWhereNothingIsKnownOfIt() throws IOException {
      String damaged = text("vocabulary/ring.json");
      write("vocabulary/ring.json", damaged.substring(0, 100));
      assertEquals(Effect.UNREADABLE, only().effect());
      String answer = ask();
      assertTrue(
          answer.startsWith("ring-bladed “bladed ring”: 3 of 3") || answer.contains("pl. 1"),
          answer);
      try (Shelf shelf = open()) {
        assertEquals("ring-bladed", shelf.thesaurus().label("ring-bladed"));
        assertTrue(
            shelf.thesaurus().concept("ring-bladed").get().definition().contains("can be read"));
        assertEquals(1, shelf.checks(List.of("ring-bladed")).size());
      }
      write("vocabulary/ring.json", damaged);
      assertEquals(List.of(), shortfalls());
      String mended = ask();
      dropIndex();
      assertEquals(ask(), mended);
    }

    @Test
    void isReportedWhereANoteNamesAConceptThatIsNotThere() throws IOException {
      edit("works/brook-1920.json", "\"ring-bladed\"", "\"ring-blated\"");
      Shortfall shortfall = only();
      assertEquals(Effect.UNDEFINED, shortfall.effect());
      assertEquals("there is no concept \"ring-blated\"", shortfall.problems().get(0).what());
      assertTrue(shortfall.problems().get(0).line() > 1);
      assertTrue(ask().contains("Amery 1910, pl. 1 "), ask());
      edit("works/brook-1920.json", "\"ring-blated\"", "\"ring-bladed\"");
      assertEquals(List.of(), shortfalls());
    }

    @Test
    void thatLosesAConceptIsReportedAtTheNotesThatNameIt() throws IOException {
      report();
      edit("vocabulary/ring.json", "\"id\": \"ring-bladed\"", "\"id\": \"ring-sharp\"");
      List<String> files = new ArrayList<>();
      for (Shortfall shortfall : shortfalls()) {
        files.add(shortfall.file() + " " + shortfall.effect());
      }
      List<String> expected =
          new ArrayList<>(List.of("mine.json UNDEFINED", "objects/d-1.json UNDEFINED"));
      expected.add("vocabulary UNSOUND");
      expected.addAll(
          List.of(
              "works/amery-1910.json UNDEFINED",
              "works/brook-1920.json UNDEFINED",
              "works/coombe-1930.json UNDEFINED"));
      assertEquals(expected, files);
      edit("vocabulary/ring.json", "\"id\": \"ring-sharp\"", "\"id\": \"ring-bladed\"");
      assertEquals(List.of(), shortfalls());
    }
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "mine.json",
        "vocabulary/homonyms.json",
        "vocabulary/characters.json",
        "objects/d-1.json",
        "library.json"
      })
  void anyOtherFileIsLeftOutAndNamed(String file) throws IOException {
    for (boolean indexed : new boolean[] {true, false}) {
      String whole = text(file);
      report();
      write(file, whole.substring(0, whole.length() / 2));
      assertEquals(file, only().file());
      assertEquals(List.of(), report().opened());
      try (Shelf shelf = open()) {
        assertEquals("en-GB", shelf.settings().language());
        assertEquals(file.equals("mine.json"), shelf.mine().experience().isEmpty());
        assertEquals(file.startsWith("objects"), shelf.objects().isEmpty());
        assertEquals(!file.contains("characters"), shelf.characters().ofLibrary());
      }
      if (indexed) {
        write(file, whole);
        assertEquals(List.of(), shortfalls());
        dropIndex();
      }
    }
  }

  @Test
  void aLibraryOfANewerProgramStaysRefused() throws IOException {
    report();
    write("library.json", text("library.json").replaceAll("\"format\": \\d+", "\"format\": 99"));
    LibraryException refused = assertThrows(LibraryException.class, () -> report());
    assertTrue(refused.getMessage().contains("newer merese"), refused.getMessage());
  }

  /** The index that followed every damage and repair is that which is made from nothing. */
  @ParameterizedTest
  @ValueSource(longs = {1, 2, 3, 4})
  void aNewIndexLacksWhatTheOneLacksThatFollowedEveryDamage(long seed) throws IOException {
    Random random = new Random(seed);
    report();
    List<String> names = List.of("amery-1910", "brook-1920", "coombe-1930");
    List<String> sound = new ArrayList<>();
    for (String name : names) {
      sound.add(text("works/" + name + ".json"));
    }
    for (int step = 0; step < 8; step++) {
      int one = random.nextInt(3);
      String name = names.get(one);
      String other = names.get(random.nextInt(3));
      String file = "works/" + name + ".json";
      switch (random.nextInt(4)) {
        case 0 -> write(file, sound.get(one).substring(0, 50));
        case 1 -> write(file, sound.get(one));
        case 2 -> write(file, sound.get(one).replace("\"key\": \"" + name, "\"key\": \"" + other));
        default -> write(file, sound.get(one).replace("\"ring-bladed\"", "\"ring-blated\""));
      }
      String followed = ask() + shortfalls();
      dropIndex();
      assertEquals(ask() + shortfalls(), followed);
    }
  }
}
