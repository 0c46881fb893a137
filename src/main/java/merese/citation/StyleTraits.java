package merese.citation;

import java.util.stream.Stream;
import org.w3c.dom.Element;

/**
 * What has to be known of a style before it is used.
 *
 * @param language of its words
 * @param editions how it words an edition
 * @param wordsPlaces whether it has words such as "fig." for a place in a source
 * @param filesByParticle whether "van der Meeuwen" is filed under v
 * @param stopsEntries whether an entry of its bibliography ends with a full stop
 */
record StyleTraits(
    String language,
    Editions editions,
    boolean wordsPlaces,
    boolean filesByParticle,
    boolean stopsEntries) {

  /** What becomes of "2nd edn". */
  enum Editions {
    /** It is printed as it is. */
    AS_GIVEN,
    /** "2nd" gets the word, "rev. edn" is printed as it is. */
    COMPLETED_NUMBER,
    /** Both "2nd" and "rev." get the word. */
    COMPLETED,
    /** No style: a number is a number, and words are as printed. */
    NEUTRAL
  }

  /** Of no style. */
  static final StyleTraits NEUTRAL = new StyleTraits("", Editions.NEUTRAL, true, true, true);

  static StyleTraits of(StyleDocument style, String language) {
    boolean words =
        style.elements("label").stream().anyMatch(e -> names(e, "variable", "edition"))
            || style.elements("text").stream().anyMatch(e -> names(e, "term", "edition"));
    boolean places =
        style.elements("label").stream().anyMatch(e -> names(e, "variable", "locator"));
    boolean tests =
        Stream.of("if", "else-if")
            .flatMap(name -> style.elements(name).stream())
            .anyMatch(e -> (" " + e.getAttribute("is-numeric") + " ").contains(" edition "));
    Editions editions =
        !words ? Editions.AS_GIVEN : tests ? Editions.COMPLETED_NUMBER : Editions.COMPLETED;
    boolean stops =
        style.elements("bibliography").stream()
            .flatMap(b -> style.elements("layout").stream().filter(l -> l.getParentNode() == b))
            .anyMatch(layout -> layout.getAttribute("suffix").strip().endsWith("."));
    String particle = style.root().getAttribute("demote-non-dropping-particle");
    return new StyleTraits(language, editions, places, particle.equals("never"), stops);
  }

  private static boolean names(Element element, String attribute, String value) {
    return element.getAttribute(attribute).equals(value);
  }
}
