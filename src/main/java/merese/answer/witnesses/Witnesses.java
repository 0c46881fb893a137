package merese.answer.witnesses;

import java.util.List;
import java.util.Optional;
import merese.answer.Coverage.Entry;
import merese.answer.Coverage.Heading;
import merese.answer.Coverage.SourceLine;
import merese.model.Locator;

/**
 * The answer to a {@link WitnessesQuestion}.
 *
 * @param sections one a feature
 */
public record Witnesses(List<Section> sections) {

  /**
   * Who has one feature, or something narrower, and after whom.
   *
   * @param sources how many sources have it, the user's own works aside
   * @param independent how many witnesses that are
   * @param witnesses by the year of the first source of each
   * @param pictures pictures that several sources have
   * @param borrowings pictures taken from another work, as recorded of the works
   * @param citations who cites whom among the sources, and counts all the same
   * @param ownWorks the user's own articles and films, which are no witnesses
   */
  public record Section(
      Heading heading,
      int sources,
      int independent,
      List<Witness> witnesses,
      List<SharedPicture> pictures,
      List<Mention> borrowings,
      List<Mention> citations,
      List<Entry> ownWorks) {
    /** How many speak for themselves, in a sentence. */
    public String counted() {
      int folded = sources - independent;
      if (sources == 0) {
        return "No source in this library covers it.";
      } else if (folded == 0) {
        return sources == 1
            ? "1 source covers it."
            : sources + " sources cover it; nothing recorded makes one follow another.";
      }
      return sources
          + " sources cover it; "
          + independent
          + (independent == 1 ? " speaks" : " speak")
          + " independently, and "
          + folded
          + (folded == 1 ? " follows another." : " follow another.");
    }
  }

  /**
   * A source that speaks for itself, with those that say what they do after it.
   *
   * @param folded by year
   */
  public record Witness(Entry first, List<Folded> folded) {}

  /**
   * A source that is no witness of its own.
   *
   * @param why the steps that lead to the witness
   */
  public record Folded(Entry source, List<Dependence> why) {}

  /** One picture and where it is, by year. */
  public record SharedPicture(String picture, List<Printing> printings) {}

  /**
   * Where a picture is printed.
   *
   * @param locator empty where the edition dropped it
   * @param noted false where only the edition's list of plates says so
   * @param mine true for a work of the user's own
   */
  public record Printing(
      SourceLine source, Optional<Locator> locator, boolean noted, boolean mine) {}

  /**
   * That a work names another, as recorded of the works.
   *
   * @param by the work's first edition among the sources
   * @param of the first edition of the other work that is among them
   */
  public record Mention(
      SourceLine by, SourceLine of, Optional<String> picture, Optional<String> evidence) {}
}
