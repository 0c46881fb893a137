package merese.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assertions.fail;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.File;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.concurrent.TimeUnit;
import java.util.function.Predicate;
import java.util.stream.Stream;
import merese.model.Check;
import merese.model.Edition;
import merese.model.Note;
import merese.store.LibraryFolder;
import merese.testing.DemoLibrary;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;

/**
 * A sitting as somebody at a terminal has it: the built program under tmux, which is a terminal and
 * can be read. The keys that are sent and the screens that come back are all that is known of it.
 */
class SittingIT {
  private static final String LAUNCHER =
      Path.of("target/merese/bin/merese").toAbsolutePath().toString();

  /** What is printed after the program has ended, before its exit code. */
  private static final String ENDED = "Ended with ";

  private static final long PATIENCE = TimeUnit.SECONDS.toNanos(45);

  @TempDir private Path home;

  @BeforeEach
  void copyTheDemo() throws IOException {
    boolean installed =
        Stream.of(System.getenv("PATH").split(File.pathSeparator))
            .anyMatch(folder -> Files.isExecutable(Path.of(folder, "tmux")));
    assumeTrue(installed, "tmux is not installed; .ci/run installs it");
    DemoLibrary.copyTo(home);
  }

  @AfterEach
  void switchOff() throws Exception {
    tmux("kill-server");
  }

  @Test
  @Timeout(120)
  void keepsJustWhatItSaidThatItNoted() throws Exception {
    begin(80, "sitting", "quenby-1926", "--by", "V");
    prompt("quenby-1926>");
    enter("p. 60", "p. 60>");
    enter("knife-edged rings --pictured", "p. 60>");
    enter("fig. 9 | bladed ring | \"an edge | all round\" --date c. 1790–1810", "p. 60>");
    enter("+", "p. 61>");
    shown("p. 61: 1 note already.");
    enter("triple ring --as ring-annulated", "p. 61>");

    enter("collar", "Which [1-7]?");
    enter("1", "Which [1-3]?");
    enter("1", "p. 61>");
    shown("“collar” = neck ring (neck-ring).");

    enter("next", "p. 62>");
    type("folded fo");
    key("Tab");
    await("a term is completed", screen -> last(screen).equals("p. 62> folded foot"));
    enter("--drawing", "p. 62>");

    type("half a li");
    await("the line is typed", screen -> last(screen).endsWith("half a li"));
    key("C-c");
    prompt("p. 62>");

    enter("firing foot --dte 1795", "");
    await(
        "the refused line is there to be mended",
        screen ->
            screen.contains("there is no option --dte; did you mean --date?")
                && screen.contains("Mend the line, or Ctrl-U clears it.")
                && last(screen).equals("p. 62> firing foot --dte 1795")
                && screen.indexOf("--dte") < screen.lastIndexOf("p. 62>"));
    key("BSpace", 10);
    enter("--date 1795", "p. 62>");

    enter("blackberry prunt", "p. 62>");
    enter("pl. XIX, fig. 2 | target stopper --pictured", "p. 62>");
    enter("-", "p. 61>");
    enter("mushroom stopper --unassigned", "p. 61>");
    enter("wrong ring --unassigned", "p. 61>");
    enter("undo", "p. 61>");
    shown("Taken back: p. 61 (names), “wrong ring”");

    key("C-d");
    prompt("read, leafed or index (Return: no log)");
    enter("read", "pages: pp. 60–62; pl. XIX; fig. 9");
    enter("", "looked for: firing foot, folded foot, neck ring, raspberry prunt, target stopper");
    key("C-u");
    enter("neck ring", "");
    ended();

    List<String> said = new ArrayList<>();
    for (String line : whole().split("\n", -1)) {
      if (line.startsWith("Noted: ")) {
        said.add(line);
      }
    }
    assertEquals(10, said.size(), whole());
    assertEquals(
        List.of(
            "p. 60 knife-edged rings ring-bladed",
            "fig. 9 bladed ring ring-bladed",
            "p. 61 triple ring ring-annulated",
            "p. 61 collar neck-ring",
            "p. 62 folded foot foot-folded",
            "p. 62 firing foot foot-firing",
            "p. 62 blackberry prunt prunt-raspberry",
            "pl. XIX, fig. 2 target stopper stopper-target",
            "p. 61 mushroom stopper open"),
        noted());
    Check check = edition().checks().get(edition().checks().size() - 1);
    assertEquals("neck-ring", check.concept());
    assertEquals("pp. 60–62; pl. XIX; fig. 9", check.extent().orElseThrow().printed());

    String covers = run(LAUNCHER, "covers", "--concept", "foot-folded", "--library", library());
    assertTrue(covers.contains("p. 62"), covers);
  }

