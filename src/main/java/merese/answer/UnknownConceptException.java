package merese.answer;

import java.util.ArrayList;
import java.util.List;
import merese.vocabulary.NearTerm;
import merese.vocabulary.Thesaurus;

/** That an id was asked for which no concept has. */
public final class UnknownConceptException extends RuntimeException {
  private static final long serialVersionUID = 1L;

  private UnknownConceptException(String message) {
    super(message);
  }

  static UnknownConceptException of(Thesaurus thesaurus, String id) {
    List<String> near = new ArrayList<>();
    for (NearTerm term : thesaurus.nearTerms(id.replace('-', ' '), 3)) {
      near.add(term.concept().id());
    }
    String hint = near.isEmpty() ? "" : "; near it: " + String.join(", ", near);
    return new UnknownConceptException("no concept has the id \"" + id + "\"" + hint);
  }
}
