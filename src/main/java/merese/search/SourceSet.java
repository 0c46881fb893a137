package merese.search;

import java.util.BitSet;

/** Editions of one commit of the index; see {@link Census}. */
public final class SourceSet extends SegmentedSet<SourceSet> {
  SourceSet(BitSet[] bySegment) {
    super(bySegment);
  }

  @Override
  SourceSet of(BitSet[] others) {
    return new SourceSet(others);
  }
}
