package merese.change.vocabulary;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import merese.change.ChangeRefusedException;
import merese.change.Effect;
import merese.change.Effect.Sort;
import merese.model.Concept;
import merese.model.Concept.Label;
import merese.model.Concept.LookAlike;
import merese.model.Facet;

/** A new concept. */
final class Adding {
  private final WholeVocabulary vocabulary;
  private final Labels labels;
  private final List<Effect> effects;

  Adding(WholeVocabulary vocabulary, Labels labels, List<Effect> effects) {
    this.vocabulary = vocabulary;
    this.labels = labels;
    this.effects = effects;
  }

  String add(ConceptRequest.Add request) {
    requireFree(vocabulary, request.id());
    String facet = facet(request);
    Label preferred = new Label(request.label(), request.scope(), false);
    labels.requirePreferable(preferred, request.id());
    Draft draft =
        new Draft(
            request.id(), facet, labels.shared(preferred, request.id()), request.definition());
    draft.status = request.status();
    for (String broader : new LinkedHashSet<>(request.broader())) {
      vocabulary.concept(broader);
      draft.broader.add(broader);
    }
    effects.add(new Effect(Sort.ADDED, "a concept in the facet " + facet + below(draft)));
    request
        .alternatives()
        .forEach(l -> labels.add(draft, draft.alternatives, l, "alternative label"));
    request.hidden().forEach(l -> labels.add(draft, draft.hidden, l, "hidden label"));
    for (LookAlike lookAlike : request.lookAlikes()) {
      vocabulary.concept(lookAlike.concept());
      draft.lookAlikes.add(lookAlike);
    }
    vocabulary.add(draft.make());
    for (LookAlike lookAlike : request.lookAlikes()) {
      effects.add(new Effect(Sort.ADDED, "look-alike: " + words(lookAlike)));
    }
    return draft.id;
  }

  static String words(LookAlike lookAlike) {
    return lookAlike.concept() + lookAlike.test().map(test -> " (" + test + ")").orElse("");
  }

  private static String below(Draft draft) {
    return draft.broader.isEmpty()
        ? ", below nothing"
        : ", below " + String.join(" and ", draft.broader);
  }

  static void requireFree(WholeVocabulary vocabulary, String id) {
    if (!Ids.isUsable(id)) {
      throw new ChangeRefusedException(
          "“"
              + id
              + "” cannot be an id; write small letters, digits and hyphens, as in ring-bladed");
    }
    Optional<Concept> there = vocabulary.find(id);
    if (there.isPresent()) {
      throw new ChangeRefusedException(
          "there is a concept "
              + id
              + " already (“"
              + there.get().preferred().text()
              + "”); choose another id, or rename or merge that one");
    }
  }

  private String facet(ConceptRequest.Add request) {
    if (request.newFacet().isPresent()) {
      return made(vocabulary, request.newFacet().get(), effects);
    }
    if (request.facet().isPresent()) {
      return ConceptNames.facet(vocabulary.thesaurus(), request.facet().get()).id();
    }
    if (request.broader().isEmpty()) {
      throw new ChangeRefusedException(
          "a concept is kept in a facet; name one with --facet, or a broader concept with --broader");
    }
    return vocabulary.concept(request.broader().get(0)).facet();
  }

  /** Makes a facet, whose id is the name of its file. */
  static String made(WholeVocabulary vocabulary, Facet facet, List<Effect> effects) {
    if (!Ids.isUsable(facet.id())) {
      throw new ChangeRefusedException(
          "“" + facet.id() + "” cannot be a facet; write small letters, digits and hyphens");
    }
    if (vocabulary.facets().stream().anyMatch(f -> f.id().equals(facet.id()))) {
      throw new ChangeRefusedException(
          "there is a facet " + facet.id() + " already; name it with --facet");
    }
    vocabulary.addFacet(facet);
    effects.add(new Effect(Sort.ADDED, "the facet " + facet.id()));
    return facet.id();
  }
}
