package merese.store;

import static merese.store.Fixture.refusal;
import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeFalse;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.stream.Stream;
import merese.model.Facet;
import merese.model.Mine;
import merese.model.Work;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

@DisplayName("A change of several files")
class ChangeSetTest {
  @TempDir Path dir;
  private LibraryFolder library;
  private Map<String, String> before;

  @BeforeEach
  void copyTheFixture() {
    library = Fixture.in(dir);
    before = Changed.content(library.path());
  }

  private Void committing(Consumer<ChangeSet> staging) {
    try (ChangeSet change = library.change("a test")) {
      staging.accept(change);
      change.commit();
    }
    return null;
  }

  private String refused(Consumer<ChangeSet> staging) {
    String said = refusal(() -> committing(staging));
    assertEquals(before, Changed.content(library.path()), said);
    return said.replace(library.path().toString(), "LIBRARY");
  }

  @Test
  void isMadeWholeAndSound() {
    Changed.make(library, Steps.NONE);
    assertEquals("Another title", LibraryFolder.open(library.path()).settings().title());
    assertEquals(List.of(Changed.preamble()), library.readKept().value());
    assertEquals("Brook", library.findWork("brook").orElseThrow().value().title());
    assertEquals("A jug", library.findObject("d-18").orElseThrow().value().title());
    assertTrue(library.findObject("d-17").isEmpty());
    assertEquals(
        Fixture.text(Fixture.WORK).replace("\"Rings and Necks\"", "\"Tarn and Brook\""),
        Fixture.read(library.resolve(Fixture.WORK)),
        "nothing else in the file is touched");
    assertFalse(Files.exists(library.resolve(".change")));
    assertEquals(
        List.of("there is no object \"d-17\""),
        library.check().stream().map(Problem::what).toList());
  }

  @Test
  void ofNothingTouchesNothing() {
    try (ChangeSet change = library.change("a test")) {
      change.save(library.readMine(), library.readMine().value());
      change.save(library.readKept(), List.of());
      assertTrue(change.isEmpty());
      change.commit();
    }
    assertEquals(before, Changed.content(library.path()));
    assertFalse(Files.exists(library.resolve(ChangeMark.FILE)));
  }

  @Test
  void countsItsFilesAndIsGoneWhereItIsNotMade() {
    try (ChangeSet change = library.change("a test")) {
      Changed.stage(library, change);
      assertEquals(7, change.files());
      assertFalse(change.isEmpty());
    }
    assertEquals(before, Changed.content(library.path()));
    library.lock().close();
  }

  @Test
  void keepsThePermissionsOfWhatItReplaces() throws IOException {
    Path mine = library.resolve("mine.json");
    var own = java.nio.file.attribute.PosixFilePermissions.fromString("rw-rw----");
    Files.setPosixFilePermissions(mine, own);
    committing(c -> c.save(library.readMine(), Mine.NOTHING));
    assertEquals(own, Files.getPosixFilePermissions(mine));
  }

  @Test
  void ofWhichOneIsOpenAtATime() {
    try (ChangeSet open = library.change("a test")) {
      open.add(Changed.work("a", "A"));
      assertThrows(IllegalStateException.class, () -> library.change("a test"));
      library.save(library.readKept(), List.of(Changed.preamble()));
      open.commit();
    }
    assertTrue(library.findWork("a").isPresent());
    library.change("a test").close();
  }

  @Nested
  @DisplayName("is refused, and nothing is changed, where")
  class Refused {
    @Test
    void aFileIsNoLongerWhatWasRead() throws IOException {
      Stored<Work> work = library.readWork(library.resolve(Fixture.WORK));
      Stored<Mine> mine = library.readMine();
      try (ChangeSet change = library.change("a test")) {
        change.save(mine, Mine.NOTHING);
        change.delete(work);
        Files.writeString(work.file(), Fixture.text(Fixture.WORK) + "\n");
        before = Changed.content(library.path());
        before.keySet().removeIf(name -> name.startsWith(Staging.FOLDER));
        assertEquals(
            work.file()
                + ": the file has been changed by somebody else since it was read; nothing was"
                + " written; look at it, then make your change again",
            refusal(
                () -> {
                  change.commit();
                  return null;
                }));
      }
      assertEquals(before, Changed.content(library.path()));
    }

