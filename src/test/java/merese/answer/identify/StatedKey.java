package merese.answer.identify;

import com.google.gson.JsonElement;
import com.google.gson.JsonObject;
import com.google.gson.JsonParser;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** The starter's key as it stands in the file, read and understood without any code of ours. */
final class StatedKey {
  static final Path FILE = Path.of("library", "vocabulary", "characters.json");

  /** What each kind states, by character: values as written; "never" alone for none. */
  final Map<String, Map<String, List<String>>> kinds = new LinkedHashMap<>();

  /** The values of each character; none for one that is counted. */
  final Map<String, List<String>> characters = new LinkedHashMap<>();

  static StatedKey read() throws IOException {
    StatedKey key = new StatedKey();
    JsonObject json = JsonParser.parseString(Files.readString(FILE)).getAsJsonObject();
    for (JsonElement each : json.getAsJsonArray("characters")) {
      List<String> values = new ArrayList<>();
      if (each.getAsJsonObject().has("values")) {
        each.getAsJsonObject()
            .getAsJsonArray("values")
            .forEach(v -> values.add(v.getAsJsonObject().get("id").getAsString()));
      }
      key.characters.put(each.getAsJsonObject().get("id").getAsString(), values);
    }
    for (JsonElement each : json.getAsJsonArray("kinds")) {
      Map<String, List<String>> stated = new LinkedHashMap<>();
      for (JsonElement line : each.getAsJsonObject().getAsJsonArray("allows")) {
        String[] parts = line.getAsString().split(": ", 2);
        stated.put(parts[0], List.of(parts[1].split(", ")));
      }
      key.kinds.put(each.getAsJsonObject().get("concept").getAsString(), stated);
    }
    return key;
  }

  /** Whether a kind may show a value; empty where it is silent. */
  Optional<Boolean> shows(String kind, String character, String value) {
    List<String> stated = kinds.get(kind).get(character);
    if (stated == null) {
      return Optional.empty();
    }
    return Optional.of(stated.stream().anyMatch(s -> covers(s, value)));
  }

  private static boolean covers(String stated, String value) {
    return stated.equals(value)
        || stated.endsWith("+")
            && Integer.parseInt(value) >= Integer.parseInt(stated.replace("+", ""));
  }

  /** Whether nothing that can be found fits both; no number above 20 is stated. */
  boolean differ(String kind, String other, String character) {
    List<String> a = kinds.get(kind).get(character);
    List<String> b = kinds.get(other).get(character);
    if (a == null || b == null || a.equals(b)) {
      return false;
    }
    List<String> all = new ArrayList<>(characters.get(character));
    if (all.isEmpty()) {
      for (int count = 0; count <= 20; count++) {
        all.add(Integer.toString(count));
      }
    }
    return all.stream()
        .noneMatch(
            v ->
                shows(kind, character, v).orElseThrow()
                    && shows(other, character, v).orElseThrow());
  }
}
