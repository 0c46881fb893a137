package merese.answer;

import java.util.ArrayList;
import java.util.Collection;
import java.util.Collections;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import merese.search.NoteCriterion;
import merese.vocabulary.Thesaurus;

/** Words and phrases that are looked for in printed terms, in every form that R7 lets them have. */
public final class Words {
  private final Thesaurus thesaurus;

  /** The folded words of each form, with a space between. */
  private final Set<String> forms = new LinkedHashSet<>();

  private int mostWords;

  /** Many notes print the same term. */
  private final Map<String, Boolean> occurring = new HashMap<>();

  public Words(Thesaurus thesaurus, Collection<String> phrases) {
    this.thesaurus = thesaurus;
    for (String phrase : phrases) {
      for (List<String> form : thesaurus.forms(phrase)) {
        forms.add(String.join(" ", form));
        mostWords = Math.max(mostWords, form.size());
      }
    }
  }

  /**
   * Adds words that are folded already.
   *
   * @param more each in all forms that it may have, with a space between words
   */
  void addForms(Collection<String> more) {
    forms.addAll(more);
    for (String form : more) {
      mostWords = Math.max(mostWords, words(form));
    }
  }

  private static int words(String form) {
    int words = 1;
    for (int space = form.indexOf(' '); space >= 0; space = form.indexOf(' ', space + 1)) {
      words++;
    }
    return words;
  }

  /** All their forms, each as folded words with a space between. */
  Collection<String> forms() {
    return Collections.unmodifiableSet(forms);
  }

  /** Whether one of them stands in the printed term, as consecutive whole words. */
  public boolean occurIn(String printed) {
    Boolean known = occurring.get(printed);
    if (known == null) {
      known = occurIn(thesaurus.forms(printed));
      occurring.put(printed, known);
    }
    return known;
  }

  private boolean occurIn(Iterable<List<String>> printed) {
    for (List<String> form : printed) {
      for (int from = 0; from < form.size(); from++) {
        int longest = Math.min(form.size(), from + mostWords);
        for (int to = from + 1; to <= longest; to++) {
          if (forms.contains(String.join(" ", form.subList(from, to)))) {
            return true;
          }
        }
      }
    }
    return false;
  }

  public List<NoteCriterion> criteria() {
    List<NoteCriterion> criteria = new ArrayList<>();
    for (String form : forms) {
      criteria.add(new NoteCriterion.Prints(form));
    }
    return criteria;
  }

  /** What finds the notes that print just this term. */
  public static List<NoteCriterion> printedAs(Thesaurus thesaurus, String term) {
    List<NoteCriterion> criteria = new ArrayList<>();
    for (List<String> form : thesaurus.forms(term)) {
      criteria.add(new NoteCriterion.PrintsExactly(form));
    }
    return criteria;
  }
}
