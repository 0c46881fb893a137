package merese.exchange.csv;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import merese.exchange.Outgoing;
import merese.model.Contributor;
import merese.model.Contributor.Role;
import merese.model.Edition;
import merese.model.Edition.Imprint;
import merese.model.Identifier;
import merese.model.Identifier.Scheme;
import merese.model.Locator;
import merese.model.Name;
import merese.model.Work;

/** The cells of a source, from the library alone; none but the filled ones. */
final class RowMaker {
  private final Work work;
  private final Edition edition;
  private final Imprint imprint;
  private final Map<Column, String> cells = new EnumMap<>(Column.class);

  private RowMaker(Outgoing source) {
    this.work = source.work();
    this.edition = source.edition();
    this.imprint = edition.imprint();
  }

  static Map<Column, String> cells(Outgoing source) {
    RowMaker maker = new RowMaker(source);
    maker.set(Column.KEY, source.id());
    maker.set(Column.KIND, maker.work.kind().words());
    maker.imprint();
    if (source.part().isPresent()) {
      maker.part(source.part().get());
    } else {
      maker.work();
    }
    maker.occasion();
    maker.archive();
    maker.online();
    return maker.cells;
  }

  private void set(Column column, String cell) {
    if (!cell.isEmpty()) {
      cells.put(column, cell);
    }
  }

  private void set(Column column, Optional<String> cell) {
    cell.ifPresent(c -> set(column, c));
  }

  private void set(Column column, OptionalInt number) {
    if (number.isPresent()) {
      set(column, Integer.toString(number.getAsInt()));
    }
  }

  private void work() {
    set(Column.TITLE, work.title());
    set(Column.SUBTITLE, work.subtitle());
    set(Column.OTHER_TITLES, CellList.joined(work.alternateTitles()));
    for (Role role : Role.values()) {
      List<Name> names = work.withRole(role).stream().map(Contributor::name).toList();
      set(CsvMeaning.column(role), NameCell.written(names));
    }
    set(Column.NOTED_AS, imprint.notedAs());
    edition.container().ifPresent(this::container);
    edition.lineage().ifPresent(this::lineage);
  }

  /** An entry or chapter stands in its book. */
  private void part(Edition.Part part) {
    set(Column.TITLE, part.title());
    set(Column.AUTHOR, NameCell.written(part.authors()));
    set(Column.IN, work.subtitle().map(s -> work.title() + ": " + s).orElse(work.title()));
    set(Column.PAGES, part.extent().map(Locator::printed));
    List<Name> editors = work.withRole(Role.EDITOR).stream().map(Contributor::name).toList();
    set(Column.EDITOR, NameCell.written(editors));
  }

  private void imprint() {
    set(Column.LANGUAGE, work.language());
    set(Column.EDITION, imprint.statement());
    set(Column.EDITION_NUMBER, imprint.number());
    set(Column.YEAR, imprint.year());
    set(Column.DATE, imprint.yearPrinted());
    set(Column.PLACE, CellList.joined(imprint.places()));
    set(Column.PUBLISHER, imprint.publisher());
    set(Column.VOLUMES, imprint.volumes());
    set(Column.SERIES, imprint.series());
    set(Column.ISBN, identifiers(Scheme.ISBN));
    set(Column.ISSN, identifiers(Scheme.ISSN));
    set(Column.DOI, identifiers(Scheme.DOI));
  }

  private String identifiers(Scheme scheme) {
    List<String> all = new ArrayList<>();
    for (Identifier each : imprint.identifiers(scheme)) {
      all.add(each.value() + each.qualifier().map(q -> " (" + q + ")").orElse(""));
    }
    return CellList.joined(all);
  }

  private void container(Edition.Container container) {
    set(Column.IN, container.title());
    set(Column.SOCIETY, container.society());
    set(Column.VOLUME, container.volume());
    set(Column.PART, container.part());
    set(Column.ISSUE, container.issue());
    set(Column.COVER_YEAR, container.coverYear());
    set(Column.PAGES, container.pages().map(Locator::printed));
  }

  private void lineage(Edition.Lineage lineage) {
    set(Column.DESCENT, lineage.form().code());
    set(Column.PARENT, lineage.parent());
    set(Column.FIRST_YEAR, lineage.originalYear());
    set(Column.NEW_MATTER, lineage.newMatter());
  }

  private void occasion() {
    if (edition.occasion().isPresent()) {
      Edition.Occasion occasion = edition.occasion().get();
      set(Column.HOUSE, occasion.house());
      set(Column.CITY, occasion.city());
      set(Column.DAYS, occasion.dates());
      set(Column.CODE, occasion.code());
      set(Column.CONSIGNOR, occasion.consignor());
      set(Column.VENUES, CellList.joined(occasion.venues()));
    }
  }

  private void archive() {
    if (edition.archive().isPresent()) {
      Edition.Archive archive = edition.archive().get();
      set(Column.REPOSITORY, archive.repository());
      set(Column.SHELF_MARK, archive.shelfMark());
      set(Column.FIRM, archive.firm());
      set(Column.FOLIATED_BY, archive.foliatedBy());
      set(Column.DEGREE, archive.degree());
    }
  }

  private void online() {
    if (edition.online().isPresent()) {
      set(Column.URL, edition.online().get().url());
      set(Column.ACCESSED, edition.online().get().accessed());
      set(Column.ARCHIVED, edition.online().get().archived());
    }
  }
}
