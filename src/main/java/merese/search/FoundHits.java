package merese.search;

import java.util.List;
import merese.search.Hits.Owner;

/**
 * What a question in words found.
 *
 * @param hits the best of them
 * @param withAll how many have everything that was asked for
 * @param withSome how many more have some of the words
 */
public record FoundHits(List<FoundHit> hits, int withAll, int withSome) {

  /**
   * One of them.
   *
   * @param order of a note among those of its edition, from 0
   * @param all whether it has everything that was asked for
   */
  public record FoundHit(HitKind kind, Owner owner, int order, boolean all, byte[] payload) {}
}
