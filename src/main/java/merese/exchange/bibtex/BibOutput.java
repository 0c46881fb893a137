package merese.exchange.bibtex;

import java.io.IOException;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.Deque;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.function.Function;
import java.util.function.UnaryOperator;
import merese.exchange.Outgoing;
import merese.exchange.bibtex.ReceivedEntry.Merged;
import merese.model.ReceivedRecord;
import merese.model.ReceivedRecord.Field;
import merese.model.Work;

/** The entries of one file, and what they have to do with each other. */
final class BibOutput {
  /** What the records of a chain longer than this say of each other is read as it came. */
  private static final int MOST_GENERATIONS = 20;

  /** What describes no source, by its key. */
  private record Shared(String key, ReceivedRecord record) {}

  /**
   * @param record that it goes out as; empty where it is made from the library alone
   */
  private record Entry(String key, Outgoing source, Optional<ReceivedRecord> record) {}

  private final Flavour flavour;
  private final UnaryOperator<String> labels;
  private final Map<String, ReceivedRecord> library;
  private final Map<String, Entry> entries = new TreeMap<>();
  private final Map<String, Entry> byId = new HashMap<>();
  private final Map<String, Shared> data = new HashMap<>();
  private final References references = new References();
  private final Map<String, ReceivedRecord> parents = new HashMap<>();
  private final Set<String> beingMade = new HashSet<>();

  /**
   * @param library the received records of all sources, by what they called themselves
   * @param sources by their keys
   */
  BibOutput(
      Flavour flavour,
      UnaryOperator<String> labels,
      Map<String, ReceivedRecord> library,
      Map<String, Outgoing> sources) {
    this.flavour = flavour;
    this.labels = labels;
    this.library = library;
    sources.forEach(this::add);
  }

  private void add(String key, Outgoing source) {
    Optional<ReceivedRecord> record =
        source.part().isPresent() ? Optional.empty() : flavour.goesOutAs(source.edition());
    Entry entry = new Entry(key, source, record);
    entries.put(key, entry);
    record.ifPresent(
        received -> {
          byId.putIfAbsent(BibtexKeys.folded(received.id()), entry);
          references.goesOut(received.id(), key);
        });
  }

  /**
   * @param keys for what is kept
   */
  void write(List<ReceivedRecord> kept, BibtexKeys keys, BibFile out) throws IOException {
    List<ReceivedRecord> ours = kept.stream().filter(flavour::takes).distinct().toList();
    Set<String> formats = new HashSet<>();
    entries.values().forEach(entry -> entry.record().ifPresent(r -> formats.add(r.format())));
    for (ReceivedRecord record : ours) {
      if (record.type().equals("preamble") && formats.contains(record.format())) {
        for (Field field : record.fields()) {
          out.preamble(field.value());
        }
      }
    }
    shareData(ours, keys);
    Map<String, ReceivedRecord> shared = new TreeMap<>();
    data.values().forEach(d -> shared.put(d.key(), d.record()));
    for (ReceivedRecord record : ours) {
      if (record.type().equals("set") && isWhole(record)) {
        shared.put(keys.free(keyFor(record)), record);
      }
    }
    for (Map.Entry<String, ReceivedRecord> entry : shared.entrySet()) {
      out.entry(entry.getKey(), references.renamed(entry.getValue()));
    }
    for (Entry entry : inOrder()) {
      boolean asItCame = entry.record().isPresent();
      ReceivedRecord written = asItCame ? annotated(entry) : made(entry.source());
      out.entry(entry.key(), references.renamed(written));
    }
  }

  /** Where several files called different data the same, the first has the name. */
  private void shareData(List<ReceivedRecord> kept, BibtexKeys keys) {
    Map<String, ReceivedRecord> all = new HashMap<>();
    for (ReceivedRecord record : kept) {
      if (record.type().equals("xdata")) {
        all.putIfAbsent(record.id(), record);
      }
    }
    Set<String> used = new TreeSet<>();
    Set<String> ids = all.keySet();
    entries.values().forEach(e -> e.record().ifPresent(r -> used.addAll(References.used(r, ids))));
    Deque<String> toFollow = new ArrayDeque<>(used);
    while (!toFollow.isEmpty()) {
      for (String id : References.used(all.get(toFollow.remove()), ids)) {
        if (used.add(id)) {
          toFollow.add(id);
        }
      }
    }
    for (String id : used) {
      String key = keys.free(keyFor(all.get(id)));
      data.put(id, new Shared(key, all.get(id)));
      references.goesOut(id, key);
    }
  }

