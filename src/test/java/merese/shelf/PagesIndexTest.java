package merese.shelf;

import static merese.testing.SmallLibrary.says;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.attribute.FileTime;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.stream.Stream;
import merese.search.FindQuery;
import merese.search.PagesOfSource;
import merese.search.SourceSelection;
import merese.store.LibraryFolder;
import merese.testing.SmallLibrary;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Pages of books are indexed a page each, a file at a time, and follow the vocabulary. */
class PagesIndexTest {
  private static final Instant LONG_AGO = Instant.parse("2020-01-01T00:00:00Z");

  @TempDir private Path folder;
  private Path library;

  @BeforeEach
  void twoBooksWithTheirPages() throws IOException {
    library =
        new SmallLibrary()
            .book(
                "Quenby", 1926, "Neck and Stopper", says("bladed ring", "ring-bladed").text("p. 1"))
            .book("Tressick", 1954, "Cut and Blown")
            .pages(
                "quenby-1926",
                "1–3 = pp. 1–3; 4 = pl. I; 5 = unnumbered",
                "A decanter with three knife-\nedged rings about the neck.",
                "",
                "The annulatecl rings and the ſtring rim; blown glafs.",
                "A modern merese, and a razorlike\nring.",
                "Of collars.")
            .pages(
                "tressick-1954",
                "",
                "Nothing but soot and a foot.",
                "The bladed neck ring, of modem make.")
            .write(folder)
            .path();
    age();
  }

  private void age() throws IOException {
    try (Stream<Path> files = Files.walk(library)) {
      for (Path file : files.filter(Files::isRegularFile).toList()) {
        Files.setLastModifiedTime(file, FileTime.from(LONG_AGO));
      }
    }
  }

  private static Shelf open(Path library) {
    return Shelf.open(LibraryFolder.open(library), Watcher.NONE);
  }

  private UpToDate report() {
    try (Shelf shelf = open(library)) {
      return shelf.upToDate();
    }
  }

  private List<String> naming(String concept) {
    return naming(library, concept);
  }

  private static List<String> naming(Path library, String concept) {
    try (Shelf shelf = open(library)) {
      return lines(pagesNaming(shelf, List.of(concept)));
    }
  }

  private static List<String> lines(List<SourcedPage> pages) {
    List<String> lines = new ArrayList<>();
    for (SourcedPage page : pages) {
      List<String> names = new ArrayList<>();
      page.names()
          .forEach(n -> names.add(n.words() + (n.loose() ? "~" : "") + (n.doubtful() ? "?" : "")));
      lines.add(page.source().key() + " " + page.cited() + ": " + String.join(", ", names));
    }
    return lines;
  }

  private List<String> find(String question) {
    try (Shelf shelf = open(library)) {
      List<String> found = new ArrayList<>();
      for (SourcedPage page : shelf.find(FindQuery.parse(question), 20).pages()) {
        found.add(page.source().key() + " " + page.cited());
      }
      return found;
    }
  }

  private void edit(String file, String old, String now) throws IOException {
    Path path = library.resolve(file);
    String text = Files.readString(path);
    assertTrue(text.contains(old), file + " holds " + old);
    Files.writeString(path, text.replace(old, now));
    Files.setLastModifiedTime(path, FileTime.from(LONG_AGO.plusSeconds(60)));
  }

  private Path pages(String key) throws IOException {
    try (Stream<Path> files = Files.list(library.resolve("pages").resolve(key))) {
      return files.findFirst().orElseThrow();
    }
  }

  @Test
  void aConceptIsFoundOnPagesByAnyOfItsNames() {
    assertEquals(
        List.of(
            "quenby-1926 p. 1: knife-edged rings", "tressick-1954 file page 2: bladed neck ring"),
        naming("ring-bladed"));
  }

  @Test
  void soIsWhatIsBroader() {
    assertTrue(naming("neck-ring").size() >= 3, naming("neck-ring").toString());
  }

  @Test
  void wordsAreFoundAcrossTheEndOfALineAndInOldLetters() {
    assertEquals(List.of("quenby-1926 p. 1"), find("\"knife-edged rings\""));
    assertEquals(List.of("quenby-1926 p. 1"), find("\"three knifeedged rings about\""));
    assertEquals(List.of("quenby-1926 p. 3"), find("\"string rim\""));
    assertEquals(List.of("quenby-1926 p. 3"), find("\"blown glass\""));
    assertEquals(List.of("quenby-1926 p. 3"), find("annulated"));
    assertEquals(List.of("quenby-1926 pl. I"), find("razor*"));
  }

