package merese.search;

import java.util.Collection;
import java.util.List;
import java.util.Optional;

/**
 * A note as it goes into the index.
 *
 * @param edition key of its edition
 * @param order its position among the notes of the edition, from 0
 * @param concepts ids of the concepts that its namings have
 * @param meanings the ids of all concepts and all that is broader, so that a question about a
 *     family needs no expansion
 * @param says all that it says of concepts, those that are broader too
 * @param inText the meanings that the text itself gives
 * @param together what is so of all its namings together
 * @param unassigned whether a naming has no concept
 * @param possible for namings without a concept: what they may mean, with all that is broader
 * @param printed its terms as folded words; one that may be read with or without an optional word
 *     is there in each form
 * @param pieces ids of the pieces that its places speak of
 * @param corrects keys of the editions that its places correct
 * @param object the user's own piece that it is linked to
 * @param searchable what it can be found by in words
 * @param payload what a hit gives back
 */
public record IndexedNote(
    String edition,
    int order,
    Collection<String> concepts,
    Collection<String> meanings,
    Collection<NoteCriterion.Says> says,
    Collection<InText> inText,
    Collection<NoteCriterion.Together> together,
    boolean unassigned,
    Collection<String> possible,
    List<List<String>> printed,
    Collection<String> pieces,
    Collection<String> corrects,
    Optional<String> object,
    Searchable searchable,
    byte[] payload) {

  /**
   * What a text says that a term means.
   *
   * @param words the printed term, folded
   * @param several whether as printed it has several words
   */
  public record InText(List<String> words, String concept, boolean several) {}
}