    @Test
    void aFileHasBeenDeletedOrAddedSince() throws IOException {
      Stored<Mine> mine = library.readMine();
      Files.delete(mine.file());
      before = Changed.content(library.path());
      assertTrue(refused(c -> c.save(mine, Mine.NOTHING)).contains("has been deleted since"));
      Fixture.write(library.resolve("received.json"), "{}");
      Stored<?> kept = library.readKept();
      before = Changed.content(library.path());
      Files.delete(kept.file());
      Stored<List<merese.model.ReceivedRecord>> none = library.readKept();
      Fixture.write(library.resolve("received.json"), "{}");
      assertTrue(
          refused(c -> c.save(none, List.of(Changed.preamble())))
              .contains("there is a file of this name already"));
    }

    @Test
    void aFileIsReadOnlyOrALink() throws IOException {
      Path mine = library.resolve("mine.json");
      Files.setPosixFilePermissions(
          mine, java.nio.file.attribute.PosixFilePermissions.fromString("r--r--r--"));
      Stored<Mine> read = library.readMine();
      assertTrue(refused(c -> c.save(read, Mine.NOTHING)).contains("the file is read-only"));
      Path elsewhere = library.resolve("elsewhere.json");
      Files.move(mine, elsewhere);
      Files.createSymbolicLink(mine, elsewhere);
      before = Changed.content(library.path());
      Stored<Mine> linked = library.readMine();
      assertTrue(refused(c -> c.save(linked, Mine.NOTHING)).contains("this is a symbolic link"));
    }

    @Test
    void theNameIsTakenHereOrInASubFolder() {
      Fixture.write(library.resolve("works/xy/brook.json"), "{}");
      before = Changed.content(library.path());
      assertEquals(
          "LIBRARY/works/xy/brook.json: there is a file of this name already; nothing was written;"
              + " look at it, then make your change again",
          refused(c -> c.add(Changed.work("brook", "B"))));
      assertTrue(refused(c -> c.add(Changed.object("d-17"))).contains("objects/d-17.json: there"));
    }

    @Test
    void twoNewOnesHaveOneName() {
      assertEquals(
          "LIBRARY/works/twice.json: there is a file of this name already; nothing was written;"
              + " look at it, then make your change again",
          refused(
              c -> {
                c.add(Changed.work("twice", "A"));
                c.add(Changed.work("twice", "B"));
              }));
    }

    @Test
    void namesDifferInCapitalsOrInHowAnAccentIsSpelt() {
      assertEquals(
          "LIBRARY/works/tarnbrook.json: some systems take \"Tarnbrook\" for the same name as"
              + " \"tarnbrook\", which is here already; nothing was written; call one of the two"
              + " something else",
          refused(c -> c.add(Changed.work("Tarnbrook", "T"))));
      String said =
          refused(
              c -> {
                c.add(Changed.object("verre-\u00e0-jambe"));
                c.add(Changed.object("verre-a\u0300-jambe"));
              });
      assertTrue(said.contains("some systems take"), said);
      assertTrue(
          refusal(() -> library.add(Changed.work("TARNBROOK", "T"))).contains("some systems take"));
    }

    @ParameterizedTest
    @ValueSource(
        strings = {
          "", " ", ".hidden", "a/b", "a\\b", "nul", "Con", "aux.old", "COM1", "lpt9.x", "lpt²",
          "end.", "a:b", "a\nb", " a"
        })
    void aNameIsNoneThatEverySystemCanHold(String name) {
      Work work = name.isBlank() ? null : Changed.work(name, "T");
      if (work != null) {
        assertTrue(refused(c -> c.add(work)).contains("cannot be the name of a file"), name);
      }
    }

