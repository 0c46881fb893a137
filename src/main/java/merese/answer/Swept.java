package merese.answer;

import java.util.List;
import java.util.Optional;
import merese.answer.Coverage.ConceptLine;
import merese.answer.Coverage.Heading;
import merese.answer.Coverage.SourceLine;
import merese.answer.Found.Text;
import merese.model.Locator;

/**
 * The pages of books that name a feature and have no note of it, to be looked at one by one.
 *
 * @param asked as it was typed
 * @param texts how many attached texts were looked at
 * @param pages how many pages they have
 * @param withoutText how many of these have no text, so that nothing can stand there
 * @param noted how many times a name stands where it is noted already
 * @param all how many times one stands where it is not
 * @param places the first of these, by source and page
 * @param searched each attached text, by source, where that was asked for
 */
public record Swept(
    String asked,
    Heading heading,
    int texts,
    int pages,
    int withoutText,
    int noted,
    int all,
    List<Place> places,
    List<Searched> searched) {

  /**
   * A text that was searched for the names.
   *
   * @param extent the printed pages and plates of it that have text
   * @param besides what else of it has text, in words
   * @param found whether a name stands in it, noted or not, if only perhaps
   */
  public record Searched(
      SourceLine source, Optional<Locator> extent, Optional<String> besides, boolean found) {}

  /**
   * A name on a page.
   *
   * @param locator the printed page or plate; empty where there is no number
   * @param cited the locator, or else the place in the file
   * @param words as they stand in the text
   * @param concepts what was asked for, or something narrower, of which they are a name
   * @param narrower whether all of these are narrower
   * @param mayMeanElse whether the words are used for something else as well
   * @param loose whether they are only like the name, with letters taken for others
   * @param passage the sentence in which they stand
   */
  public record Place(
      SourceLine source,
      Optional<Locator> locator,
      String cited,
      String words,
      List<ConceptLine> concepts,
      boolean narrower,
      boolean mayMeanElse,
      boolean loose,
      Text passage) {}
}