  private void aBookWhosePagesEndAmidstTheWords() throws IOException {
    library =
        new SmallLibrary()
            .book("Tressick", 1954, "Cut and Blown")
            .pages(
                "tressick-1954",
                "",
                "Nothing but soot.",
                "On a dark decanter with annu-\n7",
                "CUT AND BLOWN\nlated rings, a narrow",
                "dripping pan.")
            .write(folder.resolve("other"))
            .path();
    age();
  }

  @Test
  void wordsAreFoundOverTheEndOfAPageOnTheFirstOfTheTwo() throws IOException {
    aBookWhosePagesEndAmidstTheWords();
    List<String> second = List.of("tressick-1954 file page 2");
    for (String question :
        List.of(
            "annulated",
            "annu",
            "\"annulated rings\"",
            "\"decanter with annulated rings\"",
            "annulated rings",
            "decanter annulated")) {
      assertEquals(second, find(question), question);
    }
    assertEquals(List.of("tressick-1954 file page 3"), find("rings"));
    assertEquals(List.of(), find("decanter rings"), "no words side by side");
    assertEquals(List.of("tressick-1954 file page 3"), find("\"narrow dripping\""));
    assertEquals(List.of("tressick-1954 file page 4"), find("dripping"));
    assertEquals(List.of("tressick-1954 file page 2: annulated rings"), naming("ring-annulated"));
    try (Shelf shelf = open(library)) {
      SourcedPage page = pagesNaming(shelf, List.of("ring-annulated")).get(0);
      assertEquals("On a dark decanter with annu-\n7", shelf.read(page).text());
    }
  }

  @Test
  void aNewLabelIsFoundOverTheEndOfAPage() throws IOException {
    aBookWhosePagesEndAmidstTheWords();
    report();
    edit("vocabulary/ring.json", "\"angular ring\"", "\"angular ring\", \"narrow dripping\"");
    assertEquals(List.of("vocabulary/ring.json"), report().opened());

    assertEquals(List.of("tressick-1954 file page 3: narrow dripping"), naming("ring-bladed"));
  }

  @Test
  void whatStandsAsTypedComesBeforeWhatIsOnlyLikeIt() {
    assertEquals(List.of("quenby-1926 pl. I", "tressick-1954 file page 2"), find("modern"));
    assertEquals(List.of("tressick-1954 file page 2", "quenby-1926 pl. I"), find("modem"));
  }

  @Test
  void fieldsOfSourcesNarrowAndThoseOfNotesFindNoPage() {
    assertEquals(List.of("tressick-1954 file page 2"), find("ring author:tressick"));
    assertEquals(List.of("tressick-1954 file page 2"), find("ring year:1950.."));
    assertEquals(List.of("quenby-1926 p. 1"), find("ring decanter NOT annulated"));
    assertEquals(
        List.of("quenby-1926 p. 1", "tressick-1954 file page 2"), find("concept:ring-bladed"));
    assertEquals(List.of(), find("term:ring"));
    assertEquals(List.of(), find("ring picture:yes"));
    assertEquals(List.of(), find("ring is:note"));
    assertEquals(List.of("quenby-1926 file page 5, unnumbered"), find("collar is:page"));
    assertEquals(List.of(), find("source:quenby-1926"));
  }

  @Test
  void pagesAreNoHitsAmongNotesAndSources() {
    try (Shelf shelf = open(library)) {
      assertEquals(0, shelf.find(FindQuery.parse("razorlike"), 9).withAll());
      assertEquals(1, shelf.find(FindQuery.parse("razorlike"), 9).allPages());
      assertEquals(0, shelf.find(FindQuery.parse("is:page ring"), 9).withAll());
      int things = shelf.find(FindQuery.parse("source:quenby-1926"), 9).withAll();
      assertEquals(2, things); // the source and its note
    }
  }

