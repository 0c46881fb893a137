package merese.answer;

import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import merese.search.NoteCriterion;
import merese.vocabulary.Thesaurus;

/** Words and phrases that are looked for in printed terms, in every form that R7 lets them have. */
public final class Words {
  private final Thesaurus thesaurus;
  private final Map<String, List<String>> byKey = new LinkedHashMap<>();
  private int mostWords;

  /** Many notes print the same term. */
  private final Map<String, Boolean> occurring = new HashMap<>();

  public Words(Thesaurus thesaurus, Collection<String> phrases) {
    this.thesaurus = thesaurus;
    for (String phrase : phrases) {
      for (List<String> form : thesaurus.forms(phrase)) {
        byKey.putIfAbsent(String.join(" ", form), form);
        mostWords = Math.max(mostWords, form.size());
      }
    }
  }

  /**
   * Adds words that are folded already.
   *
   * @param forms each in all forms that it may have
   */
  void addForms(Collection<List<String>> forms) {
    for (List<String> form : forms) {
      byKey.putIfAbsent(String.join(" ", form), form);
      mostWords = Math.max(mostWords, form.size());
    }
  }

  /** All their forms, as folded words. */
  Collection<List<String>> forms() {
    return byKey.values();
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

  private boolean occurIn(Iterable<List<String>> forms) {
    for (List<String> form : forms) {
      for (int from = 0; from < form.size(); from++) {
        int longest = Math.min(form.size(), from + mostWords);
        for (int to = from + 1; to <= longest; to++) {
          if (byKey.containsKey(String.join(" ", form.subList(from, to)))) {
            return true;
          }
        }
      }
    }
    return false;
  }

  public List<NoteCriterion> criteria() {
    List<NoteCriterion> criteria = new ArrayList<>();
    for (List<String> words : byKey.values()) {
      criteria.add(new NoteCriterion.Prints(words));
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
