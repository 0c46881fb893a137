package merese.answer;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import merese.answer.Coverage.Heading;
import merese.model.Concept;
import merese.model.Mine.Coinage;
import merese.model.Mine.Preference;
import merese.model.Mine.SetAside;
import merese.shelf.Shelf;

/** Heads a section with the user's own label, where there is one. */
public final class Headings {
  private Headings() {}

  public static Heading of(Shelf shelf, String id) {
    for (Preference preference : shelf.mine().preferences()) {
      if (preference.concept().equals(id)) {
        return heading(
            shelf, id, Optional.of(preference.label()), preference.reason(), setAside(preference));
      }
    }
    for (Coinage coinage : shelf.mine().coinages()) {
      if (coinage.concept().equals(id)) {
        return heading(
            shelf, id, Optional.of(coinage.label()), Optional.of(coined(coinage)), List.of());
      }
    }
    return heading(shelf, id, Optional.empty(), Optional.empty(), List.of());
  }

  private static Heading heading(
      Shelf shelf,
      String id,
      Optional<String> own,
      Optional<String> reason,
      List<String> setAside) {
    Concept concept = shelf.thesaurus().concept(id).orElseThrow();
    String preferred = shelf.thesaurus().label(id);
    return new Heading(
        id,
        own.isPresent() ? own.get() : preferred,
        preferred,
        own.isPresent(),
        reason,
        setAside,
        concept.definition(),
        concept.status() == Concept.Status.UNCERTAIN,
        shelf.thesaurus().narrower(id).size());
  }

  private static String coined(Coinage coinage) {
    StringBuilder words = new StringBuilder("coined");
    if (coinage.coiner().isPresent()) {
      words.append(" by ").append(coinage.coiner().get());
    }
    if (coinage.on().isPresent()) {
      words.append(", ").append(coinage.on().get());
    }
    if (coinage.evidence().isPresent()) {
      words.append(", from ").append(coinage.evidence().get());
    }
    return words.toString();
  }

  private static List<String> setAside(Preference preference) {
    List<String> labels = new ArrayList<>();
    for (SetAside aside : preference.setAside()) {
      labels.add(
          aside.reason().isPresent()
              ? aside.label() + " (" + aside.reason().get() + ")"
              : aside.label());
    }
    return labels;
  }
}
