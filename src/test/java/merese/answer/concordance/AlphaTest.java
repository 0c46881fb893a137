package merese.answer.concordance;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.stream.Stream;
import merese.answer.concordance.Concordance.Agreement;
import merese.answer.concordance.Concordance.Degree;
import merese.answer.concordance.Concordance.Lack;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Against the worked examples of agreement-examples.tsv; their sources are named in each row. */
class AlphaTest {
  private static final Path EXAMPLES =
      Path.of("src/test/resources/merese/checks/agreement-examples.tsv");

  static List<String> examples() throws IOException {
    try (Stream<String> lines = Files.lines(EXAMPLES)) {
      List<String> rows = lines.filter(l -> l.contains("\tKrippendorff alpha nominal\t")).toList();
      assertEquals(4, rows.size());
      return rows;
    }
  }

  @ParameterizedTest
  @MethodSource("examples")
  void isThatOfTheWorkedExample(String row) {
    String[] cells = row.split("\t");
    Agreement agreement = Agreeing.of(observers(cells[3]));
    double expected = Double.parseDouble(cells[2]);
    assertEquals(expected, Math.round(agreement.alpha().getAsDouble() * 1000) / 1000.0);
  }

  /** Observers between slashes, units between spaces, a full stop for a missing value. */
  private static List<Map<String, String>> observers(String rows) {
    List<Map<String, String>> observers = new ArrayList<>();
    for (String row : rows.split(" / ")) {
      Map<String, String> given = new HashMap<>();
      String[] values = row.split(" ");
      for (int unit = 0; unit < values.length; unit++) {
        if (!values[unit].equals(".")) {
          given.put("u" + unit, values[unit]);
        }
      }
      observers.add(given);
    }
    return observers;
  }

  @Test
  void withoutAnObserverIsWhatTheOthersGive() throws IOException {
    for (String row : examples()) {
      List<Map<String, String>> all = observers(row.split("\t")[3]);
      if (all.size() > 2) {
        List<Double> left = new ArrayList<>();
        for (int i = 0; i < all.size(); i++) {
          List<Map<String, String>> rest = new ArrayList<>(all);
          rest.remove(i);
          left.add(Agreeing.of(rest).alpha().getAsDouble());
        }
        Agreement agreement = Agreeing.of(all);
        assertEquals(
            left.stream().mapToDouble(d -> d).min().getAsDouble(),
            agreement.without().get().least(),
            1e-12);
        assertEquals(
            left.stream().mapToDouble(d -> d).max().getAsDouble(),
            agreement.without().get().greatest(),
            1e-12);
      }
    }
  }

  private static Agreement agreement(String rows) {
    return Agreeing.of(observers(rows));
  }

  @Test
  void isNotGivenWhereThereIsTooLittleToSay() {
    assertEquals(Lack.NO_WORDS, agreement(". . / . .").lack().get());
    assertEquals(Lack.ONE_WORK, agreement("a b / . .").lack().get());
    assertEquals(Lack.NO_PAIRS, agreement("a . / . b").lack().get());
    assertEquals(Lack.ONE_CONCEPT, agreement("a b / c .").lack().get());
    assertEquals(Lack.ONE_WORD, agreement("a a / a a").lack().get());
    assertEquals(OptionalDouble.empty(), agreement("a a / a a").alpha());
  }

  @Test
  void restsOnlyOnWhatCanBeCompared() {
    Agreement agreement = agreement("a b c / a b . / . . . / d b .");
    assertEquals(3, agreement.works());
    assertEquals(2, agreement.concepts());
    assertEquals(6, agreement.words());
  }

  @Test
  void isTakenByKrippendorffsBounds() {
    assertEquals(Degree.RELIABLE, agreement("a b c d / a b c d").degree().get());
    assertEquals(1.0, agreement("a b c d / a b c d").alpha().getAsDouble());
    assertEquals(Degree.NONE, agreement("a b / b a").degree().get());
    assertTrue(agreement("a b / b a").alpha().getAsDouble() < 0);
  }

  @Test
  void hangsOnOneWorkWhereNothingIsLeftWithoutIt() {
    assertTrue(agreement("a b c d / a b c d").without().isEmpty());
  }
}
