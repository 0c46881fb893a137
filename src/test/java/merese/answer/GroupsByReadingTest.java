package merese.answer;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Stream;
import merese.answer.Classifier.InGroup;
import merese.answer.Coverage.Group;
import merese.model.Concept;
import merese.model.Naming.Why;
import merese.model.Place.Medium;
import merese.model.Place.Shows;
import merese.model.Place.Stance;
import merese.model.PlaceTest;
import merese.search.NoteCriterion;
import merese.shelf.NoteSketch;
import merese.shelf.Shelf;
import merese.shelf.Source;
import merese.shelf.Watcher;
import merese.store.LibraryFolder;
import merese.testing.DemoLibrary;
import merese.testing.SmallLibrary;
import merese.testing.SmallLibrary.NoteMaker;
import merese.testing.UnionList;
import merese.vocabulary.Folding;
import merese.vocabulary.LookAlikePair;
import merese.vocabulary.Thesaurus;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * What the index counts without reading is what somebody finds who reads every note of the library
 * and puts it into its group by the rules: R9 for the group, R4 for the order of its sources.
 */
class GroupsByReadingTest {
  private static final List<Group> GROUPS =
      List.of(
          Group.COUNTED,
          Group.HOW_IT_IS_MADE,
          Group.SAYS_NOT_SHOWN,
          Group.NOT_THIS,
          Group.LOOK_ALIKES,
          Group.GENERAL_ONLY,
          Group.MEANING_NOT_STATED);

  @TempDir private Path folder;

  @Test
  void ofTheDemoLibrary() throws IOException {
    try (Shelf shelf = DemoLibrary.open(folder)) {
      assertEquals(Set.copyOf(GROUPS), compared(shelf), "every group is there to be compared");
    }
  }

  @Test
  void ofAUnionList() throws IOException {
    try (Shelf shelf = Shelf.open(UnionList.of(400, 4_000).write(folder), Watcher.NONE)) {
      assertEquals(Set.copyOf(GROUPS), compared(shelf), "every group is there to be compared");
    }
  }

  /** Each opening after a change leaves a segment of the index more, and what it replaces dead. */
  @Test
  void ofAUnionListWhoseWorksChangedOneAfterAnother() throws IOException {
    LibraryFolder library = UnionList.of(200, 2_000).write(folder);
    List<Path> works;
    try (Stream<Path> files = Files.walk(library.resolve("works"))) {
      works = files.filter(Files::isRegularFile).sorted().toList();
    }
    for (int round = 0; round < 4; round++) {
      Shelf.open(library, Watcher.NONE).close();
      for (int i = round; i < works.size(); i += 25) { // too few for the segments to be merged
        String text = Files.readString(works.get(i));
        String changed = text.replaceFirst("\"title\": \"", "\"title\": \"Newer ");
        assertNotEquals(text, changed);
        Files.writeString(works.get(i), changed);
      }
    }
    try (Shelf shelf = Shelf.open(library, Watcher.NONE)) {
      assertEquals(Set.copyOf(GROUPS), compared(shelf), "every group is there to be compared");
    }
  }

  /** Each naming has its own place; every second note pictures what it calls by another word. */
  @Test
  void ofNotesWithTwoNamings() {
    SmallLibrary library = new SmallLibrary();
    for (int i = 0; i < 12; i++) {
      String pictured = i % 2 == 0 ? "bladed ring" : "plain stopper";
      String inWords = i % 2 == 0 ? "plain stopper" : "bladed ring";
      NoteMaker note =
          new NoteMaker()
              .naming("bladed ring", i % 3 == 0 ? "ring-cut" : "ring-incised", Why.TEXT)
              .naming("plain stopper", "stopper", Why.TEXT)
              .place("pl. 3", Stance.PICTURES, Medium.PHOTO, Shows.EXAMPLE, pictured, null)
              .place("p. 4", Stance.NAMES, Medium.TEXT, null, inWords, null);
      library.book("Quenby", 1940 + i, "Neck and Stopper", note);
    }
    try (Shelf shelf = library.open(folder)) {
      assertTrue(compared(shelf).contains(Group.NOT_THIS));
    }
  }

  @Test
  void aNoteIsInTheFirstOfItsGroupsAlone() {
    NoteMaker both =
        new NoteMaker()
            .naming("bladed ring", "ring-bladed", Why.TEXT)
            .naming("neck ring", "neck-ring", Why.TEXT)
            .text("p. 1");
    NoteMaker general = new NoteMaker().naming("neck ring", "neck-ring", Why.TEXT).text("p. 2");
    SmallLibrary library = new SmallLibrary();
    library.book("Quenby", 1949, "Neck and Stopper", both, general);
    try (Shelf shelf = library.open(folder)) {
      Coverage answer = Covers.answer(shelf, CoverageQuestion.ofConcept("ring-bladed"));
      Coverage.Section section = answer.sections().get(0);
      assertEquals(List.of("p. 1"), places(section.group(Group.COUNTED)));
      assertEquals(List.of("p. 2"), places(section.group(Group.GENERAL_ONLY)));
    }
  }

  private static List<String> places(List<Coverage.Entry> entries) {
    List<String> places = new ArrayList<>();
    for (Coverage.Entry entry : entries) {
      for (Coverage.Passage passage : entry.passages()) {
        passage.inWords().forEach(place -> places.add(place.printed()));
      }
    }
    return places;
  }

