package merese.answer;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import merese.answer.Coverage.Entry;
import merese.answer.Coverage.Grouped;
import merese.answer.Coverage.Section;
import merese.answer.CoverageQuestion.Showing;
import merese.model.Concept;
import merese.shelf.Shelf;
import merese.shelf.Watcher;
import merese.testing.DemoLibrary;
import merese.testing.UnionList;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * Of a word of several meanings the first sources are found by what the index holds of the notes;
 * here they are held to the answer for which every note is read.
 */
class FirstOfAWordTest {
  @TempDir private Path folder;

  @Test
  void ofTheDemoLibrary() throws IOException {
    try (Shelf shelf = DemoLibrary.open(folder)) {
      assertTrue(compared(shelf) > 10);
    }
  }

  @Test
  void ofAUnionList() throws IOException {
    try (Shelf shelf = Shelf.open(UnionList.of(400, 4_000).write(folder), Watcher.NONE)) {
      assertTrue(compared(shelf) > 10);
    }
  }

  /** Returns how many groups were cut. */
  private static int compared(Shelf shelf) {
    Set<String> words = new LinkedHashSet<>();
    for (Concept concept : shelf.thesaurus().concepts()) {
      for (String label : shelf.thesaurus().wordsFor(concept.id())) {
        words.add(label);
        words.addAll(List.of(label.split(" ")));
      }
    }
    int cut = 0;
    for (String word : words) {
      Coverage all = Covers.answer(shelf, CoverageQuestion.of(word).with(Showing.ALL));
      if (all.ask().isPresent()) {
        for (int most : new int[] {1, 3}) {
          cut += compared(word, all, shelf, Showing.first(most));
        }
      }
    }
    return cut;
  }

  private static int compared(String word, Coverage all, Shelf shelf, Showing showing) {
    Coverage first = Covers.answer(shelf, CoverageQuestion.of(word).with(showing));
    assertEquals(all.sections().size(), first.sections().size(), word);
    int cut = 0;
    for (int i = 0; i < all.sections().size(); i++) {
      Section whole = all.sections().get(i);
      Section some = first.sections().get(i);
      assertEquals(whole.heading(), some.heading(), word);
      assertEquals(whole.count(), some.count(), word);
      assertEquals(whole.works(), some.works(), word);
      assertEquals(whole.groups().size(), some.groups().size(), word);
      for (int j = 0; j < whole.groups().size(); j++) {
        Grouped expected = whole.groups().get(j);
        Grouped found = some.groups().get(j);
        int most = showing.of(expected.all());
        assertEquals(expected.group(), found.group(), word);
        assertEquals(expected.all(), found.all(), word);
        assertEquals(
            withoutPicturesOfOthers(expected.entries().subList(0, most)),
            withoutPicturesOfOthers(found.entries()),
            word);
        cut += most < expected.all() ? 1 : 0;
      }
    }
    return cut;
  }

  /** Pictures are held against those of the sources that are shown. */
  private static List<Entry> withoutPicturesOfOthers(List<Entry> entries) {
    List<Entry> without = new ArrayList<>();
    for (Entry e : entries) {
      without.add(
          new Entry(e.source(), e.passages(), e.conflicts(), e.readings(), e.claims(), List.of()));
    }
    return without;
  }
}
