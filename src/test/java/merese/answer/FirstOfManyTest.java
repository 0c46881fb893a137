package merese.answer;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import merese.answer.Coverage.Entry;
import merese.answer.Coverage.Grouped;
import merese.answer.Coverage.Section;
import merese.answer.Coverage.SourceLine;
import merese.answer.CoverageQuestion.Narrowing;
import merese.answer.CoverageQuestion.Years;
import merese.model.Concept;
import merese.model.SourceKind;
import merese.shelf.Shelf;
import merese.testing.DemoLibrary;
import merese.testing.ManyWorks;
import merese.testing.SmallLibrary;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * The answer that has the first sources of each group only counts what the whole answer has, and
 * what it has are the first of these: of all concepts, in the demo library and in invented works.
 */
class FirstOfManyTest {
  private static final List<Narrowing> NARROWINGS =
      List.of(
          Narrowing.NONE,
          new Narrowing(true, false, Set.of(), Optional.empty(), Optional.empty()),
          new Narrowing(
              false,
              true,
              Set.of(SourceKind.MONOGRAPH),
              Optional.of(new Years(OptionalInt.of(1900), OptionalInt.empty())),
              Optional.empty()));

  @TempDir private Path folder;

  @Test
  void inTheDemoLibrary() throws IOException {
    try (Shelf shelf = DemoLibrary.open(folder)) {
      assertTrue(compared(shelf) > 100, "enough is cut to tell");
    }
  }

  @Test
  void inInventedWorks() {
    try (Shelf small = new SmallLibrary().open(folder.resolve("small"))) {
      SmallLibrary many = new SmallLibrary().withWorks(ManyWorks.of(small.thesaurus(), 60, 30));
      try (Shelf shelf = many.open(folder.resolve("many"))) {
        assertTrue(compared(shelf) > 100, "enough is cut to tell");
      }
    }
  }

  /** Returns how many groups were cut. */
  private static int compared(Shelf shelf) {
    int cut = 0;
    for (Concept concept : shelf.thesaurus().concepts()) {
      for (Narrowing narrowing : NARROWINGS) {
        CoverageQuestion question = CoverageQuestion.ofConcept(concept.id()).with(narrowing);
        cut += compare(Covers.answer(shelf, question), Covers.answer(shelf, question.first(3)));
      }
    }
    return cut;
  }

  private static int compare(Coverage whole, Coverage first) {
    String what = whole.asked();
    Section all = whole.sections().get(0);
    Section some = first.sections().get(0);
    assertEquals(all.count(), some.count(), what);
    assertEquals(all.works(), some.works(), what);
    assertEquals(
        all.groups().stream().map(Grouped::group).toList(),
        some.groups().stream().map(Grouped::group).toList(),
        what);
    int cut = 0;
    for (int i = 0; i < all.groups().size(); i++) {
      Grouped group = all.groups().get(i);
      Grouped shown = some.groups().get(i);
      assertEquals(group.entries().size(), group.all(), what);
      assertEquals(group.all(), shown.all(), what + " " + group.group());
      assertEquals(firstOf(group.entries()), bare(shown.entries()), what + " " + group.group());
      cut += shown.more() > 0 ? 1 : 0;
    }
    assertEquals(whole.checked().size(), first.allChecked(), what);
    assertEquals(firstOf(whole.checked()), first.checked(), what);
    assertEquals(whole.notChecked().size(), first.allNotChecked(), what);
    assertEquals(firstOf(whole.notChecked()), first.notChecked(), what);
    assertEquals(whole.leftOut(), first.leftOut(), what);
    return cut;
  }

  /** What an entry has by itself; a picture may be the same as that of a source not shown. */
  private record Bare(SourceLine source, List<Coverage.Passage> passages) {}

  private static List<Object> firstOf(List<?> all) {
    List<?> first = all.subList(0, Math.min(3, all.size()));
    return bare(first);
  }

  private static List<Object> bare(List<?> all) {
    List<Object> bare = new ArrayList<>();
    for (Object each : all) {
      bare.add(each instanceof Entry entry ? new Bare(entry.source(), entry.passages()) : each);
    }
    return bare;
  }
}
