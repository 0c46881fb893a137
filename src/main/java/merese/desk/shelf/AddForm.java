package merese.desk.shelf;

import java.time.Clock;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import merese.change.AddRequest;
import merese.change.EntryException;
import merese.change.SourceEntry;
import merese.change.SourceField;
import merese.desk.web.FormException;
import merese.desk.web.Typed;
import merese.model.Copy;
import merese.model.Edition.Lineage;
import merese.model.SourceKind;

/** What somebody has typed of a source, and what a form asks of one of its kind. */
public final class AddForm {
  /** What is added. */
  public enum Adds {
    SOURCE,
    EDITION,
    COPY
  }

  /** A field as the form shows it; several lines where there may be several. */
  public record Field(
      String name, String label, String hint, String example, boolean many, String value) {}

  private final Typed typed;
  private final Clock clock;

  AddForm(Typed typed, Clock clock) {
    this.typed = typed;
    this.clock = clock;
  }

  public Typed typed() {
    return typed;
  }

  public Adds adds() {
    if (typed.has("copy-of")) {
      return Adds.COPY;
    }
    return typed.has("edition-of") ? Adds.EDITION : Adds.SOURCE;
  }

  /** What it is of. */
  Optional<String> of() {
    return text(adds() == Adds.COPY ? "copy-of" : "edition-of");
  }

  /** The kind that was chosen; empty before that. */
  public Optional<SourceKind> kind() {
    for (SourceKind kind : SourceKind.values()) {
      if (kind.code().equals(typed.get("kind"))) {
        return Optional.of(kind);
      }
    }
    return Optional.empty();
  }

  /** What a source of the kind needs, or what sets an edition apart. */
  public List<Field> asked() {
    return askedFields().stream().map(this::field).toList();
  }

  private List<SourceField> askedFields() {
    List<SourceField> fields = new ArrayList<>();
    if (adds() == Adds.EDITION) {
      fields.addAll(SourceField.askedOfEdition());
    } else if (adds() == Adds.SOURCE && kind().isPresent()) {
      fields.add(SourceField.TITLE);
      fields.addAll(SourceField.asked(kind().get()));
    }
    return fields;
  }

  /** What else can be said. */
  public List<Field> seldom() {
    return seldomFields().stream().map(this::field).toList();
  }

  private Set<SourceField> seldomFields() {
    Set<SourceField> fields = EnumSet.allOf(SourceField.class);
    fields.remove(SourceField.KIND);
    askedFields().forEach(fields::remove);
    return adds() == Adds.COPY ? Set.of() : fields;
  }

  public boolean saysMore() {
    return seldomFields().stream().anyMatch(field -> typed.has(FieldWords.name(field)));
  }

  private Field field(SourceField field) {
    String name = FieldWords.name(field);
    return new Field(
        name,
        FieldWords.label(field),
        field.description(),
        FieldWords.example(field),
        field.isMany(),
        typed.get(name));
  }

  public List<Lineage.Form> forms() {
    return List.of(Lineage.Form.values());
  }

  /**
   * What is to be added.
   *
   * @throws EntryException for a field that cannot be taken
   * @throws FormException for what is missing
   */
  AddRequest request() {
    boolean asCopy = adds() == Adds.COPY;
    Optional<Lineage.Form> lineage = lineage();
    OptionalInt original = originalYear();
    if (original.isPresent() && lineage.isEmpty()) {
      throw new FormException(
          "form",
          "The year of what is reprinted needs how this edition stands to the other, such as"
              + " reprint.");
    }
    return new AddRequest(
        of(),
        asCopy ? Optional.empty() : Optional.of(entry()),
        asCopy ? Optional.empty() : text("key"),
        lineage,
        original,
        asCopy || hasCopy() ? Optional.of(copy()) : Optional.empty(),
        typed.has("mine"),
        typed.has("anyway"));
  }

  private SourceEntry entry() {
    SourceEntry entry = new SourceEntry(typed.has("as-printed"), clock);
    if (adds() == Adds.SOURCE) {
      if (kind().isEmpty()) {
        throw new FormException("Say what sort of source it is.");
      }
      entry.put(SourceField.KIND, kind().get().code());
    }
    List<SourceField> fields = new ArrayList<>(askedFields());
    fields.addAll(seldomFields());
    for (SourceField field : fields) {
      for (String value : values(field)) {
        entry.put(field, value);
      }
    }
    if (adds() == Adds.SOURCE && !entry.has(SourceField.TITLE)) {
      throw new FormException(
          FieldWords.name(SourceField.TITLE),
          "A source needs a title; where it has none, say what it is.");
    }
    if (adds() == Adds.EDITION && !entry.has(SourceField.YEAR)) {
      throw new FormException(
          FieldWords.name(SourceField.YEAR),
          "Say which edition it is: its year is needed, n.d. for none.");
    }
    entry.requireWhole();
    return entry;
  }

  private List<String> values(SourceField field) {
    List<String> values = new ArrayList<>();
    for (String each : typed.all(FieldWords.name(field))) {
      List<String> lines = field.isMany() ? each.lines().toList() : List.of(each);
      lines.stream().filter(line -> !line.isBlank()).forEach(values::add);
    }
    return values;
  }

  private Optional<Lineage.Form> lineage() {
    for (Lineage.Form form : Lineage.Form.values()) {
      if (adds() == Adds.EDITION && form.code().equals(typed.get("form"))) {
        return Optional.of(form);
      }
    }
    return Optional.empty();
  }

  private OptionalInt originalYear() {
    Optional<String> year = text("original-year");
    try {
      return year.isEmpty() ? OptionalInt.empty() : OptionalInt.of(Integer.parseInt(year.get()));
    } catch (NumberFormatException e) {
      throw new FormException(
          "original-year", "\"" + year.get() + "\" is no year; write it as 1926.");
    }
  }

  private boolean hasCopy() {
    return typed.has("copy")
        || typed.has("missing")
        || text("shelf-mark").isPresent()
        || text("holder").isPresent()
        || text("lent-to").isPresent()
        || text("remark").isPresent();
  }

  /** Its id is given when it is added. */
  private Copy copy() {
    return new Copy(
        "new",
        text("holder"),
        text("shelf-mark"),
        text("lent-to"),
        typed.has("missing"),
        text("remark"));
  }

  private Optional<String> text(String name) {
    return Optional.of(typed.get(name).strip()).filter(value -> !value.isEmpty());
  }
}
