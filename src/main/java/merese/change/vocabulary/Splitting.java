package merese.change.vocabulary;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import merese.change.ChangeRefusedException;
import merese.change.Effect;
import merese.change.Effect.Sort;
import merese.change.vocabulary.VocabularyChange.StayingNote;
import merese.model.Concept;
import merese.model.Concept.Label;
import merese.model.Concept.LookAlike;
import merese.model.Mine;
import merese.model.Naming;
import merese.model.Nearest;
import merese.store.LibraryFile;
import merese.store.LibraryFolder;
import merese.vocabulary.Thesaurus;

/**
 * A new concept out of one. The labels that are named for it leave the old one, the notes that are
 * named go over, and everything else stays.
 */
final class Splitting {
  private final LibraryFolder folder;
  private final WholeVocabulary vocabulary;
  private final Labels labels;
  private final List<Effect> effects;
  private final List<StayingNote> staying = new ArrayList<>();

  Splitting(LibraryFolder folder, WholeVocabulary vocabulary, Labels labels, List<Effect> effects) {
    this.folder = folder;
    this.vocabulary = vocabulary;
    this.labels = labels;
    this.effects = effects;
  }

  List<StayingNote> staying() {
    return staying;
  }

  String split(ConceptRequest.Split request, Sink sink) {
    Concept old = vocabulary.concept(request.concept());
    Adding.requireFree(vocabulary, request.id());
    Draft rest = Draft.of(old);
    Label preferred = taken(rest, request.label(), request.scope());
    List<Label> alternatives = new ArrayList<>();
    for (String text : request.alternatives()) {
      alternatives.add(taken(rest, text, Optional.empty()));
    }
    vocabulary.replace(old, rest.make());
    make(request, old, preferred, alternatives);
    notes(request, sink);
    return request.id();
  }

  /** A label for the new concept; the old one loses it. */
  private Label taken(Draft from, String text, Optional<String> scope) {
    if (text.equals(from.preferred.text()) && scope.equals(from.preferred.scope())) {
      throw new ChangeRefusedException(
          "“"
              + text
              + "” is the preferred label of "
              + from.id
              + "; rename that first, or choose another label for the new concept");
    }
    Optional<Label> there = from.label(text);
    if (from.takeAway(text)) {
      effects.add(new Effect(Sort.FOLLOWS, "the label “" + text + "”"));
      return new Label(text, scope.or(there.get()::scope), there.get().elsewhere());
    }
    return new Label(text, scope, false);
  }

  private void make(
      ConceptRequest.Split request, Concept old, Label preferred, List<Label> alternatives) {
    labels.requirePreferable(preferred, request.id());
    Draft made =
        new Draft(
            request.id(),
            old.facet(),
            labels.shared(preferred, request.id()),
            request.definition().orElse(old.definition()));
    for (Label label : alternatives) {
      made.alternatives.add(labels.shared(label, request.id()));
    }
    made.broader = new ArrayList<>(request.broader().isEmpty() ? old.broader() : request.broader());
    made.broader.forEach(vocabulary::concept);
    made.status = old.status();
    request
        .test()
        .ifPresent(
            test -> {
              LookAlike lookAlike = new LookAlike(old.id(), Optional.of(test));
              made.lookAlikes.add(lookAlike);
              effects.add(new Effect(Sort.ADDED, "look-alike: " + Adding.words(lookAlike)));
            });
    vocabulary.add(made.make());
    effects.add(
        new Effect(
            Sort.ADDED,
            "the concept "
                + made.id
                + (made.broader.isEmpty() ? "" : ", below " + String.join(" and ", made.broader))));
    if (request.definition().isEmpty()) {
      effects.add(
          new Effect(
              Sort.LOOK_AT,
              "both have one definition; merese concept describe gives them their own"));
    }
  }

