package merese.citation;

import de.undercouch.citeproc.csl.CSLDate;
import de.undercouch.citeproc.csl.CSLItemData;
import de.undercouch.citeproc.csl.CSLItemDataBuilder;
import de.undercouch.citeproc.csl.CSLType;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.UnaryOperator;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import merese.model.Contributor.Role;
import merese.model.Edition;
import merese.model.Edition.Imprint;
import merese.model.Edition.Lineage.Form;
import merese.model.Identifier.Scheme;
import merese.model.Locator;
import merese.model.SourceKind;
import merese.model.Work;

/** What a source is to CSL. The types are those of the CSL 1.0.2 specification, appendix III. */
final class CslItem {
  /** What a title is not filed under: quotation marks, and an English article. */
  private static final Pattern LEADING =
      Pattern.compile("^[\uFDD1-\uFDD4]*(?:(?:the|an?)\\s+(?=\\S))?", Pattern.CASE_INSENSITIVE);

  private static final Pattern PATENT =
      Pattern.compile("(.*\\p{L}.*?)\\s+(?:[Nn]o\\.?\\s*)?(\\S*\\d\\S*)");

  private final Source source;
  private final Work work;
  private final Edition edition;
  private final Imprint imprint;
  private final StyleTraits style;
  private final String language;
  private final boolean toSort;
  private final boolean neutral;
  private final UnaryOperator<String> text;
  private final CslNames names;
  private final CSLItemDataBuilder item = new CSLItemDataBuilder();

  private CslItem(Source source, StyleTraits style, boolean toSort, UnaryOperator<String> text) {
    this.source = source;
    this.work = source.work();
    this.edition = source.edition();
    this.imprint = edition.imprint();
    this.style = style;
    this.language = work.language().filter(l -> !l.isBlank()).orElse(style.language());
    this.toSort = toSort;
    this.neutral = style.editions() == StyleTraits.Editions.NEUTRAL;
    this.text = text;
    this.names = new CslNames(source, style.filesByParticle() || !toSort, text);
  }

  /**
   * @param number its place in the list, for a style that cites by number
   */
  static CSLItemData of(Source source, StyleTraits style, int number) {
    return new CslItem(source, style, false, PlainText::of).build(number);
  }

  /**
   * The source as a list files it, which the processor does not see to: an English title without
   * its article, and a name without its particle where the style files it so.
   */
  static CSLItemData toSort(Source source, StyleTraits style) {
    return new CslItem(source, style, true, PlainText::of).build(1);
  }

  /** The source as it is, for no style in particular; with its texts just as they stand. */
  static CSLItemData neutral(Source source) {
    CslItem item = new CslItem(source, StyleTraits.NEUTRAL, false, UnaryOperator.identity());
    item.item.id(source.id()).type(item.type());
    source.work().language().ifPresent(item.item::language);
    item.describe();
    return item.item.build();
  }

  private CSLItemData build(int number) {
    item.id(source.id())
        .citationKey(PlainText.of(source.id()))
        .citationLabel(names.label())
        .citationNumber(Integer.toString(number))
        .type(type())
        .language(language);
    describe();
    return item.build();
  }

  private void describe() {
    titles();
    names.addTo(item);
    dates();
    imprint();
    container();
    archive();
    online();
  }

  private CSLType type() {
    if (source.part().isPresent() && edition.container().isEmpty()) {
      return CSLType.CHAPTER;
    }
    return switch (work.kind()) {
      case JOURNAL_ARTICLE -> CSLType.ARTICLE_JOURNAL;
      case NEWSLETTER ->
          edition.container().isPresent() ? CSLType.ARTICLE_JOURNAL : CSLType.PAMPHLET;
      case MANUSCRIPT -> CSLType.MANUSCRIPT;
      case TRADE_LIST, LEAFLET -> CSLType.PAMPHLET;
      case PATENT -> CSLType.PATENT;
      case THESIS -> CSLType.THESIS;
      case WEB_PAGE -> CSLType.WEBPAGE;
      case VIDEO -> CSLType.MOTION_PICTURE;
      case STATEMENT ->
          edition.archive().isPresent()
              ? CSLType.MANUSCRIPT
              : work.withRole(Role.INTERVIEWER).isEmpty()
                  ? CSLType.PERSONAL_COMMUNICATION
                  : CSLType.INTERVIEW;
      case MONOGRAPH, EXHIBITION_CATALOGUE, MUSEUM_CATALOGUE, SALE_CATALOGUE, TRADE_DIRECTORY ->
          edition.container().isPresent() ? CSLType.CHAPTER : CSLType.BOOK;
    };
  }

  private void titles() {
    String title = filed(text.apply(work.title()));
    String whole = work.subtitle().map(s -> title + joint(title) + text.apply(s)).orElse(title);
    if (source.part().isPresent()) {
      item.title(filed(text.apply(source.part().get().title()))).containerTitle(whole);
    } else {
      item.title(whole);
      if (work.subtitle().isPresent()) {
        item.titleShort(title);
      }
    }
  }

  private String filed(String title) {
    boolean english = Locale.forLanguageTag(language).getLanguage().equals("en");
    return toSort && english ? LEADING.matcher(title).replaceFirst("") : title;
  }

  private static String joint(String title) {
    return title.endsWith("?") || title.endsWith("!") ? " " : ": ";
  }

