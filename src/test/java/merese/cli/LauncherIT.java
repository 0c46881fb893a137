package merese.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.Writer;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.attribute.FileTime;
import java.nio.file.attribute.PosixFilePermissions;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import merese.testing.UnionList;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Starts the built program as a user does. The jars are linked, so that a copy is cheap. */
class LauncherIT {
  private static final Path BUILT = Path.of("target/merese").toAbsolutePath();
  private static final String PREPARING = "merese: preparing for quick starts";

  @TempDir private Path folder;

  @BeforeEach
  void letEveryUserIn() throws IOException {
    Files.setPosixFilePermissions(folder, PosixFilePermissions.fromString("rwxr-xr-x"));
  }

  @Nested
  class TheBuiltProgram {
    @Test
    void startsFromAnyFolderWithTheArchive() throws Exception {
      Ran ran = start(BUILT, folder, Map.of("MERESE_JAVA_OPTS", "-Xshare:on"), "--version");
      assertEquals("", ran.err());
      assertEquals(0, ran.code());
    }

    /** What a start may not need is slow; see DEVELOPERS.md, "A quick start". */
    @Test
    void answersWithClassesOfTheArchiveAloneWithoutPicocliAndWithoutLambdas() throws Exception {
      String demo = BUILT.resolve("demo").toString();
      List<String> words = List.of("covers", "bladed ring", "--library", demo);
      Map<String, String> telling = Map.of("MERESE_JAVA_OPTS", "-Xlog:class+load:stderr");
      start(BUILT, folder, Map.of(), words.toArray(String[]::new)); // brings the index up to date
      Ran ran = start(BUILT, folder, telling, words.toArray(String[]::new));
      List<String> loaded = ran.err().lines().filter(line -> line.contains(" source: ")).toList();
      assertTrue(loaded.size() > 300, ran.err());
      for (String line : loaded) {
        assertTrue(line.contains("source: shared objects file"), line);
        assertFalse(line.contains(" picocli.CommandLine "), line);
        assertFalse(line.contains("LambdaMetafactory"), line);
      }
    }

    /** Of so many files that a start does not compare them all. */
    @Test
    void answersFromALargeLibraryWithoutWhatJavaMakesAtFirstUse() throws Exception {
      Path large = UnionList.of(5_100, 12_000).write(folder).path();
      try (Stream<Path> all = Files.walk(large)) {
        for (Path path : all.toList()) { // so old that their times tell
          Files.setLastModifiedTime(path, FileTime.from(Instant.parse("2020-01-01T00:00:00Z")));
        }
      }
      List<String> words = List.of("covers", "bladed ring", "--library", large.toString());
      Map<String, String> telling = Map.of("MERESE_JAVA_OPTS", "-Xlog:class+load:stderr");
      start(BUILT, folder, Map.of(), words.toArray(String[]::new)); // makes the index
      Ran ran = start(BUILT, folder, telling, words.toArray(String[]::new));
      List<String> loaded = ran.err().lines().filter(line -> line.contains(" source: ")).toList();
      assertTrue(loaded.stream().anyMatch(line -> line.contains("FolderTimes")), ran.err());
      for (String line : loaded) {
        boolean ofMapping = line.contains(" java.lang.invoke.LambdaForm$"); // a file's, in Java
        assertTrue(ofMapping || line.contains("source: shared objects file"), line);
        assertFalse(line.contains("java.lang.runtime.ObjectMethods"), line);
        assertFalse(line.contains(" java.util.stream."), line);
        assertFalse(line.contains(" java.text.Normalizer"), line);
      }
    }

    @Test
    void handsTheWordsOnAsTheyAre() throws Exception {
      String demo = BUILT.resolve("demo").toString();
      Ran ran =
          start(
              BUILT,
              folder,
              Map.of(),
              "covers",
              "--json",
              "--library",
              demo,
              "a  b",
              "*",
              "$HOME",
              "ä");
      assertTrue(ran.out().contains("\"asked\" : \"a  b * $HOME ä\""), ran.out());
    }

    @Test
    void handsTheExitCodeOn() throws Exception {
      assertEquals(2, start(BUILT, folder, Map.of(), "cover").code());
    }

    @Test
    void isQuietWhenItsReaderHasHadEnough() throws Exception {
      Ran ran = run(folder, Map.of(), "sh", "-c", "\"$0\" completion | head -n 1", launcher(BUILT));
      assertEquals("", ran.err());
      assertEquals(1, ran.out().lines().count());
    }
  }

