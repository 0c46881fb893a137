package merese.answer;

import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import merese.search.NoteCriterion;
import merese.vocabulary.Thesaurus;

/** Words and phrases that are looked for in printed terms, in every form that R7 lets them have. */
public final class Words {
  private final Thesaurus thesaurus;
  private final Map<String, List<String>> byKey = new LinkedHashMap<>();

  public Words(Thesaurus thesaurus, Collection<String> phrases) {
    this.thesaurus = thesaurus;
    for (String phrase : phrases) {
      for (List<String> form : thesaurus.forms(phrase)) {
        byKey.putIfAbsent(String.join(" ", form), form);
      }
    }
  }

  /** Whether one of them stands in the printed term, as consecutive whole words. */
  public boolean occurIn(String printed) {
    for (List<String> form : thesaurus.forms(printed)) {
      for (List<String> words : byKey.values()) {
        if (Thesaurus.occurs(words, form)) {
          return true;
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
