package merese.vocabulary;

import java.util.ArrayList;
import java.util.List;
import merese.model.Facet;

/** The words that a facet's labels may lack, folded once. */
final class FacetWords {
  static final FacetWords NONE = new FacetWords(List.of(), "");

  final List<String> optional;

  /** The folded noun; empty where the facet has none. */
  final String noun;

  private FacetWords(List<String> optional, String noun) {
    this.optional = optional;
    this.noun = noun;
  }

  static FacetWords of(Facet facet) {
    List<String> optional = new ArrayList<>();
    for (String word : facet.optionalWords()) {
      optional.addAll(Folding.words(word));
    }
    return new FacetWords(optional, Folding.key(facet.headNoun().orElse("")));
  }

  /** The words less the optional ones. */
  static List<String> without(List<String> words, List<String> optional) {
    List<String> rest = new ArrayList<>(words.size());
    for (String word : words) {
      if (!optional.contains(word)) {
        rest.add(word);
      }
    }
    return rest;
  }
}
