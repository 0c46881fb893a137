package merese.search;

import java.util.BitSet;

/** Notes, or lines of check logs, of one commit of the index; see {@link Census}. */
public final class NoteSet extends SegmentedSet<NoteSet> {
  NoteSet(BitSet[] bySegment) {
    super(bySegment);
  }

  @Override
  NoteSet of(BitSet[] others) {
    return new NoteSet(others);
  }
}
