package merese.search;

import java.util.Map;
import java.util.Set;
import merese.vocabulary.PageReading;

/**
 * A page of a book as it goes into the index.
 *
 * @param edition key of its edition
 * @param page the page of its file, from 1
 * @param at keys of the printed page or plate, see {@link merese.model.Locator#keys}
 * @param names ids of the concepts whose names stand on it, with all that is broader, and how many
 *     names of each
 * @param reading its words; their text is kept apart, for those who want to read it
 * @param payload what a hit gives back: small, for many pages are asked for at once
 */
public record IndexedPage(
    String edition,
    int page,
    Set<String> at,
    Map<String, Integer> names,
    PageReading reading,
    byte[] payload) {}
