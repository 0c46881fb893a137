package merese.shelf;

import static merese.testing.SmallLibrary.says;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.attribute.FileTime;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.stream.Stream;
import merese.answer.CoverageQuestion;
import merese.answer.Covers;
import merese.store.LibraryFile;
import merese.store.LibraryFolder;
import merese.testing.AnswerLines;
import merese.testing.SmallLibrary;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * In a large library an opening looks at the folders that changed, an answer at the files that it
 * quotes, and all files are compared now and then. Ten files are many here.
 */
class LargeLibraryTest {
  private static final int LARGE = 10;
  private static final int WORKS = 30;
  private static final int SHELVES = 3;
  private static final int ON_A_SHELF = WORKS / SHELVES;
  private static final Instant LONG_AGO = Instant.parse("2020-01-01T00:00:00Z");
  private static final Instant TODAY = LONG_AGO.plus(Duration.ofDays(9));

  @TempDir private Path folder;
  private Path library;
  private Instant now = TODAY;

  /** Ten books on bladed rings on each of three shelves, and one on string rims beside those. */
  @BeforeEach
  void aLibraryInFolders() throws IOException {
    SmallLibrary small = new SmallLibrary();
    for (int i = 0; i < WORKS; i++) {
      small.book(
          "Author" + i,
          1900 + i,
          "Title " + i,
          says("bladed ring", "ring-bladed").photo("pl. " + (i + 1)));
    }
    small.book("Odd", 1850, "Of rims", says("string rim", "string-rim").text("p. 3"));
    library = small.write(folder).path();
    for (int i = 0; i < WORKS; i++) {
      Path to = work(i);
      Files.createDirectories(to.getParent());
      Files.move(library.resolve("works").resolve(to.getFileName()), to);
    }
    try (Stream<Path> all = Files.walk(library)) {
      for (Path path : all.toList()) {
        stamp(path, LONG_AGO);
      }
    }
  }

  private static void stamp(Path path, Instant time) throws IOException {
    Files.setLastModifiedTime(path, FileTime.from(time));
  }

  private Path work(int number) {
    return shelf(number % SHELVES).resolve("author" + number + "-" + (1900 + number) + ".json");
  }

  private Path shelf(int number) {
    return library.resolve("works/shelf" + number);
  }

  private String relative(Path file) {
    return library.relativize(file).toString().replace('\\', '/');
  }

  private Shelf open() {
    return open(Watcher.NONE);
  }

  private Shelf open(Watcher watcher) {
    return Shelf.open(
        LibraryFolder.open(library), watcher, Clock.fixed(now, ZoneOffset.UTC), LARGE);
  }

  private UpToDate report() {
    try (Shelf shelf = open()) {
      return shelf.upToDate();
    }
  }

  private static String ask(Shelf shelf, String concept) {
    return AnswerLines.of(Covers.answer(shelf, CoverageQuestion.ofConcept(concept)));
  }

  private String ask(String concept) {
    try (Shelf shelf = open()) {
      return ask(shelf, concept);
    }
  }

  /** How many files are compared each time. */
  private int apart() {
    int count = 0;
    for (LibraryFile file : LibraryFolder.open(library).scan()) {
      count += file.kind() == LibraryFile.Kind.WORK ? 0 : 1;
    }
    return count;
  }

  private static String edited(Path file, String old, String instead) throws IOException {
    String text = Files.readString(file);
    assertTrue(text.contains(old), "the file holds what is to be edited");
    return text.replace(old, instead);
  }

  /** As most editors save, and this program. */
  private void save(Path file, String text) throws IOException {
    Path draft = file.resolveSibling(".draft");
    Files.writeString(draft, text);
    stamp(draft, LONG_AGO.plusSeconds(60));
    Files.move(draft, file, StandardCopyOption.REPLACE_EXISTING);
    stamp(file.getParent(), LONG_AGO.plusSeconds(60));
  }

  /** The folder's time stays. */
  private static void overwrite(Path file, String text) throws IOException {
    Files.writeString(file, text);
    stamp(file, LONG_AGO.plusSeconds(60));
  }

