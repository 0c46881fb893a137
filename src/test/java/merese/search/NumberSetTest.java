package merese.search;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** Sets of numbers in both of their forms, beside {@link BitSet} of Java's library. */
class NumberSetTest {
  private static final int LIMIT = 1_000;
  private static final int[] SIZES = {0, 1, 2, 5, 31, 40, 200, 900};

  private final Random random = new Random(3);

  /** One set, as it is and in the other form. */
  private record Case(BitSet expected, List<NumberSet> forms) {}

  private Case some(int size) {
    BitSet expected = new BitSet();
    for (int i = 0; i < size; i++) {
      expected.set(random.nextInt(LIMIT));
    }
    NumberSet few = NumberSet.of(expected.stream().toArray());
    NumberSet bits = NumberSet.ofBits(expected.toLongArray());
    return new Case(expected, List.of(few, bits));
  }

  private List<Case> cases() {
    List<Case> cases = new ArrayList<>();
    for (int size : SIZES) {
      cases.add(some(size));
    }
    return cases;
  }

  private static void assertSame(BitSet expected, NumberSet set) {
    int[] numbers = expected.stream().toArray();
    assertArrayEquals(numbers, set.numbers());
    assertEquals(numbers.length, set.size());
    assertEquals(numbers.length == 0, set.isEmpty());
  }

  @Test
  void bothFormsHoldTheSame() {
    for (Case each : cases()) {
      for (NumberSet set : each.forms()) {
        assertSame(each.expected(), set);
        for (int number = 0; number <= LIMIT; number++) {
          assertEquals(each.expected().get(number), set.contains(number));
          assertEquals(each.expected().nextSetBit(number), set.next(number));
        }
      }
    }
  }

  @Test
  void pairsAreJoinedAndParted() {
    for (Case a : cases()) {
      for (Case b : cases()) {
        for (NumberSet one : a.forms()) {
          for (NumberSet other : b.forms()) {
            assertSame(or(a.expected(), b.expected()), one.or(other));
            assertSame(and(a.expected(), b.expected()), one.and(other));
            assertSame(without(a.expected(), b.expected()), one.without(other));
            assertSame(or(a.expected(), b.expected()), NumberSet.anyOf(List.of(one, other), LIMIT));
            assertSame(a.expected(), one); // neither has changed
            assertSame(b.expected(), other);
          }
        }
      }
    }
  }

  private static BitSet or(BitSet a, BitSet b) {
    BitSet both = (BitSet) a.clone();
    both.or(b);
    return both;
  }

  private static BitSet and(BitSet a, BitSet b) {
    BitSet common = (BitSet) a.clone();
    common.and(b);
    return common;
  }

  private static BitSet without(BitSet a, BitSet b) {
    BitSet rest = (BitSet) a.clone();
    rest.andNot(b);
    return rest;
  }

  @Test
  void numbersInAnyOrderAreSortedAndEachIsThereOnce() {
    for (int size : SIZES) {
      BitSet expected = new BitSet();
      int[] numbers = new int[size];
      for (int i = 0; i < size; i++) {
        numbers[i] = random.nextInt(size); // so that some are there twice
        expected.set(numbers[i]);
      }
      assertSame(expected, NumberSet.sorted(numbers, LIMIT));
    }
  }

  @Test
  void theFirstAreTaken() {
    for (Case each : cases()) {
      for (NumberSet set : each.forms()) {
        for (int most : new int[] {0, 1, 7, LIMIT}) {
          assertArrayEquals(
              each.expected().stream().limit(most).toArray(), set.first(most).numbers());
        }
      }
    }
  }

  @Test
  void stretchesOfBitsAreSet() {
    for (int from = 0; from < 140; from++) {
      for (int to = 0; to <= 200; to++) {
        BitSet expected = new BitSet();
        if (from < to) {
          expected.set(from, to);
        }
        long[] bits = new long[NumberSet.longs(200)];
        NumberSet.set(bits, from, to);
        assertSame(expected, NumberSet.ofBits(bits));
      }
    }
    for (int limit : new int[] {0, 1, 63, 64, 65, 128}) {
      BitSet expected = new BitSet();
      expected.set(0, limit);
      assertSame(expected, NumberSet.below(limit));
    }
  }

  @Test
  void fewStayFew() {
    NumberSet few = NumberSet.of(new int[] {3, 70, 640});
    NumberSet many = NumberSet.below(LIMIT);
    assertTrue(few.and(many).isFew());
    assertTrue(many.and(few).isFew());
    assertTrue(few.without(many).isFew());
    assertTrue(few.or(few).isFew());
    assertFalse(many.without(few).isFew());
    assertTrue(NumberSet.isMany(LIMIT / 32 + 1, LIMIT));
    assertFalse(NumberSet.isMany(LIMIT / 32, LIMIT));
  }
}
