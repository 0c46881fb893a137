package merese.exchange.bibtex;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
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

  /** The types that both know and that print the same fields. */
  private static final Map<String, String> SAME =
      Map.of("inproceedings", "incollection", "proceedings", "book");

  private Homeless() {}

  /**
   * @param made from what the library says
   * @param received with what it takes over from others
   * @param aspects of its fields
   */
  static ReceivedRecord added(ReceivedRecord made, ReceivedRecord received, FieldAspects aspects) {
    List<Field> fields = new ArrayList<>(made.fields());
    Set<String> names = new HashSet<>();
    fields.forEach(field -> names.add(field.name()));
    for (Field field : received.fields()) {
      if (aspects.isHomeless(field)
          && !FOR_BIBLATEX.contains(field.name())
          && !names.contains(field.name())) {
        fields.add(field);
      }
    }
    boolean same = made.type().equals(SAME.get(received.type()));
    String type = same ? received.type() : made.type();
    return new ReceivedRecord(made.format(), type, "", fields);
  }
}
