package merese.answer;

import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import merese.answer.Coverage.SourceLine;
import merese.shelf.Shelf;
import merese.shelf.Source;

/** How an answer names sources: by author and year, with the title where that is not enough. */
public final class SourceLines {
  private final Shelf shelf;

  /** How many sources are called so. */
  private final Map<String, Integer> uses = new HashMap<>();

  public SourceLines(Shelf shelf) {
    this.shelf = shelf;
  }

  public SourceLine of(Source source) {
    return new SourceLine(
        source.key(),
        reference(source),
        source.title(),
        source.kind(),
        source.year(),
        source.owned(),
        source.whereabouts());
  }

  public String reference(Source source) {
    Integer called = uses.get(source.reference());
    if (called == null) {
      called = shelf.sourcesCalled(source.reference());
      uses.put(source.reference(), called);
    }
    return called == 1 ? source.reference() : source.reference() + ", " + source.title();
  }

  /** In the order of R4: year of the edition, author. */
  public List<Source> sorted(Collection<Source> sources) {
    List<Source> sorted = new ArrayList<>(sources);
    sorted.sort(Source.BY_YEAR);
    return sorted;
  }

  public List<String> references(Collection<Source> sources) {
    List<String> references = new ArrayList<>();
    for (Source source : sorted(sources)) {
      references.add(reference(source));
    }
    return references;
  }
}
