package merese.vocabulary;

import merese.model.Concept;

/**
 * A label that resembles a phrase the vocabulary does not know.
 *
 * @param label the concept's label that comes nearest
 * @param nearness from 0, nothing in common, to 1, the same
 */
public record NearTerm(Concept concept, Concept.Label label, double nearness) {}
