package merese.store;

import static java.nio.charset.StandardCharsets.UTF_8;
import static merese.store.Fixture.refusal;
import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import merese.model.Work;
import merese.store.Changed.PowerCut;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

@DisplayName("The history")
class HistoryTest {
  @TempDir Path dir;

  private static Map<String, String> content(LibraryFolder library) {
    Map<String, String> content = Changed.content(library.path());
    content.keySet().removeIf(name -> name.startsWith(HistoryFolder.FOLDER));
    return content;
  }

  private static void retitle(LibraryFolder library, String... titles) {
    try (ChangeSet change = library.change("titles " + String.join(", ", titles))) {
      Stored<Work> work = library.readWork(library.resolve(Fixture.WORK));
      change.save(work, work.value().withAlternateTitles(List.of(titles)));
      change.commit();
    }
  }

  private static List<String> whats(LibraryFolder library) {
    return History.of(library).lines().stream().map(line -> line.entry().what()).toList();
  }

  @Test
  void takesBackAChangeOfOneFileAndPutsItBackAgain() {
    LibraryFolder library = Fixture.in(dir);
    Map<String, String> before = content(library);
    retitle(library, "Brook");
    Map<String, String> after = content(library);
    assertEquals("titles Brook", History.of(library).undo().orElseThrow().what());
    assertEquals(before, content(library));
    assertEquals(Optional.empty(), History.of(library).undo());
    assertEquals(before, content(library));
    assertTrue(History.of(library).redo().isPresent());
    assertEquals(after, content(library));
    assertEquals(Optional.empty(), History.of(library).redo());
    assertTrue(History.of(library).undo().isPresent());
    assertEquals(before, content(library));
  }

  @Test
  void aDamagedChangeHidesNoOtherAndIsNamed() {
    LibraryFolder library = Fixture.in(dir);
    Map<String, String> before = content(library);
    retitle(library, "Brook");
    retitle(library, "Brook", "Beck");
    retitle(library, "Brook", "Beck", "Burn");
    Path damaged = library.resolve(".history/00000001.json");
    Fixture.write(damaged, "{\n  \"at\" junk");
    History history = History.of(library);
    assertEquals(List.of("titles Brook, Beck, Burn", "titles Brook, Beck"), whats(library));
    Problem problem = history.damaged().get(0);
    assertEquals(1, history.damaged().size());
    assertEquals(damaged, problem.file());
    assertEquals(2, problem.line());
    assertEquals(Problem.Severity.WARNING, problem.severity());
    assertTrue(problem.what().startsWith("change 1 of the history cannot be read"), problem.what());
    assertTrue(history.undo().isPresent());
    assertTrue(history.undo(2).isPresent());
    assertFalse(before.equals(content(library)));
    assertThrows(LibraryException.class, () -> history.undo(1));
  }

  @Test
  void takesBackAChangeOfManyFiles() {
    LibraryFolder library = Fixture.in(dir);
    Map<String, String> before = content(library);
    Changed.make(library, Steps.NONE);
    assertFalse(before.equals(content(library)));
    assertEquals(8, History.of(library).undo().orElseThrow().files().size() + 1);
    Map<String, String> now = content(library);
    now.remove("rejected"); // the folder stays
    assertEquals(before, now);
  }

  @Test
  void isNotPutBackOverALaterChange() {
    LibraryFolder library = Fixture.in(dir);
    retitle(library, "Brook");
    History.of(library).undo();
    retitle(library, "Beck");
    assertEquals(Optional.empty(), History.of(library).redo());
  }

  @Test
  void takesAnEarlierChangeOutOfALaterTextAndNothingElse() {
    LibraryFolder library = Fixture.in(dir);
    retitle(library, "A long brook");
    retitle(library, "A long brook", "A long rill");
    retitle(library, "A long brook", "A long rill", "A long beck");
    History history = History.of(library);
    assertEquals(Map.of(), history.hindrances(history.lines()), "each can be taken back");
    assertEquals("titles A long brook, A long rill", History.of(library).undo(2).get().what());
    Work work = library.readWork(library.resolve(Fixture.WORK)).value();
    assertEquals(List.of("A long brook", "A long beck"), work.alternateTitles());
    assertEquals(Optional.empty(), History.of(library).undo(2), "it is taken back");
  }

  @Test
  void saysWhatIsToBeTakenBackFirst() {
    LibraryFolder library = Fixture.in(dir);
    retitle(library, "A long brook");
    retitle(library, "Another title");
    History history = History.of(library);
    assertEquals(
        Map.of(1, "take back first what came after it: 2"), history.hindrances(history.lines()));
    String said = refusal(() -> history.undo(1));
    assertTrue(said.contains("take back first what came after it: 2"), said);
    history.undo(2);
    assertEquals(Map.of(), history.hindrances(history.lines()));
  }

  @Test
  void leavesWhatWasEditedByHandSince() throws IOException {
    LibraryFolder library = Fixture.in(dir);
    Path file = library.resolve(Fixture.WORK);
    String original = Files.readString(file);
    retitle(library, "A long brook");
    String edited = Files.readString(file).replaceFirst("\"title\": \"", "\"title\": \"A ");
    Files.writeString(file, edited);
    History.of(library).undo();
    assertEquals(original.replaceFirst("\"title\": \"", "\"title\": \"A "), Files.readString(file));
  }

