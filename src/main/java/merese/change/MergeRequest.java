package merese.change;

import java.util.List;

/**
 * What to merge; each is the key of an edition or the id of a work.
 *
 * @param keep what stays
 * @param others what becomes part of it
 * @param oneEdition whether the editions named are the same thing, and not only of the same work
 */
public record MergeRequest(String keep, List<String> others, boolean oneEdition) {
  public MergeRequest {
    others = List.copyOf(others);
  }

  /** In a few words, for the history. */
  String words() {
    return "merge of " + String.join(", ", others) + " into " + keep;
  }
}
