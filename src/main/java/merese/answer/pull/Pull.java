package merese.answer.pull;

import java.util.List;
import java.util.Optional;
import merese.answer.Coverage.ConceptLine;
import merese.answer.Coverage.SourceLine;
import merese.model.Locator;

/**
 * What to take out, twice: in the order of need and in the order of the shelf.
 *
 * @param fromScript whether the order of need is a script's
 * @param asked the features asked for, or that the script comes to
 * @param inOrder each book and piece once, where it is first needed; also what is not at hand
 * @param byShelf what can be taken, as it stands: own shelves, online, then each other holder
 * @param notAtHand lent, missing or without a copy; each of its openings says what to take instead
 * @param uncovered what is asked for that no source covers
 * @param remarks what the reading of the script has to say
 * @param caution to be said once
 */
public record Pull(
    boolean fromScript,
    List<String> asked,
    List<Item> inOrder,
    List<Item> byShelf,
    List<Item> notAtHand,
    List<String> uncovered,
    List<String> remarks,
    String caution) {

  public boolean isEmpty() {
    return inOrder.isEmpty();
  }

  /**
   * One book, or one piece of the user's own.
   *
   * @param source empty for a piece
   * @param piece the reference of the user's own piece
   * @param name author and year, or the piece's reference
   * @param stand where it stands
   * @param flag why it cannot simply be taken from the shelf: "lent to …", "at …", "missing"
   * @param remark what to know of the copies, as that another one is lent
   * @param openings in the order of need; in a list by shelf, in physical order (R5)
   */
  public record Item(
      Optional<SourceLine> source,
      Optional<String> piece,
      String name,
      String title,
      Stand stand,
      Optional<String> flag,
      Optional<String> remark,
      List<Opening> openings) {
    public Item withOpenings(List<Opening> others) {
      return new Item(source, piece, name, title, stand, flag, remark, others);
    }
  }

  /**
   * Where something stands.
   *
   * @param mark a shelf-mark, a place in a cabinet, or an address on the web
   * @param holder who has it; empty for the user's own
   * @param copy the id of the copy
   */
  public record Stand(
      Optional<String> mark, Optional<String> holder, Optional<String> copy, boolean online) {}

  /**
   * One place to open a book at, or one side of a piece to show.
   *
   * @param needs where it comes in the order of need, from 1; several where it comes again
   * @param concepts what is to be seen there
   * @param locator empty for a book as a whole and for a piece
   * @param slips the pages to put a slip in: the page that holds or faces a plate where the locator
   *     says it, else the plate itself
   * @param texts where the source speaks of it
   * @param pictured whether there is a picture of it
   * @param pointAt what to point at
   * @param printed the terms as printed there
   * @param others how many other pieces are pictured at the same place, and what they are called
   * @param turn which way to turn a piece
   * @param spoken what to say
   * @param insteadOf the source that is not at hand, where this is taken in its place
   * @param instead what to take in its place where this source is not at hand
   */
  public record Opening(
      List<Integer> needs,
      List<ConceptLine> concepts,
      Optional<Locator> locator,
      List<String> slips,
      List<Locator> texts,
      boolean pictured,
      Optional<String> pointAt,
      List<String> printed,
      Optional<Others> others,
      Optional<String> turn,
      String spoken,
      Optional<String> insteadOf,
      Optional<Instead> instead) {}

  /** Other pieces at a place; {@code called} may be fewer, since not all have a name in print. */
  public record Others(int count, List<String> called) {}

  /**
   * The next best.
   *
   * @param samePicture whether it is the same picture in another edition or source
   * @param needs the number of the opening that is taken
   */
  public record Instead(
      boolean samePicture, SourceLine source, Optional<Locator> locator, List<Integer> needs) {}
}
