package merese.search;

import java.util.List;
import merese.model.PlaceTest;

/** What a note must have to be found. */
public sealed interface NoteCriterion {
  /** A naming that means the concept or something narrower. */
  record Means(String concept) implements NoteCriterion {}

  /** A naming that means just this concept. */
  record MeansExactly(String concept) implements NoteCriterion {}

  /**
   * A naming that has to do with a concept, with a place of a kind.
   *
   * @param how what it has to do with it
   * @param place what one of its places passes
   * @param pictured whether one that does has to be a picture
   */
  record Says(String concept, How how, PlaceTest place, boolean pictured) implements NoteCriterion {
    /** What a naming has to do with a concept. */
    public enum How {
      MEANS_JUST_THIS,
      MEANS_THIS_OR_NARROWER,
      /** It has no concept, and its words may mean this or something narrower. */
      MAY_MEAN
    }
  }

  /** Namings of which, all together, something is so. */
  record Namings(Together what) implements NoteCriterion {}

  /** What is so of all namings of a note together. */
  enum Together {
    /** There are several. */
    SEVERAL,
    /** Each has a concept and a place that does not deny it. */
    EACH_PRESENT,
    /** Each has a concept and such a place that is a picture. */
    EACH_PICTURED,
    /** The second of these is so of some and not of others. */
    SOME_PRESENT,
    /** The third of these is so of some and not of others. */
    SOME_PICTURED
  }

  /** A naming without a concept whose words may mean the concept or something narrower. */
  record MayMean(String concept) implements NoteCriterion {}

  /**
   * A printed term in which the words stand one after another.
   *
   * @param words folded, with a space between
   */
  record Prints(String words) implements NoteCriterion {}

  /** A printed term that is just these folded words. */
  record PrintsExactly(List<String> words) implements NoteCriterion {}

  /** A place that speaks of this piece. */
  record SpeaksOf(String edition, String piece) implements NoteCriterion {}

  /** A place that corrects something in this edition. */
  record Corrects(String edition) implements NoteCriterion {}

  /** A link to this piece of the user's own. */
  record LinkedTo(String object) implements NoteCriterion {}

  /** Any note of this edition. */
  record InSource(String edition) implements NoteCriterion {}
}
