package merese.model;

import static org.junit.jupiter.api.Assertions.assertAll;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Random;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import org.junit.jupiter.api.parallel.ResourceLock;
import org.junit.jupiter.api.parallel.Resources;

/** What holds for every locator in the fixture files. */
class LocatorCorpusTest {

  private static Stream<DynamicTest> eachLine(LineCheck check) {
    return LocatorFixtures.rows("locator-lines.txt", 2).stream()
        .map(
            row ->
                DynamicTest.dynamicTest(
                    row[0], () -> check.accept(row[0], Integer.parseInt(row[1]))));
  }

  private interface LineCheck {
    void accept(String text, int members) throws Exception;
  }

  @Nested
  class EveryLine {
    @Test
    void isDifferentFromEveryOtherAndThereAreEnough() {
      List<String[]> rows = LocatorFixtures.rows("locator-lines.txt", 2);
      HashSet<String> texts = new HashSet<>();
      rows.forEach(row -> texts.add(row[0]));
      assertEquals(rows.size(), texts.size());
      assertTrue(rows.size() >= 320, () -> "only " + rows.size());
    }

    @TestFactory
    Stream<DynamicTest> printsAsTypedAndHasItsMembers() {
      return eachLine(
          (text, members) -> {
            Locator locator = Locator.parse(text);
            assertEquals(text, locator.printed());
            assertEquals(text, locator.toString());
            assertEquals(members, locator.count());
            assertEquals(members, locator.members().size());
          });
    }

    @TestFactory
    Stream<DynamicTest> hasSingleMembersThatReadBackAsTheSamePlaceInPhysicalOrder() {
      return eachLine((text, members) -> assertMembersHold(Locator.parse(text)));
    }

    @TestFactory
    Stream<DynamicTest> namesTheSamePlacesWithItsExceptionsApplied() {
      return eachLine(
          (text, members) -> {
            Locator locator = Locator.parse(text);
            Locator applied = locator.withExceptionsApplied();
            assertEquals(locator.members(), applied.members());
            assertSame(applied, applied.withExceptionsApplied());
          });
    }
  }

  static void assertMembersHold(Locator locator) {
    Locator before = null;
    for (Locator member : locator.members()) {
      assertEquals(1, member.count(), member::printed);
      assertEquals(List.of(member), member.members(), member::printed);
      Locator again = Locator.parse(member.printed());
      assertTrue(LocatorSeries.samePlace(member.levels(), again.levels()), member::printed);
      assertTrue(before == null || before.compareTo(member) < 0, before + " before " + member);
      before = member;
    }
  }

  @Nested
  class InPhysicalOrder {
    @Test
    void shuffledLocatorsSortBackIntoTheOrderOfTheFile() {
      List<String> expected = LocatorFixtures.lines("locator-order.txt");
      for (int seed = 0; seed < 50; seed++) {
        List<String> shuffled = new ArrayList<>(expected);
        Collections.shuffle(shuffled, new Random(seed));
        assertEquals(
            expected,
            shuffled.stream().map(Locator::parse).sorted().map(Locator::printed).toList());
      }
    }

    @Test
    void theOrderIsTotalAndAgreesWithEquality() {
      List<Locator> all = new ArrayList<>();
      LocatorFixtures.rows("locator-lines.txt", 2).forEach(row -> all.add(Locator.parse(row[0])));
      for (Locator a : all) {
        for (Locator b : all) {
          assertEquals(Integer.signum(a.compareTo(b)), -Integer.signum(b.compareTo(a)));
          assertEquals(a.equals(b), a.compareTo(b) == 0, () -> a + " and " + b);
        }
      }
      Collections.shuffle(all, new Random(7));
      Collections.sort(all);
      for (int i = 0; i < all.size(); i++) {
        for (int j = i + 1; j < all.size(); j++) {
          Locator low = all.get(i);
          Locator high = all.get(j);
          assertTrue(low.compareTo(high) < 0, () -> low + " before " + high);
        }
      }
    }

    @TestFactory
    Stream<DynamicTest> aSeriesSharesPluralLabels() {
      return LocatorFixtures.filesIn("locator-series").stream()
          .map(file -> DynamicTest.dynamicTest(file.getFileName().toString(), () -> series(file)));
    }

    private void series(Path file) throws Exception {
      List<String> lines = Files.readAllLines(file);
      int parting = lines.indexOf("---");
      assertTrue(parting > 0, "no line --- between what is given and what is expected");
      List<Locator> given = lines.subList(0, parting).stream().map(Locator::parse).toList();
      assertEquals(lines.subList(parting + 1, lines.size()), Locator.inPhysicalOrder(given));
    }
  }

  @Nested
  class WithExceptions {
    @TestFactory
    Stream<DynamicTest> whatIsLeftIsPrintedInRuns() {
      return LocatorFixtures.rows("locator-exceptions.txt", 2).stream()
          .map(
              row ->
                  DynamicTest.dynamicTest(
                      row[0],
                      () ->
                          assertEquals(
                              row[1], Locator.parse(row[0]).withExceptionsApplied().printed())));
    }
  }

  @Nested
  class WhatCannotBeRead {
    @TestFactory
    Stream<DynamicTest> saysWhereWhatAndWhatToDo() {
      return LocatorFixtures.rows("locator-errors.txt", 4).stream()
          .map(row -> DynamicTest.dynamicTest(row[0], () -> assertRefused(row)));
    }

    private void assertRefused(String[] row) {
      LocatorException e = assertThrows(LocatorException.class, () -> Locator.parse(row[0]));
      assertAll(
          () -> assertEquals(row[0], e.text()),
          () -> assertEquals(Integer.parseInt(row[1]), e.offset(), e.getMessage()),
          () -> assertTrue(e.problem().contains(row[2]), e.getMessage()),
          () -> assertTrue(e.remedy().contains(row[3]), e.getMessage()),
          () -> assertTrue(e.getMessage().contains("\"" + row[0] + "\""), e.getMessage()),
          () -> assertTrue(e.getMessage().endsWith(e.remedy()), e.getMessage()));
    }
  }

  @Nested
  @ResourceLock(Resources.LOCALE)
  class InATurkishLocale {
    @Test
    void everyLineIsReadTheSame() {
      Locale before = Locale.getDefault();
      List<String[]> rows = LocatorFixtures.rows("locator-lines.txt", 2);
      Locale.setDefault(Locale.forLanguageTag("tr-TR"));
      try {
        for (String[] row : rows) {
          assertEquals(Integer.parseInt(row[1]), Locator.parse(row[0]).count(), row[0]);
        }
        assertEquals(LocatorKind.FIGURE, Locator.parse("FIG. 9").labelKind());
        assertEquals(12, Locator.parse("PL. XII").levels().get(0).number().get().value());
        assertEquals("Fig. 9", Locator.parse("Figs 9-10").members().get(0).printed());
        assertEquals(
            List.of("pls xii, xiii"),
            Locator.inPhysicalOrder(List.of(Locator.parse("pls xii–xiii"))));
      } finally {
        Locale.setDefault(before);
      }
    }
  }
}
