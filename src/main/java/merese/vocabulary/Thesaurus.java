package merese.vocabulary;

import java.util.ArrayList;
import java.util.Collection;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import merese.model.Concept;
import merese.model.Facet;
import merese.model.Homonym;

/**
 * The agreed vocabulary: what a phrase may mean, what is broader or narrower, what is mistaken for
 * what.
 *
 * <p>Immutable, and safe for several threads. Making one is cheap; what only some questions need is
 * made when it is first asked for. An unsound vocabulary (a cycle, an unknown id, two concepts of
 * one id) never makes a question hang or fail; {@link SkosIntegrity} is what refuses it.
 */
public final class Thesaurus {
  private final Map<String, Facet> facets = new LinkedHashMap<>();
  private final Concepts concepts;
  private final Hierarchy hierarchy;
  private final LookAlikes lookAlikes;
  private final List<Homonym> register;
  private LabelIndex labels;
  private PrintedTerms printedTerms;
  private List<FacetWords> lenient;

  private Thesaurus(List<Facet> facets, Concepts concepts, List<Homonym> register) {
    for (Facet facet : facets) {
      this.facets.putIfAbsent(facet.id(), facet);
    }
    this.concepts = concepts;
    this.hierarchy = new Hierarchy(concepts);
    this.lookAlikes = new LookAlikes(hierarchy);
    this.register = List.copyOf(register);
  }

  /** A thesaurus whose order is that of the lists; of two concepts with one id the first stands. */
  public static Thesaurus of(List<Facet> facets, List<Concept> concepts, List<Homonym> register) {
    return new Thesaurus(facets, new ConceptsAtHand(concepts), register);
  }

  /**
   * A thesaurus whose concepts are read as they are asked for; of facets the order is the list's.
   */
  public static Thesaurus of(List<Facet> facets, Concepts concepts, List<Homonym> register) {
    return new Thesaurus(facets, concepts, register);
  }

  public Collection<Facet> facets() {
    return Collections.unmodifiableCollection(facets.values());
  }

  public Collection<Concept> concepts() {
    return Collections.unmodifiableCollection(concepts.all().values());
  }

  public List<Homonym> register() {
    return register;
  }

  public Optional<Concept> concept(String id) {
    return Optional.ofNullable(concepts.find(id));
  }

  /** The facet of that id, or whose id or noun is the same word: "ring", "Rings". */
  public Optional<Facet> facet(String name) {
    Facet exact = facets.get(name);
    if (exact != null) {
      return Optional.of(exact);
    }
    String key = Folding.key(name);
    for (Facet facet : facets.values()) {
      if (key.equals(Folding.key(facet.id()))
          || (facet.headNoun().isPresent() && key.equals(Folding.key(facet.headNoun().get())))) {
        return Optional.of(facet);
      }
    }
    return Optional.empty();
  }

  /** The ids of all that is broader, nearest first, without {@code id}; empty for an unknown id. */
  public Set<String> broader(String id) {
    return hierarchy.ancestors(id);
  }

  /** The ids of all that is narrower, nearest first, without {@code id}. */
  public Set<String> narrower(String id) {
    return hierarchy.descendants(id);
  }

  /** The ids of what is directly narrower, in the order of the vocabulary. */
  public List<String> children(String id) {
    return concepts.narrower(id);
  }

  /** Whether {@code a} is broader than {@code b}, at whatever distance. */
  public boolean isBroader(String a, String b) {
    return hierarchy.ancestors(b).contains(a);
  }

  /** Whether a note that means {@code b} counts for {@code a}: the same or narrower. */
  public boolean covers(String a, String b) {
    return a.equals(b) || isBroader(a, b);
  }

  /**
   * What a concept or anything narrower is mistaken for, whichever side states it, less the concept
   * itself and anything broader or narrower. The concept's own pairs come first.
   */
  public List<LookAlikePair> lookAlikes(String id) {
    return lookAlikes.of(id);
  }

  /**
   * What a whole phrase may mean: the concepts with a label that folds to the same words, and those
   * that the register has for it.
   *
   * <p>A facet's optional words ("neck" among rings) may be there or not on either side, unless
   * they are the label's only noun ("step-cut neck"). Where a facet is given, the phrase may leave
   * out the facet's noun, or that one, and only that facet's concepts are meant. Where none is
   * given, what the phrase would be with a noun is offered as completions.
   *
   * @param facet a name that {@link #facet} knows; nothing is found for one that it does not
   */
  public PhraseMatch match(String phrase, Optional<String> facet) {
    PhraseMatcher matcher = new PhraseMatcher(labels(), facets.values());
    if (facet.isEmpty()) {
      return matcher.anywhere(phrase);
    }
    Optional<Facet> known = facet(facet.get());
    return known.isPresent() ? matcher.within(phrase, known.get()) : PhraseMatcher.nothing(phrase);
  }

