package merese.answer.fewest;

import java.util.List;
import java.util.Optional;
import merese.answer.Coverage.Heading;
import merese.answer.Coverage.Passage;
import merese.answer.Coverage.SourceLine;

/**
 * The answer to a {@link FewestQuestion}.
 *
 * @param topics the features asked for, each once
 * @param pictured whether each had to be pictured
 * @param candidates how many sources have any of the features and were allowed
 * @param proof what was proved
 * @param best the choice that comes first by rule R6; empty where no source has any of the features
 * @param ties the next choices of as many sources, in the order of R6; at most ten
 * @param moreTies whether there are more than those
 * @param nowhere features that no allowed source has as it was asked; they are left out of the sum
 * @param instead where a source of the best choice is not to hand: the best choice without such
 */
public record FewestSources(
    List<Heading> topics,
    boolean pictured,
    int candidates,
    Proof proof,
    Optional<Choice> best,
    List<Tie> ties,
    MoreTies moreTies,
    List<Nowhere> nowhere,
    Optional<Instead> instead) {

  /**
   * How far a search came.
   *
   * @param fewest whether it is proved that no fewer sources do
   * @param ranked whether it is proved that no equally few come before the best by R6
   * @param atLeast so many sources are needed, as far as is proved
   * @param seconds the time that it was given
   */
  public record Proof(boolean fewest, boolean ranked, int atLeast, int seconds) {}

  /** Whether there are choices as good in number beyond those listed. */
  public enum MoreTies {
    NONE,
    SOME,
    NOT_KNOWN
  }

  /**
   * Sources that have all features between them.
   *
   * @param sources by year of the edition, then author
   * @param inWordsOnly features that none of them pictures
   * @param narrowerOnly features that they have only as something narrower
   */
  public record Choice(
      List<Taken> sources, Rank rank, List<Heading> inWordsOnly, List<Heading> narrowerOnly) {}

  /**
   * One source of a choice.
   *
   * @param must whether the user asked for it
   * @param finds one a feature that it has, in the order of the question
   */
  public record Taken(SourceLine source, boolean must, List<Find> finds) {}

  /**
   * What a source has of a feature.
   *
   * @param passages the feature itself first, then what is narrower
   */
  public record Find(Heading topic, List<Passage> passages) {
    boolean isPictured() {
      return passages.stream().anyMatch(passage -> !passage.pictured().isEmpty());
    }

    Find onlyPictured() {
      return new Find(
          topic, passages.stream().filter(passage -> !passage.pictured().isEmpty()).toList());
    }
  }

  /**
   * What R6 compares, one after the other.
   *
   * @param pictured how many features are pictured
   * @param exact how many are had as themselves, not only as something narrower
   * @param owned how many of the sources the user has a copy of
   * @param years of the editions, ascending; "n.d." for undated ones, which come last
   */
  public record Rank(int sources, int pictured, int exact, int owned, List<String> years) {}

  /** By what a choice comes after the best one. */
  public enum Behind {
    PICTURED,
    EXACT,
    OWNED,
    YEARS,
    AUTHORS
  }

  /** Another choice of as many sources. */
  public record Tie(List<SourceLine> sources, Rank rank, Behind behind) {}

  /**
   * A feature that is left out.
   *
   * @param inWords sources that have it in words, where a picture was asked for
   * @param notAllowed sources that have it but were not allowed
   * @param saysNotShown sources that say they do not show it, which is not to have it (R3)
   * @param ownWork the user's own articles and films that have it, which are no sources here
   */
  public record Nowhere(
      Heading topic,
      List<SourceLine> inWords,
      List<SourceLine> notAllowed,
      List<SourceLine> saysNotShown,
      List<SourceLine> ownWork) {}

  /**
   * What to do without the sources that are not to hand.
   *
   * @param unavailable those of the best choice that are lent, missing or elsewhere
   * @param choice empty where some feature is in no other source
   * @param proved whether it is proved that no fewer of the others do
   */
  public record Instead(List<SourceLine> unavailable, Optional<Choice> choice, boolean proved) {}
}
