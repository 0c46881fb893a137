package merese.answer;

import static merese.testing.SmallLibrary.monograph;
import static merese.testing.SmallLibrary.says;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.lang.reflect.RecordComponent;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.BiConsumer;
import merese.answer.Coverage.Group;
import merese.answer.Coverage.Passage;
import merese.answer.Coverage.SourceLine;
import merese.answer.claims.Claims;
import merese.answer.claims.ClaimsQuestion;
import merese.answer.concordance.Concordance;
import merese.answer.concordance.ConcordanceQuestion;
import merese.answer.concordance.Concording;
import merese.answer.fewest.Fewest;
import merese.answer.fewest.FewestQuestion;
import merese.answer.first.FirstQuestion;
import merese.answer.first.FirstUses;
import merese.answer.gaps.Gaps;
import merese.answer.gaps.GapsQuestion;
import merese.answer.identify.Identify;
import merese.answer.identify.IdentifyQuestion;
import merese.answer.literature.LiteratureQuestion;
import merese.answer.literature.Referring;
import merese.answer.pull.PullQuestion;
import merese.answer.pull.Pulls;
import merese.answer.quote.QuoteQuestion;
import merese.answer.quote.Quoting;
import merese.answer.rights.Clearing;
import merese.answer.rights.RightsQuestion;
import merese.answer.witnesses.WitnessesQuestion;
import merese.answer.witnesses.Witnessing;
import merese.citation.Citations;
import merese.citation.Output;
import merese.model.Concept;
import merese.model.Edition;
import merese.model.Locator;
import merese.model.Naming;
import merese.model.Note;
import merese.model.Work;
import merese.shelf.Shelf;
import merese.shelf.Watcher;
import merese.store.LibraryFolder;
import merese.testing.ManyWorks;
import merese.testing.SmallLibrary;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.api.TestInstance.Lifecycle;
import org.junit.jupiter.api.io.TempDir;

/**
 * What holds for the answers to all questions: every place and term in them stands in a note of the
 * source that it is given to, and a source that only says that it does not show a thing is counted
 * nowhere (R3). Over invented works by the dozen, on the starter's concepts at random.
 */
@TestInstance(Lifecycle.PER_CLASS)
class EveryAnswerTest {
  /** The source that says of every concept that it does not show it. */
  private static final String SILENT = "Nemo";

  private static final Citations CITATIONS = Citations.inStyle("mhra-notes", "en-GB");

  private final Map<String, Set<String>> placesByKey = new HashMap<>();
  private final Map<String, Set<String>> termsByKey = new HashMap<>();
  private final Map<String, List<Object>> answers = new LinkedHashMap<>();
  private String silentKey;

  @BeforeAll
  void ask(@TempDir Path folder) {
    SmallLibrary library = new SmallLibrary();
    List<Work> works = new ArrayList<>();
    List<String> concepts = new ArrayList<>();
    try (Shelf empty = new SmallLibrary().open(folder.resolve("empty"))) {
      works.addAll(ManyWorks.of(empty.thesaurus(), 24, 15));
      Object[] absent =
          empty.thesaurus().concepts().stream()
              .map(concept -> says(concept.preferred().text(), concept.id()).absent("p. 1"))
              .toArray();
      works.add(monograph(SILENT, 1950, "Of Nothing", absent));
      empty.thesaurus().concepts().stream().map(Concept::id).forEach(concepts::add);
    }
    works.forEach(library::work);
    works.forEach(work -> work.editions().forEach(this::remember));
    silentKey = works.get(works.size() - 1).editions().get(0).key();
    LibraryFolder written = library.write(folder.resolve("full"));
    try (Shelf shelf = Shelf.open(written, Watcher.NONE)) {
      for (String concept : concepts) {
        askAbout(shelf, concept);
      }
      keep("identify", Identify.answer(shelf, IdentifyQuestion.of("join=felt")));
    }
  }

  private void remember(Edition edition) {
    Set<String> places = new HashSet<>();
    Set<String> terms = new HashSet<>();
    for (Note note : edition.notes()) {
      note.places().forEach(place -> places.add(place.locator().printed()));
      note.namings().stream().map(Naming::printed).forEach(terms::add);
    }
    placesByKey.put(edition.key(), places);
    termsByKey.put(edition.key(), terms);
  }

