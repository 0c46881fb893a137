package merese.answer;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import merese.answer.Coverage.Entry;
import merese.answer.Coverage.Group;
import merese.answer.Coverage.Section;
import merese.answer.CoverageQuestion.Narrowing;
import merese.shelf.Shelf;
import merese.shelf.Source;

/**
 * Some of a library's sources, or all of them.
 *
 * @param named keys, each with a part's id after "#" where just that is wanted; none for no choice
 *     by name
 * @param covering only sources that the answer to a question counts
 * @param narrowing only sources of some kinds or years, or owned
 */
public record SourceChoice(
    List<String> named, Optional<CoverageQuestion> covering, Narrowing narrowing) {
  public static final SourceChoice ALL =
      new SourceChoice(List.of(), Optional.empty(), Narrowing.NONE);

  public SourceChoice {
    named = List.copyOf(named);
  }

  /**
   * The sources, in the order of their files or as they are named.
   *
   * @throws UnknownSourceException for a key that no source has
   */
  List<NamedSource> of(Shelf shelf) {
    Set<String> counted = covering.map(question -> counted(shelf, question)).orElse(Set.of());
    Wanted wanted = new Wanted(shelf, narrowing);
    List<NamedSource> chosen = new ArrayList<>();
    for (NamedSource source : candidates(shelf)) {
      boolean covers = covering.isEmpty() || counted.contains(source.source().key());
      if (covers && wanted.includes(source.source())) {
        chosen.add(source);
      }
    }
    return chosen;
  }

  /** Among all are the parts that somebody signed; among those named, what is named. */
  private List<NamedSource> candidates(Shelf shelf) {
    List<NamedSource> all = new ArrayList<>();
    for (String key : named) {
      all.add(NamedSource.find(shelf, key));
    }
    if (named.isEmpty()) {
      for (Source source : shelf.sources()) {
        all.add(new NamedSource(source, Optional.empty()));
        if (covering.isEmpty()) {
          source.edition().parts().stream()
              .filter(part -> !part.authors().isEmpty())
              .forEach(part -> all.add(new NamedSource(source, Optional.of(part))));
        }
      }
    }
    return all;
  }

  /** What a reading list would hold, of each meaning. */
  private static Set<String> counted(Shelf shelf, CoverageQuestion question) {
    Set<String> keys = new LinkedHashSet<>();
    for (Section section : Covers.answer(shelf, question).sections()) {
      for (Group group : List.of(Group.COUNTED, Group.SAME_FEATURE)) {
        for (Entry entry : section.group(group)) {
          keys.add(entry.source().key());
        }
      }
    }
    return keys;
  }
}
