package merese.answer.claims;

import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import merese.answer.CoverageQuestion.Years;
import merese.model.Claim;

/**
 * What is claimed of one feature or several.
 *
 * @param terms each one feature: a word or words, or a concept's id
 * @param facet the facet that supplies a noun left out
 * @param kinds the kinds of claim that are wanted; none for all
 * @param years sorts the dates by whether they are of these years
 * @param place sorts the places by whether they are this one
 */
public record ClaimsQuestion(
    List<String> terms,
    Optional<String> facet,
    Set<Claim.Kind> kinds,
    Optional<Years> years,
    Optional<String> place) {
  public ClaimsQuestion {
    terms = List.copyOf(terms);
    kinds = Set.copyOf(kinds);
    if (terms.isEmpty()) {
      throw new IllegalArgumentException("a question needs a term or a concept");
    }
  }

  /** All that is claimed of one feature. */
  public static ClaimsQuestion of(String term) {
    return new ClaimsQuestion(
        List.of(term), Optional.empty(), Set.of(), Optional.empty(), Optional.empty());
  }

  public ClaimsQuestion inYears(int from, int to) {
    return new ClaimsQuestion(
        terms,
        facet,
        kinds,
        Optional.of(new Years(OptionalInt.of(from), OptionalInt.of(to))),
        place);
  }

  public ClaimsQuestion at(String where) {
    return new ClaimsQuestion(terms, facet, kinds, years, Optional.of(where));
  }

  /** A year or a place asked for leaves only the dates or places, unless kinds are named. */
  boolean wants(Claim.Kind kind) {
    if (!kinds.isEmpty()) {
      return kinds.contains(kind);
    }
    boolean all = years.isEmpty() && place.isEmpty();
    return all
        || kind == Claim.Kind.DATE && years.isPresent()
        || kind == Claim.Kind.PLACE && place.isPresent();
  }
}
