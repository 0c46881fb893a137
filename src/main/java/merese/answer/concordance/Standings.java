package merese.answer.concordance;

import java.util.List;
import java.util.Optional;
import merese.answer.Coverage.CheckLine;
import merese.answer.Coverage.Heading;
import merese.answer.Coverage.Passage;
import merese.answer.Coverage.SourceLine;
import merese.shelf.Shelf;

/**
 * Where each source stands to each concept of a concordance: what it has, and where it has nothing,
 * whether it was looked through.
 *
 * @param concepts all that were asked about, those that no source has at the end
 * @param lines the sources that have, deny or were looked through for one of them, by year
 * @param notChecked sources that were looked through for none and have none
 */
public record Standings(List<Heading> concepts, List<Line> lines, List<SourceLine> notChecked) {

  /** One source: a standing for each concept, in their order. */
  public record Line(SourceLine source, boolean independent, List<Standing> standings) {}

  /**
   * How one source stands to one concept.
   *
   * @param passages what it has, or, where it stands apart, what does not count
   * @param checks how it was looked through
   * @param remark what is known of a source that was not checked
   */
  public record Standing(
      String concept,
      Stand stand,
      List<Passage> passages,
      List<CheckLine> checks,
      Optional<String> remark) {}

  /** In which way. */
  public enum Stand {
    PICTURED("P", "pictured"),
    NAMED("N", "named, in words only"),
    DESCRIBED("D", "described, without a name"),
    NARROWER("K", "has a narrower kind, in its own column"),
    SAYS_NOT_SHOWN("X", "says not shown"),
    APART("A", "has notes that do not count here"),
    CHECKED("0", "checked, without a note"),
    NOT_CHECKED("", "not checked");

    private final String letter;
    private final String words;

    Stand(String letter, String words) {
      this.letter = letter;
      this.words = words;
    }

    /** What tells it apart without colour; "" for what nobody has looked for. */
    public String letter() {
      return letter;
    }

    public String words() {
      return words;
    }
  }

  /** Those of an answer. */
  public static Standings of(Shelf shelf, Concordance answer) {
    return shelf.ask(asked -> new StandingsMaker(asked, answer).make());
  }
}
