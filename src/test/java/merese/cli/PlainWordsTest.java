package merese.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.InputStream;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Random;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import picocli.CommandLine;

class PlainWordsTest {
  @Nested
  class AreRead {
    @Test
    void soThatAUsualQuestionNeedsNoPicocli() {
      Command covers = command("covers");
      assertTrue(read(covers, "bladed ring", "--pictured", "--limit", "12"));
      assertEquals("[[bladed ring], true, 12]", given(covers));
    }

    @Test
    void eachInItsPlace() {
      Command note = command("note");
      assertTrue(
          read(note, "quenby-1949", "pl. 31", "--date", "c. 1790", "ring", "--date", "1801"));
      assertEquals("[quenby-1949, pl. 31, ring, [c. 1790, 1801]]", given(note));
    }

    @Test
    void withOptionsBetweenThoseThatOneTakes() {
      Command covers = command("covers");
      assertTrue(read(covers, "bladed", "--pictured", "ring"));
      assertEquals("[[bladed, ring], true]", given(covers));
    }
  }

  @Nested
  class AreNotRead {
    @Test
    void andNothingIsGivenWhereAnythingIsLeftToSay() {
      for (String[] line :
          new String[][] {
            {"--help"},
            {"--pictred"},
            {"ring", "--limit"},
            {"ring", "--limit", "many"},
            {"ring", "--limit", "-1"},
            {"ring", "--limit", "99999999999"},
            {"ring", "--limit", "3", "--limit", "4"},
            {"ring", "--limit=3"},
            {"ring", "--facet", "--pictured"},
            {"--", "ring"},
          }) {
        Command covers = command("covers");
        assertFalse(read(covers, line), String.join(" ", line));
        assertEquals("[]", given(covers), String.join(" ", line));
      }
    }

    @Test
    void whereAWordIsMissingOrTooMany() {
      assertFalse(read(command("note"), "quenby-1949"));
      assertFalse(read(command("new"), "one", "two"));
    }
  }

  /** Lines of what the command has and of what it has not, from a fixed seed. */
  @ParameterizedTest
  @MethodSource("commands")
  void whateverIsReadHerePicocliReadsAlike(String name) {
    Random random = new Random(1790);
    int plain = 0;
    for (int i = 0; i < 400; i++) {
      String[] line = line(command(name).declared(), random);
      Command here = command(name);
      if (read(here, line)) {
        plain++;
        Command there = command(name);
        new CommandLine(there.spec()).setExpandAtFiles(false).parseArgs(line);
        assertEquals(given(there), given(here), () -> name + " " + String.join(" ", line));
      }
    }
    assertTrue(plain > 10, () -> "too few lines of " + name + " say anything");
  }

  static List<String> commands() {
    return Commands.names();
  }

  private static String[] line(List<Given<?>> declared, Random random) {
    List<String> odd =
        List.of(
            "", " ", "a b", "17", "007", "x=1", "\"q\"", "${user.home}", "@x", "Ärger", "-", "--");
    List<String> line = new ArrayList<>();
    for (Given<?> given : declared) {
      boolean wanted = given.shape().isRequired() ? random.nextInt(8) > 0 : random.nextInt(4) == 0;
      for (int n = wanted ? 1 + random.nextInt(given.shape().isMany() ? 3 : 1) : 0; n > 0; n--) {
        List<String> words = new ArrayList<>();
        if (!given.shape().isWord()) {
          words.add(given.names().get(random.nextInt(given.names().size())));
        }
        if (given.shape() != Given.Shape.FLAG) {
          boolean number = given.type() == Integer.class;
          words.add(number ? "" + random.nextInt(99) : odd.get(random.nextInt(odd.size() - 2)));
        }
        line.addAll(random.nextInt(line.size() + 1) == 0 ? 0 : line.size(), words);
      }
    }
    if (random.nextInt(6) == 0) {
      line.add(random.nextInt(line.size() + 1), odd.get(random.nextInt(odd.size())));
    }
    return line.toArray(String[]::new);
  }

  private static boolean read(Command command, String... line) {
    return PlainWords.read(command.declared(), line);
  }

  /** The values of what was typed, in the order in which it is declared. */
  private static String given(Command command) {
    List<Object> values = new ArrayList<>();
    for (Given<?> given : command.declared()) {
      if (given.shape() != Given.Shape.FLAG || given.isSet()) {
        given.value().ifPresent(values::add);
      }
    }
    return values.toString();
  }

  private static Command command(String name) {
    PrintWriter nowhere = new PrintWriter(PrintWriter.nullWriter());
    Screen screen = Screen.ofAnswers(Map.of());
    Context context =
        new Context(
            InputStream.nullInputStream(),
            nowhere,
            nowhere,
            Map.of(),
            Path.of("").toAbsolutePath(),
            screen,
            screen);
    return Commands.find(name).make(context);
  }
}
