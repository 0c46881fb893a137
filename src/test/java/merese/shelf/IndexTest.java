package merese.shelf;

import static merese.testing.SmallLibrary.prints;
import static merese.testing.SmallLibrary.says;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.attribute.FileTime;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.stream.Stream;
import merese.answer.CoverageQuestion;
import merese.answer.Covers;
import merese.store.LibraryFolder;
import merese.testing.AnswerLines;
import merese.testing.SmallLibrary;
import org.apache.lucene.index.IndexWriter;
import org.apache.lucene.index.IndexWriterConfig;
import org.apache.lucene.store.FSDirectory;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The index keeps in step with the files, opens only what changed and survives damage. */
class IndexTest {
  private static final int WORKS = 30;
  private static final Instant LONG_AGO = Instant.parse("2020-01-01T00:00:00Z");

  @TempDir private Path folder;
  private Path library;

  @BeforeEach
  void aLibraryOfManyWorks() throws IOException {
    SmallLibrary small = new SmallLibrary();
    for (int i = 0; i < WORKS; i++) {
      small.book(
          "Author" + i,
          1900 + i,
          "Title " + i,
          says("bladed ring", "ring-bladed").photo("pl. " + (i + 1)),
          says("split ring", "ring-split").text("p. " + (i + 1)),
          prints("sharp-edged band").text("p. 99"));
    }
    library = small.write(folder).path();
    age();
  }

  /** Gives every file a time at which nothing can be in doubt. */
  private void age() throws IOException {
    try (Stream<Path> files = Files.walk(library)) {
      for (Path file : files.filter(Files::isRegularFile).toList()) {
        Files.setLastModifiedTime(file, FileTime.from(LONG_AGO));
      }
    }
  }

  private Shelf open() {
    return Shelf.open(LibraryFolder.open(library), Watcher.NONE);
  }

  private Shelf open(Clock clock) {
    return Shelf.open(LibraryFolder.open(library), Watcher.NONE, clock);
  }

  private UpToDate report() {
    try (Shelf shelf = open()) {
      return shelf.upToDate();
    }
  }

  private String ask(String concept) {
    try (Shelf shelf = open()) {
      return AnswerLines.of(shelf.ask(s -> Covers.answer(s, CoverageQuestion.ofConcept(concept))));
    }
  }

  private Path work(int number) {
    return library.resolve("works/author" + number + "-" + (1900 + number) + ".json");
  }

  private void edit(Path file, String old, String now) throws IOException {
    String text = Files.readString(file);
    assertTrue(text.contains(old), "the file holds what is to be edited");
    Files.writeString(file, text.replace(old, now));
    Files.setLastModifiedTime(file, FileTime.from(LONG_AGO.plusSeconds(60)));
  }

  @Test
  void isBuiltOnFirstUse() {
    assertEquals(Optional.of("there is no index yet"), report().built());
    assertTrue(Files.isDirectory(folder.resolve("index")));
  }

  @Test
  void opensNothingWhereNothingChanged() {
    report();
    UpToDate second = report();
    assertEquals(Optional.empty(), second.built());
    assertEquals(List.of(), second.opened());
  }

  @Test
  void opensOneFileAfterOneOfManyChanged() throws IOException {
    report();
    edit(work(7), "\"pl. 8\"", "\"pl. 88\"");
    assertEquals(List.of("works/author7-1907.json"), report().opened());
    assertTrue(ask("ring-bladed").contains("Author7 1907, pl. 88 "));
  }

  @Test
  void neverLooksIntoAFileThatDidNotChange() throws IOException {
    report();
    for (int i = 0; i < WORKS; i++) {
      if (i != 7) {
        byte[] garbage = new byte[(int) Files.size(work(i))];
        Arrays.fill(garbage, (byte) '#');
        Files.write(work(i), garbage);
        Files.setLastModifiedTime(work(i), FileTime.from(LONG_AGO));
      }
    }
    edit(work(7), "\"pl. 8\"", "\"pl. 88\"");
    String answer = ask("ring-bladed");
    assertTrue(answer.startsWith("ring-bladed “bladed ring”: 30 of 30"), answer);
    assertTrue(answer.contains("Author7 1907, pl. 88 "), answer);
  }

  @Test
  void noticesAFileThatChangedWithinTheSameTickOfTheClock() throws IOException {
    Path file = work(3);
    FileTime now = FileTime.from(Instant.now());
    Files.setLastModifiedTime(file, now);
    report();
    Files.writeString(file, Files.readString(file).replace("\"pl. 4\"", "\"pl. 5\""));
    Files.setLastModifiedTime(file, now);
    assertTrue(ask("ring-bladed").contains("Author3 1903, pl. 5 "));
  }

