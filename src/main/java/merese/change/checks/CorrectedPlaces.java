package merese.change.checks;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Function;
import merese.model.Edition;
import merese.model.Locator;
import merese.model.Note;
import merese.model.Place;
import merese.model.Place.Corrected;
import merese.model.Work;
import merese.store.Stored;

/** Corrections of a place that no note is at: beside nothing can they be printed. */
final class CorrectedPlaces {
  private record Correction(Path file, String edition, String note, Corrected of) {}

  private final Map<String, Path> editions = new HashMap<>();
  private final List<Correction> corrections = new ArrayList<>();

  void add(Stored<Work> file) {
    for (Edition edition : file.value().editions()) {
      editions.put(edition.key(), file.file());
      for (Note note : edition.notes()) {
        for (Place place : note.places()) {
          place
              .corrects()
              .filter(c -> c.locator().isPresent())
              .ifPresent(
                  c -> corrections.add(new Correction(file.file(), edition.key(), note.id(), c)));
        }
      }
    }
  }

  void look(Function<Path, Stored<Work>> works, Findings findings) {
    Map<Path, Work> read = new HashMap<>();
    for (Correction correction : corrections) {
      Path target = editions.get(correction.of().edition());
      if (target == null) {
        continue; // the store's own check has said so
      }
      Work work = read.computeIfAbsent(target, path -> works.apply(path).value());
      Edition edition = work.edition(correction.of().edition());
      Locator at = correction.of().locator().get();
      if (edition.notes().stream().noneMatch(note -> isAt(at, note))) {
        Stored<Work> file = works.apply(correction.file());
        findings.warn(
            file,
            Position.inNote(
                file.content(), correction.edition(), correction.note(), "corrects", at.printed()),
            correction.edition() + ", " + correction.note(),
            "it corrects " + edition.key() + ", " + at + ", but no note is of that place",
            "note what stands there, or correct the locator");
      }
    }
  }

  private static boolean isAt(Locator corrected, Note note) {
    Set<Locator> members = new HashSet<>(corrected.members());
    for (Place place : note.places()) {
      if (place.locator().equals(corrected)
          || !Collections.disjoint(members, place.locator().members())) {
        return true;
      }
    }
    return false;
  }
}
