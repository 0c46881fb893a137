package merese.change.concepts;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import merese.change.concepts.ConceptResult.Change;
import merese.change.concepts.ConceptResult.Outcome;
import merese.exchange.skos.SkosConcept;
import merese.model.Concept;
import merese.model.Concept.LookAlike;
import merese.model.Concept.Match;
import merese.vocabulary.Thesaurus;

/**
 * Compares a concept of a file with the library's, and adds what the library does not say yet. What
 * it says otherwise stays, unless the user takes the file's word. What the file does not say is no
 * difference.
 */
final class Merging {
  private final Vocabulary vocabulary;
  private final Resolving resolving;
  private final Words words;
  private final Hierarchies hierarchies;
  private final boolean replace;
  private final List<Change> changes = new ArrayList<>();
  private final ConceptDraft draft;
  private final Understood theirs;

  /** Links to broader concepts that would make a circle. */
  final List<String> circles = new ArrayList<>();

  Merging(
      Vocabulary vocabulary,
      Resolving resolving,
      Words words,
      Hierarchies hierarchies,
      boolean replace,
      Concept ours,
      Understood theirs) {
    this.vocabulary = vocabulary;
    this.resolving = resolving;
    this.words = words;
    this.hierarchies = hierarchies;
    this.replace = replace;
    this.draft = ConceptDraft.of(ours);
    this.theirs = theirs;
  }

  ConceptDraft merge() {
    preferred();
    for (Concept.Label label : theirs.alternatives()) {
      label(label, draft.alternatives, "alternative label");
    }
    for (Concept.Label label : theirs.hidden()) {
      label(label, draft.hidden, "hidden label");
    }
    theirs.definition().ifPresent(this::definition);
    broader();
    lookAlikes();
    status();
    matches();
    return draft;
  }

  List<Change> changes() {
    return changes;
  }

  private void preferred() {
    Concept.Label wanted = theirs.preferred();
    if (draft.preferred.text().equals(wanted.text())) {
      details(wanted);
      return;
    }
    String ours = Thesaurus.display(draft.preferred);
    if (replace) {
      Optional<Concept.Label> allowed = words.allowed(wanted, draft.id, theirs);
      if (allowed.isPresent()) {
        Concept.Label old = draft.preferred;
        draft.alternatives.removeIf(label -> label.text().equals(wanted.text()));
        draft.hidden.removeIf(label -> label.text().equals(wanted.text()));
        draft.preferred = allowed.get();
        draft.alternatives.add(0, old);
        change(Outcome.REPLACED, "preferred label", ours, Thesaurus.display(wanted));
      }
      return;
    }
    change(Outcome.STAYS, "preferred label", ours, Thesaurus.display(wanted));
    label(wanted, draft.alternatives, "alternative label");
  }

  private void label(Concept.Label wanted, List<Concept.Label> to, String part) {
    String key = Vocabulary.key(wanted);
    boolean has = false;
    for (Concept.Label label : draft.labels()) {
      if (label.text().equals(wanted.text())) {
        details(wanted);
        return;
      }
      has |= Vocabulary.key(label).equals(key);
    }
    if (has && theirs.ownId().isEmpty()) {
      return; // the same word in another spelling or number, which is found anyway
    }
    words
        .allowed(wanted, draft.id, theirs)
        .ifPresent(
            label -> {
              to.add(label);
              change(Outcome.ADDED, part, "", Thesaurus.display(label));
            });
  }

  /** What is said of a label that is there: its scope, and that it has other meanings. */
  private void details(Concept.Label wanted) {
    draft.preferred = detailed(draft.preferred, wanted);
    draft.alternatives.replaceAll(label -> detailed(label, wanted));
    draft.hidden.replaceAll(label -> detailed(label, wanted));
  }

  private Concept.Label detailed(Concept.Label label, Concept.Label wanted) {
    if (!label.text().equals(wanted.text())) {
      return label;
    }
    Optional<String> scope = label.scope();
    if (wanted.scope().isPresent() && !wanted.scope().equals(scope)) {
      String part = "scope of “" + label.text() + "”";
      Outcome outcome = outcome(scope.isEmpty());
      change(outcome, part, scope.orElse(""), wanted.scope().get());
      scope = outcome == Outcome.STAYS ? scope : wanted.scope();
    }
    boolean elsewhere = label.elsewhere() || wanted.elsewhere();
    if (elsewhere != label.elsewhere()) {
      change(Outcome.ADDED, "“" + label.text() + "”", "", "also used for something else");
    }
    return new Concept.Label(label.text(), scope, elsewhere);
  }