  @Test
  void comparesAFreshFileByItsBytesOnlyUntilItsTimeTells() throws IOException {
    Clock atOnce = Clock.fixed(LONG_AGO.plusSeconds(1), ZoneOffset.UTC);
    Clock later = Clock.fixed(LONG_AGO.plusSeconds(10), ZoneOffset.UTC);
    open(atOnce).close();
    open(later).close();
    byte[] garbage = new byte[(int) Files.size(work(7))];
    Files.write(work(7), garbage);
    Files.setLastModifiedTime(work(7), FileTime.from(LONG_AGO));
    try (Shelf shelf = open(later)) {
      assertEquals(List.of(), shelf.upToDate().opened());
      assertEquals(Optional.empty(), shelf.upToDate().built());
    }
  }

  @Test
  void forgetsAWorkThatIsGoneAndTakesInANewOne() throws IOException {
    report();
    Files.delete(work(0));
    Files.writeString(
        library.resolve("works/later-1999.json"),
        Files.readString(work(1))
            .replace("author1-1901", "later-1999")
            .replace("Author1", "Later")
            .replace("1901", "1999"));
    String answer = ask("ring-bladed");
    assertTrue(answer.startsWith("ring-bladed “bladed ring”: 30 of 30"), answer);
    assertTrue(answer.contains("Later 1999"), answer);
    assertTrue(!answer.contains("Author0 "), answer);
  }

  @Nested
  class WhenTheVocabularyChanges {
    private Path rings() {
      return library.resolve("vocabulary/ring.json");
    }

    @Test
    void onlyWorksThatNameAConceptWithOtherLabelsAreReadAgain() throws IOException {
      edit(work(0), "\"concept\": \"ring-split\"", "\"concept\": \"ring-bladed\"");
      report();
      edit(rings(), "\"two-ridged ring\"", "\"two-ridge ring\"");
      List<String> opened = report().opened();
      assertEquals(WORKS, opened.size(), "the vocabulary and all works but one");
      assertTrue(opened.contains("vocabulary/ring.json"));
      assertTrue(!opened.contains("works/author0-1900.json"));
    }

    @Test
    void aWorkThatPrintsANewLabelAndNotItsMeaningIsReadAgain() throws IOException {
      report();
      edit(rings(), "\"string ring\"", "\"string ring\", \"sharp-edged ledge\"");
      assertEquals(List.of("vocabulary/ring.json"), report().opened(), "no work has all its words");
      edit(work(3), "sharp-edged band", "drawn sharp band");
      report();
      edit(rings(), "\"sharp-edged ledge\"", "\"sharp band\"");
      assertEquals(WORKS + 1, report().opened().size(), "they have them all");
      edit(rings(), "\"sharp band\"", "\"drawn sharp band\"");
      assertTrue(ask("string-rim").contains("meaning not stated: Author3 1903, p. 99"));
    }

    @Test
    void aNewLabelGivesUnassignedNotesAPossibleMeaning() throws IOException {
      report();
      assertTrue(!ask("ring-bladed").contains("meaning not stated"));
      edit(rings(), "\"knife-edge ring\"", "\"sharp-edged band\", \"knife-edge ring\"");
      assertTrue(ask("ring-bladed").contains("meaning not stated: Author3 1903, p. 99"));
    }

    @Test
    void aNewAncestorTakesTheNotesIn() throws IOException {
      report();
      assertTrue(ask("string-rim").startsWith("string-rim “string rim”: 0 of 0"));
      edit(
          rings(),
          Files.readString(rings())
              .substring(
                  Files.readString(rings()).indexOf("\"id\": \"ring-split\""),
                  Files.readString(rings()).indexOf("\"id\": \"ring-split-ribbed\"")),
          Files.readString(rings())
              .substring(
                  Files.readString(rings()).indexOf("\"id\": \"ring-split\""),
                  Files.readString(rings()).indexOf("\"id\": \"ring-split-ribbed\""))
              .replace("\"ring-applied\"", "\"string-rim\""));
      String answer = ask("string-rim");
      assertTrue(answer.startsWith("string-rim “string rim”: 30 of 30"), answer);
    }

    @Test
    void anUnsoundVocabularyIsReportedAndNothingIsLost() throws IOException {
      report();
      String before = Files.readString(rings());
      edit(rings(), "\"neck-treatment\"", "\"ring-bladed\"");
      try (Shelf shelf = open()) {
        assertEquals(Shortfall.Effect.UNSOUND, shelf.shortfalls().get(0).effect());
      }
      assertTrue(ask("ring-bladed").startsWith("ring-bladed “bladed ring”: 30 of 30"));
      Files.writeString(rings(), before);
      try (Shelf shelf = open()) {
        assertEquals(List.of(), shelf.shortfalls());
      }
    }
  }

  @Nested
  class WhenItIsDamaged {
    private List<Path> files() throws IOException {
      try (Stream<Path> files = Files.walk(folder.resolve("index"))) {
        return files
            .filter(Files::isRegularFile)
            .filter(f -> !f.endsWith("README.md") && !f.endsWith("write.lock"))
            .sorted()
            .toList();
      }
    }

