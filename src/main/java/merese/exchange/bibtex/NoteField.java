package merese.exchange.bibtex;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;
import merese.exchange.Outgoing;
import merese.model.Contributor.Role;
import merese.model.Edition;
import merese.model.Edition.Lineage;
import merese.model.Identifier;
import merese.model.Name;
import merese.model.SourceKind;
import merese.model.Work;

/** What BibTeX has no field for, as sentences for the field {@code note}. */
final class NoteField {
  private final Work work;
  private final Edition edition;
  private final EntryType type;
  private final List<String> sentences = new ArrayList<>();

  private NoteField(Outgoing source, EntryType type) {
    this.work = source.work();
    this.edition = source.edition();
    this.type = type;
  }

  /**
   * @param more sentences that the caller has besides
   */
  static String of(Outgoing source, EntryType type, List<String> more) {
    NoteField note = new NoteField(source, type);
    more.forEach(sentence -> note.add(capitalised(sentence)));
    note.edition();
    note.dates();
    note.occasion();
    note.archive();
    note.people();
    note.rest();
    return note.sentences.stream().map(LatexText::of).collect(Collectors.joining(". "));
  }

  private void add(String sentence) {
    String words = sentence.strip();
    while (words.endsWith(".")) {
      words = words.substring(0, words.length() - 1).strip();
    }
    if (!words.isEmpty() && !sentences.contains(words)) {
      sentences.add(words);
    }
  }

  private void add(String lead, Optional<String> words) {
    words.filter(w -> !w.isBlank()).ifPresent(w -> add(lead + w));
  }

  private static String capitalised(String words) {
    int end = words.isEmpty() ? 0 : words.offsetByCodePoints(0, 1);
    return words.substring(0, end).toUpperCase(Locale.ROOT) + words.substring(end);
  }

  private void edition() {
    Optional<String> statement = EditionStatement.of(edition.imprint()).rest();
    add("", statement.map(NoteField::capitalised));
    edition.lineage().ifPresent(lineage -> lineage(lineage, statement.orElse("")));
    boolean hasField = type == EntryType.BOOK || type == EntryType.INCOLLECTION;
    if (!hasField && edition.imprint().volumes().isPresent()) {
      add(edition.imprint().volumes().getAsInt() + " vols");
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
        add(words + year);
      }
    }
    add("", lineage.newMatter().map(NoteField::capitalised));
  }

  private void dates() {
    String year =
        edition.imprint().year().isPresent()
            ? Integer.toString(edition.imprint().year().getAsInt())
            : "";
    add("Date: ", edition.imprint().yearPrinted().filter(printed -> !printed.equals(year)));
    edition
        .container()
        .filter(c -> c.coverYear().isPresent() && !c.coverYear().equals(edition.imprint().year()))
        .ifPresent(c -> add("Year on the cover: " + c.coverYear().getAsInt()));
  }

  private void occasion() {
    if (edition.occasion().isEmpty()) {
      return;
    }
    Edition.Occasion occasion = edition.occasion().get();
    if (work.kind() == SourceKind.SALE_CATALOGUE) {
      add("Consignor as printed: ", occasion.consignor());
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
      add("Exhibition: " + String.join("; ", all));
    }
  }

  private void archive() {
    if (edition.archive().isEmpty() || work.kind() == SourceKind.THESIS) {
      edition
          .archive()
          .flatMap(Edition.Archive::degree)
          .filter(d -> type == EntryType.MISC || !d.strip().matches("(?i)ph\\.?d\\.?"))
          .ifPresent(d -> add("Degree: " + d));
      return;
    }
    Edition.Archive archive = edition.archive().get();
    add(archive.repository() + archive.shelfMark().map(m -> ", " + m).orElse(""));
    add("Foliation: ", archive.foliatedBy());
    if (!work.makers().isEmpty()) {
      boolean author = Makers.names(work, Role.AUTHOR).stream().anyMatch(n -> isNamed(n, archive));
      add("Firm: ", archive.firm().filter(f -> !author));
    }
  }

  private static boolean isNamed(Name name, Edition.Archive archive) {
    return archive.firm().equals(Optional.of(name.full()));
  }

  private void people() {
    add("Photographs by ", names(Role.PHOTOGRAPHER));
    add("Illustrated by ", names(Role.ILLUSTRATOR));
    add("Interviewed by ", names(Role.INTERVIEWER));
    boolean isAuthor = work.makers().isEmpty();
    add(
        "Organised by ",
        names(Role.ORGANISER)
            .filter(n -> !isAuthor && !edition.imprint().publisher().equals(Optional.of(n))));
  }

  private Optional<String> names(Role role) {
    return Optional.of(
            Makers.names(work, role).stream().map(Name::full).collect(Collectors.joining(" and ")))
        .filter(n -> !n.isEmpty());
  }

  private void rest() {
    Optional<String> own = edition.imprint().notedAs();
    work.alternateTitles().stream()
        .filter(title -> own.isEmpty() || !own.get().contains(title))
        .forEach(title -> add("Also titled: " + title));
    edition.imprint().identifiers(Identifier.Scheme.ISBN).stream()
        .filter(Identifier::wrongInPrint)
        .forEach(isbn -> add("ISBN as printed: " + isbn.value()));
    edition
        .online()
        .ifPresent(
            online -> {
              add("Archived at ", online.archived());
              if (WebAddress.of(online.url()).isEmpty()) {
                add("Address as noted: " + online.url());
              }
            });
    add("", own);
  }
}
