package merese.model;

import java.util.ArrayList;
import java.util.List;

/**
 * The runs that are still open, outermost first: what the next label may be inside. After "and" or
 * a semicolon only volumes and parts stay open, except that columns, notes and captions after "and"
 * are still inside what came before. A label of a kind that is open stands beside that one.
 */
final class LocatorNesting {

  /** What stands before a label or number. */
  enum Joint {
    START,
    SPACE,
    COMMA,
    AND,
    SEMICOLON
  }

  private final List<LocatorRun> open = new ArrayList<>();

  /** Opens a run under the nearest open one that can hold it. */
  LocatorRun start(Joint joint, LocatorLabels.Form form, LocatorKind faced, int begin) {
    LocatorKind kind = form.kind();
    closeFrom(stillOpen(joint, kind));
    while (!open.isEmpty() && !holds(innermost(), kind)) {
      closeFrom(open.size() - 1);
    }
    List<LocatorLevel> outer = List.of();
    if (!open.isEmpty()) {
      LocatorRun parent = innermost();
      parent.standsItself |= !parent.holdsOthers && joint == Joint.AND && kind.isAlwaysInside();
      parent.holdsOthers = true;
      outer = parent.onlyPath();
    }
    LocatorRun run = new LocatorRun(form, faced, outer, begin);
    open.add(run);
    return run;
  }

  /** How many of the open runs a label of the kind may be inside, as far as its joint goes. */
  private int stillOpen(Joint joint, LocatorKind kind) {
    int books = 0;
    while (books < open.size() && isBook(open.get(books).kind())) {
      books++;
    }
    int same = 0;
    while (same < open.size() && open.get(same).kind() != kind) {
      same++;
    }
    if (joint == Joint.SEMICOLON) {
      return Math.min(books, same);
    }
    boolean beside = joint == Joint.AND && !kind.isAlwaysInside() && same == open.size();
    return beside ? books : same;
  }

  private static boolean isBook(LocatorKind kind) {
    return kind == LocatorKind.VOLUME || kind == LocatorKind.PART;
  }

  private static boolean holds(LocatorRun run, LocatorKind inner) {
    return run.isOne() && run.kind().holds(inner);
  }

  private LocatorRun innermost() {
    return open.get(open.size() - 1);
  }

  private void closeFrom(int index) {
    while (open.size() > index) {
      open.remove(open.size() - 1);
    }
  }

  /** Closes one run that turns out to belong inside the next. */
  void close(LocatorRun run) {
    open.remove(run);
  }

  /** Puts a run that was printed before its holder inside it: "pl. 9 facing p. 40". */
  void placeIn(LocatorRun holder, LocatorRun run) {
    holder.holdsOthers = true;
    run.outer = holder.onlyPath();
    open.add(run);
  }

  /** Whether the innermost run is inside a volume that was given by its numeral alone. */
  boolean isInBareVolume() {
    return open.size() > 1
        && open.get(0).kind() == LocatorKind.VOLUME
        && open.get(0).label.singular().isEmpty();
  }
}
