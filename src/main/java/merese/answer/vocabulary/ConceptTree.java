package merese.answer.vocabulary;

import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import merese.answer.UnknownConceptException;
import merese.model.Concept;
import merese.model.Concept.Label;
import merese.model.Facet;
import merese.model.Mine;
import merese.model.Naming;
import merese.search.NoteCriterion;
import merese.shelf.Shelf;
import merese.shelf.SourcedNote;
import merese.vocabulary.Folding;
import merese.vocabulary.NearTerm;
import merese.vocabulary.Thesaurus;

/**
 * The concepts of the vocabulary, by facet, what is narrower below what is broader.
 *
 * @param find the words that were looked for; empty for all concepts
 * @param facet the id of the facet that this is limited to
 * @param facets all facets, in the vocabulary's order
 * @param groups the facets shown, each with its concepts; none where words are looked for
 * @param found the concepts with a label that has the words, those whose whole label it is first
 * @param nearTerms labels like the words, where nothing has them
 */
public record ConceptTree(
    Optional<String> find,
    Optional<String> facet,
    List<FacetLine> facets,
    List<Group> groups,
    List<Branch> found,
    List<String> nearTerms) {
  private static final int NEAR_TERMS = 5;

  /** A facet, and how many concepts it has. */
  public record FacetLine(String id, Optional<String> headNoun, int concepts) {}

  /** The concepts of a facet; {@code top} are those that are below nothing in it. */
  public record Group(FacetLine facet, List<Branch> top) {}

  /**
   * A concept.
   *
   * @param label the preferred one, with its scope
   * @param alternatives with their scopes
   * @param hidden labels by which it is found, and which are not for show
   * @param myTerm the label that the user prefers
   * @param coined labels of the user's own
   * @param sources how many sources have a note that names it; the user's own works do not count
   * @param withNarrower the same with all that is narrower
   * @param again whether it stands, with what is narrower, in an earlier place of the tree
   */
  public record Branch(
      String id,
      String label,
      List<String> alternatives,
      List<String> hidden,
      Optional<String> myTerm,
      List<String> coined,
      String definition,
      boolean uncertain,
      int sources,
      int withNarrower,
      boolean again,
      List<Branch> narrower) {
    /** How many concepts are below it, in this tree. */
    public int size() {
      int size = 0;
      for (Branch each : narrower) {
        size += 1 + each.size();
      }
      return size;
    }
  }

  /**
   * Reads the tree.
   *
   * @param facet an id or noun
   * @throws UnknownConceptException where there is no such facet
   */
  public static ConceptTree of(Shelf shelf, Optional<String> find, Optional<String> facet) {
    return shelf.ask(s -> new Maker(s).make(find, facet));
  }

  private static final class Maker {
    private final Thesaurus thesaurus;
    private final Shelf shelf;
    private final Map<String, Set<String>> sources = new HashMap<>();
    private final Map<String, String> mine = new HashMap<>();
    private final Map<String, List<String>> coined = new HashMap<>();
    private final Set<String> placed = new HashSet<>();

    Maker(Shelf shelf) {
      this.thesaurus = shelf.thesaurus();
      this.shelf = shelf;
      for (Mine.Preference preference : shelf.mine().preferences()) {
        mine.putIfAbsent(preference.concept(), preference.label());
      }
      for (Mine.Coinage coinage : shelf.mine().coinages()) {
        coined.computeIfAbsent(coinage.concept(), c -> new ArrayList<>()).add(coinage.label());
      }
    }

    /** Which sources name each of these concepts, and what is narrower. */
    private void readSources(Collection<Concept> concepts) {
      List<NoteCriterion> criteria = new ArrayList<>();
      concepts.forEach(concept -> criteria.add(new NoteCriterion.Means(concept.id())));
      for (SourcedNote sourced : shelf.notes(criteria)) {
        if (!sourced.source().mine()) {
          for (Naming naming : sourced.note().namings()) {
            naming
                .concept()
                .ifPresent(
                    id ->
                        sources
                            .computeIfAbsent(id, c -> new HashSet<>())
                            .add(sourced.source().key()));
          }
        }
      }
    }

    ConceptTree make(Optional<String> find, Optional<String> named) {
      Optional<String> facet =
          named.map(
              name ->
                  thesaurus
                      .facet(name)
                      .orElseThrow(() -> UnknownConceptException.ofFacet(thesaurus, name))
                      .id());
      Collection<Concept> shown =
          find.isPresent()
              ? found(find.get(), facet)
              : thesaurus.concepts().stream()
                  .filter(c -> facet.filter(f -> !f.equals(c.facet())).isEmpty())
                  .toList();
      readSources(shown);
      List<FacetLine> facets = new ArrayList<>();
      List<Group> groups = new ArrayList<>();
      for (Facet each : thesaurus.facets()) {
        List<Concept> of =
            thesaurus.concepts().stream().filter(c -> c.facet().equals(each.id())).toList();
        FacetLine line = new FacetLine(each.id(), each.headNoun(), of.size());
        facets.add(line);
        if (find.isEmpty() && facet.filter(f -> !f.equals(each.id())).isEmpty()) {
          groups.add(new Group(line, top(of)));
        }
      }
      List<Branch> found = new ArrayList<>();
      List<String> near = new ArrayList<>();
      if (find.isPresent()) {
        for (Concept concept : shown) {
          found.add(alone(concept));
        }
        if (found.isEmpty()) {
          for (NearTerm term : thesaurus.nearTerms(find.get(), NEAR_TERMS)) {
            near.add(Thesaurus.display(term.label()));
          }
        }
      }
      return new ConceptTree(find, facet, facets, groups, found, near);
    }

    private Collection<Concept> found(String phrase, Optional<String> facet) {
      Set<Concept> found = new LinkedHashSet<>();
      thesaurus.concept(phrase).ifPresent(found::add);
      thesaurus.match(phrase, Optional.empty()).meanings().forEach(m -> found.add(m.concept()));
      thesaurus.match(phrase, Optional.empty()).completions().forEach(c -> found.add(c.concept()));
      List<String> words = Folding.words(phrase);
      for (Concept concept : thesaurus.concepts()) {
        for (String label : words(concept)) {
          if (Thesaurus.occurs(words, Folding.words(label))) {
            found.add(concept);
          }
        }
      }
      found.removeIf(c -> facet.isPresent() && !facet.get().equals(c.facet()));
      return found;
    }

    private List<String> words(Concept concept) {
      List<String> words = new ArrayList<>(thesaurus.wordsFor(concept.id()));
      if (mine.containsKey(concept.id())) {
        words.add(mine.get(concept.id()));
      }
      words.addAll(coined.getOrDefault(concept.id(), List.of()));
      return words;
    }

    private List<Branch> top(List<Concept> ofFacet) {
      Set<String> ids = new HashSet<>();
      ofFacet.forEach(c -> ids.add(c.id()));
      List<Branch> top = new ArrayList<>();
      for (Concept concept : ofFacet) {
        if (concept.broader().stream().noneMatch(ids::contains)) {
          top.add(branch(concept));
        }
      }
      for (Concept concept : ofFacet) {
        if (!placed.contains(concept.id())) {
          top.add(branch(concept)); // one of a circle of broader concepts
        }
      }
      return top;
    }

    private Branch branch(Concept concept) {
      boolean again = !placed.add(concept.id());
      List<Branch> narrower = new ArrayList<>();
      if (!again) {
        for (String id : thesaurus.children(concept.id())) {
          thesaurus
              .concept(id)
              .filter(c -> c.facet().equals(concept.facet()))
              .ifPresent(c -> narrower.add(branch(c)));
        }
      }
      return branch(concept, again, narrower);
    }

    private Branch alone(Concept concept) {
      return branch(concept, false, List.of());
    }

    private Branch branch(Concept concept, boolean again, List<Branch> narrower) {
      Set<String> all = new HashSet<>(sources.getOrDefault(concept.id(), Set.of()));
      int own = all.size();
      for (String id : thesaurus.narrower(concept.id())) {
        all.addAll(sources.getOrDefault(id, Set.of()));
      }
      return new Branch(
          concept.id(),
          Thesaurus.display(concept.preferred()),
          display(concept.alternatives()),
          display(concept.hidden()),
          Optional.ofNullable(mine.get(concept.id())),
          coined.getOrDefault(concept.id(), List.of()),
          concept.definition(),
          concept.status() == Concept.Status.UNCERTAIN,
          own,
          all.size(),
          again,
          narrower);
    }

    private static List<String> display(List<Label> labels) {
      return labels.stream().map(Thesaurus::display).toList();
    }
  }
}
