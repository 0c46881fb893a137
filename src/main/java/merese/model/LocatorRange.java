package merese.model;

import java.util.ArrayList;
import java.util.List;
import merese.model.LocatorNumber.Side;
import merese.model.LocatorNumber.Style;

/**
 * What lies between two numbers. A shorter second number is completed from the first (214–16 is
 * 214–216). Between ends with suffixes of different numbers only whole numbers are counted (9a–11
 * is 9a, 10, 11). Leaves go 12r, 12v, 13r; a leaf without a side is both where the other end has
 * one. Common practice, no source.
 */
final class LocatorRange {
  private static final int MOST_DIGITS_PADDED = 15;

  private LocatorRange() {}

  /** The second number of a range in full; throws unless the range can be counted forwards. */
  static LocatorNumber completed(
      LocatorScanner scanner, int offset, LocatorNumber from, LocatorNumber typed) {
    LocatorNumber to = typed;
    if (from.style() != to.style()) {
      throw scanner.error(
          offset,
          "the range starts with \""
              + from.printed()
              + "\" and ends with \""
              + typed.printed()
              + "\", which are numbered differently",
          "give two ranges, such as iv–xii and 1–12, or list the letters");
    }
    if (to.prefix().isEmpty() && !from.prefix().isEmpty()) {
      to = to.withPrefix(from.prefix()).written(0);
    }
    to = sameDecimals(from, to);
    if (!LocatorScanner.folded(from.prefix()).equals(LocatorScanner.folded(to.prefix()))
        || from.decimals().size() != to.decimals().size()
        || !from.decimals().isEmpty()
            && (from.value() != to.value() || !upToLast(from).equals(upToLast(to)))) {
      throw scanner.error(
          offset,
          "what lies between \""
              + from.printed()
              + "\" and \""
              + typed.printed()
              + "\" cannot be counted",
          "list the numbers, with commas");
    }
    if (to.style() == Style.ARABIC && to.decimals().isEmpty() && to.value() < from.value()) {
      long full = longer(from.value(), to.value(), typed.digits());
      if (full != to.value() && full >= from.value()) {
        to = to.withValue(full).written(0);
      }
    }
    if (LocatorOrder.compareNumbers(from, to) > 0) {
      throw scanner.error(
          offset,
          "the range \"" + from.printed() + "–" + typed.printed() + "\" runs backwards",
          "put the smaller number first");
    }
    return to;
  }

  private static LocatorNumber sameDecimals(LocatorNumber from, LocatorNumber to) {
    if (from.decimals().isEmpty() || !to.decimals().isEmpty() || to.style() != Style.ARABIC) {
      return to;
    }
    List<Long> decimals = new ArrayList<>(upToLast(from));
    decimals.add(longer(last(from), to.value(), to.digits()));
    return to.withValue(from.value()).withDecimals(decimals).written(0);
  }

  private static List<Long> upToLast(LocatorNumber number) {
    return number.decimals().subList(0, Math.max(0, number.decimals().size() - 1));
  }

  private static long last(LocatorNumber number) {
    return number.decimals().get(number.decimals().size() - 1);
  }

  /** The shorter number with the leading digits of the first, if that makes it no smaller. */
  private static long longer(long from, long to, int digits) {
    if (to >= from || digits >= Long.toString(from).length()) {
      return to;
    }
    long unit = 1;
    for (int i = 0; i < digits; i++) {
      unit *= 10;
    }
    return from / unit * unit + to;
  }

  /** How many numbers the range has, both ends included. */
  static long size(LocatorNumber from, LocatorNumber to) {
    if (from.sameAs(to)) {
      return 1;
    }
    if (bySides(from, to)) {
      return lastLeafSide(to) - firstLeafSide(from) + 1;
    }
    if (!from.decimals().isEmpty()) {
      return Math.max(2, last(to) - last(from) + 1);
    }
    if (from.value() == to.value()) {
      return bySuffix(from, to) ? suffixRank(to) - suffixRank(from) + 1L : 2;
    }
    return to.value() - from.value() + 1;
  }

  /** The numbers of the range in order, printed in the style of its ends. */
  @SuppressWarnings("ReferenceEquality") // as in Span.isOne
  static List<LocatorNumber> expanded(LocatorNumber from, LocatorNumber to) {
    if (from == to) {
      return List.of(from);
    }
    List<LocatorNumber> all = new ArrayList<>();
    long size = size(from, to);
    boolean counted = from.counted() && to.counted();
    int digits = from.printed().startsWith("0") ? Math.min(from.digits(), MOST_DIGITS_PADDED) : 0;
    for (long i = 0; i < size; i++) {
      if (bySides(from, to)) {
        long leafSide = firstLeafSide(from) + i;
        Side side = leafSide % 2 == 0 ? Side.RECTO : Side.VERSO;
        LocatorNumber leaf = from.withSuffix("").withValue(leafSide / 2).withSide(side);
        all.add(leaf.withCounted(counted).written(digits));
      } else if (i == 0) {
        all.add(from);
      } else if (i == size - 1) {
        all.add(to);
      } else {
        all.add(between(from, to, i).withCounted(counted).written(digits));
      }
    }
    return all;
  }

  private static LocatorNumber between(LocatorNumber from, LocatorNumber to, long steps) {
    if (!from.decimals().isEmpty()) {
      List<Long> decimals = new ArrayList<>(upToLast(from));
      decimals.add(last(from) + steps);
      return from.withDecimals(decimals).withSuffix("");
    }
    if (from.value() == to.value()) {
      char first = Character.isUpperCase(to.suffix().charAt(0)) ? 'A' : 'a';
      return from.withSuffix(String.valueOf((char) (first + suffixRank(from) + steps - 1)));
    }
    return from.withValue(from.value() + steps).withSuffix("");
  }

  private static boolean bySides(LocatorNumber from, LocatorNumber to) {
    boolean sides = from.side() != Side.NONE || to.side() != Side.NONE;
    return sides && from.suffix().isEmpty() && to.suffix().isEmpty() && from.decimals().isEmpty();
  }

  private static long firstLeafSide(LocatorNumber from) {
    return from.value() * 2 + (from.side() == Side.VERSO ? 1 : 0);
  }

  private static long lastLeafSide(LocatorNumber to) {
    return to.value() * 2 + (to.side() == Side.RECTO ? 0 : 1);
  }

  private static boolean bySuffix(LocatorNumber from, LocatorNumber to) {
    boolean fromPlain = from.suffix().isEmpty() || from.hasLetterSuffix();
    boolean sameCase =
        from.suffix().isEmpty()
            || to.hasLetterSuffix()
                && Character.isUpperCase(from.suffix().charAt(0))
                    == Character.isUpperCase(to.suffix().charAt(0));
    return fromPlain && to.hasLetterSuffix() && sameCase;
  }

  private static int suffixRank(LocatorNumber number) {
    return number.suffix().isEmpty()
        ? 0
        : (int) LocatorNumberReader.letterValue(number.suffix().charAt(0));
  }
}
