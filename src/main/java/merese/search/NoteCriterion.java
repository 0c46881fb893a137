package merese.search;

import java.util.List;

/** What a note must have to be found. */
public sealed interface NoteCriterion {
  /** A naming that means the concept or something narrower. */
  record Means(String concept) implements NoteCriterion {}

  /** A naming that means just this concept. */
  record MeansExactly(String concept) implements NoteCriterion {}

  /** A naming that means just this concept, with a place that does not deny it. */
  record HasExactly(String concept) implements NoteCriterion {}

  /** The same with a place that is a picture. */
  record PicturesExactly(String concept) implements NoteCriterion {}

  /** A naming without a concept whose words may mean the concept or something narrower. */
  record MayMean(String concept) implements NoteCriterion {}

  /** A printed term in which the folded words stand one after another. */
  record Prints(List<String> words) implements NoteCriterion {}

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
