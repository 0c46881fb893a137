package merese.model;

import java.util.ArrayList;
import java.util.List;
import merese.model.LocatorLevel.Facing;
import merese.model.LocatorLevel.Numbered;

/**
 * What stands under one label: spans of numbers, those excepted, and the levels that hold them. It
 * is filled by the parser and not changed afterwards.
 */
final class LocatorRun {

  /**
   * One number, a range, or a level without a number. In "plates 1:16–17" the whole is 1, the joint
   * ":" and the ends 16 and 17.
   */
  record Span(
      LocatorLevel fixed,
      LocatorNumber whole,
      String joint,
      LocatorNumber from,
      LocatorNumber to,
      String position,
      int begin) {

    static Span of(LocatorLevel level, int begin) {
      return new Span(level, null, "", null, null, level.position(), begin);
    }

    static Span of(LocatorNumber from, LocatorNumber to, int begin) {
      return new Span(null, null, "", from, to, "", begin);
    }

    /** This span as items of a whole, "1:16–17". */
    Span in(LocatorNumber all, String sign) {
      return new Span(fixed, all, sign, from, to, position, begin);
    }

    /** All its numbers, counted out. */
    List<LocatorNumber> numbers() {
      return fixed == null ? LocatorRange.expanded(from, to) : List.of();
    }

    @SuppressWarnings("ReferenceEquality") // one number is read once; a range has two of them
    boolean isOne() {
      return fixed != null || from == to;
    }

    long size() {
      return isOne() ? 1 : LocatorRange.size(from, to);
    }

    Span at(String place) {
      LocatorLevel placed = fixed == null ? null : fixed.at(place);
      return new Span(placed, whole, joint, from, to, place, begin);
    }
  }

  final LocatorLabels.Form label;
  final LocatorKind faced;
  final int begin;
  final List<Span> spans = new ArrayList<>();
  final List<Span> exceptions = new ArrayList<>();
  List<LocatorLevel> outer;
  int numbersBegin;
  int end;
  boolean holdsOthers;
  boolean standsItself;
  boolean repeatsLabel;

  LocatorRun(LocatorLabels.Form label, LocatorKind faced, List<LocatorLevel> outer, int begin) {
    this.label = label;
    this.faced = faced;
    this.outer = outer;
    this.begin = begin;
    this.numbersBegin = begin;
    this.end = begin;
  }

  LocatorKind kind() {
    return label.kind();
  }

  /** Whether "1:16" under this label is item 16 of plate 1, and not a time. */
  boolean mayHaveItems() {
    return faced == null && (kind().isPlate() || kind() == LocatorKind.FIGURE);
  }

  Span last() {
    return spans.get(spans.size() - 1);
  }

  /** Whether there is a range, so that something can be excepted. */
  boolean hasRange() {
    for (Span span : spans) {
      if (!span.isOne()) {
        return true;
      }
    }
    return false;
  }

  /** Whether this names one place, so that others can be inside it. */
  boolean isOne() {
    return spans.size() == 1 && last().isOne() && exceptions.isEmpty();
  }

  /** Whether its members are places of their own and not only holders of others. */
  boolean isPlace() {
    return !holdsOthers || standsItself;
  }

  /** The places in the order printed, without those excepted. */
  List<List<LocatorLevel>> places() {
    List<List<LocatorLevel>> places = new ArrayList<>();
    for (Span span : spans) {
      for (List<List<LocatorLevel>> stretch : stretches(span)) {
        places.addAll(stretch);
      }
    }
    return places;
  }

  /** The places of one span, cut where some are excepted. */
  List<List<List<LocatorLevel>>> stretches(Span span) {
    List<List<List<LocatorLevel>>> stretches = new ArrayList<>();
    if (span.fixed() != null) {
      stretches.add(List.of(path(span.fixed())));
      return stretches;
    }
    List<List<LocatorLevel>> current = new ArrayList<>();
    for (LocatorNumber number : span.numbers()) {
      if (!isExcepted(span, number)) {
        current.add(path(span, number));
      } else if (!current.isEmpty()) {
        stretches.add(current);
        current = new ArrayList<>();
      }
    }
    if (!current.isEmpty()) {
      stretches.add(current);
    }
    return stretches;
  }

  /** Whether what an exception takes away is among the numbers of this run. */
  boolean names(Span exception) {
    for (Span span : spans) {
      for (LocatorNumber number : span.numbers()) {
        if (covers(exception, span, number)) {
          return true;
        }
      }
    }
    return false;
  }

  private boolean isExcepted(Span span, LocatorNumber number) {
    for (Span exception : exceptions) {
      if (covers(exception, span, number)) {
        return true;
      }
    }
    return false;
  }

  /** Whether the exception takes away this number; a leaf without a side takes both its sides. */
  static boolean covers(Span exception, Span span, LocatorNumber number) {
    boolean sameWhole =
        exception.whole() == null
            ? span.whole() == null
            : span.whole() != null
                && LocatorOrder.compareNumbers(exception.whole(), span.whole()) == 0;
    return sameWhole
        && LocatorOrder.compareNumbers(like(number, exception.from()), exception.from()) >= 0
        && LocatorOrder.compareNumbers(like(number, exception.to()), exception.to()) <= 0;
  }

  private static LocatorNumber like(LocatorNumber number, LocatorNumber end) {
    LocatorNumber like = number.withCounted(end.counted());
    return end.side() == LocatorNumber.Side.NONE ? like.withSide(LocatorNumber.Side.NONE) : like;
  }

  /** The levels of the only place. */
  List<LocatorLevel> onlyPath() {
    return last().fixed() != null ? path(last().fixed()) : path(last(), last().from());
  }

  private List<LocatorLevel> path(LocatorLevel level) {
    List<LocatorLevel> path = new ArrayList<>(outer);
    path.add(level);
    return path;
  }

  private List<LocatorLevel> path(Span span, LocatorNumber number) {
    if (span.whole() == null) {
      return path(level(number, span.position()));
    }
    List<LocatorLevel> path = path(level(span.whole(), ""));
    path.add(new Numbered(LocatorKind.ITEM, span.joint(), number, span.position()));
    return path;
  }

  private LocatorLevel level(LocatorNumber number, String position) {
    return faced == null
        ? new Numbered(kind(), label.singular(), number, position)
        : new Facing(faced, label.singular(), number, position);
  }
}
