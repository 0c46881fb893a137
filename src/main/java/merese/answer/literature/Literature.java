package merese.answer.literature;

import java.util.List;
import java.util.Optional;
import merese.answer.Correction;
import merese.answer.Coverage.ConceptLine;
import merese.answer.Coverage.Heading;
import merese.answer.Coverage.SourceLine;
import merese.model.Claim;
import merese.model.Locator;

/**
 * The answer to a {@link LiteratureQuestion}.
 *
 * @param sections one a piece or a feature, in the order in which they were asked
 * @param remarks what the style of the citations cannot do
 * @param cautions what nobody should forget who describes a piece
 */
public record Literature(List<Section> sections, List<String> remarks, List<String> cautions) {
  public boolean isEmpty() {
    for (Section section : sections) {
      if (!section.isEmpty()) {
        return false;
      }
    }
    return true;
  }

  /**
   * The literature of one piece, or of one feature.
   *
   * @param piece the user's own piece; empty for a feature
   * @param same "Lit.": notes of that very piece, each with its evidence, in the order of R4
   * @param similar "Cf.": notes of pieces that somebody found like it
   * @param ownWork the user's own articles and films on the piece; never a witness
   * @param ofThePiece what its literature claims of the piece itself
   * @param types what there is on its features, one each
   */
  public record Section(
      Optional<Piece> piece,
      List<Mention> same,
      List<Mention> similar,
      List<Mention> ownWork,
      Optional<Sentence> ofThePiece,
      List<OfType> types) {
    boolean isEmpty() {
      return same.isEmpty()
          && similar.isEmpty()
          && ownWork.isEmpty()
          && types.stream().allMatch(OfType::isEmpty);
    }
  }

  /** A piece of the user's own. */
  public record Piece(String ref, String title) {}

  /**
   * What one source has of a piece, or of its type.
   *
   * @param note the note's id in its source; empty where several notes make it
   * @param places in physical order, pictured ones first (R5)
   * @param narrower the narrower kind that it shows (R1)
   * @param evidence why it is the same piece, or like it
   * @param citation in full
   * @param corrected what corrects it
   */
  public record Mention(
      SourceLine source,
      Optional<String> note,
      List<Locator> places,
      Optional<ConceptLine> narrower,
      Optional<String> evidence,
      String citation,
      List<Correction> corrected) {}

  /**
   * A feature: other pieces that show it, and what is claimed of it.
   *
   * @param pictured "Cf." by type alone: never the same piece; in the order of R4
   * @param ownWork the user's own articles and films
   * @param claimed what may be said of a piece that has it; empty where nobody claims anything
   * @param narrower the same of narrower kinds, apart
   * @param copies warnings of copies: each a source with its words
   * @param saysNotShown sources that only say that they do not show it (R3)
   */
  public record OfType(
      Heading heading,
      List<Mention> pictured,
      List<Mention> ownWork,
      Optional<Sentence> claimed,
      List<Sentence> narrower,
      List<Saying> copies,
      List<SourceLine> saysNotShown) {
    boolean isEmpty() {
      return pictured.isEmpty()
          && ownWork.isEmpty()
          && claimed.isEmpty()
          && narrower.isEmpty()
          && copies.isEmpty();
    }
  }

  /**
   * One hedged sentence.
   *
   * @param words the whole sentence: "Of a type given mainly to Ireland by … (“mainly Irish”)."
   * @param clauses what it is put together from
   * @param disagreement that its sources can't all be right; empty where they may
   */
  public record Sentence(
      ConceptLine concept, String words, List<Clause> clauses, Optional<String> disagreement) {}

  /** Sources that say alike: "given mainly to Ireland". */
  public record Clause(Claim.Kind kind, String lead, List<Saying> sayings) {}

  /**
   * What one source says.
   *
   * @param words verbatim
   * @param limits hedge, bracket and whatever else limits it
   * @param corrected what corrects the note
   */
  public record Saying(
      SourceLine source,
      String note,
      List<Locator> places,
      String words,
      List<String> limits,
      List<Correction> corrected) {}
}
