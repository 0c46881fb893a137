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
import merese.answer.Coverage.Group;
import merese.answer.Coverage.Grouped;
import merese.answer.Coverage.Section;
import merese.answer.Coverage.SourceLine;
import merese.answer.Coverage.WordUse;
import merese.answer.CoverageQuestion.Narrowing;
import merese.answer.CoverageQuestion.Showing;
import merese.answer.CoverageQuestion.Years;
import merese.model.Concept;
import merese.model.Naming.Why;
import merese.model.SourceKind;
import merese.shelf.Shelf;
import merese.testing.DemoLibrary;
import merese.testing.ManyWorks;
import merese.testing.SmallLibrary;
import merese.testing.SmallLibrary.NoteMaker;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

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

  @ParameterizedTest
  @CsvSource({"100, 40, 100, 40", "101, 41, 20, 5"})
  void asUsual(int covering, int general, int shown, int shownBeside) {
    SmallLibrary library = new SmallLibrary();
    for (int i = 0; i < covering + 2 * general; i++) {
      String title = "Glass " + i;
      if (i < covering) {
        library.book("C" + i, 1900, title, said("bladed rings", "ring-bladed"));
      } else if (i < covering + general) {
        library.book("G" + i, 1900, title, said("neck rings", "neck-ring"));
      } else {
        library.book("N" + i, 1900, title);
      }
    }
    try (Shelf shelf = library.open(folder.resolve("usual"))) {
      CoverageQuestion question = CoverageQuestion.of("bladed ring").with(Showing.USUAL);
      Coverage answer = Covers.answer(shelf, question);
      Section section = answer.sections().get(0);
      assertEquals(covering, section.count());
      assertEquals(shown, section.group(Group.COUNTED).size());
      assertEquals(shownBeside, section.group(Group.GENERAL_ONLY).size());
      assertEquals(general, answer.allNotChecked());
      assertEquals(shownBeside, answer.notChecked().size());
    }
  }

  private static NoteMaker said(String printed, String concept) {
    return new NoteMaker().naming(printed, concept, Why.TEXT).text("p. 9");
  }

  @Test
  void ofOtherMeaningsTheCommonest() {
    SmallLibrary library = new SmallLibrary();
    library.book("Quenby", 1949, "Neck and Stopper", said("sharp ring", "ring-bladed"));
    String[] others = {
      "ring-cut", "ring-wavy", "ring-incised", "ring-cut", "ring-incised", "stopper"
    };
    library.book("Broad", 1951, "Broader is nothing else", said("sharp ring", "neck-ring"));
    for (int i = 0; i < others.length; i++) {
      library.book("O" + i, 1950, "Glass " + i, said("sharp ring", others[i]));
    }
    try (Shelf shelf = library.open(folder.resolve("meanings"))) {
      CoverageQuestion question = CoverageQuestion.ofConcept("ring-bladed");
      WordUse some =
          Covers.answer(shelf, question.with(Showing.USUAL)).sections().get(0).words().get(0);
      assertEquals(4, some.all());
      assertEquals(
          List.of("ring-cut", "ring-incised", "ring-wavy"),
          some.others().stream().map(other -> other.concept().id()).toList());
      WordUse all = Covers.answer(shelf, question).sections().get(0).words().get(0);
      assertEquals(4, all.others().size());
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
