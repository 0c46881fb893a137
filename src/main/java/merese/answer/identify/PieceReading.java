package merese.answer.identify;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import merese.answer.identify.Identification.Seen;
import merese.answer.identify.Identification.Unread;
import merese.model.CharacterKey;
import merese.model.OwnObject.Observation;
import merese.vocabulary.KeyReading;

/** What a user has recorded of a piece, as the key reads it; what it cannot read is kept apart. */
final class PieceReading {
  private final CharacterKey key;
  private final List<Unread> unread = new ArrayList<>();

  PieceReading(CharacterKey key) {
    this.key = key;
  }

  List<Unread> unread() {
    return unread;
  }

  void read(Observation observation, Sight sight) {
    KeyReading reading = KeyReading.of(key, observation);
    if (reading.unread().isPresent()) {
      unread.add(new Unread(observation, reading.unread().get()));
    } else {
      sight.add(
          reading.character(),
          new Seen(
              reading.value(),
              reading.label(),
              Optional.of(observation.part()),
              Optional.of(observation.sense()),
              Optional.of(observation.words()),
              observation.photo()));
    }
  }
}