  private static String keyFor(ReceivedRecord record) {
    return BibtexKeys.isUsable(record.id()) ? record.id() : record.type();
  }

  /** Whether some of a set's members go out, and none that the library has stays behind. */
  private boolean isWhole(ReceivedRecord set) {
    List<String> members = References.members(set);
    return members.stream().anyMatch(references::goesOut)
        && members.stream()
            .allMatch(m -> references.goesOut(m) || !library.containsKey(BibtexKeys.folded(m)));
  }

  /** By key; BibTeX itself wants an entry before those that it takes fields over from. */
  private List<Entry> inOrder() {
    List<Entry> inOrder = new ArrayList<>(entries.values());
    if (flavour == Flavour.BIBTEX) {
      Map<String, Integer> heights = new HashMap<>();
      entries.values().forEach(entry -> raise(entry, heights));
      inOrder.sort(Comparator.comparing(entry -> heights.getOrDefault(entry.key(), 0)));
    }
    return inOrder;
  }

  /** Puts everything above an entry higher than it is. */
  private void raise(Entry from, Map<String, Integer> heights) {
    Set<String> below = new HashSet<>();
    Entry child = from;
    while (below.add(child.key()) && below.size() <= MOST_GENERATIONS) {
      Entry parent = parent(child).map(id -> byId.get(BibtexKeys.folded(id))).orElse(null);
      if (parent == null) {
        return;
      }
      int height = heights.getOrDefault(child.key(), 0) + 1;
      heights.merge(parent.key(), height, Math::max);
      child = parent;
    }
  }

  /** What an entry takes fields over from as it is written, if that is anything. */
  private Optional<String> parent(Entry entry) {
    boolean refers = entry.record().flatMap(References::parent).isPresent();
    return refers ? References.parent(received(entry)) : Optional.empty();
  }

  /** An entry from what the library says, and what a record of biblatex has beside it. */
  private ReceivedRecord made(Outgoing source) {
    MadeEntry made =
        flavour == Flavour.BIBTEX
            ? EntryMaker.make(source, labels)
            : BiblatexMaker.make(source, labels);
    ReceivedRecord entry = made.asRecord(flavour.format());
    return source.part().isPresent()
        ? entry
        : flavour
            .named(source.edition())
            .map(record -> withHomeless(entry, WholeRecord.of(record, this::known)))
            .orElse(entry);
  }

  private ReceivedRecord withHomeless(ReceivedRecord entry, ReceivedRecord whole) {
    Work reading = BibtexMeaning.of(whole, this::known);
    return Homeless.added(entry, whole, FieldAspects.of(whole, reading));
  }

  private ReceivedRecord annotated(Entry entry) {
    String notes = AnnoteField.of(entry.source().ownNotes(), labels);
    return ReceivedEntry.annotated(received(entry), flavour, notes);
  }

  /** An entry as it came, but for what has changed. */
  private ReceivedRecord received(Entry entry) {
    ReceivedRecord record = entry.record().orElseThrow();
    beingMade.add(entry.key());
    Optional<String> parent = References.parent(record);
    boolean left =
        parent.filter(id -> !references.goesOut(id) && known(id).isPresent()).isPresent();
    ReceivedRecord whole = left ? WholeRecord.of(record, this::known) : record;
    Function<ReceivedRecord, Work> readAs = r -> BibtexMeaning.of(r, this::known);
    Merged now = ReceivedEntry.of(entry.source(), whole, flavour, readAs);
    boolean inherits = !left && !Inheritance.parents(record.fields()).isEmpty();
    if (inherits && now.unsaid() > 0) {
      ReceivedRecord alone = WholeRecord.of(record, this::known);
      Merged freed = ReceivedEntry.of(entry.source(), alone, flavour, readAs);
      now = freed.unsaid() < now.unsaid() ? freed : now;
    }
    beingMade.remove(entry.key());
    return now.record();
  }

  /** An entry that another takes fields over from, as it goes out. */
  private Optional<ReceivedRecord> known(String id) {
    String folded = BibtexKeys.folded(id);
    Entry entry = byId.get(folded);
    if (entry == null) {
      Shared shared = data.get(id);
      return shared == null
          ? Optional.ofNullable(library.get(folded))
          : Optional.of(shared.record());
    }
    if (beingMade.contains(entry.key()) || beingMade.size() > MOST_GENERATIONS) {
      return entry.record();
    }
    ReceivedRecord made = parents.get(folded);
    if (made == null) {
      made = received(entry);
      parents.put(folded, made);
    }
    return Optional.of(made);
  }
}
