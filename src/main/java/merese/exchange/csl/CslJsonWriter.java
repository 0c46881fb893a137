package merese.exchange.csl;

import java.io.IOException;
import java.io.Writer;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.TreeMap;
import merese.exchange.Outgoing;
import merese.exchange.RecordWriter;
import merese.exchange.csl.Json.Member;
import merese.exchange.csl.Json.Members;
import merese.model.ReceivedRecord;

/**
 * Writes CSL-JSON: one array, an item a source, sorted by id.
 *
 * <p>An item that came as CSL-JSON goes out as it came, variable by variable in its order, but for
 * what has been changed in the library since. Of two sources that came under one id, the second is
 * called by its key; one that came without gets its key.
 */
public final class CslJsonWriter implements RecordWriter {
  @Override
  public void write(Collection<Outgoing> sources, List<ReceivedRecord> kept, Writer out)
      throws IOException {
    List<Members> items = items(sources);
    StringBuilder text = new StringBuilder("[");
    String lead = "\n  ";
    for (Members item : items) {
      text.append(lead);
      JsonText.indented(item, 1, text);
      lead = ",\n  ";
      out.append(text);
      text.setLength(0);
    }
    out.append(text).append(items.isEmpty() ? "]\n" : "\n]\n");
  }

  private static List<Members> items(Collection<Outgoing> sources) {
    TreeMap<String, Members> sorted = new TreeMap<>();
    List<Outgoing> ordered = new ArrayList<>(sources);
    ordered.sort(Comparator.comparing(Outgoing::id));
    Set<String> taken = new HashSet<>();
    for (Outgoing source : ordered) {
      Members item = ItemUpdate.of(source);
      String id = item.text("id").orElse("");
      if (id.isEmpty() || !taken.add(id)) {
        id = free(source.id(), taken);
        item = withId(item, id);
      }
      sorted.put(id, item);
    }
    return List.copyOf(sorted.values());
  }

  private static String free(String key, Set<String> taken) {
    String id = key;
    for (int n = 2; !taken.add(id); n++) {
      id = key + "-" + n;
    }
    return id;
  }

  private static Members withId(Members item, String id) {
    List<Member> members = new ArrayList<>();
    members.add(new Member("id", Json.of(id)));
    item.members().stream().filter(m -> !m.name().equals("id")).forEach(members::add);
    return new Members(members);
  }
}
