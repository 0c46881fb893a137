package merese.exchange.bibtex;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import merese.exchange.Aspect;
import merese.exchange.Outgoing;
import merese.model.Contributor.Role;
import merese.model.Edition;
import merese.model.Edition.Lineage;
import merese.model.Name;
import merese.model.SourceKind;
import merese.model.Work;

/** What an entry has no field for, as sentences for the field {@code note}. */
final class NoteField {
  /** What some entries have a field for; those need no sentence. */
  enum Topic {
    STATEMENT,
    VOLUMES,
    DEGREE,
    DATE,
    PHOTOGRAPHER,
    ILLUSTRATOR,
    INTERVIEWER,
    ORGANISER
  }

  /** A sentence without its full stop, as plain text, and the part of a description it says. */
  record Sentence(Aspect says, String words) {}

  private final Work work;
  private final Edition edition;
  private final Set<Topic> fielded;
  private final List<Sentence> sentences = new ArrayList<>();

  private NoteField(Outgoing source, Set<Topic> fielded) {
    this.work = source.work();
    this.edition = source.edition();
    this.fielded = fielded;
  }

  /**
   * @param fielded what the entry's fields say already
   * @param more sentences that the caller has besides
   */
  static List<Sentence> sentences(Outgoing source, Set<Topic> fielded, List<String> more) {
    NoteField note = new NoteField(source, fielded);
    more.forEach(sentence -> note.add(Aspect.NOTED_AS, capitalised(sentence)));
    note.edition();
    note.dates();
    note.occasion();
    note.archive();
    note.people();
    note.rest();
    return note.sentences;
  }

  /** The sentences as a field. */
  static String latex(List<Sentence> sentences) {
    return sentences.stream().map(s -> LatexText.of(s.words())).collect(Collectors.joining(". "));
  }

  private void add(Aspect says, String sentence) {
    String words = sentence.strip();
    while (words.endsWith(".")) {
      words = words.substring(0, words.length() - 1).strip();
    }
    String said = words;
    if (!words.isEmpty() && sentences.stream().noneMatch(s -> s.words().equals(said))) {
      sentences.add(new Sentence(says, words));
    }
  }

  private void add(Aspect says, String lead, Optional<String> words) {
    words.filter(w -> !w.isBlank()).ifPresent(w -> add(says, lead + w));
  }

  private static String capitalised(String words) {
    int end = words.isEmpty() ? 0 : words.offsetByCodePoints(0, 1);
    return words.substring(0, end).toUpperCase(Locale.ROOT) + words.substring(end);
  }

  private void edition() {
    Optional<String> statement = EditionStatement.of(edition.imprint()).rest();
    if (!fielded.contains(Topic.STATEMENT)) {
      add(Aspect.STATEMENT, "", statement.map(NoteField::capitalised));
    }
    edition.lineage().ifPresent(lineage -> lineage(lineage, statement.orElse("")));
    if (!fielded.contains(Topic.VOLUMES) && edition.imprint().volumes().isPresent()) {
      add(Aspect.VOLUMES, edition.imprint().volumes().getAsInt() + " vols");
    }
  }

  private void lineage(Lineage lineage, String statement) {
    if (lineage.originalYear().isPresent()) {
      String year = Integer.toString(lineage.originalYear().getAsInt());
      String words =
          switch (lineage.form()) {
            case FACSIMILE -> "Facsimile of the edition of ";
            case REPRINT -> "Reprint of the edition of ";
            case TRANSLATION -> "Translation of the edition of ";
            case REVISED, TWIN -> "First published ";
          };
      if (!statement.contains(year)) {
        add(Aspect.LINEAGE, words + year);
      }
    }
    add(Aspect.LINEAGE, "", lineage.newMatter().map(NoteField::capitalised));
  }

