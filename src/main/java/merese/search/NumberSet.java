package merese.search;

import java.util.Arrays;
import java.util.List;

/**
 * Numbers of documents or of editions of one segment. It is never changed.
 *
 * <p>It has the form in which a {@link SegmentTable} holds numbers, so that to read them is to copy
 * them: few stand one after another, many are a bit each. What was few stays so when others are
 * taken away, and costs what it holds; bits cost the segment.
 */
final class NumberSet {
  static final NumberSet NONE = new NumberSet(new int[0], null);

  private static final int UNCOUNTED = -1;

  /** In order; null where there are bits. */
  private final int[] few;

  private final long[] bits;
  private int size;

  private NumberSet(int[] few, long[] bits) {
    this.few = few;
    this.bits = bits;
    this.size = few == null ? UNCOUNTED : few.length;
  }

  /**
   * @param numbers in order, none twice; nobody changes them any more
   */
  static NumberSet of(int[] numbers) {
    return numbers.length == 0 ? NONE : new NumberSet(numbers, null);
  }

  /**
   * @param bits nobody changes them any more
   */
  static NumberSet ofBits(long[] bits) {
    return new NumberSet(null, bits);
  }

  /** All numbers below a limit. */
  static NumberSet below(int limit) {
    long[] bits = new long[longs(limit)];
    set(bits, 0, limit);
    return ofBits(bits);
  }

  /**
   * Numbers in any order.
   *
   * @param numbers some may be there twice; they are sorted
   * @param limit what all are below
   */
  static NumberSet sorted(int[] numbers, int limit) {
    if (isMany(numbers.length, limit)) {
      long[] bits = new long[longs(limit)];
      for (int number : numbers) {
        bits[number >> 6] |= 1L << number;
      }
      return ofBits(bits);
    }
    Arrays.sort(numbers);
    int count = 0;
    for (int number : numbers) {
      if (count == 0 || numbers[count - 1] != number) {
        numbers[count++] = number;
      }
    }
    return of(cut(numbers, count));
  }

  /** What is in one of some sets or in several. */
  static NumberSet anyOf(List<NumberSet> sets, int limit) {
    if (sets.size() == 1) {
      return sets.get(0);
    }
    int count = 0;
    boolean many = false;
    for (NumberSet set : sets) {
      many |= set.few == null;
      count += set.few == null ? 0 : set.few.length;
    }
    if (!many) {
      int[] all = new int[count];
      int at = 0;
      for (NumberSet set : sets) {
        System.arraycopy(set.few, 0, all, at, set.few.length);
        at += set.few.length;
      }
      return sorted(all, limit);
    }
    long[] all = new long[longs(limit)];
    for (NumberSet set : sets) {
      set.addTo(all);
    }
    return ofBits(all);
  }

  /** Whether so many numbers below a limit are better kept as bits. */
  static boolean isMany(int count, int limit) {
    return count > limit / Integer.SIZE;
  }

  /** How many longs have a bit for each number below a limit. */
  static int longs(int limit) {
    return (limit + Long.SIZE - 1) / Long.SIZE;
  }

  /** Sets the bits of all numbers from one up to another, which is left out. */
  static void set(long[] bits, int from, int to) {
    if (from >= to) {
      return;
    }
    int first = from >> 6;
    int last = to - 1 >> 6;
    long begin = -1L << from;
    long end = -1L >>> -to;
    if (first == last) {
      bits[first] |= begin & end;
      return;
    }
    bits[first] |= begin;
    Arrays.fill(bits, first + 1, last, -1L);
    bits[last] |= end;
  }

  /** Whether the numbers stand one after another. */
  boolean isFew() {
    return few != null;
  }

  int size() {
    if (size == UNCOUNTED) {
      int count = 0;
      for (long word : bits) {
        if (word != 0) {
          count += Long.bitCount(word);
        }
      }
      size = count;
    }
    return size;
  }

  boolean isEmpty() {
    return few == null ? next(0) < 0 : few.length == 0;
  }

  boolean contains(int number) {
    if (few != null) {
      return Arrays.binarySearch(few, number) >= 0;
    }
    int word = number >> 6;
    return word < bits.length && (bits[word] & 1L << number) != 0;
  }

