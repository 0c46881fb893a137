package merese.vocabulary;

/**
 * A word of a page.
 *
 * @param exact its folded form; never empty
 * @param loose what it folds to with letters that are taken for each other made the same
 * @param start where it begins in the page's text, in chars
 * @param end where it ends, exclusive; a word that is mended runs over the end of a line
 */
public record PageWord(String exact, String loose, int start, int end) {}
