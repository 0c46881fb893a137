package merese.store;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.function.Consumer;
import merese.model.Work;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Each write, each force to the disk, each rename and each deletion of a change fails once. */
@DisplayName("A disk that fails once")
class FaultyDiskTest {
  private static final List<String> UNCONFIRMED =
      List.of("does not confirm that it will last", "is decided and begun");

  @TempDir Path dir;

  private static void retitle(LibraryFolder library) {
    try (ChangeSet change = library.change("a title")) {
      Stored<Work> work = library.readWork(library.resolve(Fixture.WORK));
      change.save(work, work.value().withAlternateTitles(List.of("Brook")));
      change.commit();
    }
  }

  private static void addAWork(LibraryFolder library) {
    try (ChangeSet change = library.change("a work")) {
      change.add(Changed.work("brook", "Brook"));
      change.commit();
    }
  }

  private static void deleteAPiece(LibraryFolder library) {
    try (ChangeSet change = library.change("a piece less")) {
      change.delete(library.readObject(library.resolve("objects/d-17.json")));
      change.commit();
    }
  }

  private static void takeBack(LibraryFolder library) {
    History.of(library).undo();
  }

  @Test
  void losesNothingOfAChangeOfOneFile() {
    failAtEach(l -> {}, FaultyDiskTest::retitle);
    failAtEach(l -> {}, FaultyDiskTest::addAWork);
    failAtEach(l -> {}, FaultyDiskTest::deleteAPiece);
  }

  @Test
  void losesNothingOfAChangeOfSeveralFiles() {
    failAtEach(l -> {}, library -> Changed.make(library, Steps.NONE));
  }

  @Test
  void losesNothingOfTakingBack() {
    failAtEach(FaultyDiskTest::retitle, FaultyDiskTest::takeBack);
    failAtEach(library -> Changed.make(library, Steps.NONE), FaultyDiskTest::takeBack);
  }

  private void failAtEach(Consumer<LibraryFolder> first, Consumer<LibraryFolder> action) {
    Made made = new Made(first, action, -1);
    Map<String, String> before = made.before;
    Map<String, String> after = made.after;
    assertEquals("", made.said);
    List<String> operations = made.operations;
    assertTrue(operations.stream().anyMatch(o -> o.startsWith("force")), operations::toString);
    for (int number = 0; number < operations.size(); number++) {
      Made failing = new Made(first, action, number);
      String where = number + " " + operations.get(number) + ": " + failing.said;
      boolean unconfirmed = UNCONFIRMED.stream().anyMatch(failing.said::contains);
      if (failing.said.isEmpty()) {
        assertEquals(after, failing.after, where);
      } else if (!unconfirmed) {
        assertEquals(before, failing.after, where);
      } else {
        assertTrue(before.equals(failing.after) || after.equals(failing.after), where);
      }
      assertTrue(
          failing.said.isEmpty()
              || unconfirmed
              || failing.said.contains("nothing was changed: No space left on device")
              || failing.said.contains("cannot be removed"),
          where);
    }
  }

  private int count;

  /** What became of one attempt; the disk is sound again when it is looked at. */
  private final class Made {
    final Map<String, String> before;
    final Map<String, String> after;
    final List<String> operations;
    String said = "";

    Made(Consumer<LibraryFolder> first, Consumer<LibraryFolder> action, int failing) {
      Path place = dir.resolve(Integer.toString(count++));
      Path root = Fixture.in(place).path();
      LibraryFolder sound = LibraryFolder.open(root);
      first.accept(sound);
      before = content(sound);
      long changesBefore = changes(sound);
      FaultyDisk disk = new FaultyDisk(root);
      LibraryFolder library = LibraryFolder.open(disk.on(root));
      disk.fail(failing);
      try {
        action.accept(library);
      } catch (LibraryException e) {
        said = e.getMessage();
      }
      operations = new ArrayList<>(disk.done());
      disk.fail(-1);
      LibraryFolder.open(root).lock().close(); // whoever writes next puts in order what is left
      after = content(sound);
      assertEquals(
          !before.equals(after),
          changes(sound) != changesBefore,
          failing + ": " + said + ": the history has what was done, and no more");
      Fixture.delete(place);
    }
  }

  /** How many changes are recorded and not taken back. */
  private static long changes(LibraryFolder library) {
    return History.of(library).lines().stream()
        .filter(line -> !line.undone() && line.takesBack().isEmpty())
        .count();
  }

  /** The library without its history and what a failing deletion may leave. */
  private static Map<String, String> content(LibraryFolder library) {
    Map<String, String> content = Changed.content(library.path());
    content
        .keySet()
        .removeIf(
            name ->
                name.startsWith(HistoryFolder.FOLDER)
                    || name.equals("rejected")
                    || name.endsWith(".tmp"));
    return content;
  }
}
