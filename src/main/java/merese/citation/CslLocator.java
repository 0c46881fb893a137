package merese.citation;

import de.undercouch.citeproc.csl.CSLLabel;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import merese.model.Locator;
import merese.model.Locator.Simple;
import merese.model.LocatorKind;
import merese.model.LocatorLevel;

/**
 * How places in a source are handed to CSL. CSL 1.0.2 has labels for page, figure, folio, column
 * and note among others, but none for plate, catalogue number or lot. So a citation that starts
 * with one of the former passes its label, to be worded as the style words it, and everything else
 * keeps the words it is printed with.
 *
 * @param label empty where CSL has no label for the first place: then no label is printed
 * @param plural whether the label is to stand in the plural
 * @param text the numbers behind the label, and all that follows, as printed
 * @param printed the whole as printed, for a style that has no place or no words for it
 */
record CslLocator(Optional<CSLLabel> label, boolean plural, String text, String printed) {

  /** Reads places in the order given; empty for none. */
  static Optional<CslLocator> of(List<Locator> locators) {
    List<CslLocator> places = locators.stream().map(CslLocator::read).toList();
    if (places.isEmpty()) {
      return Optional.empty();
    }
    CslLocator first = places.get(0);
    List<String> texts = new ArrayList<>(List.of(first.text));
    List<String> printed = new ArrayList<>(List.of(first.printed));
    boolean plural = first.plural;
    boolean sameLabel = first.label.isPresent() && !first.text.contains(",");
    boolean hasOwnLabel = true;
    for (int i = 1; i < places.size(); i++) {
      CslLocator place = places.get(i);
      Optional<String> note = noteOn(locators.get(i - 1), locators.get(i));
      if (note.isPresent() && hasOwnLabel) {
        texts.set(texts.size() - 1, texts.get(texts.size() - 1) + " and " + note.get());
        printed.set(printed.size() - 1, printed.get(printed.size() - 1) + " and " + note.get());
        sameLabel = false;
        hasOwnLabel = false;
        continue;
      }
      sameLabel = sameLabel && place.label.equals(first.label) && !place.text.contains(",");
      plural = plural || sameLabel;
      hasOwnLabel = !sameLabel;
      texts.add(sameLabel ? place.text : place.printed);
      printed.add(place.printed);
    }
    return Optional.of(
        new CslLocator(first.label, plural, String.join(", ", texts), String.join(", ", printed)));
  }

  /**
   * "n. 1" of a note on the very page that is cited before it, which is not named twice: "p. 70 and
   * n. 1" (common practice, no source).
   */
  private static Optional<String> noteOn(Locator page, Locator place) {
    List<LocatorLevel> levels = place.levels();
    int last = levels.size() - 1;
    boolean isNote = place.count() == 1 && last > 0 && levels.get(last).kind() == LocatorKind.NOTE;
    boolean within = page.count() == 1 && place.printed().startsWith(page.printed() + ", ");
    return isNote && within && page.levels().size() == last
        ? Optional.of(PlainText.of(levels.get(last).printed()))
        : Optional.empty();
  }

  private static CslLocator read(Locator locator) {
    String printed = PlainText.of(locator.toString());
    Optional<Simple> simple = locator.simple();
    Optional<CSLLabel> label = simple.map(Simple::kind).flatMap(CslLocator::label);
    if (label.isPresent()) {
      String numbers = PlainText.of(simple.get().value()).replace('-', '–');
      return new CslLocator(label, locator.count() > 1, numbers, printed);
    }
    return nested(locator, printed)
        .orElse(new CslLocator(Optional.empty(), false, printed, printed));
  }

  /** One place inside one that CSL has a label for, such as "p. 12, col. 2". */
  private static Optional<CslLocator> nested(Locator locator, String printed) {
    LocatorLevel outer = locator.levels().get(0);
    String start = outer.label() + " ";
    boolean hasLabel = !outer.label().isEmpty() && printed.startsWith(start);
    return locator.count() > 1 || locator.levels().size() < 2 || !hasLabel
        ? Optional.empty()
        : label(outer.kind())
            .map(
                l ->
                    new CslLocator(
                        Optional.of(l), false, printed.substring(start.length()), printed));
  }

  private static Optional<CSLLabel> label(LocatorKind kind) {
    return switch (kind) {
      case PAGE -> Optional.of(CSLLabel.PAGE);
      case FIGURE -> Optional.of(CSLLabel.FIGURE);
      case FOLIO -> Optional.of(CSLLabel.FOLIO);
      case COLUMN -> Optional.of(CSLLabel.COLUMN);
      case NOTE -> Optional.of(CSLLabel.NOTE);
      default -> Optional.empty();
    };
  }

  /** The same for a style that words no place but a page. */
  CslLocator withoutWords() {
    boolean page = label.filter(l -> l == CSLLabel.PAGE).isPresent();
    return page ? this : new CslLocator(Optional.empty(), false, printed, printed);
  }

  /** What the processor is given in place of the text. */
  String handedOver() {
    return Marks.locator(label.isPresent(), plural);
  }
}
