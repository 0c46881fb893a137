package merese.vocabulary;

import java.util.Optional;
import merese.model.Concept;

/**
 * Two concepts that are mistaken for each other, seen from the one that was asked about.
 *
 * @param here the concept asked about, or one narrower than it
 * @param other what it is mistaken for
 * @param test what tells the two apart, in the words of {@code statedBy}
 * @param statedBy the one of the two under which the pair stands in the vocabulary; its test mostly
 *     describes the other one
 */
public record LookAlikePair(Concept here, Concept other, Optional<String> test, Concept statedBy) {}