  /** The first number that is not below one; negative for none. */
  int next(int from) {
    if (few != null) {
      int found = Arrays.binarySearch(few, from);
      int at = found < 0 ? -found - 1 : found;
      return at < few.length ? few[at] : -1;
    }
    int at = from >> 6;
    if (at >= bits.length) {
      return -1;
    }
    long word = bits[at] & -1L << from;
    while (word == 0) {
      if (++at == bits.length) {
        return -1;
      }
      word = bits[at];
    }
    return (at << 6) + Long.numberOfTrailingZeros(word);
  }

  /** The first so many numbers. */
  NumberSet first(int most) {
    int[] first = new int[Math.min(most, size())];
    int number = -1;
    for (int i = 0; i < first.length; i++) {
      number = next(number + 1);
      first[i] = number;
    }
    return of(first);
  }

  /** All numbers in order; not to be changed. */
  int[] numbers() {
    if (few != null) {
      return few;
    }
    int[] all = new int[size()];
    int count = 0;
    for (int at = 0; at < bits.length; at++) {
      for (long word = bits[at]; word != 0; word &= word - 1) {
        all[count++] = (at << 6) + Long.numberOfTrailingZeros(word);
      }
    }
    return all;
  }

  private void addTo(long[] sum) {
    if (few != null) {
      for (int number : few) {
        sum[number >> 6] |= 1L << number;
      }
      return;
    }
    for (int i = 0; i < bits.length; i++) {
      sum[i] |= bits[i];
    }
  }

  /** What is in this set, in the other or in both. */
  NumberSet or(NumberSet other) {
    if (other == NONE || other == this) {
      return this;
    } else if (this == NONE) {
      return other;
    } else if (few != null && other.few != null) {
      return merged(few, other.few);
    }
    NumberSet wider = width() < other.width() ? other : this;
    long[] sum = Arrays.copyOf(wider.few == null ? wider.bits : new long[0], wider.width());
    addTo(sum);
    other.addTo(sum);
    return ofBits(sum);
  }

  /** How many longs have a bit for each number. */
  private int width() {
    return few == null ? bits.length : few.length == 0 ? 0 : (few[few.length - 1] >> 6) + 1;
  }

  private static NumberSet merged(int[] ours, int[] theirs) {
    int[] sum = new int[ours.length + theirs.length];
    int count = 0;
    int at = 0;
    for (int number : ours) {
      while (at < theirs.length && theirs[at] < number) {
        sum[count++] = theirs[at++];
      }
      if (at < theirs.length && theirs[at] == number) {
        at++;
      }
      sum[count++] = number;
    }
    int rest = theirs.length - at;
    System.arraycopy(theirs, at, sum, count, rest);
    return of(cut(sum, count + rest));
  }

  /** What is in both sets. */
  NumberSet and(NumberSet other) {
    if (few == null && other.few == null) {
      long[] both = new long[Math.min(bits.length, other.bits.length)];
      for (int i = 0; i < both.length; i++) {
        both[i] = bits[i] & other.bits[i];
      }
      return ofBits(both);
    } else if (few == null || other.few != null && other.few.length < few.length) {
      return other.among(this, true);
    }
    return among(other, true);
  }

  /** What is in this set and not in the other. */
  NumberSet without(NumberSet other) {
    if (other == NONE) {
      return this;
    } else if (few != null) {
      return among(other, false);
    }
    long[] rest = bits.clone();
    if (other.few == null) {
      int common = Math.min(rest.length, other.bits.length);
      for (int i = 0; i < common; i++) {
        rest[i] &= ~other.bits[i];
      }
      return ofBits(rest);
    }
    for (int number : other.few) {
      if (number >> 6 < rest.length) {
        rest[number >> 6] &= ~(1L << number);
      }
    }
    return ofBits(rest);
  }

  /** Those of few that are in another set, or are not. */
  private NumberSet among(NumberSet other, boolean in) {
    int[] kept = new int[few.length];
    int count = 0;
    if (other.few == null) {
      for (int number : few) {
        if (other.contains(number) == in) {
          kept[count++] = number;
        }
      }
    } else {
      int[] theirs = other.few;
      int at = 0;
      for (int number : few) {
        while (at < theirs.length && theirs[at] < number) {
          at++;
        }
        if ((at < theirs.length && theirs[at] == number) == in) {
          kept[count++] = number;
        }
      }
    }
    return count == few.length ? this : of(cut(kept, count));
  }

  private static int[] cut(int[] numbers, int count) {
    return count == numbers.length ? numbers : Arrays.copyOf(numbers, count);
  }
}
