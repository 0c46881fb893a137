package merese.store;

import static java.nio.charset.StandardCharsets.UTF_8;
import static merese.store.Fixture.refusal;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import merese.model.Mine;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

@DisplayName("Two processes with one library:")
class ChangingProcessesTest {
  @TempDir Path dir;

  private static Process start(Class<?> main, List<String> options, Path root, int number)
      throws IOException {
    List<String> words = new ArrayList<>();
    words.add(Path.of(System.getProperty("java.home"), "bin", "java").toString());
    words.addAll(options);
    words.addAll(List.of("-cp", System.getProperty("java.class.path"), main.getName()));
    words.addAll(List.of(root.toString(), Integer.toString(number)));
    return new ProcessBuilder(words).redirectError(ProcessBuilder.Redirect.INHERIT).start();
  }

  @Test
  void aChangeThatIsOpenKeepsOtherWritersOutAndLetsReadersIn() throws Exception {
    LibraryFolder library = Fixture.in(dir);
    Map<String, String> before = Changed.content(library.path());
    Process holder = start(Dying.class, List.of(), library.path(), -1);
    try {
      assertEquals("staged", new String(holder.getInputStream().readNBytes(6), UTF_8));
      LibraryFolder other =
          LibraryFolder.open(library.path(), Duration.ofMillis(50), Clock.systemUTC());
      String said = refusal(() -> other.change("a test"));
      assertTrue(said.contains("somebody else is writing to this library: process "), said);
      assertTrue(said.contains(Long.toString(holder.pid())), said);
      assertEquals(6, other.scan().size());
    } finally {
      holder.destroyForcibly().waitFor();
    }
    library.lock().close();
    assertEquals(before, Changed.content(library.path()));
  }

  @Test
  void oneThatIsKilledAmidItsChangeLeavesAllOrNothing() throws Exception {
    List<String> steps = Changed.steps(dir.resolve("steps"));
    int decision = steps.indexOf("decide");
    Map<String, String> after = Changed.content(dir.resolve("steps/library"));
    for (int step : List.of(3, decision, decision + 1, decision + 6, steps.size() - 1)) {
      LibraryFolder library = Fixture.in(dir.resolve("killed-" + step));
      Map<String, String> before = Changed.content(library.path());
      assertEquals(9, start(Dying.class, List.of(), library.path(), step).waitFor());
      LibraryFolder.open(library.path()).lock().close();
      assertEquals(step > decision ? after : before, Changed.content(library.path()));
    }
  }

  /** Stages a change and dies before a step; says "staged" and waits where that is below 0. */
  static final class Dying {
    public static void main(String[] args) throws InterruptedException {
      int last = Integer.parseInt(args[1]);
      int[] taken = {0};
      Steps steps =
          what -> {
            if (taken[0]++ == last) {
              Runtime.getRuntime().halt(9);
            }
          };
      LibraryFolder library = LibraryFolder.open(Path.of(args[0]));
      try (ChangeSet change = library.change("a test", steps)) {
        Changed.stage(library, change);
        if (last < 0) {
          System.out.print("staged");
          System.out.flush();
          Thread.sleep(60_000);
        }
        change.commit();
      }
    }
  }

  @Test
  void aReaderNoticesAnyChangeThatCameAmidItsReading() throws Exception {
    LibraryFolder library = Fixture.in(dir);
    int times = 60;
    Process writer = start(Counting.class, List.of(), library.path(), times);
    int seen = -1;
    while (seen < times) {
      String moment = library.moment();
      List<Integer> counts = Counting.counts(library);
      boolean one = counts.stream().distinct().count() == 1;
      if (library.isStill(moment)) {
        assertTrue(one, "undisturbed, and yet " + counts);
        assertTrue(counts.get(0) >= seen);
        seen = counts.get(0);
      }
      assertTrue(writer.isAlive() || writer.exitValue() == 0);
    }
    assertEquals(0, writer.waitFor());
  }

  /** Writes a number into three files at once, and then the next. */
  static final class Counting {
    public static void main(String[] args) {
      LibraryFolder library = LibraryFolder.open(Path.of(args[0]));
      for (int count = 1; count <= Integer.parseInt(args[1]); count++) {
        try (ChangeSet change = library.change("a test")) {
          Stored<Mine> mine = library.readMine();
          Mine.Untraced word = new Mine.Untraced("w" + count, Optional.empty(), Optional.empty());
          change.save(mine, new Mine(List.of(), List.of(), List.of(), List.of(word)));
          var kept = library.readKept();
          change.save(
              kept, List.of(new merese.model.ReceivedRecord("bibtex", "w" + count, "", List.of())));
          var work = library.readWork(library.resolve(Fixture.WORK));
          change.save(work, work.value().withAlternateTitles(List.of("w" + count)));
          change.commit();
        }
      }
    }

    static List<Integer> counts(LibraryFolder library) {
      List<String> words = new ArrayList<>();
      library.readMine().value().untraced().forEach(u -> words.add(u.word()));
      Thread.onSpinWait();
      words.addAll(library.readWork(library.resolve(Fixture.WORK)).value().alternateTitles());
      List<merese.model.ReceivedRecord> kept = library.readKept().value();
      words.add(kept.isEmpty() ? "w0" : kept.get(0).type());
      return words.stream()
          .map(w -> w.matches("w\\d+") ? Integer.parseInt(w.substring(1)) : 0)
          .toList();
    }
  }

  @Test
  void aChangeTakesLittleMemoryHoweverMuchItWrites() throws Exception {
    LibraryFolder library = Fixture.in(dir);
    Process process = start(Large.class, List.of("-Xmx24m"), library.path(), 240);
    assertEquals(0, process.waitFor());
    assertEquals(246, library.scan().size());
    assertFalse(library.findWork("large-239").isEmpty());
  }

  /** Adds works of a quarter of a megabyte. */
  static final class Large {
    public static void main(String[] args) {
      LibraryFolder library = LibraryFolder.open(Path.of(args[0]));
      try (ChangeSet change = library.change("a test")) {
        for (int i = 0; i < Integer.parseInt(args[1]); i++) {
          change.add(Changed.work("large-" + i, "long ".repeat(50_000)));
        }
        change.commit();
      }
    }
  }
}
