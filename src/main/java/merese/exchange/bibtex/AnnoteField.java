package merese.exchange.bibtex;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeSet;
import java.util.function.UnaryOperator;
import merese.model.Locator;
import merese.model.Naming;
import merese.model.Note;
import merese.model.Place;
import merese.model.Place.Stance;

/**
 * What was noted from a source: each term as printed in quotation marks, or the label of what it
 * means in square brackets where the source prints none, with its places in physical order. The
 * terms come in the order of their first places; places where the source says that it does not show
 * the thing come last.
 */
final class AnnoteField {
  /** The common styles print it nowhere, so it may be longer than a field that TeX reads. */
  private static final int MOST = 100_000;

  /** The places of one term. */
  private static final class Places {
    final TreeSet<Locator> shown = new TreeSet<>();
    final TreeSet<Locator> absent = new TreeSet<>();

    Locator first() {
      return shown.isEmpty() ? absent.first() : shown.first();
    }
  }

  private AnnoteField() {}

  /**
   * @param labels the label of a concept, by its id
   */
  static String of(List<Note> notes, UnaryOperator<String> labels) {
    Map<String, Places> byTerm = new LinkedHashMap<>();
    for (Note note : notes) {
      for (Naming naming : note.namings()) {
        for (Place place : note.placesOf(naming)) {
          Places places = byTerm.computeIfAbsent(term(naming, labels), t -> new Places());
          boolean absent = place.stance() == Stance.SAYS_ABSENT;
          (absent ? places.absent : places.shown).add(place.locator());
        }
      }
    }
    List<Map.Entry<String, Places>> inOrder = new ArrayList<>(byTerm.entrySet());
    inOrder.sort(
        Comparator.comparing((Map.Entry<String, Places> e) -> e.getValue().first())
            .thenComparing(Map.Entry::getKey));
    StringBuilder out = new StringBuilder();
    for (Map.Entry<String, Places> entry : inOrder) {
      out.append(out.isEmpty() ? "" : " / ").append(entry.getKey()).append(' ');
      out.append(places(entry.getValue()));
    }
    return LatexText.of(out.toString(), MOST);
  }

  private static String term(Naming naming, UnaryOperator<String> labels) {
    return naming.printed().isBlank()
        ? "[" + naming.concept().map(labels).orElse("no term") + "]"
        : "“" + naming.printed() + "”";
  }

  private static String places(Places places) {
    String shown = String.join("; ", Locator.inPhysicalOrder(places.shown));
    if (places.absent.isEmpty()) {
      return shown;
    }
    String absent = String.join("; ", Locator.inPhysicalOrder(places.absent));
    return shown + (shown.isEmpty() ? "" : "; ") + absent + " (says not shown)";
  }
}
