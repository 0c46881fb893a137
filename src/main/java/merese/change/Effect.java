package merese.change;

/**
 * One thing that a merge or a split does, or leaves as it is, in words for a person.
 *
 * @param what such as "other title: Necks Abroad"
 */
public record Effect(Sort sort, String what) {
  /** What becomes of it. */
  public enum Sort {
    /** What the kept work or edition had not, and gets. */
    ADDED,
    /** What the others say differently: the kept one's stays. */
    STAYS,
    /** What is called something else from now on. */
    RENAMED,
    /** What refers to something that goes, and follows. */
    FOLLOWS,
    /** What is no more. */
    DROPPED,
    /** What the program cannot do and somebody should look at. */
    LOOK_AT
  }
}
