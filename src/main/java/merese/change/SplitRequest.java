package merese.change;

import java.util.List;
import java.util.Optional;

/**
 * Which editions of a work become a work of their own.
 *
 * @param title of the new work; empty for that of the old one
 * @param id of the new work; empty for the first key
 */
public record SplitRequest(List<String> keys, Optional<String> title, Optional<String> id) {
  public SplitRequest {
    keys = List.copyOf(keys);
  }

  /** In a few words, for the history. */
  String words() {
    return "split of " + String.join(", ", keys) + " from their work";
  }
}
