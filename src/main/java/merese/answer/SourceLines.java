package merese.answer;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import merese.answer.Coverage.SourceLine;
import merese.shelf.Source;

/** How an answer names sources: by author and year, with the title where that is not enough. */
public final class SourceLines {
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
    return source.isAloneCalledSo()
        ? source.reference()
        : source.reference() + ", " + source.title();
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
