package merese.exchange.bibtex;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import merese.exchange.Aspect;
import merese.exchange.Outgoing;
import merese.exchange.bibtex.NoteField.Topic;
import merese.model.Contributor.Role;
import merese.model.Edition;
import merese.model.Edition.Container;
import merese.model.Edition.Imprint;
import merese.model.Locator;
import merese.model.LocatorKind;
import merese.model.Name;
import merese.model.ReceivedRecord;
import merese.model.Work;

/**
 * The fields for parts of a description that have been changed since a record came. They have the
 * names that the record uses, as far as it has any: {@code location} where the place stood in
 * {@code location}, and otherwise those of the flavour.
 */
final class AspectFields {
  private final Work work;
  private final Edition edition;
  private final Imprint imprint;
  private final ReceivedRecord record;
  private final boolean modern;
  private final Map<String, String> fields = new LinkedHashMap<>();

  private AspectFields(Outgoing source, ReceivedRecord record) {
    this.work = source.work();
    this.edition = source.edition();
    this.imprint = edition.imprint();
    this.record = record;
    this.modern = record.format().equals(Flavour.BIBLATEX.format());
  }

  /** By name, each as LaTeX; none where the library says nothing of it. */
  static Map<String, String> of(Outgoing source, ReceivedRecord record, Aspect aspect) {
    AspectFields made = new AspectFields(source, record);
    made.make(aspect);
    return made.fields;
  }

  /** What has no field, as sentences for the note. */
  static List<NoteField.Sentence> sentences(Outgoing source, Set<Aspect> changed) {
    Set<Topic> fielded = Set.of(Topic.VOLUMES, Topic.STATEMENT);
    return NoteField.sentences(source, fielded, List.of()).stream()
        .filter(sentence -> changed.contains(sentence.says()))
        .toList();
  }

  private void set(String field, String latex) {
    if (!latex.isEmpty()) {
      fields.put(field, latex);
    }
  }

  private void text(String field, Optional<String> words) {
    words.map(LatexText::of).ifPresent(latex -> set(field, latex));
  }

  /** Of several names for the same thing, the one that the record has. */
  private String named(String modernName, String olderName) {
    String first = modern ? modernName : olderName;
    String second = modern ? olderName : modernName;
    return record.field(first).isEmpty() && record.field(second).isPresent() ? second : first;
  }

  private void make(Aspect aspect) {
    switch (aspect) {
      case TITLE -> title();
      case PEOPLE -> people();
      case LANGUAGE -> work.language().flatMap(LanguageName::of).ifPresent(l -> set("langid", l));
      case STATEMENT ->
          text(
              "edition",
              modern ? EditionStatement.whole(imprint) : EditionStatement.of(imprint).either());
      case DATE -> date();
      case PLACES -> set(named("location", "address"), LatexText.list(imprint.places()));
      case PUBLISHER -> publisher();
      case VOLUMES -> imprint.volumes().ifPresent(count -> set("volumes", Integer.toString(count)));
      case SERIES -> imprint.series().ifPresent(this::series);
      case IDENTIFIERS -> identifiers();
      case CONTAINER -> edition.container().ifPresent(this::container);
      case LINEAGE ->
          edition
              .lineage()
              .flatMap(lineage -> BiblatexDate.year(lineage.originalYear()))
              .ifPresent(year -> set("origdate", year));
      case ARCHIVE -> archive();
      case ONLINE -> online();
      case KIND, OTHER_TITLES, NOTED_AS, OCCASION -> {}
    }
  }

  private void title() {
    if (modern || record.field("subtitle").isPresent()) {
      set("title", BibtexTitle.of(work.title(), work.language()));
      work.subtitle().ifPresent(s -> set("subtitle", BibtexTitle.of(s, work.language())));
    } else {
      set("title", BibtexTitle.whole(work));
    }
  }

  private void people() {
    List<Name> authors = Makers.names(work, Role.AUTHOR);
    List<Name> editors = Makers.names(work, Role.EDITOR);
    List<Name> organisers = Makers.names(work, Role.ORGANISER);
    BibtexNames.list(authors).ifPresent(names -> set("author", names));
    BibtexNames.list(editors).ifPresent(names -> set("editor", names));
    if (authors.isEmpty() && editors.isEmpty()) {
      BibtexNames.list(organisers).ifPresent(names -> set(modern ? "editor" : "author", names));
      set("editortype", modern && fields.containsKey("editor") ? "organizer" : "");
    }
    BibtexNames.list(Makers.names(work, Role.TRANSLATOR))
        .ifPresent(names -> set("translator", names));
  }

  private void date() {
    boolean dated = record.field("date").isPresent();
    if (dated || modern && record.field("year").isEmpty()) {
      BiblatexDate.of(imprint, Optional.empty()).edtf().ifPresent(date -> set("date", date));
    } else {
      imprint.year().ifPresent(year -> set("year", Integer.toString(year)));
    }
  }

  private void publisher() {
    String field =
        List.of("publisher", "howpublished", "organization", "institution").stream()
            .filter(name -> record.field(name).isPresent())
            .filter(name -> FieldAspects.of(record, name).contains(Aspect.PUBLISHER))
            .findFirst()
            .orElse("publisher");
    imprint.publisher().map(LatexText::oneOfList).ifPresent(p -> set(field, p));
  }

  private void series(String printed) {
    EditionStatement.Series series = EditionStatement.series(printed);
    text("series", Optional.of(series.title()));
    text("number", series.number());
  }

  private void identifiers() {
    Numbers numbers = Numbers.of(imprint, true, true);
    numbers.isbn().ifPresent(isbn -> set("isbn", isbn));
    numbers.issn().ifPresent(issn -> set("issn", issn));
    numbers.doi().ifPresent(doi -> set("doi", doi));
  }

  private void container(Container container) {
    boolean journal =
        record.type().equals("article")
            || record.field("journal").isPresent()
            || record.field("journaltitle").isPresent();
    text(journal ? named("journaltitle", "journal") : "booktitle", Optional.of(container.title()));
    text("volume", container.volume());
    text("number", container.issue().or(container::part));
    boolean both = container.issue().isPresent() && container.part().isPresent();
    text(modern ? "issue" : "part", container.part().filter(p -> both));
    container.pages().ifPresent(this::pages);
  }

  private void pages(Locator extent) {
    Optional<Locator.Simple> simple =
        extent.simple().filter(pages -> pages.kind() == LocatorKind.PAGE);
    text("pages", Optional.of(simple.map(Locator.Simple::value).orElse(extent.printed())));
  }

  private void archive() {
    boolean thesis = record.type().endsWith("thesis");
    if (thesis && edition.archive().isPresent()) {
      String older = record.type().equals("thesis") ? "institution" : "school";
      String repository = edition.archive().get().repository();
      set(named("institution", older), LatexText.oneOfList(repository));
      text("type", edition.archive().get().degree());
    }
  }

  private void online() {
    List<String> days = new ArrayList<>();
    edition
        .online()
        .ifPresent(
            online -> {
              WebAddress.of(online.url()).ifPresent(url -> set("url", url));
              online.accessed().filter(d -> d.matches("\\d{4}-\\d{2}-\\d{2}")).ifPresent(days::add);
            });
    days.forEach(day -> set("urldate", day));
  }
}
