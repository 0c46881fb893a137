package merese.change.vocabulary;

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
import merese.change.ChangeRefusedException;
import merese.change.Effect.Sort;
import merese.change.LibraryCheck;
import merese.model.Concept;
import merese.model.KeyedKind;
import merese.model.Mine;
import merese.store.LibraryFolder;
import merese.testing.DemoLibrary;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * Over the demo library. The conditions by number (S13, S27, S46) are those of the SKOS Reference
 * (W3C Recommendation of 18 August 2009); what follows a concept is by the project's domain.md 0;
 * the rest is common practice, no source.
 */
class ConceptChangeTest {
  @TempDir Path home;
  private LibraryFolder library;

  @BeforeEach
  void copyTheDemo() throws IOException {
    library = DemoLibrary.copyTo(home);
  }

  private VocabularyChange apply(ConceptRequest request) {
    VocabularyChange change = ConceptChange.apply(library, request);
    LibraryCheck check = LibraryCheck.of(library);
    assertEquals(List.of(), check.problems());
    return change;
  }

  private String refused(ConceptRequest request) throws IOException {
    long before = occurrences("\"");
    String message =
        assertThrows(ChangeRefusedException.class, () -> ConceptChange.apply(library, request))
            .getMessage();
    assertEquals(before, occurrences("\""));
    return message;
  }

  private Concept concept(String id) {
    return WholeVocabulary.read(library).concept(id);
  }

  /** How often a text stands in the library's files, by nothing but their bytes. */
  private long occurrences(String text) throws IOException {
    long found = 0;
    try (Stream<Path> files = Files.walk(home.resolve("library"))) {
      for (Path file : files.filter(ConceptChangeTest::isOfTheLibrary).toList()) {
        String all = Files.readString(file);
        for (int at = all.indexOf(text); at >= 0; at = all.indexOf(text, at + 1)) {
          found++;
        }
      }
    }
    return found;
  }

  /** What was is kept in the history. */
  private static boolean isOfTheLibrary(Path file) {
    return file.toString().endsWith(".json") && !file.toString().contains(".history");
  }

  private static boolean says(VocabularyChange change, Sort sort, String words) {
    return change.effects().stream()
        .anyMatch(effect -> effect.sort() == sort && effect.what().contains(words));
  }

  private static ConceptRequest.Rename toId(String from, String to) {
    return new ConceptRequest.Rename(
        from, Optional.empty(), Optional.empty(), Optional.of(to), false);
  }

  @Test
  void whereAnIdChangesEveryReferenceOfTheFilesFollows() throws IOException {
    for (String id : List.of("ring-bladed", "ring-annulated", "ring-spiral-trail", "neck-ring")) {
      long before = occurrences("\"" + id + "\"");
      assertTrue(before > 5, id + " " + before);
      VocabularyChange shown = ConceptChange.preview(library, toId(id, "x-" + id));
      assertEquals(before, occurrences("\"" + id + "\""), "a preview changes nothing");
      VocabularyChange done = apply(toId(id, "x-" + id));
      assertEquals(shown, done);
      assertEquals(0, occurrences("\"" + id + "\""));
      assertEquals(before, occurrences("\"x-" + id + "\""));
    }
  }

  @Test
  void anIdInSomebodysWordsIsPointedOut() throws IOException {
    Path mine = home.resolve("library/mine.json");
    String words = Files.readString(mine);
    Files.writeString(mine, words.replace("necklet\",", "necklet\", \"words2\": \"ring-wavy?\","));
    assertTrue(
        says(
            ConceptChange.preview(library, toId("ring-wavy", "ring-waved")),
            Sort.LOOK_AT,
            "mine.json speaks of ring-wavy"));
    assertFalse(
        says(
            ConceptChange.preview(library, toId("trail", "thread")),
            Sort.LOOK_AT,
            "speaks of trail"),
        "a word of the trade is no mention of a concept");
  }

