package merese.exchange.bibtex;

import java.text.Normalizer;
import java.util.Collection;
import java.util.HashMap;
import java.util.HashSet;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;

/**
 * BibTeX keys for a library's sources: letters and digits of ASCII and {@code . _ + : / -}, which
 * BibTeX, its successors and a LaTeX {@code \cite} all take, after a letter or digit. A key that
 * has only these stays as it is. Two that would differ in capitals alone get a number, since BibTeX
 * takes them for one.
 */
final class BibtexKeys {
  private static final String ALLOWED = "._+:/-";
  private static final int MOST = 200;

  private final Map<String, String> keys = new HashMap<>();

  /**
   * @param ids of all sources of the library, so that an excerpt has the keys of the whole
   */
  BibtexKeys(Collection<String> ids) {
    Set<String> taken = new HashSet<>();
    TreeSet<String> changed = new TreeSet<>();
    for (String id : new TreeSet<>(ids)) {
      if (!valid(id).equals(id) || !taken.add(folded(id))) {
        changed.add(id);
      } else {
        keys.put(id, id);
      }
    }
    for (String id : changed) {
      String wanted = valid(id);
      String key = wanted;
      for (int number = 2; !taken.add(folded(key)); number++) {
        key = wanted + "-" + number;
      }
      keys.put(id, key);
    }
  }

  String of(String id) {
    return keys.get(id);
  }

  private static String folded(String key) {
    return key.toLowerCase(Locale.ROOT);
  }

  private static String valid(String id) {
    StringBuilder key = new StringBuilder();
    String plain = Normalizer.normalize(id.replace('#', ':'), Normalizer.Form.NFD);
    for (int i = 0; i < plain.length(); i++) {
      char c = plain.charAt(i);
      boolean letterOrDigit = c < 128 && Character.isLetterOrDigit(c);
      if (letterOrDigit || !key.isEmpty() && ALLOWED.indexOf(c) >= 0) {
        key.append(c);
      } else if (Character.getType(c) != Character.NON_SPACING_MARK
          && !key.isEmpty()
          && key.charAt(key.length() - 1) != '-') {
        key.append('-');
      }
    }
    int end = Math.min(key.length(), MOST);
    while (end > 0 && key.charAt(end - 1) == '-') {
      end--;
    }
    return end == 0 ? "source" : key.substring(0, end);
  }
}
