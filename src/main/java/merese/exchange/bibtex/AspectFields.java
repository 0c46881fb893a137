package merese.exchange.bibtex;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.EnumSet;
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
 * {@code location}, and otherwise those of its format. What has no field in such a record is said
 * in its note.
 */
final class AspectFields {
  private final Work work;
  private final Edition edition;
  private final Imprint imprint;
  private final ReceivedRecord record;
  private final String type;
  private final FieldAspects aspects;
  private final boolean modern;
  private final Map<Aspect, Map<String, String>> all = new EnumMap<>(Aspect.class);
  private final List<Sentence> sentences = new ArrayList<>();
  private Map<String, String> fields = Map.of();
  private final Set<Topic> fielded = EnumSet.of(Topic.VOLUMES, Topic.STATEMENT, Topic.DEGREE);

  private AspectFields(Outgoing source, ReceivedRecord record, String type, FieldAspects aspects) {
    this.work = source.work();
    this.edition = source.edition();
    this.imprint = edition.imprint();
    this.record = record;
    this.type = type;
    this.aspects = aspects;
    this.modern = FormatSense.isBiblatex(record.format());
  }

  /**
   * @param fields of each part of the description, by name, each as LaTeX
   * @param sentences what is for the note
   */
  record Made(Map<Aspect, Map<String, String>> fields, List<Sentence> sentences) {}

  /**
   * @param type that the entry has now
   */
  static Made of(
      Outgoing source,
      ReceivedRecord record,
      String type,
      FieldAspects aspects,
      Set<Aspect> changed) {
    AspectFields made = new AspectFields(source, record, type, aspects);
    changed.forEach(made::make);
    Set<Aspect> said = EnumSet.noneOf(Aspect.class);
    said.addAll(changed);
    if (aspects.of("note").stream().anyMatch(changed::contains)) {
      said.addAll(aspects.of("note")); // the note is written anew, with all that it said
    }
    NoteField.sentences(source, made.fielded, List.of()).stream()
        .filter(sentence -> said.contains(sentence.says()))
        .forEach(made.sentences::add);
    return new Made(made.all, made.sentences);
  }

  private void set(String field, String latex) {
    if (!latex.isEmpty()) {
      fields.put(field, latex);
    }
  }

  private void text(String field, Optional<String> words) {
    words.map(LatexText::of).ifPresent(latex -> set(field, latex));
  }

  private void say(Aspect aspect, String words) {
    sentences.add(new Sentence(aspect, words));
  }

  private boolean has(String field) {
    return record.field(field).isPresent();
  }

  /** Of two names for the same thing, the one that the record has. */
  private String named(String modernName, String olderName) {
    String first = modern ? modernName : olderName;
    String second = modern ? olderName : modernName;
    return !has(first) && has(second) ? second : first;
  }

  private void make(Aspect aspect) {
    fields = new LinkedHashMap<>();
    all.put(aspect, fields);
    switch (aspect) {
      case TITLE -> title();
      case PEOPLE -> people();
      case LANGUAGE -> language();
      case STATEMENT ->
          text(
              "edition",
              modern ? EditionStatement.whole(imprint) : EditionStatement.of(imprint).either());
      case DATE -> date();
      case PLACES -> places();
      case PUBLISHER -> publisher();
      case VOLUMES -> imprint.volumes().ifPresent(count -> set("volumes", Integer.toString(count)));
      case SERIES -> imprint.series().ifPresent(this::series);
      case IDENTIFIERS -> identifiers();
      case CONTAINER -> edition.container().ifPresent(this::container);
      case LINEAGE ->
          edition
              .lineage()
              .flatMap(lineage -> BiblatexDate.year(lineage.originalYear()))
              .ifPresent(year -> set(has("origyear") ? "origyear" : "origdate", year));
      case OCCASION -> {
        if (BiblatexType.isSale(work) && edition.occasion().isPresent()) {
          say(Aspect.OCCASION, Makers.sale(edition));
        }
      }
      case ARCHIVE -> edition.archive().ifPresent(this::archive);
      case ONLINE -> edition.online().ifPresent(this::online);
      case KIND, OTHER_TITLES, NOTED_AS -> {}
    }
  }

  private void title() {
    if (modern || has("subtitle")) {
      set("title", BibtexTitle.of(work.title(), work.language()));
      work.subtitle().ifPresent(s -> set("subtitle", BibtexTitle.of(s, work.language())));
    } else {
      set("title", BibtexTitle.whole(work));
    }
  }

  private void people() {
    List<Name> authors = Makers.names(work, Role.AUTHOR);
    List<Name> organisers = Makers.names(work, Role.ORGANISER);
    boolean anonymous = authors.isEmpty() && Makers.names(work, Role.EDITOR).isEmpty();
    BibtexNames.list(!modern && anonymous ? organisers : authors)
        .ifPresent(names -> set("author", names));
    editors(Role.EDITOR, Topic.ORGANISER);
    if (modern) {
      editors(Role.ORGANISER, Topic.ORGANISER);
      editors(Role.ILLUSTRATOR, Topic.ILLUSTRATOR);
      editors(Role.PHOTOGRAPHER, Topic.PHOTOGRAPHER);
      editors(Role.INTERVIEWER, Topic.INTERVIEWER);
    }
    BibtexNames.list(Makers.names(work, Role.TRANSLATOR))
        .ifPresent(names -> set("translator", names));
  }