  private void dates() {
    String year =
        edition.imprint().year().isPresent()
            ? Integer.toString(edition.imprint().year().getAsInt())
            : "";
    if (!fielded.contains(Topic.DATE)) {
      add(
          Aspect.DATE,
          "Date: ",
          edition.imprint().yearPrinted().filter(printed -> !printed.equals(year)));
    }
    edition
        .container()
        .filter(c -> c.coverYear().isPresent() && !c.coverYear().equals(edition.imprint().year()))
        .ifPresent(c -> add(Aspect.CONTAINER, "Year on the cover: " + c.coverYear().getAsInt()));
  }

  private void occasion() {
    if (edition.occasion().isEmpty()) {
      return;
    }
    Edition.Occasion occasion = edition.occasion().get();
    if (work.kind() == SourceKind.SALE_CATALOGUE) {
      add(Aspect.OCCASION, "Consignor as printed: ", occasion.consignor());
      return;
    }
    List<String> where = new ArrayList<>(occasion.venues());
    if (where.isEmpty()) {
      occasion.city().ifPresent(where::add);
    }
    List<String> all = new ArrayList<>();
    occasion.dates().ifPresent(all::add);
    all.addAll(where);
    if (!all.isEmpty()) {
      add(Aspect.OCCASION, "Exhibition: " + String.join("; ", all));
    }
  }

  private void archive() {
    if (edition.archive().isEmpty() || work.kind() == SourceKind.THESIS) {
      edition
          .archive()
          .flatMap(Edition.Archive::degree)
          .filter(d -> !fielded.contains(Topic.DEGREE))
          .ifPresent(d -> add(Aspect.ARCHIVE, "Degree: " + d));
      return;
    }
    Edition.Archive archive = edition.archive().get();
    add(Aspect.ARCHIVE, archive.repository() + archive.shelfMark().map(m -> ", " + m).orElse(""));
    add(Aspect.ARCHIVE, "Foliation: ", archive.foliatedBy());
    if (!work.makers().isEmpty()) {
      boolean author = Makers.names(work, Role.AUTHOR).stream().anyMatch(n -> isNamed(n, archive));
      add(Aspect.ARCHIVE, "Firm: ", archive.firm().filter(f -> !author));
    }
  }

  private static boolean isNamed(Name name, Edition.Archive archive) {
    return archive.firm().equals(Optional.of(name.full()));
  }

  private void people() {
    add(Aspect.PEOPLE, "Photographs by ", names(Role.PHOTOGRAPHER, Topic.PHOTOGRAPHER));
    add(Aspect.PEOPLE, "Illustrated by ", names(Role.ILLUSTRATOR, Topic.ILLUSTRATOR));
    add(Aspect.PEOPLE, "Interviewed by ", names(Role.INTERVIEWER, Topic.INTERVIEWER));
    boolean isAuthor = work.makers().isEmpty();
    add(
        Aspect.PEOPLE,
        "Organised by ",
        names(Role.ORGANISER, Topic.ORGANISER)
            .filter(n -> !isAuthor && !edition.imprint().publisher().equals(Optional.of(n))));
  }

  private Optional<String> names(Role role, Topic topic) {
    if (fielded.contains(topic)) {
      return Optional.empty();
    }
    return Optional.of(
            Makers.names(work, role).stream().map(Name::full).collect(Collectors.joining(" and ")))
        .filter(n -> !n.isEmpty());
  }

  private void rest() {
    Optional<String> own = edition.imprint().notedAs();
    work.alternateTitles().stream()
        .filter(title -> own.isEmpty() || !own.get().contains(title))
        .forEach(title -> add(Aspect.OTHER_TITLES, "Also titled: " + title));
    edition.imprint().identifiers().stream()
        .filter(Numbers::isWrong)
        .forEach(i -> add(Aspect.IDENTIFIERS, i.scheme() + " as printed: " + i.value()));
    edition
        .online()
        .ifPresent(
            online -> {
              add(Aspect.ONLINE, "Archived at ", online.archived());
              if (WebAddress.of(online.url()).isEmpty()) {
                add(Aspect.ONLINE, "Address as noted: " + online.url());
              }
            });
    add(Aspect.NOTED_AS, "", own);
  }
}
