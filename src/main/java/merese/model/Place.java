package merese.model;

import java.util.Optional;

/**
 * One place in a source, with what it does there.
 *
 * @param medium decides whether the place is a picture: a photograph on p. 41 is one, an
 *     unillustrated lot is not
 * @param shows what a picture shows; empty for text
 * @param naming the printed term it speaks of, where the note has several; empty for all of them
 * @param picture an id shared by the same photograph in any edition
 * @param piece an id shared by all places of an edition that speak of the same piece, so that a
 *     caption can be held against the text
 * @param corrects what a correction corrects; empty where that is not noted
 * @param photo the user's own photograph of the place: a file below the folder of pictures, with
 *     "/" between names
 */
public record Place(
    Locator locator,
    Stance stance,
    Medium medium,
    Optional<Shows> shows,
    Optional<String> naming,
    Optional<String> picture,
    Optional<String> piece,
    Optional<Corrected> corrects,
    Optional<String> photo) {

  /**
   * What a correction corrects.
   *
   * @param edition the key of an edition
   * @param locator where in it; empty where the correction does not say
   */
  public record Corrected(String edition, Optional<Locator> locator) {
    public Corrected {
      Require.text(edition, "the key of the edition that is corrected");
    }
  }

  /** What a source does with a feature at a place. */
  public enum Stance implements Coded {
    NAMES,
    DEFINES,
    DESCRIBES_UNNAMED,
    PICTURES,
    SAYS_ABSENT,
    CORRECTS,
    LISTS
  }

  /** What a place consists of. */
  public enum Medium implements Coded {
    TEXT,
    PHOTO,
    DRAWING,
    CAPTION;

    public boolean isPicture() {
      return this == PHOTO || this == DRAWING;
    }
  }

  /** What a picture shows. One of a process is not a picture of the kind. */
  public enum Shows implements Coded {
    EXAMPLE,
    DETAIL,
    PROFILE,
    PROCESS
  }

  public Place {
    Require.that(
        stance != Stance.PICTURES || medium.isPicture(),
        "stance \"pictures\" needs medium \"photo\" or \"drawing\"; a text or a caption \"names\","
            + " \"defines\" or \"describes-unnamed\"");
    Require.that(
        shows.isEmpty() || medium.isPicture(),
        "\"shows\" belongs to a photo or a drawing; leave it out for a text or a caption");
    Require.that(
        corrects.isEmpty() || stance == Stance.CORRECTS,
        "\"corrects\" belongs to a place with stance \"corrects\"; write that, or leave it out");
    Require.that(
        photo.isEmpty() || isBelow(photo.get()),
        "\"photo\" is the path of a file below library/pictures, such as"
            + " \"quenby-1949/quenby-1949-pl-31.jpg\"");
  }

  /** Whether a path leads below the folder that it starts from. */
  private static boolean isBelow(String path) {
    for (String name : path.split("/", -1)) {
      if (name.isBlank() || name.startsWith(".") || name.indexOf('\\') >= 0) {
        return false;
      }
    }
    return path.indexOf(':') < 0;
  }

  /** A place that corrects nothing, or of which nobody has noted what it corrects. */
  public Place(
      Locator locator,
      Stance stance,
      Medium medium,
      Optional<Shows> shows,
      Optional<String> naming,
      Optional<String> picture,
      Optional<String> piece) {
    this(locator, stance, medium, shows, naming, picture, piece, Optional.empty());
  }

  /** A place of which there is no photograph of the user's. */
  public Place(
      Locator locator,
      Stance stance,
      Medium medium,
      Optional<Shows> shows,
      Optional<String> naming,
      Optional<String> picture,
      Optional<String> piece,
      Optional<Corrected> corrects) {
    this(locator, stance, medium, shows, naming, picture, piece, corrects, Optional.empty());
  }

  /** The same place with something else corrected. */
  public Place withCorrects(Optional<Corrected> other) {
    return new Place(locator, stance, medium, shows, naming, picture, piece, other, photo);
  }

  /** The same place with a photograph of it. */
  public Place withPhoto(String file) {
    return new Place(
        locator, stance, medium, shows, naming, picture, piece, corrects, Optional.of(file));
  }

  /** Whether this is a picture of the kind itself. */
  public boolean isPictured() {
    return medium.isPicture() && stance != Stance.SAYS_ABSENT && !showsProcess();
  }

  public boolean showsProcess() {
    return shows.isPresent() && shows.get() == Shows.PROCESS;
  }
}
