package merese.answer.identify;

import java.util.List;
import java.util.Optional;
import merese.answer.Coverage.ConceptLine;
import merese.answer.Coverage.Entry;
import merese.answer.Coverage.HowToTell;
import merese.answer.Coverage.PieceLine;
import merese.model.OwnObject.Observation;
import merese.model.OwnObject.Observation.Sense;

/**
 * The answer to an {@link IdentifyQuestion}.
 *
 * @param caution stands with every such answer
 * @param piece the user's own piece whose observations were taken
 * @param compared the terms that the question is limited to; none where all kinds are compared
 * @param notInKey those of the terms for which the key has no kind
 * @param kinds how many kinds were compared
 * @param observed what was seen, felt or looked for, by character, in the key's order
 * @param unread what is recorded of the piece and could not be read by the key
 * @param fits the kinds that nothing observed speaks against and the key says something of: those
 *     with the most characters first; none where nothing was found
 * @param open the kinds on which the key says nothing of what was observed, so that they stay
 * @param ruledOut the kinds that something observed speaks against
 * @param notLookedAt the characters not looked at: those that tell most of the remaining kinds
 *     apart first
 * @param tests of the vocabulary, among the remaining kinds
 * @param parts what each part of the piece says by itself, where it has several
 */
public record Identification(
    String caution,
    KeyLine key,
    Optional<Piece> piece,
    List<ConceptLine> compared,
    List<ConceptLine> notInKey,
    int kinds,
    List<Observed> observed,
    List<Unread> unread,
    List<Fitting> fits,
    List<Fitting> open,
    List<RuledOut> ruledOut,
    List<NotLookedAt> notLookedAt,
    List<HowToTell> tests,
    List<PartReading> parts) {
  static final String CAUTION =
      "This compares what you saw with the literature. It does not say what the piece is, when it"
          + " was made or that it is right; an attribution is not an appraisal. Ask a specialist.";

  /** Whether anything was found, so that kinds could be told apart by it. */
  public boolean tells() {
    return observed.stream().anyMatch(o -> o.seen().stream().anyMatch(s -> s.value().isPresent()));
  }

  /** Whether nothing was found and no kinds were named: what to look at is all there is to say. */
  public boolean asksWhatToLookAt() {
    return !tells() && compared.isEmpty();
  }

  /** Whether no kind is left. */
  public boolean leavesNoKind() {
    return !asksWhatToLookAt() && fits.isEmpty() && open.isEmpty();
  }

  /**
   * The key that was used.
   *
   * @param basis what it is made from
   * @param ofLibrary false where the library has none and the program's own stands in
   * @param notInVocabulary concepts of the key that the library's vocabulary lacks
   */
  public record KeyLine(String basis, boolean ofLibrary, List<String> notInVocabulary) {}

  /**
   * A piece of the user's own.
   *
   * @param part the only part that was taken
   * @param evidence what the user has it down as
   */
  public record Piece(String ref, String title, Optional<String> part, List<PieceLine> evidence) {}

  /**
   * What was observed of one character.
   *
   * @param mixed whether it was found to be several things, as one ring may be round its length
   */
  public record Observed(String id, String label, boolean mixed, List<Seen> seen) {}

  /**
   * One observation.
   *
   * @param value the key's value; empty for what was looked for and not found
   * @param said how an answer says it: "felt on the outside", "looked for, not found"
   * @param part of the piece, where it is one of the user's own
   * @param words as recorded of the piece
   */
  public record Seen(
      Optional<String> value,
      String said,
      Optional<String> part,
      Optional<Sense> sense,
      Optional<String> words,
      Optional<String> photo) {}

  /** An observation that says nothing to the key, and why. */
  public record Unread(Observation observation, String why) {}

  /**
   * A kind that remains.
   *
   * @param agreements the characters observed that the key speaks of
   * @param remark a look-alike test that names no other kind
   * @param pictured the sources that picture it or something narrower, with those places alone
   */
  public record Fitting(
      ConceptLine concept,
      String definition,
      boolean uncertain,
      List<Agreement> agreements,
      Optional<String> remark,
      List<Entry> pictured) {}

  /**
   * What the key says of a character that was observed.
   *
   * @param fits what of it the kind may show
   * @param not what of it the kind does not show, where it is mixed
   */
  public record Agreement(String character, List<String> fits, List<String> not) {}

  /** A kind that does not fit. */
  public record RuledOut(ConceptLine concept, List<Against> against) {}

  /**
   * What speaks against a kind.
   *
   * @param observed what was found
   * @param allows what the kind shows by the key; none where it never shows any of it
   */
  public record Against(String character, List<String> observed, List<String> allows) {}

  /**
   * A character that was not looked at.
   *
   * @param senses "seen", "felt" or "seen or felt"
   * @param values what may be answered; none where it is counted
   * @param tellsApart how many of the remaining kinds differ in it from some other one
   * @param pairs how many pairs of them differ in it
   * @param sides what the remaining kinds show, where it tells some apart
   */
  public record NotLookedAt(
      String id,
      String label,
      String question,
      String look,
      String senses,
      List<ValueLine> values,
      int tellsApart,
      int pairs,
      List<Side> sides) {}

  /** A value as it is typed, and what it means. */
  public record ValueLine(String id, String label) {}

  /** The kinds that show the same of a character; {@code allows} as in {@link Against}. */
  public record Side(List<String> allows, List<ConceptLine> kinds) {}

  /**
   * What one part of a piece says by itself.
   *
   * @param fits the kinds that it speaks for
   * @param ruledOut how many kinds it speaks against
   */
  public record PartReading(
      String part, List<Observed> observed, List<ConceptLine> fits, int ruledOut) {}
}
