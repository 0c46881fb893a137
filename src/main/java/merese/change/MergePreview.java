package merese.change;

import java.util.List;
import java.util.Optional;

/**
 * What a merge does, or did.
 *
 * @param work the id of the work that is kept
 * @param gone the ids of the works that are no more
 * @param key of the edition that two became one under
 * @param goneKeys the keys of editions that are no more
 * @param editions of the work as it will be, in their order
 * @param effects in the order in which they are told
 * @param files how many files are written or deleted
 */
public record MergePreview(
    String work,
    String title,
    List<String> gone,
    Optional<String> key,
    List<String> goneKeys,
    List<MovedEdition> editions,
    List<Effect> effects,
    int files) {

  /**
   * An edition of the merged work.
   *
   * @param from the work that it comes from; empty where it was of the kept one
   */
  public record MovedEdition(
      String key, Optional<String> from, int notes, int copies, int checks) {}
}
