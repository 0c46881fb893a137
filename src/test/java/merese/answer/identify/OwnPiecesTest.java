package merese.answer.identify;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import merese.answer.Coverage.Entry;
import merese.answer.Coverage.Passage;
import merese.answer.identify.Identification.Fitting;
import merese.answer.identify.Identification.Observed;
import merese.answer.identify.Identification.PartReading;
import merese.answer.identify.Identification.Seen;
import merese.model.CharacterKey;
import merese.model.Locator;
import merese.model.OwnObject.Observation;
import merese.model.OwnObject.Observation.Sense;
import merese.shelf.Shelf;
import merese.store.LibraryFolder;
import merese.testing.DemoLibrary;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.api.TestInstance.Lifecycle;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The pieces of the demo library, whose owner knows what they are, and words of one's own. */
@TestInstance(Lifecycle.PER_CLASS)
class OwnPiecesTest {
  private Shelf shelf;

  @BeforeAll
  void open(@TempDir Path folder) throws IOException {
    shelf = DemoLibrary.open(folder);
  }

  @AfterAll
  void close() {
    shelf.close();
  }

  private Identification piece(String ref, String... words) {
    return Identify.answer(
        shelf,
        IdentifyQuestion.of(List.of(words), Optional.empty(), Optional.of(ref), Optional.empty()));
  }

  private static List<String> fits(Identification answer) {
    return answer.fits().stream().map(f -> f.concept().id()).toList();
  }

  /** What the owner has a piece down as stays, and what it is a counter-example of goes. */
  @ParameterizedTest
  @CsvSource({
    "d-3,  ring-bladed,       ring-step-cut",
    "d-9,  ring-split,        ring-double",
    "d-9,  ring-feathered,    ring-incised",
    "d-9,  ring-vertical,     ring-incised",
    "d-17, ring-spiral-trail, ring-set-three",
    "D-21, ring-blown,        ring-applied",
    "d-24, ring-step-cut,     ring-bladed",
    "c-4,  ring-plain,        ring-bladed",
  })
  void thePiecesOfTheDemoFitWhatTheirOwnerKnows(String ref, String stays, String goes) {
    Identification answer = piece(ref);
    assertTrue(fits(answer).contains(stays), () -> fits(answer).toString());
    assertTrue(answer.ruledOut().stream().anyMatch(r -> r.concept().id().equals(goes)));
  }

  @Test
  void theFirstThatFitsIsWhatTheOwnerSays() {
    assertEquals("ring-bladed", fits(piece("d-3")).get(0));
    assertEquals(List.of("ring-spiral-trail"), fits(piece("d-17")));
    assertEquals(List.of("ring-blown"), fits(piece("d-21")));
    assertEquals("ring-step-cut", fits(piece("d-24")).get(0));
    assertEquals("ring-plain", fits(piece("c-4")).get(0));
  }

  @Test
  void whatIsObservedSaysItsPartItsWordsAndItsPhotograph() {
    Seen edge = piece("d-3", "ridges=1").observed().get(3).seen().get(0);
    assertEquals(Optional.of("sharp"), edge.value());
    assertEquals(Optional.of("lowest of three rings"), edge.part());
    assertEquals(Optional.of(Sense.FELT), edge.sense());
    assertEquals(Optional.of("p2"), edge.photo());
    assertTrue(edge.words().orElseThrow().contains("sharp enough to mark a thumbnail"));
  }

  @Test
  void oneRingThatVariesIsMixedAsAWholeAndPlainInEachPart() {
    Identification answer = piece("d-9");
    Observed slant =
        answer.observed().stream().filter(o -> o.id().equals("slant")).findFirst().orElseThrow();
    assertTrue(slant.mixed());
    List<String> parts = new ArrayList<>();
    for (PartReading part : answer.parts()) {
      part.observed().forEach(o -> assertFalse(o.mixed()));
      List<String> ids = part.fits().stream().map(c -> c.id()).toList();
      parts.add(
          part.part() + " " + ids.contains("ring-feathered") + " " + ids.contains("ring-vertical"));
    }
    assertEquals(
        List.of("ring, front true false", "ring, back false true", "groove true true"), parts);
    Identification front =
        Identify.answer(
            shelf,
            IdentifyQuestion.of(
                List.of(), Optional.empty(), Optional.of("d-9"), Optional.of("Ring, front")));
    assertEquals(1, front.observed().size());
    assertEquals(List.of(), front.parts());
  }

