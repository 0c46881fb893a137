package merese.answer;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import merese.answer.Coverage.Heading;
import merese.model.Concept;
import merese.model.Mine;
import merese.model.Mine.Coinage;
import merese.model.Mine.Preference;
import merese.shelf.Shelf;

/** Heads a section with the user's own label, where there is one. */
final class Headings {
  private Headings() {}

  static Heading of(Shelf shelf, String id) {
    Concept concept = shelf.thesaurus().concept(id).orElseThrow();
    Mine mine = shelf.mine();
    Optional<Preference> preference =
        mine.preferences().stream().filter(p -> p.concept().equals(id)).findFirst();
    Optional<Coinage> coinage =
        mine.coinages().stream().filter(c -> c.concept().equals(id)).findFirst();
    String preferred = shelf.thesaurus().label(id);
    Optional<String> own = preference.map(Preference::label).or(() -> coinage.map(Coinage::label));
    return new Heading(
        id,
        own.orElse(preferred),
        preferred,
        own.isPresent(),
        preference.isPresent() ? preference.get().reason() : coinage.map(Headings::coined),
        preference.map(Headings::setAside).orElse(List.of()),
        concept.definition(),
        concept.status() == Concept.Status.UNCERTAIN,
        shelf.thesaurus().narrower(id).size());
  }

  private static String coined(Coinage coinage) {
    String words = "coined" + coinage.coiner().map(c -> " by " + c).orElse("");
    words += coinage.on().map(on -> ", " + on).orElse("");
    return words + coinage.evidence().map(e -> ", from " + e).orElse("");
  }

  private static List<String> setAside(Preference preference) {
    List<String> labels = new ArrayList<>();
    preference
        .setAside()
        .forEach(s -> labels.add(s.label() + s.reason().map(r -> " (" + r + ")").orElse("")));
    return labels;
  }
}
