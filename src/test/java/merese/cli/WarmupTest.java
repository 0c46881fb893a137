package merese.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class WarmupTest {
  @Test
  void theTrainingCommandsAreUnderstoodExceptForTheOneThatShowsAnError() {
    for (var command : Warmup.COMMANDS) {
      boolean mistaken = command.contains("--no-such-option");
      int code = Ran.merese(command.toArray(String[]::new)).code();
      assertTrue(mistaken == (code == ExitCode.WRONG_USE), command + " gave " + code);
    }
  }

  @Test
  void theWritingCommandsSucceedOneAfterTheOtherInAnEmptyFolder(@TempDir Path folder) {
    for (var command : Warmup.WRITING) {
      Ran ran = Ran.in(folder, Map.of(), command.toArray(String[]::new));
      assertEquals(ExitCode.DONE, ran.code(), command + ": " + ran.out() + ran.err());
    }
  }
}
