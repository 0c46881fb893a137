package merese.shelf;

/** What the index stores whole, by type. */
final class RecordTypes {
  static final String FACET = "facet";

  /** All facets and the register, for answers. */
  static final String THESAURUS = "thesaurus";

  static final String REGISTER = "register";
  static final String CHARACTERS = "characters";
  static final String MINE = "mine";

  /** One entry of the above, to be found. */
  static final String MINE_ENTRY = "mine-entry";

  /** The id of one concept, to be found. */
  static final String CONCEPT = "concept";

  static final String OBJECT = "object";

  /** What is wrong with a file, and what that means for answers. */
  static final String SHORTFALL = "shortfall";

  /** The id of a concept that a file names and none defines. */
  static final String UNDEFINED = "undefined";

  /** That a work has no edition. */
  static final String BARE_WORK = "bare-work";

  /** What is known of a text of pages as a whole. */
  static final String PAGES = "pages";

  /** The times of the folders of a large library; see {@link FolderTimes}. */
  static final String FOLDERS = "folders";

  private RecordTypes() {}
}