  private void askAbout(Shelf shelf, String concept) {
    Optional<String> none = Optional.empty();
    keep("covers", Covers.answer(shelf, CoverageQuestion.ofConcept(concept)));
    keep("fewest", Fewest.answer(shelf, FewestQuestion.of(false, concept)));
    keep("concordance", Concording.answer(shelf, new ConcordanceQuestion(List.of(concept), none)));
    keep("witnesses", Witnessing.answer(shelf, new WitnessesQuestion(List.of(concept), none)));
    keep("claims", Claims.answer(shelf, ClaimsQuestion.of(concept)));
    keep("first", FirstUses.answer(shelf, new FirstQuestion(List.of(concept))));
    keep("gaps", Gaps.answer(shelf, new GapsQuestion(List.of(concept), false)));
    keep("rights", Clearing.answer(shelf, rights(concept), CITATIONS));
    keep("literature", Referring.answer(shelf, LiteratureQuestion.of(concept), CITATIONS));
    keep("quote", Quoting.answer(shelf, QuoteQuestion.of(concept), CITATIONS, Output.TEXT));
    keep("pull", Pulls.answer(shelf, new PullQuestion(List.of(concept), none, Optional.empty())));
  }

  private static RightsQuestion rights(String concept) {
    return new RightsQuestion(
        List.of(concept), Optional.empty(), Optional.empty(), Optional.empty());
  }

  private void keep(String question, Object answer) {
    answers.computeIfAbsent(question, q -> new ArrayList<>()).add(answer);
  }

  @Test
  void everyPlaceAndTermStandsInANoteOfItsSource() {
    int[] traced = new int[1];
    walk(
        (path, found) -> {
          if (found.part() instanceof Passage passage && found.source().isPresent()) {
            assertStands(path, found.source().get().key(), passage);
            traced[0]++;
          }
        });
    assertTrue(traced[0] > 1_000, () -> traced[0] + " passages");
  }

  private void assertStands(List<String> path, String key, Passage passage) {
    List<Locator> places = new ArrayList<>(passage.pictured());
    places.addAll(passage.inWords());
    for (Locator place : places) {
      assertTrue(
          placesByKey.get(key).contains(place.printed()),
          () -> path + ": " + key + " has no note at " + place.printed());
    }
    for (String term : passage.printed()) {
      assertTrue(
          termsByKey.get(key).contains(term), () -> path + ": " + key + " does not print " + term);
    }
  }

  @Test
  void whatIsSaidNotToBeShownIsCountedNowhere() {
    Set<String> paths = new TreeSet<>();
    walk(
        (path, found) -> {
          if (found.part() instanceof SourceLine line && line.key().equals(silentKey)) {
            paths.add(String.join(".", path));
          }
        });
    assertEquals(
        Set.of(
            "claims.sections.saysNotShown.source",
            "concordance.apart.entries[SAYS_NOT_SHOWN].source",
            "covers.sections.groups.entries[SAYS_NOT_SHOWN].source",
            "fewest.nowhere.saysNotShown",
            "first.terms.meanings.uses.onlyDenied.source",
            "gaps.gaps.saysNotShown.source",
            "literature.sections.types.saysNotShown"),
        paths,
        "where it stands at all, it is said to be absent");
  }

  private void walk(BiConsumer<List<String>, Part> to) {
    answers.forEach(
        (question, all) -> all.forEach(answer -> walk(answer, List.of(question), List.of(), to)));
  }

  /** A part of an answer, and the source that it is under. */
  private record Part(Object part, Optional<SourceLine> source) {}

  private static void walk(
      Object part, List<String> path, List<SourceLine> under, BiConsumer<List<String>, Part> to) {
    if (part instanceof Optional<?> optional) {
      optional.ifPresent(value -> walk(value, path, under, to));
    } else if (part instanceof Collection<?> list) {
      list.forEach(value -> walk(value, path, under, to));
    } else if (part instanceof Map<?, ?> map) {
      map.values().forEach(value -> walk(value, path, under, to));
    } else if (part instanceof Record record && !(part instanceof Locator)) {
      to.accept(
          path,
          new Part(
              record,
              under.isEmpty() ? Optional.empty() : Optional.of(under.get(under.size() - 1))));
      List<SourceLine> inside = new ArrayList<>(under);
      String group = "";
      for (RecordComponent component : record.getClass().getRecordComponents()) {
        Object value = value(record, component);
        if (value instanceof SourceLine line) {
          inside.add(line);
        } else if (value instanceof Group || value instanceof Concordance.Why) {
          group = "[" + value + "]";
        }
      }
      for (RecordComponent component : record.getClass().getRecordComponents()) {
        List<String> deeper = new ArrayList<>(path);
        deeper.add(component.getName() + group);
        walk(value(record, component), deeper, inside, to);
      }
    }
  }

  private static Object value(Record record, RecordComponent component) {
    try {
      component.getAccessor().setAccessible(true);
      return component.getAccessor().invoke(record);
    } catch (ReflectiveOperationException e) {
      throw new LinkageError(e.getMessage(), e);
    }
  }
}