  @Test
  void theOldLabelStaysAsAnAlternativeUnlessToldOtherwise() {
    VocabularyChange change =
        apply(
            new ConceptRequest.Rename(
                "ring-bladed",
                Optional.of("sharp ring"),
                Optional.empty(),
                Optional.empty(),
                false));
    Concept renamed = concept("ring-bladed");
    assertEquals("sharp ring", renamed.preferred().text());
    assertEquals("bladed ring", renamed.alternatives().get(0).text());
    assertTrue(
        renamed.alternatives().stream().noneMatch(l -> l.text().equals("sharp ring")), "S13");
    assertTrue(says(change, Sort.LOOK_AT, "“bladed ring” heads the answers still"));
    apply(
        new ConceptRequest.Rename(
            "ring-bladed", Optional.of("blade ring"), Optional.empty(), Optional.empty(), true));
    assertTrue(
        concept("ring-bladed").alternatives().stream()
            .noneMatch(l -> l.text().equals("sharp ring")));
  }

  @Test
  void aMergeBringsEverythingOver() throws IOException {
    long both =
        occurrences("\"concept\": \"ring-annulated\"")
            + occurrences("\"concept\": \"ring-set-three\"");
    VocabularyChange change = apply(new ConceptRequest.Merge("ring-annulated", "ring-set-three"));
    assertEquals(0, occurrences("\"ring-annulated\""));
    Concept kept = concept("ring-set-three");
    assertTrue(kept.alternatives().stream().anyMatch(l -> l.text().equals("annulated ring")));
    assertTrue(
        library.readMine().value().preferences().stream()
            .anyMatch(
                p -> p.concept().equals("ring-set-three") && p.label().equals("annulated ring")));
    assertTrue(says(change, Sort.STAYS, "definition: "), "what differs is said");
    assertTrue(says(change, Sort.DROPPED, "“triple ring”: it has one meaning now"));
    assertTrue(both > occurrences("\"concept\": \"ring-set-three\""), "the key has one line of it");
    assertTrue(
        library.readHomonyms().value().stream().noneMatch(h -> h.word().equals("triple ring")));
  }

  @Test
  void theKeyLeavesOpenWhatOnlyOneOfTwoStated() {
    List<KeyedKind> kinds = library.readCharacters().value().kinds();
    KeyedKind one = kind(kinds, "ring-annulated");
    KeyedKind other = kind(kinds, "ring-set-three");
    apply(new ConceptRequest.Merge("ring-annulated", "ring-set-three"));
    KeyedKind merged = kind(library.readCharacters().value().kinds(), "ring-set-three");
    for (KeyedKind.Allowed allowed : merged.allows()) {
      List<String> values = one.of(allowed.character()).orElseThrow().values();
      assertTrue(allowed.values().containsAll(values), allowed.written());
      assertTrue(
          allowed.values().containsAll(other.of(allowed.character()).orElseThrow().values()));
    }
    assertTrue(merged.allows().size() < Math.max(one.allows().size(), other.allows().size()) + 1);
  }

  private static KeyedKind kind(List<KeyedKind> kinds, String concept) {
    return kinds.stream().filter(k -> k.concept().equals(concept)).findFirst().orElseThrow();
  }

  @Test
  void ofTwoPreferencesThatOfTheConceptThatStaysIsKept() {
    apply(
        new ConceptRequest.Move(
            "ring-bladed",
            Optional.of("ring-false"),
            Optional.empty(),
            false,
            false,
            Optional.empty(),
            Optional.empty()));
    VocabularyChange change = apply(new ConceptRequest.Merge("ring-feathered", "ring-annulated"));
    List<Mine.Preference> of =
        library.readMine().value().preferences().stream()
            .filter(p -> p.concept().equals("ring-annulated"))
            .toList();
    assertEquals(List.of("annulated ring"), of.stream().map(Mine.Preference::label).toList());
    assertTrue(of.get(0).setAside().stream().anyMatch(a -> a.label().equals("slant-ribbed ring")));
    assertTrue(says(change, Sort.STAYS, "that for “feathered ring” (first-learnt) goes"));
  }

  @Test
  void whatStandsBetweenTwoKeepsThemApart() throws IOException {
    String message = refused(new ConceptRequest.Merge("neck-treatment", "ring-bladed"));
    assertTrue(message.contains("stands between neck-treatment and ring-bladed"), message);
    message = refused(new ConceptRequest.Merge("ring-bladed", "neck-ring"));
    assertTrue(message.contains("ring-applied stands between"), message);
  }

