package merese.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayInputStream;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class AskingTest {
  private final StringWriter said = new StringWriter();

  @Test
  void nobodyIsAskedWhereTheInputIsNoTerminal() {
    assertEquals(Optional.empty(), Asking.of(context("out err", "")));
    assertEquals(Optional.empty(), Asking.of(context("in", "")));
  }

  @Test
  void aChoiceIsAskedForAgainUntilItIsOneOfTheNumbers() {
    assertEquals(1, asking("3\nring\n\n 2 \n").choice("Which is meant?", List.of("one", "two")));
    assertTrue(said.toString().contains("  2  two"), said.toString());
  }

  @Test
  void yesAndNoMayBeShort() {
    assertTrue(asking("perhaps\nY\n").yes("Sure?"));
    assertEquals("Sure? [y/n] Sure? [y/n] ", said.toString());
  }

  @Test
  void whereTheInputEndsNothingIsWritten() {
    Asking asking = asking("");
    CommandException e = assertThrows(CommandException.class, () -> asking.line("Title?"));
    assertTrue(e.getMessage().endsWith("nothing was written"), e.getMessage());
  }

  private Asking asking(String typed) {
    return Asking.of(context("out in err", typed)).orElseThrow();
  }

  private Context context(String terminals, String typed) {
    Map<String, String> environment = Map.of(Screen.TERMINALS, terminals);
    return new Context(
        new ByteArrayInputStream(typed.getBytes(StandardCharsets.UTF_8)),
        new PrintWriter(said),
        new PrintWriter(said),
        environment,
        Path.of("").toAbsolutePath(),
        Screen.ofAnswers(environment),
        Screen.ofErrors(environment));
  }
}
