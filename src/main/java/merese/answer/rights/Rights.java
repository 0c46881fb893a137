package merese.answer.rights;

import java.util.List;
import java.util.Optional;
import merese.answer.Coverage.ConceptLine;
import merese.answer.Coverage.Heading;
import merese.answer.Coverage.SourceLine;
import merese.model.Locator;
import merese.model.PictureRights.Status;

/**
 * The answer to a {@link RightsQuestion}.
 *
 * @param sections one a feature, in the order in which they were asked, or one for a source
 * @param cautions what nobody should forget who shows a picture
 */
public record Rights(List<Section> sections, List<String> cautions) {
  public boolean isEmpty() {
    for (Section section : sections) {
      if (section.pictures() > 0) {
        return false;
      }
    }
    return true;
  }

  /**
   * The pictures of one feature or one source.
   *
   * @param heading the feature; empty for a source
   * @param source the source; empty for a feature
   * @param at the place in the source that was asked for
   * @param pictures how many there are; one that several sources print counts once
   * @param sources how many sources print them
   * @param groups those that hold something, in the order of {@link Standing}
   */
  public record Section(
      Optional<Heading> heading,
      Optional<SourceLine> source,
      Optional<Locator> at,
      int pictures,
      int sources,
      List<Grouped> groups) {}

  /** Pictures of which alike is noted. */
  public record Grouped(Standing standing, List<Picture> pictures) {}

  /** What comes of what is noted. None of them says that a picture is free. */
  public enum Standing {
    /** Somebody has refused. */
    REFUSED,
    /** All three layers are the user's own, or their holders have agreed; terms may limit it. */
    MAY_BE_SHOWN_AS_NOTED,
    /** Something is noted, and not enough. */
    ASK_FIRST,
    /** Free words only, which are not sorted. */
    NOTED_IN_WORDS,
    NOT_NOTED
  }

  /**
   * One picture, or several of one source of which the same is noted.
   *
   * @param id what the notes call it, where several sources print it
   * @param printings in the order of R4
   */
  public record Picture(Optional<String> id, List<Printing> printings) {}

  /**
   * A picture in one source.
   *
   * @param mine whether it is an article or film of the user's own
   * @param where in physical order (R5)
   * @param narrower what it shows, where that is narrower than what was asked (R1)
   * @param process whether it shows how the thing is made, and not the thing
   * @param drawn whether it is a drawing, so that the second layer is whoever drew it
   * @param words what is noted of no layer
   * @param noted who made the notes that say so, and when: "IF, 2025-02-20"
   */
  public record Printing(
      SourceLine source,
      boolean mine,
      List<Locator> where,
      List<ConceptLine> narrower,
      boolean process,
      boolean drawn,
      Layer book,
      Layer photograph,
      Layer owner,
      List<String> words,
      Credit credit,
      List<String> noted,
      Standing standing) {}

  /**
   * One layer.
   *
   * @param known what the library says apart from rights: publisher and year, a photographer, the
   *     user's own piece
   * @param said what is noted of the rights; none where nothing is
   */
  public record Layer(Optional<String> known, List<Said> said) {}

  /**
   * What somebody noted of a layer.
   *
   * @param by who says so, or how
   * @param on the day, as in 2024-02-03
   */
  public record Said(
      Optional<String> holder,
      Optional<Status> status,
      Optional<String> terms,
      Optional<String> by,
      Optional<String> on) {}

  /**
   * The words to show beside the picture.
   *
   * @param composed whether nobody asked for this wording: it is put together from the citation and
   *     what is noted
   */
  public record Credit(String words, boolean composed) {}
}