  /** Returns the groups that had a source. */
  private static Set<Group> compared(Shelf shelf) {
    List<NoteSketch> all = everyNote(shelf);
    Set<Group> met = new TreeSet<>();
    for (Concept concept : shelf.thesaurus().concepts()) {
      String id = concept.id();
      Map<Group, Map<String, Integer>> read = read(shelf, id, all);
      ConceptCoverage coverage = ConceptCoverage.of(shelf, id);
      Set<String> grouped = new TreeSet<>();
      for (Group group : GROUPS) {
        List<String> expected = inOrder(shelf, read.getOrDefault(group, Map.of()));
        assertEquals(Set.copyOf(expected), keys(shelf, coverage, group), id + " " + group);
        for (int most : new int[] {1, 4}) {
          List<String> first = expected.subList(0, Math.min(most, expected.size()));
          assertEquals(Set.copyOf(first), first(shelf, coverage, group, most), id + " " + group);
        }
        grouped.addAll(expected);
        if (!expected.isEmpty()) {
          met.add(group);
        }
      }
      Set<String> counted = new TreeSet<>();
      shelf.sources(coverage.sources()).forEach(source -> counted.add(source.key()));
      counted.removeAll(shelf.ownWork());
      assertTrue(counted.containsAll(grouped), id);
    }
    return met;
  }

  private static List<NoteSketch> everyNote(Shelf shelf) {
    List<NoteCriterion> criteria = new ArrayList<>();
    shelf.sources().forEach(source -> criteria.add(new NoteCriterion.InSource(source.key())));
    return shelf.sketches(shelf.census().having(criteria));
  }

  /** By group: the rank of each source that has a note in it. */
  private static Map<Group, Map<String, Integer>> read(
      Shelf shelf, String concept, List<NoteSketch> all) {
    Thesaurus thesaurus = shelf.thesaurus();
    Set<String> wanted = new LinkedHashSet<>(thesaurus.narrower(concept));
    wanted.add(concept);
    Set<String> lookAlikes = new LinkedHashSet<>();
    for (LookAlikePair pair : thesaurus.lookAlikes(concept)) {
      lookAlikes.add(pair.other().id());
    }
    Set<String> words = new LinkedHashSet<>(thesaurus.wordsFor(concept));
    for (NoteSketch note : all) {
      for (NoteSketch.Name name : note.namings()) {
        if (name.concept().filter(concept::equals).isPresent()
            && name.why().isPresent()
            && name.why().get().name().equals("TEXT")
            && Folding.words(name.printed()).size() > 1) {
          words.add(name.printed());
        }
      }
    }
    Classifier classifier =
        new Classifier(wanted, thesaurus.broader(concept), lookAlikes, new Words(thesaurus, words));
    Map<Group, Map<String, Integer>> ranks = new EnumMap<>(Group.class);
    for (NoteSketch note : all) {
      if (!shelf.ownWork().contains(note.source())) {
        for (InGroup naming : classifier.classify(note.about())) {
          add(concept, wanted, note, naming, ranks);
        }
      }
    }
    return ranks;
  }

  private static void add(
      String concept,
      Set<String> wanted,
      NoteSketch note,
      InGroup naming,
      Map<Group, Map<String, Integer>> ranks) {
    NoteSketch.Name name = naming.name();
    String means = name.concept().orElse("");
    boolean isWanted = wanted.contains(means);
    for (Group group : GROUPS) {
      PlaceTest test = ConceptCoverage.test(group);
      boolean isOfGroup =
          GROUPS.indexOf(group) < 3 ? isWanted && name.passes(test) : naming.group() == group;
      if (isOfGroup && name.passes(test)) {
        int rank = (isWanted && !means.equals(concept) ? 2 : 0) + (name.isPictured(test) ? 0 : 1);
        ranks.computeIfAbsent(group, g -> new TreeMap<>()).merge(note.source(), rank, Math::min);
      }
    }
  }

  private static List<String> inOrder(Shelf shelf, Map<String, Integer> ranks) {
    List<Source> sources = new ArrayList<>();
    ranks.keySet().forEach(key -> sources.add(shelf.source(key)));
    sources.sort(Source.BY_YEAR);
    List<String> keys = new ArrayList<>();
    for (int rank = 0; rank < 4; rank++) {
      for (Source source : sources) {
        if (ranks.get(source.key()) == rank) {
          keys.add(source.key());
        }
      }
    }
    return keys;
  }

  private static Set<String> keys(Shelf shelf, ConceptCoverage coverage, Group group) {
    Set<String> keys = new TreeSet<>();
    shelf.sources(coverage.sources(group)).forEach(source -> keys.add(source.key()));
    keys.removeAll(shelf.ownWork());
    return keys;
  }

  private static Set<String> first(Shelf shelf, ConceptCoverage coverage, Group group, int most) {
    Set<String> keys = new TreeSet<>();
    coverage
        .cut(
            group,
            new Wanted(shelf, CoverageQuestion.Narrowing.NONE).sources(),
            CoverageQuestion.Showing.first(most))
        .notes()
        .forEach(note -> keys.add(note.sourced().source().key()));
    return keys;
  }
}
