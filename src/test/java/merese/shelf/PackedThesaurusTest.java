package merese.shelf;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import merese.model.Concept;
import merese.model.Facet;
import merese.model.Homonym;
import merese.search.IndexDamagedException;
import merese.store.LibraryFolder;
import merese.store.PlainFiles;
import merese.store.VocabularyFile;
import merese.testing.DemoLibrary;
import merese.testing.SmallLibrary;
import merese.testing.UnionList;
import merese.vocabulary.Thesaurus;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What is unpacked as it is asked for answers as what was read whole. */
class PackedThesaurusTest {
  private static final Facet RINGS = new Facet("ring", Optional.of("ring"), List.of("neck"));

  private final List<Facet> facets = new ArrayList<>();
  private final List<Concept> concepts = new ArrayList<>();
  private final List<Homonym> register = new ArrayList<>();
  private final Set<String> undefined = new TreeSet<>();

  private Thesaurus whole() {
    List<Concept> all = new ArrayList<>(concepts);
    undefined.forEach(id -> all.add(VocabularyRecords.standIn(id)));
    return Thesaurus.of(facets, all, register);
  }

  /** A new one, of which nothing has been asked. */
  private Thesaurus packed() {
    return PackedThesaurus.unpack(packedBytes(), undefined);
  }

  private byte[] packedBytes() {
    return PackedThesaurus.pack(Thesaurus.of(facets, concepts, register));
  }

  private void addStarter() {
    for (VocabularyFile file : PlainFiles.starter()) {
      facets.add(file.facet());
      concepts.addAll(file.concepts());
    }
    register.add(new Homonym("ring", List.of("ring-bladed", "no-such"), Optional.of("a remark")));
  }

  private static void assertAnswerAlike(Thesaurus whole, Thesaurus packed) {
    assertEquals(List.copyOf(whole.facets()), List.copyOf(packed.facets()));
    assertEquals(whole.register(), packed.register());
    for (String id : named(whole)) {
      assertAlikeOf(id, whole, packed);
    }
    assertEquals(List.copyOf(whole.concepts()), List.copyOf(packed.concepts()));
    for (Concept concept : whole.concepts()) {
      assertAlikeInWords(concept, whole, packed);
    }
  }

  /** All ids that concepts have, or name, and one that nobody does. */
  private static Set<String> named(Thesaurus whole) {
    Set<String> ids = new LinkedHashSet<>(Set.of("no-such-concept"));
    for (Concept concept : whole.concepts()) {
      ids.add(concept.id());
      ids.addAll(concept.broader());
      concept.lookAlikes().forEach(other -> ids.add(other.concept()));
    }
    return ids;
  }

  private static void assertAlikeOf(String id, Thesaurus whole, Thesaurus packed) {
    assertEquals(List.copyOf(whole.broader(id)), List.copyOf(packed.broader(id)), id);
    assertEquals(List.copyOf(whole.narrower(id)), List.copyOf(packed.narrower(id)), id);
    assertEquals(whole.children(id), packed.children(id), id);
    assertEquals(whole.lookAlikes(id), packed.lookAlikes(id), id);
    assertEquals(whole.label(id), packed.label(id), id);
    assertEquals(List.copyOf(whole.wordsFor(id)), List.copyOf(packed.wordsFor(id)), id);
    assertEquals(whole.concept(id), packed.concept(id), id);
    for (String other : whole.broader(id)) {
      assertTrue(packed.covers(other, id));
      assertEquals(whole.covers(id, other), packed.covers(id, other));
      assertEquals(whole.areRelatedByHierarchy(id, other), packed.areRelatedByHierarchy(id, other));
    }
  }

  private static void assertAlikeInWords(Concept concept, Thesaurus whole, Thesaurus packed) {
    for (String word : whole.wordsFor(concept.id())) {
      String bare = word.substring(0, Math.max(1, word.lastIndexOf(' ')));
      for (String phrase : List.of(word, bare, "two " + word + "s below")) {
        assertEquals(whole.forms(phrase), packed.forms(phrase));
        assertEquals(whole.possibleMeanings(phrase), packed.possibleMeanings(phrase));
        assertEquals(whole.match(phrase, Optional.empty()), packed.match(phrase, Optional.empty()));
        Optional<String> facet = Optional.of(concept.facet());
        assertEquals(whole.match(phrase, facet), packed.match(phrase, facet));
      }
    }
    String slip = concept.preferred().text() + "x";
    assertEquals(whole.nearTerms(slip, 3), packed.nearTerms(slip, 3));
  }

