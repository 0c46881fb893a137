package merese.change;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import merese.model.Copy;
import merese.store.Problem;

/**
 * What was added.
 *
 * @param what in words: "new work", "edition of quenby-neck-and-stopper" …
 * @param key of the source
 * @param reference the source in a word or two, as answers print it
 * @param work the id of its work
 * @param copy that was added
 * @param unread a problem a file of a work that could not be read, so that nobody knows whether the
 *     source is there already; the file as its path below the library folder
 */
public record AddResult(
    String what,
    String key,
    String reference,
    String title,
    String work,
    Path file,
    Optional<Copy> copy,
    List<Problem> unread) {
  public AddResult {
    unread = List.copyOf(unread);
  }
}