  private void dates() {
    Optional<String> printed = some(imprint.yearPrinted());
    String year = imprint.year().isPresent() ? Integer.toString(imprint.year().getAsInt()) : "";
    Optional<Edition.Container> container = edition.container();
    boolean coverDiffers =
        container.isPresent()
            && container.get().coverYear().isPresent()
            && !container.get().coverYear().equals(imprint.year());
    if (work.kind() == SourceKind.SALE_CATALOGUE && saleDay().isPresent()) {
      item.issued(saleDay().get());
    } else if (printed.isPresent() && !printed.get().equals(year)) {
      item.issued(CslDates.of(printed.get(), text));
    } else if (coverDiffers) {
      String cover = Integer.toString(container.get().coverYear().getAsInt());
      item.issued(CslDates.literal(year.isEmpty() ? cover : cover + " [" + year + "]"));
    } else if (!year.isEmpty()) {
      item.issued(CslDates.year(imprint.year().getAsInt()));
    }
    edition.lineage().ifPresent(this::original);
  }

  private Optional<CSLDate> saleDay() {
    return edition.occasion().flatMap(o -> some(o.dates())).flatMap(CslDates::day);
  }

  private void original(Edition.Lineage lineage) {
    boolean same = lineage.form() == Form.REPRINT || lineage.form() == Form.FACSIMILE;
    if (same && lineage.originalYear().isPresent()) {
      item.originalDate(CslDates.year(lineage.originalYear().getAsInt()));
    }
  }

  private void imprint() {
    (neutral ? EditionWords.neutral(imprint) : EditionWords.of(imprint, style))
        .ifPresent(item::edition);
    imprint.places().stream().findFirst().flatMap(this::some).ifPresent(item::publisherPlace);
    if (!namesItsSite()) {
      some(imprint.publisher()).ifPresent(item::publisher);
    }
    if (imprint.volumes().isPresent() && imprint.volumes().getAsInt() > 1) {
      item.numberOfVolumes(Integer.toString(imprint.volumes().getAsInt()));
    }
    imprint.identifiers(Scheme.ISBN).stream()
        .findFirst()
        .ifPresent(isbn -> item.ISBN(text.apply(isbn.value())));
    some(imprint.series()).ifPresent(this::series);
    edition.occasion().ifPresent(this::occasion);
  }

  private void series(String printed) {
    if (work.kind() == SourceKind.PATENT) {
      Matcher numbered = PATENT.matcher(printed);
      if (numbered.matches()) {
        item.genre(numbered.group(1));
      }
      String number = numbered.matches() ? numbered.group(2) : printed;
      item.number(neutral ? number : Marks.hidden(number));
      return;
    }
    EditionWords.Series series = EditionWords.series(printed);
    item.collectionTitle(series.title());
    series.number().ifPresent(item::collectionNumber);
  }

  private void occasion(Edition.Occasion occasion) {
    some(occasion.dates()).map(d -> CslDates.of(d, text)).ifPresent(item::eventDate);
    occasion.venues().stream()
        .findFirst()
        .or(occasion::city)
        .flatMap(this::some)
        .ifPresent(item::eventPlace);
  }

  private void container() {
    if (edition.container().isEmpty()) {
      source.part().flatMap(Edition.Part::extent).flatMap(this::pages).ifPresent(item::page);
      return;
    }
    Edition.Container container = edition.container().get();
    item.containerTitle(text.apply(container.title()));
    some(container.volume()).ifPresent(item::volume);
    some(container.issue()).or(() -> some(container.part())).ifPresent(item::issue);
    container.pages().flatMap(this::pages).ifPresent(item::page);
    if (imprint.publisher().isEmpty()) {
      some(container.society()).ifPresent(item::publisher);
    }
  }

  /** The numbers of a page locator; empty where the extent is given in anything else. */
  private Optional<String> pages(Locator extent) {
    return CslLocator.of(List.of(extent))
        .filter(l -> l.label().filter(x -> x.toString().equals("page")).isPresent())
        .map(l -> neutral ? Marks.removedFrom(l.text()) : l.text());
  }

  private void archive() {
    edition
        .archive()
        .ifPresent(
            archive -> {
              some(archive.degree()).map(CslItem::degree).ifPresent(item::genre);
              if (work.kind() == SourceKind.THESIS) {
                item.publisher(text.apply(archive.repository()));
              } else {
                item.archive(text.apply(archive.repository()));
              }
              some(archive.shelfMark()).ifPresent(item::archiveLocation);
            });
  }

  /** A style that sees to it says "unpublished" itself. */
  private static String degree(String words) {
    String start = "unpublished ";
    return words.toLowerCase(Locale.ROOT).startsWith(start)
        ? words.substring(start.length())
        : words;
  }

  private void online() {
    edition
        .online()
        .ifPresent(
            online -> {
              item.URL(text.apply(online.url()));
              some(online.accessed()).map(d -> CslDates.of(d, text)).ifPresent(item::accessed);
              if (namesItsSite()) {
                some(imprint.publisher()).ifPresent(item::containerTitle);
              }
            });
  }

  /** For a page on the web, what stands as its publisher is the site that it is part of. */
  private boolean namesItsSite() {
    return work.kind() == SourceKind.WEB_PAGE
        && edition.container().isEmpty()
        && source.part().isEmpty();
  }

  private Optional<String> some(Optional<String> words) {
    return words.flatMap(this::some);
  }

  private Optional<String> some(String words) {
    return Optional.of(text.apply(words)).filter(w -> !w.isEmpty());
  }
}
