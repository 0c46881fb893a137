package merese.search;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** What a question can limit its words to, by the name that is typed before a colon. */
public enum FindField {
  AUTHOR(Part.AUTHOR),
  TITLE(Part.TITLE),
  PUBLISHER(Part.IMPRINT),
  TERM(Part.TERM),
  QUOTE(Part.QUOTATION),
  CLAIM(Part.CLAIM),
  READING(Part.READING),
  DEFINITION(Part.DEFINITION),
  PLACE(Part.PLACE),
  YEAR(null),
  KIND(null),
  SOURCE(null),
  CONCEPT(null),
  PICTURE(null),
  IS(null);

  private final Part part;

  FindField(Part part) {
    this.part = part;
  }

  /** What the user types. */
  public String code() {
    return name().toLowerCase(Locale.ROOT);
  }

  /** Whether its values are words of a text, and not one of a closed set. */
  boolean isText() {
    return part != null;
  }

  /** The index's field of a text. */
  String indexField() {
    return part.field();
  }

  /** Whether it is said of a source, and so of all the notes that are from it. */
  boolean ofSources() {
    return this == AUTHOR || this == TITLE || this == PUBLISHER;
  }

  static Optional<FindField> named(String name) {
    String code = name.toLowerCase(Locale.ROOT);
    for (FindField field : values()) {
      if (field.code().equals(code)) {
        return Optional.of(field);
      }
    }
    return Optional.empty();
  }

  static List<String> codes() {
    List<String> codes = new ArrayList<>();
    for (FindField field : values()) {
      codes.add(field.code());
    }
    return codes;
  }
}
