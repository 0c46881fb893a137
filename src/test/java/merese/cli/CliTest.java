package merese.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class CliTest {
  static Stream<String> everyCommand() {
    return Commands.ALL.stream().map(Commands.Entry::name);
  }

  @Nested
  class TheHelpOfEveryCommand {
    static Stream<String> everyCommand() {
      return CliTest.everyCommand();
    }

    @ParameterizedTest
    @MethodSource("everyCommand")
    void goesToStandardOutputAndHasAnExampleThatNamesTheCommand(String name) {
      Ran help = Ran.merese(name, "--help");
      assertEquals(0, help.code());
      assertEquals("", help.err());
      String example = help.out().substring(help.out().indexOf("\nExample"));
      assertTrue(example.contains("merese " + name), example);
    }

    @ParameterizedTest
    @MethodSource("everyCommand")
    void fitsTheColumnsOfTheScreen(String name) {
      for (int width : new int[] {55, 80, 100}) {
        Map<String, String> narrow = Map.of("COLUMNS", Integer.toString(width));
        Ran.with(narrow, name, "--help")
            .out()
            .lines()
            .filter(line -> !line.startsWith("  merese") && !line.contains("<(")) // examples
            .forEach(
                line -> assertTrue(line.length() <= width, name + " at " + width + ": " + line));
      }
    }

    @ParameterizedTest
    @MethodSource("everyCommand")
    void isTheSameWithTheWordHelp(String name) {
      assertEquals(Ran.merese(name, "--help"), Ran.merese("help", name));
    }

    @ParameterizedTest
    @MethodSource("everyCommand")
    void hasExamplesThatCanBeTypedAsTheyStand(String name) {
      String help = Ran.merese(name, "--help").out();
      help.substring(help.indexOf("\nExample"))
          .lines()
          .filter(line -> line.startsWith("  merese "))
          .map(line -> line.strip().split(" ")[1])
          .forEach(command -> assertTrue(Commands.find(command) != null, command));
    }
  }

  @Nested
  class WithoutACommand {
    @Test
    void theListOfCommandsGoesToStandardErrorAsWrongUse() {
      Ran ran = Ran.merese();
      assertEquals(2, ran.code());
      assertEquals("", ran.out());
      assertEquals(Ran.merese("--help").out(), ran.errAsShown());
    }

    @Test
    void theHelpListsEveryCommandOnceUnderItsHeading() {
      String help = Ran.merese("--help").out();
      for (Commands.Entry entry : Commands.ALL) {
        assertEquals(
            1, help.lines().filter(l -> l.startsWith("  " + entry.name() + "  ")).count(), help);
      }
      for (Commands.Group group : Commands.Group.values()) {
        assertTrue(help.contains("\n" + group.heading() + ":\n"), help);
      }
    }

    @Test
    void theVersionNamesTheProgramAndJava() {
      Ran ran = Ran.merese("--version");
      assertEquals(0, ran.code());
      assertTrue(ran.out().startsWith("merese "), ran.out());
      assertTrue(ran.out().contains(System.getProperty("java.version")), ran.out());
    }
  }

  @Nested
  class AMistake {
    @Test
    void inACommandIsWrongUseAndNamesTheNearest() {
      Ran ran = Ran.merese("cvoers", "ring");
      assertEquals(2, ran.code());
      assertEquals("", ran.out());
      assertEquals(
          "merese: there is no command 'cvoers'\nDid you mean covers?\nSee 'merese --help'.\n",
          ran.err());
    }

    @Test
    void farFromEveryCommandGetsNoGuess() {
      assertFalse(Ran.merese("decanter").err().contains("Did you mean"));
    }

    @Test
    void inAnOptionIsWrongUseAndNamesTheNearest() {
      Ran ran = Ran.merese("covers", "--libary", "x", "ring");
      assertEquals(2, ran.code());
      assertTrue(ran.err().contains("'--libary'"), ran.err());
      assertTrue(ran.err().contains("Did you mean --library"), ran.err());
      assertTrue(ran.err().contains("See 'merese covers --help'."), ran.err());
    }

    @Test
    void ofLeavingAWordOutSaysWhichIsMissing() {
      Ran ran = Ran.merese("covers");
      assertEquals(2, ran.code());
      assertTrue(
          ran.err().startsWith("merese covers: name a term, or a concept with --concept ID"),
          ran.err());
    }

    @Test
    void readsTheSameInTurkish() {
      Locale before = Locale.getDefault();
      try {
        Locale.setDefault(Locale.forLanguageTag("tr-TR"));
        assertTrue(Ran.merese("covers", "--title", "x").err().contains("--title"));
        assertEquals(0, Ran.merese("--help").code());
      } finally {
        Locale.setDefault(before);
      }
    }
  }

  @Nested
  class AWordThatStartsWithAnAtSign {
    @Test
    void isAWordAndNotAFileToRead(@TempDir Path folder) throws IOException {
      Files.writeString(folder.resolve("zzz"), "ring");
      Ran.in(folder, Map.of(), "new", ".");
      assertEquals(
          "“@zzz” is no word of the vocabulary, and no note prints it.",
          Ran.in(folder, Map.of(), "covers", "@zzz").out().lines().findFirst().orElse(""));
    }
  }

  @Nested
  class WhenTheAnswerCantBeWritten {
    private String errorsAfter(String reason, int expectedCode) {
      OutputStream gone =
          new OutputStream() {
            @Override
            public void write(int b) throws IOException {
              throw new IOException(reason);
            }
          };
      java.io.ByteArrayOutputStream err = new java.io.ByteArrayOutputStream();
      int code =
          Main.run(
              InputStream.nullInputStream(),
              gone,
              err,
              Map.of(),
              Path.of("").toAbsolutePath(),
              "--help");
      assertEquals(expectedCode, code);
      return err.toString(java.nio.charset.StandardCharsets.UTF_8);
    }

    @Test
    void aReaderThatHasHadEnoughIsNoFailure() {
      assertEquals("", errorsAfter("Broken pipe", 0));
    }

    @Test
    void aFullDiskIsOne() {
      assertEquals(
          "merese: the answer could not be written in full: No space left on device\n",
          errorsAfter("No space left on device", 1));
    }
  }

  @Nested
  class NewLibraries {
    @Test
    void areMadeWhereTheUserIs(@TempDir Path folder) {
      Ran ran = Ran.in(folder, Map.of(), "new", "shelf", "--title", "My glass");
      assertEquals(0, ran.code(), ran.err());
      assertTrue(Files.exists(folder.resolve("shelf/library/library.json")));
    }
  }
}
