package merese.vocabulary;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import java.util.Random;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;

/**
 * Against sort-order.tsv: the orders of ICU4J 79.1 and, independently, of Perl's Unicode::Collate
 * 1.31.
 */
class FilingTest {
  private static final Path ORDERS = Path.of("src/test/resources/merese/checks/sort-order.tsv");

  @TestFactory
  Stream<DynamicTest> keysFileHeadingsInThePublishedOrder() throws IOException {
    List<String> rows = Files.readAllLines(ORDERS);
    assertEquals(9, rows.size());
    return rows.stream().skip(1).map(row -> DynamicTest.dynamicTest(row, () -> check(row)));
  }

  private static void check(String row) {
    String[] cells = row.split("\t");
    Filing filing =
        cells[0].startsWith("word-by-word") ? Filing.WORD_BY_WORD : Filing.LETTER_BY_LETTER;
    List<String> expected = Arrays.asList(cells[1].split(" \\| "));
    List<String> shuffled = new ArrayList<>(expected);
    Collections.shuffle(shuffled, new Random(1));
    shuffled.sort(Comparator.comparing(filing::key, Filing::compare));
    assertEquals(expected, shuffled);
  }

  @Test
  void keysCompareAsUnsignedBytes() {
    assertTrue(Filing.compare(new byte[] {(byte) 0x80}, new byte[] {0x7f}) > 0);
  }

  @Test
  void theSameHeadingHasTheSameKeyHoweverItIsEncoded() {
    for (Filing filing : Filing.values()) {
      assertEquals(
          0,
          Filing.compare(
              filing.key("verre \u00e9glomis\u00e9"), filing.key("verre e\u0301glomise\u0301")));
    }
  }
}
