package merese.answer.identify;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * What was seen and felt.
 *
 * @param characters each as typed: "join=felt", "slant=upright,slanting", "seam=not-found"
 * @param terms what to compare alone, each a word, words or a concept's id; none for all kinds
 * @param facet what supplies a noun that the terms leave out
 * @param object the reference of one of the user's own pieces, whose observations are taken
 * @param part the only part of that piece to take
 */
public record IdentifyQuestion(
    List<String> characters,
    List<String> terms,
    Optional<String> facet,
    Optional<String> object,
    Optional<String> part) {
  public IdentifyQuestion {
    characters = List.copyOf(characters);
    terms = List.copyOf(terms);
  }

  /** Words as typed: those with "=" are characters, the others terms. */
  public static IdentifyQuestion of(String... words) {
    return of(List.of(words), Optional.empty(), Optional.empty(), Optional.empty());
  }

  public static IdentifyQuestion of(
      List<String> words, Optional<String> facet, Optional<String> object, Optional<String> part) {
    List<String> characters = new ArrayList<>();
    List<String> terms = new ArrayList<>();
    for (String word : words) {
      (word.indexOf('=') < 0 ? terms : characters).add(word);
    }
    return new IdentifyQuestion(characters, terms, facet, object, part);
  }
}
