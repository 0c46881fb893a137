package merese.exchange.skos;

import java.util.List;
import java.util.Optional;
import merese.exchange.Refused;
import merese.vocabulary.SkosIntegrity.Violation;

/**
 * What a file of SKOS holds, before any library is thought of. Everything is in the order in which
 * the file first names it.
 *
 * @param file as the user named it
 * @param refused concepts that contradict themselves
 * @param remarks on what was taken otherwise than it stands, or left out
 * @param violations of the integrity conditions of SKOS, refused or taken
 */
public record SkosReading(
    String file,
    SkosSyntax syntax,
    List<SkosConcept> concepts,
    List<SkosGroup> groups,
    List<SkosScheme> schemes,
    List<RefusedConcept> refused,
    List<Remark> remarks,
    List<Violation> violations) {

  public SkosReading {
    concepts = List.copyOf(concepts);
    groups = List.copyOf(groups);
    schemes = List.copyOf(schemes);
    refused = List.copyOf(refused);
    remarks = List.copyOf(remarks);
    violations = List.copyOf(violations);
  }

  /**
   * A concept that was not taken. What is kept of it verbatim is N-Triples, whatever the syntax of
   * the file, so that it can be read again once mended.
   */
  public record RefusedConcept(String uri, Refused refused) {}

  /**
   * @param uri what it is about; empty for the file as a whole
   * @param words a sentence without its full stop
   */
  public record Remark(Optional<String> uri, String words) {}
}
