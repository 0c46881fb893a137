package merese.exchange.bibtex;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.function.Function;
import merese.exchange.Incoming;
import merese.exchange.SuppliedTitle;
import merese.exchange.bibtex.Inheritance.Inherited;
import merese.model.Contributor;
import merese.model.Contributor.Role;
import merese.model.Edition;
import merese.model.Edition.Archive;
import merese.model.Edition.Imprint;
import merese.model.Edition.Lineage;
import merese.model.Edition.Online;
import merese.model.ReceivedRecord;
import merese.model.SourceKind;
import merese.model.Work;

/**
 * What a record of BibTeX or BibLaTeX says, in the library's terms: plain text without markup,
 * names taken apart, numbers checked.
 *
 * <p>A pure function of the record and of those that it inherits from. What is not understood is
 * left out; it stays in the record. See {@code bibtex.md} for which field is read as what.
 */
public final class BibtexMeaning {
  private final ReceivedRecord record;
  private final EntryFields fields;
  private final List<String> remarks = new ArrayList<>();

  /**
   * @param work with one edition; both are called {@link Incoming#UNNAMED}, and the edition has the
   *     record
   * @param remarks what was noticed and taken as it stands, each a sentence without its full stop
   */
  public record Reading(Work work, List<String> remarks) {
    public Reading {
      remarks = List.copyOf(remarks);
    }
  }

  private BibtexMeaning(ReceivedRecord record, Function<String, Optional<ReceivedRecord>> byKey) {
    this.record = record;
    Inherited inherited = Inheritance.of(record, byKey);
    this.fields = new EntryFields(inherited.fields());
    inherited
        .missing()
        .forEach(
            key -> remarks.add("It refers to \"" + key + "\", which is not among the entries"));
  }

  /**
   * @param byKey another record by its key, for {@code crossref} and {@code xdata}; BibTeX does not
   *     mind the capitals of a key
   */
  public static Work of(ReceivedRecord record, Function<String, Optional<ReceivedRecord>> byKey) {
    return read(record, byKey).work();
  }

  /** The same with what was noticed. */
  public static Reading read(
      ReceivedRecord record, Function<String, Optional<ReceivedRecord>> byKey) {
    BibtexMeaning meaning = new BibtexMeaning(record, byKey);
    return new Reading(meaning.work(), meaning.remarks);
  }

  private Work work() {
    KindReader kind = KindReader.of(record.type(), fields);
    TitleReader titles = TitleReader.of(fields, record.id());
    if (titles.isSupplied()) {
      remarks.add(SuppliedTitle.REMARK);
    }
    return new Work(
        Incoming.UNNAMED,
        kind.kind(),
        titles.title(),
        titles.subtitle(),
        List.of(),
        contributors(),
        LanguageReader.of(fields),
        kind.mine(),
        List.of(edition(kind.kind(), OwnNote.of(fields, kind.ours()))),
        List.of());
  }

  private List<Contributor> contributors() {
    List<Contributor> contributors = new ArrayList<>();
    people("author", Role.AUTHOR, contributors);
    for (String field : EditorRole.FIELDS) {
      EditorRole.of(fields.plain(field + "type").orElse(""))
          .ifPresent(role -> people(field, role, contributors));
    }
    people("translator", Role.TRANSLATOR, contributors);
    return contributors;
  }

  private void people(String field, Role role, List<Contributor> to) {
    NameReader.Names read =
        fields
            .latex(field)
            .map(NameReader::read)
            .orElse(new NameReader.Names(List.of(), List.of()));
    read.names().forEach(name -> to.add(new Contributor(role, name)));
    remarks.addAll(read.remarks());
  }

  private Edition edition(SourceKind kind, OwnNote note) {
    Optional<Edition.Container> container = HostReader.of(record.type(), fields, note.coverYear());
    return new Edition(
        Incoming.UNNAMED,
        imprint(container.isPresent(), note),
        lineage(note),
        container,
        Optional.empty(),
        kind == SourceKind.THESIS ? university() : Optional.empty(),
        online(note),
        Optional.empty(),
        List.of(),
        List.of(),
        List.of(),
        List.of(),
        List.of(record));
  }

