package merese.answer.gaps;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import merese.answer.Coverage.ConceptLine;
import merese.answer.Coverage.PieceLine;
import merese.model.OwnObject;
import merese.model.OwnObject.Evidence;
import merese.shelf.Shelf;

/** The user's own pieces that show a concept. */
record Pieces(List<PieceLine> lines) {

  static Pieces of(Shelf shelf, Set<String> concepts) {
    List<PieceLine> lines = new ArrayList<>();
    for (OwnObject object : shelf.objects()) {
      for (Evidence evidence : object.evidence()) {
        if (concepts.contains(evidence.concept())) {
          lines.add(
              new PieceLine(
                  object.ref(),
                  object.title(),
                  evidence.kind(),
                  new ConceptLine(evidence.concept(), shelf.thesaurus().label(evidence.concept())),
                  evidence.words(),
                  evidence.photo()));
        }
      }
    }
    return new Pieces(lines);
  }

  /** The examples as evidence: "D-17, photo p3". */
  Optional<String> asEvidence() {
    List<String> refs = new ArrayList<>();
    for (PieceLine piece : lines) {
      if (piece.kind() == Evidence.Kind.EXAMPLE) {
        refs.add(piece.ref() + (piece.photo().isPresent() ? ", photo " + piece.photo().get() : ""));
      }
    }
    return refs.isEmpty() ? Optional.empty() : Optional.of(String.join("; ", refs));
  }
}
