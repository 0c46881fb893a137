package merese.answer.gaps;

import java.util.List;

/**
 * What to look for gaps of.
 *
 * @param terms concepts' ids, words or facets; none for the whole vocabulary
 * @param owned only sources that the user has a copy of
 */
public record GapsQuestion(List<String> terms, boolean owned) {
  public GapsQuestion {
    terms = List.copyOf(terms);
  }
}
