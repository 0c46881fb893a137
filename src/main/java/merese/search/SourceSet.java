package merese.search;

/** Editions of one commit of the index; see {@link Census}. */
public final class SourceSet extends SegmentedSet<SourceSet> {
  SourceSet(NumberSet[] bySegment) {
    super(bySegment);
  }

  @Override
  SourceSet of(NumberSet[] others) {
    return new SourceSet(others);
  }
}
