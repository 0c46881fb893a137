package merese.shelf;

/**
 * What there is of texts of pages that are attached to sources.
 *
 * @param pages how many all of them have
 * @param withoutText how many of these have no text
 */
public record AttachedTexts(int texts, int pages, int withoutText) {}
