package merese.vocabulary;

import java.util.List;
import merese.model.Concept;
import merese.model.Homonym;
import merese.vocabulary.PhraseMatch.LabelKind;

/** One label of one concept, or one word of the register under one of its concepts, folded. */
final class LabelEntry {
  final Concept concept;
  final int order;

  /** Null for a word of the register. */
  final Concept.Label label;

  /** Null for a word of the register. */
  final LabelKind kind;

  /** Null for a label. */
  final Homonym homonym;

  final List<String> words;

  /** The words less those that the facet makes optional; the words where nothing would be left. */
  final List<String> essential;

  /**
   * True where an optional word is this label's own noun, as in "step-cut neck" among rings: it may
   * be missing only where something else says what is spoken of.
   */
  final boolean optionalIsNoun;

  /** True where the essential words are no more than the facet's noun, as in "neck ring". */
  final boolean bareNoun;

  LabelEntry(
      Concept concept,
      int order,
      Concept.Label label,
      LabelKind kind,
      Homonym homonym,
      List<String> words,
      FacetWords facet) {
    this.concept = concept;
    this.order = order;
    this.label = label;
    this.kind = kind;
    this.homonym = homonym;
    this.words = words;
    List<String> rest =
        facet.optional.isEmpty() ? words : FacetWords.without(words, facet.optional);
    if (rest.isEmpty() || rest.size() == words.size()) {
      essential = words;
      optionalIsNoun = false;
      bareNoun = false;
    } else {
      essential = rest;
      optionalIsNoun =
          facet.optional.contains(words.get(words.size() - 1)) && !rest.contains(facet.noun);
      bareNoun = rest.size() == 1 && rest.get(0).equals(facet.noun);
    }
  }

  boolean isRegister() {
    return homonym != null;
  }
}
