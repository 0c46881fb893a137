package merese.change.concepts;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import merese.model.Concept;

/** A concept while it is being put together. */
final class ConceptDraft {
  final String id;
  final String facet;
  Concept.Label preferred;
  final List<Concept.Label> alternatives = new ArrayList<>();
  final List<Concept.Label> hidden = new ArrayList<>();
  String definition;
  List<String> broader = new ArrayList<>();
  final List<Concept.LookAlike> lookAlikes = new ArrayList<>();
  Optional<String> lookAlikeRemark = Optional.empty();
  Concept.Status status = Concept.Status.COMMON;
  final List<Concept.Match> matches = new ArrayList<>();

  ConceptDraft(String id, String facet, Concept.Label preferred, String definition) {
    this.id = id;
    this.facet = facet;
    this.preferred = preferred;
    this.definition = definition;
  }

  static ConceptDraft of(Concept concept) {
    ConceptDraft draft =
        new ConceptDraft(concept.id(), concept.facet(), concept.preferred(), concept.definition());
    draft.alternatives.addAll(concept.alternatives());
    draft.hidden.addAll(concept.hidden());
    draft.broader.addAll(concept.broader());
    draft.lookAlikes.addAll(concept.lookAlikes());
    draft.lookAlikeRemark = concept.lookAlikeRemark();
    draft.status = concept.status();
    draft.matches.addAll(concept.matches());
    return draft;
  }

  List<Concept.Label> labels() {
    List<Concept.Label> all = new ArrayList<>();
    all.add(preferred);
    all.addAll(alternatives);
    all.addAll(hidden);
    return all;
  }

  /** Says of each label of a word that it is also used for something else. */
  void flagElsewhere(String key) {
    preferred = flagged(preferred, key);
    alternatives.replaceAll(label -> flagged(label, key));
    hidden.replaceAll(label -> flagged(label, key));
  }

  private static Concept.Label flagged(Concept.Label label, String key) {
    return Vocabulary.key(label).equals(key)
        ? new Concept.Label(label.text(), label.scope(), true)
        : label;
  }

  Concept make() {
    return new Concept(
        id,
        facet,
        preferred,
        alternatives,
        hidden,
        definition,
        broader,
        lookAlikes,
        lookAlikeRemark,
        status,
        matches);
  }
}
