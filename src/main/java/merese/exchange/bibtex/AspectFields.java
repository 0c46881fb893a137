package merese.exchange.bibtex;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import merese.exchange.Aspect;
import merese.exchange.Outgoing;
import merese.exchange.bibtex.NoteField.Sentence;
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
  private final FieldAspects aspects;
  private final boolean modern;
  private final Map<String, String> fields = new LinkedHashMap<>();

  private AspectFields(Outgoing source, ReceivedRecord record, FieldAspects aspects) {
    this.work = source.work();
    this.edition = source.edition();
    this.imprint = edition.imprint();
    this.record = record;
    this.aspects = aspects;
    this.modern = record.format().equals(Flavour.BIBLATEX.format());
  }

  /** By name, each as LaTeX; none where the library says nothing of it. */
  static Map<String, String> of(
      Outgoing source, ReceivedRecord record, FieldAspects aspects, Aspect aspect) {
    AspectFields made = new AspectFields(source, record, aspects);
    made.make(aspect);
    return made.fields;
  }

  /** What has no field, as sentences for the note. */
  static List<Sentence> sentences(Outgoing source, Set<Aspect> changed) {
    Set<Topic> fielded = Set.of(Topic.VOLUMES, Topic.STATEMENT, Topic.DEGREE);
    List<Sentence> sentences = new ArrayList<>();
    if (changed.contains(Aspect.OCCASION) && BiblatexType.isSale(source.work())) {
      sentences.add(new Sentence(Aspect.OCCASION, Makers.sale(source.edition())));
    }
    source
        .edition()
        .online()
        .flatMap(Edition.Online::accessed)
        .filter(day -> changed.contains(Aspect.ONLINE) && !isDay(day))
        .ifPresent(day -> sentences.add(new Sentence(Aspect.ONLINE, "Accessed " + day)));
    NoteField.sentences(source, fielded, List.of()).stream()
        .filter(sentence -> changed.contains(sentence.says()))
        .forEach(sentences::add);
    return sentences;
  }

  private static boolean isDay(String accessed) {
    return accessed.matches("\\d{4}-\\d{2}-\\d{2}");
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
      case LANGUAGE -> language();
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
              .ifPresent(
                  year ->
                      set(record.field("origyear").isPresent() ? "origyear" : "origdate", year));
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

  private void language() {
    Optional<String> name = work.language().flatMap(LanguageName::of);
    String field = record.field("language").isPresent() ? "language" : "langid";
    name.ifPresent(language -> set(field, language));
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
            .filter(name -> aspects.of(name).contains(Aspect.PUBLISHER))
            .findFirst()
            .orElse(record.type().equals("booklet") ? "howpublished" : "publisher");
    imprint
        .publisher()
        .map(p -> field.equals("howpublished") ? LatexText.of(p) : LatexText.oneOfList(p))
        .ifPresent(p -> set(field, p));
  }

  private void series(String printed) {
    EditionStatement.Series series = EditionStatement.series(printed);
    boolean byVolume =
        aspects.of("volume").contains(Aspect.SERIES)
            && !aspects.of("number").contains(Aspect.SERIES);
    text("series", Optional.of(series.title()));
    text(byVolume ? "volume" : "number", series.number());
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
      Edition.Archive university = edition.archive().get();
      String older = record.type().equals("thesis") ? "institution" : "school";
      set(named("institution", older), LatexText.oneOfList(university.repository()));
      university.degree().map(String::strip).ifPresent(this::degree);
    }
  }

  /** Nothing where the type of the entry says it. */
  private void degree(String degree) {
    String said =
        switch (record.type()) {
          case "phdthesis" -> "PhD";
          case "mastersthesis" -> "Master's";
          default -> "";
        };
    String key =
        switch (record.type().equals("thesis") ? degree : "") {
          case "PhD" -> "phdthesis";
          case "MA" -> "mathesis";
          case "BA" -> "bathesis";
          default -> LatexText.of(degree);
        };
    if (!degree.equals(said)) {
      set("type", key);
    }
  }

  private void online() {
    edition
        .online()
        .ifPresent(
            online -> {
              WebAddress.of(online.url()).ifPresent(url -> set("url", url));
              online
                  .accessed()
                  .filter(day -> isDay(day) && fields.containsKey("url"))
                  .ifPresent(day -> set("urldate", day));
            });
  }
}