  /**
   * Every concept one of whose labels or register words occurs in a printed term, longest
   * occurrence first; a facet's optional words may be missing or in between. A label that is then
   * no more than the facet's noun ("[neck] ring") gives way to a longer label around it.
   */
  public List<PossibleMeaning> possibleMeanings(String printed) {
    PrintedTerms terms;
    synchronized (this) {
      if (printedTerms == null) {
        printedTerms = new PrintedTerms(labels());
      }
      terms = printedTerms;
    }
    return terms.possible(Folding.words(printed));
  }

  /** What finds the names of this vocabulary on pages; made anew at each call. */
  public NamesOnPages namesOnPages() {
    return new NamesOnPages(labels());
  }

  /** Up to {@code atMost} concepts with a label that resembles the phrase, best first. */
  public List<NearTerm> nearTerms(String phrase, int atMost) {
    return new NearTerms(labels(), facets.values()).near(phrase, atMost);
  }

  /**
   * Whether a phrase occurs in a printed term: as consecutive whole words, both folded. An empty
   * phrase occurs nowhere.
   */
  public static boolean occurs(List<String> phraseWords, List<String> printedWords) {
    for (int at = 0; at + phraseWords.size() <= printedWords.size(); at++) {
      if (standsAt(phraseWords, printedWords, at)) {
        return true;
      }
    }
    return false;
  }

  /** A label with its scope: "bell (body)". */
  public static String display(Concept.Label label) {
    return label.scope().isEmpty()
        ? label.text()
        : label.text().concat(" (").concat(label.scope().get()).concat(")");
  }

  static boolean standsAt(List<String> words, List<String> printed, int at) {
    if (words.isEmpty() || at + words.size() > printed.size()) {
      return false;
    }
    for (int i = 0; i < words.size(); i++) {
      if (!words.get(i).equals(printed.get(at + i))) {
        return false;
      }
    }
    return true;
  }

  /** How an answer names a concept: its preferred label with its scope, or its id if unknown. */
  public String label(String id) {
    Concept concept = concepts.find(id);
    return concept == null ? id : display(concept.preferred());
  }

  /** Whether the two are the same or one is broader than the other, at whatever distance. */
  public boolean areRelatedByHierarchy(String a, String b) {
    return covers(a, b) || isBroader(b, a);
  }

  /** All words for a concept: its labels, and what the register has for it. */
  public Set<String> wordsFor(String id) {
    Set<String> words = new LinkedHashSet<>();
    Concept concept = concepts.find(id);
    if (concept != null) {
      words.add(concept.preferred().text());
      for (Concept.Label label : concept.alternatives()) {
        words.add(label.text());
      }
      for (Concept.Label label : concept.hidden()) {
        words.add(label.text());
      }
    }
    for (Homonym homonym : register) {
      if (homonym.concepts().contains(id)) {
        words.add(homonym.word());
      }
    }
    return words;
  }

  /**
   * A phrase as folded words, and again without the words that a facet makes optional, where the
   * facet's noun and something more is left: "bladed neck ring" is also "bladed ring", but "neck
   * ring" is not "ring".
   */
  public List<List<String>> forms(String phrase) {
    List<String> words = Folding.words(phrase);
    if (words.isEmpty()) {
      return List.of();
    }
    List<List<String>> forms = new ArrayList<>();
    forms.add(words);
    for (FacetWords of : lenient()) {
      List<String> rest = FacetWords.without(words, of.optional);
      if (rest.size() > 1 && rest.contains(of.noun) && !forms.contains(rest)) {
        forms.add(rest);
      }
    }
    return forms;
  }

  /** The facets whose labels may lack words. */
  private synchronized List<FacetWords> lenient() {
    if (lenient == null) {
      lenient = new ArrayList<>();
      for (Facet facet : facets.values()) {
        if (!facet.optionalWords().isEmpty()) {
          lenient.add(FacetWords.of(facet));
        }
      }
    }
    return lenient;
  }

  /** Whether two phrases are the same words in some of their {@link #forms}. */
  public boolean areSameWords(String a, String b) {
    List<List<String>> ofB = forms(b);
    for (List<String> form : forms(a)) {
      if (ofB.contains(form)) {
        return true;
      }
    }
    return false;
  }

  private synchronized LabelIndex labels() {
    if (labels == null) {
      labels = new LabelIndex(facets, concepts.all(), register);
    }
    return labels;
  }
}
