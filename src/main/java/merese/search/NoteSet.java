package merese.search;

/** Notes, or lines of check logs, of one commit of the index; see {@link Census}. */
public final class NoteSet extends SegmentedSet<NoteSet> {
  NoteSet(NumberSet[] bySegment) {
    super(bySegment);
  }

  @Override
  NoteSet of(NumberSet[] others) {
    return new NoteSet(others);
  }
}