  @Test
  void refusesWhereWhatAChangePutInIsNoLongerThere() throws IOException {
    LibraryFolder library = Fixture.in(dir);
    Path file = library.resolve(Fixture.WORK);
    retitle(library, "Brook");
    String edited = Files.readString(file).replace("Brook", "Beck");
    Files.writeString(file, edited);
    String said = refusal(() -> History.of(library).undo());
    assertTrue(said.contains("has been changed since; nothing was changed"), said);
    assertTrue(said.contains("edited it by hand"), said);
    assertEquals(edited, Files.readString(file));
  }

  @Test
  void holdsNoMoreThanItsBound() {
    LibraryFolder library = Fixture.in(dir);
    HistoryFolder folder = new HistoryFolder(library.path());
    retitle(library, "Brook");
    HistoryEntry entry = folder.read(1);
    for (int number = 2; number < HistoryFolder.MOST + 20; number++) {
      folder.write(new HistoryEntry(number, entry.at(), entry.what(), entry.undoes(), List.of()));
    }
    retitle(library, "Beck");
    assertEquals(HistoryFolder.MOST, folder.numbers().size());
    assertEquals(HistoryFolder.MOST + 20, folder.numbers().get(HistoryFolder.MOST - 1));
  }

  @Test
  void keepsBytesThatAreNoText() {
    byte[] old = {'a', (byte) 0xFF, 'b'};
    byte[] now = {'a', 'c', 'b'};
    AlteredFile altered = AlteredFile.of("works/x.json", old, now);
    assertArrayEquals(old, altered.restored(now));
  }

  @Property(tries = 500, seed = "20261130")
  void whatWasIsGivenBackWhateverTheTextsShare(@ForAll String old, @ForAll String now) {
    String shared = "\u00e9\u20ac\ud83c\udf77";
    byte[] before = (shared + old + shared).getBytes(UTF_8);
    byte[] after = (shared + now + shared).getBytes(UTF_8);
    AlteredFile altered = AlteredFile.of("works/x.json", before, after);
    assertArrayEquals(before, altered.restored(after));
  }

  @Property(tries = 15, seed = "20261130")
  void anyChangesAndAsManyUndosGiveTheFirstBytes(@ForAll long seed) throws IOException {
    Path place = Files.createTempDirectory("merese-history");
    try {
      LibraryFolder library = Fixture.in(place);
      Map<String, String> first = content(library);
      Random random = new Random(seed);
      List<Map<String, String>> states = new ArrayList<>();
      int changes = 1 + random.nextInt(8);
      for (int i = 0; i < changes; i++) {
        states.add(content(library));
        anyChange(library, random, i);
      }
      for (int i = changes - 1; i >= 0; i--) {
        assertTrue(History.of(library).undo().isPresent());
        assertEquals(states.get(i), content(library), () -> "of " + whats(library));
      }
      assertEquals(Optional.empty(), History.of(library).undo());
      assertEquals(first, content(library));
    } finally {
      Fixture.delete(place);
    }
  }

  private static void anyChange(LibraryFolder library, Random random, int number) {
    switch (random.nextInt(3)) {
      case 0 -> retitle(library, "Title " + number, "Brook \u00e9 " + random.nextInt());
      case 1 -> {
        try (ChangeSet change = library.change("a work")) {
          change.add(Changed.work("work-" + number, "Work"));
          change.commit();
        }
      }
      default -> {
        try (ChangeSet change = library.change("two pieces")) {
          change.add(Changed.object("a-" + number));
          change.add(Changed.object("b-" + number));
          library.findObject("a-" + (number - 1)).ifPresent(change::delete);
          change.commit();
        }
      }
    }
  }

  @Test
  void forgetsAChangeOfOneFileThatAPowerCutKeptFromBeingMade() {
    LibraryFolder library = Fixture.in(dir);
    Map<String, String> before = content(library);
    Steps cut =
        what -> {
          if (what.equals("write the file")) {
            throw new PowerCut();
          }
        };
    ChangeSet change = library.change("a test", cut);
    Stored<Work> work = library.readWork(library.resolve(Fixture.WORK));
    change.save(work, work.value().withAlternateTitles(List.of("Brook")));
    assertThrows(PowerCut.class, change::commit);
    change.abandon();
    assertEquals(before, content(library));
    assertEquals(List.of(), whats(library));
    retitle(library, "Beck");
    assertEquals(List.of("titles Beck"), whats(library));
  }

  @Test
  void hasNoEntryOfAChangeThatAFullDiskRefused() {
    for (String step : List.of("write the history", "write the file")) {
      LibraryFolder library = Fixture.in(dir.resolve(step));
      Map<String, String> before = content(library);
      Steps full =
          what -> {
            if (what.equals(step)) {
              throw new FileSystemException("x", null, "No space left on device");
            }
          };
      Stored<Work> work = library.readWork(library.resolve(Fixture.WORK));
      String said =
          refusal(
              () -> {
                try (ChangeSet change = library.change("a test", full)) {
                  change.save(work, work.value().withAlternateTitles(List.of("Brook")));
                  change.commit();
                  return null;
                }
              });
      assertTrue(said.contains("nothing was changed: No space left on device"), said);
      assertEquals(before, content(library));
      assertEquals(List.of(), whats(library));
    }
  }
}
