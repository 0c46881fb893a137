package merese.answer.first;

import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import merese.answer.Coverage.ConceptLine;
import merese.answer.Coverage.SourceLine;
import merese.model.Locator;
import merese.model.Mine.Coinage;
import merese.model.Mine.Untraced;

/** The answer to a {@link FirstQuestion}: one part a term, in the order asked. */
public record FirstUse(List<Term> terms) {

  /**
   * What the library knows of one term.
   *
   * @param asked as it was typed
   * @param meanings what sources that print it mean by it, the earliest use first
   * @param meaningNotStated what prints it and says nothing of what it means
   * @param inVocabulary what the vocabulary has it for; no evidence that any source prints it
   * @param mine labels of the user's own with that word: "my term"
   * @param met words met somewhere, their source forgotten
   * @param nearTerms words of the vocabulary like it, where it is unknown
   */
  public record Term(
      String asked,
      List<Meaning> meanings,
      Optional<Uses> meaningNotStated,
      List<ConceptLine> inVocabulary,
      List<Coinage> mine,
      List<Untraced> met,
      List<String> nearTerms) {
    /** Whether a source prints it that is not the user's own, for more than "not shown". */
    public boolean isFound() {
      return meaningNotStated.isPresent() && meaningNotStated.get().isDated()
          || meanings.stream().anyMatch(m -> m.uses().isDated());
    }
  }

  /**
   * The word in one meaning.
   *
   * @param before other words that were in print for the same meaning before the earliest use
   */
  public record Meaning(ConceptLine concept, Uses uses, List<Use> before) {}

  /**
   * Who prints the word.
   *
   * @param earliest the sources of the earliest year; several of one year are not told apart
   * @param later the others that have a date, in order
   * @param unsettled reprints whose words may be the original's or may be new matter
   * @param undated sources without a year
   * @param repeats reprints and facsimiles that repeat what another line has; they date nothing
   * @param onlyDenied sources that print it only to say that it is not shown
   * @param ownWork articles and films of the user's own
   */
  public record Uses(
      List<Use> earliest,
      List<Use> later,
      List<Use> unsettled,
      List<Use> undated,
      List<Use> repeats,
      List<Use> onlyDenied,
      List<Use> ownWork) {
    boolean isDated() {
      return !earliest.isEmpty() || !unsettled.isEmpty() || !undated.isEmpty();
    }
  }

  /**
   * One source that prints a word.
   *
   * @param year the year that counts: of the edition, or of the original by a reprint
   * @param byReprint the original is not here, or has no note of the word
   * @param remark what is to be said of the date
   * @param terms what it prints, in physical order
   */
  public record Use(
      SourceLine source,
      OptionalInt year,
      boolean byReprint,
      Optional<String> remark,
      List<Printed> terms) {}

  /** A term as printed and where, in physical order. */
  public record Printed(String term, List<Locator> locators) {}
}
