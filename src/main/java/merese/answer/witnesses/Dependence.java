package merese.answer.witnesses;

import java.util.List;
import java.util.Optional;
import java.util.function.UnaryOperator;

/**
 * That one source says what it does after another.
 *
 * @param reference the other source, as an answer names it
 * @param evidence what shows it, in the user's words
 * @param newMatter what an edition has that its parent has not, as printed
 */
public record Dependence(
    Kind kind, String reference, Optional<String> evidence, Optional<String> newMatter) {

  /** In what way. */
  public enum Kind {
    REVISED("is a revised edition of"),
    REPRINT("is a reprint of"),
    FACSIMILE("is a facsimile of"),
    TRANSLATION("is a translation of"),
    TWIN("is the twin, published elsewhere, of"),
    OTHER_EDITION("is another edition of"),
    REPEATS("repeats"),
    SAME_WORK_ABROAD("is, under another title, the same work as"),
    /** Both follow the source that the step before leads to, which has nothing on this. */
    SAME_ORIGIN("so does"),
    /** All it has is pictures that the other had before. */
    SAME_PICTURE("has only the picture of");

    private final String words;

    Kind(String words) {
      this.words = words;
    }

    /** Goes before the other source's name. */
    public String words() {
      return words;
    }
  }

  /** The steps that lead from a source to its witness, as a sentence without a full stop. */
  public static String sentence(List<Dependence> steps) {
    return sentence(steps, UnaryOperator.identity(), UnaryOperator.identity());
  }

  /**
   * The same.
   *
   * @param together keeps the words of a source's name on one line
   * @param labels keeps each label of a place with its number
   */
  public static String sentence(
      List<Dependence> steps, UnaryOperator<String> together, UnaryOperator<String> labels) {
    StringBuilder words = new StringBuilder();
    for (Dependence step : steps) {
      boolean first = words.isEmpty();
      words.append(first ? "" : step.kind() == Kind.SAME_ORIGIN ? "; " : "; which ");
      words.append(step.kind().words()).append(' ').append(together.apply(step.reference()));
      step.evidence().ifPresent(said -> words.append(": ").append(labels.apply(said)));
      step.newMatter().ifPresent(said -> words.append("; new in it: ").append(said));
    }
    return words.toString();
  }
}
