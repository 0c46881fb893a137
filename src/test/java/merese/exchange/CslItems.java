package merese.exchange;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;

/**
 * Two lists of CSL items side by side, for instance ours and what another program makes of the same
 * sources. A number and a text of the same digits are the same; the order of keys does not matter;
 * {@code custom} is left out.
 */
public final class CslItems {
  private CslItems() {}

  /**
   * A variable of an item that two lists do not share.
   *
   * @param variable "" where one list lacks the item
   * @param one as JSON; "" where it is missing
   */
  public record Difference(String id, String variable, String one, String other) {
    @Override
    public String toString() {
      return id + " " + variable + ": " + one + " | " + other;
    }

    private boolean isExplainedBy(String key) {
      return key.equals(id + " " + variable) || key.equals("* " + variable);
    }
  }

  /** Sorted by id, then by variable. */
  public static List<Difference> differences(String one, String other) {
    Map<String, Map<String, String>> ones = items(one);
    Map<String, Map<String, String>> others = items(other);
    List<Difference> all = new ArrayList<>();
    for (String id : both(ones.keySet(), others.keySet())) {
      if (!ones.containsKey(id) || !others.containsKey(id)) {
        all.add(new Difference(id, "", said(ones.get(id)), said(others.get(id))));
        continue;
      }
      Map<String, String> left = ones.get(id);
      Map<String, String> right = others.get(id);
      for (String variable : both(left.keySet(), right.keySet())) {
        String a = left.getOrDefault(variable, "");
        String b = right.getOrDefault(variable, "");
        if (!a.equals(b)) {
          all.add(new Difference(id, variable, a, b));
        }
      }
    }
    return all;
  }

  /**
   * Differences without a reason, and reasons without a difference, a line each.
   *
   * @param reasons by "id variable", or by "* variable" for a reason that holds for every item
   */
  public static List<String> unexplained(
      List<Difference> differences, Map<String, String> reasons) {
    List<String> lines = new ArrayList<>();
    Set<String> used = new TreeSet<>();
    for (Difference difference : differences) {
      List<String> keys = reasons.keySet().stream().filter(difference::isExplainedBy).toList();
      used.addAll(keys);
      if (keys.isEmpty()) {
        lines.add(difference.toString());
      }
    }
    for (String key : new TreeSet<>(reasons.keySet())) {
      if (!used.contains(key)) {
        lines.add(key + ": no such difference any more: " + reasons.get(key));
      }
    }
    return lines;
  }

  private static Set<String> both(Collection<String> one, Collection<String> other) {
    Set<String> both = new TreeSet<>(one);
    both.addAll(other);
    return both;
  }

  private static String said(Map<String, String> item) {
    return item == null ? "" : item.toString();
  }

  private static Map<String, Map<String, String>> items(String json) {
    Map<String, Map<String, String>> all = new TreeMap<>();
    for (JsonNode item : read(json)) {
      Map<String, String> variables = new TreeMap<>();
      item.properties().forEach(e -> variables.put(e.getKey(), plain(e.getValue())));
      variables.remove("custom");
      all.put(item.path("id").asText(), variables);
    }
    return all;
  }

  private static String plain(JsonNode value) {
    if (value.isObject()) {
      Map<String, String> members = new TreeMap<>();
      value.properties().forEach(e -> members.put(e.getKey(), plain(e.getValue())));
      return members.toString();
    }
    if (value.isArray()) {
      List<String> items = new ArrayList<>();
      value.forEach(each -> items.add(plain(each)));
      return items.toString();
    }
    return value.asText();
  }

  private static JsonNode read(String json) {
    try {
      return new ObjectMapper().readTree(json);
    } catch (JsonProcessingException e) {
      throw new AssertionError("not JSON: " + e.getMessage(), e);
    }
  }
}
