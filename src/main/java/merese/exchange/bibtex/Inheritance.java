package merese.exchange.bibtex;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import merese.model.ReceivedRecord;
import merese.model.ReceivedRecord.Field;

/**
 * A record's fields with those that it has from others: in BibTeX each that it lacks from its
 * cross-reference, in biblatex those of its data (xdata) and those of its cross-reference by the
 * default setup (The biblatex package 3.18, appendix B), so that a book's title becomes an essay's
 * booktitle. Circles end where they close.
 */
final class Inheritance {
  /** A longer chain of cross-references is not followed to its end. */
  private static final int DEEPEST = 16;

  /** So many keys that are missing are named. */
  private static final int MOST_MISSING = 20;

  private static final Set<String> NEVER =
      Set.of(
          "crossref",
          "xref",
          "xdata",
          "ids",
          "entryset",
          "entrysubtype",
          "execute",
          "label",
          "options",
          "presort",
          "related",
          "relatedoptions",
          "relatedstring",
          "relatedtype",
          "shorthand",
          "shorthandintro",
          "sortkey",
          "key",
          "keywords",
          "annote",
          "annotation",
          "abstract",
          "file");

  /** Titles that mean another thing in a part of the whole. */
  private static final Set<String> SHORT_TITLES =
      Set.of("shorttitle", "sorttitle", "indextitle", "indexsorttitle");

  private static final List<Set<String>> SAME =
      List.of(
          Set.of("date", "year"),
          Set.of("journal", "journaltitle"),
          Set.of("location", "address"),
          Set.of("institution", "school"));

  private final Function<String, Optional<ReceivedRecord>> byKey;
  private final Set<String> seen = new HashSet<>();
  private final List<String> missing = new ArrayList<>();

  private Inheritance(Function<String, Optional<ReceivedRecord>> byKey) {
    this.byKey = byKey;
  }

  /**
   * @param fields the first of each name
   * @param missing keys that were not found
   */
  record Inherited(Map<String, String> fields, List<String> missing) {}

  static Inherited of(ReceivedRecord record, Function<String, Optional<ReceivedRecord>> byKey) {
    Inheritance inheritance = new Inheritance(byKey);
    Map<String, String> fields = inheritance.fields(record, 0);
    return new Inherited(fields, inheritance.missing);
  }

  /** The keys of the records that one with these fields inherits from. */
  static List<String> parents(List<Field> fields) {
    List<String> parents = new ArrayList<>();
    for (Field field : fields) {
      if (isFromOthers(field.name())) {
        parents.addAll(keys(field));
      }
    }
    return parents;
  }

  /** Whether a field names records to inherit from. */
  static boolean isFromOthers(String field) {
    return field.equals("crossref") || field.equals("xdata");
  }

  private static List<String> keys(Field field) {
    String value = StoredValue.text(field.value()).orElse("");
    return field.name().equals("crossref") ? TextList.of(value, "") : TextList.of(value, ",");
  }

  private Map<String, String> fields(ReceivedRecord record, int depth) {
    seen.add(Survey.folded(record.id()));
    Map<String, String> fields = new LinkedHashMap<>();
    record.fields().forEach(field -> fields.putIfAbsent(field.name(), field.value()));
    for (String name : List.of("xdata", "crossref")) {
      for (Field field : record.fields()) {
        if (field.name().equals(name)) {
          keys(field).forEach(key -> inherit(key, record.type(), fields, depth));
          break;
        }
      }
    }
    return fields;
  }

  private void inherit(String key, String type, Map<String, String> fields, int depth) {
    if (depth == DEEPEST || !seen.add(Survey.folded(key))) {
      return;
    }
    Optional<ReceivedRecord> parent = byKey.apply(key);
    if (parent.isEmpty()) {
      if (missing.size() < MOST_MISSING && !missing.contains(key)) {
        missing.add(key);
      }
      return;
    }
    boolean renames =
        FormatSense.isBiblatex(parent.get().format()) && !parent.get().type().equals("xdata");
    Set<String> own = Set.copyOf(fields.keySet());
    fields(parent.get(), depth + 1)
        .forEach(
            (name, value) -> {
              for (String target : targets(parent.get().type(), type, name, renames)) {
                if (!hasSame(own, target)) {
                  fields.putIfAbsent(target, value);
                }
              }
            });
  }

  private static boolean hasSame(Set<String> own, String name) {
    return SAME.stream()
        .anyMatch(same -> same.contains(name) && same.stream().anyMatch(own::contains));
  }

  /** What a parent's field is called in a child; none where it is not inherited. */
  private static List<String> targets(String parent, String child, String field, boolean renames) {
    if (NEVER.contains(field)) {
      return List.of();
    }
    String whole = renames ? whole(parent, child) : "";
    if (whole.isEmpty()) {
      return List.of(field);
    }
    if (SHORT_TITLES.contains(field)) {
      return List.of();
    }
    return switch (field) {
      case "title" -> List.of(whole + "title");
      case "subtitle" -> List.of(whole + "subtitle");
      case "titleaddon" -> List.of(whole + "titleaddon");
      case "author" ->
          parent.equals("book") || parent.equals("mvbook")
              ? List.of("author", "bookauthor")
              : List.of("author");
      default -> List.of(field);
    };
  }

  /** What a child calls the whole that it is part of: "book", "main", "journal" or nothing. */
  private static String whole(String parent, String child) {
    boolean inBook = Set.of("inbook", "bookinbook", "suppbook").contains(child);
    boolean inCollection = Set.of("incollection", "inreference", "suppcollection").contains(child);
    boolean inProceedings = Set.of("inproceedings", "conference").contains(child);
    return switch (parent) {
      case "mvbook" -> inBook || child.equals("book") ? "main" : "";
      case "mvcollection", "mvreference" ->
          inCollection || child.equals("collection") || child.equals("reference") ? "main" : "";
      case "mvproceedings" -> inProceedings || child.equals("proceedings") ? "main" : "";
      case "book" -> inBook ? "book" : "";
      case "collection", "reference" -> inCollection ? "book" : "";
      case "proceedings" -> inProceedings ? "book" : "";
      case "periodical" ->
          child.equals("article") || child.equals("suppperiodical") ? "journal" : "";
      default -> "";
    };
  }
}
