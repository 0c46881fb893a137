package merese.search;

/**
 * A set of things of one commit, by their numbers in each of its segments. It is never changed;
 * sets of different commits have nothing to do with each other.
 *
 * @param <S> the kind of set
 */
abstract sealed class SegmentedSet<S extends SegmentedSet<S>> permits NoteSet, SourceSet {
  private final NumberSet[] bySegment;

  SegmentedSet(NumberSet[] bySegment) {
    this.bySegment = bySegment;
  }

  abstract S of(NumberSet[] others);

  NumberSet[] bySegment() {
    return bySegment;
  }

  /** What is in this set, in the other or in both. */
  public S or(S other) {
    NumberSet[] both = new NumberSet[bySegment.length];
    for (int i = 0; i < both.length; i++) {
      both[i] = bySegment[i].or(other.bySegment()[i]);
    }
    return of(both);
  }

  /** What is in both sets. */
  public S and(S other) {
    NumberSet[] common = new NumberSet[bySegment.length];
    for (int i = 0; i < common.length; i++) {
      common[i] = bySegment[i].and(other.bySegment()[i]);
    }
    return of(common);
  }

  /** What is in this set and not in the other. */
  public S without(S other) {
    NumberSet[] rest = new NumberSet[bySegment.length];
    for (int i = 0; i < rest.length; i++) {
      rest[i] = bySegment[i].without(other.bySegment()[i]);
    }
    return of(rest);
  }

  public int size() {
    int size = 0;
    for (NumberSet numbers : bySegment) {
      size += numbers.size();
    }
    return size;
  }

  public boolean isEmpty() {
    for (NumberSet numbers : bySegment) {
      if (!numbers.isEmpty()) {
        return false;
      }
    }
    return true;
  }
}
