package merese.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import merese.testing.DemoLibrary;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.DisabledOnOs;
import org.junit.jupiter.api.condition.OS;
import org.junit.jupiter.api.io.TempDir;

/** The editor is a shell script, to which the name of the file is handed on last. */
@DisabledOnOs(OS.WINDOWS)
class EditCommandTest {
  @TempDir private Path home;

  @BeforeEach
  void copyTheDemo() throws IOException {
    DemoLibrary.copyTo(home);
  }

  /** A script with the file as $1. */
  private String editor(String... lines) throws IOException {
    Path script = home.resolve("an editor.sh");
    Files.writeString(script, "set -e\n" + String.join("\n", lines) + "\n");
    return "sh '" + script + "'";
  }

  private Ran edit(String editor, String typed, String what) {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    ByteArrayOutputStream err = new ByteArrayOutputStream();
    byte[] in = typed.getBytes(StandardCharsets.UTF_8);
    Map<String, String> environment =
        typed.isEmpty()
            ? Map.of("EDITOR", editor)
            : Map.of("VISUAL", editor, "EDITOR", "false", Screen.TERMINALS, "in err");
    int code = Main.run(new ByteArrayInputStream(in), out, err, environment, home, "edit", what);
    return new Ran(
        code, out.toString(StandardCharsets.UTF_8), err.toString(StandardCharsets.UTF_8));
  }

  private Path file(String relative) {
    return home.resolve("library").resolve(relative);
  }

  /** The copy that a message names. */
  private static Path kept(Ran ran) {
    String said = ran.err();
    String before = "What you wrote is kept in ";
    assertTrue(said.contains(before), said);
    return Path.of(said.substring(said.indexOf(before) + before.length()).strip());
  }

  @Test
  void whatIsWrittenIsTakenByteForByte() throws IOException {
    Path mine = file("mine.json");
    String odd = Files.readString(mine).replace("{\n", "{\n\n   \t");
    Files.writeString(home.resolve("odd"), odd);
    Ran ran = edit(editor("cp '" + home.resolve("odd") + "' \"$1\""), "", "mine");
    assertEquals(new Ran(0, "Changed: library/mine.json\n", ""), ran);
    assertEquals(odd, Files.readString(mine));
  }

  @Test
  void aSourceInADamagedFileIsNamedByItsKeyAllTheSame() throws IOException {
    Path work = file("works/quenby-neck-and-stopper.json");
    Files.writeString(work, Files.readString(work) + "junk");
    assertEquals(
        "Nothing was changed in library/works/quenby-neck-and-stopper.json.\n",
        edit("true", "", "quenby-1949").out());
    String said = edit("true", "", "nobody-1900").err();
    assertTrue(said.contains("\n  works/quenby-neck-and-stopper.json:"), said);
  }

  @Test
  void aSourceIsNamedByItsKeyAndAConceptByItsId() throws IOException {
    assertEquals(
        "Nothing was changed in library/works/quenby-neck-and-stopper.json.\n",
        edit("true", "", "quenby-1949").out());
    assertEquals(
        "Nothing was changed in library/vocabulary/ring.json.\n",
        edit("true", "", "ring-bladed").out());
    assertEquals(
        "Nothing was changed in library/objects/d-17.json.\n", edit("true", "", "d-17").out());
    assertEquals(1, edit("true", "", "nobody-1900").code());
  }

  @Test
  void whatCannotBeReadIsRefusedAndKept() throws IOException {
    byte[] before = Files.readAllBytes(file("mine.json"));
    Ran ran = edit(editor("echo '[' > \"$1\""), "", "mine");
    assertEquals(1, ran.code());
    assertTrue(ran.err().startsWith("library/mine.json:1:2: "), ran.err());
    assertEquals("[\n", Files.readString(kept(ran)));
    assertEquals(new String(before, StandardCharsets.UTF_8), Files.readString(file("mine.json")));
  }

  @Test
  void aKeyThatOthersNeedCannotBeChanged() throws IOException {
    Ran ran =
        edit(
            editor("sed -i 's/\"key\": \"quenby-1926\"/\"key\": \"quenby-1927\"/' \"$1\""),
            "",
            "quenby-1926");
    assertEquals(1, ran.code());
    assertTrue(ran.err().contains("farrow-triple-ringed.json"), ran.err());
    assertTrue(ran.err().contains("there is no edition \"quenby-1926\""), ran.err());
    Files.delete(kept(ran));
  }

  @Test
  void anIdMustStayTheNameOfItsFile() throws IOException {
    Ran ran = edit(editor("sed -i 's/\"ref\": \"d-17\"/\"ref\": \"d-18\"/' \"$1\""), "", "d-17");
    assertEquals(1, ran.code());
    assertTrue(ran.err().contains("stands in a file of another name"), ran.err());
    Files.delete(kept(ran));
  }

  @Test
  void aFormatThatThisProgramDoesNotKnowIsRefused() throws IOException {
    Ran ran = edit(editor("sed -i 's/\"format\": 2/\"format\": 9/' \"$1\""), "", "library");
    assertEquals(1, ran.code());
    assertTrue(ran.err().contains("made by a newer merese"), ran.err());
    Files.delete(kept(ran));
  }

  @Test
  void afterAnErrorOneMayEditAgain() throws IOException {
    String twice =
        editor(
            "if grep -q '\"mine-was-here\"' \"$1\"; then",
            "  cp \"$0.good\" \"$1\"",
            "else",
            "  cp \"$1\" \"$0.good\"",
            "  echo >> \"$0.good\"",
            "  echo '\"mine-was-here\"' >> \"$1\"",
            "fi");
    Ran ran = edit(twice, "y\n", "mine");
    assertEquals(0, ran.code(), ran.err());
    assertTrue(ran.err().contains("Edit it again? [y/n]"), ran.err());
    assertEquals("Changed: library/mine.json\n", ran.out());
  }

  @Test
  void whatSomebodyElseHasWrittenMeanwhileIsNotOverwritten() throws IOException {
    Path mine = file("mine.json");
    Ran ran = edit(editor("echo >> \"$1\"", "echo >> '" + mine + "'"), "", "mine");
    assertEquals(1, ran.code());
    assertTrue(ran.err().contains("changed by somebody else"), ran.err());
    assertTrue(Files.exists(kept(ran)));
    Files.delete(kept(ran));
  }

  @Test
  void errorsThatWereThereBeforeDoNotKeepOneFromMendingAnother() throws IOException {
    Files.writeString(file("objects/d-3.json"), "[");
    Ran ran = edit(editor("echo >> \"$1\""), "", "mine");
    assertEquals(0, ran.code(), ran.err());
    Ran mended =
        edit(
            editor("cp '" + Path.of("library/objects/d-3.json").toAbsolutePath() + "' \"$1\""),
            "",
            "d-3");
    assertEquals(0, mended.code(), mended.err());
    assertEquals(0, Ran.in(home, Map.of(), "check").code());
  }

  @Test
  void anEditorThatIsNotThereOrFailsIsNamed() {
    Ran none = edit("nonesuch-editor", "", "mine");
    assertEquals(1, none.code());
    assertTrue(none.err().contains("EDITOR is \"nonesuch-editor\""), none.err());
    assertTrue(edit("false", "", "mine").err().contains("ended with code 1"));
  }
}
