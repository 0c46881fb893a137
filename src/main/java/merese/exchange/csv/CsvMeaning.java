package merese.exchange.csv;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.function.Function;
import merese.exchange.Incoming;
import merese.exchange.Readings;
import merese.exchange.SuppliedTitle;
import merese.exchange.identifier.Identifiers;
import merese.model.Contributor;
import merese.model.Contributor.Role;
import merese.model.Edition;
import merese.model.Edition.Imprint;
import merese.model.Identifier;
import merese.model.Locator;
import merese.model.LocatorException;
import merese.model.Name;
import merese.model.ReceivedRecord;
import merese.model.ReceivedRecord.Field;
import merese.model.Work;

/**
 * What a received row says in the library's terms: a function of the record alone.
 *
 * @param remarks what was noticed and taken as it stands
 */
record CsvMeaning(Work work, List<String> remarks) {
  /** The name of the format. */
  static final String FORMAT = "csv";

  CsvMeaning {
    remarks = List.copyOf(remarks);
  }

  /** Empty for a row with nothing under our columns, but maybe a key. */
  static Optional<CsvMeaning> of(ReceivedRecord record) {
    Row row = new Row(record);
    boolean says = row.cells.keySet().stream().anyMatch(column -> row.words(column).isPresent());
    return says ? Optional.of(row.meaning()) : Optional.empty();
  }

  static boolean hasTitle(ReceivedRecord record) {
    return new Row(record).words(Column.TITLE).isPresent();
  }

  /** One row under its columns. */
  private static final class Row {
    private final ReceivedRecord record;
    private final Map<Column, String> cells = new EnumMap<>(Column.class);
    private final List<String> remarks = new ArrayList<>();

    Row(ReceivedRecord record) {
      this.record = record;
      for (Field field : record.fields()) {
        Column column = Column.ofField(field.name());
        if (column != null) {
          cells.putIfAbsent(column, field.value());
        }
      }
    }

    CsvMeaning meaning() {
      Optional<String> own = words(Column.TITLE);
      String title = own.orElseGet(this::supplied);
      Optional<String> subtitle = words(Column.SUBTITLE);
      int mark = own.isEmpty() || subtitle.isPresent() ? -1 : Readings.subtitleMark(title);
      Optional<Edition.Container> container = container();
      Edition edition =
          new Edition(
              Incoming.UNNAMED,
              imprint(),
              lineage(),
              container,
              occasion(),
              archive(),
              online(),
              Optional.empty(),
              List.of(),
              List.of(),
              List.of(),
              List.of(),
              List.of(record));
      Work work =
          new Work(
              Incoming.UNNAMED,
              KindWords.of(words(Column.KIND), container.isPresent()),
              mark < 0 ? title : title.substring(0, mark).strip(),
              mark < 0 ? subtitle : Optional.of(title.substring(mark + 1).strip()),
              list(Column.OTHER_TITLES),
              people(),
              words(Column.LANGUAGE).flatMap(LanguageWords::of),
              false,
              List.of(edition),
              List.of());
      return new CsvMeaning(work, remarks);
    }

    private String supplied() {
      remarks.add(SuppliedTitle.REMARK);
      return SuppliedTitle.of(words(Column.NOTED_AS).or(() -> words(Column.IN)), record.id());
    }

    Optional<String> words(Column column) {
      String cell = cells.get(column);
      return cell == null
          ? Optional.empty()
          : Optional.of(CellWords.of(cell)).filter(w -> !w.isEmpty());
    }

    private List<String> list(Column column) {
      return words(column).map(CellList::texts).orElse(List.of());
    }

    private List<Contributor> people() {
      List<Contributor> all = new ArrayList<>();
      for (Role role : Role.values()) {
        Optional<String> cell = words(column(role));
        if (cell.isPresent()) {
          for (Name name : NameCell.read(cell.get())) {
            all.add(new Contributor(role, name));
            boolean several = name instanceof Name.Body && name.full().indexOf(',') > 0;
            if (several && cell.get().indexOf('{') < 0) {
              remarks.add(
                  "“"
                      + name.full()
                      + "” is taken as one name; where it is several, put semicolons between them");
            }
          }
        }
      }
      return all;
    }

    private Imprint imprint() {
      Optional<String> edition = words(Column.EDITION);
      OptionalInt number =
          words(Column.EDITION_NUMBER).map(Readings::whole).orElse(OptionalInt.empty());
      OptionalInt counted = edition.map(Readings::ordinal).orElse(OptionalInt.empty());
      boolean onlyCounts = number.isEmpty() && counted.isPresent();
      Optional<String> year = words(Column.YEAR);
      Optional<String> date = words(Column.DATE).or(() -> year.filter(y -> year(y).isEmpty()));
      OptionalInt from = year.map(Row::year).orElse(OptionalInt.empty());
      OptionalInt of = from.isPresent() ? from : date.map(Readings::year).orElse(from);
      return new Imprint(
          onlyCounts ? Optional.empty() : edition,
          onlyCounts ? counted : number,
          of,
          date.filter(d -> of.isEmpty() || !d.equals(Integer.toString(of.getAsInt()))),
          list(Column.PLACE),
          words(Column.PUBLISHER),
          words(Column.VOLUMES).map(Readings::whole).orElse(OptionalInt.empty()),
          words(Column.SERIES),
          identifiers(),
          words(Column.NOTED_AS));
    }

