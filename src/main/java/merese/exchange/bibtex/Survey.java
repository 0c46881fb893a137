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
import merese.model.ReceivedRecord;

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
    String format = FormatSense.BIBTEX;
    BibtexItems items = new BibtexItems(bytes);
    for (Optional<Item> item = items.next(); item.isPresent(); item = items.next()) {
      if (item.get() instanceof Entry entry) {
        if (FormatSense.isForBiblatexOnly(entry.type(), entry.fields())) {
          format = FormatSense.BIBLATEX;
        }
        for (String parent : Inheritance.parents(entry.fields())) {
          wanted.add(folded(parent));
        }
      }
    }
    return new Survey(format, wanted.isEmpty() ? Map.of() : parents(bytes, format, wanted));
  }

  private static Map<String, ReceivedRecord> parents(Spool bytes, String format, Set<String> wanted)
      throws IOException {
    Map<String, ReceivedRecord> parents = new HashMap<>();
    BibtexItems items = new BibtexItems(bytes);
    for (Optional<Item> item = items.next(); item.isPresent(); item = items.next()) {
      if (item.get() instanceof Entry entry && wanted.contains(folded(entry.key()))) {
        ReceivedRecord record = record(format, entry);
        parents.putIfAbsent(entry.key(), record);
        parents.putIfAbsent(folded(entry.key()), record);
      }
    }
    return parents;
  }

  static ReceivedRecord record(String format, Entry entry) {
    return new ReceivedRecord(format, entry.type(), entry.key(), List.copyOf(entry.fields()));
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