  private void definition(String definition) {
    if (!definition.equals(draft.definition)) {
      Outcome outcome = outcome(draft.definition.equals(ConceptImport.UNDEFINED));
      change(outcome, "definition", draft.definition, definition);
      draft.definition = outcome == Outcome.STAYS ? draft.definition : definition;
    }
  }

  private void broader() {
    List<String> wanted = resolving.broader(theirs);
    if (wanted.isEmpty() || draft.broader.containsAll(wanted)) {
      return;
    }
    Outcome outcome = outcome(false);
    change(outcome, "broader", resolving.labels(draft.broader), resolving.labels(wanted));
    if (outcome == Outcome.STAYS) {
      return;
    }
    hierarchies.clear(draft.id);
    List<String> taken = new ArrayList<>();
    for (String id : wanted) {
      if (hierarchies.add(draft.id, id)) {
        taken.add(id);
      } else {
        circles.add(Resolving.circle(vocabulary.label(draft.id), resolving.label(id)));
      }
    }
    draft.broader = taken;
  }

  private void lookAlikes() {
    for (LookAlike wanted : resolving.lookAlikes(theirs)) {
      int at = indexOf(wanted.concept());
      if (at < 0) {
        draft.lookAlikes.add(wanted);
        String test = wanted.test().map(t -> ": " + t).orElse("");
        change(Outcome.ADDED, "look-alike", "", resolving.label(wanted.concept()) + test);
      } else if (wanted.test().isPresent()
          && !wanted.test().equals(draft.lookAlikes.get(at).test())) {
        Optional<String> ours = draft.lookAlikes.get(at).test();
        Outcome outcome = outcome(ours.isEmpty());
        String part = "how to tell " + resolving.label(wanted.concept());
        change(outcome, part, ours.orElse(""), wanted.test().get());
        if (outcome != Outcome.STAYS) {
          draft.lookAlikes.set(at, wanted);
        }
      }
    }
    for (String remark : theirs.source().own().lookAlikeRemark()) {
      if (!draft.lookAlikeRemark.equals(Optional.of(remark))) {
        Outcome outcome = outcome(draft.lookAlikeRemark.isEmpty());
        change(outcome, "how to tell", draft.lookAlikeRemark.orElse(""), remark);
        if (outcome != Outcome.STAYS) {
          draft.lookAlikeRemark = Optional.of(remark);
        }
      }
    }
  }

  private int indexOf(String concept) {
    for (int i = 0; i < draft.lookAlikes.size(); i++) {
      if (draft.lookAlikes.get(i).concept().equals(concept)) {
        return i;
      }
    }
    return -1;
  }

  private void status() {
    for (Concept.Status wanted : theirs.source().own().status()) {
      if (wanted != draft.status) {
        Outcome outcome = outcome(false);
        change(outcome, "status", draft.status.code(), wanted.code());
        draft.status = outcome == Outcome.STAYS ? draft.status : wanted;
      }
    }
  }

  private void matches() {
    for (Match wanted : matches(theirs, resolving)) {
      if (draft.matches.contains(wanted)) {
        continue;
      }
      String part = wanted.kind().code().replace('-', ' ');
      List<Match> others =
          draft.matches.stream().filter(match -> match.uri().equals(wanted.uri())).toList();
      Outcome outcome = outcome(others.isEmpty());
      String ours = others.isEmpty() ? "" : others.get(0).kind().code().replace('-', ' ');
      change(
          outcome,
          others.isEmpty() ? part : "match to " + wanted.uri(),
          ours,
          others.isEmpty() ? wanted.uri() : part);
      if (outcome != Outcome.STAYS) {
        draft.matches.removeAll(others);
        draft.matches.add(wanted);
      }
    }
  }

  /**
   * The matches of a concept of a file: its own, less those to concepts of this library, and an
   * exact match to itself where it is another's.
   */
  static List<Match> matches(Understood concept, Resolving resolving) {
    SkosConcept source = concept.source();
    List<Match> all = new ArrayList<>(source.matches());
    all.removeIf(match -> resolving.isOwn(match.uri()));
    all.addAll(source.own().oddMatches());
    if (concept.ownId().isEmpty() && source.isAddressed()) {
      all.removeIf(match -> match.uri().equals(source.uri()));
      all.add(new Match(Match.Kind.EXACT_MATCH, source.uri()));
    }
    return all;
  }

  private Outcome outcome(boolean silent) {
    return silent ? Outcome.ADDED : replace ? Outcome.REPLACED : Outcome.STAYS;
  }

  private void change(Outcome outcome, String part, String ours, String theirs) {
    changes.add(new Change(outcome, part, ours, theirs));
  }
}
