package merese.answer.editions;

import java.util.List;
import java.util.Optional;
import merese.answer.Coverage.SourceLine;
import merese.model.Locator;

/**
 * The answer to an {@link EditionsQuestion}.
 *
 * @param work the work's id
 * @param author as an answer names it
 * @param editions all that the library knows of, by year, with translations and twins that are
 *     works of their own
 * @param pictures one row a picture, in the order of the first edition that has it
 * @param from what somebody else's citation is in the other editions
 */
public record EditionGrid(
    String work,
    String author,
    String title,
    List<String> otherTitles,
    List<EditionLine> editions,
    List<Picture> pictures,
    Optional<From> from) {

  /**
   * An edition.
   *
   * @param year the year as printed, with what the edition is before it: "facs. 1977"
   * @param statement the edition as printed
   * @param form how it stands to its parent: "revised", "facsimile"
   * @param parent reference of the edition that it repeats or revises
   * @param parentMissing true where that edition is not in this library
   * @param title its own, where it is not the work's
   * @param newMatter what was added, and by whom
   * @param platesAs the year of the edition whose plates it has, where it repeats them and has no
   *     list of its own
   * @param platesRecorded whether the library knows of any plate in it
   */
  public record EditionLine(
      SourceLine source,
      String year,
      Optional<String> statement,
      Optional<String> form,
      Optional<String> parent,
      boolean parentMissing,
      Optional<String> title,
      Optional<String> newMatter,
      Optional<String> platesAs,
      boolean platesRecorded) {}

  /** What became of a picture in an edition. */
  public enum State {
    /** There, in the first edition that is known to have it. */
    FIRST,
    /** There under the number that its parent has. */
    KEPT,
    /** There under another number. */
    RENUMBERED,
    DROPPED,
    /** Another piece stands in its place, and nothing says more. */
    OTHER_OBJECT,
    NOT_RECORDED;

    public boolean isThere() {
      return this == FIRST || this == KEPT || this == RENUMBERED;
    }
  }

  /**
   * A picture in one edition.
   *
   * @param edition key
   * @param as the year of the edition that this is known by, for a facsimile or reprint without a
   *     list of its own
   * @param printed what the edition calls it there, as printed
   * @param words what the plate list says of it
   * @param others what is shown in its place and is a different object, never the same picture
   */
  public record Cell(
      String edition,
      State state,
      List<Locator> locators,
      Optional<String> as,
      List<String> printed,
      Optional<String> words,
      List<OtherObject> others) {}

  /** A picture of another piece in the place of one. */
  public record OtherObject(Locator locator, Optional<String> words) {}

  /**
   * One picture in all editions.
   *
   * @param id the picture's, the same in every edition
   * @param cells one an edition, in the order of the editions
   * @param concordance the same picture under its numbers; one side only where it has one number
   * @param withoutIt the years of the editions with no equivalent recorded
   * @param cite what may be cited from copies on the user's shelf
   * @param away the same for copies that are lent or missing
   * @param elsewhere the same for copies that others have, or that nobody is known to have
   */
  public record Picture(
      String id,
      List<Cell> cells,
      List<Side> concordance,
      List<String> withoutIt,
      List<CiteLine> cite,
      List<CiteLine> away,
      List<CiteLine> elsewhere) {}

  /** One number of a picture and the years of the editions that have it so. */
  public record Side(List<Locator> locators, List<String> years) {}

  /** A citation of a picture. */
  public record CiteLine(String reference, List<Locator> locators, Optional<String> whereabouts) {}

  /**
   * What a citation of somebody else's is in the other editions.
   *
   * @param edition reference of the edition that it is of; empty for any
   * @param pictures ids of the pictures at that place
   * @param otherObjects ids of the pictures in whose place another object is shown there
   */
  public record From(
      Locator locator,
      Optional<String> edition,
      List<String> pictures,
      List<String> otherObjects) {}
}
