package merese.vocabulary;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collection;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import merese.model.Concept;
import merese.model.Facet;
import merese.model.Homonym;
import merese.vocabulary.SkosFacts.Label;
import merese.vocabulary.SkosFacts.Pair;

/**
 * Says whether a vocabulary is sound: by the six integrity conditions of the W3C SKOS Reference
 * (Recommendation of 18 August 2009), and by what we ask beyond them.
 *
 * <p>The SKOS conditions are checked on all that the Reference entails, not on the bare statements.
 */
public final class SkosIntegrity {
  private static final List<String> LABEL_PROPERTIES =
      List.of(Skos.PREF_LABEL, Skos.ALT_LABEL, Skos.HIDDEN_LABEL);

  private final List<Violation> violations = new ArrayList<>();

  private SkosIntegrity() {}

  /** What can be wrong. */
  public enum Condition {
    /** ConceptScheme is disjoint with Concept. */
    S9,
    /** prefLabel, altLabel and hiddenLabel are pairwise disjoint. */
    S13,
    /** No resource has more than one prefLabel in a language. */
    S14,
    /** related is disjoint with broaderTransitive. */
    S27,
    /** Collection is disjoint with Concept and with ConceptScheme. */
    S37,
    /** exactMatch is disjoint with broadMatch and with relatedMatch. */
    S46,
    /** A concept is its own ancestor. SKOS allows it; a vocabulary to search by must not. */
    BROADER_CYCLE,
    /** Something names a concept that is not there. */
    UNKNOWN_CONCEPT,
    /** Two concepts have one id. */
    SAME_ID,
    /** A concept is in a facet that is not there. */
    UNKNOWN_FACET
  }

  /**
   * One thing that is wrong.
   *
   * @param subjects the ids or IRIs concerned, the first of them the one to mend
   */
  public record Violation(Condition condition, List<String> subjects, String wrong, String remedy) {
    public Violation {
      subjects = List.copyOf(subjects);
    }
  }

  /** What is wrong with a graph by SKOS's own conditions; empty for a consistent one. */
  public static List<Violation> check(SkosGraph graph) {
    SkosIntegrity check = new SkosIntegrity();
    check.graph(new SkosFacts(graph));
    return Collections.unmodifiableList(check.violations);
  }

  /** What is wrong with a vocabulary, by SKOS's conditions and ours. */
  public static List<Violation> check(
      Collection<Facet> facets, Collection<Concept> concepts, Collection<Homonym> register) {
    SkosIntegrity check = new SkosIntegrity();
    check.names(facets, concepts, register);
    Thesaurus thesaurus =
        Thesaurus.of(List.copyOf(facets), List.copyOf(concepts), List.copyOf(register));
    // No id has spaces, so that the scheme's name is none.
    SkosFacts facts = new SkosFacts(SkosGraph.of(thesaurus, "", "this vocabulary", "en"));
    check.graph(facts);
    for (List<String> cycle : facts.cycles()) {
      check.add(
          Condition.BROADER_CYCLE,
          cycle,
          cycle.size() == 1
              ? cycle.get(0) + " is broader than itself"
              : "each of these is broader than the one before and the first than the last: "
                  + String.join(", ", cycle),
          "take one of these ids out of \"broader\" where it does not belong");
    }
    return Collections.unmodifiableList(check.violations);
  }

  private void graph(SkosFacts facts) {
    disjoint(Condition.S9, facts.schemes, "a concept scheme", facts.concepts, "a concept");
    labels(facts);
    for (Pair pair : facts.related) {
      if (facts.isAbove(pair.b(), pair.a()) || facts.isAbove(pair.a(), pair.b())) {
        add(
            Condition.S27,
            List.of(pair.a(), pair.b()),
            pair.a() + " is related to " + pair.b() + ", and one is an ancestor of the other",
            "keep them related or keep one broader, not both");
      }
    }
    disjoint(Condition.S37, facts.collections, "a collection", facts.concepts, "a concept");
    disjoint(Condition.S37, facts.collections, "a collection", facts.schemes, "a concept scheme");
    matches(facts, facts.broadMatches, "a broad match");
    matches(facts, facts.relatedMatches, "a related match");
  }

