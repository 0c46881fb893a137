package merese.answer.first;

import java.util.List;

/** Words whose first use is asked for; each a word or several, as one term. */
public record FirstQuestion(List<String> terms) {
  public FirstQuestion {
    terms = List.copyOf(terms);
  }
}
