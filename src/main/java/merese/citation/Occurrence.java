package merese.citation;

import de.undercouch.citeproc.csl.CSLLabel;
import java.util.Optional;
import java.util.Set;
import org.w3c.dom.Document;
import org.w3c.dom.Element;

/**
 * In which situation a style is asked: for a list, or for a note with a kind of locator.
 *
 * <p>citeproc-java 3.5.2 does not know the conditions {@code locator}, {@code disambiguate} and
 * {@code position="subsequent"}: it takes the first two for true and the last for false. All three
 * are known before a citation is made, so a style is rewritten for each situation that comes up,
 * with a variable that is always or never set in their place.
 *
 * @param place empty without a locator, or with one that CSL has no label for
 */
record Occurrence(Kind kind, Optional<CSLLabel> place) {
  /** A variable that {@link CslItem} always sets. */
  private static final String TRUE = "citation-key";

  /** A variable that nothing sets. */
  private static final String FALSE = "merese-never";

  enum Kind {
    BIBLIOGRAPHY(Set.of()),
    FULL_NOTE(Set.of("first")),
    SHORT_NOTE(Set.of("subsequent")),
    /** The bibliography while it is put in order: titles are filed without quotation marks. */
    SORTING(Set.of());

    private final Set<String> positions;

    Kind(Set<String> positions) {
      this.positions = positions;
    }
  }

  /** A copy of the style in which nothing depends on the situation any more. */
  Document applyTo(StyleDocument style) {
    Document copy = (Document) style.document().cloneNode(true);
    StyleDocument rewritten = Locales.plural(new StyleDocument(style.from(), copy));
    rewritten.elements("if").forEach(this::rewrite);
    rewritten.elements("else-if").forEach(this::rewrite);
    if (kind == Kind.SORTING) {
      rewritten.elements("text").forEach(text -> text.removeAttribute("quotes"));
    }
    return copy;
  }

  private void rewrite(Element condition) {
    decide(condition, "position", kind.positions);
    decide(condition, "locator", place.map(p -> Set.of(p.toString())).orElse(Set.of()));
    decide(condition, "disambiguate", Set.of());
  }

  private static void decide(Element condition, String attribute, Set<String> trueHere) {
    if (!condition.hasAttribute(attribute)) {
      return;
    }
    StringBuilder tests = new StringBuilder(condition.getAttribute("variable"));
    for (String value : condition.getAttribute(attribute).strip().split("\\s+")) {
      tests.append(' ').append(trueHere.contains(value) ? TRUE : FALSE);
    }
    condition.removeAttribute(attribute);
    condition.setAttribute("variable", tests.toString().strip());
  }
}