  @Nested
  class AnImportThatIsStopped {
    @Test
    void saysThatNothingHasBeenWritten() throws Exception {
      Path library = folder.resolve("stopped");
      start(BUILT, folder, Map.of(), "new", library.toString());
      ProcessBuilder builder =
          new ProcessBuilder(
              launcher(BUILT),
              "import",
              "-",
              "--apply",
              "--as",
              "csl-json",
              "--library",
              library.toString());
      builder.redirectOutput(folder.resolve("out").toFile());
      Process importing = builder.start();
      try (Writer in = importing.outputWriter(); // never at its end
          BufferedReader err = importing.errorReader()) {
        String item = "{\"id\": \"i\", \"type\": \"book\", \"title\": \"On Rings\"},\n";
        in.write("[" + item.repeat(100_000));
        in.flush();
        awaitLine(err, "Reading standard input …");
        importing.toHandle().destroy(); // which leaves what it says to be read
        awaitLine(err, "Stopped: nothing has been written.");
      }
      assertNotEquals(0, importing.waitFor());
      try (Stream<Path> works = Files.list(library.resolve("library/works"))) {
        assertEquals(0, works.count());
      }
    }

    private static void awaitLine(BufferedReader from, String line) throws IOException {
      for (String read = from.readLine(); !line.equals(read); read = from.readLine()) {
        assertNotNull(read, () -> "the process said nothing of \"" + line + "\"");
      }
    }
  }

  @Nested
  class ThroughALink {
    @Test
    void thatIsRelativeOrALinkToALinkItFindsItsHome() throws Exception {
      Path bin = Files.createDirectory(folder.resolve("my bin"));
      Files.createSymbolicLink(bin.resolve("one"), bin.relativize(Path.of(launcher(BUILT))));
      Files.createSymbolicLink(folder.resolve("two"), Path.of("my bin/one"));
      Ran ran = run(folder, Map.of(), "./two", "--version");
      assertEquals("", ran.err());
      assertTrue(ran.out().startsWith("merese "), ran.out());
    }
  }

  @Nested
  class AfterAMove {
    @Test
    void theArchiveIsMadeAgainOnceAndUsed() throws Exception {
      Path moved = copy("the shelf's tool");
      Ran first = start(moved, folder, Map.of(), "--version");
      assertTrue(first.err().startsWith(PREPARING), first.err());
      assertEquals(1, first.err().lines().count());
      Ran second = start(moved, folder, Map.of("MERESE_JAVA_OPTS", "-Xshare:on"), "--version");
      assertEquals("", second.err());
      assertEquals(first.out(), second.out());
      assertFalse(leftovers(moved), "a folder of the making is left");
    }

    @Test
    void itStartsSilentlyWithoutAnArchiveWhereNothingCanBeWritten() throws Exception {
      Path moved = copy("read-only");
      Path lib = moved.resolve("lib");
      Files.setPosixFilePermissions(lib, PosixFilePermissions.fromString("r-xr-xr-x"));
      List<String> words = new ArrayList<>();
      if (Files.isWritable(lib)) { // root may write anywhere, so become somebody else
        words.addAll(List.of("setpriv", "--reuid=65534", "--regid=65534", "--clear-groups"));
      }
      words.addAll(List.of(launcher(moved), "--version"));
      Ran ran = run(folder, Map.of(), words.toArray(String[]::new));
      Files.setPosixFilePermissions(lib, PosixFilePermissions.fromString("rwxr-xr-x"));
      assertEquals("", ran.err());
      assertEquals(0, ran.code());
    }

    @Test
    void twoStartsAtOnceBothAnswerAndLeaveAGoodArchive() throws Exception {
      Path moved = copy("two");
      String twice = "\"$0\" --version & \"$0\" --version; wait";
      Ran both = run(folder, Map.of(), "sh", "-c", twice, launcher(moved));
      assertEquals(4, both.out().lines().count(), both.out());
      start(moved, folder, Map.of(), "--version"); // may make it once more, if the two were mixed
      Ran after = start(moved, folder, Map.of("MERESE_JAVA_OPTS", "-Xshare:on"), "--version");
      assertEquals("", after.err());
      assertEquals(0, after.code());
    }

