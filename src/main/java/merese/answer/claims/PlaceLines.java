package merese.answer.claims;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import merese.answer.claims.ClaimsAnswer.PlaceLine;
import merese.answer.claims.ClaimsAnswer.Sense;
import merese.model.Claim;
import merese.vocabulary.Folding;

/**
 * What place claims say. "Irish", "mainly Irish", "Irish or in Irish style" and "found in Ireland"
 * are four claims. The note's own place counts before the words; a hedge stands beside it.
 */
final class PlaceLines {
  private static final Set<String> ONLY =
      folded("only", "wholly", "exclusively", "solely", "entirely", "invariably", "always");
  private static final Set<String> MAINLY =
      folded(
          "mainly",
          "mostly",
          "chiefly",
          "largely",
          "usually",
          "generally",
          "commonly",
          "often",
          "oftenest",
          "almost",
          "predominantly",
          "principally");
  private static final Set<String> HEDGES =
      folded(
          "perhaps",
          "probably",
          "possibly",
          "presumably",
          "maybe",
          "may",
          "might",
          "said",
          "say",
          "says",
          "believe",
          "think",
          "supposedly",
          "reputedly",
          "attributed");
  private static final Set<String> FOUND =
      folded("found", "excavated", "bought", "history", "provenance");
  private static final Set<String> NOT =
      folded("no", "not", "never", "neither", "nor", "cannot", "without");

  private final Optional<String> asked;

  private static Set<String> folded(String... words) {
    Set<String> folded = new LinkedHashSet<>();
    for (String word : words) {
      folded.add(Folding.word(word));
    }
    return folded;
  }

  PlaceLines(Optional<String> asked) {
    this.asked = asked;
  }

  PlaceLine of(Claim claim) {
    List<String> words = Folding.words(claim.words());
    Set<String> named =
        PlaceNames.in(claim.words(), asked.isPresent() ? List.of(asked.get()) : List.of());
    boolean denied = denies(words);
    Set<String> places = new LinkedHashSet<>();
    if (claim.value().isPresent()) {
      places.add(PlaceNames.of(claim.value().get()));
    }
    if (!denied) {
      places.addAll(named);
    }
    named.removeAll(places);
    return new PlaceLine(
        PlaceNames.withoutWider(places),
        denied ? List.copyOf(named) : List.of(),
        denied && places.isEmpty() ? Sense.DENIED : sense(words, claim.hedge()));
  }

  private static Sense sense(List<String> words, Optional<String> hedge) {
    List<String> hedges = hedge.isPresent() ? Folding.words(hedge.get()) : List.of();
    if (holds(HEDGES, words) || holds(HEDGES, hedges)) {
      return Sense.HEDGED;
    } else if (words.contains("style") || words.contains("manner") || words.contains("type")) {
      return Sense.STYLE;
    } else if (holds(FOUND, words)) {
      return Sense.FOUND;
    } else if (holds(MAINLY, words) || holds(MAINLY, hedges)) {
      return Sense.MAINLY;
    }
    boolean notOnly = isAfterNot(words, "only");
    return !notOnly && (holds(ONLY, words) || holds(ONLY, hedges)) ? Sense.ONLY : Sense.PLAIN;
  }

  /** "Not only Irish" denies nothing. */
  private static boolean denies(List<String> words) {
    for (int i = 0; i < words.size(); i++) {
      boolean only = i + 1 < words.size() && ONLY.contains(words.get(i + 1));
      if (NOT.contains(words.get(i)) && !only) {
        return true;
      }
    }
    return false;
  }

  private static boolean isAfterNot(List<String> words, String word) {
    int at = words.indexOf(word);
    return at > 0 && NOT.contains(words.get(at - 1));
  }

  private static boolean holds(Set<String> any, List<String> words) {
    for (String word : words) {
      if (any.contains(word)) {
        return true;
      }
    }
    return false;
  }
}
