package merese.exchange.marc;

import static merese.exchange.Aspect.ARCHIVE;
import static merese.exchange.Aspect.CONTAINER;
import static merese.exchange.Aspect.DATE;
import static merese.exchange.Aspect.KIND;
import static merese.exchange.Aspect.LANGUAGE;
import static merese.exchange.Aspect.LINEAGE;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import merese.exchange.Aspect;
import merese.exchange.Outgoing;
import merese.exchange.marc.MarcField.Subfield;
import merese.model.ReceivedRecord;
import merese.model.SourceKind;
import merese.model.Work;

/**
 * The fields of a source: those of its received record as they came, save that what the library
 * says otherwise since is made anew; without such a record, all are made.
 */
final class Rewriting {
  private final Work now;
  private final List<MarcField> made;

  private Rewriting(Outgoing source) {
    this.now = source.work().withOnly(source.edition());
    this.made = FieldMaker.make(source);
  }

  static MarcRecord of(Outgoing source) {
    Rewriting rewriting = new Rewriting(source);
    Optional<ReceivedRecord> received =
        source.edition().received().stream()
            .filter(r -> r.format().equals(MarcRecord.FORMAT))
            .findFirst();
    if (source.part().isEmpty() && received.isPresent()) {
      MarcRecord record = MarcRecord.of(received.get());
      Optional<MarcMeaning> meaning = MarcMeaning.of(received.get(), record);
      if (meaning.isPresent()) {
        return rewriting.changed(record, meaning.get().work());
      }
    }
    return source.part().isPresent()
        ? new MarcRecord(rewriting.made)
        : rewriting.ofKind(new MarcRecord(rewriting.made));
  }

  /** With the kind in words where type and notes don't say it. */
  private MarcRecord ofKind(MarcRecord record) {
    if (kind(record) == now.kind()) {
      return record;
    }
    List<MarcField> fields = new ArrayList<>(record.fields());
    insert(fields, FieldMaker.kind(now.kind()));
    return new MarcRecord(fields);
  }

  private static SourceKind kind(MarcRecord record) {
    return KindMeaning.of(record, new ArrayList<>());
  }

  private MarcRecord changed(MarcRecord old, Work reading) {
    Set<Aspect> changed = Aspect.differing(now, reading);
    if (changed.isEmpty()) {
      return old;
    }
    closeOver(changed, old, reading.kind());
    List<MarcField> fields = new ArrayList<>();
    List<MarcField> dropped = new ArrayList<>();
    List<MarcField> wanted = wanted(changed);
    for (MarcField field : old.fields()) {
      if (field.control().isPresent()) {
        fields.add(patched(field, changed));
      } else if (isFed(field, old, reading.kind(), changed)) {
        dropped.add(field);
        takeInstead(field, wanted, fields);
      } else {
        fields.add(field);
      }
    }
    if (old.control("008").isEmpty() && (changed.contains(LANGUAGE) || changed.contains(DATE))) {
      insert(fields, madeControl("008"));
    }
    boolean main = fields.stream().anyMatch(f -> f.is("100", "110", "111"));
    for (MarcField field : wanted) {
      insert(fields, main ? added(field) : field);
    }
    keepHomeless(fields, dropped);
    return ofKind(new MarcRecord(fields));
  }

  /** A field that says several things is made anew for all of them. */
  private void closeOver(Set<Aspect> changed, MarcRecord old, SourceKind kind) {
    if (changed.contains(DATE) && DATE.isSilent(now)) {
      changed.addAll(EnumSet.of(CONTAINER, ARCHIVE)); // a host and a thesis note may have a year
    }
    int before = 0;
    MarcRecord anew = new MarcRecord(made);
    while (before != changed.size()) {
      before = changed.size();
      for (MarcField field : old.fields()) {
        spread(Feeds.of(field, old, kind), changed);
      }
      for (MarcField field : made) {
        spread(Feeds.of(field, anew, now.kind()), changed);
      }
    }
  }

  private static void spread(Set<Aspect> fed, Set<Aspect> changed) {
    if (fed.stream().anyMatch(changed::contains)) {
      changed.addAll(fed);
    }
  }