  private void notes(ConceptRequest.Split request, Sink sink) {
    String from = request.concept();
    Thesaurus thesaurus = vocabulary.thesaurus();
    Set<String> named = new LinkedHashSet<>(request.notes());
    Set<String> met = new HashSet<>();
    boolean byTerms = !request.printed().isEmpty() || !request.sources().isEmpty();
    WorkReferences works =
        WorkReferences.some(
            from,
            request.id(),
            (edition, note, naming) -> {
              String name = edition + "/" + note.id();
              if (named.contains(name)) {
                met.add(name);
                return true;
              }
              boolean source = request.sources().isEmpty() || request.sources().contains(edition);
              return byTerms
                  && source
                  && isPrinted(thesaurus, request.printed(), naming, met, edition);
            });
    requireSources(request.sources());
    new References(folder, from, request.id(), effects).followWorks(works, sink);
    requireMet(request, met);
    staying.addAll(works.staying());
    effects.add(
        new Effect(
            Sort.FOLLOWS,
            works.notes() == 0
                ? "no note"
                : References.many(works.notes(), "note")
                    + " in "
                    + References.many(works.sources(), "source")
                    + ", printed as they are"));
    if (works.checks() + works.scopes() > 0) {
      List<String> what = new ArrayList<>();
      if (works.checks() > 0) {
        what.add(References.many(works.checks(), "line") + " of the check log");
      }
      if (works.scopes() > 0) {
        what.add(References.many(works.scopes(), "scope"));
      }
      effects.add(
          new Effect(Sort.STAYS, String.join(" and ", what) + " with " + from + ": look at them"));
    }
    pieces(from);
    opinions(from);
  }

  private void opinions(String from) {
    Mine mine = folder.readMine().value();
    List<String> what = new ArrayList<>();
    mine.preferences().stream()
        .filter(p -> p.concept().equals(from))
        .forEach(p -> what.add("your preference for “" + p.label() + "”"));
    mine.coinages().stream()
        .filter(c -> c.concept().equals(from))
        .forEach(c -> what.add("your coined label “" + c.label() + "”"));
    long lines = mine.experience().stream().filter(e -> e.concept().equals(from)).count();
    if (lines > 0) {
      what.add(References.many((int) lines, "line") + " of your experience");
    }
    if (!what.isEmpty()) {
      effects.add(new Effect(Sort.STAYS, String.join("; ", what) + ", with " + from));
    }
  }

  private static boolean isPrinted(
      Thesaurus thesaurus, List<String> terms, Naming naming, Set<String> met, String edition) {
    if (terms.isEmpty()) {
      met.add(edition);
      return true;
    }
    for (String term : terms) {
      if (naming.printed().equals(term) || thesaurus.areSameWords(naming.printed(), term)) {
        met.add(term);
        met.add(edition);
        return true;
      }
    }
    return false;
  }

  private void requireMet(ConceptRequest.Split request, Set<String> met) {
    for (String note : request.notes()) {
      if (!met.contains(note)) {
        throw new ChangeRefusedException(
            "there is no note "
                + note
                + " that means "
                + request.concept()
                + "; a note is named by its source and id, as in quenby-1949/n3");
      }
    }
    for (String term : request.printed()) {
      if (!met.contains(term)) {
        throw new ChangeRefusedException(
            "no note on "
                + request.concept()
                + (request.sources().isEmpty() ? "" : " in the sources named")
                + " prints “"
                + term
                + "”");
      }
    }
    for (String source : request.sources()) {
      if (!met.contains(source)) {
        throw new ChangeRefusedException(
            source + " has no note on " + request.concept() + " that would go over");
      }
    }
  }

  private void requireSources(List<String> sources) {
    if (sources.isEmpty()) {
      return;
    }
    Set<String> keys = new HashSet<>();
    for (LibraryFile file : folder.scan()) {
      if (file.kind() == LibraryFile.Kind.WORK) {
        folder.readWork(file.path()).value().editions().forEach(e -> keys.add(e.key()));
      }
    }
    for (String source : sources) {
      if (!keys.contains(source)) {
        List<String> near = Nearest.to(source, keys.stream().sorted().toList(), 3);
        throw new ChangeRefusedException(
            "there is no source "
                + source
                + (near.isEmpty() ? "" : "; did you mean " + String.join(" or ", near) + "?"));
      }
    }
  }

  private void pieces(String from) {
    List<String> refs = new ArrayList<>();
    for (LibraryFile file : folder.scan()) {
      if (file.kind() == LibraryFile.Kind.OBJECT
          && folder.readObject(file.path()).value().evidence().stream()
              .anyMatch(e -> e.concept().equals(from))) {
        refs.add(file.name());
      }
    }
    if (!refs.isEmpty()) {
      effects.add(
          new Effect(
              Sort.STAYS, "what your pieces show, with " + from + ": " + String.join(", ", refs)));
    }
  }
}
