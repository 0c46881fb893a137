package merese.exchange.bibtex;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.UnaryOperator;
import merese.exchange.Outgoing;
import merese.exchange.bibtex.NoteField.Topic;
import merese.model.Edition;
import merese.model.Edition.Container;
import merese.model.Edition.Imprint;
import merese.model.Edition.Lineage.Form;
import merese.model.Locator;
import merese.model.LocatorKind;
import merese.model.SourceKind;
import merese.model.Work;

/** The fields of one entry of biblatex, by name, each as LaTeX. */
final class BiblatexMaker {
  private final Outgoing source;
  private final Work work;
  private final Edition edition;
  private final Imprint imprint;
  private final BiblatexType type;
  private final Set<Topic> fielded = EnumSet.noneOf(Topic.class);
  private final List<String> unplaced = new ArrayList<>();
  private final Map<String, String> fields = new LinkedHashMap<>();
  private final BiblatexPeople people;

  private BiblatexMaker(Outgoing source) {
    this.source = source;
    this.work = source.work();
    this.edition = source.edition();
    this.imprint = edition.imprint();
    this.type = BiblatexType.of(source);
    this.people = new BiblatexPeople(source, type, fields, fielded, unplaced);
  }

  static MadeEntry make(Outgoing source, UnaryOperator<String> labels) {
    BiblatexMaker maker = new BiblatexMaker(source);
    maker.people.add();
    maker.titles();
    maker.container();
    maker.published();
    maker.numbers();
    maker.dates();
    maker.online();
    maker.set("note", NoteField.latex(NoteField.sentences(source, maker.fielded, maker.unplaced)));
    maker.set("keywords", LatexText.of(MadeEntry.kind(maker.work)));
    maker.work.language().flatMap(LanguageName::of).ifPresent(l -> maker.set("langid", l));
    maker.set("annotation", AnnoteField.of(source.ownNotes(), labels));
    return new MadeEntry(maker.type.code(), maker.fields);
  }

  private void set(String field, String latex) {
    if (!latex.isEmpty()) {
      fields.put(field, latex);
    }
  }

  /** In the field where the type has it, and as a sentence of the note where not. */
  private void text(String field, String lead, Optional<String> text) {
    text.filter(t -> !t.isBlank())
        .ifPresent(
            words -> {
              if (type.takes(field)) {
                set(field, LatexText.of(words));
              } else {
                unplaced.add(lead + words);
              }
            });
  }

  private void titles() {
    if (source.part().isPresent()) {
      set("title", title(source.part().get().title()));
      set("booktitle", title(work.title()));
      set("booksubtitle", work.subtitle().map(this::title).orElse(""));
    } else {
      set("title", title(work.title()));
      set("subtitle", work.subtitle().map(this::title).orElse(""));
    }
  }

  private String title(String words) {
    return BibtexTitle.of(words, work.language());
  }

  private void container() {
    Optional<Locator> extent = source.part().flatMap(Edition.Part::extent);
    if (source.part().isEmpty() && edition.container().isPresent()) {
      Container container = edition.container().get();
      if (type.takes("journaltitle")) {
        set("journaltitle", LatexText.of(container.title()));
      } else if (type.takes("booktitle")) {
        set("booktitle", title(container.title()));
      } else {
        text("howpublished", "In ", Optional.of(container.title()));
      }
      volume(container.volume());
      boolean both = container.issue().isPresent() && container.part().isPresent();
      boolean journal = type == BiblatexType.ARTICLE;
      Optional<String> number = container.issue().or(container::part);
      if (journal) {
        text("number", "No. ", number);
        text("issue", "Part ", container.part().filter(p -> both));
      } else {
        container.issue().ifPresent(i -> unplaced.add("No. " + i));
        container.part().ifPresent(p -> unplaced.add("Part " + p));
      }
      extent = container.pages();
    }
    extent.ifPresent(this::pages);
  }

  /** The data model has numbers here, and biber ignores anything else. */
  private void volume(Optional<String> printed) {
    boolean number = printed.filter(v -> v.strip().matches("[0-9]{1,9}|[IVXLCDM]+")).isPresent();
    if (number) {
      text("volume", "Vol. ", printed);
    } else {
      printed.ifPresent(v -> unplaced.add("Volume " + v));
    }
  }

  private void pages(Locator extent) {
    Optional<Locator.Simple> pages =
        extent.simple().filter(simple -> simple.kind() == LocatorKind.PAGE);
    if (pages.isPresent() && type.takes("pages")) {
      set("pages", LatexText.of(pages.get().value()));
    } else {
      unplaced.add(extent.printed());
    }
  }

