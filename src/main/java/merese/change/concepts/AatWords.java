package merese.change.concepts;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import merese.exchange.skos.AatTerms;
import merese.exchange.skos.AatTerms.AatConcept;
import merese.model.Concept;
import merese.model.Concept.Match.Kind;
import merese.vocabulary.Folding;

/** The terms of a table by their folded words. */
final class AatWords {
  private record Entry(AatConcept concept, String term, boolean preferred) {}

  private final Map<String, List<Entry>> byWord = new HashMap<>();

  AatWords(AatTerms terms) {
    for (AatConcept concept : terms.concepts()) {
      for (int i = 0; i < concept.terms().size(); i++) {
        String term = concept.terms().get(i);
        String key = Folding.key(unqualified(term));
        if (!key.isEmpty()) {
          Entry entry = new Entry(concept, term, i == 0);
          byWord.computeIfAbsent(key, k -> new ArrayList<>()).add(entry);
        }
      }
    }
  }

  /**
   * One concept there that shares words with one of ours.
   *
   * @param term the best of the shared words, as printed there
   * @param ourPreferred whether it is our preferred label
   * @param theirPreferred whether it is the preferred term there
   * @param differ whether the scopes plainly differ
   */
  record Hit(
      AatConcept to, String term, boolean ourPreferred, boolean theirPreferred, boolean differ) {
    Kind kind() {
      return ourPreferred && !differ ? Kind.EXACT_MATCH : Kind.CLOSE_MATCH;
    }

    String why() {
      String side = theirPreferred ? "the preferred term" : "a term";
      return (ourPreferred ? "our preferred label is " : "our other label “" + term + "” is ")
          + side
          + " there"
          + (differ ? "; the scopes differ" : "");
    }

    private int rank() {
      return (ourPreferred ? 0 : 2) + (theirPreferred ? 0 : 1);
    }
  }

  /** What shares words with a concept of ours, by its number; of several words the best. */
  Map<String, Hit> of(Concept concept) {
    Map<String, Hit> hits = new LinkedHashMap<>();
    boolean uncertain = concept.status() == Concept.Status.UNCERTAIN;
    boolean first = true;
    for (Concept.Label label : Vocabulary.labels(concept)) {
      for (Entry entry : byWord.getOrDefault(Vocabulary.key(label), List.of())) {
        boolean differ =
            uncertain
                || label.scope().isPresent()
                || !unqualified(entry.term()).equals(entry.term());
        Hit hit = new Hit(entry.concept(), entry.term(), first, entry.preferred(), differ);
        hits.merge(entry.concept().id(), hit, (old, now) -> now.rank() < old.rank() ? now : old);
      }
      first = false;
    }
    return hits;
  }

  /** A term without the qualifier in brackets at its end. */
  private static String unqualified(String term) {
    int open = term.lastIndexOf(" (");
    return open > 0 && term.endsWith(")") ? term.substring(0, open) : term;
  }
}
