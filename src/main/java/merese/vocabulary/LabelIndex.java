package merese.vocabulary;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import merese.model.Concept;
import merese.model.Facet;
import merese.model.Homonym;
import merese.vocabulary.PhraseMatch.LabelKind;

/** All labels and register words by their folded form. */
final class LabelIndex {
  /** The labels of the facets that make the same words optional. */
  static final class OptionalWords {
    final List<String> words;

    /** By the essential words, where the optional ones may be missing without more ado. */
    final Map<String, List<LabelEntry>> flexible = new HashMap<>();

    /** By the essential words, where the label has then lost its noun. */
    final Map<String, List<LabelEntry>> nounless = new HashMap<>();

    private OptionalWords(List<String> words) {
      this.words = words;
    }
  }

  final List<LabelEntry> entries = new ArrayList<>();
  final List<OptionalWords> optionals = new ArrayList<>();
  private final Map<String, List<LabelEntry>> whole = new HashMap<>();
  private final Map<String, FacetWords> facets = new HashMap<>();

  LabelIndex(Map<String, Facet> facets, Map<String, Concept> concepts, List<Homonym> register) {
    for (Facet facet : facets.values()) {
      this.facets.put(facet.id(), FacetWords.of(facet));
    }
    Map<String, Integer> orders = new HashMap<>(concepts.size() * 2);
    for (Concept concept : concepts.values()) {
      int order = orders.size();
      orders.put(concept.id(), order);
      add(concept, order, concept.preferred(), LabelKind.PREFERRED);
      for (Concept.Label label : concept.alternatives()) {
        add(concept, order, label, LabelKind.ALTERNATIVE);
      }
      for (Concept.Label label : concept.hidden()) {
        add(concept, order, label, LabelKind.HIDDEN);
      }
    }
    for (Homonym homonym : register) {
      List<String> words = Folding.words(homonym.word());
      for (String id : homonym.concepts()) {
        Concept concept = concepts.get(id);
        if (concept != null && !words.isEmpty()) {
          FacetWords facet = facetOf(concept);
          add(new LabelEntry(concept, orders.get(id), null, null, homonym, words, facet), facet);
        }
      }
    }
  }

  List<LabelEntry> whole(List<String> words) {
    return whole.getOrDefault(Folding.join(words), List.of());
  }

  private void add(Concept concept, int order, Concept.Label label, LabelKind kind) {
    List<String> words = Folding.words(label.text());
    if (words.isEmpty()) {
      return;
    }
    FacetWords facet = facetOf(concept);
    LabelEntry entry = new LabelEntry(concept, order, label, kind, null, words, facet);
    add(entry, facet);
    if (label.scope().isPresent()) {
      // As it is displayed, it can be typed: "bell (body)".
      put(whole, Folding.key(Thesaurus.display(label)), entry);
    }
  }

  private void add(LabelEntry entry, FacetWords facet) {
    entries.add(entry);
    put(whole, Folding.join(entry.words), entry);
    if (!facet.optional.isEmpty()) {
      OptionalWords optional = optionalOf(facet.optional);
      put(
          entry.optionalIsNoun ? optional.nounless : optional.flexible,
          Folding.join(entry.essential),
          entry);
    }
  }

  private FacetWords facetOf(Concept concept) {
    return facets.getOrDefault(concept.facet(), FacetWords.NONE);
  }

  private OptionalWords optionalOf(List<String> words) {
    for (OptionalWords optional : optionals) {
      if (optional.words.equals(words)) {
        return optional;
      }
    }
    OptionalWords optional = new OptionalWords(words);
    optionals.add(optional);
    return optional;
  }

  private static void put(Map<String, List<LabelEntry>> map, String key, LabelEntry entry) {
    List<LabelEntry> list = map.get(key);
    if (list == null) {
      list = new ArrayList<>(2);
      map.put(key, list);
    }
    list.add(entry);
  }
}
