package merese.change.concepts;

import java.util.List;
import java.util.Optional;
import merese.exchange.skos.SkosConcept;
import merese.model.Concept;
import merese.model.ReceivedRecord.Field;

/**
 * What a concept of a file says in the library's language.
 *
 * @param ownId its id where its address is one of the library's own
 * @param definition empty where the file has none in the language
 * @param kept what has no place in a vocabulary
 */
record Understood(
    SkosConcept source,
    Optional<String> ownId,
    Concept.Label preferred,
    List<Concept.Label> alternatives,
    List<Concept.Label> hidden,
    Optional<String> definition,
    List<Field> kept,
    List<String> remarks) {

  String uri() {
    return source.uri();
  }
}
