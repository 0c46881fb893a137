package merese.change.vocabulary;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import merese.change.ChangeRefusedException;
import merese.model.Concept;
import merese.vocabulary.SkosIntegrity;
import merese.vocabulary.SkosIntegrity.Condition;
import merese.vocabulary.SkosIntegrity.Violation;
import merese.vocabulary.Thesaurus;

/**
 * That a vocabulary does not become less sound than it was, by the conditions of the SKOS Reference
 * (W3C Recommendation of 18 August 2009) and ours. S27 is asked of every stated look-alike, not
 * only of those that an export would say are related.
 */
final class Soundness {
  private final Set<Object> known = new HashSet<>();

  /**
   * @param gone a concept that becomes part of another, or is called otherwise
   * @param kept that other
   */
  Soundness(WholeVocabulary before, String gone, String kept) {
    for (Violation violation : violations(before)) {
      known.add(mark(violation, gone, kept));
    }
    for (List<String> pair : mistakenKin(before)) {
      known.add(mapped(pair, gone, kept));
    }
  }

  Soundness(WholeVocabulary before) {
    this(before, "", "");
  }

  private static List<Violation> violations(WholeVocabulary vocabulary) {
    return SkosIntegrity.check(vocabulary.facets(), vocabulary.concepts(), vocabulary.register());
  }

  private static Object mark(Violation violation, String gone, String kept) {
    return List.of(violation.condition(), mapped(violation.subjects(), gone, kept));
  }

  private static Set<String> mapped(List<String> ids, String gone, String kept) {
    Set<String> mapped = new HashSet<>();
    ids.forEach(id -> mapped.add(id.equals(gone) ? kept : id));
    return mapped;
  }

  /** The stated look-alikes of which one is broader than the other. */
  private static List<List<String>> mistakenKin(WholeVocabulary vocabulary) {
    Thesaurus thesaurus = vocabulary.thesaurus();
    List<List<String>> pairs = new ArrayList<>();
    for (Concept concept : vocabulary.concepts()) {
      for (Concept.LookAlike other : concept.lookAlikes()) {
        if (thesaurus.areRelatedByHierarchy(concept.id(), other.concept())) {
          pairs.add(List.of(concept.id(), other.concept()));
        }
      }
    }
    return pairs;
  }

  /**
   * Refuses what is less sound.
   *
   * @throws ChangeRefusedException with the condition that would be broken
   */
  void require(WholeVocabulary after) {
    for (Violation violation : violations(after)) {
      if (!known.contains(mark(violation, "", ""))) {
        throw new ChangeRefusedException(
            "this would leave the vocabulary unsound ("
                + name(violation.condition())
                + "): "
                + violation.wrong()
                + "; "
                + violation.remedy()
                + "; nothing was changed");
      }
    }
    for (List<String> pair : mistakenKin(after)) {
      if (!known.contains(mapped(pair, "", ""))) {
        throw new ChangeRefusedException(
            "this would leave the vocabulary unsound ("
                + name(Condition.S27)
                + "): "
                + pair.get(0)
                + " and "
                + pair.get(1)
                + " would be look-alikes, and one broader than the other; the one or the other can"
                + " be (merese concept look-alike "
                + pair.get(0)
                + " "
                + pair.get(1)
                + " --none takes the look-alike away); nothing was changed");
      }
    }
  }

  private static String name(Condition condition) {
    return switch (condition) {
      case S9, S13, S14, S27, S37, S46 -> condition.name() + " of the SKOS Reference";
      case BROADER_CYCLE -> "a circle of broader concepts";
      case UNKNOWN_CONCEPT -> "a concept that is not there";
      case SAME_ID -> "one id for two concepts";
      case UNKNOWN_FACET -> "a facet that is not there";
    };
  }
}
