package merese.search;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import merese.search.FindQuery.Condition;
import merese.vocabulary.NearTerm;
import merese.vocabulary.Thesaurus;

/** What {@code concept:} may name: an id, or a label as printed anywhere in the vocabulary. */
final class FindConcepts {
  private static final int SUGGESTED = 3;

  private final String asked;
  private final Thesaurus thesaurus;

  FindConcepts(String asked, Thesaurus thesaurus) {
    this.asked = asked;
    this.thesaurus = thesaurus;
  }

  Set<String> of(Condition condition) {
    String name = condition.value();
    if (thesaurus.concept(name).isPresent()) {
      return Set.of(name);
    }
    Set<String> ids = new LinkedHashSet<>();
    thesaurus.match(name, Optional.empty()).meanings().forEach(m -> ids.add(m.concept().id()));
    if (ids.isEmpty()) {
      List<String> near = new ArrayList<>();
      if (name.length() <= 100) {
        for (NearTerm term : thesaurus.nearTerms(name.replace('-', ' '), SUGGESTED)) {
          near.add(term.concept().id());
        }
      }
      throw new FindQueryException(
          asked,
          condition.start(),
          "the vocabulary has no concept \"" + FindConditions.shown(name) + "\"",
          near.isEmpty()
              ? "name one by its id or a label, as in: concept:\"bladed ring\""
              : "near it: " + String.join(", ", near));
    }
    return ids;
  }

  Set<String> withNarrower(Set<String> ids) {
    Set<String> all = new LinkedHashSet<>(ids);
    ids.forEach(id -> all.addAll(thesaurus.narrower(id)));
    return all;
  }
}
