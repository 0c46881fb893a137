package merese.answer.showing;

import java.util.List;
import java.util.Optional;
import merese.answer.Coverage.ConceptLine;
import merese.answer.Coverage.Heading;
import merese.answer.Coverage.HowToTell;

/**
 * What is shown, one thing after another.
 *
 * @param remarks what cannot be shown, and what the reading of a script has to say
 * @param caution what whoever shows pictures should not forget
 */
public record Showing(List<Slide> slides, List<String> remarks, String caution) {

  /** Said below every slide (common practice, no source). */
  public static final String CAUTION =
      "Attributions are the sources’ opinions. Pictures in books are usually in copyright: check"
          + " before showing them.";

  /**
   * One thing to look at: a feature, a place in a book, or a piece of the user's own.
   *
   * @param heading the user's own term where there is one
   * @param feature empty for a piece, and for a place that no note gives a meaning
   * @param detail of a place or a piece; empty for a feature as a whole
   * @param names who calls it what; the word of most sources first
   * @param unnamed sources that have it and print no word for it
   * @param pictures of sources by year, then of the user's own pieces
   * @param apart what tells it from its look-alikes; only of a feature as a whole
   */
  public record Slide(
      String heading,
      Optional<Heading> feature,
      Optional<Detail> detail,
      List<Called> names,
      List<String> unnamed,
      List<Seen> pictures,
      List<HowToTell> apart) {}

  /**
   * One place in a book, or one side of a piece.
   *
   * @param beside "Quenby 1949, pl. 31", or "d-17, photo p3"
   * @param seen the features that are to be seen, but the one that the slide is headed by
   * @param pointAt what to point at
   * @param turn which way to turn a piece
   */
  public record Detail(
      String beside, List<ConceptLine> seen, List<String> pointAt, Optional<String> turn) {}

  /** A word with the sources that print it, by author and year. */
  public record Called(String word, List<String> references) {}

  /**
   * A picture.
   *
   * @param file below the library's folder of pictures, with "/" between names
   * @param reference the source, or the user's own piece
   * @param at the place, or the photograph's id
   * @param words as printed there, or what the piece shows
   */
  public record Seen(
      String file, String reference, String at, Optional<String> words, boolean own) {}
}