  @Test
  void aSplitTakesWhatIsNamedAndListsWhatStays() throws IOException {
    long before = occurrences("\"ring-cut\"");
    VocabularyChange change =
        apply(
            new ConceptRequest.Split(
                "ring-cut",
                "ring-notched",
                "wheel-cut ring",
                Optional.empty(),
                Optional.of("Ring with notches."),
                List.of(),
                List.of(),
                List.of("cut ring"),
                List.of(),
                List.of("tressick-1954/n6"),
                Optional.of("has no notches")));
    assertEquals(List.of(), change.staying());
    assertTrue(says(change, Sort.FOLLOWS, "3 notes in 3 sources"), change.effects().toString());
    assertEquals(before - 3 + 1, occurrences("\"ring-cut\""), "and one look-alike");
    assertEquals(concept("ring-cut").broader(), concept("ring-notched").broader());
    VocabularyChange back = apply(new ConceptRequest.Merge("ring-notched", "ring-cut"));
    assertTrue(says(back, Sort.FOLLOWS, "3 notes in 3 sources"), back.effects().toString());
  }

  @Test
  void aLabelThatIsNamedForTheNewConceptLeavesTheOld() {
    VocabularyChange change =
        apply(
            new ConceptRequest.Split(
                "ring-bladed",
                "ring-angular",
                "angular ring",
                Optional.empty(),
                Optional.of("Ring with angles."),
                List.of(),
                List.of("triangular ring"),
                List.of(),
                List.of("norrish-1971"),
                List.of(),
                Optional.empty()));
    assertTrue(says(change, Sort.STAYS, "your preference for “bladed ring”; 2 lines of your"));
    List<String> left =
        concept("ring-bladed").alternatives().stream().map(Concept.Label::text).toList();
    assertFalse(left.contains("angular ring") || left.contains("triangular ring"), left.toString());
    assertEquals("triangular ring", concept("ring-angular").alternatives().get(0).text());
  }

  @Test
  void aSplitRefusesANoteOrATermThatIsNotThere() throws IOException {
    for (List<List<String>> asked :
        List.of(
            List.of(List.of("no such ring"), List.<String>of(), List.<String>of()),
            List.of(List.<String>of(), List.of("norrish-1917"), List.<String>of()),
            List.of(List.<String>of(), List.<String>of(), List.of("norrish-1971/n999")))) {
      String message =
          refused(
              new ConceptRequest.Split(
                  "ring-bladed",
                  "ring-x",
                  "x ring",
                  Optional.empty(),
                  Optional.of("X."),
                  List.of(),
                  List.of(),
                  asked.get(0),
                  asked.get(1),
                  asked.get(2),
                  Optional.empty()));
      assertTrue(message.startsWith("there is no ") || message.startsWith("no note "), message);
    }
  }

  private static ConceptRequest.Move below(String concept, String broader, boolean also) {
    return new ConceptRequest.Move(
        concept,
        Optional.of(broader),
        Optional.empty(),
        also,
        false,
        Optional.empty(),
        Optional.empty());
  }

  @Test
  void nothingIsPutBelowItself() throws IOException {
    for (String lower : List.of("neck-ring", "ring-applied", "ring-bladed")) {
      String message = refused(below("neck-ring", lower, true));
      assertTrue(message.contains("a circle of broader concepts"), message);
    }
  }

  @Test
  void ofSeveralBroaderConceptsOneIsNamedOrAllStay() throws IOException {
    String message = refused(below("ring-step-cut", "neck-treatment", false));
    assertTrue(message.contains("below ring-false and cut-step; say which"), message);
    apply(below("ring-step-cut", "applied", true));
    assertEquals(List.of("ring-false", "cut-step", "applied"), concept("ring-step-cut").broader());
    apply(
        new ConceptRequest.Move(
            "ring-step-cut",
            Optional.of("trail"),
            Optional.of("applied"),
            false,
            false,
            Optional.empty(),
            Optional.empty()));
    assertEquals(List.of("ring-false", "cut-step", "trail"), concept("ring-step-cut").broader());
  }

  @Test
  void aFacetTakesWhatIsNarrowerAndTheUsersOwnKeysGoWithIt() throws IOException {
    Path stopper = home.resolve("library/vocabulary/stopper.json");
    String words = Files.readString(stopper);
    Files.writeString(
        stopper,
        words.replace("\"id\": \"stopper-disc\",", "\"id\": \"stopper-disc\", \"mine\": \"x1\","));
    ConceptChange.apply(
        library,
        new ConceptRequest.Move(
            "stopper-disc",
            Optional.empty(),
            Optional.empty(),
            false,
            false,
            Optional.of("later"),
            Optional.empty()));
    assertEquals("later", concept("stopper-disc").facet());
    assertEquals("later", concept("stopper-target").facet(), "it is narrower");
    assertTrue(Files.readString(home.resolve("library/vocabulary/later.json")).contains("\"x1\""));
    assertEquals(0, LibraryCheck.of(library).errors());
  }