    @Test
    void whatAKilledMakingLeftIsRemovedByTheNext() throws Exception {
      Path moved = copy("killed");
      Files.createDirectory(moved.resolve("lib/making.999999999"));
      start(moved, folder, Map.of(), "--version");
      assertFalse(leftovers(moved));
    }
  }

  @Nested
  class WhenAJarHasChanged {
    @Test
    void theArchiveIsMadeAgainOnceEvenWhenTheClockIsWrong() throws Exception {
      Path moved = copy("changed");
      start(moved, folder, Map.of(), "--version");
      Path jar = moved.resolve("lib/merese.jar");
      byte[] same = Files.readAllBytes(jar);
      Files.delete(jar);
      Files.write(jar, same);
      Files.setLastModifiedTime(
          jar, FileTime.from(java.time.Instant.parse("2090-01-01T00:00:00Z")));
      assertTrue(start(moved, folder, Map.of(), "--version").err().startsWith(PREPARING));
      assertEquals("", start(moved, folder, Map.of(), "--version").err());
    }
  }

  @Nested
  class Java {
    @Test
    void thatIsMissingIsAnErrorThatSaysWhatToDo() throws Exception {
      Ran ran = start(BUILT, folder, Map.of("JAVA_HOME", "", "PATH", bare("bin")), "--version");
      assertEquals(1, ran.code());
      assertEquals(
          "merese: no Java was found; install Java 17 or newer, or set JAVA_HOME to its folder\n",
          ran.err());
    }

    @Test
    void homeWithoutAJavaIsAnErrorThatNamesTheFolder() throws Exception {
      Ran ran = start(BUILT, folder, Map.of("JAVA_HOME", folder.toString()), "--version");
      assertEquals(1, ran.code());
      assertTrue(ran.err().contains("JAVA_HOME is " + folder), ran.err());
    }

    @Test
    void thatIsTooOldIsAnErrorThatNamesTheVersion() throws Exception {
      Path old = folder.resolve("old java");
      Files.createDirectories(old.resolve("bin"));
      Files.writeString(old.resolve("release"), "JAVA_VERSION=\"11.0.2\"\n");
      program(old.resolve("bin/java"), "echo started");
      Ran ran = start(BUILT, folder, Map.of("JAVA_HOME", old.toString()), "--version");
      assertEquals(1, ran.code());
      assertTrue(ran.err().contains("is Java 11, and merese needs Java 17"), ran.err());
    }

    @Test
    void thatIsTooOldIsFoundOutWithoutItsReleaseFileToo() throws Exception {
      Path old = Files.createDirectories(folder.resolve("older/bin"));
      program(old.resolve("java"), "echo 'openjdk version \"1.8.0_402\"' >&2");
      Ran ran = start(BUILT, folder, Map.of("JAVA_HOME", old.getParent().toString()), "--version");
      assertEquals(1, ran.code());
      assertTrue(ran.err().contains("is Java 8, and merese needs Java 17"), ran.err());
    }

    @Test
    void thatIsAnotherOneGetsItsOwnArchive() throws Exception {
      Path moved = copy("other java");
      start(moved, folder, Map.of(), "--version");
      Path other = folder.resolve("other");
      Files.createDirectories(other.resolve("bin"));
      Files.writeString(other.resolve("release"), "JAVA_VERSION=\"21.0.1\"\n");
      program(
          other.resolve("bin/java"),
          "exec '" + System.getProperty("java.home") + "/bin/java' \"$@\"");
      Map<String, String> environment = Map.of("JAVA_HOME", other.toString());
      assertTrue(start(moved, folder, environment, "--version").err().startsWith(PREPARING));
      assertEquals("", start(moved, folder, environment, "--version").err());
    }

    /** In Turkish the capital of "i" has a dot, and citation styles put names in capitals. */
    @Test
    void isToldNotToFollowTheLanguageOfTheMachine() throws Exception {
      Path moved = copy("language");
      Path other = Files.createDirectories(folder.resolve("echo/bin"));
      Files.writeString(other.resolveSibling("release"), "JAVA_VERSION=\"17.0.1\"\n");
      program(other.resolve("java"), "echo \"$*\"");
      Map<String, String> environment =
          Map.of("JAVA_HOME", other.getParent().toString(), "LC_ALL", "tr_TR.UTF-8");
      String words = start(moved, folder, environment, "--version").out();
      assertTrue(words.contains("-Duser.language=en "), words);
    }

