package merese.model;

import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;

/**
 * Where in a source something stands: a page, plate, figure, lot, folio and so on, as it was typed.
 *
 * <p>Guarantees:
 *
 * <ul>
 *   <li>What was typed is printed again, byte for byte. Equality is that of the printed text.
 *   <li>The order is the physical one (rule R5); equal places are ordered by their text, so that it
 *       agrees with equality. A locator with several members sorts by the first, then the next.
 *       Pages with roman numbers are preliminaries, in capitals too.
 *   <li>{@link #parse} accepts any text or throws a {@link LocatorException}; no locator has more
 *       than {@value LocatorParser#MOST_MEMBERS} members.
 * </ul>
 *
 * <p>Reading. A comma before a new label means "in it" where that makes sense ("pl. XII, fig. 3",
 * "p. 41, n. 3") and the outer one is a single place; otherwise the second stands beside the first
 * ("pp. 13–16, plates 1:16–17"), as does anything after "and" or a semicolon ("p. 40 and pl. 9"). A
 * volume holds until another is named. "plates 1:16–17, 2:18" are items 16 and 17 of plate 1 and
 * item 18 of plate 2 (so used in the bibliography of Ancient Glass, Getty, 2025). The rest is
 * common practice, no source.
 */
public final class Locator implements Comparable<Locator> {
  private final String text;
  private final List<LocatorRun> runs;
  private final LocatorKind outermost;
  private List<List<LocatorLevel>> places;

  /**
   * The kind and the printed numbers of a locator that is one label with numbers, such as "pp.
   * 41–43".
   *
   * @param kind what is counted; a citation room knows which kinds its style has a label for
   * @param value what was printed after the label: "41–43"
   */
  public record Simple(LocatorKind kind, String value) {}

  Locator(String text, List<LocatorRun> runs, LocatorKind kind) {
    this.text = text;
    this.runs = runs;
    this.outermost = kind;
  }

  /**
   * Reads a locator.
   *
   * @throws LocatorException if the text is not one, saying where, what is wrong and what to write
   */
  public static Locator parse(String text) {
    Objects.requireNonNull(text, "text");
    return new LocatorParser(text).parse();
  }

  /**
   * Whether a text begins as a place does, right or wrong: with a label and a number, as "pp. 9–2"
   * does, with the label alone, as in "frontispiece", or with nothing but numbers.
   */
  public static boolean isBegunIn(String text) {
    return LocatorBeginning.isIn(text);
  }

  /**
   * All members of all the locators, each once, sorted; neighbours of one kind in one place stand
   * together under one plural label, as in "pls IX, XXXVIII, XL". A member alone is as it was
   * typed.
   */
  public static List<String> inPhysicalOrder(Collection<Locator> locators) {
    return LocatorSeries.inPhysicalOrder(locators);
  }

  /** The text, as it was typed. */
  public String printed() {
    return text;
  }

  /** The kind of the outermost level that is printed first: VOLUME for "vol. II, pl. 5". */
  public LocatorKind labelKind() {
    return outermost;
  }

  /** The levels, outermost first, of the place that is physically first; never empty. */
  public List<LocatorLevel> levels() {
    return places().get(0);
  }

  /** How many single places this names; at least 1. */
  public int count() {
    return places().size();
  }

  /**
   * The single places, each once, in physical order, without those excepted. A locator that is one
   * place is its own only member; those made from a range or list are printed with a singular label
   * in the style that was typed.
   */
  public List<Locator> members() {
    if (isOnePlace()) {
      return List.of(this);
    }
    List<Locator> members = new ArrayList<>(count());
    for (List<LocatorLevel> place : places()) {
      members.add(parse(LocatorSeries.printed(place)));
    }
    return List.copyOf(members);
  }

  /**
   * Whether every place of this is one of another's or part of one, as "p. 41, n. 3" is of "pp.
   * 38–60". A plate between two pages is not of the pages.
   */
  public boolean isWithin(Locator extent) {
    for (List<LocatorLevel> place : places()) {
      boolean within = false;
      for (List<LocatorLevel> of : extent.places()) {
        within |= startsWith(place, of);
      }
      if (!within) {
        return false;
      }
    }
    return true;
  }

  /**
   * The page, plate or other leaf that somebody has open who looks at the physically first place:
   * "pl. XII" of "pl. XII, fig. 3", "vol. II, p. 41" of "vol. II, p. 41, n. 3".
   */
  public Locator page() {
    return parse(LocatorSeries.printed(LocatorPages.page(levels())));
  }

  /**
   * The page so many after the last one of this, or before the first where the number is negative,
   * in the numeral that is printed: "pl. XIII" after "pl. XII", "fol. 12v" after "fol. 12r". The
   * page itself is the one after a leaf that faces it, and the leaf is left out.
   *
   * @return empty where nothing can be counted on, as after a frontispiece or before page 1
   */
  public Optional<Locator> stepped(int by) {
    List<LocatorLevel> from = by < 0 ? levels() : places().get(count() - 1);
    List<LocatorLevel> to = LocatorPages.stepped(LocatorPages.page(from), by);
    return to.isEmpty() ? Optional.empty() : Optional.of(parse(LocatorSeries.printed(to)));
  }

  /** Whether one of the places of this is the other or in it, as "pp. 40–42" is of "p. 41". */
  public boolean isPartlyIn(Locator other) {
    for (List<LocatorLevel> place : places()) {
      for (List<LocatorLevel> of : other.places()) {
        if (startsWith(place, of)) {
          return true;
        }
      }
    }
    return false;
  }

