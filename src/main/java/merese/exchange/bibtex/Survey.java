package merese.exchange.bibtex;

import java.io.IOException;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import merese.exchange.bibtex.BibtexItems.Entry;
import merese.exchange.bibtex.BibtexItems.Item;
import merese.exchange.bibtex.EntryParser.Assigned;
import merese.model.ReceivedRecord;
import merese.model.ReceivedRecord.Field;

/**
 * What has to be known of a whole file before its first entry can be handed on: its format, and the
 * entries that others inherit from, which may stand before or after these. No other entry is held.
 */
final class Survey {
  private final String format;
  private final Map<String, ReceivedRecord> parents;

  private Survey(String format, Map<String, ReceivedRecord> parents) {
    this.format = format;
    this.parents = parents;
  }

  static Survey of(Spool bytes) throws IOException {
    Set<String> wanted = new HashSet<>();
    Set<String> seen = new HashSet<>();
    Map<String, Entry> found = new HashMap<>();
    String format = FormatSense.BIBTEX;
    BibtexItems items = new BibtexItems(bytes);
    for (Optional<Item> item = items.next(); item.isPresent(); item = items.next()) {
      if (item.get() instanceof Entry entry) {
        if (!FormatSense.isBiblatex(format) && FormatSense.isForBiblatexOnly(entry)) {
          format = FormatSense.BIBLATEX;
        }
        for (Assigned assigned : entry.values()) {
          if (Inheritance.isFromOthers(assigned.name())) {
            Field field = new Field(assigned.name(), StoredValue.of(assigned.value()));
            Inheritance.parents(List.of(field)).forEach(parent -> wanted.add(folded(parent)));
          }
        }
        if (seen.add(folded(entry.key()))) {
          find(entry, wanted, found);
        }
      }
    }
    boolean complete =
        wanted.stream().allMatch(key -> found.containsKey(key) || !seen.contains(key));
    return new Survey(format, parents(format, complete ? found : findAll(bytes, wanted)));
  }

  /** Again, for what stands before the entries that inherit from it; the first of a key holds. */
  private static Map<String, Entry> findAll(Spool bytes, Set<String> wanted) throws IOException {
    Map<String, Entry> found = new HashMap<>();
    BibtexItems items = new BibtexItems(bytes);
    for (Optional<Item> item = items.next(); item.isPresent(); item = items.next()) {
      if (item.get() instanceof Entry entry) {
        find(entry, wanted, found);
      }
    }
    return found;
  }

  private static void find(Entry entry, Set<String> wanted, Map<String, Entry> found) {
    String folded = folded(entry.key());
    if (wanted.contains(folded)) {
      found.putIfAbsent(entry.key(), entry);
      found.putIfAbsent(folded, entry);
    }
  }

  private static Map<String, ReceivedRecord> parents(String format, Map<String, Entry> found) {
    Map<String, ReceivedRecord> parents = new HashMap<>();
    found.forEach((key, entry) -> parents.put(key, record(format, entry)));
    return parents;
  }

  static ReceivedRecord record(String format, Entry entry) {
    return new ReceivedRecord(format, entry.type(), entry.key(), entry.fields());
  }

  String format() {
    return format;
  }

  /** The entry of that name; BibTeX does not mind its capitals. */
  Optional<ReceivedRecord> byKey(String key) {
    ReceivedRecord exact = parents.get(key);
    return Optional.ofNullable(exact != null ? exact : parents.get(folded(key)));
  }

  static String folded(String key) {
    return key.toLowerCase(Locale.ROOT);
  }
}