  @Test
  void aChangedTextIsReadAloneAndReplacedAsOne() throws IOException {
    report();
    Path file = pages("quenby-1926");
    byte[] garbage = new byte[(int) Files.size(pages("tressick-1954"))];
    Arrays.fill(garbage, (byte) '#');
    Files.write(pages("tressick-1954"), garbage);
    Files.setLastModifiedTime(pages("tressick-1954"), FileTime.from(LONG_AGO));
    edit(library.relativize(file).toString(), "merese", "plain foot");

    assertEquals(List.of(library.relativize(file).toString()), report().opened());
    assertEquals(List.of(), naming("merese").stream().filter(l -> l.contains("pl. I:")).toList());
    assertEquals(2, naming("ring-bladed").size());
  }

  @Test
  void aTextThatIsGoneIsFoundNoMore() throws IOException {
    report();
    Files.delete(pages("tressick-1954"));

    assertEquals(1, naming("ring-bladed").size());
    assertEquals(List.of(), find("soot"));
  }

  @Test
  void aNewLabelIsFoundOnPagesOfFilesThatDidNotChangeAndOnlyThoseAreMadeAgain() throws IOException {
    report();
    edit("vocabulary/ring.json", "\"angular ring\"", "\"angular ring\", \"razorlike ring\"");
    UpToDate after = report();

    // the work has a note that means it; no file of pages is read
    assertEquals(List.of("vocabulary/ring.json", "works/quenby-1926.json"), after.opened());
    assertEquals(1, after.pagesAgain()); // of those that have an old name of it nothing changes
    assertTrue(
        naming("ring-bladed").stream().anyMatch(l -> l.startsWith("quenby-1926 pl. I:")),
        naming("ring-bladed").toString());
  }

  @Test
  void aConceptThatIsElsewhereIsFoundOnItsPagesUnderWhatIsBroaderNow() throws IOException {
    report();
    assertEquals(List.of(), naming("ring-cut"));
    edit(
        "vocabulary/ring.json",
        "triangular in section.\",\n      \"broader\": [\n        \"ring-applied\"",
        "triangular in section.\",\n      \"broader\": [\n        \"ring-cut\"");
    assertEquals(2, report().pagesAgain());
    assertEquals(naming("ring-bladed"), naming("ring-cut"));
  }

  /** More than Lucene takes in one query. */
  @Test
  void aThousandNewLabelsAtOnceMakeNoMoreOfItThanTheirPages() throws IOException {
    report();
    StringBuilder labels = new StringBuilder("\"angular ring\", \"razorlike ring\"");
    for (int i = 0; i < 1_000; i++) {
      labels
          .append(", \"ring like ")
          .append("abcdefghij".charAt(i % 10))
          .append("x".repeat(i / 10));
      labels.append(" of old\"");
    }
    edit("vocabulary/ring.json", "\"angular ring\"", labels.toString());
    UpToDate after = report();

    assertEquals(Optional.empty(), after.built());
    assertEquals(1, after.pagesAgain());
    assertEquals(3, naming("ring-bladed").size());
  }

  /** The page that is made again comes last into the index. */
  @Test
  void pagesOfASourceStayInTheOrderOfTheText() throws IOException {
    report();
    edit("vocabulary/ring.json", "\"angular ring\"", "\"angular ring\", \"decanter with three\"");
    report();
    try (Shelf shelf = open(library)) {
      List<String> pages = lines(pagesOfFirst(shelf, "neck-ring", 1));
      assertEquals(3, pages.size(), pages.toString());
      assertTrue(pages.get(0).startsWith("quenby-1926 p. 1: decanter with three"), pages.get(0));
      assertEquals(lines(pagesNaming(shelf, List.of("neck-ring"))).subList(0, 3), pages);
    }
  }

  /** All of them, in the order of files and pages. */
  private static List<SourcedPage> pagesNaming(Shelf shelf, List<String> concepts) {
    List<SourcedPage> pages = new ArrayList<>();
    shelf
        .sourcesNaming(concepts, SourceSelection.ALL)
        .forEach(source -> pages.addAll(shelf.pages(source)));
    pages.sort(Comparator.comparing(SourcedPage::file).thenComparing(SourcedPage::page));
    return pages;
  }

  private static List<SourcedPage> pagesOfFirst(Shelf shelf, String concept, int most) {
    List<SourcedPage> pages = new ArrayList<>();
    shelf.sourcesNaming(List.of(concept), SourceSelection.ALL).stream()
        .limit(most)
        .forEach(source -> pages.addAll(shelf.pages(source)));
    return pages;
  }