  @Nested
  class AnswersAsTheWhole {
    @Test
    void ofTheStarter() {
      addStarter();
      assertAnswerAlike(whole(), packed());
    }

    @Test
    void ofEachConceptAskedFirst() {
      addStarter();
      Thesaurus whole = whole();
      byte[] bytes = packedBytes();
      for (String id : named(whole)) {
        assertAlikeOf(id, whole, PackedThesaurus.unpack(bytes, undefined));
      }
    }

    @Test
    void ofAGrownVocabulary() {
      for (VocabularyFile file : PlainFiles.starter()) {
        facets.add(file.facet());
      }
      concepts.addAll(UnionList.of(20_000, 100_000).concepts());
      facets.add(new Facet(concepts.get(0).facet(), Optional.empty(), List.of()));
      assertTrue(concepts.size() > 300);
      assertAnswerAlike(whole(), packed());
    }

    @Test
    void ofOneThatIsUnsound() {
      facets.addAll(List.of(RINGS, new Facet("ring", Optional.of("rim"), List.of())));
      concepts.add(concept("a", List.of("b", "gone", "b"), "c", "c", "a", "nowhere", "absent"));
      concepts.add(concept("b", List.of("a"), "absent"));
      concepts.add(concept("c", List.of("absent", "b"), "a"));
      concepts.add(concept("a", List.of("c"), "b"));
      concepts.add(concept("d", List.of("d", "gone")));
      undefined.addAll(List.of("absent", "c", "alone"));
      assertEquals(6, whole().concepts().size());
      assertFalse(whole().lookAlikes("absent").isEmpty());
      assertAnswerAlike(whole(), packed());
    }

    @Test
    void ofNone() {
      assertAnswerAlike(whole(), packed());
      undefined.add("alone");
      assertAnswerAlike(whole(), packed());
    }
  }

  private static Concept concept(String id, List<String> broader, String... lookAlikes) {
    List<Concept.LookAlike> others = new ArrayList<>();
    for (String other : lookAlikes) {
      others.add(new Concept.LookAlike(other, Optional.of("test " + others.size())));
    }
    return new Concept(
        id,
        RINGS.id(),
        Concept.Label.of(id + " ring"),
        List.of(Concept.Label.of(id + " neck ring")),
        List.of(),
        "A ring.",
        broader,
        others,
        Optional.empty(),
        Concept.Status.COMMON,
        List.of());
  }

  @Test
  void theIndexOfALibraryHoldsTheWholeVocabulary(@TempDir Path folder) throws IOException {
    LibraryFolder library = DemoLibrary.copyTo(folder);
    LibraryReading reading = new LibraryReading(Clock.systemUTC());
    VocabularyReading read =
        VocabularyReading.of(library, reading, library.scan(), VocabularyRecords.none());
    try (Shelf shelf = Shelf.open(library, Watcher.NONE)) {
      assertAnswerAlike(read.thesaurus(), shelf.thesaurus());
    }
  }

  @Test
  void followsAChangeOfOneFile(@TempDir Path folder) throws IOException {
    LibraryFolder library = new SmallLibrary().write(folder);
    try (Shelf shelf = Shelf.open(library, Watcher.NONE)) {
      assertEquals("ring", shelf.thesaurus().concept("ring-bladed").orElseThrow().facet());
    }
    Files.delete(library.resolve("vocabulary/ring.json"));
    try (Shelf shelf = Shelf.open(library, Watcher.NONE)) {
      assertEquals("undefined", shelf.thesaurus().concept("ring-bladed").orElseThrow().facet());
    }
  }

  @Test
  void bytesThatAreCutAreADamagedIndex() {
    addStarter();
    byte[] bytes = packedBytes();
    for (int length : new int[] {0, 11, 400, bytes.length - 1}) {
      byte[] cut = Arrays.copyOf(bytes, length);
      assertThrows(
          IndexDamagedException.class,
          () -> PackedThesaurus.unpack(cut, undefined).concepts().size());
    }
  }
}
