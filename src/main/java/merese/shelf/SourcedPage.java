package merese.shelf;

import java.util.List;
import java.util.Optional;
import merese.model.Locator;
import merese.vocabulary.NameOnPage;

/**
 * A page of a book's text and where it is from.
 *
 * @param file the library's file that the text is in, by its path below the library
 * @param page of the file that was attached, from 1
 * @param locator the printed page or plate; empty where it has no number, or none is known
 * @param cited how it is cited: the locator, or else its place in the file
 * @param names the names of the vocabulary that stand on it, each spelling once, in the order of
 *     the text
 */
public record SourcedPage(
    Source source,
    String file,
    int page,
    Optional<Locator> locator,
    String cited,
    List<NameOnPage> names) {}
