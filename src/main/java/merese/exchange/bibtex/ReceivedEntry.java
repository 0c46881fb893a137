package merese.exchange.bibtex;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumSet;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;
import merese.exchange.Aspect;
import merese.exchange.Outgoing;
import merese.exchange.bibtex.NoteField.Sentence;
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

  /** What is changed may make another field mean something else, which is then written anew. */
  private static final int MOST_ROUNDS = 3;

  private final Outgoing source;
  private final ReceivedRecord record;
  private final Set<Aspect> changed;
  private final Work reading;
  private final FieldAspects aspects;
  private final String type;
  private final AspectFields.Made made;
  private final List<Field> fields = new ArrayList<>();
  private final Set<String> names = new HashSet<>();

  private ReceivedEntry(
      Outgoing source, ReceivedRecord record, Flavour flavour, Work reading, Set<Aspect> changed) {
    this.source = source;
    this.record = record;
    this.reading = reading;
    this.changed = changed;
    this.aspects = FieldAspects.of(record, reading);
    this.type = type(flavour);
    this.made = AspectFields.of(source, record, type, aspects, changed);
  }

  /**
   * A record as it goes out.
   *
   * @param unsaid how many parts of the description its fields do not say as the library does
   */
  record Merged(ReceivedRecord record, int unsaid) {}

  /**
   * @param readAs what a record is read as, with one edition
   */
  static Merged of(
      Outgoing source,
      ReceivedRecord record,
      Flavour flavour,
      Function<ReceivedRecord, Work> readAs) {
    Work now = source.work().withOnly(source.edition());
    Work reading = readAs.apply(record);
    Set<Aspect> changed = EnumSet.noneOf(Aspect.class);
    Set<Aspect> unsaid = Aspect.differing(now, reading);
    ReceivedRecord merged = record;
    for (int round = 0; round < MOST_ROUNDS && changed.addAll(unsaid); round++) {
      ReceivedEntry entry = new ReceivedEntry(source, record, flavour, reading, changed);
      entry.merge();
      merged = new ReceivedRecord(record.format(), entry.type, record.id(), entry.fields);
      unsaid = Aspect.differing(now, readAs.apply(merged));
      unsaid.remove(Aspect.NOTED_AS); // what has no field is said there
    }
    return new Merged(merged, unsaid.size());
  }

  /** That of the record, unless the library would choose another now than it would have then. */
  private String type(Flavour flavour) {
    if (!changed.contains(Aspect.KIND) && !changed.contains(Aspect.CONTAINER)) {
      return record.type();
    }
    Outgoing before = new Outgoing(reading, reading.editions().get(0), source.part(), List.of());
    String now = made(source, flavour);
    return now.equals(made(before, flavour)) ? record.type() : now;
  }

  private static String made(Outgoing of, Flavour flavour) {
    return flavour == Flavour.BIBTEX
        ? EntryType.of(of, Makers.of(of)).code()
        : BiblatexType.of(of).code();
  }

  private void merge() {
    Set<String> kept = new HashSet<>();
    record.fields().stream().filter(f -> stays(f.name())).forEach(f -> kept.add(f.name()));
    for (Field field : record.fields()) {
      if (stays(field.name())) {
        add(field.name(), field.value());
      } else if (!isSpecial(field.name())) {
        Set<Aspect> of = EnumSet.noneOf(Aspect.class);
        of.addAll(aspects.of(field.name()));
        of.retainAll(changed);
        of.forEach(aspect -> addMade(made.fields().get(aspect), kept));
      } else if (field.name().equals("note")) {
        note();
      } else {
        keywords(field.value());
      }
    }
    made.fields().values().forEach(fieldsOfOne -> addMade(fieldsOfOne, kept));
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
    Set<Aspect> of = aspects.of(name);
    return of.stream().noneMatch(changed::contains) && !(of.isEmpty() && isNowOurs(name));
  }

  /**
   * Whether what had no home in an entry of the type that it was would be misread in the new one.
   */
  private boolean isNowOurs(String name) {
    return !type.equals(record.type())
        && made.fields().values().stream().anyMatch(fields -> fields.containsKey(name));
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
  private void note() {
    String ours = NoteField.latex(made.sentences());
    if (!ours.isEmpty() && !names.contains("note")) {
      add("note", MadeEntry.stored(ours));
    }
  }

  /** The sentences go behind a note that stays, each unless it says so already. */
  private void addToNote() {
    if (!names.contains("note")) {
      note();
    } else if (stays("note")) {
      int at = 0;
      while (!fields.get(at).name().equals("note")) {
        at++;
      }
      String before = fields.get(at).value();
      List<Sentence> more =
          made.sentences().stream().filter(s -> !before.contains(LatexText.of(s.words()))).toList();
      fields.set(at, new Field("note", joined(before, ". ", NoteField.latex(more))));
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

  /**
   * With our notes, in a field of their own or behind an annotation, term by term.
   *
   * @param ours as {@link AnnoteField} has them
   */
  static ReceivedRecord annotated(ReceivedRecord record, Flavour flavour, String ours) {
    if (ours.isEmpty()) {
      return record;
    }
    List<Field> fields = new ArrayList<>(record.fields());
    int at = 0;
    while (at < fields.size() && !ANNOTATIONS.contains(fields.get(at).name())) {
      at++;
    }
    if (at == fields.size()) {
      String name = flavour == Flavour.BIBTEX ? "annote" : "annotation";
      fields.add(new Field(name, MadeEntry.stored(ours)));
    } else {
      Field theirs = fields.get(at);
      String text = StoredValue.text(theirs.value()).orElse(theirs.value());
      Set<String> there = new HashSet<>(List.of(text.split(TERMS_APART)));
      String more =
          Arrays.stream(ours.split(TERMS_APART))
              .filter(term -> !there.contains(term))
              .collect(Collectors.joining(TERMS_APART));
      fields.set(at, new Field(theirs.name(), joined(theirs.value(), TERMS_APART, more)));
    }
    return new ReceivedRecord(record.format(), record.type(), record.id(), fields);
  }
}
