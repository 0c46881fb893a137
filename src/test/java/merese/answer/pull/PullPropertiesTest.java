package merese.answer.pull;

import static merese.testing.SmallLibrary.says;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.TreeSet;
import java.util.stream.Stream;
import merese.answer.pull.Pull.Item;
import merese.answer.pull.Pull.Opening;
import merese.model.Copy;
import merese.model.Edition;
import merese.model.Locator;
import merese.model.Note;
import merese.model.Place;
import merese.model.PlaceTest;
import merese.model.Work;
import merese.shelf.Shelf;
import merese.testing.SmallLibrary;
import merese.testing.SmallLibrary.NoteMaker;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;

/** What holds of any list of what to take. */
class PullPropertiesTest {
  private static final List<String> CONCEPTS =
      List.of("ring-bladed", "ring-annulated", "neck-ring");

  private static Work work(Random random, int at) {
    List<Object> notes = new ArrayList<>();
    for (int i = random.nextInt(4); i >= 0; i--) {
      NoteMaker note = says("ring " + i, CONCEPTS.get(random.nextInt(CONCEPTS.size())));
      for (int j = random.nextInt(3); j >= 0; j--) {
        switch (random.nextInt(4)) {
          case 0 -> note.text("p. " + (1 + random.nextInt(9)));
          case 1 -> note.photo("pl. " + (1 + random.nextInt(9)));
          case 2 -> note.absent("p. " + (1 + random.nextInt(9)));
          default -> note.process("fig. " + (1 + random.nextInt(9)));
        }
      }
      notes.add(note);
    }
    Work work =
        SmallLibrary.monograph("Writer" + at, 1900 + random.nextInt(5), "A", notes.toArray());
    Edition edition = work.editions().get(0);
    Copy copy =
        new Copy(
            "c1",
            random.nextInt(4) == 0 ? Optional.of("Town Library") : Optional.empty(),
            Optional.of("A" + random.nextInt(12)),
            random.nextInt(3) == 0 ? Optional.of("Ann") : Optional.empty(),
            random.nextInt(5) == 0,
            Optional.empty());
    return work.withEditions(
        List.of(
            new Edition(
                edition.key() + "-" + at,
                edition.imprint(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                List.of(),
                random.nextInt(6) == 0 ? List.of() : List.of(copy),
                edition.notes(),
                List.of(),
                List.of())));
  }

  @Property(tries = 25, seed = "1926")
  void everyLineIsFromANoteThatIsNoDenialAndNothingAwayIsUsedSilently(
      @ForAll @IntRange(max = 100_000) int seed) throws IOException {
    Random random = new Random(seed);
    SmallLibrary library = new SmallLibrary();
    for (int i = 0; i < 5; i++) {
      library.work(work(random, i));
    }
    Path folder = Files.createTempDirectory("pull");
    try (Shelf shelf = library.open(folder)) {
      Pull pull =
          Pulls.answer(shelf, new PullQuestion(CONCEPTS, Optional.empty(), Optional.empty()));
      TreeSet<Integer> numbers = new TreeSet<>();
      for (Item item : pull.inOrder()) {
        Edition edition = edition(library, item.source().orElseThrow().key());
        for (Opening opening : item.openings()) {
          numbers.addAll(opening.needs());
          assertTrue(isNoted(edition, opening.locator().orElseThrow()), opening::toString);
          opening.texts().forEach(text -> assertTrue(isNoted(edition, text), text::toString));
          opening
              .instead()
              .ifPresent(
                  other -> assertTrue(isHere(edition(library, other.source().key())), "at hand"));
        }
        assertEquals(isHere(edition), item.flag().isEmpty(), item::toString);
      }
      int last = numbers.isEmpty() ? 0 : numbers.last();
      assertEquals(last, numbers.size(), "numbered without a gap");
      assertEquals(
          pull.inOrder().size(), pull.byShelf().size() + pull.notAtHand().size(), "each once");
    } finally {
      delete(folder);
    }
  }

  private static Edition edition(SmallLibrary library, String key) {
    return library.works().stream()
        .map(work -> work.editions().get(0))
        .filter(edition -> edition.key().equals(key))
        .findFirst()
        .orElseThrow();
  }

  private static boolean isHere(Edition edition) {
    return edition.copies().stream()
        .anyMatch(c -> c.holder().isEmpty() && !c.missing() && c.lentTo().isEmpty());
  }

  private static boolean isNoted(Edition edition, Locator locator) {
    for (Note note : edition.notes()) {
      for (Place place : note.places()) {
        if (place.locator().equals(locator)
            && place.stance() != Place.Stance.SAYS_ABSENT
            && !PlaceTest.PROCESS.holds(place)) {
          return true;
        }
      }
    }
    return false;
  }

  private static void delete(Path folder) throws IOException {
    try (Stream<Path> files = Files.walk(folder)) {
      for (Path file : files.sorted(Comparator.reverseOrder()).toList()) {
        Files.delete(file);
      }
    }
  }
}
