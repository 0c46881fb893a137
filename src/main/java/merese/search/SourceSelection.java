package merese.search;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;

/**
 * Sources by their traits, those apart that are the user's own work, which no selection has.
 *
 * @param own only those of which the user has a copy
 * @param kinds only those of these kinds; empty for all
 * @param years only those of these years, where an empty one stands for undated; empty for all
 */
public record SourceSelection(
    boolean own, Collection<String> kinds, Optional<Collection<OptionalInt>> years) {

  /** All of them. */
  public static final SourceSelection ALL = new SourceSelection(false, List.of(), Optional.empty());

  /** Of each list a source has at least one term. */
  List<List<String>> terms() {
    List<List<String>> allOf = new ArrayList<>();
    if (years.isPresent()) {
      List<String> terms = new ArrayList<>();
      for (OptionalInt year : years.get()) {
        terms.add(Fields.term(Fields.SOURCE_YEAR, Documents.year(year)));
      }
      allOf.add(terms);
    }
    if (own) {
      allOf.add(List.of(Fields.term(Fields.OWN_COPY, Fields.YES)));
    }
    if (!kinds.isEmpty()) {
      List<String> terms = new ArrayList<>();
      for (String kind : kinds) {
        terms.add(Fields.term(Fields.SOURCE_KIND, kind));
      }
      allOf.add(terms);
    }
    return allOf;
  }
}
