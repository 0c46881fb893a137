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
 * has only these stays as it is, and so does one that another file had. Two that would differ in
 * capitals alone get a number, since BibTeX takes them for one.
 */
final class BibtexKeys {
  private static final String ALLOWED = "._+:/-";
  private static final int MOST = 200;

  private final Map<String, String> keys = new HashMap<>();
  private final Set<String> taken = new HashSet<>();

  /**
   * @param ids of all sources of the library, so that an excerpt has the keys of the whole
   * @param received the keys that sources had in the files they came from, by their ids
   */
  BibtexKeys(Collection<String> ids, Map<String, String> received) {
    TreeSet<String> renamed = new TreeSet<>();
    TreeSet<String> changed = new TreeSet<>();
    for (String id : new TreeSet<>(ids)) {
      String had = received.getOrDefault(id, "");
      boolean kept = isUsable(had);
      if (kept && !had.equals(id)) {
        renamed.add(id);
      } else if (!kept && !valid(id).equals(id) || !take(id)) {
        changed.add(id);
      } else {
        keys.put(id, id);
      }
    }
    for (String id : renamed) {
      String had = received.get(id);
      if (take(had)) {
        keys.put(id, had);
      } else {
        changed.add(id);
      }
    }
    changed.forEach(id -> keys.put(id, free(valid(id))));
  }

  /** A key that no source has, as near as can be to what is wanted; taken from then on. */
  String free(String wanted) {
    String key = wanted;
    for (int number = 2; !take(key); number++) {
      key = wanted + "-" + number;
    }
    return key;
  }

  String of(String id) {
    return keys.get(id);
  }

  private boolean take(String key) {
    return taken.add(folded(key));
  }

  /** Keys that BibTeX takes for one are the same when folded. */
  static String folded(String key) {
    return key.toLowerCase(Locale.ROOT);
  }

  /** Whether BibTeX could have read it as a key. */
  static boolean isUsable(String key) {
    return !key.isEmpty()
        && key.codePoints()
            .noneMatch(
                c ->
                    c == ','
                        || c == '='
                        || c == '{'
                        || c == '}'
                        || c == '\\'
                        || c == '%'
                        || Character.isWhitespace(c)
                        || Character.isSpaceChar(c)
                        || Character.getType(c) == Character.CONTROL
                        || Character.getType(c) == Character.FORMAT
                        || Character.getType(c) == Character.SURROGATE);
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
