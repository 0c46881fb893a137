package merese.answer.literature;

import java.util.List;
import java.util.Optional;

/**
 * What literature is wanted for.
 *
 * @param asked each a reference of one of the user's own pieces, or a term
 * @param facet the facet that supplies a noun left out of a term
 */
public record LiteratureQuestion(List<String> asked, Optional<String> facet) {
  public LiteratureQuestion {
    asked = List.copyOf(asked);
    if (asked.isEmpty()) {
      throw new IllegalArgumentException("a question needs a piece or a term");
    }
  }

  public static LiteratureQuestion of(String asked) {
    return new LiteratureQuestion(List.of(asked), Optional.empty());
  }
}
