package merese.answer.identify;

import static merese.testing.SmallLibrary.own;
import static merese.testing.SmallLibrary.says;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import merese.answer.Coverage.Entry;
import merese.answer.Coverage.HowToTell;
import merese.answer.Coverage.Passage;
import merese.answer.TermException;
import merese.answer.identify.Identification.Fitting;
import merese.answer.identify.Identification.NotLookedAt;
import merese.answer.identify.Identification.RuledOut;
import merese.model.KeyedKind;
import merese.model.Locator;
import merese.shelf.Shelf;
import merese.shelf.Source;
import merese.shelf.SourcedNote;
import merese.shelf.Watcher;
import merese.store.LibraryFolder;
import merese.testing.Shuffles;
import merese.testing.SmallLibrary;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.api.TestInstance.Lifecycle;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Which look-alikes fit. The tests that tell two kinds apart are those of the thesaurus of the
 * trade's terms (common practice, no source); all names of authors are invented.
 */
@TestInstance(Lifecycle.PER_CLASS)
class IdentifyTest {
  private Shelf shelf;
  private StatedKey stated;

  @BeforeAll
  void open(@TempDir Path folder) throws IOException {
    shelf = new SmallLibrary().open(folder);
    stated = StatedKey.read();
  }

  @AfterAll
  void close() {
    shelf.close();
  }

  private Identification ask(String... words) {
    return Identify.answer(shelf, IdentifyQuestion.of(words));
  }

  private static Set<String> staying(Identification answer) {
    Set<String> ids = new LinkedHashSet<>();
    answer.fits().forEach(f -> ids.add(f.concept().id()));
    answer.open().forEach(f -> ids.add(f.concept().id()));
    return ids;
  }

  private static Set<String> ruledOut(Identification answer) {
    Set<String> ids = new LinkedHashSet<>();
    answer.ruledOut().forEach(r -> ids.add(r.concept().id()));
    return ids;
  }

  /** Each row: what stays, what goes, and the test of the thesaurus as an observation. */
  @ParameterizedTest
  @CsvSource({
    "ring-applied,         ring-incised,         join=felt",
    "ring-applied,         ring-blown,           join=felt",
    "ring-applied,         ring-blown,           bore=smooth",
    "ring-blown,           ring-applied,         bore=hollowed",
    "ring-blown,           ring-applied,         seam=crosses",
    "ring-plain,           ring-cushion-cut,     join=felt",
    "ring-cushion-cut,     ring-plain,           surface=ground",
    "ring-bladed,          ring-step-cut,        ridges=1",
    "ring-step-cut,        ring-bladed,          ridges=7",
    "ring-step-cut,        ring-bladed,          surface=ground",
    "ring-bladed,          knop-bladed,          place=neck",
    "ring-annulated,       ring-set-three,       between=band",
    "ring-set-three,       ring-annulated,       between=bare",
    "ring-split,           ring-set-two,         between=band",
    "ring-set-two,         ring-split,           between=bare",
    "ring-set-two,         ring-double,          between=bare",
    "ring-milled,          ring-split-ribbed,    groove=no",
    "ring-split-ribbed,    ring-milled,          groove=one",
    "ring-double,          ring-vertical,        ribs=plain",
    "ring-vertical,        ring-double,          ribs=ribs",
    "ring-feathered,       ring-double,          ribs=ribs",
    "ring-feathered,       ring-double,          slant=slanting",
    "ring-square,          ring-facet-cut,       surface=natural",
    "ring-facet-cut,       ring-square,          surface=ground",
    "ring-vertical,        ring-milled,          groove=one",
    "ring-milled,          ring-facet-cut,       rib-edges=soft",
    "ring-facet-cut,       ring-milled,          rib-edges=sharp",
    "ring-vertical,        ring-feathered,       slant=upright",
    "ring-feathered,       ring-vertical,        slant=slanting",
    "ring-cut,             ring-incised,         join=through",
    "ring-cut,             ring-incised,         proud=proud",
    "ring-incised,         ring-cut,             proud=level",
    "ring-wavy,            ring-milled,          wave=waving",
    "ring-milled,          ring-wavy,            wave=straight",
    "ring-spiral-trail,    ring-set-three,       ends=open",
    "ring-set-three,       ring-spiral-trail,    ends=closed",
    "string-rim,           ring-plain,           place=mouth",
    "ring-plain,           string-rim,           place=neck",
    "ring-square,          ring-panel-bands,     proud=proud",
    "ring-panel-bands,     ring-square,          proud=level",
    "ring-panel-bands,     ring-cushion-cut,     surface=natural",
    "ring-facet-cut,       ring-hatched-bands,   join=seen",
    "neck-cut-between-rings, ring-annulated,     between=cut",
    "neck-cut-between-rings, ring-panel-bands,   join=felt",
    "merese,               knop-bladed,          bulk=wafer",
    "ring-milled,          trail-milled,         place=neck",
  })
  void theTestsOfTheThesaurusTellTheirPairsApart(String stays, String goes, String observation) {
    Identification answer = ask(observation);
    assertTrue(staying(answer).contains(stays), () -> observation + " rules out " + stays);
    assertTrue(ruledOut(answer).contains(goes), () -> observation + " leaves " + goes);
  }

