package merese.change.vocabulary;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import merese.model.Concept;
import merese.model.Concept.Label;
import merese.model.Concept.LookAlike;
import merese.model.Concept.Match;
import merese.model.Concept.Status;
import merese.vocabulary.Folding;

/** A concept while it is changed. */
final class Draft {
  String id;
  String facet;
  Label preferred;
  final List<Label> alternatives = new ArrayList<>();
  final List<Label> hidden = new ArrayList<>();
  String definition;
  List<String> broader = new ArrayList<>();
  final List<LookAlike> lookAlikes = new ArrayList<>();
  Optional<String> lookAlikeRemark = Optional.empty();
  Status status = Status.COMMON;
  final List<Match> matches = new ArrayList<>();

  Draft(String id, String facet, Label preferred, String definition) {
    this.id = id;
    this.facet = facet;
    this.preferred = preferred;
    this.definition = definition;
  }

  static Draft of(Concept concept) {
    Draft draft =
        new Draft(concept.id(), concept.facet(), concept.preferred(), concept.definition());
    draft.alternatives.addAll(concept.alternatives());
    draft.hidden.addAll(concept.hidden());
    draft.broader.addAll(concept.broader());
    draft.lookAlikes.addAll(concept.lookAlikes());
    draft.lookAlikeRemark = concept.lookAlikeRemark();
    draft.status = concept.status();
    draft.matches.addAll(concept.matches());
    return draft;
  }

  List<Label> labels() {
    List<Label> all = new ArrayList<>();
    all.add(preferred);
    all.addAll(alternatives);
    all.addAll(hidden);
    return all;
  }

  /** The label of just that text, with whatever scope. */
  Optional<Label> label(String text) {
    return labels().stream().filter(label -> label.text().equals(text)).findFirst();
  }

  /** Whether the label, by its text, was an alternative or a hidden one and no longer is. */
  boolean takeAway(String text) {
    boolean alternative = alternatives.removeIf(label -> label.text().equals(text));
    return hidden.removeIf(label -> label.text().equals(text)) || alternative;
  }

  /** Says of the labels of a word that it is also used for something else. */
  void flagElsewhere(String word) {
    String key = Folding.key(word);
    preferred = flagged(preferred, key);
    alternatives.replaceAll(label -> flagged(label, key));
    hidden.replaceAll(label -> flagged(label, key));
  }

  private static Label flagged(Label label, String key) {
    return Folding.key(label.text()).equals(key)
        ? new Label(label.text(), label.scope(), true)
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
