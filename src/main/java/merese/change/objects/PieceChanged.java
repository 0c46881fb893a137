package merese.change.objects;

import java.util.List;
import java.util.Optional;
import merese.change.Effect;

/**
 * What was recorded of a piece.
 *
 * @param title of the piece, as it is now
 * @param effects in the order in which they are told
 * @param asKey what the key to look-alikes reads in an observation, in words
 * @param files how many files were written
 */
public record PieceChanged(
    String ref, String title, List<Effect> effects, Optional<String> asKey, int files) {
  public PieceChanged {
    effects = List.copyOf(effects);
  }
}