  private static void delete(Path top) throws IOException {
    try (Stream<Path> all = Files.walk(top)) {
      for (Path path : all.sorted(Comparator.reverseOrder()).toList()) {
        Files.delete(path);
      }
    }
  }

  @Test
  void whereNothingChangedNoWorkIsLookedAt() {
    assertEquals(apart() + WORKS + 1, report().compared());
    UpToDate second = report();
    assertEquals(apart(), second.compared());
    assertEquals(List.of(), second.opened());
  }

  @Test
  void aSavedFileIsNoticedByItsFolderOfWhichAloneTheFilesAreLookedAt() throws IOException {
    report();
    save(work(7), edited(work(7), "\"pl. 8\"", "\"pl. 88\""));
    UpToDate update = report();
    assertEquals(List.of(relative(work(7))), update.opened());
    assertEquals(apart() + ON_A_SHELF, update.compared());
    assertEquals(apart(), report().compared());
    assertTrue(ask("ring-bladed").contains("Author7 1907, pl. 88 "));
  }

  @Test
  void aFolderThatChangedWithoutItsFilesIsLookedIntoOnce() throws IOException {
    report();
    stamp(shelf(1), LONG_AGO.plusSeconds(60));
    UpToDate second = report();
    assertEquals(List.of(), second.opened());
    assertEquals(apart() + ON_A_SHELF, second.compared());
    assertEquals(apart(), report().compared());
  }

  @Test
  void ofAFolderThatIsStillFreshTheTimeTellsNothing() throws IOException {
    now = LONG_AGO.plusSeconds(1);
    report();
    save(work(7), edited(work(7), "\"pl. 8\"", "\"pl. 9\""));
    stamp(work(7), LONG_AGO);
    stamp(work(7).getParent(), LONG_AGO);
    now = TODAY;
    assertEquals(List.of(relative(work(7))), report().opened());
    assertEquals(apart(), report().compared());
  }

  @Test
  void aFolderThatIsGoneTakesItsWorksAlong() throws IOException {
    report();
    delete(shelf(2));
    stamp(library.resolve("works"), LONG_AGO.plusSeconds(60));
    UpToDate update = report();
    assertEquals(ON_A_SHELF, update.removed().size());
    assertEquals(List.of(), update.opened());
    String answer = ask("ring-bladed");
    assertTrue(answer.startsWith("ring-bladed “bladed ring”: 20 of 20"), answer);
    assertEquals(apart(), report().compared());
  }

  @Test
  void aFolderOfPiecesThatIsGoneTakesItsPiecesAlong() throws IOException {
    Path box = library.resolve("objects/box");
    Files.createDirectories(box);
    Files.copy(Path.of("library/objects/c-4.json"), box.resolve("c-4.json"));
    report();
    try (Shelf shelf = open()) {
      assertEquals(1, shelf.objects().size());
    }
    delete(box);
    assertEquals(List.of("objects/box/c-4.json"), report().removed());
  }

  @Test
  void anOpeningThatFindsNothingNewWritesNothing() throws IOException {
    report();
    report(); // the last to note what tells by now
    List<Path> before = indexFiles();
    report();
    assertEquals(before, indexFiles());
  }

  private List<Path> indexFiles() throws IOException {
    try (Stream<Path> files = Files.list(folder.resolve("index/lucene"))) {
      return files.sorted().toList();
    }
  }

  @Test
  void aFolderThatIsRenamedIsReadUnderItsNewName() throws IOException {
    report();
    Path moved = library.resolve("works/moved");
    Files.move(shelf(2), moved);
    stamp(library.resolve("works"), LONG_AGO.plusSeconds(60));
    UpToDate update = report();
    assertEquals(ON_A_SHELF, update.removed().size());
    assertEquals(ON_A_SHELF, update.opened().size());
    assertTrue(update.opened().get(0).startsWith("works/moved/"), update.opened().get(0));
    assertTrue(ask("ring-bladed").startsWith("ring-bladed “bladed ring”: 30 of 30"));
  }

