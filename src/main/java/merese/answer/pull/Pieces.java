package merese.answer.pull;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import merese.answer.Coverage.ConceptLine;
import merese.model.OwnObject;
import merese.shelf.Shelf;

/** The user's own pieces: the part to point at, and how to turn the piece. */
final class Pieces {
  static final String PHOTO = "photo ";

  private Pieces() {}

  /** A piece with what to show of it. */
  record Shown(OwnObject object, Need need) {}

  /** The pieces that are evidence for a feature or something narrower, or against it. */
  static List<Shown> showing(Shelf shelf, String concept) {
    Set<String> wanted = new LinkedHashSet<>(shelf.thesaurus().narrower(concept));
    wanted.add(concept);
    List<Shown> shown = new ArrayList<>();
    for (OwnObject object : shelf.objects()) {
      for (OwnObject.Evidence evidence : object.evidence()) {
        if (wanted.contains(evidence.concept())) {
          Need need = new Need(Optional.empty());
          String label = shelf.thesaurus().label(evidence.concept());
          need.addConcepts(List.of(new ConceptLine(evidence.concept(), label)));
          evidence.photo().ifPresent(id -> asPhotographed(object, id, need));
          String against =
              evidence.kind() == OwnObject.Evidence.Kind.EXAMPLE
                  ? ""
                  : evidence.kind().words() + ": ";
          evidence.words().ifPresent(words -> need.pointAt.add(against + words));
          shown.add(new Shown(object, need));
        }
      }
    }
    return shown;
  }

  /**
   * A piece that a script names.
   *
   * @param rest "photo p3", or words for what is to be shown
   */
  static Shown named(Shelf shelf, OwnObject object, String rest) {
    Need need = new Need(Optional.empty());
    if (rest.startsWith(PHOTO) && isPhoto(object, rest.substring(PHOTO.length()).strip())) {
      String id = rest.substring(PHOTO.length()).strip();
      asPhotographed(object, id, need);
      for (OwnObject.Evidence evidence : object.evidence()) {
        if (evidence.photo().filter(id::equals).isPresent()) {
          String label = shelf.thesaurus().label(evidence.concept());
          need.addConcepts(List.of(new ConceptLine(evidence.concept(), label)));
        }
      }
    } else if (!rest.isEmpty()) {
      need.pointAt.add(rest);
    }
    return new Shown(object, need);
  }

  private static boolean isPhoto(OwnObject object, String id) {
    return object.photographs().stream().anyMatch(photo -> photo.id().equals(id));
  }

  /** The parts that were observed on a photograph; its own words where none was. */
  private static void asPhotographed(OwnObject object, String id, Need need) {
    for (OwnObject.Observation observation : object.observations()) {
      if (observation.found()
          && observation.photo().filter(id::equals).isPresent()
          && !need.pointAt.contains(observation.part())) {
        need.pointAt.add(observation.part());
      }
    }
    for (OwnObject.Photograph photo : object.photographs()) {
      if (photo.id().equals(id)) {
        need.turn = photo.turn();
        if (need.pointAt.isEmpty()) {
          photo.words().ifPresent(need.pointAt::add);
        }
      }
    }
  }
}
