package merese.change.notes;

import static merese.testing.SmallLibrary.says;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import merese.change.ChangeRefusedException;
import merese.change.notes.NoteTaking.Taken;
import merese.change.notes.TypedNote.Doing;
import merese.change.notes.TypedNote.Where;
import merese.model.Check;
import merese.model.Locator;
import merese.model.LocatorException;
import merese.model.Naming;
import merese.model.Naming.Why;
import merese.shelf.Watcher;
import merese.shelf.WritingShelf;
import merese.store.LibraryFolder;
import merese.testing.SmallLibrary;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Noting page after page: how people go through a book is common practice, no source. */
class SittingTest {
  private static final Clock CLOCK =
      Clock.fixed(Instant.parse("2026-02-03T12:00:00Z"), ZoneOffset.UTC);

  @TempDir private Path folder;

  private WritingShelf shelf;
  private Sitting sitting;

  @BeforeEach
  void sitDown() {
    LibraryFolder library =
        new SmallLibrary()
            .book(
                "Quenby",
                1926,
                "Neck and Stopper",
                says("knife-edged rings", "ring-bladed").text("p. 41").photo("pl. XII, fig. 3"),
                says("triple ring", "ring-annulated").text("pp. 42–43"))
            .write(folder);
    shelf = WritingShelf.open(library, Watcher.NONE);
    sitting = new Sitting(shelf, shelf.find("quenby-1926").get(0), CLOCK);
  }

  @AfterEach
  void getUp() {
    shelf.close();
  }

  @Test
  void aPageIsTurnedOnlyOnceOneLiesOpen() {
    assertThrows(ChangeRefusedException.class, () -> sitting.turn(1));
    sitting.open("pl. XII, fig. 3");
    assertEquals("pl. XIII", sitting.turn(1).printed());
    assertEquals("pl. XII", sitting.turn(-1).printed());
    sitting.open("frontispiece");
    assertThrows(ChangeRefusedException.class, () -> sitting.turn(1));
    assertEquals("frontispiece", sitting.page().orElseThrow().printed());
  }

  @Test
  void whatIsTypedAsAPlaceIsWhatIsNotedAt() {
    for (String place : List.of("fig. 3 (top)", "pp. 3–5", "p. 41, n. 3")) {
      sitting.open(place);
      assertEquals(place, sitting.place().orElseThrow().printed());
      take(place(""), "collar", "neck-ring");
      assertEquals(place, place(""));
    }
    sitting.open("pp. 3–5");
    assertEquals("p. 6", sitting.turn(1).printed());
    sitting.open("pp. 3–5");
    assertEquals("p. 2", sitting.turn(-1).printed());
    assertEquals("pp. 2–6, 41; fig. 3", sitting.lookedThrough().orElseThrow().printed());
  }

  @Test
  void whatIsNotedOfAPageIsShownInTextAndPictures() {
    assertEquals(List.of("n1"), noted("p. 41"));
    assertEquals(List.of("n1"), noted("pl. XII"));
    assertEquals(List.of("n2"), noted("p. 43"));
    assertEquals(List.of(), noted("p. 44"));
    assertEquals(
        "pl. XII, fig. 3",
        sitting.noted(Locator.parse("pl. XII")).get(0).places().get(0).locator().printed());
  }

  private List<String> noted(String page) {
    return sitting.noted(Locator.parse(page)).stream().map(n -> n.note().id()).toList();
  }

  @Test
  void aPlaceIsReadWithThePageThatLiesOpen() {
    sitting.open("pl. XII");
    assertEquals("pl. XII, fig. 3", place("fig. 3"));
    assertEquals("pl. XIII", place("pl. XIII"));
    assertEquals("pl. XII", place(" "));
    assertEquals("p. 7", place("7"));
    sitting.open("p. 41");
    assertEquals("fig. 3", place("fig. 3"));
    assertEquals("p. 41, n. 3", place("n. 3"));
    assertEquals("p. 50", place("50"));
    sitting.open("vol. II, lot 12");
    assertEquals("vol. II, lot 20", place("20"));
    assertThrows(LocatorException.class, () -> sitting.place("bladed ring"));
    assertFalse(sitting.isPlace("bladed ring"));
  }

  private String place(String typed) {
    return sitting.place(typed).printed();
  }

  @Test
  void aNoteIsWrittenAtOnceAndOpensItsPage() {
    sitting.open("p. 41");
    take("p. 45", "collar", "neck-ring");
    assertEquals("p. 45", sitting.page().orElseThrow().printed());
    take("pl. IX, fig. 1", "collar", "neck-ring");
    assertEquals("p. 45", sitting.page().orElseThrow().printed());
    assertEquals(4, shelf.folder().readWork(work()).value().editions().get(0).notes().size());
  }

