package merese.shelf;

import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** Labels, as folded words, with the concepts that they stand for, as the index holds them. */
final class PackedLabels {
  private PackedLabels() {}

  static byte[] pack(Collection<List<String>> labels, List<String> concepts) {
    List<String> keys = new ArrayList<>();
    for (List<String> words : labels) {
      keys.add(String.join(" ", words));
    }
    return new Packer().texts(concepts).texts(keys).toBytes();
  }

  /** Adds the concepts to those that each label is known to stand for. */
  static void unpack(byte[] bytes, Map<String, Set<String>> conceptsByLabel) {
    Unpacker from = new Unpacker(bytes);
    List<String> concepts = from.texts();
    for (String key : from.texts()) {
      Set<String> known = conceptsByLabel.get(key);
      if (known == null) {
        known = new LinkedHashSet<>();
        conceptsByLabel.put(key, known);
      }
      known.addAll(concepts);
    }
  }
}
