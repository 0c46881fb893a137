package merese.search;

import java.util.BitSet;

/**
 * A set of things of one commit, by their numbers in each of its segments. It is never changed;
 * sets of different commits have nothing to do with each other.
 *
 * @param <S> the kind of set
 */
abstract sealed class SegmentedSet<S extends SegmentedSet<S>> permits NoteSet, SourceSet {
  private final BitSet[] bySegment;

  /**
   * @param bySegment what nobody changes any more
   */
  SegmentedSet(BitSet[] bySegment) {
    this.bySegment = bySegment;
  }

  abstract S of(BitSet[] others);

  BitSet[] bySegment() {
    return bySegment;
  }

  /** What is in this set, in the other or in both. */
  public S or(S other) {
    BitSet[] changed = copy();
    for (int i = 0; i < changed.length; i++) {
      changed[i].or(other.bySegment()[i]);
    }
    return of(changed);
  }

  /** What is in both sets. */
  public S and(S other) {
    BitSet[] changed = copy();
    for (int i = 0; i < changed.length; i++) {
      changed[i].and(other.bySegment()[i]);
    }
    return of(changed);
  }

  /** What is in this set and not in the other. */
  public S without(S other) {
    BitSet[] changed = copy();
    for (int i = 0; i < changed.length; i++) {
      changed[i].andNot(other.bySegment()[i]);
    }
    return of(changed);
  }

  public int size() {
    int size = 0;
    for (BitSet bits : bySegment) {
      size += bits.cardinality();
    }
    return size;
  }

  public boolean isEmpty() {
    for (BitSet bits : bySegment) {
      if (!bits.isEmpty()) {
        return false;
      }
    }
    return true;
  }

  private BitSet[] copy() {
    BitSet[] copy = new BitSet[bySegment.length];
    for (int i = 0; i < copy.length; i++) {
      copy[i] = (BitSet) bySegment[i].clone();
    }
    return copy;
  }
}