  /**
   * What an index has of its places: each of the places that {@link #isPartlyIn} finds in one of
   * these has the same among its {@link #keysAround}. Places that only look alike may too.
   */
  public Set<String> keys() {
    Set<String> keys = new LinkedHashSet<>();
    for (List<LocatorLevel> place : places()) {
      keys.add(key(place, place.size()));
    }
    return keys;
  }

  /** What an index has of all that its places are in, themselves included. */
  public Set<String> keysAround() {
    Set<String> keys = new LinkedHashSet<>();
    for (List<LocatorLevel> place : places()) {
      for (int levels = 1; levels <= place.size(); levels++) {
        keys.add(key(place, levels));
      }
    }
    return keys;
  }

  private static String key(List<LocatorLevel> place, int levels) {
    StringBuilder key = new StringBuilder();
    for (LocatorLevel level : place.subList(0, levels)) {
      key.append(level.kind().name()).append(' ');
      if (level.number().isPresent()) {
        key.append(level.number().get().value());
      } else {
        key.append(level.value());
      }
      key.append('\n');
    }
    return key.toString();
  }

  /** Whether one page can be counted on to the other: of one kind, in one volume and numeral. */
  public boolean isOfSameRun(Locator other) {
    return LocatorPages.isOneRun(LocatorPages.page(levels()), LocatorPages.page(other.levels()));
  }

  /**
   * These pages and no others, for each kind and numeral: "pp. iv–xii; pp. 38–41, 60; pl. IX".
   *
   * @param pages at least one
   * @throws LocatorException where that would be more places than a locator may have
   */
  public static Locator ofPages(Collection<Locator> pages) {
    return parse(LocatorPages.listed(pages));
  }

  private static boolean startsWith(List<LocatorLevel> place, List<LocatorLevel> of) {
    if (of.size() > place.size()) {
      return false;
    }
    for (int i = 0; i < of.size(); i++) {
      if (!of.get(i).sameAs(place.get(i).at(of.get(i).position()))) {
        return false;
      }
    }
    return true;
  }

  /** Counted out when first asked for: most locators are only kept and printed. */
  private List<List<LocatorLevel>> places() {
    if (places == null) {
      List<List<LocatorLevel>> all = new ArrayList<>();
      for (LocatorRun run : runs) {
        all.addAll(run.places());
      }
      if (all.size() > 1) {
        all.sort(LocatorOrder.PLACES_THEN_TEXT);
      }
      List<List<LocatorLevel>> once = new ArrayList<>();
      for (List<LocatorLevel> place : all) {
        if (once.isEmpty() || !LocatorSeries.samePlace(once.get(once.size() - 1), place)) {
          once.add(List.copyOf(place));
        }
      }
      places = List.copyOf(once);
    }
    return places;
  }

  private boolean isOnePlace() {
    return runs.size() == 1 && runs.get(0).isOne();
  }

  /**
   * This locator with its exceptions resolved: "pls XXXVIII–XLII except XL" becomes "pls
   * XXXVIII–XXXIX and XLI–XLII". The same text if there are none.
   */
  public Locator withExceptionsApplied() {
    StringBuilder out = new StringBuilder();
    int copied = 0;
    for (LocatorRun run : runs) {
      if (!run.exceptions.isEmpty()) {
        out.append(text, copied, run.begin).append(LocatorSeries.withExceptionsApplied(run, text));
        copied = run.end;
      }
    }
    return copied == 0 ? this : parse(out.append(text, copied, text.length()).toString());
  }

  /**
   * Whether every member usually is a picture: plates, colour plates, figures, photographs, inserts
   * and the frontispiece are; pages, lots, folios, columns and notes are not. The innermost level
   * decides, save that an item of a plate is what the plate is. This is only the usual case: the
   * medium of a note's place decides.
   */
  public boolean usuallyPicture() {
    for (List<LocatorLevel> place : places()) {
      int at = place.size() - 1;
      while (at > 0 && place.get(at).kind().isEntry() && isPictureHolder(place.get(at - 1))) {
        at--;
      }
      if (!place.get(at).kind().usuallyPicture()) {
        return false;
      }
    }
    return true;
  }

  private static boolean isPictureHolder(LocatorLevel level) {
    return level.kind().usuallyPicture() || level.isJoined();
  }

  /**
   * The label and numbers, if that is all there is: one label, one level, no exceptions, no
   * position. Empty for "pl. XII, fig. 3", for "frontispiece" and for "facing p. 40".
   */
  public Optional<Simple> simple() {
    if (runs.size() != 1) {
      return Optional.empty();
    }
    LocatorRun run = runs.get(0);
    boolean bare =
        run.outer.isEmpty() && run.exceptions.isEmpty() && run.faced == null && !run.repeatsLabel;
    for (LocatorRun.Span span : run.spans) {
      bare &= span.position().isEmpty() && span.whole() == null;
      bare &= span.fixed() == null || span.fixed() instanceof LocatorLevel.Moment;
    }
    return bare
        ? Optional.of(new Simple(run.kind(), text.substring(run.numbersBegin)))
        : Optional.empty();
  }

  @Override
  public int compareTo(Locator other) {
    int shared = Math.min(places().size(), other.places().size());
    for (int i = 0; i < shared; i++) {
      int byPlace = LocatorOrder.comparePlaces(places().get(i), other.places().get(i));
      if (byPlace != 0) {
        return byPlace;
      }
    }
    int byCount = Integer.compare(places().size(), other.places().size());
    return byCount != 0 ? byCount : text.compareTo(other.text);
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof Locator locator && text.equals(locator.text);
  }

  @Override
  public int hashCode() {
    return text.hashCode();
  }

  @Override
  public String toString() {
    return text;
  }
}