    @Test
    void aFacetIsCalledAsTheRegister() {
      VocabularyFile facet =
          new VocabularyFile(new Facet("Homonyms", Optional.empty(), List.of()), List.of());
      assertEquals(
          "LIBRARY/vocabulary/homonyms.json: this file is the register of homonyms, and no facet;"
              + " call the facet something else",
          refused(c -> c.add(facet)));
    }

    @Test
    void aFolderIsOnAnotherDisk() throws IOException {
      Path other = Path.of("/dev/shm");
      assumeTrue(Files.isWritable(other), "there is another disk");
      assumeFalse(Files.getFileStore(other).equals(Files.getFileStore(dir)));
      Path objects = Files.createTempDirectory(other, "objects");
      try {
        Fixture.delete(library.resolve("objects"));
        Files.createSymbolicLink(library.resolve("objects"), objects);
        before = Changed.content(library.path());
        String said =
            refused(
                c -> {
                  c.save(library.readMine(), Mine.NOTHING);
                  c.add(Changed.object("d-18"));
                });
        assertTrue(
            said.startsWith("LIBRARY/objects: cannot be written, and nothing was changed: "), said);
        assertEquals(0, objects.toFile().list().length);
      } finally {
        Fixture.delete(objects);
      }
    }
  }

  @Test
  void devicesAloneAreRefusedAndNotWordsLikeThem() {
    for (String name : List.of("console", "com", "com10", "lpt", "auxiliary", "nullified")) {
      assertTrue(FileNames.isUsable(name), name);
    }
  }

  @Nested
  @DisplayName("that rejects something")
  class Rejecting {
    private Path reject(String name, String text) {
      try (ChangeSet change = library.change("a test")) {
        Path place = change.reject(name, text.getBytes(StandardCharsets.UTF_8));
        change.commit();
        return library.path().relativize(place);
      }
    }

    private List<String> rejected() throws IOException {
      try (Stream<Path> files = Files.list(library.resolve("rejected"))) {
        return files.sorted().map(f -> f.getFileName() + " " + Fixture.read(f)).toList();
      }
    }

    @Test
    void keepsEachOnceUnderAFreeName() throws IOException {
      assertEquals(Path.of("rejected/glass.bib"), reject("glass.bib", "one"));
      assertEquals(Path.of("rejected/glass-2.bib"), reject("glass.bib", "two"));
      assertEquals(Path.of("rejected/glass.bib"), reject("glass.bib", "one"));
      assertEquals(Path.of("rejected/glass-2.bib"), reject("glass.bib", "two"));
      assertEquals(Path.of("rejected/glass-3.bib"), reject("glass.bib", "three"));
      assertEquals(Path.of("rejected/noending"), reject("noending", "x"));
      assertEquals(Path.of("rejected/noending-2"), reject("noending", "y"));
      assertEquals(
          List.of(
              "glass-2.bib two",
              "glass-3.bib three",
              "glass.bib one",
              "noending x",
              "noending-2 y"),
          rejected());
    }

    @Test
    void knowsWhatItselfRejects() throws IOException {
      try (ChangeSet change = library.change("a test")) {
        change.reject("a.bib", new byte[] {'1'});
        change.reject("a.bib", new byte[] {'1'});
        assertEquals(1, change.files());
        change.reject("A.bib", new byte[] {'2'});
        change.commit();
      }
      assertEquals(List.of("A-2.bib 2", "a.bib 1"), rejected());
    }

    @Test
    void keepsTheBytesAsTheyStand() throws IOException {
      byte[] bytes = {(byte) 0xFF, 0, 13, 10, (byte) 0xE9};
      try (ChangeSet change = library.change("a test")) {
        change.reject("x.mrc", bytes);
        change.commit();
      }
      assertArrayEquals(bytes, Files.readAllBytes(library.resolve("rejected/x.mrc")));
    }

    @ParameterizedTest
    @ValueSource(strings = {"", ".bib", "../up.bib", "a/b.bib", "con.bib", "a\nb.bib", "...", "x?"})
    void keepsWhatCameUnderANameThatNoFileCanHave(String name) throws IOException {
      Path place = reject(name, "kept");
      assertEquals(Path.of("rejected"), place.getParent());
      assertTrue(FileNames.isUsable(place.getFileName().toString()), place.toString());
      assertEquals("kept", Fixture.read(library.resolve(place.toString())));
    }
  }

