package merese.shelf;

/** What the index stores whole, by type. */
final class RecordTypes {
  static final String FACET = "facet";
  static final String CONCEPT = "concept";
  static final String HOMONYM = "homonym";
  static final String MINE = "mine";
  static final String OBJECT = "object";

  private RecordTypes() {}
}
