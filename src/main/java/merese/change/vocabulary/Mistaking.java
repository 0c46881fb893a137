package merese.change.vocabulary;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import merese.change.ChangeRefusedException;
import merese.change.Effect;
import merese.change.Effect.Sort;
import merese.model.Concept;
import merese.model.Concept.LookAlike;

/** The relation of being mistaken for one another; it is symmetric, and stated on one side. */
final class Mistaking {
  private final WholeVocabulary vocabulary;
  private final List<Effect> effects;

  Mistaking(WholeVocabulary vocabulary, List<Effect> effects) {
    this.vocabulary = vocabulary;
    this.effects = effects;
  }

  String state(ConceptRequest.Mistaken request) {
    Concept one = vocabulary.concept(request.one());
    Concept other = vocabulary.concept(request.other());
    if (one.id().equals(other.id())) {
      throw new ChangeRefusedException(one.id() + " is not mistaken for itself");
    }
    boolean here = takeAway(one, other.id());
    boolean there = takeAway(other, one.id());
    if (request.none()) {
      if (!here && !there) {
        throw new ChangeRefusedException(
            one.id() + " and " + other.id() + " are not stated as look-alikes");
      }
      return one.id();
    }
    Draft draft = Draft.of(vocabulary.concept(one.id()));
    LookAlike stated = new LookAlike(other.id(), request.test());
    draft.lookAlikes.add(stated);
    vocabulary.replace(vocabulary.concept(one.id()), draft.make());
    effects.add(new Effect(Sort.ADDED, "look-alike: " + Adding.words(stated)));
    return one.id();
  }

  private boolean takeAway(Concept from, String other) {
    List<LookAlike> rest = new ArrayList<>(from.lookAlikes());
    Optional<LookAlike> there = rest.stream().filter(l -> l.concept().equals(other)).findFirst();
    if (there.isEmpty()) {
      return false;
    }
    rest.removeIf(l -> l.concept().equals(other));
    Draft draft = Draft.of(from);
    draft.lookAlikes.clear();
    draft.lookAlikes.addAll(rest);
    vocabulary.replace(from, draft.make());
    effects.add(
        new Effect(
            Sort.DROPPED,
            "look-alike: "
                + from.id()
                + " and "
                + other
                + there.get().test().map(test -> " (" + test + ")").orElse("")));
    return true;
  }
}
