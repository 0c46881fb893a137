package merese.search;

import java.util.List;

/**
 * Pages that have the words of a question.
 *
 * @param best of them, those that have the words as they were typed first
 * @param all how many there are
 */
public record PageHits(List<PageHit> best, int all) {

  /**
   * A page.
   *
   * @param file the library's file that it is from
   * @param page of that file, from 1
   */
  public record PageHit(String file, String edition, int page, byte[] payload) {}

  /** Takes pages one by one. */
  public interface PageTaker {
    /**
     * @param text its lines with a newline between
     */
    void take(PageHit hit, String text);
  }
}
