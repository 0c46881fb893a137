package merese.answer.gaps;

import java.util.List;
import java.util.Optional;
import merese.answer.Coverage.CheckLine;
import merese.answer.Coverage.ConceptLine;
import merese.answer.Coverage.Heading;
import merese.answer.Coverage.PieceLine;
import merese.answer.Coverage.SourceLine;
import merese.model.Locator;
import merese.model.Mine.Coinage;
import merese.model.Mine.Untraced;

/**
 * The answer to a {@link GapsQuestion}.
 *
 * @param whole true where no term was asked for
 * @param sources how many sources it is about; the user's own articles are none
 * @param gaps one a concept, in the order asked, else that of the vocabulary
 * @param tasks the user's copies with what is left to look for in each, in shelf order
 * @param untraced words met somewhere, their source forgotten: never cited
 */
public record GapList(
    boolean whole,
    boolean owned,
    int sources,
    List<Gap> gaps,
    List<Task> tasks,
    List<Untraced> untraced) {

  /** What sources do with a concept or anything narrower. */
  public enum State {
    /** No source names or pictures it. */
    NOTHING,
    /** Named, pictured by none. */
    NAMED_ONLY,
    /** Pictured or described, named by none. */
    WITHOUT_A_NAME,
    NAMED_AND_PICTURED
  }

  /**
   * What is known of one concept.
   *
   * @param uses the sources that name, describe or picture it, by year
   * @param ownWork articles and films of the user's own that do; never witnesses
   * @param saysNotShown sources that only say that it is not shown
   * @param mayMeanIt sources that print a word for it and do not say what they mean
   * @param lookedThrough sources without it that were read or leafed through
   * @param indexOnly sources without it of which the index alone was looked at
   * @param wordSearchOnly sources without it of which the page text alone was searched for its
   *     names
   * @param toNote sources where it was found and no note is made yet
   * @param notInList sources that set kinds out, without it
   * @param noList sources that were looked at for a list and have none
   * @param outOfScope sources, or checks, that the concept lies outside of, with what they are
   *     limited to
   * @param notChecked sources that nobody has looked through for it
   * @param coinages labels of the user's own for it
   * @param pieces of the user's own that show it
   * @param wording how to say what is not found and where it was looked for, in whole sentences
   * @param myWording how to name it by the user's own word, with its evidence
   */
  public record Gap(
      Heading heading,
      State state,
      List<Use> uses,
      List<Use> ownWork,
      List<Use> saysNotShown,
      List<Use> mayMeanIt,
      List<Looked> lookedThrough,
      List<Looked> indexOnly,
      List<Looked> wordSearchOnly,
      List<Looked> toNote,
      List<Looked> notInList,
      List<Looked> noList,
      List<OutOfScope> outOfScope,
      List<SourceLine> notChecked,
      List<Coinage> coinages,
      List<PieceLine> pieces,
      List<String> wording,
      List<String> myWording) {}

  /**
   * What one source has.
   *
   * @param printed the terms as printed; none where it is not named
   */
  public record Use(
      SourceLine source, List<String> printed, List<Locator> pictured, List<Locator> inWords) {}

  /** A source that was looked through. */
  public record Looked(SourceLine source, List<CheckLine> checks) {}

  /** A source that the concept lies outside of. */
  public record OutOfScope(SourceLine source, String remark) {}

  /**
   * A copy of the user's own and what is left to look for in it.
   *
   * @param away where it is, when not on its shelf
   * @param indexOnly concepts that were only looked up in its index
   * @param wordSearchOnly concepts whose names were only searched for in its page text
   */
  public record Task(
      SourceLine source,
      Optional<String> shelfMark,
      Optional<String> away,
      List<ConceptLine> notChecked,
      List<ConceptLine> indexOnly,
      List<ConceptLine> wordSearchOnly,
      List<ConceptLine> toNote) {}
}
