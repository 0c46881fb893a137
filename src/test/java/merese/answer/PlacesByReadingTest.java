package merese.answer;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import merese.model.Concept;
import merese.shelf.Shelf;
import merese.shelf.Watcher;
import merese.store.LibraryFolder;
import merese.testing.UnionList;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * How many names a sweep counts without reading the pages, noted and not, is what somebody finds
 * who reads them all.
 */
class PlacesByReadingTest {
  @TempDir private Path folder;

  /** Each opening after a change leaves a segment of the index more, and what it replaces dead. */
  @Test
  void inTextsOfWhichSomeChangedOneAfterAnother() throws IOException {
    LibraryFolder library = UnionList.of(400, 4_000, 1_200).write(folder);
    List<Path> texts;
    try (Stream<Path> files = Files.walk(library.resolve("pages"))) {
      texts = files.filter(Files::isRegularFile).sorted().toList();
    }
    for (int round = 0; round < 3; round++) {
      Shelf.open(library, Watcher.NONE).close();
      Path changed = texts.get(round);
      String text = Files.readString(changed);
      String now = text.replace(" stem ", " Stem, stem, bladed ring, annulated ring and cut ring ");
      assertNotEquals(text, now);
      Files.writeString(changed, now);
    }
    try (Shelf shelf = Shelf.open(library, Watcher.NONE)) {
      int noted = 0;
      int several = 0;
      for (Concept concept : shelf.thesaurus().concepts()) {
        Swept read = Sweep.answer(shelf, concept.id(), Integer.MAX_VALUE, false);
        Swept counted = Sweep.answer(shelf, concept.id(), 1, false);

        assertEquals(read.places().size(), read.all(), concept.id());
        assertEquals(read.all(), counted.all(), concept.id());
        assertEquals(read.noted(), counted.noted(), concept.id());
        noted += counted.noted();
        several = Math.max(several, mostOnAPage(read));
      }
      assertTrue(noted > 20, "places that are noted are there to be counted: " + noted);
      assertTrue(several > 2, "so are pages with several names: " + several);
    }
  }

  private static int mostOnAPage(Swept swept) {
    Map<String, Integer> pages = new HashMap<>();
    swept.places().forEach(p -> pages.merge(p.source().key() + p.cited(), 1, Integer::sum));
    return pages.values().stream().max(Integer::compare).orElse(0);
  }
}
