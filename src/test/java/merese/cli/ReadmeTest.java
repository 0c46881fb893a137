package merese.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import merese.testing.DemoLibrary;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What the README shows is what the program does. */
class ReadmeTest {
  private static final Pattern BLOCK = Pattern.compile("```(\\w+)\n(.*?)```", Pattern.DOTALL);
  private static final Pattern WORD = Pattern.compile("\"([^\"]*)\"|(\\S+)");

  @TempDir private Path folder;

  private static List<String> blocks(String kind) throws IOException {
    List<String> blocks = new ArrayList<>();
    Matcher block = BLOCK.matcher(Files.readString(Path.of("README.md")));
    while (block.find()) {
      if (block.group(1).equals(kind)) {
        blocks.add(block.group(2));
      }
    }
    return blocks;
  }

  private static String[] words(String line) {
    List<String> words = new ArrayList<>();
    Matcher word = WORD.matcher(line);
    while (word.find()) {
      words.add(word.group(1) == null ? word.group(2) : word.group(1));
    }
    return words.subList(2, words.size()).toArray(String[]::new); // less "$ merese"
  }

  /** A block is a command and its output; a line "…" stands for the rest of it. */
  @Test
  void everyCommandPrintsWhatIsShown() throws IOException {
    List<String> blocks = blocks("console");
    assertTrue(blocks.size() >= 4, "the README shows its commands");
    for (String block : blocks) {
      int end = block.indexOf('\n');
      String command = block.substring(0, end);
      String shown = block.substring(end + 1);
      String said = Ran.merese(words(command)).out();
      if (shown.endsWith("…\n")) {
        String start = shown.substring(0, shown.length() - 2);
        assertEquals(start, said.substring(0, Math.min(start.length(), said.length())), command);
      } else {
        assertEquals(shown.strip(), said.strip(), command);
      }
    }
  }

  /** They write, so they are run in turn on a copy. */
  @Test
  void theNotesThatAreShownAreTakenAndTakenBack() throws IOException {
    DemoLibrary.copyTo(folder);
    List<String> lines = blocks("sh").get(0).lines().toList();
    assertTrue(lines.size() >= 5, "the README shows how a note is taken");
    for (String line : lines) {
      int remark = line.indexOf("  #");
      String command = remark < 0 ? line : line.substring(0, remark);
      Ran ran = Ran.in(folder, Map.of(), words("$ " + command));
      assertEquals(0, ran.code(), line + "\n" + ran.err());
    }
  }

  @Test
  void theWorkThatIsShownIsTakenAndAnswersAQuestion() throws IOException {
    assertEquals(0, Ran.in(folder, Map.of(), "new", "shelf", "--title", "My glass shelf").code());
    Path library = folder.resolve("shelf/library");
    Files.writeString(library.resolve("works/quenby-neck-and-stopper.json"), blocks("json").get(0));
    Ran check = Ran.in(folder, Map.of(), "check", "--library", "shelf");
    assertEquals(0, check.code(), check.out() + check.err());
    Ran covers = Ran.in(folder, Map.of(), "covers", "bladed ring", "--library", "shelf");
    assertTrue(covers.out().contains("1. Quenby 1949  pl. 31, fig. 3 (text p. 70)"), covers.out());
  }
}
