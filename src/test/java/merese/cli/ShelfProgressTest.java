package merese.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.InputStream;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Path;
import java.util.Map;
import org.junit.jupiter.api.Test;

/** What is said of the index on standard error. */
class ShelfProgressTest {
  private static String said(int files, String first) {
    StringWriter out = new StringWriter();
    StringWriter err = new StringWriter();
    Context context =
        new Context(
            InputStream.nullInputStream(),
            new PrintWriter(out),
            new PrintWriter(err),
            Map.of(),
            Path.of("").toAbsolutePath(),
            Screen.ofAnswers(Map.of()),
            Screen.ofErrors(Map.of()));
    new ShelfProgress(context).lacking(files, first);
    assertEquals("", out.toString());
    return err.toString().strip().replaceAll("\\s+", " "); // where lines end matters not
  }

  @Test
  void namesTheOneFileThatAnAnswerLacks() {
    assertEquals(
        "works/quenby.json was changed by hand since the index was made, and this answer lacks"
            + " that: ask again.",
        said(1, "works/quenby.json"));
  }

  @Test
  void countsSeveralAndNamesTheFirst() {
    assertEquals(
        "3 files were changed by hand since the index was made, works/quenby.json first, and this"
            + " answer lacks that: ask again.",
        said(3, "works/quenby.json"));
  }
}
