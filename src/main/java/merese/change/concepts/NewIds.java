package merese.change.concepts;

import java.text.Normalizer;
import java.util.HashSet;
import java.util.Locale;
import java.util.Set;

/** Ids for concepts and facets that are new: words with hyphens between, each id once. */
final class NewIds {
  private static final int LONGEST = 60;
  private final Set<String> taken;

  NewIds(Set<String> taken) {
    this.taken = new HashSet<>(taken);
  }

  /**
   * An id for a concept: its own, where its address is the library's; else what its address ends
   * in, where that has a letter in it; else its label.
   */
  String concept(Understood concept) {
    return free(wanted(concept));
  }

  static String wanted(Understood concept) {
    if (concept.ownId().isPresent()) {
      return concept.ownId().get();
    }
    String local = concept.source().uri();
    local = local.substring(Math.max(local.lastIndexOf('#'), local.lastIndexOf('/')) + 1);
    boolean named = !local.startsWith("_:") && local.chars().anyMatch(c -> c >= 'a' && c <= 'z');
    boolean plain = named && !local.contains("%") && slug(local).length() == local.length();
    return plain ? slug(local) : slug(concept.preferred().text());
  }

  private String free(String wanted) {
    String id = wanted.isEmpty() ? "concept" : wanted;
    String free = id;
    for (int i = 2; !taken.add(free); i++) {
      free = id + "-" + i;
    }
    return free;
  }

  /** A name in small letters and figures, with hyphens between its words. */
  static String slug(String text) {
    String folded = Normalizer.normalize(text, Normalizer.Form.NFD).toLowerCase(Locale.ROOT);
    StringBuilder slug = new StringBuilder();
    folded
        .codePoints()
        .forEach(
            c -> {
              if (Character.isLetterOrDigit(c)) {
                slug.appendCodePoint(c);
              } else if (Character.getType(c) != Character.NON_SPACING_MARK
                  && c != '\''
                  && c != '’'
                  && !slug.isEmpty()
                  && slug.charAt(slug.length() - 1) != '-') {
                slug.append('-');
              }
            });
    int end = Math.min(slug.length(), LONGEST);
    while (end > 0
        && (slug.charAt(end - 1) == '-' || Character.isHighSurrogate(slug.charAt(end - 1)))) {
      end--;
    }
    return slug.substring(0, end);
  }
}
