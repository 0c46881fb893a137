package merese.citation;

import de.undercouch.citeproc.csl.CSLLabel;
import de.undercouch.citeproc.csl.internal.SStyle;
import de.undercouch.citeproc.csl.internal.locale.LLocale;
import java.io.IOException;
import java.io.InputStream;
import java.util.Locale;
import java.util.Optional;
import org.w3c.dom.Element;
import org.w3c.dom.NodeList;

/** The words of a language, from the locales artifact and from a style's own changes to them. */
final class Locales {
  /** Has no word here, so that a place that CSL has no label for is printed without one. */
  static final CSLLabel WITHOUT_LABEL = CSLLabel.OPUS;

  private Locales() {}

  /**
   * In the order of the CSL 1.0.2 specification, "Locale Fallback": the main dialect, the exact
   * dialect, then the style's own words for all, for the language and for the dialect.
   */
  static LLocale of(String language, SStyle style) {
    Locale tag = tag(language);
    String main = LLocale.PRIMARY_DIALECTS.getOrDefault(tag.getLanguage(), tag.toLanguageTag());
    Optional<LLocale> common = read(main);
    Optional<LLocale> exact =
        main.equals(tag.toLanguageTag()) ? Optional.empty() : read(tag.toLanguageTag());
    LLocale base =
        common
            .or(() -> exact)
            .orElseThrow(
                () ->
                    new CitationException(
                        "no citation words for the language "
                            + language
                            + "; give a tag such as en-GB, en-US, de-DE or fr-FR"));
    LLocale locale = exact.map(base::merge).orElse(base);
    locale = mergeOwn(locale, style, null);
    locale = mergeOwn(locale, style, Locale.forLanguageTag(tag.getLanguage()));
    if (!tag.getCountry().isEmpty()) {
      locale = mergeOwn(locale, style, tag);
    }
    locale.getTerms().values().forEach(terms -> terms.remove(WITHOUT_LABEL.toString()));
    return locale;
  }

  private static Locale tag(String language) {
    Locale tag = Locale.forLanguageTag(language.strip().replace('_', '-'));
    if (tag.getLanguage().isEmpty()) {
      throw new CitationException(
          "\"" + language + "\" is not a language tag; give one such as en-GB, de-DE or fr-FR");
    }
    return tag;
  }

  private static LLocale mergeOwn(LLocale locale, SStyle style, Locale wanted) {
    LLocale result = locale;
    for (LLocale own : style.getLocales()) {
      boolean fits = wanted == null ? own.getLang() == null : wanted.equals(own.getLang());
      result = fits ? result.merge(own) : result;
    }
    return result;
  }

  /**
   * The processor words the number of volumes in the singular ("3 vol."). Only works of several
   * volumes have that number here, so the plural can stand in for it.
   */
  static StyleDocument plural(StyleDocument words) {
    for (Element term : words.elements("term")) {
      NodeList single = term.getElementsByTagName("single");
      NodeList multiple = term.getElementsByTagName("multiple");
      boolean both = single.getLength() > 0 && multiple.getLength() > 0;
      if (both && term.getAttribute("name").equals("number-of-volumes")) {
        single.item(0).setTextContent(multiple.item(0).getTextContent());
      }
    }
    return words;
  }

  private static Optional<LLocale> read(String tag) {
    String name = "locales-" + tag + ".xml";
    try (InputStream in = Locales.class.getResourceAsStream("/" + name)) {
      return in == null
          ? Optional.empty()
          : Optional.of(new LLocale(plural(StyleDocument.parse(name, in)).document()));
    } catch (IOException e) {
      throw new CitationException("the citation words in " + name + " cannot be read", e);
    }
  }
}