  /** "A join that is not seen rules nothing out" (common practice, no source). */
  @Test
  void whatWasLookedForAndNotFoundRulesNothingOutAndCountsAsLookedAt() {
    for (String character : stated.characters.keySet()) {
      Identification answer = ask(character + "=not-found");
      assertEquals(List.of(), answer.ruledOut(), character);
      assertTrue(answer.notLookedAt().stream().noneMatch(n -> n.id().equals(character)));
      assertTrue(ask().notLookedAt().stream().anyMatch(n -> n.id().equals(character)));
    }
    assertEquals(ruledOut(ask("bore=hollowed")), ruledOut(ask("bore=hollowed", "join=not-found")));
  }

  @Test
  void aKindIsRuledOutByWhatItStatesAloneAndByNothingElse() {
    Random random = new Random(17);
    List<String> characters = List.copyOf(stated.characters.keySet());
    for (int round = 0; round < 300; round++) {
      Map<String, Set<String>> found = new LinkedHashMap<>();
      List<String> typed = new ArrayList<>();
      for (int i = 0; i <= random.nextInt(4); i++) {
        String character = characters.get(random.nextInt(characters.size()));
        List<String> values = stated.characters.get(character);
        String value =
            values.isEmpty()
                ? Integer.toString(random.nextInt(6))
                : values.get(random.nextInt(values.size()));
        found.computeIfAbsent(character, c -> new LinkedHashSet<>()).add(value);
        typed.add(character + "=" + value);
      }
      Identification answer = ask(typed.toArray(String[]::new));
      Set<String> fits = new HashSet<>();
      Set<String> open = new HashSet<>();
      Set<String> out = new HashSet<>();
      stated.kinds.forEach(
          (kind, says) -> {
            boolean speaks = found.keySet().stream().anyMatch(says::containsKey);
            boolean against =
                found.entrySet().stream()
                    .filter(f -> says.containsKey(f.getKey()))
                    .anyMatch(
                        f ->
                            f.getValue().stream()
                                .noneMatch(v -> stated.shows(kind, f.getKey(), v).orElseThrow()));
            (against ? out : speaks ? fits : open).add(kind);
          });
      assertEquals(out, ruledOut(answer), typed::toString);
      assertEquals(fits, new HashSet<>(answer.fits().stream().map(f -> f.concept().id()).toList()));
      assertEquals(open, new HashSet<>(answer.open().stream().map(f -> f.concept().id()).toList()));
      for (RuledOut each : answer.ruledOut()) {
        assertFalse(each.against().isEmpty());
      }
    }
  }

  @Test
  void theKindsWithMostCharactersComeFirst() {
    Identification answer = ask("join=felt", "bore=smooth", "ridges=3");
    assertEquals("ring-annulated", answer.fits().get(0).concept().id());
    assertEquals(
        List.of("join", "bore", "ridges"),
        answer.fits().get(0).agreements().stream().map(a -> a.character()).toList());
    int before = Integer.MAX_VALUE;
    for (Fitting fitting : answer.fits()) {
      assertTrue(fitting.agreements().size() <= before);
      before = fitting.agreements().size();
    }
  }

  /** One ring varies round its length (common practice, no source): both are kept and said. */
  @Test
  void severalValuesOfOneCharacterAreAllKept() {
    for (String[] typed :
        List.of(
            new String[] {"slant=upright,slanting"},
            new String[] {"slant=slanting", "slant=upright"})) {
      Identification answer = ask(typed);
      assertTrue(answer.observed().get(0).mixed());
      assertTrue(staying(answer).containsAll(List.of("ring-vertical", "ring-feathered")));
      assertEquals("ring-split-ribbed", answer.fits().get(0).concept().id());
      Fitting vertical =
          answer.fits().stream()
              .filter(f -> f.concept().id().equals("ring-vertical"))
              .findFirst()
              .orElseThrow();
      assertEquals(1, vertical.agreements().get(0).not().size());
    }
    assertFalse(ask("slant=upright", "slant=upright").observed().get(0).mixed());
  }

