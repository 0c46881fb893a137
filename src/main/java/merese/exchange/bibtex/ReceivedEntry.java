package merese.exchange.bibtex;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumSet;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.UnaryOperator;
import merese.exchange.Aspect;
import merese.exchange.Outgoing;
import merese.model.ReceivedRecord;
import merese.model.ReceivedRecord.Field;
import merese.model.Work;

/**
 * A received record with what has been changed since. Each field that is read as something changed
 * gives way to what the library says now, and goes where that is nothing; all others stay as they
 * came, in their order.
 */
final class ReceivedEntry {
  private static final Set<String> ANNOTATIONS = Set.of("annote", "annotation");
  private static final String TERMS_APART = " / ";

  private final Outgoing source;
  private final ReceivedRecord record;
  private final Flavour flavour;
  private final Set<Aspect> changed;
  private final Work reading;
  private final FieldAspects aspects;
  private final List<Field> fields = new ArrayList<>();
  private final Set<String> names = new HashSet<>();

  private ReceivedEntry(
      Outgoing source, ReceivedRecord record, Flavour flavour, Work reading, Set<Aspect> changed) {
    this.source = source;
    this.record = record;
    this.flavour = flavour;
    this.reading = reading;
    this.aspects = FieldAspects.of(record, reading);
    this.changed = changed;
  }

  /**
   * @param reading what the record is read as, with one edition
   */
  static ReceivedRecord of(
      Outgoing source,
      ReceivedRecord record,
      Flavour flavour,
      Work reading,
      UnaryOperator<String> labels) {
    Work now = source.work().withOnly(source.edition());
    Set<Aspect> changed = Aspect.differing(now, reading);
    ReceivedEntry entry = new ReceivedEntry(source, record, flavour, reading, changed);
    if (changed.isEmpty()) {
      entry.fields.addAll(record.fields());
    } else {
      entry.merge();
    }
    entry.annotate(AnnoteField.of(source.ownNotes(), labels));
    return new ReceivedRecord(record.format(), entry.type(), record.id(), entry.fields);
  }

  private String type() {
    if (!changed.contains(Aspect.KIND)) {
      return record.type();
    }
    String now = made(source);
    Outgoing before = new Outgoing(reading, reading.editions().get(0), source.part(), List.of());
    return now.equals(made(before)) ? record.type() : now;
  }

  private String made(Outgoing of) {
    return flavour == Flavour.BIBTEX
        ? EntryType.of(of, Makers.of(of)).code()
        : BiblatexType.of(of).code();
  }

  private void merge() {
    Map<Aspect, Map<String, String>> made = new LinkedHashMap<>();
    for (Aspect aspect : changed) {
      made.put(aspect, AspectFields.of(source, record, aspects, aspect));
    }
    Set<String> kept = new HashSet<>();
    record.fields().stream().filter(f -> stays(f.name())).forEach(f -> kept.add(f.name()));
    for (Field field : record.fields()) {
      if (stays(field.name())) {
        add(field.name(), field.value());
      } else if (!isSpecial(field.name())) {
        Set<Aspect> of = EnumSet.noneOf(Aspect.class);
        of.addAll(aspects.of(field.name()));
        of.retainAll(changed);
        of.forEach(aspect -> addMade(made.getOrDefault(aspect, Map.of()), kept));
      } else if (field.name().equals("note")) {
        note("");
      } else {
        keywords(field.value());
      }
    }
    made.values().forEach(fieldsOfOne -> addMade(fieldsOfOne, kept));
    if (!names.contains("keywords") && changed.contains(Aspect.KIND)) {
      keywords("");
    }
    addToNote();
  }

  private static boolean isSpecial(String name) {
    return name.equals("note") || name.equals("keywords");
  }

  private boolean stays(String name) {
    if (name.equals("keywords")) {
      return !changed.contains(Aspect.KIND);
    }
    return aspects.of(name).stream().noneMatch(changed::contains);
  }

  private void add(String name, String stored) {
    fields.add(new Field(name, stored));
    names.add(name);
  }

  private void addMade(Map<String, String> made, Set<String> kept) {
    made.forEach(
        (name, latex) -> {
          if (!names.contains(name) && !kept.contains(name)) {
            add(name, MadeEntry.stored(latex));
          }
        });
  }

  /** What stood there goes; all sentences of what has changed come. */
  private void note(String before) {
    String ours = NoteField.latex(AspectFields.sentences(source, changed));
    if (!ours.isEmpty() && !names.contains("note")) {
      add("note", MadeEntry.stored(before + ours));
    }
  }

  /** The sentences go behind a note that stays, each unless it says so already. */
  private void addToNote() {
    if (!names.contains("note")) {
      note("");
      return;
    }
    if (!stays("note")) {
      return;
    }
    for (int i = 0; i < fields.size(); i++) {
      if (fields.get(i).name().equals("note")) {
        String more =
            NoteField.latex(
                AspectFields.sentences(source, changed).stream()
                    .filter(s -> !record.field("note").orElse("").contains(LatexText.of(s.words())))
                    .toList());
        fields.set(i, new Field("note", joined(fields.get(i).value(), ". ", more)));
        return;
      }
    }
  }

  /** A stored value with LaTeX behind it. */
  private static String joined(String stored, String joint, String latex) {
    if (latex.isEmpty()) {
      return stored;
    }
    if (StoredValue.isExpression(stored)) {
      return stored + " # {" + joint + latex + "}";
    }
    String text = StoredValue.text(stored).orElse(stored);
    String stripped =
        joint.startsWith(".") && text.endsWith(".") ? text.substring(0, text.length() - 1) : text;
    return MadeEntry.stored(text.isBlank() ? latex : stripped + joint + latex);
  }

  /** The word for the kind that it was gives way to that for the kind that it is. */
  private void keywords(String before) {
    Set<String> words = new LinkedHashSet<>();
    Arrays.stream(StoredValue.text(before).orElse("").split(","))
        .map(String::strip)
        .forEach(words::add);
    words.remove("");
    words.remove(reading.kind().words());
    words.add(source.work().kind().words());
    if (source.work().mine()) {
      words.add("own work");
    }
    if (!names.contains("keywords")) {
      add("keywords", MadeEntry.stored(String.join(", ", words)));
    }
  }

  /** Our notes come as a field of their own, or behind an annotation, term by term. */
  private void annotate(String ours) {
    if (ours.isEmpty()) {
      return;
    }
    for (int i = 0; i < fields.size(); i++) {
      Field field = fields.get(i);
      if (ANNOTATIONS.contains(field.name())) {
        String text = StoredValue.text(field.value()).orElse(field.value());
        Set<String> theirs = new HashSet<>(List.of(text.split(TERMS_APART)));
        List<String> more =
            Arrays.stream(ours.split(TERMS_APART)).filter(term -> !theirs.contains(term)).toList();
        String latex = String.join(TERMS_APART, more);
        fields.set(i, new Field(field.name(), joined(field.value(), TERMS_APART, latex)));
        return;
      }
    }
    add(flavour == Flavour.BIBTEX ? "annote" : "annotation", MadeEntry.stored(ours));
  }
}
