package merese.answer.pull;

import java.util.List;
import java.util.Optional;
import merese.model.Locator;
import merese.model.LocatorKind;
import merese.model.LocatorLevel;

/** What a locator says of where to put a slip and what to point at. */
final class Places {
  private Places() {}

  /** Whether what is at {@code place} is at {@code asked} or inside it: "fig. 3" of "pl. XII". */
  static boolean holds(Locator asked, Locator place) {
    for (Locator outer : asked.members()) {
      for (Locator inner : place.members()) {
        if (starts(outer.levels(), inner.levels())) {
          return true;
        }
      }
    }
    return false;
  }

  /** Whether neither says more than the other of what is inside a page or plate. */
  static boolean areOneDepth(Locator a, Locator b) {
    return a.levels().size() == b.levels().size();
  }

  private static boolean starts(List<LocatorLevel> outer, List<LocatorLevel> inner) {
    if (outer.size() > inner.size()) {
      return false;
    }
    for (int i = 0; i < outer.size(); i++) {
      LocatorLevel one = outer.get(i);
      LocatorLevel other = one.position().isEmpty() ? inner.get(i).at("") : inner.get(i);
      if (!one.sameAs(other)) {
        return false;
      }
    }
    return true;
  }

  /**
   * The page that holds or faces the place where the locator says it; else the plate; else what
   * there is, such as a figure.
   */
  static String slip(Locator locator) {
    if (locator.count() > 1) {
      return locator.withExceptionsApplied().printed();
    }
    List<LocatorLevel> levels = locator.levels();
    int leaf = leaf(levels);
    if (levels.get(leaf) instanceof LocatorLevel.Facing facing) {
      String faced = facing.faced().singular() + " " + facing.numeral().printed();
      return printed(levels.subList(0, leaf), true, faced);
    }
    return printed(levels.subList(0, leaf + 1), true, "");
  }

  /** What to point at on that page or plate; empty where it is the whole of it. */
  static Optional<String> pointAt(Locator locator) {
    if (locator.count() > 1) {
      return Optional.empty();
    }
    List<LocatorLevel> levels = locator.levels();
    int leaf = leaf(levels);
    LocatorLevel level = levels.get(leaf);
    boolean figureAlone =
        !isLeaf(level.kind()) && leaf == levels.size() - 1 && level.kind() != LocatorKind.TIMESTAMP;
    boolean itself = level instanceof LocatorLevel.Facing || figureAlone;
    List<LocatorLevel> inside = levels.subList(itself ? leaf : leaf + 1, levels.size());
    if (inside.isEmpty()) {
      return level.position().isEmpty() ? Optional.empty() : Optional.of(level.position());
    }
    String before = level.position().isEmpty() || inside.get(0) == level ? "" : level.position();
    String words = printed(inside, false, before);
    return (", " + slip(locator)).endsWith(", " + words) ? Optional.empty() : Optional.of(words);
  }

  private static String printed(List<LocatorLevel> levels, boolean bare, String rest) {
    StringBuilder out = new StringBuilder(bare ? "" : rest);
    for (LocatorLevel level : levels) {
      String text = (bare ? level.at("") : level).printed();
      out.append(out.isEmpty() || level.isJoined() ? "" : ", ").append(text);
    }
    if (bare && !rest.isEmpty()) {
      out.append(out.isEmpty() ? "" : ", ").append(rest);
    }
    return out.toString();
  }

  /** The level that is a page, a plate or another leaf; else the first one inside a volume. */
  private static int leaf(List<LocatorLevel> levels) {
    int first = levels.size() - 1;
    for (int i = levels.size() - 1; i >= 0; i--) {
      LocatorKind kind = levels.get(i).kind();
      first = kind == LocatorKind.VOLUME || kind == LocatorKind.PART ? first : i;
    }
    for (int i = 0; i < levels.size(); i++) {
      if (isLeaf(levels.get(i).kind())) {
        return i;
      }
    }
    return first;
  }

  private static boolean isLeaf(LocatorKind kind) {
    return switch (kind) {
      case PAGE, FOLIO, PLATE, COLOUR_PLATE, INSERT, FRONTISPIECE, FRONT_ENDPAPER, BACK_ENDPAPER ->
          true;
      default -> false;
    };
  }
}