  @Test
  void whatIsNotLookedAtIsOrderedByTheKindsThatItTellsApart() {
    for (String[] typed :
        List.of(new String[] {}, new String[] {"join=felt"}, new String[] {"surface=ground"})) {
      Identification answer = ask(typed);
      Set<String> left = typed.length == 0 ? stated.kinds.keySet() : staying(answer);
      int before = Integer.MAX_VALUE;
      for (NotLookedAt character : answer.notLookedAt()) {
        int pairs = 0;
        Set<String> apart = new HashSet<>();
        for (String a : left) {
          for (String b : left) {
            if (a.compareTo(b) < 0 && stated.differ(a, b, character.id())) {
              pairs++;
              apart.addAll(List.of(a, b));
            }
          }
        }
        assertEquals(pairs, character.pairs(), character.id());
        assertEquals(apart.size(), character.tellsApart(), character.id());
        int rank = apart.size() * 1000 + pairs;
        assertTrue(rank <= before, character.id());
        before = rank;
      }
      assertEquals(stated.characters.size() - typed.length, answer.notLookedAt().size());
    }
  }

  @Test
  void theTestsThatRemainAreThoseAmongWhatStays() {
    Identification answer = ask("groove=one", "between=band", "slant=upright");
    Set<String> left = staying(answer);
    for (HowToTell test : answer.tests()) {
      assertTrue(left.contains(test.concept().id()) && left.contains(test.other().id()));
    }
    HowToTell bladed = ask("bladed ring", "step-cut neck").tests().get(0);
    assertEquals(Optional.of("many ridges, ground"), bladed.test());
    assertEquals(1, ask("bladed ring", "step-cut neck").tests().size());
    assertEquals(List.of(), ask("bladed ring", "step-cut neck", "ridges=1").tests());
  }

