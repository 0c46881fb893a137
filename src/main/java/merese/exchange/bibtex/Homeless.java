package merese.exchange.bibtex;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import merese.model.ReceivedRecord;
import merese.model.ReceivedRecord.Field;

/** What a record of biblatex has that a library has no place for, in an entry for BibTeX. */
final class Homeless {
  /** What only biblatex can make sense of. */
  private static final Set<String> FOR_BIBLATEX =
      Set.of(
          "crossref",
          "editortype",
          "entryset",
          "entrysubtype",
          "execute",
          "ids",
          "options",
          "related",
          "relatedoptions",
          "relatedstring",
          "relatedtype",
          "xdata",
          "xref");

  /** What biblatex's keys for kinds of report stand for in English (english.lbx). */
  private static final Map<String, String> REPORTS =
      Map.of("techreport", "Technical Report", "resreport", "Research Report");

  private final Map<String, String> fields = new LinkedHashMap<>();
  private final ReceivedRecord received;
  private final String type;

  private Homeless(ReceivedRecord made, ReceivedRecord received) {
    this.received = received;
    made.fields().forEach(field -> fields.put(field.name(), field.value()));
    this.type = type(made.type());
  }

  /**
   * @param made from what the library says
   * @param received with what it takes over from others
   * @param aspects of its fields
   */
  static ReceivedRecord added(ReceivedRecord made, ReceivedRecord received, FieldAspects aspects) {
    Homeless entry = new Homeless(made, received);
    for (Field field : received.fields()) {
      boolean ours = aspects.isHomeless(field) || field.name().equals("keywords");
      if (ours && !FOR_BIBLATEX.contains(field.name())) {
        entry.add(field);
      }
    }
    List<Field> fields = new ArrayList<>();
    entry.fields.forEach((name, value) -> fields.add(new Field(name, value)));
    return new ReceivedRecord(made.format(), entry.type, "", fields);
  }

  /** That of the record, where BibTeX has it and prints in it what was made. */
  private String type(String made) {
    boolean book = made.equals("book") || made.equals("booklet");
    if (received.type().equals("report") && made.equals("book") && fields.containsKey("author")) {
      fields.put("institution", fields.remove("publisher"));
      return "techreport";
    }
    boolean same =
        received.type().equals("inproceedings") && made.equals("incollection")
            || received.type().equals("proceedings") && book && !fields.containsKey("author");
    return same ? received.type() : made;
  }

  /** The styles print a number of a series only, and either a number or a volume. */
  private void add(Field field) {
    boolean report = type.equals("techreport");
    switch (field.name()) {
      case "number" -> {
        if (report) {
          fields.putIfAbsent("number", field.value());
        } else {
          note("no. ", field.value());
        }
      }
      case "volume" -> {
        if (fields.containsKey("series") || fields.containsKey("number")) {
          note("vol. ", field.value());
        } else {
          fields.putIfAbsent("volume", field.value());
        }
      }
      case "keywords" -> keywords(field.value());
      case "type" -> fields.putIfAbsent("type", REPORTS.getOrDefault(field.value(), field.value()));
      default -> fields.putIfAbsent(field.name(), field.value());
    }
  }

  /** Theirs, and behind them the kind of source, unless they end with it, as those we wrote do. */
  private void keywords(String stored) {
    String kind = StoredValue.text(fields.getOrDefault("keywords", "")).orElse("");
    StoredValue.text(stored)
        .filter(theirs -> !theirs.isBlank() && !theirs.equals(kind))
        .map(theirs -> theirs.endsWith(", " + kind) ? theirs : theirs + ", " + kind)
        .ifPresent(keywords -> fields.put("keywords", MadeEntry.stored(keywords)));
  }

  private void note(String lead, String stored) {
    String words = StoredValue.text(stored).map(text -> lead + text).orElse("");
    String before = fields.getOrDefault("note", "");
    if (StoredValue.isExpression(before) || words.isEmpty()) {
      return;
    }
    String text = StoredValue.text(before).orElse("");
    String capital = words.substring(0, 1).toUpperCase(Locale.ROOT) + words.substring(1);
    fields.put("note", MadeEntry.stored(text.isEmpty() ? capital : text + ". " + capital));
  }
}
