package merese.model;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.TreeSet;
import merese.model.LocatorLevel.Facing;

/** Prints places: one alone, several under one plural label, and ranges with what is left. */
final class LocatorSeries {
  private LocatorSeries() {}

  /** A place with all its levels: "vol. II, pl. 5", "plate 1:16". */
  static String printed(List<LocatorLevel> place) {
    StringBuilder out = new StringBuilder();
    for (LocatorLevel level : place) {
      out.append(out.isEmpty() || level.isJoined() ? "" : ", ").append(level.printed());
    }
    return out.toString();
  }

  /** Rule R5: sorted, repeated ones dropped, neighbours of one kind under one label. */
  static List<String> inPhysicalOrder(Collection<Locator> locators) {
    TreeSet<Locator> sorted = new TreeSet<>();
    for (Locator locator : locators) {
      sorted.addAll(locator.members());
    }
    List<List<Locator>> groups = new ArrayList<>();
    for (Locator member : sorted) {
      List<Locator> group = groups.isEmpty() ? List.of() : groups.get(groups.size() - 1);
      Locator before = group.isEmpty() ? null : group.get(group.size() - 1);
      if (before != null && samePlace(before.levels(), member.levels())) {
        continue;
      }
      if (before != null && mayShareLabel(before.levels(), member.levels())) {
        group.add(member);
      } else {
        groups.add(new ArrayList<>(List.of(member)));
      }
    }
    List<String> printed = new ArrayList<>(); // a process pays for the first use of a lambda
    for (List<Locator> group : groups) {
      printed.add(underOneLabel(group));
    }
    return List.copyOf(printed);
  }

  static boolean samePlace(List<LocatorLevel> a, List<LocatorLevel> b) {
    if (a.size() != b.size()) {
      return false;
    }
    for (int i = 0; i < a.size(); i++) {
      if (!a.get(i).sameAs(b.get(i))) {
        return false;
      }
    }
    return true;
  }

  /** Where the innermost level that has a label of its own stands. */
  private static int labelled(List<LocatorLevel> place) {
    int at = place.size() - 1;
    while (at > 0 && place.get(at).isJoined()) {
      at--;
    }
    return at;
  }

  private static boolean mayShareLabel(List<LocatorLevel> a, List<LocatorLevel> b) {
    int at = labelled(a);
    LocatorLevel left = a.get(at);
    if (at != labelled(b) || !samePlace(a.subList(0, at), b.subList(0, at))) {
      return false;
    }
    LocatorLevel right = b.get(at);
    return LocatorOrder.run(left) == LocatorOrder.run(right)
        && left.number().isPresent()
        && right.number().isPresent()
        && left.label().isEmpty() == right.label().isEmpty()
        && left instanceof Facing == right instanceof Facing;
  }

  private static String underOneLabel(List<Locator> group) {
    if (group.size() == 1) {
      return group.get(0).printed();
    }
    List<LocatorLevel> first = group.get(0).levels();
    int at = labelled(first);
    String outer = printed(first.subList(0, at));
    StringBuilder out = new StringBuilder(outer).append(outer.isEmpty() ? "" : ", ");
    String plural = plural(group, at);
    out.append(plural).append(plural.isEmpty() ? "" : " ");
    for (int i = 0; i < group.size(); i++) {
      out.append(i == 0 ? "" : ", ").append(unlabelled(group.get(i).levels(), at));
    }
    return out.toString();
  }

  /** The plural of the label all share, or the house's where they were typed differently. */
  private static String plural(List<Locator> group, int at) {
    LocatorLevel first = group.get(0).levels().get(at);
    if (first.label().isEmpty()) {
      return "";
    }
    boolean alike = true;
    for (Locator member : group) {
      alike &= member.levels().get(at).label().equals(first.label());
    }
    if (first instanceof Facing facing) {
      return alike
          ? LocatorInsert.pluralOf(facing)
          : LocatorKind.INSERT.plural() + " " + facing.faced().plural();
    }
    return alike ? LocatorLabels.pluralOf(first.kind(), first.label()) : first.kind().plural();
  }

  /** "vol. II, pp. 38–41, 60", of stretches of pages in one place. */
  static String listed(List<List<Locator>> stretches) {
    Locator one = stretches.get(0).get(0);
    List<LocatorLevel> first = one.levels();
    int at = first.size() - 1;
    LocatorLevel from = first.get(at);
    if (stretches.size() == 1 && stretches.get(0).size() == 1) {
      return one.printed();
    } else if (stretches.size() > 1 && from.isJoined()) {
      return String.join("; ", stretches.stream().map(s -> listed(List.of(s))).toList());
    }
    List<String> numbers = new ArrayList<>();
    for (List<Locator> stretch : stretches) {
      String begin = stretch.get(0).levels().get(at).value();
      String end = stretch.get(stretch.size() - 1).levels().get(at).value();
      numbers.add(stretch.size() == 1 ? begin : begin + "–" + end);
    }
    String outer = printed(first.subList(0, at));
    String plural = from.isJoined() ? "" : LocatorLabels.pluralOf(from.kind(), from.label());
    String begin = outer.isEmpty() ? "" : from.isJoined() ? outer : outer + ", ";
    String label = from.isJoined() ? from.label() : plural + (plural.isEmpty() ? "" : " ");
    return begin + label + String.join(", ", numbers);
  }

  private static String unlabelled(List<LocatorLevel> place, int at) {
    StringBuilder out = new StringBuilder(place.get(at).valueAndPosition());
    for (LocatorLevel level : place.subList(at + 1, place.size())) {
      out.append(level.printed());
    }
    return out.toString();
  }

  /** A run in which the exceptions are resolved: "pls XXXVIII–XXXIX and XLI–XLII". */
  static String withExceptionsApplied(LocatorRun run, String text) {
    List<String> stretches = new ArrayList<>();
    int places = 0;
    for (LocatorRun.Span span : run.spans) {
      for (List<List<LocatorLevel>> stretch : run.stretches(span)) {
        stretches.add(stretch(run.outer.size(), stretch));
        places += stretch.size();
      }
    }
    String typed = text.substring(run.begin, run.numbersBegin);
    String singular = run.label.singular() + " ";
    String plural = run.label.isPlural() ? typed : run.label.plural() + " ";
    StringBuilder out = new StringBuilder(places == 1 ? singular : plural);
    for (int i = 0; i < stretches.size(); i++) {
      String joint = i == 0 ? "" : i == stretches.size() - 1 ? " and " : ", ";
      out.append(joint).append(stretches.get(i));
    }
    return out.toString();
  }

  private static String stretch(int at, List<List<LocatorLevel>> places) {
    List<LocatorLevel> first = places.get(0);
    List<LocatorLevel> last = places.get(places.size() - 1);
    if (places.size() == 1) {
      return unlabelled(first, at);
    }
    LocatorLevel end = last.get(last.size() - 1);
    List<LocatorLevel> start = new ArrayList<>(first);
    start.set(start.size() - 1, start.get(start.size() - 1).at(""));
    return unlabelled(start, at) + "–" + end.valueAndPosition();
  }
}
