package merese.exchange.csl;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import merese.exchange.Aspect;

/**
 * The variables of CSL 1.0.2 that a description is made of: their order in what is written, and
 * which part of a description each one feeds. What is not named here has no home.
 */
final class Variables {
  static final String CUSTOM = "custom";

  private static final List<String> ORDER =
      List.of(
          "id",
          "type",
          "title",
          "title-short",
          "original-title",
          "author",
          "container-author",
          "editor",
          "translator",
          "illustrator",
          "interviewer",
          "organizer",
          "container-title",
          "container-title-short",
          "collection-title",
          "collection-number",
          "volume",
          "issue",
          "page",
          "genre",
          "number",
          "edition",
          "number-of-volumes",
          "publisher-place",
          "publisher",
          "issued",
          "original-date",
          "event-date",
          "event-place",
          "archive",
          "archive_location",
          "language",
          "ISBN",
          "ISSN",
          "DOI",
          "URL",
          "accessed",
          "note",
          CUSTOM);

  private static final Set<String> KNOWN = Set.copyOf(ORDER);

  private Variables() {}

  static boolean isKnown(String variable) {
    return KNOWN.contains(variable);
  }

  /** Its place in the order; the last one for a variable that is not in it. */
  static int rank(String variable) {
    int at = ORDER.indexOf(variable);
    return at < 0 ? ORDER.size() : at;
  }

  /** The variables that feed a part of the description of an item of a type. */
  static List<String> feeding(Aspect aspect, String type) {
    boolean thesis = type.equals("thesis");
    boolean patent = type.equals("patent");
    boolean site = CslKind.isSitePage(type);
    return switch (aspect) {
      case KIND -> List.of("type");
      case TITLE -> List.of("title", "title-short", "shortTitle");
      case OTHER_TITLES -> List.of("original-title");
      case PEOPLE ->
          List.of("author", "editor", "translator", "illustrator", "interviewer", "organizer");
      case LANGUAGE -> List.of("language");
      case STATEMENT -> List.of("edition");
      case DATE -> List.of("issued");
      case PLACES -> List.of("publisher-place");
      case PUBLISHER ->
          thesis
              ? List.of()
              : site ? List.of("publisher", "container-title") : List.of("publisher");
      case VOLUMES -> List.of("number-of-volumes");
      case SERIES ->
          patent
              ? List.of("collection-title", "collection-number", "genre", "number")
              : List.of("collection-title", "collection-number");
      case IDENTIFIERS -> List.of("ISBN", "ISSN", "DOI");
      case NOTED_AS -> List.of("note");
      case CONTAINER ->
          site
              ? List.of()
              : List.of(
                  "container-title",
                  "container-title-short",
                  "journalAbbreviation",
                  "volume",
                  "issue",
                  "page");
      case LINEAGE -> List.of("original-date");
      case OCCASION -> List.of("event-date", "event-place");
      case ARCHIVE ->
          thesis
              ? List.of("publisher", "genre", "archive", "archive_location")
              : List.of("archive", "archive_location");
      case ONLINE -> List.of("URL", "accessed");
    };
  }

  /**
   * The variables to be written anew where some parts have changed. With the kind the type changes,
   * and with it what every variable means.
   */
  static Set<String> feeding(Set<Aspect> changed, String type, String newType) {
    Set<Aspect> all = changed.contains(Aspect.KIND) ? EnumSet.allOf(Aspect.class) : changed;
    List<String> variables = new ArrayList<>();
    for (Aspect aspect : all) {
      variables.addAll(feeding(aspect, type));
      variables.addAll(feeding(aspect, newType));
    }
    return new HashSet<>(variables);
  }
}