  private static boolean isFed(
      MarcField field, MarcRecord record, SourceKind kind, Set<Aspect> changed) {
    return Feeds.of(field, record, kind).stream().anyMatch(changed::contains);
  }

  private List<MarcField> wanted(Set<Aspect> changed) {
    MarcRecord anew = new MarcRecord(made);
    List<MarcField> wanted = new ArrayList<>();
    for (MarcField field : made) {
      if (isFed(field, anew, now.kind(), changed)) {
        wanted.add(field);
      }
    }
    return wanted;
  }

  /** The made fields that say the same, where the first old one stood. */
  private static void takeInstead(MarcField old, List<MarcField> wanted, List<MarcField> to) {
    List<MarcField> those = wanted.stream().filter(f -> f.place().equals(old.place())).toList();
    to.addAll(those);
    wanted.removeAll(those);
  }

  /** Before the first field with a higher tag. */
  private static void insert(List<MarcField> fields, MarcField field) {
    int at = fields.size();
    for (int i = fields.size() - 1; i >= 0 && isAfter(fields.get(i), field); i--) {
      at = i;
    }
    fields.add(at, field);
  }

  private static boolean isAfter(MarcField one, MarcField other) {
    return !one.isLeader() && one.place().compareTo(other.place()) > 0;
  }

  /** As an added entry, since there is a main entry that is not understood. */
  private static MarcField added(MarcField field) {
    return field.is("100", "110")
        ? MarcField.data("7" + field.tag().substring(1), field.one() + " ", field.subfields())
        : field;
  }

  private MarcField madeControl(String tag) {
    return made.stream().filter(f -> f.tag().equals(tag)).findFirst().orElseThrow();
  }

  private MarcField patched(MarcField field, Set<Aspect> changed) {
    String text = field.control().orElseThrow();
    if (field.isLeader() && changed.contains(KIND) && text.length() >= 8) {
      return MarcField.control(field.tag(), patch(text, madeControl(field.tag()), 6, 8));
    }
    if (!field.is("008")
        || !(changed.contains(DATE) || changed.contains(LANGUAGE) || changed.contains(LINEAGE))) {
      return field;
    }
    MarcField anew = madeControl("008");
    if (text.length() < FixedField.LENGTH - 2) {
      return anew;
    }
    String patched = text;
    if (changed.contains(DATE) || changed.contains(LINEAGE)) {
      patched = patch(patched, anew, 6, 15);
    }
    if (changed.contains(LANGUAGE)) {
      patched = patch(patched, anew, 35, 38);
    }
    return MarcField.control("008", patched);
  }

  private static String patch(String text, MarcField made, int from, int to) {
    return text.substring(0, from)
        + made.control().orElseThrow().substring(from, to)
        + text.substring(to);
  }

  /** What a title, extent or host field says besides is said by the new one too. */
  private static void keepHomeless(List<MarcField> fields, List<MarcField> dropped) {
    for (MarcField old : dropped) {
      String homeless =
          switch (old.tag()) {
            case "245" -> "hc68";
            case "300" -> "bce368";
            case "773" -> "bdhikmnoqrsuwyz368";
            default -> "";
          };
      List<Subfield> more =
          old.subfields().stream().filter(s -> homeless.indexOf(s.code()) >= 0).toList();
      for (int i = 0; i < fields.size() && !more.isEmpty(); i++) {
        if (fields.get(i).is(old.tag()) && fields.get(i).control().isEmpty()) {
          fields.set(i, joined(fields.get(i), more));
          more = List.of();
        }
      }
    }
  }

  private static MarcField joined(MarcField field, List<Subfield> more) {
    boolean responsibility = field.is("245") && more.stream().anyMatch(s -> s.code() == 'c');
    if (!responsibility) {
      return field.with(more);
    }
    List<Subfield> subfields = new ArrayList<>(field.subfields());
    Subfield last = subfields.remove(subfields.size() - 1);
    subfields.add(new Subfield(last.code(), last.text() + " /"));
    return MarcField.data("245", "" + field.one() + field.two(), subfields).with(more);
  }
}
