package merese.answer;

import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import merese.model.Claim;
import merese.model.Locator;
import merese.model.Mine.Untraced;
import merese.model.OwnObject;
import merese.model.SourceKind;

/**
 * The answer to a {@link CoverageQuestion}.
 *
 * @param asked the word or id as it was typed
 * @param ask what the user has to settle, where the word has several meanings
 * @param sections one a meaning; none where nothing in the library has that word
 * @param meaningNotStated for a word of several meanings: notes that print it and assign none
 * @param checked sources in no group that were looked through
 * @param allChecked how many there are, of which a large library's answer has the first
 * @param notChecked sources in no group that were not
 * @param allNotChecked how many there are, of which a large library's answer has the first
 * @param leftOut sources that a narrowing of the question left out
 * @param nearTerms words of the vocabulary like the one asked, where it is unknown
 * @param met words met somewhere, their source forgotten
 * @param onPages words on the pages of books that no note has yet: in no count, and in no group
 * @param allOnPages how many sources have such words, of which a large library's answer has the
 *     first; where it has not all, those that are noted are among them
 */
public record Coverage(
    String asked,
    Optional<Ask> ask,
    List<Section> sections,
    List<Entry> meaningNotStated,
    List<Checked> checked,
    int allChecked,
    List<NotChecked> notChecked,
    int allNotChecked,
    List<LeftOut> leftOut,
    List<String> nearTerms,
    List<Untraced> met,
    List<OnPages> onPages,
    int allOnPages) {

  /**
   * That a word is not guessed at.
   *
   * @param reason why it has to be asked
   * @param remark a meaning outside the vocabulary
   */
  public record Ask(String reason, Optional<String> remark) {}

  /**
   * What the library has for one meaning.
   *
   * @param letter "A", "B" ... where a word has several meanings
   * @param count how many sources the first group holds (R1, R2, R3)
   * @param works how many works those sources are editions of
   * @param groups the groups that hold something, in the order of {@link Group} (R9)
   * @param howToTell the tests that tell look-alikes apart
   * @param words printed words that others use for something else
   */
  public record Section(
      Optional<String> letter,
      Heading heading,
      int count,
      int works,
      List<Grouped> groups,
      List<HowToTell> howToTell,
      List<WordUse> words,
      List<PieceLine> ownPieces,
      List<ExperienceLine> experience) {
    /** The entries of a group; none where it is empty. */
    public List<Entry> group(Group group) {
      for (Grouped grouped : groups) {
        if (grouped.group() == group) {
          return grouped.entries();
        }
      }
      return List.of();
    }
  }

  /**
   * A meaning and its words.
   *
   * @param label the user's own label where there is one, else the preferred one
   * @param preferred the vocabulary's preferred label
   * @param myTerm true where the label is the user's own choice
   * @param reason why the user prefers it
   * @param narrower how many narrower concepts are included
   */
  public record Heading(
      String id,
      String label,
      String preferred,
      boolean myTerm,
      Optional<String> reason,
      List<String> setAside,
      String definition,
      boolean uncertain,
      int narrower) {}

  /** Where a note may go; the order is that of an answer (R9). */
  public enum Group {
    COUNTED,
    SAME_FEATURE,
    IN_WORDS_ONLY,
    SILENT_ON_PLACE,
    OTHER_PLACES,
    HOW_IT_IS_MADE,
    SAYS_NOT_SHOWN,
    NOT_THIS,
    LOOK_ALIKES,
    GENERAL_ONLY,
    MEANING_NOT_STATED,
    OWN_WORK;

    /** What stands above the group. */
    public String title() {
      return switch (this) {
        case COUNTED -> "Sources";
        case SAME_FEATURE -> "Same feature under another name";
        case IN_WORDS_ONLY -> "In words only, not pictured";
        case SILENT_ON_PLACE -> "Says nothing of the place";
        case OTHER_PLACES -> "Gives other places";
        case HOW_IT_IS_MADE -> "How it is made";
        case SAYS_NOT_SHOWN -> "Says not shown";
        case NOT_THIS -> "Not this";
        case LOOK_ALIKES -> "Look-alikes";
        case GENERAL_ONLY -> "General only";
        case MEANING_NOT_STATED -> "Meaning not stated";
        case OWN_WORK -> "Your own articles and films";
      };
    }
  }

  /**
   * A group with its entries, one a source.
   *
   * @param all how many there are, of which a large library's answer has the first
   */
  public record Grouped(Group group, List<Entry> entries, int all) {
    /** How many there are more. */
    public int more() {
      return all - entries.size();
    }
  }

  /**
   * What one source has.
   *
   * @param passages the concept asked for first, then narrower ones
   * @param conflicts captions that disagree with the text
   * @param readings what the user makes of a caption that disagrees
   * @param claims the source's words on the place asked for
   * @param sameAs pictures that another source of the group has as well
   */
  public record Entry(
      SourceLine source,
      List<Passage> passages,
      List<CaptionConflict> conflicts,
      List<String> readings,
      List<String> claims,
      List<SharedPicture> sameAs) {}

  /**
   * What one source has on one concept.
   *
   * @param concept empty where no meaning is assigned
   * @param narrower true where the concept is narrower than the one asked for
   * @param printed the terms as printed, without repeats; none where it is not named
   * @param pictured where it is pictured, in physical order (R5)
   * @param inWords where it is only in words, in physical order
   * @param photos the user's own photographs of these places, in physical order
   */
  public record Passage(
      Optional<ConceptLine> concept,
      boolean narrower,
      List<String> printed,
      List<Locator> pictured,
      List<Locator> inWords,
      List<Photo> photos) {}

  /**
   * The user's own photograph of a place.
   *
   * @param file below the library's folder of pictures, with "/" between names
   */
  public record Photo(Locator locator, String file) {}

  /** A concept as an answer names it. */
  public record ConceptLine(String id, String label) {}

  /**
   * A source as an answer names it.
   *
   * @param reference author and year
   * @param whereabouts of the user's copy, where it is not on its shelf
   */
  public record SourceLine(
      String key,
      String reference,
      String title,
      SourceKind kind,
      OptionalInt year,
      boolean owned,
      Optional<String> whereabouts) {}

  /**
   * A caption against what the text says of the same piece.
   *
   * @param text where the text is; empty where only the user's reading disagrees
   */
  public record CaptionConflict(
      String caption, Locator captionAt, Optional<String> words, Optional<Locator> text) {}

  /** That a picture here is the one that another source has. */
  public record SharedPicture(Locator here, String otherReference, Locator there) {}

  /**
   * Two concepts that are mistaken for each other.
   *
   * @param concept the one asked for, or one narrower
   * @param test what tells the two apart
   * @param statedUnder the one of the two that the vocabulary has the test under; it mostly
   *     describes the other one
   */
  public record HowToTell(
      ConceptLine concept, ConceptLine other, Optional<String> test, ConceptLine statedUnder) {}

  /**
   * A printed word that is used for something else as well.
   *
   * @param others what else it is used for; of very many things the commonest
   * @param all how many other things it is used for
   */
  public record WordUse(String word, List<OtherUse> others, int all) {}

  /**
   * Another use of a word.
   *
   * @param references sources that use it so, the first of them; none where only the vocabulary
   *     says it
   * @param all how many sources use it so
   */
  public record OtherUse(ConceptLine concept, List<String> references, int all) {}

  /** A piece of the user's own, as evidence. */
  public record PieceLine(
      String ref,
      String title,
      OwnObject.Evidence.Kind kind,
      ConceptLine concept,
      Optional<String> words,
      Optional<String> photo) {}

  /** What the user has found from pieces handled; never counted as a source. */
  public record ExperienceLine(
      ConceptLine concept, Claim.Kind kind, String words, OptionalInt pieces, OptionalInt until) {}

  /** A source that was looked through without a note coming of it. */
  public record Checked(SourceLine source, List<CheckLine> checks) {}

  /** One looking-through; {@code extent} is empty for the whole source. */
  public record CheckLine(
      Optional<Locator> extent, String method, String result, Optional<String> scope) {}

  /** A source that nobody has looked through for this; {@code remark} says what is known. */
  public record NotChecked(SourceLine source, Optional<String> remark) {}

  /** Sources that cover the feature but were not wanted. */
  public record LeftOut(String because, List<SourceLine> sources) {}
}
