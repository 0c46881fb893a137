package merese.change;

import java.nio.file.Path;
import java.util.Optional;
import merese.model.Copy;

/**
 * What was added.
 *
 * @param what in words: "new work", "edition of quenby-neck-and-stopper" …
 * @param key of the source
 * @param reference the source in a word or two, as answers print it
 * @param work the id of its work
 * @param copy that was added
 */
public record AddResult(
    String what,
    String key,
    String reference,
    String title,
    String work,
    Path file,
    Optional<Copy> copy) {}
