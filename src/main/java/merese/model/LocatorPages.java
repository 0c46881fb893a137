package merese.model;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.TreeSet;
import merese.model.LocatorLevel.Facing;
import merese.model.LocatorLevel.Numbered;
import merese.model.LocatorNumber.Side;

/** Turning pages: which leaf a place is on, and which comes after it. */
final class LocatorPages {
  private LocatorPages() {}

  /**
   * The levels down to what lies open: the innermost page, folio or plate; else the outermost level
   * that is neither a volume nor a part.
   */
  static List<LocatorLevel> page(List<LocatorLevel> place) {
    int end = 0;
    for (int i = 0; i < place.size(); i++) {
      if (isLeaf(place.get(i).kind())) {
        end = i + 1;
      }
    }
    if (end == 0) {
      while (end < place.size() - 1 && holdsLeaves(place.get(end).kind())) {
        end++;
      }
      end++;
    }
    List<LocatorLevel> page = new ArrayList<>(place.subList(0, end));
    page.set(end - 1, page.get(end - 1).at(""));
    return page;
  }

  private static boolean isLeaf(LocatorKind kind) {
    return switch (kind) {
      case PAGE, FOLIO, PLATE, COLOUR_PLATE, INSERT -> true;
      default -> false;
    };
  }

  private static boolean holdsLeaves(LocatorKind kind) {
    return kind == LocatorKind.VOLUME || kind == LocatorKind.PART;
  }

  /** Empty where it cannot be counted. */
  static List<LocatorLevel> stepped(List<LocatorLevel> page, int by) {
    LocatorLevel last = page.get(page.size() - 1);
    LocatorLevel to;
    if (last instanceof Facing facing) {
      LocatorNumber number = counted(facing.numeral(), by > 0 ? by : by + 1);
      String label = facing.faced().singular();
      to = number == null ? null : new Numbered(facing.faced(), label, number, "");
    } else if (last instanceof Numbered numbered) {
      LocatorNumber number = counted(numbered.numeral(), by);
      to = number == null ? null : new Numbered(last.kind(), last.label(), number, "");
    } else {
      return List.of();
    }
    if (to == null || !LocatorNumberReader.readsBack(to.kind(), to.number().orElseThrow())) {
      return List.of();
    }
    List<LocatorLevel> stepped = new ArrayList<>(page);
    stepped.set(stepped.size() - 1, to);
    return stepped;
  }

  /** Null where there is no such number: nothing comes before 1, and nothing after plate Z. */
  private static LocatorNumber counted(LocatorNumber from, int by) {
    int digits = from.printed().startsWith("0") ? from.digits() : 0;
    if (!from.decimals().isEmpty()) {
      List<Long> decimals = new ArrayList<>(from.decimals());
      int at = decimals.size() - 1;
      decimals.set(at, decimals.get(at) + by);
      return decimals.get(at) < 1
          ? null
          : from.withDecimals(decimals).withSuffix("").written(digits);
    }
    long value = from.value() + by;
    Side side = from.side();
    if (side != Side.NONE) {
      long leaf = from.value() * 2 + (side == Side.VERSO ? 1 : 0) + by;
      value = Math.floorDiv(leaf, 2L);
      side = Math.floorMod(leaf, 2L) == 0 ? Side.RECTO : Side.VERSO;
    }
    boolean tooMany =
        switch (from.style()) {
          case ARABIC -> false;
          case ROMAN_UPPER, ROMAN_LOWER -> value > RomanNumeral.LARGEST;
          case LETTER_UPPER, LETTER_LOWER -> value > 'Z' - 'A' + 1;
        };
    return value < 1 || tooMany
        ? null
        : from.withValue(value).withSide(side).withSuffix("").written(digits);
  }

  static boolean isOneRun(List<LocatorLevel> a, List<LocatorLevel> b) {
    int last = a.size() - 1;
    if (a.size() != b.size()
        || !LocatorSeries.samePlace(a.subList(0, last), b.subList(0, last))
        || !(a.get(last) instanceof Numbered left)
        || !(b.get(last) instanceof Numbered right)) {
      return false;
    }
    return left.kind() == right.kind()
        && left.numeral().style() == right.numeral().style()
        && left.numeral().counted() == right.numeral().counted()
        && left.numeral().prefix().equals(right.numeral().prefix())
        && left.numeral().decimals().size() == right.numeral().decimals().size();
  }

  static String listed(Collection<Locator> pages) {
    List<List<Locator>> runs = new ArrayList<>();
    for (Locator page : new TreeSet<>(pages)) {
      List<Locator> run = null;
      for (List<Locator> each : runs) {
        run = run == null && each.get(0).isOfSameRun(page) ? each : run;
      }
      if (run == null) {
        run = new ArrayList<>();
        runs.add(run);
      }
      run.add(page);
    }
    List<String> listed = new ArrayList<>();
    for (List<Locator> run : runs) {
      listed.add(LocatorSeries.listed(stretches(run)));
    }
    return String.join("; ", listed); // after a comma a figure would be one of the plate before
  }

  /** Pages of one run, parted wherever the next does not follow on the one before. */
  private static List<List<Locator>> stretches(List<Locator> run) {
    List<List<Locator>> stretches = new ArrayList<>();
    Locator last = null;
    for (Locator page : run) {
      if (last != null && LocatorSeries.samePlace(last.levels(), page.levels())) {
        continue;
      }
      if (last == null || !follows(page, last)) {
        stretches.add(new ArrayList<>());
      }
      stretches.get(stretches.size() - 1).add(page);
      last = page;
    }
    return stretches;
  }

  /** Both ways: p. 42 comes after p. 41a, and yet before it there is p. 41. */
  private static boolean follows(Locator page, Locator before) {
    List<LocatorLevel> next = stepped(before.levels(), 1);
    List<LocatorLevel> back = stepped(page.levels(), -1);
    return LocatorSeries.samePlace(next, page.levels())
        && LocatorSeries.samePlace(back, before.levels());
  }
}
