package merese.answer.pull;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import merese.answer.Coverage.Entry;
import merese.answer.Coverage.Group;
import merese.answer.Coverage.Section;
import merese.answer.CoverageQuestion;
import merese.answer.Covers;
import merese.model.Locator;
import merese.shelf.Shelf;
import merese.shelf.Source;

/**
 * What to take where a source is not at hand: another edition with the same picture, else the first
 * by R4 of what covers the same feature. Only what is at hand is offered.
 */
final class Substitutes {
  private final Shelf shelf;
  private final Map<String, Source> sources;
  private final SourceNotes notes;
  private final Map<String, Shelving> shelvings = new HashMap<>();
  private final Map<String, List<Entry>> covering = new HashMap<>();

  Substitutes(Shelf shelf, Map<String, Source> sources, SourceNotes notes) {
    this.shelf = shelf;
    this.sources = sources;
    this.notes = notes;
  }

  /** A place in a source that is at hand; {@code entry} says what the source has of the feature. */
  record Substitute(
      Source source, boolean samePicture, Optional<Locator> locator, Optional<Entry> entry) {}

  Shelving shelving(Source source) {
    return shelvings.computeIfAbsent(source.key(), key -> Shelving.of(source));
  }

  Optional<Substitute> of(Source source, Need need) {
    Optional<Substitute> edition = anotherEdition(source, need);
    return edition.isPresent() ? edition : nextSource(source, need);
  }

  private Optional<Substitute> anotherEdition(Source source, Need need) {
    Set<String> pictures =
        need.locator.map(locator -> notes.pictures(source, locator)).orElse(Set.of());
    if (pictures.isEmpty()) {
      return Optional.empty();
    }
    List<Source> editions =
        sources.values().stream()
            .filter(s -> s.workId().equals(source.workId()) && !s.equals(source))
            .sorted(Source.BY_YEAR)
            .toList();
    for (Source edition : editions) {
      List<Locator> where =
          shelving(edition).atHand() ? notes.whereIs(edition, pictures) : List.of();
      if (!where.isEmpty()) {
        return Optional.of(
            new Substitute(edition, true, Optional.of(where.get(0)), Optional.empty()));
      }
    }
    return Optional.empty();
  }

  private Optional<Substitute> nextSource(Source source, Need need) {
    for (String concept : need.concepts.keySet()) {
      for (Entry entry : covering(concept)) {
        Source other = sources.get(entry.source().key());
        if (!other.equals(source) && shelving(other).atHand()) {
          return Optional.of(new Substitute(other, false, Optional.empty(), Optional.of(entry)));
        }
      }
    }
    return Optional.empty();
  }

  private List<Entry> covering(String concept) {
    List<Entry> known = covering.get(concept);
    if (known == null) {
      List<Section> sections = Covers.answer(shelf, CoverageQuestion.ofConcept(concept)).sections();
      known = sections.isEmpty() ? List.of() : sections.get(0).group(Group.COUNTED);
      covering.put(concept, known);
    }
    return known;
  }
}