  private Path work() {
    return folder.resolve("library/works/quenby-1926.json");
  }

  @Test
  void takingBackGoesNoFurtherThanTheSitting() {
    take("p. 44", "collar", "neck-ring");
    take("p. 45", "ring", "neck-ring");
    new NoteTaking(shelf, CLOCK).note(sitting.source(), typed("p. 46", "band", "neck-ring"), false);
    assertEquals("ring", undone());
    assertEquals("p. 44", sitting.page().orElseThrow().printed());
    assertEquals("collar", undone());
    assertEquals(Optional.empty(), sitting.undo());
    assertEquals(List.of("n1", "n2", "n5"), ids());
    assertEquals(0, sitting.taken());
  }

  private String undone() {
    Sitting.TakenBack back = sitting.undo().orElseThrow();
    assertFalse(back.already());
    return back.taken().notes().get(0).namings().get(0).printed();
  }

  private List<String> ids() {
    return sitting.edition().notes().stream().map(n -> n.id()).toList();
  }

  @Test
  void whatSomebodyElseTookBackIsSaidToBe() {
    Taken taken = take("p. 44", "collar", "neck-ring");
    merese.store.History.of(shelf.folder()).undo(taken.change().getAsInt());
    assertTrue(sitting.undo().orElseThrow().already());
    assertEquals(List.of("n1", "n2"), ids());
  }

  @Test
  void whatWasLookedThroughIsThePagesTurnedOrNotedAndNoneBetween() {
    assertEquals(Optional.empty(), sitting.lookedThrough());
    sitting.open("p. 410"); // a slip: neither noted nor turned
    sitting.open("p. 40");
    assertEquals(Optional.empty(), sitting.lookedThrough());
    sitting.turn(1);
    take("p. 60", "collar", "neck-ring");
    take("pl. IX, fig. 1", "collar", "neck-ring");
    assertEquals("pp. 40–41, 60; pl. IX", sitting.lookedThrough().orElseThrow().printed());
    sitting.undo();
    sitting.undo();
    assertEquals("pp. 40–41", sitting.lookedThrough().orElseThrow().printed());
  }

  @Test
  void whatWasLookedForTakesInAllThatWasNoted() {
    assertEquals(List.of(), sitting.lookedFor());
    take("p. 60", "sharp ring", "ring-bladed");
    assertEquals(List.of("ring-bladed"), sitting.lookedFor());
    take("p. 61", "triple ring", "ring-annulated");
    assertEquals(List.of("ring-applied"), sitting.lookedFor());
    take("p. 62", "a set of three", "ring-set-three");
    assertEquals(List.of("neck-ring"), sitting.lookedFor());
    assertEquals(List.of("neck ring"), sitting.lookedForInWords());
    assertEquals(
        List.of("ring-bladed", "stopper-target"),
        Sitting.broadest(shelf.thesaurus(), Set.of("stopper-target", "ring-bladed")));
  }

  @Test
  void theEndIsWrittenIntoTheCheckLog() {
    take("p. 60", "sharp ring", "ring-bladed");
    sitting.log(
        sitting.lookedThrough(), List.of("neck-ring"), Check.Method.READ, "V", Optional.empty());
    Check check = sitting.edition().checks().get(0);
    assertEquals("p. 60", check.extent().orElseThrow().printed());
    assertEquals(Check.Result.FOUND, check.result());
  }

  @Test
  void whatIsLikeliestIsSuggestedFirst() {
    Suggestions suggestions = new Suggestions(sitting);
    assertEquals(
        List.of("knife-edged rings", "knife-edge ring", "knife-edged ring"),
        suggestions.terms("KNIFE-ED"));
    assertTrue(suggestions.concepts("ring-bl").contains("ring-bladed"));
    sitting.open("p. 41");
    assertEquals(List.of("p. 41", "p. 42"), suggestions.places("p. 4").subList(0, 2));
    assertEquals(List.of("pl. XII, fig. 3"), suggestions.places("pl"));
  }

  private Taken take(String locator, String printed, String concept) {
    return sitting.note(typed(locator, printed, concept), Optional.empty(), false);
  }

  private static TypedNote typed(String locator, String printed, String concept) {
    return new TypedNote(
        List.of(new Naming(printed, Optional.of(concept), Optional.of(Why.TEXT))),
        new Where(
            locator,
            Doing.NAMES,
            Optional.empty(),
            List.of(),
            List.of(),
            Optional.empty(),
            Optional.empty(),
            Optional.empty()),
        List.of(),
        Optional.empty(),
        Optional.empty(),
        Optional.empty(),
        Optional.empty(),
        "me");
  }
}
