package merese.search;

import java.util.Set;
import merese.vocabulary.PageReading;

/**
 * A page of a book as it goes into the index.
 *
 * @param edition key of its edition
 * @param page the page of its file, from 1
 * @param names ids of the concepts whose names stand on it, with all that is broader
 * @param reading its words; their text is kept apart, for those who want to read it
 * @param payload what a hit gives back: small, for many pages are asked for at once
 */
public record IndexedPage(
    String edition, int page, Set<String> names, PageReading reading, byte[] payload) {}