  @Test
  void everythingRecordedIsReadOrSaidNotToBe() {
    shelf
        .objects()
        .forEach(
            object -> {
              Identification answer = piece(object.ref());
              int read = 0;
              for (Observed observed : answer.observed()) {
                read += observed.seen().size();
              }
              assertEquals(
                  object.observations().size(), read + answer.unread().size(), object.ref());
            });
  }

  /** R2; each line of every piece is looked for in the notes. */
  @Test
  void everyPicturedLineIsOfANote() {
    int lines = 0;
    for (Fitting fitting : piece("d-3").fits()) {
      for (Entry entry : fitting.pictured()) {
        for (Passage passage : entry.passages()) {
          assertTrue(
              shelf
                  .thesaurus()
                  .covers(fitting.concept().id(), passage.concept().orElseThrow().id()),
              () -> fitting.concept() + " " + passage);
          for (Locator at : passage.pictured()) {
            assertTrue(
                IdentifyTest.isNoted(shelf, entry, passage, at),
                () -> fitting.concept() + " " + entry.source().reference() + " " + at);
            lines++;
          }
        }
      }
    }
    assertTrue(lines > 50, "lines: " + lines);
  }

  /** Words are read only where they begin with a value; a denial is never read as the thing. */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "edge|sharp enough to cut|edge sharp",
        "outer edge|knife-like|edge sharp",
        "edge|thin, not sharp|",
        "edge|not sharp|",
        "edge|rounded, not sharp|edge rounded",
        "hollow|finger sinks in|bore hollowed",
        "hollow|no|",
        "hollow|none that I can feel|",
        "smooth wall|no hollow|bore smooth",
        "bore|smooth|bore smooth",
        "join|at the back|join felt",
        "join through the glass|a dark line|join through",
        "overlap|5 mm|join felt",
        "join|no|",
        "mould seam|runs across it at one side|seam crosses",
        "ridges|seven, evenly spaced|ridges 7",
        "ridges|3|ridges 3",
        "ridges|three or four|",
        "ridges|two and a half|",
        "ridges|many|",
        "wheel lines|faint|surface ground",
        "outer edge round the ring|chipped|",
        "weight|1.42 kg|",
        "turns of the thread|two and a quarter|turns several",
      })
  void wordsOfOnesOwnAreReadWithCare(String character, String value, String read) {
    CharacterKey key = LibraryFolder.starterCharacters();
    Sight sight = new Sight(key);
    PieceReading reading = new PieceReading(key);
    reading.read(
        new Observation("ring", character, Optional.of(value), Sense.FELT, true, Optional.empty()),
        sight);
    List<String> found = new ArrayList<>();
    for (Observed observed : sight.observed()) {
      observed.seen().forEach(s -> found.add(observed.id() + " " + s.value().orElse("-")));
    }
    assertEquals(read == null ? List.of() : List.of(read), found);
    assertEquals(read == null ? 1 : 0, reading.unread().size());
  }

  @Test
  void aPieceOrPartThatIsUnknownIsRefused() {
    assertTrue(
        assertThrows(IdentifyException.class, () -> piece("d-99"))
            .getMessage()
            .contains("near it: d-9"));
    String said =
        assertThrows(
                IdentifyException.class,
                () ->
                    Identify.answer(
                        shelf,
                        IdentifyQuestion.of(
                            List.of(),
                            Optional.empty(),
                            Optional.of("d-9"),
                            Optional.of("handle"))))
            .getMessage();
    assertEquals(
        "nothing is recorded of a part \"handle\" of d-9; its parts are ring, front, ring, back,"
            + " groove",
        said);
  }
}
