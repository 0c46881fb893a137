package merese.change.vocabulary;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import merese.change.ChangeRefusedException;
import merese.change.Effect;
import merese.change.Effect.Sort;
import merese.model.Concept;
import merese.model.Concept.Label;
import merese.model.Concept.LookAlike;
import merese.model.Homonym;
import merese.model.Mine;
import merese.vocabulary.Thesaurus;

/** Another preferred label or another id. */
final class Renaming {
  private final WholeVocabulary vocabulary;
  private final Labels labels;
  private final List<Effect> effects;

  Renaming(WholeVocabulary vocabulary, Labels labels, List<Effect> effects) {
    this.vocabulary = vocabulary;
    this.labels = labels;
    this.effects = effects;
  }

  void rename(ConceptRequest.Rename request, Mine mine) {
    Concept concept = vocabulary.concept(request.concept());
    Draft draft = Draft.of(concept);
    if (request.label().isPresent() || request.scope().isPresent()) {
      relabel(draft, request, mine);
    }
    boolean other = request.id().isPresent() && !request.id().get().equals(draft.id);
    if (other) {
      Adding.requireFree(vocabulary, request.id().get());
      effects.add(new Effect(Sort.RENAMED, draft.id + " is now " + request.id().get()));
      draft.id = request.id().get();
    }
    vocabulary.replace(vocabulary.concept(request.concept()), draft.make());
    if (other) {
      follow(vocabulary, request.concept(), draft.id, effects);
    }
    if (concept.equals(draft.make())) {
      throw new ChangeRefusedException(
          request.concept() + " is called so already; nothing would change");
    }
  }

  private void relabel(Draft draft, ConceptRequest.Rename request, Mine mine) {
    Label old = draft.preferred;
    String text = request.label().orElse(old.text());
    Optional<Label> had = draft.label(text);
    Optional<String> scope = request.scope().or(() -> had.flatMap(Label::scope));
    Label wanted = new Label(text, scope, had.isPresent() && had.get().elsewhere());
    labels.requirePreferable(wanted, draft.id);
    draft.takeAway(text);
    draft.preferred = had.isPresent() ? wanted : labels.shared(wanted, draft.id);
    effects.add(
        new Effect(
            Sort.RENAMED,
            "preferred label: "
                + Thesaurus.display(draft.preferred)
                + " (before: "
                + Thesaurus.display(old)
                + ")"));
    if (old.text().equals(text)) {
      return;
    }
    if (request.dropOld()) {
      effects.add(new Effect(Sort.DROPPED, "label: " + Thesaurus.display(old)));
    } else {
      draft.alternatives.add(0, old);
      effects.add(new Effect(Sort.STAYS, "as an alternative label: " + Thesaurus.display(old)));
    }
    for (Mine.Preference preference : mine.preferences()) {
      if (preference.concept().equals(request.concept()) && !preference.label().equals(text)) {
        effects.add(
            new Effect(
                Sort.LOOK_AT,
                "your own preference “" + preference.label() + "” heads the answers still"));
      }
    }
  }

  /** The vocabulary's own references: what is narrower, look-alikes, the register. */
  static void follow(WholeVocabulary vocabulary, String from, String to, List<Effect> effects) {
    List<String> narrower = new ArrayList<>();
    List<String> alike = new ArrayList<>();
    for (Concept concept : vocabulary.concepts()) {
      Draft draft = Draft.of(concept);
      if (draft.broader.contains(from)) {
        narrower.add(concept.id());
        draft.broader = Ids.led(draft.broader, from, to);
        draft.broader.remove(concept.id());
      }
      if (draft.lookAlikes.stream().anyMatch(l -> l.concept().equals(from))) {
        alike.add(concept.id());
        lead(draft, from, to, effects);
      }
      if (!draft.make().equals(concept)) {
        vocabulary.replace(concept, draft.make());
      }
    }
    alike.remove(to);
    if (!narrower.isEmpty()) {
      effects.add(
          new Effect(
              Sort.FOLLOWS,
              References.many(narrower.size(), "narrower concept")
                  + ": "
                  + String.join(", ", narrower)));
    }
    if (!alike.isEmpty()) {
      effects.add(
          new Effect(Sort.FOLLOWS, "stated as a look-alike by: " + String.join(", ", alike)));
    }
    register(vocabulary, from, to, effects);
  }

  /** Of two statements about one concept the first stays, with the other's test if it has none. */
  private static void lead(Draft draft, String from, String to, List<Effect> effects) {
    List<LookAlike> led = new ArrayList<>();
    for (LookAlike each : draft.lookAlikes) {
      add(led, each.concept().equals(from) ? new LookAlike(to, each.test()) : each, draft, effects);
    }
    led.removeIf(l -> l.concept().equals(draft.id));
    draft.lookAlikes.clear();
    draft.lookAlikes.addAll(led);
  }

  /** Adds a look-alike to those that there are. */
  static void add(List<LookAlike> to, LookAlike more, Draft draft, List<Effect> effects) {
    for (int i = 0; i < to.size(); i++) {
      LookAlike there = to.get(i);
      if (there.concept().equals(more.concept())) {
        to.set(i, there.test().isPresent() ? there : more);
        if (there.test().isPresent() && more.test().isPresent() && !there.equals(more)) {
          effects.add(
              new Effect(
                  Sort.STAYS,
                  "test of "
                      + draft.id
                      + " and "
                      + there.concept()
                      + ": "
                      + there.test().get()
                      + " (goes: "
                      + more.test().get()
                      + ")"));
        }
        return;
      }
    }
    to.add(more);
  }

  private static void register(
      WholeVocabulary vocabulary, String from, String to, List<Effect> effects) {
    List<Homonym> register = new ArrayList<>();
    for (Homonym homonym : vocabulary.register()) {
      if (!homonym.concepts().contains(from)) {
        register.add(homonym);
        continue;
      }
      List<String> led = Ids.led(homonym.concepts(), from, to);
      boolean oneLeft = led.size() == 1 && homonym.concepts().size() > 1;
      if (oneLeft && homonym.remark().isEmpty()) {
        effects.add(
            new Effect(
                Sort.DROPPED, "the register's “" + homonym.word() + "”: it has one meaning now"));
      } else {
        register.add(new Homonym(homonym.word(), led, homonym.remark()));
        effects.add(new Effect(Sort.FOLLOWS, "the register's “" + homonym.word() + "”"));
      }
    }
    vocabulary.setRegister(register);
  }
}
