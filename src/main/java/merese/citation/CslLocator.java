package merese.citation;

import de.undercouch.citeproc.csl.CSLLabel;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

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
  /** The only place that reads a printed locator. */
  private static final Pattern LABELLED =
      Pattern.compile(
          "(?<label>p|pp|fig|figs|fol|fols|col|cols|n|nn)\\.?\\s*"
              + "(?<value>\\[?[\\p{L}\\p{N}]+]?(?:[–-]\\[?[\\p{L}\\p{N}]+]?)?)(?<rest>,\\s.+)?");

  /** Reads places in the order given; empty for none. */
  static Optional<CslLocator> of(List<String> printed) {
    List<CslLocator> places = printed.stream().map(CslLocator::read).toList();
    if (places.isEmpty()) {
      return Optional.empty();
    }
    CslLocator first = places.get(0);
    List<String> texts = new ArrayList<>(List.of(first.text));
    boolean plural = first.plural;
    boolean sameLabel = first.label.isPresent() && !first.text.contains(",");
    for (int i = 1; i < places.size(); i++) {
      CslLocator place = places.get(i);
      sameLabel = sameLabel && place.label.equals(first.label) && !place.text.contains(",");
      plural = plural || sameLabel;
      texts.add(sameLabel ? place.text : place.printed);
    }
    String whole = places.stream().map(CslLocator::printed).collect(Collectors.joining(", "));
    return Optional.of(new CslLocator(first.label, plural, String.join(", ", texts), whole));
  }

  private static CslLocator read(String printed) {
    String text = PlainText.of(withoutStop(printed));
    Matcher matcher = LABELLED.matcher(text);
    if (!matcher.matches()) {
      return new CslLocator(Optional.empty(), false, text, text);
    }
    String label = matcher.group("label");
    String value = matcher.group("value").replace('-', '–');
    String rest = matcher.group("rest") == null ? "" : matcher.group("rest");
    CSLLabel csl =
        switch (label) {
          case "p", "pp" -> CSLLabel.PAGE;
          case "fig", "figs" -> CSLLabel.FIGURE;
          case "fol", "fols" -> CSLLabel.FOLIO;
          case "col", "cols" -> CSLLabel.COLUMN;
          default -> CSLLabel.NOTE;
        };
    boolean plural = label.endsWith("s") || label.equals("pp") || label.equals("nn");
    return new CslLocator(Optional.of(csl), plural, value + rest, text);
  }

  /** A style ends its own sentences. */
  private static String withoutStop(String printed) {
    String text = printed.strip();
    return text.endsWith(".") ? text.substring(0, text.length() - 1) : text;
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