  @Test
  @Timeout(120)
  void leftByCtrlCAsksNothingAndHasLostNothing() throws Exception {
    begin(60, "sitting", "quenby-1926", "--by", "V");
    prompt("quenby-1926>");
    enter("p. 60", "p. 60>");
    enter("knife-edged rings --pictured --place almost wholly Irish", "p. 60>");
    key("C-c");
    ended();
    assertEquals(List.of("p. 60 knife-edged rings ring-bladed"), noted());
    for (String line : whole().split("\n", -1)) {
      assertTrue(Wrap.columns(line) <= 60, line);
    }
    shown("Not logged.");
  }

  // --- the library ---

  private String library() {
    return home.resolve("library").toString();
  }

  private Edition edition() {
    for (Edition edition :
        LibraryFolder.open(home.resolve("library"))
            .findWork("quenby-neck-and-stopper")
            .orElseThrow()
            .value()
            .editions()) {
      if (edition.key().equals("quenby-1926")) {
        return edition;
      }
    }
    return fail("there is no such edition");
  }

  /** Place, term and concept of each note that V took. */
  private List<String> noted() {
    List<String> noted = new ArrayList<>();
    for (Note note : edition().notes()) {
      if (note.checked().isPresent() && note.checked().get().by().equals("V")) {
        noted.add(
            note.places().get(0).locator().printed()
                + " "
                + note.namings().get(0).printed()
                + " "
                + note.namings().get(0).concept().orElse("open"));
      }
    }
    return noted;
  }

  // --- the terminal ---

  private void begin(int columns, String... words) throws Exception {
    List<String> command =
        new ArrayList<>(List.of("-f", "/dev/null", "new-session", "-d", "-s", "s"));
    command.addAll(List.of("-x", Integer.toString(columns), "-y", "50", "-c", home.toString()));
    command.addAll(List.of("env", "-u", "COLUMNS", "-u", "MERESE_TTY", "-u", "MERESE_COLUMNS"));
    command.add("JAVA_HOME=" + System.getProperty("java.home"));
    command.addAll(List.of("sh", "-c", "trap : INT; \"$@\"; echo \"" + ENDED + "$?\"", "sh"));
    command.add(LAUNCHER);
    command.addAll(List.of(words));
    command.addAll(List.of("--library", library()));
    command.addAll(List.of(";", "set-option", "-g", "remain-on-exit", "on"));
    tmux(command.toArray(String[]::new));
  }

  private void type(String text) throws Exception {
    tmux("send-keys", "-t", "s", "-l", "--", text);
  }

  private void key(String name) throws Exception {
    key(name, 1);
  }

  private void key(String name, int times) throws Exception {
    tmux("send-keys", "-t", "s", "-N", Integer.toString(times), name);
  }

  /** Types a line; "" in the place of a prompt waits for none. */
  private void enter(String line, String promptAfter) throws Exception {
    String before = whole();
    if (!line.isEmpty()) {
      type(line);
    }
    key("Enter");
    if (!promptAfter.isEmpty()) {
      await(
          "after \"" + line + "\" there is " + promptAfter,
          screen -> !screen.equals(before) && last(screen).equals(promptAfter));
    }
  }

  private void prompt(String expected) throws Exception {
    await("the prompt " + expected, screen -> last(screen).equals(expected));
  }

  private void shown(String text) throws Exception {
    assertTrue(whole().contains(text), () -> text + " is not in\n" + unchecked());
  }

  private void ended() throws Exception {
    await("it has ended", screen -> screen.contains("\n" + ENDED));
    assertTrue(whole().contains("\n" + ENDED + "0\n"), whole());
  }

  private void await(String what, Predicate<String> holds) throws Exception {
    long start = System.nanoTime();
    while (!holds.test(whole())) {
      if (System.nanoTime() - start > PATIENCE) {
        fail(what + "; the screen is\n" + whole());
      }
      Thread.sleep(50);
    }
  }

  private static String last(String screen) {
    String[] lines = screen.split("\n", -1);
    for (int i = lines.length - 1; i >= 0; i--) {
      if (!lines[i].isBlank()) {
        return lines[i].strip();
      }
    }
    return "";
  }

  /** All that was on the screen, what has gone off its top too. */
  private String whole() throws Exception {
    return tmux("capture-pane", "-p", "-S", "-", "-t", "s");
  }

  private String unchecked() {
    try {
      return whole();
    } catch (Exception e) {
      return e.toString();
    }
  }

  private String tmux(String... words) throws Exception {
    List<String> command = new ArrayList<>(List.of("tmux", "-u", "-S", home + "/tmux"));
    command.addAll(List.of(words));
    return run(command.toArray(String[]::new));
  }

  private static String run(String... command) throws IOException, InterruptedException {
    ProcessBuilder builder = new ProcessBuilder(command).redirectErrorStream(true);
    builder.environment().putAll(Map.of("JAVA_HOME", System.getProperty("java.home")));
    builder.environment().keySet().removeIf(name -> name.startsWith("TMUX"));
    Process process = builder.start();
    process.getOutputStream().close();
    String said = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
    process.waitFor();
    return said;
  }
}