  @Test
  void lookAlikesAreNeverOfOneLine() throws IOException {
    String message =
        refused(new ConceptRequest.Mistaken("ring-bladed", "neck-ring", Optional.empty(), false));
    assertTrue(message.contains("S27 of the SKOS Reference"), message);
    message = refused(below("ring-step-cut", "ring-bladed", true));
    assertTrue(message.contains("S27 of the SKOS Reference"), message);
  }

  @Test
  void aPairIsStatedOnceAndTakenAwayFromEitherSide() {
    apply(
        new ConceptRequest.Mistaken(
            "ring-step-cut", "ring-bladed", Optional.of("left standing"), false));
    assertTrue(
        concept("ring-bladed").lookAlikes().stream()
            .noneMatch(l -> l.concept().equals("ring-step-cut")));
    VocabularyChange gone =
        apply(new ConceptRequest.Mistaken("ring-bladed", "ring-step-cut", Optional.empty(), true));
    assertTrue(says(gone, Sort.DROPPED, "(left standing)"), gone.effects().toString());
  }

  @Test
  void aLabelIsPreferredAlternativeOrHiddenButNotTwoOfThem() throws IOException {
    String message =
        refused(
            new ConceptRequest.Describe(
                "ring-bladed",
                Optional.empty(),
                Optional.empty(),
                List.of(),
                List.of("sharp ring"),
                List.of()));
    assertTrue(message.contains("S13 of the SKOS Reference"), message);
  }

  @Test
  void whatIsAnExactMatchByWayOfAnotherMayNotAlsoBeABroadOne() throws IOException {
    Path ring = home.resolve("library/vocabulary/ring.json");
    String words = Files.readString(ring);
    Files.writeString(
        ring,
        words
            .replace(
                "\"id\": \"ring-wavy\",",
                "\"id\": \"ring-wavy\", \"matches\": [{\"kind\": \"exact-match\", \"uri\":"
                    + " \"http://a.example/2\"}],")
            .replace(
                "\"id\": \"ring-square\",",
                "\"id\": \"ring-square\", \"matches\": [{\"kind\": \"exact-match\", \"uri\":"
                    + " \"http://a.example/1\"}, {\"kind\": \"exact-match\", \"uri\":"
                    + " \"http://a.example/2\"}],")
            .replace(
                "\"id\": \"ring-plain\",",
                "\"id\": \"ring-plain\", \"matches\": [{\"kind\": \"broad-match\", \"uri\":"
                    + " \"http://a.example/1\"}],"));
    String message = refused(new ConceptRequest.Merge("ring-wavy", "ring-plain"));
    assertTrue(message.contains("S46 of the SKOS Reference"), message);
  }

  @Test
  void aSharedLabelIsMarkedOnBothAndInTheRegister() {
    VocabularyChange change =
        apply(
            new ConceptRequest.Describe(
                "ring-bladed",
                Optional.empty(),
                Optional.empty(),
                List.of("trail", "collar"),
                List.of(),
                List.of()));
    assertTrue(concept("trail").preferred().elsewhere());
    assertTrue(
        concept("ring-bladed").alternatives().stream()
            .anyMatch(l -> l.text().equals("trail") && l.elsewhere()));
    assertTrue(
        library.readHomonyms().value().stream()
            .anyMatch(h -> h.word().equals("collar") && h.concepts().contains("ring-bladed")));
    assertTrue(says(change, Sort.LOOK_AT, "“trail” also means trail"));
  }

  @Test
  void anIdOrAPreferredLabelIsNotTakenTwice() throws IOException {
    assertTrue(refused(toId("ring-wavy", "ring-bladed")).startsWith("there is a concept"));
    assertTrue(refused(toId("ring-wavy", "Ring Wavy")).contains("cannot be an id"));
    assertTrue(
        refused(
                new ConceptRequest.Rename(
                    "ring-wavy",
                    Optional.of("Bladed ring"),
                    Optional.empty(),
                    Optional.empty(),
                    false))
            .contains("is the preferred label of ring-bladed already"));
  }
}