  /** In the first field that is free, as long as there is one. */
  private void editors(Role role, Topic topic) {
    Optional<String> names = BibtexNames.list(Makers.names(work, role));
    Optional<String> free = EditorRole.FIELDS.stream().filter(this::isFree).findFirst();
    if (names.isPresent() && free.isPresent()) {
      set(free.get(), names.get());
      set(free.get() + "type", EditorRole.type(role));
      if (role != Role.EDITOR) {
        fielded.add(topic);
      }
    }
  }

  /** BibTeX has one such field only. */
  private boolean isFree(String editors) {
    boolean kept = has(editors) && !aspects.of(editors).contains(Aspect.PEOPLE);
    return !kept && !fields.containsKey(editors) && (modern || editors.equals("editor"));
  }

  private void language() {
    Optional<String> name = work.language().flatMap(LanguageName::of);
    name.ifPresent(language -> set(has("language") ? "language" : "langid", language));
  }

  /** BibTeX has no rules for a year, so that it may stand there as it is printed. */
  private void date() {
    if (has("date") || modern && !has("year")) {
      BiblatexDate date = BiblatexDate.of(imprint, Optional.empty());
      date.edtf().ifPresent(edtf -> set("date", edtf));
      if (date.saysAll()) {
        fielded.add(Topic.DATE);
      }
      return;
    }
    Optional<String> printed =
        imprint
            .yearPrinted()
            .filter(p -> !modern && DateReader.of(p.strip()).year().equals(imprint.year()));
    text("year", printed);
    if (printed.isPresent()) {
      fielded.add(Topic.DATE);
    } else if (imprint.year().isPresent()) {
      set("year", Integer.toString(imprint.year().getAsInt()));
    }
  }

  private void places() {
    if (!type.equals("patent")) {
      set(named("location", "address"), LatexText.list(imprint.places()));
    } else if (!imprint.places().isEmpty()) {
      say(Aspect.PLACES, String.join(", ", imprint.places()));
    }
  }

  private void publisher() {
    String field =
        List.of("publisher", "howpublished", "organization", "institution").stream()
            .filter(name -> type.equals(record.type()) && has(name))
            .filter(name -> aspects.of(name).contains(Aspect.PUBLISHER))
            .findFirst()
            .orElse(type.equals("booklet") ? "howpublished" : "publisher");
    imprint
        .publisher()
        .map(p -> field.equals("howpublished") ? LatexText.of(p) : LatexText.oneOfList(p))
        .ifPresent(p -> set(field, p));
  }

  /** A number that the record has already for something else must not become that of a series. */
  private void series(String printed) {
    boolean numberIsOther = has("number") && !aspects.of("number").contains(Aspect.SERIES);
    boolean volumeIsOther =
        has("volume") && !modern && FieldAspects.NONE.equals(aspects.of("volume"));
    if (numberIsOther || volumeIsOther || type.equals("article")) {
      say(Aspect.SERIES, printed);
      return;
    }
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
    numbers.others().forEach(number -> say(Aspect.IDENTIFIERS, number));
  }

  private void container(Container container) {
    if (HostReader.isWhole(type)) {
      say(Aspect.CONTAINER, "In " + Makers.within(container));
      return;
    }
    boolean journal =
        type.equals("article")
            || type.equals(record.type()) && (has("journal") || has("journaltitle"));
    text(journal ? named("journaltitle", "journal") : "booktitle", Optional.of(container.title()));
    text("volume", container.volume());
    if (journal) {
      text("number", container.issue());
    } else {
      container.issue().ifPresent(issue -> say(Aspect.CONTAINER, "No. " + issue));
    }
    text("part", container.part());
    container.pages().ifPresent(this::pages);
  }

  private void pages(Locator extent) {
    Optional<Locator.Simple> simple =
        extent.simple().filter(pages -> pages.kind() == LocatorKind.PAGE);
    text("pages", Optional.of(simple.map(Locator.Simple::value).orElse(extent.printed())));
  }

  /** Only a thesis has a field for it. */
  private void archive(Edition.Archive university) {
    if (type.endsWith("thesis")) {
      String older = type.equals("thesis") ? "institution" : "school";
      set(named("institution", older), LatexText.oneOfList(university.repository()));
      university.degree().map(String::strip).ifPresent(this::degree);
    }
  }

  /** Nothing where the type of the entry says it. */
  private void degree(String degree) {
    boolean said =
        type.equals("phdthesis") && degree.equals("PhD")
            || type.equals("mastersthesis") && degree.equals("Master's");
    String key =
        switch (type.equals("thesis") ? degree : "") {
          case "PhD" -> "phdthesis";
          case "MA" -> "mathesis";
          case "BA" -> "bathesis";
          default -> LatexText.of(degree);
        };
    if (!said) {
      set("type", key);
    }
  }

  private void online(Edition.Online online) {
    WebAddress.of(online.url()).ifPresent(url -> set("url", url));
    boolean isDay = online.accessed().filter(d -> d.matches("\\d{4}-\\d{2}-\\d{2}")).isPresent();
    if (isDay && fields.containsKey("url")) {
      set("urldate", online.accessed().get());
    } else {
      online.accessed().ifPresent(day -> say(Aspect.ONLINE, "Accessed " + day));
    }
  }
}