  private void disjoint(
      Condition condition, Set<String> ones, String one, Set<String> others, String other) {
    for (String resource : ones) {
      if (others.contains(resource)) {
        add(
            condition,
            List.of(resource),
            resource + " is both " + one + " and " + other,
            "find what names it as the one (its type, or a relation that only such a thing has)"
                + " and let it be the other alone");
      }
    }
  }

  private void labels(SkosFacts facts) {
    for (String subject : facts.labels.keySet()) {
      Map<Label, String> kinds = new LinkedHashMap<>();
      for (String property : LABEL_PROPERTIES) {
        for (Label label : facts.labels(subject, property)) {
          String other = kinds.putIfAbsent(label, property);
          if (other != null) {
            add(
                Condition.S13,
                List.of(subject),
                quoted(label)
                    + " is both "
                    + local(other)
                    + " and "
                    + local(property)
                    + " of "
                    + subject,
                "keep it as one of the two");
          }
        }
      }
      preferredLabels(subject, facts.labels(subject, Skos.PREF_LABEL));
    }
  }

  private void preferredLabels(String subject, Set<Label> labels) {
    Map<String, Label> byLanguage = new LinkedHashMap<>();
    for (Label label : labels) {
      Label other = byLanguage.putIfAbsent(label.language(), label);
      if (other != null) {
        add(
            Condition.S14,
            List.of(subject),
            subject
                + " has two preferred labels in one language, "
                + quoted(other)
                + " and "
                + quoted(label),
            "keep one as prefLabel and make the other an altLabel");
      }
    }
  }

  private void matches(SkosFacts facts, Set<Pair> pairs, String kind) {
    for (Pair pair : pairs) {
      if (facts.sameByExactMatch(pair.a(), pair.b())) {
        add(
            Condition.S46,
            List.of(pair.a(), pair.b()),
            pair.b() + " is an exact match of " + pair.a() + " and also " + kind,
            "keep the exact match or the other, not both");
      }
    }
  }

  private void names(
      Collection<Facet> facets, Collection<Concept> concepts, Collection<Homonym> register) {
    Set<String> facetIds = new LinkedHashSet<>();
    facets.forEach(facet -> facetIds.add(facet.id()));
    Set<String> ids = new LinkedHashSet<>();
    for (Concept concept : concepts) {
      if (!ids.add(concept.id())) {
        add(
            Condition.SAME_ID,
            List.of(concept.id()),
            "two concepts have the id " + concept.id(),
            "give one of them an id of its own, or make them one");
      }
      if (!facetIds.contains(concept.facet())) {
        add(
            Condition.UNKNOWN_FACET,
            List.of(concept.id()),
            concept.id() + " is in the facet \"" + concept.facet() + "\", which is not there",
            "use one of these: " + String.join(", ", facetIds));
      }
    }
    for (Concept concept : concepts) {
      for (String broader : concept.broader()) {
        known(ids, broader, concept.id(), concept.id() + " has under \"broader\" ");
      }
      for (Concept.LookAlike other : concept.lookAlikes()) {
        known(ids, other.concept(), concept.id(), concept.id() + " has among its look-alikes ");
      }
    }
    for (Homonym homonym : register) {
      for (String id : homonym.concepts()) {
        known(ids, id, homonym.word(), "the register has for \"" + homonym.word() + "\" ");
      }
    }
  }

  private void known(Set<String> ids, String id, String subject, String where) {
    if (!ids.contains(id)) {
      add(
          Condition.UNKNOWN_CONCEPT,
          Arrays.asList(subject, id),
          where + "the concept " + id + ", which is not there",
          "correct the id or add the concept");
    }
  }

  private void add(Condition condition, List<String> subjects, String wrong, String remedy) {
    violations.add(new Violation(condition, subjects, wrong, remedy));
  }

  private static String quoted(Label label) {
    String tag = label.language().isEmpty() ? "" : " (" + label.language() + ")";
    return "\"" + label.text() + "\"" + tag;
  }

  private static String local(String property) {
    return property.substring(Skos.NAMESPACE.length());
  }
}
