package merese.answer.holdings;

import java.util.List;
import java.util.Optional;
import merese.answer.CitedSource;
import merese.answer.Correction;
import merese.answer.Coverage.CheckLine;
import merese.answer.Coverage.ConceptLine;
import merese.answer.Coverage.SourceLine;
import merese.answer.editions.EditionGrid.EditionLine;
import merese.model.Claim;
import merese.model.Copy;
import merese.model.Locator;
import merese.model.Note;

/**
 * One source with all that the library has of it.
 *
 * @param work the id of its work
 * @param mine whether it is a work of the user's own
 * @param scope what it limits itself to, in words
 * @param editions of its work, and of what translates it or was published beside it, by year
 * @param notes in the order in which one meets them in the source (R5)
 * @param corrections of it, by whatever source
 */
public record Holding(
    SourceLine source,
    String work,
    boolean mine,
    CitedSource cited,
    Optional<String> scope,
    List<PartLine> parts,
    List<EditionLine> editions,
    List<Copy> copies,
    List<NoteLine> notes,
    List<Looked> checks,
    List<Correction> corrections) {

  /** An entry, chapter or essay. */
  public record PartLine(String id, String title, List<String> authors, Optional<Locator> extent) {}

  /**
   * A note.
   *
   * @param places in their order in the source
   * @param corrects what it corrects, each as "Quenby 1926, p. 61"
   * @param piece the user's own that it is of, or like
   * @param rights in its pictures, a line each
   * @param checked by whom, and when
   * @param corrections of what it says
   */
  public record NoteLine(
      String id,
      List<NamingLine> namings,
      List<PlaceLine> places,
      List<Claim> claims,
      Optional<String> quotation,
      Optional<String> reading,
      Optional<String> part,
      Optional<Note.ObjectLink> piece,
      List<String> rights,
      Optional<Note.Checked> checked,
      List<String> corrects,
      List<Correction> corrections) {}

  /**
   * A term as printed.
   *
   * @param why what the meaning rests on: "text", "picture", "my reading"
   */
  public record NamingLine(String printed, Optional<ConceptLine> concept, Optional<String> why) {}

  /**
   * A place.
   *
   * @param stance what the source does there: "names", "pictures" …
   * @param medium "text", "photo", "drawing" or "caption"
   * @param naming the term that it speaks of, where the note has several
   * @param photo the user's own, a file below the folder of pictures
   */
  public record PlaceLine(
      Locator locator,
      String stance,
      String medium,
      Optional<String> shows,
      Optional<String> naming,
      Optional<String> picture,
      Optional<String> piece,
      Optional<String> photo) {}

  /**
   * That it was looked through.
   *
   * @param on the day, as 2025-03-02
   * @param copy the id of the copy
   */
  public record Looked(
      ConceptLine concept,
      CheckLine check,
      Optional<String> on,
      Optional<String> by,
      Optional<String> copy) {}
}
