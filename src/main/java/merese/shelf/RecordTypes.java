package merese.shelf;

/** What the index stores whole, by type. */
final class RecordTypes {
  static final String FACET = "facet";
  static final String REGISTER = "register";
  static final String MINE = "mine";
  static final String OBJECT = "object";

  private RecordTypes() {}
}
