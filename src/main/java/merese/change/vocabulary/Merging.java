package merese.change.vocabulary;

import java.util.List;
import java.util.Optional;
import merese.change.ChangeRefusedException;
import merese.change.Effect;
import merese.change.Effect.Sort;
import merese.model.Concept;
import merese.model.Concept.Label;
import merese.model.Concept.LookAlike;
import merese.model.Concept.Match;
import merese.vocabulary.Thesaurus;

/** One concept becomes part of another: what that lacks is added, what it says otherwise stays. */
final class Merging {
  private final WholeVocabulary vocabulary;
  private final List<Effect> effects;

  Merging(WholeVocabulary vocabulary, List<Effect> effects) {
    this.vocabulary = vocabulary;
    this.effects = effects;
  }

  void merge(ConceptRequest.Merge request) {
    Concept gone = vocabulary.concept(request.gone());
    Concept kept = vocabulary.concept(request.kept());
    if (gone.id().equals(kept.id())) {
      throw new ChangeRefusedException(gone.id() + " cannot be merged into itself");
    }
    requireNothingBetween(gone, kept);
    Draft draft = Draft.of(kept);
    labels(draft, gone);
    what(draft, gone);
    broader(draft, gone);
    lookAlikes(draft, gone);
    matches(draft, gone);
    vocabulary.replace(kept, draft.make());
    vocabulary.remove(gone);
    Renaming.follow(vocabulary, gone.id(), kept.id(), effects);
  }

  /** A concept between the two would become broader and narrower than the one that stays. */
  private void requireNothingBetween(Concept gone, Concept kept) {
    Thesaurus thesaurus = vocabulary.thesaurus();
    for (Concept one : vocabulary.concepts()) {
      String id = one.id();
      boolean below = thesaurus.isBroader(gone.id(), id) && thesaurus.isBroader(id, kept.id());
      boolean above = thesaurus.isBroader(kept.id(), id) && thesaurus.isBroader(id, gone.id());
      if (below || above) {
        throw new ChangeRefusedException(
            id
                + " stands between "
                + gone.id()
                + " and "
                + kept.id()
                + ", and would be broader and narrower than one concept (a circle of broader"
                + " concepts); move or merge that first");
      }
    }
  }

  private void labels(Draft draft, Concept gone) {
    label(draft, gone.preferred(), draft.alternatives, "alternative label");
    gone.alternatives().forEach(l -> label(draft, l, draft.alternatives, "alternative label"));
    gone.hidden().forEach(l -> label(draft, l, draft.hidden, "hidden label"));
  }

  private void label(Draft draft, Label label, List<Label> to, String kind) {
    Optional<Label> there = draft.label(label.text());
    if (there.isEmpty()) {
      to.add(label);
      effects.add(new Effect(Sort.ADDED, kind + ": " + Thesaurus.display(label)));
    } else if (!there.get().scope().equals(label.scope())) {
      stays("label", Thesaurus.display(there.get()), Thesaurus.display(label));
    }
  }

  private void what(Draft draft, Concept gone) {
    if (!draft.definition.equals(gone.definition())) {
      stays("definition", draft.definition, gone.definition());
    }
    if (!draft.facet.equals(gone.facet())) {
      stays("facet", draft.facet, gone.facet());
    }
    if (draft.status != gone.status()) {
      stays("status", draft.status.code(), gone.status().code());
    }
  }

  private void broader(Draft draft, Concept gone) {
    draft.broader.remove(gone.id());
    for (String broader : gone.broader()) {
      if (!broader.equals(draft.id) && !draft.broader.contains(broader)) {
        draft.broader.add(broader);
        effects.add(new Effect(Sort.ADDED, "broader: " + broader));
      }
    }
  }

  private void lookAlikes(Draft draft, Concept gone) {
    for (LookAlike each : draft.lookAlikes) {
      if (each.concept().equals(gone.id())) {
        dropped(each);
      }
    }
    draft.lookAlikes.removeIf(l -> l.concept().equals(gone.id()));
    for (LookAlike each : gone.lookAlikes()) {
      if (each.concept().equals(draft.id)) {
        dropped(each);
        continue;
      }
      int before = draft.lookAlikes.size();
      Renaming.add(draft.lookAlikes, each, draft, effects);
      if (draft.lookAlikes.size() > before) {
        effects.add(new Effect(Sort.ADDED, "look-alike: " + Adding.words(each)));
      }
    }
    if (draft.lookAlikeRemark.isEmpty()) {
      draft.lookAlikeRemark = gone.lookAlikeRemark();
      gone.lookAlikeRemark()
          .ifPresent(remark -> effects.add(new Effect(Sort.ADDED, "remark: " + remark)));
    } else if (gone.lookAlikeRemark().isPresent()
        && !gone.lookAlikeRemark().equals(draft.lookAlikeRemark)) {
      stays("remark on look-alikes", draft.lookAlikeRemark.get(), gone.lookAlikeRemark().get());
    }
  }

  private void matches(Draft draft, Concept gone) {
    for (Match match : gone.matches()) {
      Optional<Match> there =
          draft.matches.stream().filter(m -> m.uri().equals(match.uri())).findFirst();
      if (there.isEmpty()) {
        draft.matches.add(match);
        effects.add(new Effect(Sort.ADDED, words(match)));
      } else if (there.get().kind() != match.kind()) {
        stays("match", words(there.get()), match.kind().code().replace('-', ' '));
      }
    }
  }

  /** That the two were mistaken for one another. */
  private void dropped(LookAlike own) {
    effects.add(new Effect(Sort.DROPPED, "look-alike: " + Adding.words(own)));
  }

  private static String words(Match match) {
    return match.kind().code().replace('-', ' ') + ": " + match.uri();
  }

  private void stays(String part, String kept, String goes) {
    effects.add(new Effect(Sort.STAYS, part + ": " + kept + " (goes: " + goes + ")"));
  }
}
