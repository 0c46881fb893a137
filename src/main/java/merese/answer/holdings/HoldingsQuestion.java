package merese.answer.holdings;

import merese.model.Coded;

/**
 * Which sources to list, and how.
 *
 * @param find words that must begin words of author, year, title or key; "" for all sources
 * @param page from 1; one that is not there means the nearest that is
 */
public record HoldingsQuestion(Order by, String find, int page) {
  /** How sources are ordered, and what their headings are. */
  public enum Order implements Coded {
    /** As a library files them; a heading an initial. */
    AUTHOR,
    /** By the year of the edition; a heading a decade. */
    YEAR,
    /** By the sort of source, then by author. */
    KIND,
    /** Copies as they stand, then what is not on the shelf. */
    MARK
  }
}
