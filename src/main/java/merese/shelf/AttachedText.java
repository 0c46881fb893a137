package merese.shelf;

import java.util.Optional;
import merese.model.Locator;

/**
 * A text of pages that is attached to a source.
 *
 * @param file the library's file that it is in, by its path below the library
 * @param name of the file that it came from
 * @param pages how many it has
 * @param withoutText how many of them have no text
 * @param extent the printed pages and plates that have text; empty where the map names none
 * @param unnumbered how many pages with text have no printed number
 */
public record AttachedText(
    Source source,
    String file,
    String name,
    int pages,
    int withoutText,
    Optional<Locator> extent,
    int unnumbered) {}
