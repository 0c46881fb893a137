package merese.change;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Stream;
import merese.model.Check;
import merese.model.Copy;
import merese.model.Edition;
import merese.model.Edition.Part;
import merese.model.Note;
import merese.model.Place;
import merese.model.Work;
import merese.store.LibraryFile;
import merese.store.LibraryFolder;
import net.jqwik.api.ForAll;
import net.jqwik.api.Label;
import net.jqwik.api.Property;
import net.jqwik.api.ShrinkingMode;
import net.jqwik.api.lifecycle.AfterTry;
import net.jqwik.api.lifecycle.BeforeTry;

/** What holds of every merge and split, over generated libraries. */
@Label("Over generated libraries")
class MergePropertiesTest {
  private Path dir;

  @BeforeTry
  void makeAFolder() throws IOException {
    dir = Files.createTempDirectory("merges");
  }

  @AfterTry
  void deleteIt() throws IOException {
    try (Stream<Path> all = Files.walk(dir)) {
      for (Path path : all.sorted(Comparator.reverseOrder()).toList()) {
        Files.delete(path);
      }
    }
  }

  private LibraryFolder library(long seed) {
    LibraryFolder library = GeneratedLibrary.of(seed).write(dir);
    assertEquals(0, LibraryCheck.of(library).errors());
    return library;
  }

  private static List<Work> works(LibraryFolder library) {
    List<Work> works = new ArrayList<>();
    for (LibraryFile file : library.scan()) {
      if (file.kind() == LibraryFile.Kind.WORK) {
        works.add(library.readWork(file.path()).value());
      }
    }
    return works;
  }

  private static Map<String, Edition> editions(LibraryFolder library) {
    Map<String, Edition> editions = new TreeMap<>();
    works(library)
        .forEach(work -> work.editions().forEach(e -> editions.put(e.key(), untitled(e))));
    return editions;
  }

  private static Edition untitled(Edition edition) {
    return edition.withImprint(edition.imprint().withTitle(Optional.empty()));
  }

  /** The title that each edition is cited under. */
  private static Map<String, String> titles(LibraryFolder library) {
    Map<String, String> titles = new TreeMap<>();
    works(library)
        .forEach(
            work -> work.editions().forEach(e -> titles.put(e.key(), work.withOnly(e).title())));
    return titles;
  }

  @Property(tries = 20, shrinking = ShrinkingMode.OFF, seed = "1")
  void aMergeOfWorksLeavesEveryEditionAndASplitGivesThemBack(@ForAll long seed) {
    LibraryFolder library = library(seed);
    List<Work> before = works(library);
    Map<String, Edition> editions = editions(library);
    Map<String, String> titles = titles(library);
    List<String> others = before.stream().skip(1).limit(2).map(Work::id).toList();
    Merge.apply(library, new MergeRequest("w0", others, false));
    assertEquals(editions, editions(library));
    assertEquals(titles, titles(library));
    assertEquals(before.size() - others.size(), works(library).size());
    assertEquals(0, LibraryCheck.of(library).errors());
    List<String> keys = before.get(1).editions().stream().map(Edition::key).toList();
    Split.apply(
        library, new SplitRequest(keys, Optional.of(before.get(1).title()), Optional.of("w1")));
    assertEquals(editions, editions(library));
    Work again = library.findWork("w1").orElseThrow().value();
    assertEquals(before.get(1).editions(), again.editions());
    assertEquals(titles, titles(library));
    assertEquals(0, LibraryCheck.of(library).errors());
  }

  @Property(tries = 30, shrinking = ShrinkingMode.OFF, seed = "1")
  void oneEditionOfTwoHasAllOfBoth(@ForAll long seed) {
    LibraryFolder library = library(seed);
    Map<String, Edition> before = editions(library);
    List<String> keys = List.copyOf(before.keySet());
    String keep = keys.get(0);
    String goes = keys.get(keys.size() - 1);
    List<String> told = told(before);
    try {
      Merge.apply(library, new MergeRequest(keep, List.of(goes), true));
    } catch (ChangeRefusedException e) {
      assertTrue(e.getMessage().contains("by its lineage"), e.getMessage());
      assertEquals(before, editions(library));
      return;
    }
    Map<String, Edition> after = editions(library);
    assertEquals(told, told(after));
    assertEquals(before.size() - 1, after.size());
    assertTrue(after.get(keep).received().containsAll(before.get(goes).received()));
    assertEquals(0, LibraryCheck.of(library).errors());
    assertEquals(pieces(before, keep) + pieces(before, goes), pieces(after, keep));
  }

  /** Every note, copy and check with what it refers to in words, and none of the ids. */
  private static List<String> told(Map<String, Edition> editions) {
    List<String> told = new ArrayList<>();
    for (Edition edition : editions.values()) {
      Map<String, String> parts = new HashMap<>();
      for (Part part : edition.parts()) {
        parts.put(part.id(), part.title());
      }
      Map<String, Copy> copies = new HashMap<>();
      for (Copy copy : edition.copies()) {
        copies.put(copy.id(), withoutId(copy));
        told.add("copy " + withoutId(copy));
      }
      for (Note note : edition.notes()) {
        told.add("note " + withoutIds(note) + " in " + note.part().map(parts::get));
      }
      for (Check check : edition.checks()) {
        told.add("check by " + check.by() + " of " + check.copy().map(copies::get));
      }
    }
    told.sort(null);
    return told;
  }

  private static Copy withoutId(Copy copy) {
    return new Copy(
        "c", copy.holder(), copy.shelfMark(), copy.lentTo(), copy.missing(), copy.remark());
  }

  private static List<Object> withoutIds(Note note) {
    List<Object> places = new ArrayList<>();
    for (Place place : note.places()) {
      places.add(List.of(place.locator(), place.stance(), place.piece().isPresent()));
    }
    return List.of(note.namings(), places, note.quotation(), note.reading());
  }

  private static int pieces(Map<String, Edition> editions, String key) {
    return (int)
        editions.get(key).notes().stream()
            .flatMap(note -> note.places().stream())
            .flatMap(place -> place.piece().stream())
            .distinct()
            .count();
  }
}
