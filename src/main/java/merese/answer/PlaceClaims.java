package merese.answer;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import merese.answer.Classifier.Classified;
import merese.answer.Coverage.Entry;
import merese.answer.Coverage.Group;
import merese.model.Claim;
import merese.vocabulary.Folding;
import merese.vocabulary.Thesaurus;

/**
 * What sources claim about the place asked for. A source that claims none is silent, not against.
 */
final class PlaceClaims {
  private final Optional<String> place;
  private final Map<String, List<Claim>> bySource = new HashMap<>();

  PlaceClaims(Optional<String> place, List<Classified> notes) {
    this.place = place;
    if (place.isEmpty()) {
      return;
    }
    for (Classified classified : notes) {
      for (Claim claim : classified.sourced().note().claims()) {
        if (claim.kind() == Claim.Kind.PLACE && claim.about() != Claim.About.COPIES) {
          bySource
              .computeIfAbsent(classified.sourced().source().key(), s -> new ArrayList<>())
              .add(claim);
        }
      }
    }
  }

  Group group(Entry entry, Group claiming, Group silent, Group elsewhere) {
    List<Claim> claims = claims(entry);
    if (claims.isEmpty()) {
      return silent;
    }
    return claims.stream().anyMatch(this::isOfThePlace) ? claiming : elsewhere;
  }

  /** The entry with the source's words on the place, where a place was asked for. */
  Entry with(Entry entry) {
    if (place.isEmpty()) {
      return entry;
    }
    List<String> words = claims(entry).stream().map(Claim::words).distinct().toList();
    return new Entry(
        entry.source(),
        entry.passages(),
        entry.conflicts(),
        entry.readings(),
        words,
        entry.sameAs());
  }

  private List<Claim> claims(Entry entry) {
    return bySource.getOrDefault(entry.source().key(), List.of());
  }

  private boolean isOfThePlace(Claim claim) {
    List<String> asked = Folding.words(place.get());
    return claim.value().map(Folding::words).filter(asked::equals).isPresent()
        || Thesaurus.occurs(asked, Folding.words(claim.words()));
  }
}
