package merese.vocabulary;

import java.util.Optional;
import merese.model.Concept;

/**
 * A concept that a printed term could stand for.
 *
 * @param label the label that occurs in the printed term; empty where only a word of the register
 *     does
 * @param start the first printed word of the occurrence, counted from 0
 * @param length the number of printed words that the occurrence spans; optional words of the facet
 *     at either end are not counted where the label can do without
 */
public record PossibleMeaning(
    Concept concept, Optional<Concept.Label> label, int start, int length) {}