  @Nested
  @DisplayName("of many works")
  class Many {
    private long flat() throws IOException {
      try (Stream<Path> files = Files.list(library.resolve("works"))) {
        return files.filter(Files::isRegularFile).count();
      }
    }

    private void add(String prefix, int count) {
      committing(
          c -> {
            for (int i = 0; i < count; i++) {
              c.add(Changed.work(prefix + i, "Leaflet " + i));
            }
          });
    }

    @Test
    void puts5000NewOnesIntoSubFoldersAndLeavesThoseThatAreThere() throws IOException {
      add("aa", 10);
      add("Bb-", 5_000);
      assertEquals(11, flat());
      assertEquals(5_011, library.scan().stream().filter(f -> isWork(f)).count());
      assertTrue(Files.exists(library.resolve("works/bb/Bb-4999.json")));
      assertEquals("Leaflet 7", library.findWork("Bb-7").orElseThrow().value().title());
      assertEquals("Leaflet 7", library.findWork("aa7").orElseThrow().value().title());
      add("aa-later", 1);
      assertTrue(Files.exists(library.resolve("works/aa/aa-later0.json")), "it stays sharded");
      library.add(Changed.work("zz", "Z"));
      assertTrue(Files.exists(library.resolve("works/zz/zz.json")));
    }

    private static boolean isWork(LibraryFile file) {
      return file.kind() == LibraryFile.Kind.WORK;
    }

    @Test
    void fills2000FlatAndNoMore() throws IOException {
      add("f", 1_999); // and one of the fixture
      assertEquals(2_000, flat());
      library.add(Changed.work("g", "G"));
      assertEquals(2_000, flat());
      assertTrue(Files.exists(library.resolve("works/g/g.json")));
    }

    private void move(String work, String folder) throws IOException {
      Path to = library.resolve("works/" + folder + "/" + work + ".json");
      Files.createDirectories(to.getParent());
      Files.move(library.resolve("works/" + work + ".json"), to);
    }

    @Test
    void leavesANameToWhoeverHasItInWhicheverFolder() throws IOException {
      String composed = "é-verre";
      String apart = "e\u0301-verre";
      for (String id : List.of("quenby", "haskeld", composed)) {
        library.add(Changed.work(id, "One"));
      }
      move("tarnbrook", "ta");
      move("quenby", "zz"); // by hand, where no program would put it
      move("haskeld", "Ha");
      move(composed, "é-");
      Files.createDirectories(library.resolve("works/qu"));

      for (String id : List.of("tarnbrook", "quenby", "haskeld", composed)) {
        String refused = refusal(() -> library.add(Changed.work(id, "Two")));
        assertTrue(refused.contains("there is a file of this name already"), refused);
      }
      for (String id : List.of("TARNBROOK", "Haskeld", "É-verre", apart)) {
        String refused = refusal(() -> library.add(Changed.work(id, "Two")));
        assertTrue(refused.contains("some systems take"), id + ": " + refused);
      }
      String many =
          refusal(
              () ->
                  committing(
                      c -> {
                        for (int i = 0; i < 50; i++) {
                          c.add(Changed.work("m" + i, "Leaflet"));
                        }
                        c.add(Changed.work("QUENBY", "Two"));
                      }));
      assertTrue(many.contains("some systems take"), many);
      library.add(Changed.work("quenby2", "Three"));
      assertTrue(Files.exists(library.resolve("works/qu/quenby2.json")));
    }

    @Test
    void hasFoldersThatEverySystemCanHold() {
      Path works = Path.of("works");
      assertEquals(works.resolve("qu"), FileNames.shard(works, "Quenby"));
      assertEquals(works.resolve("a"), FileNames.shard(works, "a.b"));
      assertEquals(works.resolve("a"), FileNames.shard(works, "a b"));
      assertEquals(works.resolve("x"), FileNames.shard(works, "x"));
    }
  }
}
