package merese.change.vocabulary;

import java.util.List;
import merese.change.Effect;

/**
 * What a change of the vocabulary or of the user's own labels does, or did.
 *
 * @param concept the id of the concept that it is about, as it will be
 * @param label its preferred label with its scope
 * @param effects in the order in which they are told
 * @param staying the notes that a split leaves with the old concept
 * @param files how many files are written
 */
public record VocabularyChange(
    String concept, String label, List<Effect> effects, List<StayingNote> staying, int files) {
  public VocabularyChange {
    effects = List.copyOf(effects);
    staying = List.copyOf(staying);
  }

  /**
   * A note that still means the old concept.
   *
   * @param note its name as --note takes it
   * @param printed its terms for the concept; "" for what is not named
   * @param places as printed
   */
  public record StayingNote(String note, List<String> printed, List<String> places) {}
}
