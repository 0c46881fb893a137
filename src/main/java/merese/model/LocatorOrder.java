package merese.model;

import java.util.Comparator;
import java.util.List;
import merese.model.LocatorLevel.Facing;
import merese.model.LocatorLevel.Moment;

/**
 * Physical order (rule R5) of places given as levels: volume outermost, then part, then the order
 * of {@link LocatorKind}; roman pages before arabic ones; what faces a page directly after it;
 * numbers by value, whatever their style; 9 before 9a before 10; 2v before 12r before 12v. A place
 * comes before what is inside it.
 */
final class LocatorOrder {

  /** Physical order, equal places by their text. A class, since a lambda would start slower. */
  static final Comparator<List<LocatorLevel>> PLACES_THEN_TEXT =
      new Comparator<>() {
        @Override
        public int compare(List<LocatorLevel> a, List<LocatorLevel> b) {
          int byPlace = comparePlaces(a, b);
          return byPlace != 0
              ? byPlace
              : LocatorSeries.printed(a).compareTo(LocatorSeries.printed(b));
        }
      };

  private LocatorOrder() {}

  static int comparePlaces(List<LocatorLevel> a, List<LocatorLevel> b) {
    int fromA = 0;
    int fromB = 0;
    for (LocatorKind outer : new LocatorKind[] {LocatorKind.VOLUME, LocatorKind.PART}) {
      boolean hasA = fromA < a.size() && a.get(fromA).kind() == outer;
      boolean hasB = fromB < b.size() && b.get(fromB).kind() == outer;
      int byOuter =
          hasA && hasB ? compareLevels(a.get(fromA), b.get(fromB)) : Boolean.compare(hasA, hasB);
      if (byOuter != 0) {
        return byOuter;
      }
      fromA += hasA ? 1 : 0;
      fromB += hasB ? 1 : 0;
    }
    while (fromA < a.size() && fromB < b.size()) {
      int byLevel = compareLevels(a.get(fromA++), b.get(fromB++));
      if (byLevel != 0) {
        return byLevel;
      }
    }
    return Integer.compare(a.size() - fromA, b.size() - fromB);
  }

  private static int compareLevels(LocatorLevel a, LocatorLevel b) {
    int byRun = Integer.compare(run(a), run(b));
    if (byRun != 0) {
      return byRun;
    }
    int byNumber =
        a.number().isPresent() && b.number().isPresent()
            ? compareNumbers(a.number().get(), b.number().get())
            : Boolean.compare(a.number().isPresent(), b.number().isPresent());
    if (byNumber == 0 && a instanceof Moment left && b instanceof Moment right) {
      byNumber = Integer.compare(left.from(), right.from());
      byNumber = byNumber != 0 ? byNumber : Integer.compare(left.to(), right.to());
    }
    if (byNumber != 0) {
      return byNumber;
    }
    int byFacing = Boolean.compare(a instanceof Facing, b instanceof Facing);
    return byFacing != 0 ? byFacing : a.position().compareTo(b.position());
  }

  /** The run a level belongs to: things of one run are ordered by number among themselves. */
  static int run(LocatorLevel level) {
    LocatorKind kind = level instanceof Facing facing ? facing.faced() : level.kind();
    boolean preliminary =
        kind == LocatorKind.PAGE
            && level.number().isPresent()
            && level.number().get().style().isRoman();
    return kind.ordinal() * 2 + (kind == LocatorKind.PAGE && !preliminary ? 1 : 0);
  }

  /** Numbers by prefix, value, decimals, suffix and side; a counted one after a printed one. */
  static int compareNumbers(LocatorNumber a, LocatorNumber b) {
    int result = Boolean.compare(a.style().isLetter(), b.style().isLetter());
    if (result == 0) {
      result = LocatorScanner.folded(a.prefix()).compareTo(LocatorScanner.folded(b.prefix()));
    }
    if (result == 0) {
      result = Long.compare(a.value(), b.value());
    }
    for (int i = 0; result == 0 && i < a.decimals().size() && i < b.decimals().size(); i++) {
      result = Long.compare(a.decimals().get(i), b.decimals().get(i));
    }
    if (result == 0) {
      result = Integer.compare(a.decimals().size(), b.decimals().size());
    }
    if (result == 0) {
      result = suffixKey(a.suffix()).compareTo(suffixKey(b.suffix()));
    }
    if (result == 0) {
      result = a.side().compareTo(b.side());
    }
    return result != 0 ? result : Boolean.compare(a.counted(), b.counted());
  }

  /** Plain, starred, bis, ter, quater, then letters. */
  private static String suffixKey(String suffix) {
    return switch (suffix) {
      case "" -> "";
      case "*" -> "0";
      case "bis" -> "1";
      case "ter" -> "2";
      case "quater" -> "3";
      default -> LocatorScanner.folded(suffix);
    };
  }
}
