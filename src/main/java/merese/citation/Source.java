package merese.citation;

import java.util.Optional;
import merese.model.Edition;
import merese.model.Work;

/**
 * What is cited: an edition of a work or, where a part is given, an entry, chapter or essay in it.
 */
public record Source(Work work, Edition edition, Optional<Edition.Part> part) {
  public static Source of(Work work, Edition edition) {
    return new Source(work, edition, Optional.empty());
  }

  public static Source of(Work work, Edition edition, Edition.Part part) {
    return new Source(work, edition, Optional.of(part));
  }

  /** The edition's key, with the part's id after "#" where there is one. */
  public String id() {
    return part.map(p -> edition.key() + "#" + p.id()).orElse(edition.key());
  }
}
