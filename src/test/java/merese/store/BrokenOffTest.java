package merese.store;

import static merese.store.Fixture.refusal;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Duration;
import java.util.List;
import java.util.Map;
import merese.store.Changed.PowerCut;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

@DisplayName("A change of several files that is broken off")
class BrokenOffTest {
  @TempDir Path dir;
  private List<String> steps;
  private int decision;
  private Map<String, String> before;
  private Map<String, String> after;

  @BeforeEach
  void knowTheSteps() {
    before = Changed.content(Fixture.in(dir.resolve("before")).path());
    steps = Changed.steps(dir.resolve("after"));
    after = Changed.content(dir.resolve("after/library"));
    decision = steps.indexOf("decide");
    assertTrue(decision > 8 && steps.size() > decision + 8, steps::toString);
    assertFalse(before.equals(after));
  }

  /** Makes the change and stops it before one of its steps. */
  private void stop(LibraryFolder library, int step, Stopping how) {
    int[] taken = {0};
    Steps stopping =
        what -> {
          if (taken[0]++ == step) {
            how.stop();
          }
        };
    ChangeSet change = library.change("a test", stopping);
    try {
      Changed.stage(library, change);
      change.commit();
    } finally {
      change.abandon();
    }
  }

  private interface Stopping {
    void stop() throws IOException;
  }

  private static void cut() {
    throw new PowerCut();
  }

  private LibraryFolder cutAt(int step) {
    LibraryFolder library = Fixture.in(dir.resolve("cut-" + step));
    assertThrows(PowerCut.class, () -> stop(library, step, BrokenOffTest::cut));
    return library;
  }

  @Test
  void byAPowerCutAtAnyStepIsThereWholeOrNotAtAllForWhoeverOpensNext() {
    for (int step = 0; step < steps.size(); step++) {
      Path root = cutAt(step).path();
      LibraryFolder.open(root).lock().close();
      assertEquals(
          step <= decision ? before : after, Changed.content(root), step + " " + steps.get(step));
    }
  }

  @Test
  void isAsWholeForAReaderWhoNeverWrites() {
    for (int step = 0; step < steps.size(); step++) {
      LibraryFolder library = LibraryFolder.open(cutAt(step).path());
      assertEquals(step > decision, isChanged(library), steps.get(step));
    }
  }

  private static boolean isChanged(LibraryFolder library) {
    boolean settings = library.settings().title().equals("Another title");
    assertEquals(settings, !library.readKept().value().isEmpty());
    assertEquals(settings, library.findWork("brook").isPresent());
    assertEquals(settings, library.findObject("d-18").isPresent());
    assertEquals(settings, library.findObject("d-17").isEmpty());
    assertEquals(settings, Files.exists(library.resolve("rejected/glass.bib")));
    return settings;
  }

  @Test
  void isFinishedEvenIfFinishingItIsBrokenOffAtAnyStep() {
    for (int step = decision + 1; step < steps.size(); step++) {
      for (int again = 0; again < steps.size() - step; again++) {
        Path root = cutAt(step).path();
        int[] taken = {0};
        int last = again;
        Journal journal =
            new Journal(
                root,
                what -> {
                  if (taken[0]++ == last) {
                    cut();
                  }
                });
        if (journal.isThere()) {
          assertThrows(PowerCut.class, journal::finish);
        }
        LibraryFolder.open(root).lock().close();
        assertEquals(after, Changed.content(root), step + ", " + again);
        Fixture.delete(root.getParent());
      }
    }
  }

  @Test
  void byAFullDiskSaysSoAndChangesNothingUnlessItIsDecided() {
    for (int step = 0; step < steps.size(); step++) {
      LibraryFolder library = Fixture.in(dir.resolve("full-" + step));
      int[] taken = {0};
      int full = step;
      Steps disk =
          what -> {
            if (taken[0]++ >= full) {
              throw new FileSystemException("x", null, "No space left on device");
            }
          };
      String said = refusal(() -> make(library, disk));
      assertTrue(said.contains(": No space left on device;"), said);
      boolean decided = step > decision;
      assertEquals(decided, said.contains("is decided and begun, but could not be finished"), said);
      assertEquals(!decided, said.contains("cannot be written, and nothing was changed"), said);
      if (!decided) {
        assertEquals(before, Changed.content(library.path()), steps.get(step));
      }
      LibraryFolder.open(library.path());
      Map<String, String> now = Changed.content(library.path());
      now.keySet().removeIf(name -> name.startsWith(Staging.FOLDER));
      assertEquals(decided ? after : before, now, steps.get(step));
    }
  }

  @Test
  void isNoticedByAReaderWhereverItBegan() {
    LibraryFolder library = Fixture.in(dir);
    String moment = library.moment();
    List<String> unnoticed = new java.util.ArrayList<>();
    Changed.make(
        library,
        what -> {
          if (library.isStill(moment)) {
            unnoticed.add(what);
          }
        });
    assertEquals(steps.subList(0, decision + 1), unnoticed, "nothing has moved until then");
    assertFalse(library.isStill(moment));
    assertTrue(library.isStill(library.moment()));
  }