  @Test
  void aNewFolderInAFolderIsLookedInto() throws IOException {
    report();
    Path inside = shelf(0).resolve("inside");
    Files.createDirectories(inside);
    Files.writeString(
        inside.resolve("later-1999.json"),
        edited(work(1), "author1-1901", "later-1999")
            .replace("Author1", "Later")
            .replace("1901", "1999"));
    stamp(inside.resolve("later-1999.json"), LONG_AGO);
    stamp(inside, LONG_AGO);
    stamp(shelf(0), LONG_AGO.plusSeconds(60));
    UpToDate update = report();
    assertEquals(List.of("works/shelf0/inside/later-1999.json"), update.opened());
    assertEquals(apart() + ON_A_SHELF + 1, update.compared());
    assertTrue(ask("ring-bladed").contains("Later 1999"));
  }

  @ParameterizedTest
  @ValueSource(strings = {"author0-1900", "elsewhere-1900"})
  void aWorkThatHasANameFromAnotherFolderIsLeftOut(String edition) throws IOException {
    report();
    Path twin = shelf(1).resolve(work(0).getFileName());
    Files.writeString(
        twin, edited(work(0), "\"key\": \"author0-1900\"", "\"key\": \"" + edition + '"'));
    stamp(twin, LONG_AGO);
    stamp(shelf(1), LONG_AGO.plusSeconds(60));
    try (Shelf shelf = open()) {
      assertEquals(List.of(relative(twin)), shelf.upToDate().opened());
      assertEquals(Optional.empty(), shelf.upToDate().built());
      assertEquals(Shortfall.Effect.REPEATS, shelf.shortfalls().get(0).effect());
      String problem = shelf.shortfalls().get(0).problems().get(0).toString();
      assertTrue(problem.contains("shelf0"), problem);
    }
  }

  @Test
  void aWorkWithAnEditionFromAnotherFolderIsLeftOut() throws IOException {
    report();
    Path other = shelf(1).resolve("other-1900.json");
    Files.writeString(other, edited(work(0), "\"id\": \"author0-1900\"", "\"id\": \"other-1900\""));
    stamp(other, LONG_AGO);
    stamp(shelf(1), LONG_AGO.plusSeconds(60));
    try (Shelf shelf = open()) {
      assertEquals(List.of(relative(other)), shelf.upToDate().opened());
      assertEquals(Shortfall.Effect.REPEATS, shelf.shortfalls().get(0).effect());
    }
  }

  @Test
  void aWorkThatComesBeforeTheOneThatHasItsNameHasTheIndexMadeAnew() throws IOException {
    report();
    Files.copy(work(1), shelf(0).resolve(work(1).getFileName()));
    stamp(shelf(0), LONG_AGO.plusSeconds(60));
    assertEquals(
        Optional.of("two files of the library have come to share a name"), report().built());
  }

  @Test
  void aDamagedFileIsLookedAtEachTimeSinceSomebodyMendsIt() throws IOException {
    String whole = Files.readString(work(7));
    overwrite(work(7), "{");
    report();
    overwrite(work(7), whole);
    try (Shelf shelf = open()) {
      assertEquals(List.of(relative(work(7))), shelf.upToDate().opened());
      assertEquals(List.of(), shelf.shortfalls());
    }
  }

  @Nested
  class WhenAFileIsOverwrittenInPlace {
    private final List<String> told = new ArrayList<>();
    private final Watcher watcher =
        new Watcher() {
          @Override
          public void lacking(int files, String first) {
            told.add(files + " " + first);
          }
        };

    @BeforeEach
    void overwriteOne() throws IOException {
      report();
      overwrite(work(7), edited(work(7), "\"pl. 8\"", "\"pl. 88\""));
    }

    @Test
    void anAnswerThatQuotesItIsMadeAgain() {
      try (Shelf shelf = open()) {
        assertEquals(List.of(), shelf.upToDate().opened());
        assertTrue(ask(shelf, "ring-bladed").contains("Author7 1907, pl. 88 "));
        assertEquals(List.of(relative(work(7))), shelf.upToDate().opened());
      }
      assertEquals(List.of(), report().opened());
    }

