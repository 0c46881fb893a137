package merese.exchange.bibtex;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.UnaryOperator;
import java.util.stream.Collectors;
import merese.exchange.Outgoing;
import merese.exchange.bibtex.NoteField.Sentence;
import merese.exchange.bibtex.NoteField.Topic;
import merese.model.Contributor.Role;
import merese.model.Edition;
import merese.model.Edition.Imprint;
import merese.model.Edition.Lineage.Form;
import merese.model.Locator;
import merese.model.LocatorKind;
import merese.model.Name;
import merese.model.SourceKind;
import merese.model.Work;

/** The fields of one entry, by name, each as LaTeX. */
final class EntryMaker {
  private final Outgoing source;
  private final Work work;
  private final Edition edition;
  private final Imprint imprint;
  private final Makers makers;
  private final EntryType type;
  private final List<String> unplaced = new ArrayList<>();
  private final Map<String, String> fields = new LinkedHashMap<>();

  private EntryMaker(Outgoing source) {
    this.source = source;
    this.work = source.work();
    this.edition = source.edition();
    this.imprint = edition.imprint();
    this.makers = Makers.of(source);
    this.type = EntryType.of(source, makers);
  }

  static MadeEntry make(Outgoing source, UnaryOperator<String> labels) {
    EntryMaker maker = new EntryMaker(source);
    maker.names();
    maker.titles();
    maker.published();
    maker.online();
    List<Sentence> sentences = NoteField.sentences(source, maker.fielded(), maker.unplaced);
    maker.set("note", NoteField.latex(sentences));
    maker.set("keywords", LatexText.of(MadeEntry.kind(source.work())));
    source.work().language().flatMap(LanguageName::of).ifPresent(l -> maker.set("langid", l));
    maker.set("annote", AnnoteField.of(source.ownNotes(), labels));
    return new MadeEntry(maker.type.code(), maker.fields);
  }

  private Set<Topic> fielded() {
    Set<Topic> fielded = EnumSet.noneOf(Topic.class);
    if (type == EntryType.BOOK || type == EntryType.INCOLLECTION) {
      fielded.add(Topic.VOLUMES);
    }
    String degree = edition.archive().flatMap(Edition.Archive::degree).orElse("").strip();
    if (type != EntryType.MISC && degree.matches("(?i)ph\\.?d\\.?")) {
      fielded.add(Topic.DEGREE);
    }
    return fielded;
  }

  private void set(String field, String latex) {
    if (!latex.isEmpty()) {
      fields.put(field, latex);
    }
  }

  private void text(String field, Optional<String> text) {
    text.map(LatexText::of).ifPresent(latex -> set(field, latex));
  }

  private void names() {
    makers.authors().ifPresent(names -> set("author", names));
    if (type.takesEditor(makers.hasAuthors())) {
      makers.editors().ifPresent(names -> set("editor", names));
    } else {
      people("Edited by ", Makers.names(work, Role.EDITOR));
    }
    people("The book is by ", makers.host()); // bookauthor belongs to another type
    List<Name> translators = Makers.names(work, Role.TRANSLATOR);
    if (type.takesTranslator()) {
      BibtexNames.list(translators).ifPresent(names -> set("translator", names));
    } else {
      people("Translated by ", translators);
    }
    boolean filed = makers.hasAuthors() || type == EntryType.BOOK;
    if (!filed) {
      String title = source.part().map(Edition.Part::title).orElse(work.title());
      set("key", LatexText.of(BibtexTitle.filed(title, work.language())));
    }
  }

  private void people(String lead, List<Name> names) {
    if (!names.isEmpty()) {
      unplaced.add(lead + names.stream().map(Name::full).collect(Collectors.joining(" and ")));
    }
  }

  private void titles() {
    String whole = BibtexTitle.wholeText(work);
    String title = source.part().map(Edition.Part::title).orElse(whole);
    set("title", BibtexTitle.of(title, work.language()));
    Optional<String> host =
        source.part().map(p -> whole).or(() -> edition.container().map(Edition.Container::title));
    switch (type) {
      case INCOLLECTION ->
          host.ifPresent(h -> set("booktitle", BibtexTitle.of(h, work.language())));
      case ARTICLE -> text("journal", host);
      default -> host.ifPresent(this::within);
    }
    if (type == EntryType.ARTICLE) {
      edition.container().flatMap(Edition.Container::volume).ifPresent(this::volume);
      edition.container().flatMap(c -> c.issue().or(c::part)).ifPresent(this::number);
    }
    if (type == EntryType.ARTICLE || type == EntryType.INCOLLECTION) {
      extent().ifPresent(this::pages);
    }
  }

