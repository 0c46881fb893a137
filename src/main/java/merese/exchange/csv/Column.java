package merese.exchange.csv;

import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import merese.exchange.Aspect;

/**
 * The columns that have a home, in the order in which they are written. The other names are headers
 * in use in libraries and private lists (common practice, no source).
 */
enum Column {
  KEY("Key", null, "id", "cite key", "citation key", "source key", "short name"),
  KIND("Kind", Aspect.KIND, "type", "kind of source", "document type", "material type"),
  TITLE("Title", Aspect.TITLE, "book title", "main title", "full title", "title of book", "titles"),
  SUBTITLE("Subtitle", Aspect.TITLE, "remainder of title"),
  OTHER_TITLES(
      "Other titles", Aspect.OTHER_TITLES, "other title", "alternative title", "variant title"),
  AUTHOR(
      "Author",
      Aspect.PEOPLE,
      "authors",
      "author name",
      "author names",
      "written by",
      "writer",
      "creator",
      "creators",
      "by"),
  EDITOR("Editor", Aspect.PEOPLE, "editors", "edited by"),
  PHOTOGRAPHER(
      "Photographer", Aspect.PEOPLE, "photographers", "photographs by", "photographs", "photos by"),
  TRANSLATOR("Translator", Aspect.PEOPLE, "translators", "translated by"),
  ILLUSTRATOR("Illustrator", Aspect.PEOPLE, "illustrators", "illustrated by"),
  ORGANISER("Organiser", Aspect.PEOPLE, "organisers", "organizer", "organizers", "organised by"),
  INTERVIEWER("Interviewer", Aspect.PEOPLE, "interviewers", "interviewed by"),
  LANGUAGE("Language", Aspect.LANGUAGE, "lang", "language code"),
  EDITION("Edition", Aspect.STATEMENT, "edition statement", "edn"),
  EDITION_NUMBER("Edition number", Aspect.STATEMENT, "edition no"),
  YEAR(
      "Year",
      Aspect.DATE,
      "year/date",
      "date/year",
      "year of publication",
      "publication year",
      "pub year",
      "year published"),
  DATE(
      "Date as printed",
      Aspect.DATE,
      "date",
      "year as printed",
      "date of publication",
      "publication date",
      "pub date",
      "date published",
      "published"),
  PLACE(
      "Place",
      Aspect.PLACES,
      "places",
      "place of publication",
      "publication place",
      "pub place",
      "place published",
      "city of publication"),
  PUBLISHER("Publisher", Aspect.PUBLISHER, "publishers", "published by", "publisher name"),
  VOLUMES("Volumes", Aspect.VOLUMES, "number of volumes", "no of volumes", "vols"),
  SERIES("Series", Aspect.SERIES, "series title", "series name"),
  ISBN("ISBN", Aspect.IDENTIFIERS, "isbns", "isbn 13", "isbn 10", "isbn number"),
  ISSN("ISSN", Aspect.IDENTIFIERS, "issns"),
  DOI("DOI", Aspect.IDENTIFIERS),
  NOTED_AS("Citation note", Aspect.NOTED_AS),
  IN(
      "In",
      Aspect.CONTAINER,
      "journal",
      "journal title",
      "journal name",
      "container title",
      "publication title",
      "periodical",
      "published in",
      "magazine"),
  SOCIETY("Society", Aspect.CONTAINER),
  VOLUME("Volume", Aspect.CONTAINER, "vol", "volume number", "volume no"),
  PART("Part", Aspect.CONTAINER),
  ISSUE("Issue", Aspect.CONTAINER, "issue number", "issue no"),
  COVER_YEAR("Year on the cover", Aspect.CONTAINER, "cover year"),
  PAGES("Pages", Aspect.CONTAINER, "page", "pp", "page range", "page numbers"),
  DESCENT("Descent", Aspect.LINEAGE),
  PARENT("Of edition", Aspect.LINEAGE),
  FIRST_YEAR(
      "First published",
      Aspect.LINEAGE,
      "original year",
      "original date",
      "year first published",
      "original publication year"),
  NEW_MATTER("New matter", Aspect.LINEAGE),
  HOUSE("House", Aspect.OCCASION, "auction house", "sale house", "saleroom"),
  CITY("Sale or exhibition city", Aspect.OCCASION, "sale city", "exhibition city"),
  DAYS(
      "Sale or exhibition dates",
      Aspect.OCCASION,
      "sale date",
      "sale dates",
      "date of sale",
      "exhibition dates"),
  CODE("Sale code", Aspect.OCCASION, "sale number", "sale no"),
  CONSIGNOR("Consignor", Aspect.OCCASION, "consignors"),
  VENUES("Venues", Aspect.OCCASION, "venue"),
  REPOSITORY("Repository", Aspect.ARCHIVE, "archive", "kept at", "record office"),
  SHELF_MARK("Shelf-mark", Aspect.ARCHIVE),
  FIRM("Firm", Aspect.ARCHIVE),
  FOLIATED_BY("Foliated by", Aspect.ARCHIVE),
  DEGREE("Degree", Aspect.ARCHIVE),
  URL("Web address", Aspect.ONLINE, "url", "link", "website", "web page"),
  ACCESSED("Accessed", Aspect.ONLINE, "date accessed", "access date", "accessed on"),
  ARCHIVED("Archived at", Aspect.ONLINE, "archived", "archive url");

  private static final Map<String, Column> BY_NAME = byName();
  private static final Map<String, Column> BY_HEADER =
      Arrays.stream(values()).collect(Collectors.toUnmodifiableMap(Column::header, c -> c));

  private final String header;
  private final Aspect aspect;
  private final List<String> synonyms;

  Column(String header, Aspect aspect, String... synonyms) {
    this.header = header;
    this.aspect = aspect;
    this.synonyms = List.of(synonyms);
  }

  private static Map<String, Column> byName() {
    Map<String, Column> all = new HashMap<>();
    for (Column column : values()) {
      all.put(bare(column.header), column);
      column.synonyms.forEach(name -> all.put(bare(name), column));
    }
    return Map.copyOf(all);
  }

  String header() {
    return header;
  }

  /** The part of a description that it feeds; none for the key. */
  Optional<Aspect> aspect() {
    return Optional.ofNullable(aspect);
  }

  /** Whether a cell may hold several, between semicolons. */
  boolean isList() {
    return switch (this) {
      case OTHER_TITLES,
          AUTHOR,
          EDITOR,
          PHOTOGRAPHER,
          TRANSLATOR,
          ILLUSTRATOR,
          ORGANISER,
          INTERVIEWER,
          PLACE,
          ISBN,
          ISSN,
          DOI,
          VENUES ->
          true;
      default -> false;
    };
  }

  /** By its header or another name for it; case, spaces, hyphens and brackets do not matter. */
  static Optional<Column> named(String name) {
    return Optional.ofNullable(BY_NAME.get(bare(name)));
  }

  /** By its own header, letter for letter, as the field of a record has it; null for any other. */
  static Column ofField(String name) {
    return BY_HEADER.get(name);
  }

  /** The letters and digits of a header, in small letters. */
  static String bare(String name) {
    StringBuilder out = new StringBuilder(name.length());
    String small = name.toLowerCase(Locale.ROOT);
    for (int i = 0; i < small.length(); ) {
      int c = small.codePointAt(i);
      i += Character.charCount(c);
      if (Character.isLetterOrDigit(c)) {
        out.appendCodePoint(c);
      }
    }
    return out.toString();
  }
}
