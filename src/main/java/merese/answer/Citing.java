package merese.answer;

import java.util.List;
import java.util.Optional;
import merese.answer.CitedSource.OneEdition;
import merese.citation.Citations;
import merese.citation.Output;
import merese.model.Locator;
import merese.shelf.Shelf;
import merese.shelf.Source;

/** Cites one source. */
public final class Citing {
  private Citing() {}

  /**
   * Cites what {@link NamedSource#find} finds.
   *
   * @throws UnknownSourceException where there is no such source or part
   */
  public static CitedSource answer(
      Shelf shelf, String typed, List<Locator> locators, Citations citations, Output output) {
    NamedSource named = NamedSource.find(shelf, typed);
    Source source = named.source();
    merese.citation.Source cited =
        new merese.citation.Source(source.work(), source.edition(), named.part());
    List<OneEdition> others =
        shelf.sources().stream()
            .filter(s -> s.workId().equals(source.workId()) && !s.equals(source))
            .sorted(Source.BY_YEAR)
            .map(s -> OneEdition.of(s.work(), s.edition(), source.title()))
            .toList();
    return new CitedSource(
        cited.id(),
        locators,
        citations.note(cited, locators, output),
        citations.shortNote(cited, locators, output),
        citations.entry(cited, output),
        others.isEmpty()
            ? Optional.empty()
            : Optional.of(OneEdition.of(source.work(), source.edition(), source.title())),
        others,
        citations.remarks());
  }
}