  /** Biber ignores a volume that is no number, so that one is for the note. */
  private void volume(String printed) {
    if (printed.strip().matches("[0-9]{1,9}|[IVXLCDM]+")) {
      text("volume", Optional.of(printed));
    } else {
      unplaced.add("Volume " + printed);
    }
  }

  /** The styles of BibTeX print a number only after a volume. */
  private void number(String printed) {
    if (fields.containsKey("volume")) {
      text("number", Optional.of(printed));
    } else {
      unplaced.add("No. " + printed);
    }
  }

  private Optional<Locator> extent() {
    return source
        .part()
        .map(Edition.Part::extent)
        .orElseGet(() -> edition.container().flatMap(Edition.Container::pages));
  }

  private void pages(Locator extent) {
    Optional<Locator.Simple> pages =
        extent.simple().filter(simple -> simple.kind() == LocatorKind.PAGE);
    if (pages.isPresent()) {
      set("pages", LatexText.of(pages.get().value()));
    } else {
      unplaced.add(extent.printed());
    }
  }

  /** In a type that knows no journal and no book round it, words say what it stands in. */
  private void within(String host) {
    String extent = extent().map(e -> ", " + e.printed()).orElse("");
    String all =
        source.part().isPresent()
            ? "In " + host + extent
            : Makers.within(edition.container().get());
    if (type == EntryType.MISC || type == EntryType.BOOKLET) {
      text("howpublished", Optional.of(all));
    } else {
      unplaced.add(all);
    }
  }

  private void published() {
    EditionStatement statement = EditionStatement.of(imprint);
    switch (type) {
      case BOOK, INCOLLECTION -> {
        text("edition", statement.field());
        imprint.series().ifPresent(this::series);
        imprint.volumes().ifPresent(v -> set("volumes", Integer.toString(v)));
        imprint.publisher().map(LatexText::oneOfList).ifPresent(p -> set("publisher", p));
        address();
      }
      case BOOKLET -> {
        statementInWords(statement);
        text("howpublished", imprint.publisher());
        address();
      }
      case MASTERSTHESIS, PHDTHESIS ->
          edition
              .archive()
              .map(a -> LatexText.oneOfList(a.repository()))
              .ifPresent(school -> set("school", school));
      case MISC -> {
        statementInWords(statement);
        howPublished();
      }
      case ARTICLE, UNPUBLISHED -> statementInWords(statement);
    }
    if (imprint.year().isPresent()) {
      set("year", Integer.toString(imprint.year().getAsInt()));
    }
    edition
        .lineage()
        .filter(lineage -> lineage.form() == Form.REPRINT || lineage.form() == Form.FACSIMILE)
        .flatMap(lineage -> BiblatexDate.year(lineage.originalYear()))
        .ifPresent(year -> set("origdate", year));
    boolean isBook =
        type == EntryType.BOOK || type == EntryType.INCOLLECTION || type == EntryType.BOOKLET;
    Numbers numbers = Numbers.of(imprint, isBook, type == EntryType.ARTICLE);
    numbers.isbn().ifPresent(isbn -> set("isbn", isbn));
    numbers.issn().ifPresent(issn -> set("issn", issn));
    numbers.doi().ifPresent(doi -> set("doi", doi));
    unplaced.addAll(numbers.others());
  }

  private void statementInWords(EditionStatement statement) {
    if (statement.rest().isEmpty()) {
      statement.field().ifPresent(words -> unplaced.add(words + " edition"));
    }
    imprint.series().ifPresent(unplaced::add);
  }

  private void series(String printed) {
    EditionStatement.Series series = EditionStatement.series(printed);
    text("series", Optional.of(series.title()));
    text("number", series.number());
  }

  private void address() {
    set("address", LatexText.list(imprint.places()));
  }

  private void howPublished() {
    List<String> words = new ArrayList<>();
    if (work.kind() == SourceKind.SALE_CATALOGUE) {
      words.add(Makers.sale(edition));
    } else if (!fields.containsKey("howpublished")) {
      imprint.publisher().ifPresent(words::add);
      words.addAll(imprint.places());
    }
    if (!words.isEmpty()) {
      text("howpublished", Optional.of(String.join(", ", words)));
    }
  }

  private void online() {
    edition
        .online()
        .ifPresent(
            online -> {
              WebAddress.of(online.url()).ifPresent(url -> set("url", url));
              Optional<String> day =
                  online.accessed().filter(d -> d.matches("\\d{4}-\\d{2}-\\d{2}"));
              if (fields.containsKey("url") && day.isPresent()) {
                set("urldate", day.get());
              } else {
                online.accessed().ifPresent(d -> unplaced.add("Accessed " + d));
              }
            });
  }
}
