package merese.answer.quote;

import java.util.List;
import java.util.Optional;
import merese.answer.Correction;
import merese.answer.Coverage.ConceptLine;
import merese.answer.Coverage.Group;
import merese.answer.Coverage.Heading;
import merese.answer.Coverage.SourceLine;
import merese.model.Locator;

/**
 * The answer to a {@link QuoteQuestion}.
 *
 * @param sections one a feature, in the order in which they were asked, or one a source
 * @param remarks what the style of the citations cannot do
 * @param legend how the quotations are written
 */
public record Quotations(List<Section> sections, List<String> remarks, List<String> legend) {
  public boolean isEmpty() {
    for (Section section : sections) {
      if (section.count() > 0) {
        return false;
      }
    }
    return true;
  }

  /**
   * What is quoted on one feature, or from one source.
   *
   * @param heading the feature; empty for a source
   * @param source the source; empty for a feature
   * @param words those that each quotation has, where some were asked for
   * @param count how many quotations there are
   * @param sources how many sources they are from, without the user's own articles and films
   * @param without how many notes have no quotation, or none with the words asked for
   * @param groups those that hold something, in the order of {@link Group} (R9); of a source, all
   *     in one
   */
  public record Section(
      Optional<Heading> heading,
      Optional<SourceLine> source,
      Optional<String> words,
      int count,
      int sources,
      int without,
      List<Grouped> groups) {}

  /** Quotations that are alike in what they are worth. */
  public record Grouped(Group group, List<Quotation> quotations) {}

  /**
   * One quotation.
   *
   * @param note the note's id in its source
   * @param concepts what the note is about, where that is not just what was asked
   * @param narrower whether those are narrower than what was asked (R1)
   * @param places where it stands, in physical order (R5): the note's places in words, or its
   *     pictures where it has no others
   * @param words unaltered but for page breaks, which are in square brackets: "re[41|42]vival"
   * @param pages the numbers of the pages that it is broken over; none where it is not, or where
   *     they are not known
   * @param doubt what is not known of its page breaks, as the start of a sentence
   * @param citation the source as cited: in full at its first mention in the answer, and wherever a
   *     short form would not tell the edition
   * @param correction whether the note corrects something
   * @param corrects what it says that it corrects: "Quenby 1926, p. 61"
   * @param corrected what corrects it
   */
  public record Quotation(
      SourceLine source,
      String note,
      List<ConceptLine> concepts,
      boolean narrower,
      List<Locator> places,
      String words,
      List<String> pages,
      Optional<String> doubt,
      String citation,
      boolean correction,
      List<String> corrects,
      List<Correction> corrected) {}
}
