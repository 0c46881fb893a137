package merese.change.checks;

import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import merese.model.Locator;
import merese.model.LocatorKind;
import merese.model.LocatorLevel;
import merese.model.LocatorLevel.Numbered;
import merese.model.LocatorNumber;

/**
 * The numbers that an extent takes in, kind by kind. Of a kind that it does not speak of, and of
 * numbers that cannot be compared, nothing is known.
 */
final class Reach {
  /** What is counted: pages, or roman pages, in a volume or without one. */
  private record Series(String volume, LocatorKind kind, boolean roman) {}

  private record Point(Series series, long number) {}

  private final Map<Series, Set<Long>> numbers = new HashMap<>();
  private final Set<String> volumes = new HashSet<>();

  private Reach() {}

  static Reach of(Locator extent) {
    Reach reach = new Reach();
    for (Locator member : extent.members()) {
      Point point = point(member.levels());
      if (point != null) {
        reach.numbers.computeIfAbsent(point.series(), s -> new HashSet<>()).add(point.number());
        reach.volumes.add(point.series().volume());
      }
    }
    return reach;
  }

  /** Whether any of its places certainly lies outside. */
  boolean leavesOut(Locator locator) {
    for (Locator member : locator.members()) {
      Point point = point(member.levels());
      if (point != null && leavesOut(point)) {
        return true;
      }
    }
    return false;
  }

  /** Whether all its places certainly lie inside. */
  boolean holds(Locator locator) {
    for (Locator member : locator.members()) {
      Point point = point(member.levels());
      if (point == null
          || !numbers.getOrDefault(point.series(), Set.of()).contains(point.number())) {
        return false;
      }
    }
    return true;
  }

  private boolean leavesOut(Point point) {
    String volume = point.series().volume();
    if (!volumes.contains(volume)) {
      return !volume.isEmpty() && !volumes.contains("") && !volumes.isEmpty();
    }
    Set<Long> inside = numbers.get(point.series());
    return inside != null && !inside.contains(point.number());
  }

  /** Null where the place has no number that another can be compared with. */
  private static Point point(List<LocatorLevel> levels) {
    boolean inVolume = levels.get(0).kind() == LocatorKind.VOLUME && levels.size() > 1;
    LocatorLevel level = levels.get(inVolume ? 1 : 0);
    if (!(level instanceof Numbered numbered)) {
      return null;
    }
    LocatorNumber number = numbered.numeral();
    boolean plain = number.prefix().isEmpty() && number.decimals().isEmpty() && !number.counted();
    boolean letter =
        number.style() == LocatorNumber.Style.LETTER_UPPER
            || number.style() == LocatorNumber.Style.LETTER_LOWER;
    if (!plain || letter) {
      return null;
    }
    String volume = inVolume ? volume(levels.get(0)) : "";
    boolean roman = level.kind() == LocatorKind.PAGE && number.style().isRoman();
    return new Point(new Series(volume, level.kind(), roman), number.value());
  }

  private static String volume(LocatorLevel level) {
    return level.number().map(n -> n.value() + n.suffix()).orElse("?");
  }
}
