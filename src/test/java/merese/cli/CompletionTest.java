package merese.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.EnabledIf;
import org.junit.jupiter.api.io.TempDir;

/** Lets a real bash complete. */
@EnabledIf("bashIsThere")
class CompletionTest {
  @TempDir private Path folder;

  static boolean bashIsThere() {
    return Files.isExecutable(Path.of("/bin/bash"));
  }

  @Test
  void bashCompletesACommand() throws Exception {
    assertEquals(List.of("reading-list"), completed("merese", "rea"));
  }

  @Test
  void bashCompletesAnOptionOfACommand() throws Exception {
    assertEquals(List.of("--pictured"), completed("merese", "covers", "--pi"));
  }

  /** What bash offers for the last word. */
  private List<String> completed(String... words) throws IOException, InterruptedException {
    Path script = folder.resolve("completion");
    Files.writeString(script, Ran.merese("completion").out());
    String line = String.join(" ", words);
    String ask =
        "source '"
            + script
            + "' && COMP_WORDS=("
            + line
            + ") COMP_CWORD="
            + (words.length - 1)
            + " COMP_LINE='"
            + line
            + "' COMP_POINT="
            + line.length()
            + "; _complete_merese 2>/dev/null; for r in \"${COMPREPLY[@]}\"; do echo \"$r\"; done";
    Process bash =
        new ProcessBuilder("/bin/bash", "--norc", "-c", ask)
            .redirectError(ProcessBuilder.Redirect.INHERIT)
            .start();
    bash.getOutputStream().close();
    String said = new String(bash.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
    bash.waitFor();
    return said.lines().map(String::strip).toList();
  }
}
