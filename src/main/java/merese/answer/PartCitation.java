package merese.answer;

import java.util.Optional;
import merese.model.Edition;
import merese.shelf.SourcedNote;

/** What a note is cited from: the essay or entry that it is in, else the whole source. */
public final class PartCitation {
  private PartCitation() {}

  public static merese.citation.Source of(SourcedNote sourced) {
    Edition edition = sourced.source().edition();
    Optional<Edition.Part> part = Optional.empty();
    for (Edition.Part each : edition.parts()) {
      if (sourced.note().part().equals(Optional.of(each.id())) && !each.authors().isEmpty()) {
        part = Optional.of(each);
      }
    }
    return new merese.citation.Source(sourced.source().work(), edition, part);
  }
}
