package merese.shelf;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.stream.Stream;
import merese.answer.Find;
import merese.answer.Found;
import merese.store.LibraryFolder;
import merese.testing.DemoLibrary;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What words find follows every change of the files, and does not depend on how it came about. */
class FindIndexTest {
  private static final List<String> QUESTIONS =
      List.of(
          "ring",
          "bladed ring",
          "sharp",
          "wet hand",
          "knife edged rings",
          "author:quenby ring",
          "is:piece ring",
          "is:mine ring",
          "opaque twist copies",
          "r*",
          "year:1900..1960 collar",
          "\"folded foot\"",
          "ring NOT bladed",
          "strawbery");

  @TempDir private Path folder;
  private Path library;

  @BeforeEach
  void aCopyOfTheDemoLibrary() throws IOException {
    library = DemoLibrary.copyTo(folder).path();
  }

  private List<Found> answers(Path of) {
    List<Found> answers = new ArrayList<>();
    try (Shelf shelf = Shelf.open(LibraryFolder.open(of), Watcher.NONE)) {
      for (String question : QUESTIONS) {
        answers.add(shelf.ask(s -> Find.answer(s, question, 30)));
      }
    }
    return answers;
  }

  private int count(String question) {
    try (Shelf shelf = Shelf.open(LibraryFolder.open(library), Watcher.NONE)) {
      return shelf.ask(s -> Find.answer(s, question, 1)).withAll();
    }
  }

  private void edit(String file, String old, String now) throws IOException {
    Path path = library.resolve(file);
    String text = Files.readString(path);
    assertTrue(text.contains(old), file + " holds " + old);
    Files.writeString(path, text.replace(old, now));
  }

  @ParameterizedTest
  @ValueSource(longs = {1, 2})
  void aNewIndexFindsWhatTheOneThatFollowedEveryChangeFinds(long seed) throws IOException {
    Random random = new Random(seed);
    answers(library);
    for (int step = 0; step < 4; step++) {
      List<Path> works = DemoLibrary.works(LibraryFolder.open(library));
      for (int i = 0; i < 3; i++) {
        Path work = works.get(random.nextInt(works.size()));
        Files.writeString(
            work, Files.readString(work).replace("the ", "the " + "sharp ".repeat(step % 2 + 1)));
      }
      edit(
          "vocabulary/ring.json",
          "\"angular ring\"",
          "\"angular ring\", \"edgy ring " + step + "\"");
      answers(library);
    }
    edit("objects/d-3.json", "three sharp rings", "three keen rings");
    edit("mine.json", "necklet", "neck lace");
    List<Found> followed = answers(library);
    Path elsewhere = folder.resolve("copy/library");
    copy(library, elsewhere);
    List<Found> fresh = answers(elsewhere);
    assertEquals(fresh, followed);
    assertFalse(fresh.get(0).hits().isEmpty());
  }

  @Test
  void aNewLabelIsFoundInNotesPiecesAndOwnWordsOfFilesThatDidNotChange() throws IOException {
    assertEquals(0, count("razorlike"));
    edit("vocabulary/ring.json", "\"angular ring\"", "\"angular ring\", \"razorlike ring\"");
    assertTrue(count("razorlike is:note") > 10);
    assertEquals(2, count("razorlike is:piece")); // d-3 has it, d-24 only looks so
    assertEquals(2, count("razorlike is:mine")); // two experiences
    assertEquals(1, count("razorlike is:concept"));
  }

  @Test
  void whatIsTakenOutIsFoundNoMore() throws IOException {
    assertEquals(1, count("necklet"));
    edit("mine.json", "necklet", "neck lace");
    assertEquals(0, count("necklet"));
    assertEquals(1, count("roman"));
    Files.delete(library.resolve("objects/d-17.json"));
    assertEquals(0, count("roman"));
  }

  private static void copy(Path from, Path to) throws IOException {
    try (Stream<Path> files = Files.walk(from)) {
      for (Path file : (Iterable<Path>) files::iterator) {
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