    @Test
    void thatCanMakeNoArchiveIsNotAskedAgainAtEachStart() throws Exception {
      Path moved = copy("no archive");
      Path other = folder.resolve("plain");
      Files.createDirectories(other.resolve("bin"));
      Files.writeString(other.resolve("release"), "JAVA_VERSION=\"17.0.1\"\n");
      program(
          other.resolve("bin/java"),
          "case \"$*\" in *-Xshare:dump*) exit 1;; esac; exec '"
              + System.getProperty("java.home")
              + "/bin/java' \"$@\"");
      Map<String, String> environment = Map.of("JAVA_HOME", other.toString());
      assertTrue(start(moved, folder, environment, "--version").err().startsWith(PREPARING));
      Ran second = start(moved, folder, environment, "--version");
      assertEquals("", second.err());
      assertEquals(0, second.code());
    }
  }

  // --- helpers ---

  private static String launcher(Path program) {
    return program.resolve("bin/merese").toString();
  }

  /** The program in another folder: links to the jars, and copies of what the launcher changes. */
  private Path copy(String name) throws IOException {
    Path copy = folder.resolve(name);
    Files.createDirectories(copy.resolve("bin"));
    Files.createDirectories(copy.resolve("lib"));
    Files.createDirectories(copy.resolve("demo"));
    Files.copy(BUILT.resolve("bin/merese"), copy.resolve("bin/merese"));
    Files.setPosixFilePermissions(
        copy.resolve("bin/merese"), PosixFilePermissions.fromString("rwxr-xr-x"));
    try (Stream<Path> files = Files.list(BUILT.resolve("lib"))) {
      for (Path file : files.toList()) {
        Path to = copy.resolve("lib").resolve(file.getFileName());
        if (!file.toString().endsWith(".jar") || !linked(to, file)) {
          Files.copy(file, to, StandardCopyOption.COPY_ATTRIBUTES);
        }
      }
    }
    return copy;
  }

  /** False where the two folders are on different disks. */
  private static boolean linked(Path to, Path file) {
    try {
      Files.createLink(to, file);
      return true;
    } catch (IOException e) {
      return false;
    }
  }

  private static boolean leftovers(Path program) throws IOException {
    try (Stream<Path> files = Files.list(program.resolve("lib"))) {
      return files.anyMatch(file -> file.getFileName().toString().startsWith("making"));
    }
  }

  private static void program(Path file, String script) throws IOException {
    Files.writeString(file, "#!/bin/sh\n" + script + "\n");
    Files.setPosixFilePermissions(file, PosixFilePermissions.fromString("rwxr-xr-x"));
  }

  /** A folder for the PATH with what the launcher calls and no Java. */
  private String bare(String name) throws IOException {
    Path bin = Files.createDirectory(folder.resolve(name));
    for (String tool : List.of("ls", "readlink", "stty")) {
      for (String place : List.of("/bin", "/usr/bin")) {
        if (Files.exists(Path.of(place, tool)) && !Files.exists(bin.resolve(tool))) {
          Files.createSymbolicLink(bin.resolve(tool), Path.of(place, tool));
        }
      }
    }
    return bin.toString();
  }

  private static Ran start(Path program, Path in, Map<String, String> environment, String... words)
      throws IOException, InterruptedException {
    List<String> all = new ArrayList<>(List.of(launcher(program)));
    all.addAll(List.of(words));
    return run(in, environment, all.toArray(String[]::new));
  }

  private static Ran run(Path in, Map<String, String> environment, String... words)
      throws IOException, InterruptedException {
    Path out = Files.createTempFile("merese", "out");
    Path err = Files.createTempFile("merese", "err");
    try {
      ProcessBuilder builder =
          new ProcessBuilder(words)
              .directory(in.toFile())
              .redirectOutput(out.toFile())
              .redirectError(err.toFile());
      builder.environment().put("JAVA_HOME", System.getProperty("java.home"));
      builder.environment().keySet().removeIf(name -> name.startsWith("MERESE_"));
      builder.environment().remove("JAVA_TOOL_OPTIONS");
      builder.environment().putAll(environment);
      Process process = builder.start();
      process.getOutputStream().close();
      int code = process.waitFor();
      return new Ran(
          code,
          Files.readString(out, StandardCharsets.UTF_8),
          Files.readString(err, StandardCharsets.UTF_8));
    } finally {
      Files.deleteIfExists(out);
      Files.deleteIfExists(err);
    }
  }
}