  private Imprint imprint(boolean inHost, OwnNote note) {
    EditionReader edition = EditionReader.of(fields);
    DateReader date = DateReader.of(fields);
    return new Imprint(
        edition.statement(),
        edition.number(),
        date.year(),
        note.date().or(date::printed),
        places(),
        publisher(),
        fields.plain("volumes").map(BibtexMeaning::count).orElse(OptionalInt.empty()),
        series(inHost),
        IdentifierReader.of(fields, note.wrongIsbn(), remarks),
        note.rest());
  }

  private static OptionalInt count(String text) {
    return text.matches("\\d{1,6}") ? OptionalInt.of(Integer.parseInt(text)) : OptionalInt.empty();
  }

  /** The place of a patent is where it holds. */
  private List<String> places() {
    if (record.type().equals("patent")) {
      return List.of();
    }
    return fields.latex("location", "address").map(TextList::ofAnd).orElse(List.of()).stream()
        .map(LatexReader::plain)
        .filter(place -> !place.isBlank())
        .toList();
  }

  private Optional<String> publisher() {
    Optional<String> publisher = fields.plain("publisher");
    return switch (publisher.isPresent() ? "" : record.type()) {
      case "booklet" ->
          fields.latex("howpublished").flatMap(WebField::alone).isPresent()
              ? Optional.empty()
              : fields.plain("howpublished");
      case "report", "techreport" -> fields.plain("institution");
      case "manual" -> fields.plain("organization");
      default -> publisher;
    };
  }

  /** With its number; that of a journal is not a title of its own. */
  private Optional<String> series(boolean inHost) {
    if (record.type().equals("article") || record.type().equals("suppperiodical")) {
      return Optional.empty();
    }
    boolean inSeries = !inHost && !FormatSense.isBiblatex(record.format());
    Optional<String> number =
        fields
            .plain("number")
            .map(n -> " " + n)
            .or(() -> inSeries ? fields.plain("volume").map(v -> ", vol. " + v) : Optional.empty());
    return fields.plain("series").map(series -> series + number.orElse(""));
  }

  private Optional<Lineage> lineage(OwnNote note) {
    OptionalInt dated = DateReader.original(fields);
    OptionalInt original = dated.isPresent() ? dated : note.originalYear();
    if (original.isEmpty()) {
      return Optional.empty();
    }
    Lineage.Form form = fields.has("translator") ? Lineage.Form.TRANSLATION : Lineage.Form.REPRINT;
    return Optional.of(
        new Lineage(
            note.lineageForm().orElse(form),
            Optional.empty(),
            original,
            Optional.empty(),
            List.of()));
  }

  private Optional<Archive> university() {
    Optional<String> degree =
        switch (record.type()) {
          case "phdthesis" -> Optional.of("PhD");
          case "mastersthesis" -> Optional.of("Master's");
          default -> Optional.empty();
        };
    Optional<String> named =
        fields
            .plain("type")
            .map(
                type ->
                    switch (type) {
                      case "phdthesis" -> "PhD";
                      case "mathesis" -> "MA";
                      case "bathesis" -> "BA";
                      default -> type;
                    });
    return fields
        .plain("school", "institution")
        .map(
            school ->
                new Archive(
                    school,
                    Optional.empty(),
                    Optional.empty(),
                    Optional.empty(),
                    named.or(() -> degree)));
  }

  private Optional<Online> online(OwnNote note) {
    return fields
        .latex("url")
        .map(WebField::address)
        .or(() -> fields.latex("howpublished").flatMap(WebField::alone))
        .filter(url -> !url.isBlank())
        .map(url -> new Online(url, fields.plain("urldate"), note.archived()));
  }
}
