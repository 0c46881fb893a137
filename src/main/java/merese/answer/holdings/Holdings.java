package merese.answer.holdings;

import java.util.List;
import java.util.Optional;
import merese.answer.Coverage.SourceLine;
import merese.answer.holdings.HoldingsQuestion.Order;

/**
 * The answer to a {@link HoldingsQuestion}: one page of it, with what there is on the others.
 *
 * @param found how many sources there are
 * @param all how many the library has
 * @param pages at least 1
 * @param divisions all headings, with the page on which each begins
 * @param sections of this page
 */
public record Holdings(
    Order by,
    String find,
    int found,
    int all,
    int page,
    int pages,
    List<Division> divisions,
    List<Section> sections) {

  /**
   * A heading.
   *
   * @param count of the lines below it, on whatever page
   */
  public record Division(String label, int count, int page) {}

  /**
   * A heading and what stands below it on this page.
   *
   * @param continued whether it began on an earlier page
   */
  public record Section(String label, int count, boolean continued, List<Line> lines) {}

  /**
   * A source; in the order of shelf-marks a copy of it.
   *
   * @param copies that one copy, or all
   */
  public record Line(SourceLine source, boolean mine, List<CopyLine> copies) {}

  /**
   * A copy.
   *
   * @param where it is, if not on the user's own shelf: "lent to …", "missing", "at …"
   */
  public record CopyLine(String id, Optional<String> shelfMark, Optional<String> where) {}
}
