package merese.change.vocabulary;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import merese.change.Effect;
import merese.change.Effect.Sort;
import merese.change.vocabulary.VocabularyChange.StayingNote;
import merese.model.Concept;
import merese.store.ChangeSet;
import merese.store.LibraryFolder;
import merese.vocabulary.Thesaurus;

/**
 * Adds, renames, merges, splits and moves concepts. Whatever names a concept follows it; no term as
 * printed ever changes; a change that would break a condition of SKOS is refused.
 */
public final class ConceptChange {
  private final LibraryFolder folder;
  private final Sink sink;
  private final WholeVocabulary vocabulary;
  private final List<Effect> effects = new ArrayList<>();
  private final List<StayingNote> staying = new ArrayList<>();

  private ConceptChange(LibraryFolder folder, Sink sink) {
    this.folder = folder;
    this.sink = sink;
    this.vocabulary = WholeVocabulary.read(folder);
  }

  /** What would be done; nothing is changed. */
  public static VocabularyChange preview(LibraryFolder folder, ConceptRequest request) {
    return new ConceptChange(folder, Sink.counting()).make(request);
  }

  /** Does it, all or nothing; what is returned has been done. */
  public static VocabularyChange apply(LibraryFolder folder, ConceptRequest request) {
    try (ChangeSet change = folder.change(request.words())) {
      VocabularyChange made = new ConceptChange(folder, Sink.into(change)).make(request);
      change.commit();
      return made;
    }
  }

  private VocabularyChange make(ConceptRequest request) {
    Labels labels = new Labels(vocabulary, effects);
    String id;
    if (request instanceof ConceptRequest.Add add) {
      Soundness sound = new Soundness(vocabulary);
      id = new Adding(vocabulary, labels, effects).add(add);
      sound.require(vocabulary);
    } else if (request instanceof ConceptRequest.Rename rename) {
      id = rename(rename, labels);
    } else if (request instanceof ConceptRequest.Describe describe) {
      Soundness sound = new Soundness(vocabulary);
      id = labels.describe(describe);
      sound.require(vocabulary);
    } else if (request instanceof ConceptRequest.Merge merge) {
      id = merge(merge);
    } else if (request instanceof ConceptRequest.Split split) {
      Soundness sound = new Soundness(vocabulary);
      Splitting splitting = new Splitting(folder, vocabulary, labels, effects);
      id = splitting.split(split, sink);
      staying.addAll(splitting.staying());
      sound.require(vocabulary);
    } else {
      Soundness sound = new Soundness(vocabulary);
      id =
          request instanceof ConceptRequest.Move move
              ? new Moving(vocabulary, effects).move(move)
              : new Mistaking(vocabulary, effects).state((ConceptRequest.Mistaken) request);
      sound.require(vocabulary);
    }
    vocabulary.stage(sink);
    effects.sort(Comparator.comparing(Effect::sort));
    Concept concept = vocabulary.concept(id);
    return new VocabularyChange(
        id, Thesaurus.display(concept.preferred()), effects, staying, sink.files());
  }

  private String rename(ConceptRequest.Rename rename, Labels labels) {
    Renaming renaming = new Renaming(vocabulary, labels, effects);
    String to = rename.id().orElse(rename.concept());
    Soundness sound = new Soundness(vocabulary, rename.concept(), to);
    renaming.rename(rename, folder.readMine().value());
    sound.require(vocabulary);
    if (!to.equals(rename.concept())) {
      new References(folder, rename.concept(), to, effects).follow(sink);
      pointOut(rename.concept());
    }
    return to;
  }

  private String merge(ConceptRequest.Merge merge) {
    Soundness sound = new Soundness(vocabulary, merge.gone(), merge.kept());
    new Merging(vocabulary, effects).merge(merge);
    sound.require(vocabulary);
    new References(folder, merge.gone(), merge.kept(), effects).follow(sink);
    effects.add(new Effect(Sort.DROPPED, "the concept " + merge.gone()));
    pointOut(merge.gone());
    return merge.kept();
  }

  private void pointOut(String gone) {
    for (String file : References.mentions(folder, gone)) {
      effects.add(new Effect(Sort.LOOK_AT, file + " speaks of " + gone + " in its words"));
    }
    effects.add(
        new Effect(
            Sort.LOOK_AT, "scripts outside the library that mark [term " + gone + "] stay so"));
  }
}
