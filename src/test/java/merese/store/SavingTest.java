package merese.store;

import static merese.store.Fixture.refusal;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.UnaryOperator;
import java.util.stream.Stream;
import merese.model.Concept;
import merese.model.Edition;
import merese.model.Mine;
import merese.model.Note;
import merese.model.OwnObject;
import merese.model.Work;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class SavingTest {
  @TempDir Path dir;
  private LibraryFolder library;
  private Path file;

  @BeforeEach
  void copyTheFixture() {
    library = Fixture.in(dir);
    file = library.resolve(Fixture.WORK);
  }

  private Stored<Work> read() {
    return library.readWork(file);
  }

  private static Work withNotes(Work work, UnaryOperator<List<Note>> change) {
    List<Edition> editions = new ArrayList<>(work.editions());
    Edition e = editions.get(1);
    List<Note> notes = change.apply(new ArrayList<>(e.notes()));
    editions.set(
        1,
        new Edition(
            e.key(),
            e.imprint(),
            e.lineage(),
            e.container(),
            e.occasion(),
            e.archive(),
            e.online(),
            e.scope(),
            e.parts(),
            e.copies(),
            notes,
            e.checks(),
            e.received()));
    return new Work(
        work.id(),
        work.kind(),
        work.title(),
        work.subtitle(),
        work.alternateTitles(),
        work.contributors(),
        work.language(),
        work.mine(),
        editions,
        work.links());
  }

  private static Note withReading(Note n, String reading) {
    return new Note(
        n.id(),
        n.namings(),
        n.places(),
        n.claims(),
        n.quotation(),
        Optional.of(reading),
        n.part(),
        n.object(),
        n.rights(),
        n.checked());
  }

  private static Work withReadingOf(Work work, int note, String reading) {
    return withNotes(
        work,
        notes -> {
          notes.set(note, withReading(notes.get(note), reading));
          return notes;
        });
  }

  /**
   * The lines that only one of two texts has, "-" those of the first and "+" those of the second.
   */
  private static List<String> diff(String before, String after) {
    List<String> a = before.lines().toList();
    List<String> b = after.lines().toList();
    int head = 0;
    while (head < Math.min(a.size(), b.size()) && a.get(head).equals(b.get(head))) {
      head++;
    }
    int tail = 0;
    while (tail < Math.min(a.size(), b.size()) - head
        && a.get(a.size() - 1 - tail).equals(b.get(b.size() - 1 - tail))) {
      tail++;
    }
    List<String> result = new ArrayList<>();
    a.subList(head, a.size() - tail).forEach(line -> result.add("-" + line.strip()));
    b.subList(head, b.size() - tail).forEach(line -> result.add("+" + line.strip()));
    return result;
  }

  @Test
  void whereNothingChangedNothingIsWritten() throws IOException {
    String untidy =
        "{ \"mine\":false,\r\n\t\"id\" : \"tarnbrook\" , \"title\":\"\\u0054\","
            + "\"year\":1e3, \"kind\":\"thesis\",\"editions\":[ ]}\r\n\r\n";
    Fixture.write(file, untidy);
    Files.setLastModifiedTime(file, java.nio.file.attribute.FileTime.fromMillis(1000));
    Stored<Work> old = read();
    assertSame(old, library.save(old, Fixture.decode(untidy, WorkCodec.WORK)));
    assertEquals(untidy, Fixture.read(file));
    assertEquals(1000, Files.getLastModifiedTime(file).toMillis());
    assertFalse(Files.exists(library.path().resolve(".lock")));
  }

  @Test
  void aChangeOfOneNoteTouchesOnlyItsLines() {
    Stored<Work> old = read();
    library.save(old, withReadingOf(old.value(), 0, "I doubt it"));
    assertEquals(
        List.of(
            "-\"reading\": \"a bladed ring: I see a sharp edge\",",
            "+\"reading\": \"I doubt it\","),
        diff(Fixture.text(Fixture.WORK), Fixture.read(file)));
    assertEquals("I doubt it", read().value().editions().get(1).notes().get(0).reading().get());
  }

  @Test
  void aNewNoteIsOneBlockOfLines() {
    Stored<Work> old = read();
    Note second = old.value().editions().get(1).notes().get(1);
    Note fresh =
        new Note(
            "n4",
            second.namings(),
            second.places(),
            List.of(),
            Optional.empty(),
            Optional.empty(),
            Optional.empty(),
            Optional.empty(),
            Optional.empty(),
            Optional.empty());
    library.save(
        old,
        withNotes(
            old.value(),
            notes -> {
              notes.add(1, fresh);
              return notes;
            }));
    List<String> diff = diff(Fixture.text(Fixture.WORK), Fixture.read(file));
    assertTrue(diff.stream().noneMatch(line -> line.startsWith("-")), diff.toString());
    assertEquals(15, diff.size(), diff.toString());
  }

  @Test
  void whatIsSavedTwiceFromWhatTheFirstSaveGaveIsFine() {
    Stored<Work> first = library.save(read(), withReadingOf(read().value(), 0, "one"));
    Stored<Work> second = library.save(first, withReadingOf(first.value(), 0, "two"));
    assertEquals(second.value(), read().value());
  }

  @Nested
  @DisplayName("Keys of the user's own")
  class UnknownKeys {
    /** Puts an own key first and another last into every object of a file. */
    private Json withOwnKeys(Json value, int[] count) {
      if (value instanceof Json.Arr array) {
        return new Json.Arr(array.items().stream().map(i -> withOwnKeys(i, count)).toList());
      }
      if (!(value instanceof Json.Obj object)) {
        return value;
      }
      List<Json.Member> members = new ArrayList<>();
      members.add(new Json.Member("zz-own", new Json.Word("1." + count[0]++ + "0")));
      object.members().forEach(m -> members.add(m.with(withOwnKeys(m.value(), count))));
      members.add(new Json.Member("zz-own-too", new Json.Arr(List.of(new Json.Word("null")))));
      return new Json.Obj(members);
    }

    private String ownKeys(String relative) {
      int[] count = {0};
      Json own = withOwnKeys(Fixture.parse(Fixture.text(relative)), count);
      assertTrue(count[0] > 4);
      return new String(JsonPrinter.lines(own), java.nio.charset.StandardCharsets.UTF_8);
    }

    @Test
    void stayAtEveryLevelOfAWork() {
      String text = ownKeys(Fixture.WORK);
      Fixture.write(file, text);
      Stored<Work> old = read();
      library.save(old, withReadingOf(old.value(), 0, "changed"));
      assertEquals(
          List.of(
              "-\"reading\": \"a bladed ring: I see a sharp edge\",", "+\"reading\": \"changed\","),
          diff(text, Fixture.read(file)));
    }

    @Test
    void stayWhereTheirThingIsMovedAndGoWhereItIsRemoved() {
      Fixture.write(file, ownKeys(Fixture.WORK));
      Stored<Work> old = read();
      library.save(
          old,
          withNotes(
              old.value(), n -> List.of(n.get(2), withReading(n.get(0), "moved and changed"))));
      Json.Arr notes = (Json.Arr) notes(Fixture.parse(Fixture.read(file)));
      Json.Arr before = (Json.Arr) notes(Fixture.parse(ownKeys(Fixture.WORK)));
      assertTrue(notes.items().get(0).sameAs(before.items().get(2)));
      Json.Obj moved = (Json.Obj) notes.items().get(1);
      Json.Obj original = (Json.Obj) before.items().get(0);
      assertTrue(moved.get("zz-own").sameAs(original.get("zz-own")));
      assertTrue(moved.get("places").sameAs(original.get("places")));
      assertEquals(2, notes.items().size());
    }

    private Json notes(Json.Obj work) {
      return ((Json.Obj) ((Json.Arr) work.get("editions")).items().get(1)).get("notes");
    }

    @Test
    void stayWithTheirNoteEvenWhereAllElseOfItIsNew() {
      Fixture.write(file, ownKeys(Fixture.WORK));
      Stored<Work> old = read();
      Note third = old.value().editions().get(1).notes().get(2);
      Note rewritten =
          new Note(
              "n2",
              third.namings(),
              third.places(),
              List.of(),
              Optional.of("q"),
              Optional.empty(),
              Optional.empty(),
              Optional.empty(),
              Optional.empty(),
              Optional.empty());
      library.save(old, withNotes(old.value(), n -> List.of(n.get(0), rewritten, n.get(2))));
      Json.Arr notes = (Json.Arr) notes(Fixture.parse(Fixture.read(file)));
      Json.Arr before = (Json.Arr) notes(Fixture.parse(ownKeys(Fixture.WORK)));
      Json kept = ((Json.Obj) notes.items().get(1)).get("zz-own");
      assertTrue(kept.sameAs(((Json.Obj) before.items().get(1)).get("zz-own")));
    }

    @Test
    void areNotInheritedByWhatTakesThePlaceOfTheirThing() {
      Fixture.write(file, ownKeys(Fixture.WORK));
      Stored<Work> old = read();
      Note third = old.value().editions().get(1).notes().get(2);
      Note other =
          new Note(
              "n9",
              List.of(new merese.model.Naming("collar", Optional.empty(), Optional.empty())),
              old.value().editions().get(1).notes().get(1).places(),
              third.claims(),
              Optional.of("q"),
              Optional.empty(),
              Optional.empty(),
              Optional.empty(),
              Optional.empty(),
              Optional.empty());
      library.save(old, withNotes(old.value(), n -> List.of(n.get(0), n.get(1), other)));
      Json.Arr notes = (Json.Arr) notes(Fixture.parse(Fixture.read(file)));
      assertEquals(null, ((Json.Obj) notes.items().get(2)).get("zz-own"));
    }

    @Test
    void stayInALabelThatGainsOrLosesItsScope() {
      Path rings = library.resolve(Fixture.RINGS);
      String text = ownKeys(Fixture.RINGS);
      Fixture.write(rings, text);
      Stored<VocabularyFile> old = library.readVocabulary(rings);
      List<Concept> concepts = new ArrayList<>(old.value().concepts());
      Concept c = concepts.get(1);
      concepts.set(
          1,
          new Concept(
              c.id(),
              c.facet(),
              Concept.Label.of("bladed neck ring"),
              List.of(
                  new Concept.Label("knife-edge ring", Optional.of("neck"), false),
                  Concept.Label.of("blade")),
              c.hidden(),
              c.definition(),
              c.broader(),
              c.lookAlikes(),
              c.lookAlikeRemark(),
              c.status(),
              c.matches()));
      library.save(old, new VocabularyFile(old.value().facet(), concepts));
      String saved = Fixture.read(rings);
      assertEquals(
          text.lines().filter(line -> line.contains("zz-own")).toList(),
          saved.lines().filter(line -> line.contains("zz-own")).toList());
      assertTrue(library.readVocabulary(rings).value().concepts().equals(concepts), saved);
    }

    @Test
    void andTheirLayoutStayWhereTheFileIsLaidOutByHand() {
      String text =
          "{\n"
              + "    \"$about\" : \"mine\",  \"id\": \"tarnbrook\",\n"
              + "    \"kind\": \"thesis\", \"title\": \"T\",\n"
              + "    \"editions\": [ {\"key\": \"k\", \"year\": 1900, \"seen\": 1.50} ]\n"
              + "}\n";
      Fixture.write(file, text);
      Stored<Work> old = read();
      Work w = old.value();
      library.save(
          old,
          new Work(
              w.id(),
              w.kind(),
              "New",
              Optional.of("Sub"),
              List.of(),
              List.of(),
              Optional.empty(),
              false,
              w.editions(),
              List.of()));
      assertEquals(
          """
          {
            "$about": "mine",
            "id": "tarnbrook",
            "kind": "thesis",
            "title": "New",
            "subtitle": "Sub",
            "editions": [ {"key": "k", "year": 1900, "seen": 1.50} ]
          }
          """,
          Fixture.read(file));
    }
  }

  @Nested
  @DisplayName("A save is refused, and the file stays,")
  class Refused {
    @Test
    void whereTheFileHasChangedSinceItWasRead() {
      Stored<Work> old = read();
      String theirs = Fixture.text(Fixture.WORK).replace("1926", "1927");
      Fixture.write(file, theirs);
      String found = refusal(() -> library.save(old, withReadingOf(old.value(), 0, "x")));
      assertEquals(
          file
              + ": the file has been changed by somebody else since it was read; nothing was"
              + " written; look at it, then make your change again",
          found);
      assertEquals(theirs, Fixture.read(file));
    }

    @Test
    void whereTheFileHasBeenDeletedOrIsThereAlready() throws IOException {
      Stored<Work> old = read();
      Files.delete(file);
      String found = refusal(() -> library.save(old, withReadingOf(old.value(), 0, "x")));
      assertTrue(found.contains("has been deleted since it was read"), found);
      library.add(old.value());
      String again = refusal(() -> library.add(old.value()));
      assertTrue(again.contains("there is a file of this name already"), again);
    }

    @Test
    void whereItIsALink() throws IOException {
      Path real = library.path().resolve("elsewhere.json");
      Files.move(file, real);
      Files.createSymbolicLink(file, real);
      Stored<Work> old = read();
      String found = refusal(() -> library.save(old, withReadingOf(old.value(), 0, "x")));
      assertTrue(found.startsWith(file + ": this is a symbolic link"), found);
      assertEquals(Fixture.text(Fixture.WORK), Fixture.read(real));
    }

    @Test
    void whereItIsReadOnly() throws IOException {
      Files.setPosixFilePermissions(file, PosixFilePermissions.fromString("r--r--r--"));
      Stored<Work> old = read();
      String found = refusal(() -> library.save(old, withReadingOf(old.value(), 0, "x")));
      assertTrue(found.startsWith(file + ": the file is read-only; nothing was written"), found);
    }

    @Test
    void whereTheNameWouldNotBeThatOfTheFile() {
      Stored<Work> old = read();
      Work renamed =
          Fixture.decode(
              Fixture.text(Fixture.WORK).replace("\"id\": \"tarnbrook\"", "\"id\": \"other\""),
              WorkCodec.WORK);
      String found = refusal(() -> library.save(old, renamed));
      assertTrue(found.contains("what is to be saved here is called \"other\""), found);
    }

    @Test
    void whereTheNameCannotBeAFileName() {
      for (String name : List.of("../x", ".hidden", "a/b", "a\\b", "CON", "x ", "a\u0000", "a:b")) {
        OwnObject object =
            new OwnObject(
                name, "T", Optional.empty(), Optional.empty(), List.of(), List.of(), List.of());
        String found = refusal(() -> library.add(object));
        assertTrue(found.contains("cannot be the name of a file"), found);
      }
    }
  }

  @Test
  void permissionsStay() throws IOException {
    Files.setPosixFilePermissions(file, PosixFilePermissions.fromString("rw-rw----"));
    library.save(read(), withReadingOf(read().value(), 0, "x"));
    assertEquals("rw-rw----", PosixFilePermissions.toString(Files.getPosixFilePermissions(file)));
  }

  @Test
  void whatACrashLeavesBehindIsHarmless() throws IOException {
    Path left = file.resolveSibling(".tarnbrook.json.123-abc.tmp");
    Path other = file.resolveSibling(".half.json");
    Fixture.write(left, "{\"id\": \"tarn");
    Fixture.write(other, "{\"id\": \"tarn");
    assertEquals(1, works().size());
    assertEquals(List.of(), library.check());
    library.save(read(), withReadingOf(read().value(), 0, "after the crash"));
    assertEquals("{\"id\": \"tarn", Fixture.read(left));
  }

  @Test
  void nothingTemporaryIsLeft() throws IOException {
    library.save(read(), withReadingOf(read().value(), 0, "x"));
    try (Stream<Path> files = Files.list(file.getParent())) {
      assertEquals(List.of(file), files.toList());
    }
  }

  @Test
  void nothingTemporaryIsLeftWhereTheRenameFails() throws IOException {
    Path folder = library.resolve("works/full.json");
    Fixture.write(folder.resolve("x"), "");
    String found =
        refusal(
            () -> {
              Disk.replace(folder, new byte[0]);
              return null;
            });
    assertTrue(found.startsWith(folder + ": cannot be written, and nothing was changed"), found);
    try (Stream<Path> files = Files.list(folder.getParent())) {
      assertEquals(2, files.count());
    }
  }

  private List<LibraryFile> works() {
    return library.scan().stream().filter(f -> f.kind() == LibraryFile.Kind.WORK).toList();
  }

  @Test
  void everyKindOfFileCanBeSavedAndDeleted() throws IOException {
    Files.delete(library.resolve("mine.json"));
    Stored<Mine> nothing = library.readMine();
    assertEquals(Mine.NOTHING, nothing.value());
    assertSame(nothing, library.save(nothing, Mine.NOTHING));
    Mine mine = Fixture.decode(Fixture.text("mine.json"), MineCodec.MINE);
    library.save(nothing, mine);
    assertEquals(Fixture.text("mine.json"), Fixture.read(library.resolve("mine.json")));

    Stored<OwnObject> object = library.findObject("d-17").get();
    library.delete(object);
    assertEquals(Optional.empty(), library.findObject("d-17"));
    library.add(object.value());
    assertEquals(Fixture.text("objects/d-17.json"), Fixture.read(object.file()));

    var homonyms = library.readHomonyms();
    library.save(homonyms, List.of());
    assertEquals("{\n  \"homonyms\": []\n}\n", Fixture.read(homonyms.file()));
  }

  @Test
  void aWorkGoesIntoASubFolderWhereTheOthersAreInSuch() throws IOException {
    Path sharded = library.resolve("works/ta/tarnbrook.json");
    Files.createDirectories(sharded.getParent());
    Files.move(file, sharded);
    Stored<Work> found = library.findWork("tarnbrook").get();
    assertEquals(sharded, found.file());
    String refused = refusal(() -> library.add(found.value()));
    assertTrue(refused.startsWith(sharded.toString()), refused);
    Work other =
        Fixture.decode("{\"id\": \"Osk\", \"kind\": \"thesis\", \"title\": \"T\"}", WorkCodec.WORK);
    assertEquals(library.resolve("works/os/Osk.json"), library.add(other).file());
    assertEquals(2, works().size());
    assertEquals(
        List.of("", "works", "works/os", "works/ta", "objects", "vocabulary"),
        library.folders().stream()
            .map(LibraryFolder.Folder::relative)
            .sorted(java.util.Comparator.comparing(name -> rank(name)))
            .toList());
  }

  private static String rank(String folder) {
    return folder.startsWith("works") ? "a" + folder : folder.isEmpty() ? "" : "b" + folder;
  }
}
