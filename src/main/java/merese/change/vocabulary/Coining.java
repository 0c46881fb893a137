package merese.change.vocabulary;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import merese.change.ChangeRefusedException;
import merese.change.Effect;
import merese.change.Effect.Sort;
import merese.change.vocabulary.PrintedUses.Use;
import merese.model.Concept;
import merese.model.Mine;
import merese.model.Mine.Coinage;
import merese.model.Mine.Preference;
import merese.model.Nearest;
import merese.store.ChangeSet;
import merese.store.LibraryFile;
import merese.store.LibraryFolder;
import merese.store.Stored;
import merese.vocabulary.Thesaurus;

/**
 * Records a label of the user's own, with its evidence and its date, and makes it a label by which
 * the concept is found. It is for what no source names; where one does, the coined label is a
 * variant beside what is printed.
 */
public final class Coining {
  private final LibraryFolder folder;
  private final WholeVocabulary vocabulary;
  private final List<Effect> effects = new ArrayList<>();

  private Coining(LibraryFolder folder) {
    this.folder = folder;
    this.vocabulary = WholeVocabulary.read(folder);
  }

  /**
   * What is coined.
   *
   * @param concept its id
   * @param object the reference of a piece that the evidence is of
   */
  public record Request(
      String label,
      String concept,
      String evidence,
      Optional<String> object,
      Optional<String> by,
      Optional<LocalDate> on) {}

  /** Does it, all or nothing. */
  public static VocabularyChange apply(LibraryFolder folder, Request request) {
    try (ChangeSet change =
        folder.change("“" + request.label() + "” coined for " + request.concept())) {
      VocabularyChange made = new Coining(folder).make(request, Sink.into(change));
      change.commit();
      return made;
    }
  }

  private VocabularyChange make(Request request, Sink sink) {
    Concept concept = vocabulary.concept(request.concept());
    Soundness sound = new Soundness(vocabulary);
    Stored<Mine> stored = folder.readMine();
    Mine mine = stored.value();
    List<Coinage> coinages = new ArrayList<>(mine.coinages());
    Coinage coined =
        new Coinage(
            request.label(),
            concept.id(),
            request.by(),
            request.on(),
            Optional.of(evidence(request)));
    coin(coinages, coined);
    label(concept, request.label());
    sound.require(vocabulary);
    warn(mine, coined);
    sink.save(
        stored,
        new Mine(mine.preferences(), coinages, mine.experience(), mine.untraced()),
        List.of());
    vocabulary.stage(sink);
    effects.sort(Comparator.comparing(Effect::sort));
    return new VocabularyChange(
        concept.id(), Thesaurus.display(concept.preferred()), effects, List.of(), sink.files());
  }

  private String evidence(Request request) {
    if (request.object().isEmpty()) {
      return request.evidence();
    }
    String ref = request.object().get();
    if (folder.findObject(ref).isEmpty()) {
      List<String> refs = new ArrayList<>();
      for (LibraryFile file : folder.scan()) {
        if (file.kind() == LibraryFile.Kind.OBJECT) {
          refs.add(file.name());
        }
      }
      List<String> near = Nearest.to(ref, refs, 3);
      throw new ChangeRefusedException(
          "no piece of yours has the reference "
              + ref
              + (near.isEmpty()
                  ? "; merese object add records it"
                  : "; did you mean " + String.join(" or ", near) + "?"));
    }
    return "object " + ref + (request.evidence().isBlank() ? "" : ": " + request.evidence());
  }

  private void coin(List<Coinage> coinages, Coinage coined) {
    Thesaurus thesaurus = vocabulary.thesaurus();
    for (int i = 0; i < coinages.size(); i++) {
      Coinage there = coinages.get(i);
      if (!thesaurus.areSameWords(there.label(), coined.label())) {
        continue;
      } else if (there.concept().equals(coined.concept())) {
        coinages.set(i, coined);
        effects.add(new Effect(Sort.RENAMED, words(coined)));
        effects.add(new Effect(Sort.DROPPED, "before: " + words(there)));
        return;
      }
      effects.add(
          new Effect(
              Sort.LOOK_AT, "“" + there.label() + "” is coined for " + there.concept() + " too"));
    }
    coinages.add(coined);
    effects.add(new Effect(Sort.ADDED, words(coined)));
  }

  private static String words(Coinage coinage) {
    return "“"
        + coinage.label()
        + "”, coined"
        + coinage.coiner().map(by -> " by " + by).orElse("")
        + coinage.on().map(on -> ", " + on).orElse("")
        + coinage.evidence().map(evidence -> ", from " + evidence).orElse("");
  }

  private void label(Concept concept, String label) {
    Thesaurus thesaurus = vocabulary.thesaurus();
    Draft draft = Draft.of(concept);
    if (draft.labels().stream().noneMatch(l -> thesaurus.areSameWords(l.text(), label))) {
      new Labels(vocabulary, effects).add(draft, draft.alternatives, label, "alternative label");
      vocabulary.replace(concept, draft.make());
    } else {
      new Labels(vocabulary, effects).shared(Concept.Label.of(label), concept.id());
    }
  }

  private void warn(Mine mine, Coinage coined) {
    PrintedUses uses =
        PrintedUses.of(folder, vocabulary.thesaurus(), coined.concept(), coined.label());
    List<Use> others = new ArrayList<>(uses.namings());
    others.removeAll(uses.words());
    if (!others.isEmpty()) {
      lookAt(
          PrintedUses.sources(others)
              + (others.stream().map(Use::source).distinct().count() == 1 ? " names" : " name")
              + " it in print, as “"
              + others.get(0).printed()
              + "”: the coined label stays a variant of yours");
    }
    Map<String, List<Use>> byMeaning = new LinkedHashMap<>();
    uses.words()
        .forEach(u -> byMeaning.computeIfAbsent(u.concept(), c -> new ArrayList<>()).add(u));
    byMeaning.forEach((meaning, of) -> lookAt(printed(meaning, of, coined)));
    for (Preference preference : mine.preferences()) {
      if (preference.concept().equals(coined.concept())
          && !preference.label().equals(coined.label())) {
        lookAt("your preference “" + preference.label() + "” heads the answers still");
      }
    }
  }

  private static String printed(String meaning, List<Use> uses, Coinage coined) {
    Use first = uses.get(0);
    String who =
        uses.size() == 1
            ? first.source() + ", " + first.place() + " prints"
            : References.many(uses.size(), "note") + " (" + PrintedUses.sources(uses) + ") print";
    return who
        + " “"
        + first.printed()
        + "”"
        + (meaning.equals(coined.concept())
            ? " for it: the label is not yours alone"
            : meaning.isEmpty() ? ", with a meaning that is not stated" : " for " + meaning);
  }

  private void lookAt(String what) {
    effects.add(new Effect(Sort.LOOK_AT, what));
  }
}
