package merese.store;

/**
 * One file that a change of several files puts in its place or deletes.
 *
 * @param staged the number by which its new bytes are staged; {@value #DELETED} for a deletion
 * @param to its path below the library folder, with "/" on every system
 * @param was the {@link Hash} of what it held when it was read
 */
record FileChange(int staged, String to, String was) {
  static final int DELETED = -1;

  boolean deletes() {
    return staged == DELETED;
  }
}
