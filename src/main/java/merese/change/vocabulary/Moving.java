package merese.change.vocabulary;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import merese.change.ChangeRefusedException;
import merese.change.Effect;
import merese.change.Effect.Sort;
import merese.model.Concept;
import merese.vocabulary.Thesaurus;

/** Another place in the hierarchy, or another facet. */
final class Moving {
  private final WholeVocabulary vocabulary;
  private final List<Effect> effects;

  Moving(WholeVocabulary vocabulary, List<Effect> effects) {
    this.vocabulary = vocabulary;
    this.effects = effects;
  }

  String move(ConceptRequest.Move request) {
    Concept concept = vocabulary.concept(request.concept());
    Draft draft = Draft.of(concept);
    if (request.top()) {
      draft.broader.forEach(id -> dropped(id));
      draft.broader = new ArrayList<>();
    } else if (request.broader().isPresent()) {
      below(draft, request);
    } else if (request.from().isPresent()) {
      leave(draft, request.from().get());
    }
    vocabulary.replace(concept, draft.make());
    if (request.facet().isPresent() || request.newFacet().isPresent()) {
      String facet =
          request.newFacet().isPresent()
              ? Adding.made(vocabulary, request.newFacet().get(), effects)
              : ConceptNames.facet(vocabulary.thesaurus(), request.facet().get()).id();
      toFacet(vocabulary.concept(concept.id()), facet);
    }
    return concept.id();
  }

  private void below(Draft draft, ConceptRequest.Move request) {
    String to = vocabulary.concept(request.broader().get()).id();
    if (draft.broader.contains(to)) {
      throw new ChangeRefusedException(draft.id + " is below " + to + " already");
    }
    if (vocabulary.thesaurus().covers(draft.id, to)) {
      throw new ChangeRefusedException(
          draft.id
              + " cannot be below "
              + to
              + ": "
              + (to.equals(draft.id) ? "that is itself" : "that is below it")
              + " (a circle of broader concepts)");
    }
    if (request.also()) {
      draft.broader.add(to);
    } else if (request.from().isPresent()) {
      int at = leave(draft, request.from().get());
      draft.broader.add(at, to);
    } else if (draft.broader.size() > 1) {
      throw new ChangeRefusedException(
          draft.id
              + " is below "
              + String.join(" and ", draft.broader)
              + "; say which of them it leaves with --from, or --also to stay below all");
    } else {
      draft.broader.forEach(this::dropped);
      draft.broader = new ArrayList<>(List.of(to));
    }
    effects.add(new Effect(Sort.ADDED, "broader: " + to));
  }

  private int leave(Draft draft, String from) {
    int at = draft.broader.indexOf(from);
    if (at < 0) {
      throw new ChangeRefusedException(
          draft.id
              + " is not directly below "
              + from
              + (draft.broader.isEmpty()
                  ? "; it is below nothing"
                  : "; it is below " + String.join(" and ", draft.broader)));
    }
    draft.broader.remove(at);
    dropped(from);
    return at;
  }

  private void dropped(String broader) {
    effects.add(new Effect(Sort.DROPPED, "broader: " + broader));
  }

  /** With all that is narrower and in its facet, but for what is below something that stays. */
  private void toFacet(Concept concept, String facet) {
    if (concept.facet().equals(facet)) {
      throw new ChangeRefusedException(concept.id() + " is in the facet " + facet + " already");
    }
    Thesaurus thesaurus = vocabulary.thesaurus();
    Set<String> go = new LinkedHashSet<>(List.of(concept.id()));
    for (String id : thesaurus.narrower(concept.id())) {
      if (vocabulary.concept(id).facet().equals(concept.facet())) {
        go.add(id);
      }
    }
    boolean held = true;
    while (held) {
      held = go.removeIf(id -> !id.equals(concept.id()) && isHeld(id, concept.facet(), go));
    }
    for (String id : go) {
      Concept old = vocabulary.concept(id);
      Draft draft = Draft.of(old);
      draft.facet = facet;
      vocabulary.replace(old, draft.make());
    }
    effects.add(new Effect(Sort.RENAMED, "facet: " + facet + " (before: " + concept.facet() + ")"));
    go.remove(concept.id());
    if (!go.isEmpty()) {
      effects.add(
          new Effect(
              Sort.FOLLOWS,
              References.many(go.size(), "narrower concept") + ": " + String.join(", ", go)));
    }
  }

  private boolean isHeld(String id, String facet, Set<String> go) {
    for (String broader : vocabulary.concept(id).broader()) {
      if (!go.contains(broader)
          && vocabulary.find(broader).filter(b -> b.facet().equals(facet)).isPresent()) {
        return true;
      }
    }
    return false;
  }
}
