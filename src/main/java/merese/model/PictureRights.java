package merese.model;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * What is noted of the rights in a picture: what somebody said, never what the law is. A picture of
 * a piece in a book has three layers, each with a holder of its own (common practice, no source).
 * What is not noted is not known; nothing follows from a date.
 *
 * @param book what the publisher or author of the book says
 * @param photograph the same of the photographer or draughtsman
 * @param owner the same of who owns the piece that is shown
 * @param credit the wording that is asked for
 * @param words what is noted and of no layer, as one text
 */
public record PictureRights(
    Optional<Layer> book,
    Optional<Layer> photograph,
    Optional<Layer> owner,
    Optional<String> credit,
    Optional<String> words) {

  public PictureRights {
    Require.that(
        book.isPresent()
            || photograph.isPresent()
            || owner.isPresent()
            || credit.isPresent()
            || words.isPresent(),
        "\"rights\" is empty; write what is known of \"book\", \"photograph\" or \"owner\", or"
            + " leave it out");
  }

  /** Rights in free words, as somebody noted them. */
  public static PictureRights ofWords(String words) {
    return new PictureRights(
        Optional.empty(), Optional.empty(), Optional.empty(), Optional.empty(), Optional.of(words));
  }

  /** The layers of which something is noted. */
  public List<Layer> layers() {
    List<Layer> layers = new ArrayList<>();
    for (Optional<Layer> layer : List.of(book, photograph, owner)) {
      if (layer.isPresent()) {
        layers.add(layer.get());
      }
    }
    return layers;
  }

  /**
   * What is noted of one layer.
   *
   * @param holder who holds the right, or made the picture, or owns the piece
   * @param terms fee, limits, whatever was said, in words
   * @param by who says so or how it was said, such as "letter of the publisher"
   * @param on when
   */
  public record Layer(
      Optional<String> holder,
      Optional<Status> status,
      Optional<String> terms,
      Optional<String> by,
      Optional<LocalDate> on) {
    public Layer {
      Require.that(
          holder.isPresent() || status.isPresent() || terms.isPresent(),
          "a layer of \"rights\" needs a \"holder\", a \"status\" or \"terms\"; write one, or leave"
              + " the layer out");
    }
  }

  /** How far somebody has got with a layer. */
  public enum Status implements Coded {
    OWN("my own"),
    GIVEN("permission given"),
    REFUSED("permission refused"),
    ASKED("asked, no answer yet"),
    NOT_TRACED("holder not traced"),
    NOT_ASKED("not asked"),
    IN_COPYRIGHT("in copyright"),
    SAID_FREE("said to be free of copyright");

    private final String words;

    Status(String words) {
      this.words = words;
    }

    /** The status in the words of an answer. */
    public String words() {
      return words;
    }

    /** Whether the holder has agreed, or is the user. */
    public boolean isSettled() {
      return this == OWN || this == GIVEN;
    }
  }
}
