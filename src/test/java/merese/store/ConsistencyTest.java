package merese.store;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class ConsistencyTest {
  @TempDir Path dir;
  private LibraryFolder library;

  @BeforeEach
  void copyTheFixture() {
    library = Fixture.in(dir);
  }

  private void change(String file, String from, String to) {
    String text = Fixture.read(library.resolve(file));
    int at = text.indexOf(from);
    assertEquals(true, at >= 0, from);
    Fixture.write(
        library.resolve(file), text.substring(0, at) + to + text.substring(at + from.length()));
  }

  /** What the check says, without the folder in front. */
  private List<String> check() {
    return Fixture.strings(library.check()).stream()
        .map(line -> line.replace(library.path() + "/", ""))
        .toList();
  }

  private void finds(String... lines) {
    assertEquals(List.of(lines), check());
  }

  @Test
  void aSoundLibraryHasNoProblem() {
    finds();
  }

  @Test
  void anUnknownConceptIsReportedWithTheNearest() {
    change(Fixture.WORK, "\"concept\": \"ring-bladed\"", "\"concept\": \"ring-blade\"");
    finds(
        "works/tarnbrook.json:150:26: editions[1].notes[0].namings[0].concept: there is no concept"
            + " \"ring-blade\"; did you mean \"ring-bladed\"?");
  }

  @Test
  void referencesThatLeadNowhereAreReported() {
    change(Fixture.WORK, "\"parent\": \"tarnbrook-1926\"", "\"parent\": \"osk-1800\"");
    change(Fixture.WORK, "\"part\": \"ch3\"", "\"part\": \"ch9\"");
    change(Fixture.WORK, "\"ref\": \"d-17\"", "\"ref\": \"d-99x\"");
    change(Fixture.WORK, "\"copy\": \"c1\"", "\"copy\": \"lost\"");
    change(Fixture.WORK, "\"to\": \"tarnbrook\"", "\"to\": \"elsewhere\"");
    change(Fixture.WORK, "          \"ring\"\n", "          \"zzzzzzzz\"\n");
    change(Fixture.RINGS, "\"broader\": [\n        \"ring\"", "\"broader\": [\n        \"rang\"");
    change("vocabulary/homonyms.json", "\"ring-bladed\"", "\"knob\"");
    change("objects/d-17.json", "\"photo\": \"f1\"", "\"photo\": \"g7\"");
    change("mine.json", "\"concept\": \"ring-bladed\"", "\"concept\": \"\uD83D\uDE00\"");
    List<String> found =
        check().stream().map(line -> line.substring(line.indexOf(' ') + 1)).toList();
    assertEquals(
        List.of(
            "preferences[0].concept: there is no concept \"\uD83D\uDE00\"; correct the name, or add"
                + " the concept",
            "evidence[0].photo: there is no photograph \"g7\"; correct the name, or add the"
                + " photograph",
            "homonyms[0].concepts[0]: there is no concept \"knob\"; correct the name, or add the"
                + " concept",
            "concepts[1].broader[0]: there is no concept \"rang\"; did you mean \"ring\"?",
            "editions[1].lineage.parent: there is no edition \"osk-1800\"; correct the name, or add"
                + " the edition",
            "editions[1].scope.concepts[0]: there is no concept \"zzzzzzzz\"; correct the name, or"
                + " add the concept",
            "editions[1].notes[0].part: there is no part \"ch9\"; did you mean \"ch3\"?",
            "editions[1].notes[0].object.ref: there is no object \"d-99x\"; correct the name, or"
                + " add the object",
            "editions[1].checks[0].copy: there is no copy \"lost\"; correct the name, or add the"
                + " copy",
            "links[0].to: there is no work \"elsewhere\"; correct the name, or add the work"),
        found);
  }

  @Test
  void whatStandsTwiceIsReportedWithTheFirstPlace() {
    change(Fixture.WORK, "\"id\": \"n2\"", "\"id\": \"n1\"");
    change(Fixture.RINGS, "\"id\": \"ring-bladed\"", "\"id\": \"ring\"");
    Fixture.write(
        library.resolve("works/osk.json"),
        "{\"id\": \"osk\", \"kind\": \"thesis\", \"title\": \"T\",\n"
            + " \"editions\": [{\"key\": \"tarnbrook-1949\"}]}");
    Fixture.write(
        library.resolve("works/ta/osk.json"),
        "{\"id\": \"osk\", \"kind\": \"thesis\", \"title\": \"T\"}");
    List<String> found = check().stream().filter(line -> line.contains("already")).toList();
    assertEquals(
        List.of(
            "vocabulary/ring.json:15:13: concepts[1].id: the concept \"ring\" stands in "
                + library.resolve(Fixture.RINGS)
                + ":9 already; give one of the two another name",
            "works/ta/osk.json:1:8: id: the work \"osk\" stands in "
                + library.resolve("works/osk.json")
                + ":1 already; give one of the two another name",
            "works/tarnbrook.json:33:14: editions[1].key: the edition \"tarnbrook-1949\" stands in "
                + library.resolve("works/osk.json")
                + ":2 already; give one of the two another name",
            "works/tarnbrook.json:222:17: editions[1].notes[1].id: the note \"n1\" stands in "
                + library.resolve(Fixture.WORK)
                + ":146 already; give one of the two another name"),
        found.stream().map(this::withFolder).toList());
  }

  /** {@link #check} takes the folder away inside a message too. */
  private String withFolder(String line) {
    return line.replace(" stands in ", " stands in " + library.path() + "/");
  }

  @Test
  void aNameThatIsNotThatOfTheFileIsReported() {
    change(Fixture.WORK, "\"id\": \"tarnbrook\"", "\"id\": \"tarn\"");
    change("objects/d-17.json", "\"ref\": \"d-17\"", "\"ref\": \"d-18\"");
    finds(
        "objects/d-17.json:2:10: ref: the object \"d-18\" stands in a file of another name; write"
            + " \"d-17\" here, or rename the file",
        "works/tarnbrook.json:2:9: id: the work \"tarn\" stands in a file of another name; write"
            + " \"tarnbrook\" here, or rename the file",
        "works/tarnbrook.json:211:20: editions[1].notes[0].object.ref: there is no object"
            + " \"d-17\"; did you mean \"d-18\"?",
        "works/tarnbrook.json:315:13: links[0].to: there is no work \"tarnbrook\"; correct the"
            + " name, or add the work");
  }

  @Test
  void aKeyThatLooksMisspeltIsAWarningAndOneOfTheUsersOwnIsNot() {
    change(Fixture.WORK, "\"quotation\": ", "\"quotaton\": ");
    change(
        Fixture.WORK, "\"id\": \"n2\",", "\"id\": \"n2\", \"bookseller\": 1, \"Reading\": \"\",");
    finds(
        "works/tarnbrook.json:207:11: warning: editions[1].notes[0]: the key \"quotaton\" is not"
            + " known and is kept as it is; did you mean \"quotation\"?",
        "works/tarnbrook.json:222:40: warning: editions[1].notes[1]: the key \"Reading\" is not"
            + " known and is kept as it is; did you mean \"reading\"?");
  }

  @Test
  void oneBrokenFileHidesNothingElseAndRaisesNoFalseAlarm() {
    change(Fixture.RINGS, "\"facet\"", "\"facet");
    change(Fixture.WORK, "\"medium\": \"photo\"", "\"medium\": \"foto\"");
    List<String> found = check();
    assertEquals(2, found.size(), found.toString());
    assertEquals("vocabulary/ring.json:2:", found.get(0).substring(0, 23));
    assertEquals("works/tarnbrook.json:166:25:", found.get(1).substring(0, 28));
  }
}