    @Test
    void anAnswerThatQuotesADeletedFileIsMadeAgain() throws IOException {
      Files.delete(work(7));
      stamp(shelf(1), LONG_AGO);
      assertTrue(ask("ring-bladed").startsWith("ring-bladed “bladed ring”: 29 of 29"));
    }

    @Test
    void whatNoAnswerQuotesIsToldAfterItAndIndexedAtTheNextOpening() {
      now = TODAY.plus(Duration.ofMinutes(11));
      try (Shelf shelf = open(watcher)) {
        ask(shelf, "string-rim");
        assertEquals(List.of(), shelf.upToDate().opened());
        shelf.close();
        shelf.lookAtAll();
      }
      assertEquals(List.of("1 " + relative(work(7))), told);
      UpToDate next = report();
      assertEquals(List.of(relative(work(7))), next.opened());
      assertEquals(apart() + WORKS + 1, next.compared());
      assertEquals(apart(), report().compared());
    }

    @Test
    void notAllFilesAreLookedAtAgainWithinTenMinutes() {
      now = TODAY.plus(Duration.ofMinutes(9));
      try (Shelf shelf = open(watcher)) {
        shelf.lookAtAll();
      }
      assertEquals(List.of(), told);
    }

    @Test
    void aLookThatFindsNothingCountsForTenMinutesMore() throws IOException {
      ask("ring-bladed");
      now = TODAY.plus(Duration.ofMinutes(11));
      try (Shelf shelf = open(watcher)) {
        shelf.lookAtAll();
      }
      overwrite(work(8), edited(work(8), "\"pl. 9\"", "\"pl. 99\""));
      now = TODAY.plus(Duration.ofMinutes(20));
      try (Shelf shelf = open(watcher)) {
        shelf.lookAtAll();
      }
      assertEquals(List.of(), told);
      now = TODAY.plus(Duration.ofMinutes(22));
      try (Shelf shelf = open(watcher)) {
        shelf.lookAtAll();
      }
      assertEquals(List.of("1 " + relative(work(8))), told);
    }

    @Test
    void aShelfThatStaysOpenIsCurrentUntilAllIsLookedAtAgain() {
      try (Shelf shelf = open()) {
        assertTrue(shelf.isCurrent());
      }
      now = TODAY.plus(Duration.ofMinutes(11));
      try (Shelf shelf = open()) {
        assertFalse(shelf.isCurrent());
      }
      assertEquals(List.of(relative(work(7))), report().opened());
    }
  }

  @Test
  void aShelfThatStaysOpenNoticesASavedFileAtOnce() throws IOException {
    try (Shelf shelf = open()) {
      assertTrue(shelf.isCurrent());
      save(work(7), edited(work(7), "\"pl. 8\"", "\"pl. 88\""));
      assertFalse(shelf.isCurrent());
    }
  }

  @ParameterizedTest
  @ValueSource(longs = {1, 2, 3})
  void aNewIndexAnswersAsTheOneThatFollowedEveryChange(long seed) throws IOException {
    Random random = new Random(seed);
    String first = ask("ring-bladed");
    for (int step = 0; step < 8; step++) {
      Path file = work(random.nextInt(WORKS));
      Instant time = LONG_AGO.plusSeconds(100 + 10L * step);
      if (Files.exists(file)) {
        String other =
            Files.readString(file).replaceFirst("\"pl\\. \\d+\"", "\"pl. " + (100 + step) + '"');
        switch (random.nextInt(3)) {
          case 0 -> {
            Files.delete(file);
            stamp(file.getParent(), time);
          }
          case 1 -> {
            save(file, other);
            stamp(file, time);
            stamp(file.getParent(), time);
          }
          default -> {
            overwrite(file, other);
            stamp(file, time);
          }
        }
      }
      ask("ring-bladed");
    }
    String followed = ask("ring-bladed");
    assertNotEquals(first, followed);
    delete(folder.resolve("index"));
    assertEquals(ask("ring-bladed"), followed);
  }
}