  private static Void make(LibraryFolder library, Steps steps) {
    Changed.make(library, steps);
    return null;
  }

  @Test
  void byTheUserLeavesWhatWasPutByToTheNextWriterAndIsNothingToReaders() {
    LibraryFolder library = Fixture.in(dir);
    ChangeSet change = library.change("a test");
    Changed.stage(library, change);
    change.abandon();
    assertTrue(Files.exists(library.resolve(".change/0")));
    LibraryFolder reader = LibraryFolder.open(library.path());
    assertEquals(6, reader.scan().size());
    assertEquals(List.of(), reader.check());
    assertTrue(Files.exists(library.resolve(".change/0")), "it may be somebody's who is at it");
    Stored<List<merese.model.ReceivedRecord>> kept = reader.readKept();
    reader.save(kept, List.of(Changed.preamble()));
    assertFalse(Files.exists(library.resolve(".change")));
  }

  @Nested
  @DisplayName("and decided")
  class Decided {
    private Path root;

    @BeforeEach
    void cutJustAfter() {
      root = cutAt(steps.indexOf("put a file in its place")).path();
      assertTrue(Files.exists(root.resolve(".change/journal")));
    }

    @Test
    void isNotFinishedOverWhatSomebodyWroteSince() throws IOException {
      Path edited = root.resolve(Fixture.WORK);
      Files.writeString(edited, "{\"id\": \"mine\"}");
      String said = refusal(() -> LibraryFolder.open(root));
      assertTrue(
          said.contains(
              edited
                  + ": a change of several files was broken off before it came to this one, and"
                  + " somebody has edited it since; move it out of the library and run merese again,"
                  + " which finishes that change; then make your edit again"),
          said);
      assertEquals("{\"id\": \"mine\"}", Files.readString(edited));
      Files.move(edited, dir.resolve("edited.json"));
      LibraryFolder.open(root).lock().close();
      assertEquals(after, Changed.content(root));
    }

    @Test
    void isARefusalWhereTheLockCannotBeTaken() throws IOException {
      Files.delete(root.resolve(".lock"));
      Files.createDirectory(root.resolve(".lock")); // as refused as on a read-only disk
      String said = refusal(() -> LibraryFolder.open(root));
      assertTrue(
          said.startsWith(
              root
                  + ": a change of several files is not finished, and until it is, the library"
                  + " cannot be read; see what keeps it from being finished:\n"
                  + root.resolve(".lock")
                  + ": cannot be written"),
          said);
    }

    @Test
    void isWaitedForByAReaderWhileItsOwnerIsAtIt() throws Exception {
      LibraryFolder owner = Fixture.in(dir.resolve("owner"));
      List<Throwable> failures = new java.util.ArrayList<>();
      Steps looking =
          what -> {
            if (what.equals("delete a file")) {
              Thread other =
                  new Thread(
                      () ->
                          assertTrue(
                              refusal(
                                      () ->
                                          LibraryFolder.open(
                                              owner.path(),
                                              Duration.ofMillis(20),
                                              Clock.systemUTC()))
                                  .contains("somebody else is writing to this library")));
              other.setUncaughtExceptionHandler((thread, failure) -> failures.add(failure));
              other.start();
              try {
                other.join();
              } catch (InterruptedException e) {
                throw new AssertionError(e);
              }
            }
          };
      Changed.make(owner, looking);
      assertEquals(List.of(), failures);
    }

    @Test
    void isRefusedWhereItsJournalIsDamagedOrReachesBeyondTheLibrary() throws IOException {
      Path journal = root.resolve(".change/journal");
      Path victim = Files.writeString(dir.resolve("victim"), "kept");
      String was = Hash.of(Files.readAllBytes(victim));
      for (String text :
          List.of(
              "",
              "merese change 2\nend 0\n",
              "merese change 1\nput 0 - works/a.json\n",
              "merese change 1\nput 0 - works/a.json\nend 2\n",
              "merese change 1\nput x - works/a.json\nend 1\n",
              "merese change 1\nput 0 - ../../victim\nend 1\n",
              "merese change 1\nput 0 - works/../../../victim\nend 1\n",
              "merese change 1\ndelete " + was + " ../../victim\nend 1\n",
              "merese change 1\ndelete " + was + " " + victim + "\nend 1\n",
              "merese change 1\nput 0 - .lock\nend 1\n",
              "merese change 1\nput 0 - ..\\victim\nend 1\n")) {
        Files.writeString(journal, text);
        String said = refusal(() -> LibraryFolder.open(root));
        assertTrue(said.contains("the list of what is left to do is damaged"), text + said);
        assertEquals("kept", Files.readString(victim));
      }
    }
  }
}
