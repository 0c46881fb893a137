package merese.model;

import java.util.Optional;

/**
 * The one on a shelf.
 *
 * @param holder the library or person that has it; empty for the user's own
 * @param shelfMark where it stands
 * @param lentTo who has borrowed it, where someone has
 */
public record Copy(
    String id,
    Optional<String> holder,
    Optional<String> shelfMark,
    Optional<String> lentTo,
    boolean missing,
    Optional<String> remark) {
  public Copy {
    Require.text(id, "a copy's id");
  }

  public boolean own() {
    return holder.isEmpty();
  }
}
