package merese.citation;

import de.undercouch.citeproc.csl.CSLCitation;
import de.undercouch.citeproc.csl.CSLCitationItem;
import de.undercouch.citeproc.csl.CSLCitationItemBuilder;
import de.undercouch.citeproc.csl.CSLItemData;
import de.undercouch.citeproc.csl.CSLItemDataBuilder;
import de.undercouch.citeproc.csl.internal.RenderContext;
import de.undercouch.citeproc.csl.internal.SStyle;
import de.undercouch.citeproc.csl.internal.locale.LLocale;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Supplier;
import merese.citation.Occurrence.Kind;

/**
 * One style in one language, at work. A style is read once, and once more for each {@link
 * Occurrence} that comes up.
 *
 * <p>This uses the parts that citeproc-java's own front is made of, because that front cannot give
 * a short form, sort two editions of one work next to each other, or print a place that CSL has no
 * label for.
 */
final class Processor {
  private final StyleDocument document;
  private final LLocale locale;
  private final StyleTraits traits;
  private final Map<Occurrence, SStyle> styles = new HashMap<>();

  Processor(StyleDocument document, String language) {
    this.document = document;
    if (!document.has("citation")) {
      throw new CitationException(
          document.from() + ": not a CSL style: it has no <citation> and so cannot make a note");
    }
    String own = document.root().getAttribute("default-locale");
    String chosen = !language.isBlank() ? language : own.isBlank() ? "en-GB" : own;
    this.traits = StyleTraits.of(document, chosen);
    this.locale = guarded(() -> Locales.of(chosen, style(Kind.BIBLIOGRAPHY)));
  }

  StyleTraits traits() {
    return traits;
  }

  /**
   * A note, or what the style prints in the text where it has no notes; empty where the style
   * prints nothing for such a source. A place that the style leaves out follows at the end.
   */
  Optional<String> note(CSLItemData item, Kind kind, Optional<CslLocator> locator, Output output) {
    return guarded(
        () -> {
          Optional<CslLocator> place =
              traits.wordsPlaces() ? locator : locator.map(CslLocator::withoutWords);
          RenderContext ctx = cite(item, kind, place, "");
          if (!saysSomething(ctx)) {
            return Optional.empty();
          }
          if (place.isPresent() && !Marks.holdsLocator(ctx.getResult().toString())) {
            ctx = cite(item, kind, Optional.empty(), ", " + place.get().printed());
          }
          return Optional.of(new CitationFormat(output, place).formatCitation(ctx));
        });
  }

  private RenderContext cite(
      CSLItemData item, Kind kind, Optional<CslLocator> locator, String suffix) {
    SStyle style = style(new Occurrence(kind, locator.flatMap(CslLocator::label)));
    CSLCitationItemBuilder cited = new CSLCitationItemBuilder(item.getId()).itemData(item);
    locator.ifPresent(
        place ->
            cited
                .itemData(new CSLItemDataBuilder(item).locator(place.handedOver()).build())
                .locator(place.handedOver())
                .label(place.label().orElse(Locales.WITHOUT_LABEL)));
    if (!suffix.isEmpty()) {
      cited.suffix(suffix);
    }
    CSLCitation citation = new CSLCitation(new CSLCitationItem[] {cited.build()});
    RenderContext ctx = new RenderContext(style, locale, null, null, citation, List.of());
    style.getCitation().render(ctx);
    return ctx;
  }

  private static boolean saysSomething(RenderContext ctx) {
    String withoutPlace = Marks.withLocator(ctx.getResult().toString(), "");
    return withoutPlace.codePoints().anyMatch(Character::isLetterOrDigit);
  }

  /** An entry of the bibliography; empty where the style has none for it. */
  Optional<String> entry(CSLItemData item, Output output) {
    return guarded(
        () -> {
          SStyle style = style(Kind.BIBLIOGRAPHY);
          if (style.getBibliography() == null) {
            return Optional.<String>empty();
          }
          RenderContext ctx = new RenderContext(style, locale, item, null);
          style.getBibliography().render(ctx);
          return saysSomething(ctx)
              ? Optional.of(
                  new CitationFormat(output, Optional.empty()).formatBibliographyEntry(ctx, 0))
              : Optional.<String>empty();
        });
  }

  /** In the order of the style's bibliography; in the order given where it does not sort. */
  List<CSLItemData> sorted(List<CSLItemData> items) {
    return guarded(
        () -> {
          SStyle style = style(Kind.SORTING);
          if (style.getBibliography() == null || style.getBibliography().getSort() == null) {
            return items;
          }
          return insertionSorted(
              items, style.getBibliography().getSort().comparator(style, locale, null));
        });
  }

  /** Stable, and unlike the library's sort content with an order that contradicts itself. */
  private static List<CSLItemData> insertionSorted(
      List<CSLItemData> items, Comparator<CSLItemData> order) {
    List<CSLItemData> sorted = new ArrayList<>(items.size());
    for (CSLItemData item : items) {
      int low = 0;
      int high = sorted.size();
      while (low < high) {
        int middle = (low + high) >>> 1;
        if (order.compare(sorted.get(middle), item) <= 0) {
          low = middle + 1;
        } else {
          high = middle;
        }
      }
      sorted.add(low, item);
    }
    return sorted;
  }

  private SStyle style(Kind kind) {
    return style(new Occurrence(kind, Optional.empty()));
  }

  private SStyle style(Occurrence occurrence) {
    return styles.computeIfAbsent(occurrence, o -> new SStyle(o.applyTo(document)));
  }

  /** The processor throws all sorts of things at a style that it does not understand. */
  private <T> T guarded(Supplier<T> work) {
    try {
      return work.get();
    } catch (CitationException e) {
      throw e;
    } catch (RuntimeException | StackOverflowError e) {
      throw new CitationException(
          "the style "
              + document.from()
              + " asks for something that the citation processor cannot do ("
              + (e instanceof StackOverflowError ? "it goes round in circles" : e.getMessage())
              + "); choose another style",
          e);
    }
  }
}
