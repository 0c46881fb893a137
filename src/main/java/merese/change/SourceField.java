package merese.change;

import java.util.List;
import java.util.Optional;
import merese.model.SourceKind;

/** What can be said of a source when it is entered by hand, each as a text. */
public enum SourceField {
  KIND("--kind", "KIND", "What sort of source it is, such as monograph or sale-catalogue.", ""),
  TITLE("--title", "TEXT", "The title, without its subtitle.", "Title?"),
  SUBTITLE("--subtitle", "TEXT", "The subtitle.", "Subtitle?"),
  AUTHOR(
      "--author",
      "NAME",
      "An author, as \"Family, Given\"; a society or firm by its name.",
      "Author, as \"Family, Given\"?"),
  EDITOR("--editor", "NAME", "An editor.", "Editor, as \"Family, Given\"?"),
  PHOTOGRAPHER("--photographer", "NAME", "A photographer whom the title page names.", ""),
  TRANSLATOR("--translator", "NAME", "A translator.", ""),
  ILLUSTRATOR("--illustrator", "NAME", "An illustrator.", ""),
  ORGANISER("--organiser", "NAME", "Who held an exhibition.", "Organiser, such as a museum?"),
  INTERVIEWER(
      "--interviewer", "NAME", "Who asked, for a statement.", "Who asked or noted it down?"),
  YEAR(
      "--year",
      "YEAR",
      "The year; in brackets as you supply it, such as \"[c. 1926]\".",
      "Year? (in brackets where you supply it, such as [c. 1926])"),
  PLACE("--place", "PLACE", "A place of publication.", "Place of publication?"),
  PUBLISHER("--publisher", "NAME", "The publisher.", "Publisher?"),
  STATEMENT(
      "--statement",
      "TEXT",
      "The edition as printed, such as \"2nd edn, revised\".",
      "Edition, as printed?"),
  VOLUMES("--volumes", "NUMBER", "How many volumes it has.", ""),
  SERIES("--series", "TEXT", "The series with its number.", ""),
  ISBN("--isbn", "ISBN", "Its ISBN; the check digit is checked.", "ISBN?"),
  ISSN("--issn", "ISSN", "The ISSN of its journal.", "ISSN of the journal?"),
  DOI("--doi", "DOI", "Its DOI.", "DOI?"),
  IN(
      "--in",
      "TITLE",
      "The journal or volume of essays that it is in.",
      "Journal, or volume of essays?"),
  SOCIETY("--society", "NAME", "The society whose journal it is.", ""),
  VOLUME("--volume", "TEXT", "The volume of the journal.", "Volume?"),
  ISSUE("--issue", "TEXT", "The issue or number in the volume.", "Issue or number?"),
  PAGES(
      "--pages",
      "LOCATOR",
      "Where it is in there, such as \"pp. 22–38\".",
      "Pages, such as pp. 22–38?"),
  HOUSE("--house", "NAME", "The auction house.", "Auction house?"),
  CITY("--city", "PLACE", "Where the sale or exhibition was.", "City?"),
  DATES("--dates", "TEXT", "Its dates, as printed.", "Dates, as printed?"),
  SALE_CODE("--sale-code", "TEXT", "The code of the sale.", "Code of the sale?"),
  CONSIGNOR("--consignor", "NAME", "Whose property was sold.", ""),
  VENUE("--venue", "PLACE", "A venue of the exhibition.", "Venue?"),
  REPOSITORY(
      "--repository",
      "NAME",
      "The archive that has a manuscript; for a thesis, the university.",
      "Archive or library that has it? (for a thesis, the university)"),
  REFERENCE(
      "--reference",
      "TEXT",
      "Its shelf-mark or reference there.",
      "Shelf-mark or reference there?"),
  FIRM(
      "--firm", "NAME", "The firm whose papers or list it is.", "Firm whose list or papers it is?"),
  FOLIATED_BY("--foliated-by", "NAME", "Whose numbers the folios follow.", ""),
  DEGREE("--degree", "TEXT", "The degree, for a thesis.", "Degree?"),
  URL("--url", "URL", "Its address on the web.", "Address on the web?"),
  ACCESSED("--accessed", "DATE", "The day on which it was read there.", "Read there on which day?"),
  LANGUAGE("--language", "TAG", "Its language, such as de, where it is not the library's.", ""),
  NOTED_AS("--noted-as", "TEXT", "What else a citation should carry.", "");

  private final String option;
  private final String label;
  private final String description;
  private final String question;

  SourceField(String option, String label, String description, String question) {
    this.option = option;
    this.label = label;
    this.description = description;
    this.question = question;
  }

  /** The option that gives it. */
  public String option() {
    return option;
  }

  /** What stands for its value in a help. */
  public String label() {
    return label;
  }

  /** What it is, as a sentence. */
  public String description() {
    return description;
  }

  /** What to ask a person; "" for what is not asked. */
  public String question() {
    return question;
  }

  /** Whether there may be several. */
  public boolean isMany() {
    return switch (this) {
      case AUTHOR, EDITOR, PHOTOGRAPHER, TRANSLATOR, ILLUSTRATOR, ORGANISER, INTERVIEWER -> true;
      case PLACE, ISBN, ISSN, DOI, VENUE -> true;
      default -> false;
    };
  }

  /** What must be said where this is said. */
  public Optional<SourceField> needs() {
    return switch (this) {
      case SOCIETY, VOLUME, ISSUE, PAGES -> Optional.of(IN);
      case REFERENCE, FIRM, FOLIATED_BY, DEGREE -> Optional.of(REPOSITORY);
      case ACCESSED -> Optional.of(URL);
      default -> Optional.empty();
    };
  }

  /** What tells an edition from the others of its work. */
  public static List<SourceField> askedOfEdition() {
    return List.of(YEAR, STATEMENT, PLACE, PUBLISHER, ISBN);
  }

  /** What a person is asked of a source of a kind, in the order of its title page. */
  public static List<SourceField> asked(SourceKind kind) {
    return switch (kind) {
      case MONOGRAPH -> List.of(SUBTITLE, AUTHOR, STATEMENT, PLACE, PUBLISHER, YEAR, ISBN);
      case JOURNAL_ARTICLE -> List.of(SUBTITLE, AUTHOR, IN, VOLUME, ISSUE, YEAR, PAGES, DOI);
      case NEWSLETTER -> List.of(AUTHOR, IN, ISSUE, YEAR, PAGES);
      case EXHIBITION_CATALOGUE ->
          List.of(SUBTITLE, AUTHOR, ORGANISER, VENUE, DATES, PLACE, PUBLISHER, YEAR, ISBN);
      case MUSEUM_CATALOGUE -> List.of(SUBTITLE, AUTHOR, STATEMENT, PLACE, PUBLISHER, YEAR, ISBN);
      case SALE_CATALOGUE -> List.of(HOUSE, CITY, DATES, SALE_CODE, YEAR);
      case MANUSCRIPT -> List.of(AUTHOR, YEAR, REPOSITORY, REFERENCE, FIRM);
      case TRADE_LIST, TRADE_DIRECTORY, LEAFLET -> List.of(AUTHOR, PLACE, PUBLISHER, YEAR);
      case PATENT -> List.of(AUTHOR, YEAR, REPOSITORY, REFERENCE);
      case THESIS -> List.of(SUBTITLE, AUTHOR, REPOSITORY, DEGREE, YEAR);
      case WEB_PAGE, VIDEO -> List.of(AUTHOR, PUBLISHER, YEAR, URL, ACCESSED);
      case STATEMENT -> List.of(AUTHOR, INTERVIEWER, YEAR);
    };
  }
}
