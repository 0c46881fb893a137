package merese.change;

import java.util.List;

/**
 * What a removal does, or did.
 *
 * @param what goes, in words
 * @param neededBy what refers to it and would lead nowhere
 * @param cleared whether those references are taken away as well
 * @param effects in the order in which they are told
 * @param files how many files are written or deleted
 */
public record RemovalPreview(
    String what, List<String> neededBy, boolean cleared, List<Effect> effects, int files) {
  public RemovalPreview {
    neededBy = List.copyOf(neededBy);
    effects = List.copyOf(effects);
  }

  /** Whether it would leave references that lead nowhere. */
  public boolean isRefused() {
    return !cleared && !neededBy.isEmpty();
  }
}
