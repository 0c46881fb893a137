package merese.testing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.TreeMap;
import java.util.stream.Stream;
import merese.change.LibraryCheck;
import merese.model.Edition;
import merese.model.Facet;
import merese.model.Naming;
import merese.model.Note;
import merese.model.PageLines;
import merese.model.PageText;
import merese.store.LibraryFolder;
import merese.store.PlainFiles;
import merese.vocabulary.NameOnPage;
import merese.vocabulary.NamesOnPages;
import merese.vocabulary.PageReading;
import merese.vocabulary.Thesaurus;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

final class UnionListTest {
  @TempDir Path folder;

  @Test
  void nothingIsWrongInAThousandWorks() throws IOException {
    LibraryFolder library = UnionList.of(1_000, 5_000, 500).write(folder);

    LibraryCheck check = LibraryCheck.of(library);

    assertEquals(0, check.errors(), () -> check.problems().toString());
    assertEquals(1_000, check.holdings().works());
    assertEquals(5_000, check.holdings().notes());
  }

  @Test
  void theSameNumbersGiveTheSameBytes() throws IOException {
    UnionList.of(300, 2_000, 200).write(folder.resolve("once"));
    UnionList.of(300, 2_000, 200).write(folder.resolve("again"));

    Map<String, Integer> once = files(folder.resolve("once"));
    assertTrue(once.size() > 300, () -> once.keySet().toString());
    assertEquals(once, files(folder.resolve("again")));
  }

  /** The words are those of a first run, and hold every machine to it. */
  @Test
  void theWordsAreTheSameOnAnyMachine() {
    assertEquals(
        "sirvendtris banmondwoam loal gairskombreis saistgreis los bind skentimhulk",
        new UnionWords().text(new Random(7), 8));
  }

  @Test
  void aSmallLibraryHasAllItsNotesToo() {
    UnionList list = UnionList.of(3, 10);
    int notes = 0;
    for (int number = 0; number < 3; number++) {
      notes += list.work(number).editions().stream().mapToInt(e -> e.notes().size()).sum();
    }
    assertEquals(10, notes);
  }

  @Test
  void noFileHasMoreThanAThousandPagesAndAllPagesAreThere() {
    UnionList list = UnionList.of(30, 30, 2_400);
    List<PageText> files = new ArrayList<>();
    for (int number = 0; number < list.works(); number++) {
      files.addAll(list.pages(list.work(number), number));
    }

    List<Integer> pages = files.stream().map(file -> file.pages().size()).toList();
    assertEquals(2_400, pages.stream().mapToInt(Integer::intValue).sum());
    assertEquals(List.of(1_000, 1_000, 400), pages);
    assertEquals("p. 1993", files.get(1).map().at(993).orElseThrow().printed());
  }

  /** The words are those of a first run, as above. */
  @Test
  void pagesHaveTheSameWordsOnAnyMachine() {
    UnionList list = UnionList.of(60, 300, 300);
    PageText text = list.pages(list.work(20), 20).get(0);
    assertEquals(
        "kolk grom greith west bind bilktren graith valyim graith lait-",
        text.pages().get(8).lines().get(0));
    assertEquals("1–8 = unnumbered; 9–12 = pp. 1–4", text.map().toString());
  }

  /** What indexing has to mend, find and pass over is there in known shares. */
  @Test
  void everySecondPageNamesAConceptOneInTwentyHasNoTextAndWordsBreakAtLineEnds() {
    UnionList list = UnionList.of(90, 90, 4_000); // too small to have kinds of its own
    List<Facet> facets = new ArrayList<>();
    PlainFiles.starter().forEach(file -> facets.add(file.facet()));
    NamesOnPages names = Thesaurus.of(facets, list.concepts(), List.of()).namesOnPages();
    int pages = 0;
    int empty = 0;
    int naming = 0;
    int broken = 0;
    for (int number = 0; number < list.works(); number++) {
      for (PageText text : list.pages(list.work(number), number)) {
        for (PageLines page : text.pages()) {
          pages++;
          empty += page.isEmpty() ? 1 : 0;
          List<NameOnPage> found = names.of(PageReading.of(page.lines()));
          // "stem" is an invented word too, and a common one
          naming += found.stream().allMatch(n -> n.words().equals("stem")) ? 0 : 1;
          broken += page.lines().stream().anyMatch(line -> line.endsWith("-")) ? 1 : 0;
        }
      }
    }
    assertEquals(4_000, pages);
    assertEquals(0.05, (double) empty / pages, 0.01);
    assertEquals(0.42, (double) naming / pages, 0.03);
    assertTrue(broken > pages / 2, "broken words on " + broken);
  }

  @Test
  void aLargeLibraryIsInSubFoldersAsTheStoreKeepsIt() throws IOException {
    UnionList list = UnionList.of(2_001, 2_001);
    LibraryFolder library = list.write(folder);

    String id = list.work(1_234).id();
    Path file = library.resolve("works").resolve(id.substring(0, 2)).resolve(id + ".json");
    assertTrue(Files.exists(file), file::toString);
    assertEquals(list.work(1_234), library.findWork(id).orElseThrow().value());
  }

  @Test
  void aFewConceptsHaveMostOfTheNotesAndTheFirstTheMost() {
    UnionList list = UnionList.of(500, 20_000);
    Map<String, Integer> named = new HashMap<>();
    int notes = 0;
    for (int number = 0; number < list.works(); number++) {
      for (Edition edition : list.work(number).editions()) {
        for (Note note : edition.notes()) {
          notes++;
          for (Naming naming : note.namings()) {
            naming.concept().ifPresent(c -> named.merge(c, 1, Integer::sum));
          }
        }
      }
    }

    int first = named.get(list.concepts().get(0).id());
    int second = named.get(list.concepts().get(1).id());
    List<Integer> counts = named.values().stream().sorted().toList();
    assertEquals(20_000, notes);
    assertEquals(first, counts.get(counts.size() - 1));
    assertEquals(2.0, (double) first / second, 0.3);
  }

  private static Map<String, Integer> files(Path below) throws IOException {
    Map<String, Integer> files = new TreeMap<>();
    try (Stream<Path> all = Files.walk(below)) {
      for (Path file : all.filter(Files::isRegularFile).toList()) {
        files.put(below.relativize(file).toString(), Arrays.hashCode(Files.readAllBytes(file)));
      }
    }
    return files;
  }
}
