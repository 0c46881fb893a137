package merese.change;

import java.util.Optional;

/**
 * What to remove.
 *
 * @param name the key of an edition, the name of a work, or the reference of an object
 * @param note its number, a place of it or its term; empty for what is not a note
 * @param check the concept of a check
 * @param extent of that check, where there are several
 * @param copy the id of a copy
 * @param clearing whether what refers to it is cleared of that as well
 */
public record RemovalRequest(
    String name,
    Optional<String> note,
    Optional<String> check,
    Optional<String> extent,
    Optional<String> copy,
    boolean clearing) {

  /** In a few words, for the history. */
  String words() {
    return "remove "
        + note.map(n -> "note " + n + " of ").orElse("")
        + check.map(c -> "the check for " + c + " of ").orElse("")
        + copy.map(c -> "copy " + c + " of ").orElse("")
        + name;
  }
}
