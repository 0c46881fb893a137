package merese.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.InputStream;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.nio.file.AccessDeniedException;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.Map;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;

class ErrorsTest {
  private static String rendered(Exception e, Map<String, String> environment) {
    StringWriter err = new StringWriter();
    Context context =
        new Context(
            InputStream.nullInputStream(),
            new PrintWriter(new StringWriter()),
            new PrintWriter(err),
            environment,
            Path.of("").toAbsolutePath(),
            Screen.ofAnswers(environment),
            Screen.ofErrors(environment));
    assertEquals(1, new Errors(context).failed(e, "merese covers"));
    return err.toString();
  }

  @Nested
  class AMessageForTheUser {
    @Test
    void isPrintedAsItStands() {
      assertEquals(
          "merese covers: shelf/a.json, line 3: no title\n",
          rendered(new CommandException("shelf/a.json, line 3: no title"), Map.of()));
    }

    @Test
    void steersNoTerminalAndTurnsNoWriting() {
      assertEquals(
          "merese covers: \uFFFD[2Jno \uFFFDkey\n",
          rendered(new CommandException("\u001B[2Jno \u202Ekey"), Map.of()));
    }

    @Test
    void isMarkedWithColourOnlyOnATerminal() {
      Map<String, String> terminal = Map.of("MERESE_TTY", "out err", "TERM", "xterm");
      assertEquals(
          "\u001B[1;31mmerese covers:\u001B[0m no\n",
          rendered(new CommandException("no"), terminal));
    }
  }

  @Nested
  class AFileThatCantBeUsed {
    @Test
    void isNamedInASentence() {
      assertEquals(
          "merese covers: there is no file or folder shelf\n",
          rendered(new NoSuchFileException("shelf"), Map.of()));
      assertEquals(
          "merese covers: no permission to read or write shelf; its owner can change that\n",
          rendered(new UncheckedIOException(new AccessDeniedException("shelf")), Map.of()));
    }
  }

  @Nested
  class AnythingElse {
    @Test
    void isAFaultOfTheProgramAndSaysHowToSeeMore() {
      String said = rendered(new IllegalStateException("x"), Map.of());
      assertTrue(said.startsWith("merese covers: this is a fault in merese"), said);
      assertTrue(said.contains("MERESE_DEBUG=1"), said);
      assertEquals(3, said.lines().count(), "two sentences, the first of them broken");
    }

    @Test
    void showsItsTraceWhenAsked() {
      String said = rendered(new IllegalStateException("x"), Map.of("MERESE_DEBUG", "1"));
      assertTrue(said.contains("\tat merese.cli.ErrorsTest"), said);
    }
  }
}