  private void published() {
    if (type == BiblatexType.PATENT) {
      patent();
    } else if (type == BiblatexType.THESIS) {
      thesis();
    } else if (work.kind() == SourceKind.THESIS) {
      edition.archive().ifPresent(archive -> unplaced.add("Thesis, " + archive.repository()));
    } else if (BiblatexType.isSale(work)) {
      sale();
    }
    statement();
    if (type != BiblatexType.PATENT) {
      imprint.series().ifPresent(this::series);
    }
    if (type.takes("volumes")) {
      fielded.add(Topic.VOLUMES);
      imprint.volumes().ifPresent(v -> set("volumes", Integer.toString(v)));
    }
    List<String> places = new ArrayList<>(imprint.places());
    if (places.isEmpty() && BiblatexType.isSale(work)) {
      edition.occasion().flatMap(Edition.Occasion::city).ifPresent(places::add);
    }
    List<String> without = new ArrayList<>();
    imprint.publisher().filter(p -> !p.isBlank() && !publisher(p)).ifPresent(without::add);
    if (type.takes("location")) {
      set("location", LatexText.list(places));
    } else {
      without.addAll(places);
    }
    if (!without.isEmpty()) {
      unplaced.add(String.join(", ", without));
    }
  }

  /** False where the type has no field for one. */
  private boolean publisher(String name) {
    for (String field : List.of("publisher", "organization", "howpublished")) {
      if (type.takes(field) && !fields.containsKey(field)) {
        boolean list = !field.equals("howpublished");
        set(field, list ? LatexText.oneOfList(name) : LatexText.of(name));
        return true;
      }
    }
    return false;
  }

  private void statement() {
    Optional<String> statement = EditionStatement.whole(imprint);
    fielded.add(Topic.STATEMENT);
    if (type.takes("edition")) {
      statement.ifPresent(words -> set("edition", LatexText.of(words)));
    } else {
      statement
          .map(
              words -> words.matches("\\d+") ? EditionStatement.ordinal(words) + " edition" : words)
          .ifPresent(unplaced::add);
    }
  }

  private void series(String printed) {
    EditionStatement.Series series = EditionStatement.series(printed);
    boolean numbered =
        type.takes("series") && (type.takes("number") && type != BiblatexType.ARTICLE);
    if (numbered) {
      set("series", LatexText.of(series.title()));
      set("number", series.number().map(LatexText::of).orElse(""));
    } else {
      unplaced.add(printed);
    }
  }

  private void patent() {
    imprint
        .series()
        .ifPresent(
            printed -> {
              EditionStatement.Series series = EditionStatement.patent(printed);
              set("number", LatexText.of(series.number().orElse(printed)));
              set("type", series.number().isPresent() ? LatexText.of(series.title()) : "");
            });
  }

  private void thesis() {
    fielded.add(Topic.DEGREE);
    edition
        .archive()
        .ifPresent(
            archive -> {
              String degree = archive.degree().orElse("").strip();
              boolean doctor = degree.isEmpty() || degree.matches("(?i)ph\\.?d\\.?");
              set("type", doctor ? "phdthesis" : LatexText.of(degree));
              set("institution", LatexText.oneOfList(archive.repository()));
              archive.shelfMark().ifPresent(unplaced::add);
            });
  }

  private void sale() {
    List<String> words = new ArrayList<>(List.of("Sale catalogue"));
    edition
        .occasion()
        .ifPresent(
            sale -> {
              sale.house()
                  .filter(h -> people.authors().stream().noneMatch(a -> a.full().equals(h)))
                  .ifPresent(words::add);
              sale.city().filter(c -> !imprint.places().isEmpty()).ifPresent(words::add);
              sale.dates().ifPresent(words::add);
              sale.code().ifPresent(code -> words.add("sale " + code));
            });
    unplaced.add(String.join(", ", words));
  }

  private void numbers() {
    Numbers numbers = Numbers.of(imprint, type.takes("isbn"), type.takes("issn"));
    numbers.isbn().ifPresent(isbn -> set("isbn", isbn));
    numbers.issn().ifPresent(issn -> set("issn", issn));
    numbers.doi().ifPresent(doi -> set("doi", doi));
    unplaced.addAll(numbers.others());
  }

  private void dates() {
    Optional<String> days =
        edition.occasion().flatMap(Edition.Occasion::dates).filter(d -> BiblatexType.isSale(work));
    BiblatexDate date = BiblatexDate.of(imprint, days);
    date.edtf().ifPresent(d -> set("date", d));
    if (date.saysAll()) {
      fielded.add(Topic.DATE);
    }
    if (date.edtf().isEmpty() && imprint.year().isPresent()) {
      unplaced.add("Year: " + imprint.year().getAsInt());
    }
    edition
        .lineage()
        .filter(lineage -> lineage.form() == Form.REPRINT || lineage.form() == Form.FACSIMILE)
        .flatMap(lineage -> BiblatexDate.year(lineage.originalYear()))
        .ifPresent(year -> set("origdate", year));
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
