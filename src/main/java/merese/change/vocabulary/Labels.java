package merese.change.vocabulary;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import merese.change.ChangeRefusedException;
import merese.change.Effect;
import merese.change.Effect.Sort;
import merese.model.Concept;
import merese.model.Concept.Label;
import merese.model.Homonym;
import merese.vocabulary.Thesaurus;

/**
 * Labels that a concept gets or loses. A word that another concept has too is allowed and marked so
 * on both: whoever asks by it is asked which is meant.
 */
final class Labels {
  private final WholeVocabulary vocabulary;
  private final List<Effect> effects;

  Labels(WholeVocabulary vocabulary, List<Effect> effects) {
    this.vocabulary = vocabulary;
    this.effects = effects;
  }

  /** Refuses a preferred label that is, with its scope, another concept's. */
  void requirePreferable(Label label, String id) {
    for (Concept other : vocabulary.withWord(label.text(), id)) {
      if (Thesaurus.display(other.preferred()).equalsIgnoreCase(Thesaurus.display(label))) {
        throw new ChangeRefusedException(
            "“"
                + Thesaurus.display(label)
                + "” is the preferred label of "
                + other.id()
                + " already; say what this one is limited to with --scope, or choose another label");
      }
    }
  }

  /**
   * The label as a concept may have it: marked where another concept has the word too, which is
   * then marked alike. The concept itself must be in the vocabulary, and not be put there again
   * from an older draft.
   */
  Label shared(Label label, String id) {
    List<Concept> others = vocabulary.withWord(label.text(), id);
    Optional<Homonym> registered = vocabulary.registered(label.text());
    if (others.isEmpty() && registered.isEmpty()) {
      return label;
    }
    Set<String> meanings = new TreeSet<>();
    for (Concept other : others) {
      Draft draft = Draft.of(other);
      draft.flagElsewhere(label.text());
      vocabulary.replace(other, draft.make());
      meanings.add(other.id());
    }
    if (registered.isPresent()) {
      meanings.addAll(registered.get().concepts());
      meanings.remove(id);
      register(registered.get(), id);
    }
    effects.add(
        new Effect(
            Sort.LOOK_AT,
            "“"
                + label.text()
                + "” also means "
                + String.join(", ", meanings)
                + ": whoever asks by it is asked which"));
    return new Label(label.text(), label.scope(), true);
  }

  private void register(Homonym homonym, String id) {
    if (homonym.concepts().contains(id)) {
      return;
    }
    List<String> concepts = new ArrayList<>(homonym.concepts());
    concepts.add(id);
    List<Homonym> register = new ArrayList<>(vocabulary.register());
    register.set(
        register.indexOf(homonym), new Homonym(homonym.word(), concepts, homonym.remark()));
    vocabulary.setRegister(register);
    effects.add(
        new Effect(Sort.ADDED, "the register's “" + homonym.word() + "” may now also mean " + id));
  }

  /** Adds an alternative or hidden label; refuses one that the concept has. */
  void add(Draft draft, List<Label> to, String text, String kind) {
    Optional<Label> has = draft.label(text);
    if (has.isPresent()) {
      throw new ChangeRefusedException(
          "“"
              + text
              + "” is a label of "
              + draft.id
              + " already (S13 of the SKOS Reference: a label is preferred, alternative or hidden,"
              + " not two of them)");
    }
    to.add(shared(Label.of(text), draft.id));
    effects.add(new Effect(Sort.ADDED, kind + ": " + text));
  }

  String describe(ConceptRequest.Describe request) {
    Concept concept = vocabulary.concept(request.concept());
    Draft draft = Draft.of(concept);
    for (String text : request.without()) {
      if (text.equals(draft.preferred.text())) {
        throw new ChangeRefusedException(
            "“"
                + text
                + "” is the preferred label of "
                + draft.id
                + "; merese concept rename gives it another");
      }
      if (!draft.takeAway(text)) {
        throw new ChangeRefusedException(
            "“" + text + "” is no label of " + draft.id + "; its labels are " + all(draft));
      }
      effects.add(new Effect(Sort.DROPPED, "label: " + text));
    }
    request.alternatives().forEach(l -> add(draft, draft.alternatives, l, "alternative label"));
    request.hidden().forEach(l -> add(draft, draft.hidden, l, "hidden label"));
    request
        .definition()
        .ifPresent(
            definition -> {
              effects.add(new Effect(Sort.RENAMED, "definition: " + definition));
              effects.add(new Effect(Sort.DROPPED, "definition: " + draft.definition));
              draft.definition = definition;
            });
    request
        .status()
        .ifPresent(
            status -> {
              effects.add(new Effect(Sort.RENAMED, "status: " + status.code()));
              draft.status = status;
            });
    vocabulary.replace(concept, draft.make());
    return draft.id;
  }

  private static String all(Draft draft) {
    return String.join(", ", draft.labels().stream().map(Thesaurus::display).toList());
  }
}
