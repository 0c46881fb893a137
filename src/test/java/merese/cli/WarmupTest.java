package merese.cli;

import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;

class WarmupTest {
  @Test
  void theTrainingCommandsAreUnderstoodExceptForTheOneThatShowsAnError() {
    for (var command : Warmup.COMMANDS) {
      boolean mistaken = command.contains("--no-such-option");
      int code = Ran.merese(command.toArray(String[]::new)).code();
      assertTrue(mistaken == (code == ExitCode.WRONG_USE), command + " gave " + code);
    }
  }
}
