package merese.exchange.csl;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import merese.exchange.Outgoing;
import merese.model.Edition;
import merese.model.Work;

/** Sources of a library as they are handed to a writer. */
final class Sources {
  private Sources() {}

  /** Every edition, and every part that somebody signed. */
  static List<Outgoing> of(Iterable<Work> works) {
    List<Outgoing> all = new ArrayList<>();
    for (Work work : works) {
      for (Edition edition : work.editions()) {
        all.add(new Outgoing(work, edition, Optional.empty(), List.of()));
        for (Edition.Part part : edition.parts()) {
          if (!part.authors().isEmpty()) {
            all.add(new Outgoing(work, edition, Optional.of(part), List.of()));
          }
        }
      }
    }
    return all;
  }
}
