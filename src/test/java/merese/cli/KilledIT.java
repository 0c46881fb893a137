package merese.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.TreeMap;
import java.util.concurrent.TimeUnit;
import merese.model.Edition;
import merese.model.Note;
import merese.model.Work;
import merese.store.LibraryFile;
import merese.store.LibraryFolder;
import merese.testing.DemoLibrary;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * Kills processes that write to a library (SIGKILL where there is one) at moments at random, and
 * looks at what they leave: the library opens, and has what was acknowledged, once. {@code
 * -Dkills=200} kills so many; the profile "long" does.
 */
@DisplayName("A process that is killed")
class KilledIT {
  private static final int KILLS = Integer.getInteger("kills", 20);
  private static final long LONGEST_SECONDS = 120;

  @TempDir Path home;

  /** When to kill; the moments differ from run to run anyway, as machines do. */
  private final Random random = new Random(20261130);

  private int started;

  @BeforeEach
  void copyTheDemo() throws IOException {
    DemoLibrary.copyTo(home);
    assertEquals(0, merese("covers", "bladed ring").code());
  }

  private Ran merese(String... words) {
    return Ran.in(home, Map.of(), words);
  }

  private Process start(Class<?> main, String... arguments) throws IOException {
    List<String> words = new ArrayList<>();
    words.add(Path.of(System.getProperty("java.home"), "bin", "java").toString());
    words.addAll(List.of("-XX:TieredStopAtLevel=1", "-Xshare:auto"));
    words.addAll(List.of("-cp", System.getProperty("java.class.path"), main.getName()));
    words.add(home.toString());
    words.addAll(List.of(arguments));
    return new ProcessBuilder(words)
        .redirectError(home.resolve("errors").toFile())
        .redirectOutput(home.resolve("said" + ++started).toFile())
        .start();
  }

  /** The whole lines that the process started last has written. */
  private List<String> said() throws IOException {
    String said = Files.readString(home.resolve("said" + started));
    return said.substring(0, said.lastIndexOf('\n') + 1).lines().toList();
  }

  private void awaitStart(Process process) throws Exception {
    while (said().isEmpty()) {
      assertTrue(process.isAlive(), "it did not start");
      Thread.sleep(5);
    }
  }

  private static void kill(Process process) throws InterruptedException {
    process.destroyForcibly();
    assertTrue(process.waitFor(LONGEST_SECONDS, TimeUnit.SECONDS));
  }

  /** The places of the notes that tests take, with how often each is there. */
  private Map<String, Integer> noted() {
    Map<String, Integer> noted = new TreeMap<>();
    LibraryFolder library = LibraryFolder.open(home.resolve("library"));
    for (LibraryFile file : library.scan()) {
      if (file.kind() == LibraryFile.Kind.WORK) {
        Work work = library.readWork(file.path()).value();
        for (Edition edition : work.editions()) {
          for (Note note : edition.notes()) {
            String at = note.places().get(0).locator().printed();
            if (at.matches("p\\. 9\\d{5}")) {
              noted.merge(at, 1, Integer::sum);
            }
          }
        }
      }
    }
    return noted;
  }

  private void assertSound() {
    Ran check = merese("check");
    assertEquals(0, check.code(), check.out());
    Ran answer = merese("covers", "bladed ring");
    assertEquals(0, answer.code(), answer.err());
    assertFalse(answer.err().contains("incomplete"), answer.err());
  }

  /** Takes notes, each of another page, and says which are taken. */
  static final class Noting {
    private Noting() {}

    public static void main(String[] arguments) {
      Path home = Path.of(arguments[0]);
      int from = Integer.parseInt(arguments[2]);
      int to = from + Integer.parseInt(arguments[3]);
      for (int page = from; page < to; page++) {
        int code = run(home, "note", arguments[1], "p. " + page, "bladed ring");
        System.out.println((code == 0 ? "" : "failed ") + "p. " + page);
        System.out.flush();
      }
    }
  }

  /** Runs one command. */
  static final class Command {
    private Command() {}

    public static void main(String[] arguments) {
      String[] words = java.util.Arrays.copyOfRange(arguments, 1, arguments.length);
      System.out.println("started");
      System.out.flush();
      System.exit(run(Path.of(arguments[0]), words));
    }
  }