    /** A whole number and nothing else, of up to four digits and maybe before our era. */
    private static OptionalInt year(String words) {
      boolean before = words.startsWith("-");
      OptionalInt year = Readings.whole(before ? words.substring(1) : words);
      return before && year.isPresent() ? OptionalInt.of(-year.getAsInt()) : year;
    }

    private List<Identifier> identifiers() {
      List<Identifier> all = new ArrayList<>();
      add(Column.ISBN, Identifiers::isbn, all);
      add(Column.ISSN, Identifiers::issn, all);
      add(Column.DOI, Identifiers::doi, all);
      for (Identifier each : all) {
        Identifiers.fault(each)
            .ifPresent(fault -> remarks.add(fault + "; recorded as it stands, as wrong in print"));
      }
      return all;
    }

    private void add(Column column, Function<String, Identifier> read, List<Identifier> to) {
      for (String each : list(column)) {
        int bracket = each.endsWith(")") ? each.indexOf(" (") : -1;
        if (bracket <= 0 || each.length() - bracket < 4) {
          to.add(read.apply(each));
          continue;
        }
        Identifier bare = read.apply(each.substring(0, bracket).strip());
        to.add(
            new Identifier(
                bare.scheme(),
                bare.value(),
                Optional.of(each.substring(bracket + 2, each.length() - 1)),
                bare.wrongInPrint()));
      }
    }

    private Optional<Edition.Lineage> lineage() {
      Optional<Edition.Lineage.Form> form = words(Column.DESCENT).flatMap(Row::form);
      OptionalInt first = words(Column.FIRST_YEAR).map(Row::year).orElse(OptionalInt.empty());
      if (form.isEmpty() && first.isEmpty()) {
        return Optional.empty();
      }
      return Optional.of(
          new Edition.Lineage(
              form.orElse(Edition.Lineage.Form.REPRINT),
              words(Column.PARENT),
              first,
              words(Column.NEW_MATTER),
              List.of()));
    }

    private static Optional<Edition.Lineage.Form> form(String words) {
      String code = words.toLowerCase(Locale.ROOT);
      for (Edition.Lineage.Form form : Edition.Lineage.Form.values()) {
        if (form.code().equals(code)) {
          return Optional.of(form);
        }
      }
      return Optional.empty();
    }

    private Optional<Edition.Container> container() {
      return words(Column.IN)
          .map(
              title ->
                  new Edition.Container(
                      title,
                      words(Column.SOCIETY),
                      words(Column.VOLUME),
                      words(Column.PART),
                      words(Column.ISSUE),
                      words(Column.COVER_YEAR).map(Row::year).orElse(OptionalInt.empty()),
                      words(Column.PAGES).flatMap(Row::pages)));
    }

    private static Optional<Locator> pages(String words) {
      if (words.charAt(0) <= '9') {
        return Readings.pages(words);
      }
      try {
        return Optional.of(Locator.parse(words));
      } catch (LocatorException e) {
        return Readings.pages(words);
      }
    }

    private Optional<Edition.Occasion> occasion() {
      Edition.Occasion occasion =
          new Edition.Occasion(
              words(Column.HOUSE),
              words(Column.CITY),
              words(Column.DAYS),
              words(Column.CODE),
              words(Column.CONSIGNOR),
              list(Column.VENUES));
      boolean says =
          occasion.house().isPresent()
              || occasion.city().isPresent()
              || occasion.dates().isPresent()
              || occasion.code().isPresent()
              || occasion.consignor().isPresent()
              || !occasion.venues().isEmpty();
      return says ? Optional.of(occasion) : Optional.empty();
    }

    private Optional<Edition.Archive> archive() {
      return words(Column.REPOSITORY)
          .map(
              repository ->
                  new Edition.Archive(
                      repository,
                      words(Column.SHELF_MARK),
                      words(Column.FIRM),
                      words(Column.FOLIATED_BY),
                      words(Column.DEGREE)));
    }

    private Optional<Edition.Online> online() {
      return words(Column.URL)
          .map(url -> new Edition.Online(url, words(Column.ACCESSED), words(Column.ARCHIVED)));
    }
  }

  static Column column(Role role) {
    return switch (role) {
      case AUTHOR -> Column.AUTHOR;
      case EDITOR -> Column.EDITOR;
      case PHOTOGRAPHER -> Column.PHOTOGRAPHER;
      case TRANSLATOR -> Column.TRANSLATOR;
      case ILLUSTRATOR -> Column.ILLUSTRATOR;
      case ORGANISER -> Column.ORGANISER;
      case INTERVIEWER -> Column.INTERVIEWER;
    };
  }
}