  @Test
  void termsLimitWhatIsCompared() {
    Identification split = ask("split ring", "ridges=2");
    assertEquals(
        Set.of("ring-split", "ring-split-ribbed", "ring-double", "ring-vertical", "ring-feathered"),
        staying(split));
    Identification foot = ask("folded foot", "bladed ring");
    assertEquals("foot-folded", foot.notInKey().get(0).id());
    assertEquals(1, foot.kinds());
    assertTrue(ask("folded foot").leavesNoKind());
    assertThrows(TermException.class, () -> ask("triple ring"));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "jion=felt|there is no character \"jion\"; did you mean \"join\"?",
        "join=flet|\"flet\" is no value of join; did you mean \"felt\"?; write one of felt, seen,"
            + " through, not-found",
        "join=never|\"never\" is no value of join",
        "join=|\"\" is no value of join",
        "ridges=many|ridges is a number, not \"many\"; write it as in ridges=3, or not-found",
        "ridges=-1|ridges is a number, not \"-1\"",
        "ridges=3+|ridges is a number, not \"3+\"",
      })
  void whatIsUnknownIsRefusedWithTheNearest(String typed, String message) {
    String said = assertThrows(IdentifyException.class, () -> ask(typed)).getMessage();
    assertTrue(said.startsWith(message), said);
  }

  @ParameterizedTest
  @CsvSource({
    "JOIN=Felt,            felt",
    "overlap=felt,         felt",
    "ridges=three,         3",
    "number-of-ridges=3,   3",
    "edge=knife like,      sharp",
    "Ribs=Facet,           facets",
    "outer edge=squared,   square",
  })
  void wordsMatchAsLabelsDo(String typed, String value) {
    assertEquals(value, ask(typed).observed().get(0).seen().get(0).value().orElseThrow());
  }

  @Test
  void nothingGivenAsksWhatToLookAtAndSaysNoKind() {
    Identification answer = ask();
    assertTrue(answer.asksWhatToLookAt());
    assertEquals(Set.of(), staying(answer));
    assertEquals(stated.kinds.size(), answer.kinds());
    assertFalse(answer.leavesNoKind());
  }

  /** R2: only a picture is a picture; R3: a denial is none; a picture of the making is none. */
  @Test
  void onlyPicturesArePicturedWhateverTheNamesAndTheirOrder(@TempDir Path folder) {
    SmallLibrary library =
        new SmallLibrary()
            .book("Quenby", 1926, "Necks", says("sharp ring", "ring-bladed").text("p. 4"))
            .book(
                "Tressick",
                1954,
                "Cut",
                says("blade", "ring-bladed").text("p. 8").photo("fig. 61"),
                says("blade", "ring-bladed").photo("fig. 2"))
            .book("Haskeld", 1983, "Primer", says("blade", "ring-bladed").absent("p. 12"))
            .book("Norrish", 1971, "Rings", says("blade", "ring-bladed").process("pl. 2"))
            .book("Imberry", 1934, "Stems", says("milled", "ring-milled").photo("pl. 7"))
            .work(
                own(
                    SmallLibrary.monograph(
                        "Ruddick", 2016, "Mine", says("b", "ring-bladed").photo("fig. 9"))));
    Shuffles.assertAnswer(
        folder,
        library,
        "ridges=1",
        """
        ring-bladed: Tressick 1954 fig. 2, fig. 61
        ring-milled: Imberry 1934 pl. 7
        ring-plain:
        """,
        (s, named) -> {
          StringBuilder text = new StringBuilder();
          List<String> lines = new ArrayList<>();
          for (Fitting fits : Identify.answer(s, IdentifyQuestion.of(named)).fits()) {
            StringBuilder line = new StringBuilder(fits.concept().id() + ":");
            for (Entry entry : fits.pictured()) {
              line.append(' ').append(entry.source().reference()).append(' ');
              List<String> places = new ArrayList<>();
              entry.passages().forEach(p -> p.pictured().forEach(l -> places.add(l.toString())));
              line.append(String.join(", ", places));
              entry.passages().forEach(p -> assertEquals(List.of(), p.inWords()));
            }
            lines.add(line.toString());
          }
          lines.stream().sorted().forEach(l -> text.append(l).append('\n'));
          return text.toString();
        });
  }

  @Test
  void theKeyIsTheProgramsOwnWhereTheLibraryHasNone(@TempDir Path folder) throws IOException {
    LibraryFolder library = new SmallLibrary().write(folder);
    Files.delete(library.resolve("vocabulary/characters.json"));
    try (Shelf without = Shelf.open(library, Watcher.NONE)) {
      Identification answer = Identify.answer(without, IdentifyQuestion.of("join=felt"));
      assertFalse(answer.key().ofLibrary());
      assertEquals(staying(ask("join=felt")), staying(answer));
    }
    assertTrue(ask().key().ofLibrary());
  }

  @Test
  void aKeyThatIsChangedIsUsedAtOnceAndAKindWithoutAConceptIsNamed(@TempDir Path folder)
      throws IOException {
    LibraryFolder library = new SmallLibrary().write(folder);
    Shelf.open(library, Watcher.NONE).close();
    Path file = library.resolve("vocabulary/characters.json");
    String text = Files.readString(file);
    Files.writeString(
        file,
        text.replace("\"concept\": \"merese\"", "\"concept\": \"wafer-thing\"")
            .replace("\"ridges: 3+\"", "\"ridges: 4-5\""));
    try (Shelf changed = Shelf.open(library, Watcher.NONE)) {
      Identification answer = Identify.answer(changed, IdentifyQuestion.of("ridges=3"));
      assertEquals(List.of("wafer-thing"), answer.key().notInVocabulary());
      assertTrue(ruledOut(answer).contains("ring-annulated"));
      assertEquals(stated.kinds.size() - 1, answer.kinds());
    }
  }

  /**
   * What is narrower is of the broader kind (SKOS), so it shows nothing that the broader cannot.
   */
  @Test
  void aNarrowerKindOfTheStarterNeverShowsMoreThanTheBroader() {
    Map<String, KeyedKind> kinds = new HashMap<>();
    shelf.characters().key().kinds().forEach(k -> kinds.put(k.concept(), k));
    int held = 0;
    for (String narrower : stated.kinds.keySet()) {
      for (String broader : shelf.thesaurus().broader(narrower)) {
        if (kinds.containsKey(broader)) {
          for (String character : stated.kinds.get(broader).keySet()) {
            assertTrue(
                stated.kinds.get(narrower).containsKey(character),
                narrower + " is silent on " + character + " of " + broader);
            assertFalse(stated.differ(narrower, broader, character), narrower + " " + character);
            held++;
          }
        }
      }
    }
    assertTrue(held > 50, "pairs held: " + held);
  }

  @Test
  void nothingThatIsSaidCallsAPieceGenuine() throws IOException {
    String said = Files.readString(StatedKey.FILE) + ask("join=felt");
    for (String word : List.of("authentic", "genuine", "original", "fake", "worth")) {
      assertFalse(said.toLowerCase(Locale.ROOT).contains(word), word);
    }
  }

  /** Whether a source has a note that pictures a concept at a place. */
  static boolean isNoted(Shelf shelf, Entry entry, Passage passage, Locator at) {
    for (Source source : shelf.sources()) {
      if (source.key().equals(entry.source().key())) {
        for (SourcedNote sourced : shelf.notesOf(source)) {
          boolean means =
              sourced.note().namings().stream()
                  .anyMatch(n -> n.concept().equals(passage.concept().map(c -> c.id())));
          boolean shows =
              sourced.note().places().stream()
                  .anyMatch(p -> p.isPictured() && p.locator().equals(at));
          if (means && shows) {
            return true;
          }
        }
      }
    }
    return false;
  }
}