  @Test
  void ofTheSourcesThatNameAConceptTheFirstAreReadAndAllCounted() {
    try (Shelf shelf = open(library)) {
      List<String> bladed = List.of("ring-bladed");
      assertEquals(
          List.of("quenby-1926 p. 1: knife-edged rings"),
          lines(pagesOfFirst(shelf, "ring-bladed", 1)));
      assertEquals(2, shelf.sourcesNaming(bladed, SourceSelection.ALL).size());
      List<PagesOfSource> late =
          shelf.sourcesNaming(
              bladed,
              new SourceSelection(false, List.of(), Optional.of(List.of(OptionalInt.of(1954)))));
      assertEquals(1, late.size());
      assertEquals(
          List.of("tressick-1954 file page 2: bladed neck ring"), lines(shelf.pages(late.get(0))));
    }
  }

  /** By R4, whatever the files and keys are called. */
  @Test
  void theFirstSourceIsTheOneOfTheEarliestYear() throws IOException {
    edit("works/quenby-1926.json", "\"year\": 1926", "\"year\": 1999");
    try (Shelf shelf = open(library)) {
      assertEquals(
          List.of("tressick-1954 file page 2: bladed neck ring"),
          lines(pagesOfFirst(shelf, "ring-bladed", 1)));
    }
    assertEquals(
        List.of("tressick-1954 file page 2", "quenby-1926 p. 1", "quenby-1926 p. 3"),
        find("ring").subList(0, 3));
  }

  @Test
  void ofPagesThatAreEquallyGoodTheFirstAreGivenHoweverFewAreWanted() {
    List<String> all = find("ring");
    assertEquals(
        List.of("quenby-1926 p. 1", "quenby-1926 p. 3", "quenby-1926 pl. I"), all.subList(0, 3));
    assertEquals(4, all.size());
    try (Shelf shelf = open(library)) {
      for (int most = 1; most <= all.size(); most++) {
        Finding found = shelf.find(FindQuery.parse("ring"), most);
        List<String> first = new ArrayList<>();
        found.pages().forEach(p -> first.add(p.source().key() + " " + p.cited()));
        assertEquals(all.subList(0, most), first);
        assertEquals(4, found.allPages());
      }
    }
    assertEquals(List.of("quenby-1926 pl. I", "tressick-1954 file page 2"), find("modern"));
  }

  @Test
  void anIndexThatFollowedEveryChangeIsAsANewOne() throws IOException {
    report();
    edit("vocabulary/ring.json", "\"angular ring\"", "\"angular ring\", \"razorlike ring\"");
    report();
    edit("vocabulary/homonyms.json", "\"word\": \"collar\"", "\"word\": \"string rim\"");
    report();
    edit("vocabulary/ring.json", "\"razorlike ring\"", "\"soot\"");
    report();
    Path elsewhere = folder.resolve("copy/library");
    try (Stream<Path> files = Files.walk(library)) {
      for (Path file : files.toList()) {
        Path to = elsewhere.resolve(library.relativize(file).toString());
        Files.createDirectories(to.getParent());
        Files.copy(file, to, StandardCopyOption.REPLACE_EXISTING);
      }
    }
    try (Shelf followed = open(library);
        Shelf fresh = open(elsewhere)) {
      assertEquals(0, followed.upToDate().opened().size());
      int named = 0;
      for (var concept : fresh.thesaurus().concepts()) {
        List<String> expected = lines(pagesNaming(fresh, List.of(concept.id())));
        assertEquals(expected, lines(pagesNaming(followed, List.of(concept.id()))), concept.id());
        named += expected.size();
      }
      assertTrue(named > 10);
      assertTrue(naming("ring-bladed").stream().anyMatch(l -> l.contains("soot")));
    }
  }

  @Test
  void aTextThatCannotBeReadIsLeftOutAndSaidSo() throws IOException {
    Files.writeString(pages("quenby-1926"), "{ \"source\": ");
    try (Shelf shelf = open(library)) {
      assertEquals(1, shelf.shortfalls().size());
      assertEquals(1, pagesNaming(shelf, List.of("ring-bladed")).size());
    }
  }

  @Test
  void theTextOfAPageIsKeptAsItWasRead() {
    try (Shelf shelf = open(library)) {
      SourcedPage page = pagesNaming(shelf, List.of("string-rim")).get(0);
      assertEquals(
          "The annulatecl rings and the ſtring rim; blown glafs.", shelf.read(page).text());
      assertEquals(new AttachedTexts(2, 7, 1), shelf.attachedTexts());
    }
  }
}
