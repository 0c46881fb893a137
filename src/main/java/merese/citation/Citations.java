package merese.citation;

import de.undercouch.citeproc.csl.CSLItemData;
import java.text.Collator;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import merese.citation.Occurrence.Kind;
import merese.model.Locator;
import merese.model.ShortReference;

/**
 * Cites sources in one style and language.
 *
 * <p>Reading a style costs far more than citing, so make one of these for a whole list. It is not
 * safe for use by several threads at once.
 *
 * <p>Everything printed is one line without control characters, with what comes from the library
 * shown literally: see {@link Output} for the mark-up. Titles are put into the style's case and
 * quotation marks; locators are as printed but for the words for page, figure, folio, column and
 * note, which are the style's.
 */
public final class Citations {
  private final Processor processor;
  private final Scheme scheme;
  private final boolean listed;
  private final Map<String, Integer> numbers = new HashMap<>();

  private Citations(Processor processor, Scheme scheme, boolean listed) {
    this.processor = processor;
    this.scheme = scheme;
    this.listed = listed;
  }

  /** How a style cites in the running text. */
  public enum Scheme {
    /** In notes. */
    NOTES,
    /** By author, with a year or a title, in brackets in the text. */
    AUTHOR_DATE,
    /** By a number or a label that points into the list. */
    NUMERIC
  }

  /**
   * @param style a name of the {@link StyleCatalogue} or the path of a .csl file
   * @param language a BCP 47 tag; where empty, the style's own language, else British English
   * @throws CitationException if there is no such style or language, or if it cannot be used
   */
  public static Citations inStyle(String style, String language) {
    StyleDocument document = StyleCatalogue.find(style.strip());
    String format = document.citationFormat().orElse("");
    boolean notes = document.root().getAttribute("class").equals("note");
    Scheme scheme =
        notes
            ? Scheme.NOTES
            : format.equals("numeric") || format.equals("label")
                ? Scheme.NUMERIC
                : Scheme.AUTHOR_DATE;
    return new Citations(new Processor(document, language), scheme, document.has("bibliography"));
  }

  public Scheme scheme() {
    return scheme;
  }

  /** What a user should know who asks this style for notes or for a list. */
  public List<String> remarks() {
    List<String> remarks = new ArrayList<>();
    if (scheme == Scheme.AUTHOR_DATE) {
      remarks.add(
          "This style has no notes: it cites in the text, so what is printed stands in brackets"
              + " and needs the list of sources beside it.");
    }
    if (scheme == Scheme.NUMERIC) {
      remarks.add(
          "This style has no notes: it cites by number or label, which means something only"
              + " beside the list of sources.");
    }
    if (!listed) {
      remarks.add(
          "This style has no list of sources: the list shows its full notes, A–Z by author.");
    }
    return List.copyOf(remarks);
  }

  /**
   * The first mention of a source, in full.
   *
   * @param locators the places cited, in the order wanted; none for the source as a whole
   */
  public String note(Source source, List<Locator> locators, Output output) {
    return note(source, locators, Kind.FULL_NOTE, output);
  }

  /** A later mention of a source, short, as the style has it. */
  public String shortNote(Source source, List<Locator> locators, Output output) {
    return note(source, locators, Kind.SHORT_NOTE, output);
  }

  private String note(Source source, List<Locator> locators, Kind kind, Output output) {
    Optional<CslLocator> place = CslLocator.of(locators);
    CSLItemData item = item(source);
    return processor
        .note(item, kind, place, output)
        .orElseGet(() -> entryAsNote(source, item, place, output));
  }

  private String entryAsNote(
      Source source, CSLItemData item, Optional<CslLocator> place, Output output) {
    String entry = processor.entry(item, output).orElseGet(() -> plain(source, output));
    String escaped =
        place.map(p -> ", " + Escape.of(output).text(Marks.removedFrom(p.printed()))).orElse("");
    return (entry.endsWith(".") ? entry.substring(0, entry.length() - 1) : entry) + escaped + ".";
  }

  /** For a source of which the style prints nothing at all. */
  private static String plain(Source source, Output output) {
    String names = ShortReference.of(source.work(), source.edition());
    String words =
        names.startsWith(source.work().title()) ? names : names + ", " + source.work().title();
    return Escape.of(output).text(Marks.removedFrom(PlainText.of(words)));
  }

  /**
   * The sources as a list in the style's order, each once. A numeric style numbers them, and notes
   * made afterwards point to these numbers. What a style leaves out of its lists, such as letters,
   * is listed as its full note.
   */
  public List<Entry> bibliography(List<Source> sources, Output output) {
    Map<String, Source> byId = new LinkedHashMap<>();
    sources.forEach(source -> byId.putIfAbsent(source.id(), source));
    List<Source> sorted = listed ? asStyled(byId) : byName(byId);
    numbers.clear();
    sorted.forEach(source -> numbers.put(source.id(), numbers.size() + 1));
    return sorted.stream().map(source -> new Entry(source, entry(source, output))).toList();
  }

  private List<Source> asStyled(Map<String, Source> byId) {
    List<CSLItemData> items =
        byId.values().stream().map(s -> CslItem.toSort(s, processor.traits())).toList();
    return processor.sorted(items).stream().map(item -> byId.get(item.getId())).toList();
  }

  private List<Source> byName(Map<String, Source> byId) {
    Collator order = Collator.getInstance(Locale.forLanguageTag(processor.traits().language()));
    return byId.values().stream()
        .sorted(
            Comparator.comparing(
                    (Source s) -> ShortReference.names(s.work(), s.edition()), order::compare)
                .thenComparing(s -> s.work().title(), order::compare)
                .thenComparing(s -> s.edition().imprint().year().orElse(Integer.MAX_VALUE)))
        .toList();
  }

  /** The entry of one source alone, for a list in an order of the caller's own. */
  public String entry(Source source, Output output) {
    CSLItemData item = item(source);
    String entry = processor.entry(item, output).orElseGet(() -> noteAsEntry(source, item, output));
    Optional<String> remark =
        source.edition().imprint().notedAs().map(PlainText::of).map(Marks::removedFrom);
    if (remark.isEmpty() || remark.get().isEmpty() || source.part().isPresent()) {
      return entry;
    }
    return sentence(entry) + " " + Escape.of(output).text(sentence(remark.get()));
  }

  private String noteAsEntry(Source source, CSLItemData item, Output output) {
    String note =
        processor
            .note(item, Kind.FULL_NOTE, Optional.empty(), output)
            .orElseGet(() -> plain(source, output));
    boolean stop = note.endsWith(".") && !processor.traits().stopsEntries() && listed;
    return stop ? note.substring(0, note.length() - 1) : note;
  }

  private static String sentence(String words) {
    return words.matches(".*[.!?](?:\\*|</?\\w+>)*") ? words : words + ".";
  }

  private CSLItemData item(Source source) {
    numbers.putIfAbsent(source.id(), numbers.size() + 1);
    return CslItem.of(source, processor.traits(), numbers.get(source.id()));
  }
}
