package merese.exchange.skos;

import merese.model.Concept;

/** Labels as the library has them, from labels as SKOS has them. */
public final class OwnLabels {
  private OwnLabels() {}

  /**
   * A label with its scope: what stands in brackets at its end, unless a note of ours says
   * otherwise.
   */
  public static Concept.Label read(String displayed, SkosConcept concept) {
    return OwnNotes.label(displayed, concept.own());
  }
}
