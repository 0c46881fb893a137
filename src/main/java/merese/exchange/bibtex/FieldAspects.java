package merese.exchange.bibtex;

import java.util.EnumSet;
import java.util.HashMap;
import java.util.Map;
import java.util.Set;
import merese.exchange.Aspect;
import merese.model.Edition.Container;
import merese.model.ReceivedRecord;
import merese.model.ReceivedRecord.Field;
import merese.model.Work;

/**
 * Which part of a description each field of a record says, by what {@link BibtexMeaning} makes of
 * them; where one of them changes, these fields give way. For most of the many fields that there
 * are it is none: they have no home in a library.
 *
 * <p>A field is that of what it says in the first place: a translator is one of the people, though
 * that there is one also makes a reprint a translation; and a note that stands in for a missing
 * title stays where there is one.
 */
final class FieldAspects {
  private static final Set<String> THESES = Set.of("thesis", "phdthesis", "mastersthesis");
  static final Set<Aspect> NONE = Set.of();

  private final ReceivedRecord record;
  private final boolean hasSeries;
  private final boolean isThesis;
  private final boolean isHosted;
  private final boolean isInJournal;
  private final boolean hasPages;
  private final Set<Aspect> note;

  private FieldAspects(ReceivedRecord record, Work reading) {
    this.record = record;
    this.hasSeries = reading.editions().get(0).imprint().series().isPresent();
    this.isThesis = THESES.contains(record.type());
    Container container = reading.editions().get(0).container().orElse(null);
    this.isHosted = container != null;
    boolean inBook = record.field("booktitle").isPresent();
    boolean named = record.field("journal").isPresent() || record.field("journaltitle").isPresent();
    this.isInJournal = isHosted && (!inBook || named && record.type().equals("article"));
    this.hasPages = isHosted && container.pages().isPresent();
    this.note = note(record);
  }

  /** A note from our own export is read as several things. */
  private static Set<Aspect> note(ReceivedRecord record) {
    Map<String, String> stored = new HashMap<>();
    record.fields().forEach(field -> stored.putIfAbsent(field.name(), field.value()));
    EntryFields fields = new EntryFields(stored);
    OwnNote read = OwnNote.of(fields, KindReader.of(record.type(), fields).ours());
    Set<Aspect> aspects = EnumSet.of(Aspect.NOTED_AS);
    read.date().ifPresent(date -> aspects.add(Aspect.DATE));
    read.coverYear().ifPresent(year -> aspects.add(Aspect.CONTAINER));
    read.lineageForm().ifPresent(form -> aspects.add(Aspect.LINEAGE));
    read.wrongIsbn().ifPresent(isbn -> aspects.add(Aspect.IDENTIFIERS));
    read.archived().ifPresent(address -> aspects.add(Aspect.ONLINE));
    return aspects;
  }

  /**
   * @param reading what the record is read as
   */
  static FieldAspects of(ReceivedRecord record, Work reading) {
    return new FieldAspects(record, reading);
  }

  boolean isHomeless(Field field) {
    return of(field.name()).isEmpty() && !field.name().equals("keywords");
  }

  /** Keywords, which are several things in one field, are not among them. */
  Set<Aspect> of(String field) {
    return switch (field) {
      case "title", "subtitle" -> EnumSet.of(Aspect.TITLE);
      case "author", "translator" -> EnumSet.of(Aspect.PEOPLE);
      case "editor", "editora", "editorb", "editorc" -> editor(field);
      case "editortype", "editoratype", "editorbtype", "editorctype" ->
          editor(field.substring(0, field.length() - "type".length()));
      case "year", "date" -> EnumSet.of(Aspect.DATE);
      case "edition" -> EnumSet.of(Aspect.STATEMENT);
      case "volumes" -> EnumSet.of(Aspect.VOLUMES);
      case "series" -> hasSeries ? EnumSet.of(Aspect.SERIES) : NONE;
      case "number" -> number();
      case "volume" -> volume();
      case "part" -> isHosted ? EnumSet.of(Aspect.CONTAINER) : NONE;
      case "issue" -> isInJournal ? EnumSet.of(Aspect.CONTAINER) : NONE;
      case "pages" -> hasPages ? EnumSet.of(Aspect.CONTAINER) : NONE;
      case "journal", "journaltitle", "journalsubtitle" ->
          isInJournal ? EnumSet.of(Aspect.CONTAINER) : NONE;
      case "booktitle", "booksubtitle" ->
          isHosted && !isInJournal ? EnumSet.of(Aspect.CONTAINER) : NONE;
      case "address", "location" ->
          record.type().equals("patent") ? NONE : EnumSet.of(Aspect.PLACES);
      case "publisher" -> EnumSet.of(Aspect.PUBLISHER);
      case "howpublished" -> howPublished();
      case "institution" -> isThesis ? EnumSet.of(Aspect.ARCHIVE) : publisherOf("report");
      case "organization" -> publisherOf("manual");
      case "school", "type" -> isThesis ? EnumSet.of(Aspect.ARCHIVE) : NONE;
      case "isbn", "issn", "doi" -> EnumSet.of(Aspect.IDENTIFIERS);
      case "url", "urldate" -> EnumSet.of(Aspect.ONLINE);
      case "origdate", "origyear" -> EnumSet.of(Aspect.LINEAGE);
      case "language", "langid", "hyphenation" -> EnumSet.of(Aspect.LANGUAGE);
      case "note" -> note;
      default -> NONE;
    };
  }

  private Set<Aspect> editor(String field) {
    String type = record.field(field + "type").flatMap(StoredValue::text).orElse("");
    return record.field(field).isPresent() && EditorRole.of(type.strip()).isPresent()
        ? EnumSet.of(Aspect.PEOPLE)
        : NONE;
  }

  private Set<Aspect> number() {
    boolean ofJournal = record.type().equals("article") || record.type().equals("suppperiodical");
    Set<Aspect> number = EnumSet.noneOf(Aspect.class);
    if (!ofJournal && hasSeries) {
      number.add(Aspect.SERIES);
    }
    if (isInJournal) {
      number.add(Aspect.CONTAINER);
    }
    return number;
  }

  private Set<Aspect> volume() {
    boolean ofSeries = hasSeries && !FormatSense.isBiblatex(record.format());
    return isHosted
        ? EnumSet.of(Aspect.CONTAINER)
        : ofSeries && record.field("number").isEmpty() ? EnumSet.of(Aspect.SERIES) : NONE;
  }

  private Set<Aspect> howPublished() {
    boolean address =
        record
            .field("howpublished")
            .flatMap(StoredValue::text)
            .flatMap(WebField::alone)
            .isPresent();
    return address
        ? record.field("url").isPresent() ? NONE : EnumSet.of(Aspect.ONLINE)
        : record.type().equals("booklet") && record.field("publisher").isEmpty()
            ? EnumSet.of(Aspect.PUBLISHER)
            : NONE;
  }

  private Set<Aspect> publisherOf(String type) {
    boolean ofType = record.type().equals(type) || record.type().equals("tech" + type);
    return ofType && record.field("publisher").isEmpty() ? EnumSet.of(Aspect.PUBLISHER) : NONE;
  }
}
