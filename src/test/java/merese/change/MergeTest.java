package merese.change;

import static java.nio.charset.StandardCharsets.ISO_8859_1;
import static merese.testing.SmallLibrary.edition;
import static merese.testing.SmallLibrary.monograph;
import static merese.testing.SmallLibrary.says;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import merese.change.Effect.Sort;
import merese.model.Contributor;
import merese.model.Contributor.Role;
import merese.model.Edition;
import merese.model.Name;
import merese.model.SourceKind;
import merese.model.Work;
import merese.model.WorkLink;
import merese.store.LibraryException;
import merese.store.LibraryFolder;
import merese.testing.DemoLibrary;
import merese.testing.SmallLibrary;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class MergeTest {
  @TempDir Path dir;

  private static Contributor author(String family, String given) {
    return new Contributor(
        Role.AUTHOR,
        new Name.Person(family, Optional.ofNullable(given), Optional.empty(), Optional.empty()));
  }

  private static Work work(
      String id, SourceKind kind, String title, List<Contributor> by, String language) {
    Work plain = monograph(id, 1930, title, says("bladed rings", "ring-bladed").text("p. 1"));
    return new Work(
        id,
        kind,
        title,
        Optional.empty(),
        List.of(),
        by,
        Optional.ofNullable(language),
        false,
        plain.editions(),
        List.of());
  }

  private static WorkLink link(WorkLink.Kind kind, String to) {
    return new WorkLink(kind, to, Optional.empty(), Optional.empty());
  }

  private static Work linked(Work work, WorkLink... links) {
    return new Work(
        work.id(),
        work.kind(),
        work.title(),
        work.subtitle(),
        work.alternateTitles(),
        work.contributors(),
        work.language(),
        work.mine(),
        work.editions(),
        List.of(links));
  }

  private static List<String> of(Sort sort, List<Effect> effects) {
    return effects.stream().filter(e -> e.sort() == sort).map(Effect::what).toList();
  }

  private static String content(LibraryFolder library) throws IOException {
    StringBuilder all = new StringBuilder();
    try (Stream<Path> files = Files.walk(library.path())) {
      for (Path file :
          files.filter(f -> Files.isRegularFile(f) && !f.endsWith(".lock")).sorted().toList()) {
        all.append(file.getFileName()).append('\n').append(Files.readString(file, ISO_8859_1));
      }
    }
    return all.toString();
  }

  @Test
  void aCorrectionFollowsTheEditionThatItCorrects() {
    LibraryFolder library =
        new SmallLibrary()
            .book("Quenby", 1949, "Neck and Stopper", says("ring", "ring-bladed").text("p. 1"))
            .book("Quenbee", 1949, "Neck and Stopper", says("ring", "ring-bladed").text("p. 2"))
            .book(
                "Farrow",
                1988,
                "What Was It",
                says("ring", "ring-bladed").corrects("p. 9", "quenbee-1949", "p. 2"))
            .write(dir);
    MergePreview preview =
        Merge.apply(library, new MergeRequest("quenby-1949", List.of("quenbee-1949"), true));
    assertEquals(
        List.of("farrow-1988, n1: correction of quenby-1949"), of(Sort.FOLLOWS, preview.effects()));
    Edition farrow = library.findWork("farrow-1988").orElseThrow().value().editions().get(0);
    assertEquals(
        "quenby-1949", farrow.notes().get(0).places().get(0).corrects().orElseThrow().edition());
    assertEquals(0, LibraryCheck.of(library).errors());
  }

  @Nested
  @DisplayName("Two works that become one")
  class TwoWorks {
    private LibraryFolder library;

    @BeforeEach
    void make() {
      Work kept =
          linked(
              work(
                  "calloway",
                  SourceKind.MONOGRAPH,
                  "Collars and Feet",
                  List.of(author("Calloway", "Rosamund"), author("Tulk", null)),
                  null),
              link(WorkLink.Kind.CITES, "marden"));
      Work abroad =
          linked(
              work(
                  "calloway-abroad",
                  SourceKind.LEAFLET,
                  "Feet and Collars",
                  List.of(author("Calloway", "R."), author("Yarrow", "Ann")),
                  "fr"),
              link(WorkLink.Kind.SAME_WORK_ABROAD, "calloway"),
              link(WorkLink.Kind.REPEATS, "marden"));
      library =
          new SmallLibrary()
              .work(kept)
              .work(abroad)
              .work(
                  linked(
                      work("marden", SourceKind.THESIS, "Stems", List.of(), null),
                      link(WorkLink.Kind.CITES, "calloway"),
                      link(WorkLink.Kind.CITES, "calloway-abroad")))
              .write(dir);
    }

    private MergePreview merge() {
      return Merge.apply(library, new MergeRequest("calloway", List.of("calloway-abroad"), false));
    }

    @Test
    void keepWhatTheKeptOneSaysAndTellWhatTheOtherSaid() {
      MergePreview merge = merge();
      Work work = library.findWork("calloway").orElseThrow().value();
      assertEquals(SourceKind.MONOGRAPH, work.kind());
      assertEquals("Collars and Feet", work.title());
      assertEquals(List.of("Feet and Collars"), work.alternateTitles());
      assertEquals(Optional.empty(), work.language());
      assertEquals(
          List.of(author("Calloway", "Rosamund"), author("Tulk", null), author("Yarrow", "Ann")),
          work.contributors());
      assertEquals(
          List.of(
              "kind: monograph (calloway-abroad: leaflet)",
              "language: en-GB (calloway-abroad: fr)",
              "author: Rosamund Calloway (calloway-abroad: R. Calloway)"),
          of(Sort.STAYS, merge.effects()));
      assertEquals(
          List.of(
              "other title: Feet and Collars",
              "author: Ann Yarrow",
              "own title of calloway-abroad-1930: Feet and Collars",
              "link: calloway repeats marden"),
          of(Sort.ADDED, merge.effects()));
    }

    @Test
    void haveTheLinksOfBothAndNoneToThemselvesAndOthersLeadToTheKeptOne() {
      MergePreview merge = merge();
      assertTrue(library.findWork("calloway-abroad").isEmpty());
      assertEquals(
          List.of(link(WorkLink.Kind.CITES, "marden"), link(WorkLink.Kind.REPEATS, "marden")),
          library.findWork("calloway").orElseThrow().value().links());
      assertEquals(
          List.of(link(WorkLink.Kind.CITES, "calloway")),
          library.findWork("marden").orElseThrow().value().links());
      assertEquals(
          List.of("link within one work: calloway-abroad is, published abroad, calloway"),
          of(Sort.DROPPED, merge.effects()));
      assertEquals(List.of("link: marden cites calloway"), of(Sort.FOLLOWS, merge.effects()));
      assertEquals(3, merge.files());
      assertEquals(0, LibraryCheck.of(library).errors());
    }

    @Test
    void areOnlyShownAtFirst() throws IOException {
      String before = content(library);
      MergeRequest request = new MergeRequest("calloway", List.of("calloway-abroad"), false);
      MergePreview shown = Merge.preview(library, request);
      assertEquals(before, content(library));
      assertEquals(shown, Merge.apply(library, request));
    }

    @Test
    void keepWhatTheUserWroteAndTheProgramDoesNotKnow() throws IOException {
      Path abroad = library.resolve("works/calloway-abroad.json");
      Path kept = library.resolve("works/calloway.json");
      Files.writeString(
          abroad,
          Files.readString(abroad)
              .replaceFirst("\"kind\"", "\"myRating\": 4.50, \"myShelf\": \"top\", \"kind\"")
              .replace("\"year\"", "\"myBinding\": {\"cloth\": \"red\"}, \"year\"")
              .replace("\"id\": \"n1\"", "\"id\": \"n1\", \"myPencil\": [1, 2.0]"));
      Files.writeString(
          kept, Files.readString(kept).replaceFirst("\"kind\"", "\"myShelf\": \"low\", \"kind\""));
      MergePreview merge = merge();
      String text = Files.readString(kept);
      for (String own :
          List.of("\"myRating\": 4.50", "\"myShelf\": \"low\"", "\"cloth\": \"red\"", "2.0")) {
        assertTrue(text.contains(own), own + " in " + text);
      }
      assertFalse(text.contains("\"top\""));
      assertTrue(
          of(Sort.ADDED, merge.effects()).contains("your own \"myRating\" of calloway-abroad"));
      assertTrue(
          of(Sort.DROPPED, merge.effects())
              .contains("your own \"myShelf\" of calloway-abroad, since one is there already"));
      Split.apply(
          library,
          new SplitRequest(List.of("calloway-abroad-1930"), Optional.empty(), Optional.empty()));
      String split = Files.readString(library.resolve("works/calloway-abroad-1930.json"));
      assertTrue(split.contains("\"cloth\": \"red\"") && split.contains("2.0"), split);
    }

    @Test
    void areNotMergedOverAFileThatAnEditorChangesMeanwhile() throws IOException {
      Files.writeString(library.resolve("works/marden.json"), "{");
      String before = content(library);
      assertThrows(LibraryException.class, this::merge);
      assertEquals(before, content(library));
    }
  }

  @Nested
  @DisplayName("Two editions that become one")
  class TwoEditions {
    @Test
    void areFollowedByWhatDescendsFromTheOneThatGoesAndByWhatMentionsIt() throws IOException {
      LibraryFolder library = DemoLibrary.copyTo(dir);
      Edition copy = edition("quenby-1926b", 1926, says("knife rings", "ring-bladed").text("p. 4"));
      Edition child =
          edition("quenby-1927", 1927)
              .withLineage(
                  new Edition.Lineage(
                      Edition.Lineage.Form.REPRINT,
                      Optional.of("quenby-1926b"),
                      java.util.OptionalInt.empty(),
                      Optional.empty(),
                      List.of()));
      library.add(
          monograph("Quenby", 1926, "Neck and Stopper")
              .withId("quenby-again")
              .withEditions(List.of(copy, child)));
      Path piece = library.resolve("objects/d-17.json");
      Files.writeString(
          piece, Files.readString(piece).replace("\"title\": \"", "\"title\": \"quenby-1926b, "));
      Path pages = Files.createDirectories(library.resolve("pages/quenby-1926b"));
      Files.writeString(pages.resolve("scan.pdf"), "what is no page text");
      int notes = LibraryCheck.of(library).holdings().notes();
      MergePreview merge =
          Merge.apply(library, new MergeRequest("quenby-1926", List.of("quenby-1926b"), true));
      assertEquals(
          List.of("quenby-1927: reprint of quenby-1926"), of(Sort.FOLLOWS, merge.effects()));
      assertEquals(
          List.of(
              "objects/d-17.json mentions quenby-1926b",
              "pages/quenby-1926b are the pages of what is no more"),
          of(Sort.LOOK_AT, merge.effects()));
      Work work = library.findWork("quenby-neck-and-stopper").orElseThrow().value();
      assertEquals(5, work.editions().size());
      assertEquals(notes, LibraryCheck.of(library).holdings().notes());
      assertEquals(0, LibraryCheck.of(library).errors());
    }

    @Test
    void areRefusedWhereOneDescendsFromTheOther() throws IOException {
      LibraryFolder library = DemoLibrary.copyTo(dir);
      String before = content(library);
      ChangeRefusedException e =
          assertThrows(
              ChangeRefusedException.class,
              () ->
                  Merge.apply(
                      library, new MergeRequest("quenby-1926", List.of("quenby-1968"), true)));
      assertEquals(
          "quenby-1968 and quenby-1926 cannot be the same edition: by its lineage, quenby-1949"
              + " descends from quenby-1926; correct that first",
          e.getMessage());
      Files.delete(library.resolve(".lock"));
      assertEquals(before, content(library));
    }
  }

  @Nested
  @DisplayName("A name is refused that")
  class Names {
    private String refused(boolean oneEdition, String keep, String... others) throws IOException {
      LibraryFolder library = DemoLibrary.copyTo(Files.createTempDirectory(dir, "demo"));
      library.add(monograph("x", 1900, "X").withId("norrish-1971"));
      MergeRequest request = new MergeRequest(keep, List.of(others), oneEdition);
      return assertThrows(RuntimeException.class, () -> Merge.preview(library, request))
          .getMessage();
    }

    @Test
    void nothingHas() throws IOException {
      assertEquals(
          "no edition and no work is called quenby-194; did you mean quenby-1949?",
          refused(false, "tressick-1954", "quenby-194"));
      assertEquals(
          "no edition and no work is called zzz; an edition is named by its key, a work by its file"
              + " in works/",
          refused(false, "zzz", "tressick-1954"));
    }

    @Test
    void aWorkAndAnEditionOfAnotherHave() throws IOException {
      assertEquals(
          "norrish-1971 is the key of an edition of norrish-the-ringed-decanter and the name of"
              + " another work; name the one by another key, or the work"
              + " norrish-the-ringed-decanter",
          refused(false, "tressick-1954", "norrish-1971"));
    }

    @Test
    void isOfAWorkThatIsNamedAlready() throws IOException {
      assertEquals(
          "quenby-1977 is of the work quenby-neck-and-stopper, which is named already; two editions"
              + " of one work become one edition with --one-edition",
          refused(false, "quenby-1949", "quenby-1977"));
    }

    @Test
    void isAnEditionNamedTwice() throws IOException {
      assertEquals(
          "QUENBY-1949 is named twice; name each edition once",
          refused(true, "quenby-1949", "QUENBY-1949"));
    }

    @Test
    void isAWorkOfSeveralEditionsWhereOneIsMeant() throws IOException {
      assertEquals(
          "--one-edition: the work imberry-the-stem has 2 editions; name the one that is meant:"
              + " imberry-1934, imberry-1951",
          refused(true, "quenby-1949", "imberry-the-stem"));
    }
  }
}