    /** The tables are made again from Lucene's files; where those are damaged, it is said. */
    @Test
    void eachFileInTurnLostCutShortOrOverwrittenIsMadeGood() throws IOException {
      String whole = ask("ring-bladed");
      int count = files().size();
      for (int i = 0; i < count; i++) {
        for (Damage damage : Damage.values()) {
          report();
          Path file = files().get(i);
          damage.to(file);
          String what = damage + " " + file.getFileName();
          boolean copied = file.getFileName().toString().startsWith("table");
          assertEquals(
              copied ? Optional.empty() : Optional.of("the index was damaged or unfinished"),
              report().built(),
              what);
          assertEquals(whole, ask("ring-bladed"), what);
        }
      }
    }

    @Test
    void oneOfAnotherVersionIsMadeAnewAndNotCalledDamaged() throws IOException {
      String whole = ask("ring-bladed");
      try (IndexWriter writer =
          new IndexWriter(
              FSDirectory.open(folder.resolve("index/lucene")), new IndexWriterConfig())) {
        writer.setLiveCommitData(Map.of("merese.layout", "0").entrySet());
        writer.commit();
      }
      assertEquals(
          Optional.of("the index was made by another version of this program"), report().built());
      assertEquals(whole, ask("ring-bladed"));
    }

    @Test
    void theWholeFolderMayBeDeleted() throws IOException {
      String whole = ask("ring-bladed");
      try (Stream<Path> all = Files.walk(folder.resolve("index"))) {
        for (Path path : all.sorted(java.util.Comparator.reverseOrder()).toList()) {
          Files.delete(path);
        }
      }
      assertEquals(Optional.of("there is no index yet"), report().built());
      assertEquals(whole, ask("ring-bladed"));
    }
  }

  private enum Damage {
    LOST {
      @Override
      void to(Path file) throws IOException {
        Files.delete(file);
      }
    },
    CUT_SHORT {
      @Override
      void to(Path file) throws IOException {
        byte[] bytes = Files.readAllBytes(file);
        Files.write(file, Arrays.copyOf(bytes, bytes.length / 2));
      }
    },
    ONE_BYTE_OTHER {
      @Override
      void to(Path file) throws IOException {
        byte[] bytes = Files.readAllBytes(file);
        bytes[bytes.length / 2] ^= 1;
        Files.write(file, bytes);
      }
    },
    OVERWRITTEN {
      @Override
      void to(Path file) throws IOException {
        byte[] bytes = new byte[(int) Files.size(file)];
        new Random(1).nextBytes(bytes);
        Files.write(file, bytes);
      }
    };

    abstract void to(Path file) throws IOException;
  }

  @ParameterizedTest
  @ValueSource(longs = {1, 2, 3})
  void aNewIndexAnswersAsTheOneThatFollowedEveryChange(long seed) throws IOException {
    Random random = new Random(seed);
    report();
    for (int step = 0; step < 6; step++) {
      int number = random.nextInt(WORKS);
      if (Files.exists(work(number))) {
        if (random.nextInt(4) == 0) {
          Files.delete(work(number));
        } else {
          String text = Files.readString(work(number));
          Files.writeString(
              work(number), text.replaceFirst("\"pl\\. \\d+\"", "\"pl. " + (100 + step) + "\""));
        }
      }
      report();
    }
    List<String> followed = new ArrayList<>();
    for (String concept : List.of("ring-bladed", "neck-ring", "ring-split")) {
      followed.add(ask(concept));
    }
    Path elsewhere = folder.resolve("copy/library");
    copy(library, elsewhere);
    library = elsewhere;
    List<String> fresh = new ArrayList<>();
    for (String concept : List.of("ring-bladed", "neck-ring", "ring-split")) {
      fresh.add(ask(concept));
    }
    assertEquals(fresh, followed);
  }

  @Test
  void anAnswerInUseIsNotDisturbedByAnotherThatBringsTheIndexUpToDate() throws IOException {
    try (Shelf first = open()) {
      edit(work(7), "\"pl. 8\"", "\"pl. 88\"");
      assertTrue(ask("ring-bladed").contains("pl. 88"));
      String old =
          AnswerLines.of(
              first.ask(s -> Covers.answer(s, CoverageQuestion.ofConcept("ring-bladed"))));
      assertTrue(old.contains("Author7 1907, pl. 8 "), old);
    }
  }

  private static void copy(Path from, Path to) throws IOException {
    try (Stream<Path> files = Files.walk(from)) {
      for (Path file : files.toList()) {
        Path target = to.resolve(from.relativize(file));
        if (Files.isDirectory(file)) {
          Files.createDirectories(target);
        } else {
          Files.copy(file, target, StandardCopyOption.COPY_ATTRIBUTES);
        }
      }
    }
  }
}
