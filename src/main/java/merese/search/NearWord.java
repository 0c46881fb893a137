package merese.search;

/**
 * A word that nothing in the index has, and one like it that something has.
 *
 * @param start of the word or phrase of the question, in chars
 * @param end exclusive
 * @param folded the mistyped word
 * @param near the word of the index, folded
 */
public record NearWord(int start, int end, String folded, String near) {}
