package merese.exchange.csl;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.function.Function;
import merese.exchange.Incoming;
import merese.exchange.Readings;
import merese.exchange.SuppliedTitle;
import merese.exchange.csl.Json.Members;
import merese.exchange.identifier.Identifiers;
import merese.model.Edition;
import merese.model.Edition.Imprint;
import merese.model.Identifier;
import merese.model.ReceivedRecord;
import merese.model.SourceKind;
import merese.model.Work;

/** What an item's variables say, leaving out what is our own in them. */
final class ItemWork {
  private final Members item;
  private final String type;
  private final SourceKind kind;

  private ItemWork(Members item) {
    this.item = item;
    this.type = item.text("type").orElse("");
    this.kind = CslKind.of(type);
  }

  static Work of(Members item, ReceivedRecord record) {
    return new ItemWork(item).work(record);
  }

  /** The title and its subtitle in one; empty for an item without. */
  static Optional<String> wholeTitle(Members item) {
    return PlainWords.of(item.get("title")).or(() -> PlainWords.of(item.get("title-short")));
  }

  private Work work(ReceivedRecord record) {
    Optional<String> own = wholeTitle(item);
    String whole = own.orElseGet(() -> supplied(record));
    int mark = own.isPresent() ? subtitleMark(whole) : -1;
    Optional<String> subtitle =
        mark < 0 ? Optional.empty() : Optional.of(whole.substring(mark + 1).strip());
    String title = mark < 0 ? whole : whole.substring(0, mark).strip();
    Edition edition =
        new Edition(
            Incoming.UNNAMED,
            imprint(),
            lineage(),
            container(),
            Optional.empty(),
            archive(),
            online(),
            Optional.empty(),
            List.of(),
            List.of(),
            List.of(),
            List.of(),
            List.of(record));
    return new Work(
        Incoming.UNNAMED,
        kind,
        title.endsWith(":") && subtitle.isPresent()
            ? title.substring(0, title.length() - 1)
            : title,
        subtitle,
        words("original-title").map(List::of).orElse(List.of()),
        ItemNames.of(item),
        words("language").filter(Readings::isLanguageTag),
        false,
        List.of(edition),
        List.of());
  }

  private String supplied(ReceivedRecord record) {
    return SuppliedTitle.of(words("note").or(() -> words("container-title")), record.id());
  }

  /**
   * Where a title and its subtitle part: after a short title that it begins with, else at the first
   * colon that a space follows; -1 for no subtitle.
   */
  private int subtitleMark(String whole) {
    Optional<String> start = words("title-short").or(() -> words("shortTitle"));
    if (start.isPresent() && whole.startsWith(start.get())) {
      int end = start.get().length();
      char last = whole.charAt(end - 1);
      if (whole.startsWith(": ", end) && Readings.isSplit(whole, end)) {
        return end;
      }
      boolean asks = last == '?' || last == '!';
      if (asks && whole.startsWith(" ", end) && Readings.isSplit(whole, end)) {
        return end;
      }
    }
    return Readings.subtitleMark(whole);
  }

  private Optional<String> words(String variable) {
    return PlainWords.of(item.get(variable));
  }

  private Imprint imprint() {
    DateWords issued = DateWords.of(item.get("issued"));
    Optional<String> edition = words("edition");
    OptionalInt number = edition.map(Readings::ordinal).orElse(OptionalInt.empty());
    return new Imprint(
        number.isPresent() ? Optional.empty() : edition,
        number,
        issued.year(),
        issued.words(),
        words("publisher-place").map(ItemWork::list).orElse(List.of()),
        publisher(),
        words("number-of-volumes").map(Readings::whole).orElse(OptionalInt.empty()),
        series(),
        identifiers(),
        words("note"));
  }

  private Optional<String> publisher() {
    if (kind == SourceKind.THESIS) {
      return Optional.empty();
    }
    return CslKind.isSitePage(type)
        ? words("publisher").or(() -> words("container-title"))
        : words("publisher");
  }

  private static List<String> list(String words) {
    List<String> all = new ArrayList<>();
    for (String each : words.split(";", -1)) {
      if (!each.isBlank()) {
        all.add(each.strip());
      }
    }
    return all;
  }

  private Optional<String> series() {
    if (kind == SourceKind.PATENT) {
      Optional<String> number = words("number");
      return number.map(n -> words("genre").map(g -> g + " " + n).orElse(n));
    }
    Optional<String> number = words("collection-number");
    return words("collection-title").map(t -> number.map(n -> t + ", " + n).orElse(t));
  }

  private List<Identifier> identifiers() {
    List<Identifier> all = new ArrayList<>();
    add("ISBN", Identifiers::isbn, all);
    add("ISSN", Identifiers::issn, all);
    words("DOI").map(Identifiers::doi).ifPresent(all::add);
    return all;
  }

  /** Several stand in one text, between commas, semicolons or spaces. */
  private void add(String variable, Function<String, Identifier> read, List<Identifier> to) {
    Optional<String> words = words(variable);
    if (words.isEmpty()) {
      return;
    }
    for (String part : words.get().split("[,;]", -1)) {
      String text = part.strip();
      if (text.isEmpty()) {
        continue;
      }
      boolean numbers = isNumbers(text);
      String[] each = numbers && text.indexOf('-') > 0 ? text.split(" +", -1) : new String[] {text};
      for (String one : each) {
        to.add(read.apply(one));
      }
    }
  }

  private static boolean isNumbers(String text) {
    for (int i = 0; i < text.length(); i++) {
      char c = text.charAt(i);
      if (!(c >= '0' && c <= '9' || c == '-' || c == ' ' || c == 'X' || c == 'x')) {
        return false;
      }
    }
    return true;
  }

  private Optional<Edition.Lineage> lineage() {
    OptionalInt year = DateWords.of(item.get("original-date")).year();
    return year.isPresent()
        ? Optional.of(
            new Edition.Lineage(
                item.get("translator").isPresent()
                    ? Edition.Lineage.Form.TRANSLATION
                    : Edition.Lineage.Form.REPRINT,
                Optional.empty(),
                year,
                Optional.empty(),
                List.of()))
        : Optional.empty();
  }

  private Optional<Edition.Container> container() {
    if (CslKind.isSitePage(type)) {
      return Optional.empty();
    }
    return words("container-title")
        .map(
            title ->
                new Edition.Container(
                    title,
                    Optional.empty(),
                    words("volume"),
                    Optional.empty(),
                    words("issue"),
                    OptionalInt.empty(),
                    words("page").flatMap(Readings::pages)));
  }

  private Optional<Edition.Archive> archive() {
    boolean thesis = kind == SourceKind.THESIS;
    Optional<String> repository =
        thesis ? words("publisher").or(() -> words("archive")) : words("archive");
    return repository.map(
        r ->
            new Edition.Archive(
                r,
                words("archive_location"),
                Optional.empty(),
                Optional.empty(),
                thesis ? words("genre") : Optional.empty()));
  }

  private Optional<Edition.Online> online() {
    return words("URL")
        .map(url -> new Edition.Online(url, DateWords.day(item.get("accessed")), Optional.empty()));
  }
}
