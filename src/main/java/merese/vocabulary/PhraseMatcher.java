package merese.vocabulary;

import java.util.ArrayList;
import java.util.Collection;
import java.util.Collections;
import java.util.Comparator;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import merese.model.Concept;
import merese.model.Facet;
import merese.model.Homonym;
import merese.vocabulary.PhraseMatch.Completion;
import merese.vocabulary.PhraseMatch.MatchedLabel;
import merese.vocabulary.PhraseMatch.Meaning;
import merese.vocabulary.PhraseMatch.Reason;

/** Finds the concepts that a whole phrase names. */
final class PhraseMatcher {
  private final LabelIndex index;
  private final Collection<Facet> facets;

  PhraseMatcher(LabelIndex index, Collection<Facet> facets) {
    this.index = index;
    this.facets = facets;
  }

  PhraseMatch anywhere(String phrase) {
    List<String> words = Folding.words(phrase);
    List<LabelEntry> hits = equal(words);
    return result(phrase, hits, completions(words, hits));
  }

  PhraseMatch within(String phrase, Facet facet) {
    List<String> words = Folding.words(phrase);
    if (words.isEmpty()) {
      return nothing(phrase);
    }
    List<LabelEntry> hits = new ArrayList<>();
    if (facet.headNoun().isPresent()) {
      hits.addAll(only(equal(plus(words, facet.headNoun().get())), facet));
    }
    hits.addAll(only(nounless(words), facet));
    boolean completed = !hits.isEmpty();
    for (LabelEntry hit : only(equal(words), facet)) {
      // "bell" among bowls is "bell bowl", which the register's "bell" has no say in.
      if (!completed || !hit.isRegister()) {
        hits.add(hit);
      }
    }
    return result(phrase, hits, List.of());
  }

  static PhraseMatch nothing(String phrase) {
    return new PhraseMatch(phrase, List.of(), Optional.empty(), List.of(), List.of());
  }

  private List<LabelEntry> equal(List<String> words) {
    List<LabelEntry> hits = new ArrayList<>(index.whole(words));
    for (LabelIndex.OptionalWords optional : index.optionals) {
      List<String> rest = FacetWords.without(words, optional.words);
      hits.addAll(optional.flexible.getOrDefault(Folding.join(rest), List.of()));
    }
    return hits;
  }

  private List<LabelEntry> nounless(List<String> words) {
    List<LabelEntry> hits = new ArrayList<>();
    for (LabelIndex.OptionalWords optional : index.optionals) {
      List<String> rest = FacetWords.without(words, optional.words);
      hits.addAll(optional.nounless.getOrDefault(Folding.join(rest), List.of()));
    }
    return hits;
  }

  private List<Completion> completions(List<String> words, List<LabelEntry> known) {
    if (words.isEmpty()) {
      return List.of();
    }
    List<LabelEntry> longer = new ArrayList<>(nounless(words));
    for (Facet facet : facets) {
      if (facet.headNoun().isPresent()) {
        longer.addAll(equal(plus(words, facet.headNoun().get())));
      }
    }
    longer.sort(new BestLabelFirst());
    Set<String> seen = new HashSet<>();
    for (LabelEntry entry : known) {
      if (!entry.isRegister()) {
        seen.add(entry.concept.id());
      }
    }
    List<Completion> completions = new ArrayList<>();
    for (LabelEntry entry : longer) {
      if (seen.add(entry.concept.id())) {
        completions.add(
            new Completion(
                entry.isRegister() ? entry.homonym.word() : entry.label.text(), entry.concept));
      }
    }
    return completions;
  }

  private static PhraseMatch result(
      String phrase, List<LabelEntry> hits, List<Completion> completions) {
    Map<String, Found> found = new LinkedHashMap<>();
    Homonym register = null;
    for (LabelEntry hit : hits) {
      // The register's own order first.
      if (hit.isRegister()) {
        register = register == null ? hit.homonym : register;
        found(found, hit.concept).inRegister = true;
      }
    }
    List<LabelEntry> labels = new ArrayList<>(hits);
    labels.sort(new BestLabelFirst());
    for (LabelEntry hit : labels) {
      if (!hit.isRegister()) {
        found(found, hit.concept).add(new MatchedLabel(hit.label, hit.kind));
      }
    }
    List<Meaning> meanings = new ArrayList<>(found.size());
    for (Found one : found.values()) {
      meanings.add(new Meaning(one.concept, one.labels, one.inRegister));
    }
    List<Reason> reasons = new ArrayList<>(2);
    if (register != null) {
      reasons.add(Reason.IN_REGISTER);
    }
    if (meanings.size() > 1) {
      reasons.add(Reason.SEVERAL_CONCEPTS);
    }
    if (meanings.isEmpty() && !completions.isEmpty()) {
      reasons.add(Reason.NOUN_MISSING);
    }
    return new PhraseMatch(phrase, meanings, Optional.ofNullable(register), reasons, completions);
  }

  private static Found found(Map<String, Found> found, Concept concept) {
    Found one = found.get(concept.id());
    if (one == null) {
      one = new Found(concept);
      found.put(concept.id(), one);
    }
    return one;
  }

  private static List<LabelEntry> only(List<LabelEntry> hits, Facet facet) {
    List<LabelEntry> inside = new ArrayList<>(hits.size());
    for (LabelEntry hit : hits) {
      if (hit.concept.facet().equals(facet.id())) {
        inside.add(hit);
      }
    }
    return inside;
  }

  private static List<String> plus(List<String> words, String noun) {
    List<String> longer = new ArrayList<>(words);
    longer.addAll(Folding.words(noun));
    return Collections.unmodifiableList(longer);
  }

  private static final class Found {
    private final Concept concept;
    private final List<MatchedLabel> labels = new ArrayList<>(2);
    private boolean inRegister;

    private Found(Concept concept) {
      this.concept = concept;
    }

    /** The same label can be met twice, as it stands and less its optional words. */
    private void add(MatchedLabel matched) {
      for (MatchedLabel known : labels) {
        if (known.label().equals(matched.label())) {
          return;
        }
      }
      labels.add(matched);
    }
  }

  /** Labels before the register, preferred ones first, then the order of the vocabulary. */
  static final class BestLabelFirst implements Comparator<LabelEntry> {
    @Override
    public int compare(LabelEntry a, LabelEntry b) {
      int rankA = a.isRegister() ? Integer.MAX_VALUE : a.kind.ordinal();
      int rankB = b.isRegister() ? Integer.MAX_VALUE : b.kind.ordinal();
      return rankA != rankB ? Integer.compare(rankA, rankB) : Integer.compare(a.order, b.order);
    }
  }
}