  private static int run(Path home, String... words) {
    OutputStream none = OutputStream.nullOutputStream();
    return Main.run(InputStream.nullInputStream(), none, System.err, Map.of(), home, words);
  }

  @Test
  void amidItsNotesLosesNoneThatItAcknowledged() throws Exception {
    List<String> acknowledged = new ArrayList<>();
    int page = 900_000;
    for (int round = 0; round < (KILLS + 1) / 2; round++) {
      Process process = start(Noting.class, "haskeld-1983", Integer.toString(page), "1000");
      awaitStart(process);
      Thread.sleep(random.nextInt(150));
      kill(process);
      acknowledged.addAll(said());
      page += 1000;
      Map<String, Integer> noted = noted();
      for (String each : acknowledged) {
        assertEquals(1, noted.get(each), each + " in round " + round);
      }
      assertTrue(noted.size() <= acknowledged.size() + round + 1, "one more for each kill at most");
    }
    assertSound();
  }

  @Test
  void amidAnImportLeavesAllOfItOrNothing() throws Exception {
    StringBuilder bibtex = new StringBuilder();
    for (int i = 0; i < 60; i++) {
      bibtex
          .append("@book{record")
          .append(i)
          .append(", author = {Quarn, Ivor}, title = {Of Glass, ");
      bibtex.append("Part ").append(i).append("}, year = {1950}}\n");
    }
    Path file = home.resolve("records.bib");
    Files.writeString(file, bibtex);
    int before = works();
    int whole = 0;
    for (int round = 0; round < (KILLS + 3) / 4; round++) {
      Process process = start(Command.class, "import", file.toString(), "--apply");
      awaitStart(process);
      process.waitFor(300 + random.nextInt(1200), TimeUnit.MILLISECONDS);
      kill(process);
      LibraryFolder.open(home.resolve("library")).lock().close();
      int now = works();
      assertTrue(now == before || now == before + 60, now + " works in round " + round);
      if (now > before) {
        whole++;
        assertEquals(0, merese("undo").code());
        assertEquals(before, works());
      }
      assertSound();
    }
    assertTrue(whole <= (KILLS + 3) / 4);
  }

  private int works() {
    int works = 0;
    for (LibraryFile file : LibraryFolder.open(home.resolve("library")).scan()) {
      works += file.kind() == LibraryFile.Kind.WORK ? 1 : 0;
    }
    return works;
  }

  @Test
  void amidItsIndexingLeavesOneThatAnswersAsANewOneDoes() throws Exception {
    String expected = merese("covers", "ring").out();
    for (int round = 0; round < (KILLS + 3) / 4; round++) {
      deleteIndexOrTouchAWork(round);
      Process process = start(Command.class, "covers", "ring");
      awaitStart(process);
      process.waitFor(100 + random.nextInt(900), TimeUnit.MILLISECONDS);
      kill(process);
      assertEquals(expected, merese("covers", "ring").out(), "round " + round);
    }
    assertSound();
  }

  /** So that a new index is made, or the one that is there is brought up to date. */
  private void deleteIndexOrTouchAWork(int round) throws IOException {
    if (round % 2 == 0) {
      try (var files = Files.walk(home.resolve("index"))) {
        for (Path path : files.sorted(java.util.Comparator.reverseOrder()).toList()) {
          Files.delete(path);
        }
      }
    } else {
      assertEquals(0, merese("note", "haskeld-1983", "p. 7", "ring " + round).code());
      assertEquals(0, merese("undo").code());
    }
  }

  @Test
  void orEightAtOnceKeepEveryNoteOnce() throws Exception {
    for (int processes : List.of(2, 8)) {
      List<Process> together = new ArrayList<>();
      for (int i = 0; i < processes; i++) {
        int from = 900_000 + processes * 1_000 + i * 100;
        together.add(start(Noting.class, "tressick-1954", Integer.toString(from), "5"));
      }
      int first = started - processes + 1;
      for (Process process : together) {
        assertTrue(process.waitFor(LONGEST_SECONDS, TimeUnit.SECONDS));
        assertEquals(0, process.exitValue());
      }
      Map<String, Integer> noted = noted();
      for (int file = first; file <= started; file++) {
        List<String> said = Files.readAllLines(home.resolve("said" + file));
        assertEquals(5, said.size());
        said.forEach(each -> assertEquals(1, noted.get(each), each));
      }
    }
    assertEquals(50, noted().size());
    assertSound();
  }
}
