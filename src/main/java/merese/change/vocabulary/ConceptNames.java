package merese.change.vocabulary;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import merese.change.ChangeRefusedException;
import merese.model.Concept;
import merese.model.Facet;
import merese.model.Mine;
import merese.store.LibraryFolder;
import merese.vocabulary.Folding;
import merese.vocabulary.NearTerm;
import merese.vocabulary.PhraseMatch;
import merese.vocabulary.Thesaurus;

/**
 * Which concept is meant by what a user types: its id, a label of it (R7), or a label of the user's
 * own. Only the vocabulary is asked, not what sources print.
 */
public final class ConceptNames {
  private static final int MOST_NEAR = 3;

  private final Thesaurus thesaurus;
  private final Mine mine;

  private ConceptNames(Thesaurus thesaurus, Mine mine) {
    this.thesaurus = thesaurus;
    this.mine = mine;
  }

  public static ConceptNames of(LibraryFolder folder) {
    return new ConceptNames(WholeVocabulary.read(folder).thesaurus(), folder.readMine().value());
  }

  /** A concept that may be meant. */
  public record Choice(String id, String label, String definition) {}

  /**
   * What was typed may mean these, the likeliest first; there is one at least.
   *
   * @param ask whether it has to be asked which, be it of one
   */
  public record Named(String typed, List<Choice> choices, boolean ask) {
    public Named {
      choices = List.copyOf(choices);
    }

    /** The one that is meant, where nothing has to be asked. */
    public Optional<String> id() {
      return ask ? Optional.empty() : Optional.of(choices.get(0).id());
    }
  }

  /**
   * What was typed may mean.
   *
   * @throws ChangeRefusedException where it means nothing, naming what is near it
   */
  public Named named(String typed) {
    String phrase = typed.strip();
    if (thesaurus.concept(phrase).isPresent()) {
      return new Named(typed, List.of(choice(thesaurus.concept(phrase).get())), false);
    }
    PhraseMatch match = thesaurus.match(phrase, Optional.empty());
    Map<String, Choice> choices = new LinkedHashMap<>();
    match.meanings().forEach(m -> choices.putIfAbsent(m.concept().id(), choice(m.concept())));
    mine.preferences().forEach(p -> own(phrase, p.label(), p.concept(), choices));
    mine.coinages().forEach(c -> own(phrase, c.label(), c.concept(), choices));
    boolean lacking = choices.isEmpty();
    if (lacking) {
      match.completions().forEach(c -> choices.putIfAbsent(c.concept().id(), choice(c.concept())));
    }
    if (choices.isEmpty()) {
      throw new ChangeRefusedException(unknown(phrase));
    }
    boolean ask = lacking || choices.size() > 1 || match.register().isPresent();
    return new Named(typed, List.copyOf(choices.values()), ask);
  }

  private void own(String phrase, String label, String id, Map<String, Choice> choices) {
    Optional<Concept> concept = thesaurus.concept(id);
    if (concept.isPresent() && thesaurus.areSameWords(phrase, label)) {
      choices.putIfAbsent(id, choice(concept.get()));
    }
  }

  /** The facet of a concept, by its id. */
  public Optional<String> facetOf(String concept) {
    return thesaurus.concept(concept).map(Concept::facet);
  }

  /** The facet of a name: its id, or its noun. */
  public Facet facet(String typed) {
    return facet(thesaurus, typed);
  }

  /**
   * An id for a new concept: its facet's, then the words of its label but the facet's own noun, as
   * in ring-bladed for "bladed ring"; with a number where there is one of that id already.
   *
   * @param facet an id or noun; one that is made with the concept too
   * @return empty where the label has no letter or digit that an id may have
   */
  public Optional<String> newId(String facet, String label) {
    Optional<Facet> known = thesaurus.facet(facet.strip());
    String prefix = known.map(Facet::id).orElse(facet.strip());
    Set<String> left = new HashSet<>(Folding.words(prefix));
    known.flatMap(Facet::headNoun).ifPresent(noun -> left.addAll(Folding.words(noun)));
    List<String> words = new ArrayList<>();
    for (String word : Folding.words(label)) {
      String plain = word.replaceAll("[^a-z0-9]", "");
      if (!left.contains(word) && !plain.isEmpty()) {
        words.add(plain);
      }
    }
    if (words.isEmpty()) {
      return Optional.empty();
    }
    String id = prefix + "-" + String.join("-", words);
    String free = id;
    for (int number = 2; thesaurus.concept(free).isPresent(); number++) {
      free = id + "-" + number;
    }
    return Optional.of(free);
  }

  static Facet facet(Thesaurus thesaurus, String typed) {
    return thesaurus
        .facet(typed.strip())
        .orElseThrow(
            () ->
                new ChangeRefusedException(
                    "there is no facet “"
                        + typed
                        + "”; the facets are "
                        + String.join(", ", thesaurus.facets().stream().map(Facet::id).toList())
                        + ", and --new-facet makes another"));
  }

  private static Choice choice(Concept concept) {
    return new Choice(concept.id(), Thesaurus.display(concept.preferred()), concept.definition());
  }

  private String unknown(String phrase) {
    List<String> near = new ArrayList<>();
    for (NearTerm term : thesaurus.nearTerms(phrase, MOST_NEAR)) {
      near.add(Thesaurus.display(term.label()));
    }
    return "“"
        + phrase
        + "” is neither the id nor a label of a concept"
        + (near.isEmpty()
            ? "; merese concept add makes a new one"
            : "; near it: " + String.join("; ", near));
  }
}
