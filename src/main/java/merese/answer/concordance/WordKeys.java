package merese.answer.concordance;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import merese.vocabulary.Thesaurus;

/** What makes two printed terms one word (R7): "Bladed neck rings" and "bladed ring". */
final class WordKeys {
  private final Thesaurus thesaurus;
  private final Map<String, String> keys = new HashMap<>();

  WordKeys(Thesaurus thesaurus) {
    this.thesaurus = thesaurus;
  }

  /** The shortest of the term's forms; the term itself where it has no letter. */
  String of(String printed) {
    String known = keys.get(printed);
    if (known == null) {
      known = printed;
      int fewest = Integer.MAX_VALUE;
      for (List<String> form : thesaurus.forms(printed)) {
        if (form.size() < fewest) {
          fewest = form.size();
          known = String.join(" ", form);
        }
      }
      keys.put(printed, known);
    }
    return known;
  }
}
