package merese.answer;

import java.util.List;
import java.util.Optional;
import merese.answer.Coverage.ConceptLine;
import merese.answer.Coverage.SourceLine;
import merese.model.Locator;

/**
 * The answer to a question in words.
 *
 * @param asked as it was typed
 * @param withAll how many hits there are that have everything that was asked for
 * @param withSome how many more have some of the words
 * @param hits the best of them: those that have everything, then the others
 * @param didYouMean the question with mistyped words put right; only where that finds more
 * @param pages of books that have all the words, the best of them: no hits, and in none of the
 *     counts above, for nobody has judged what they say
 * @param allPages how many such pages there are
 */
public record Found(
    String asked,
    int withAll,
    int withSome,
    List<Hit> hits,
    Optional<String> didYouMean,
    List<PageLine> pages,
    int allPages) {

  /** What a hit is. */
  public enum Kind {
    NOTE,
    SOURCE,
    CONCEPT,
    OWN_PIECE,
    COINAGE,
    PREFERENCE,
    EXPERIENCE,
    UNTRACED
  }

  /**
   * One thing that was found.
   *
   * @param id of a note "quenby-1926/n1"; of a source its key; of a concept its id; of a piece its
   *     reference; of the user's own words what they are and are about
   * @param all whether it has everything that was asked for
   * @param source that a note is from, or that was found itself
   * @param pictured where a note's pictures are, in physical order (R5)
   * @param inWords where a note is in words only, in physical order
   * @param concepts what it means or is evidence of
   * @param heading its name with the words found marked; for a note, its printed terms
   * @param passages the sentences in which the words stand
   */
  public record Hit(
      Kind kind,
      String id,
      boolean all,
      Optional<SourceLine> source,
      List<Locator> pictured,
      List<Locator> inWords,
      List<ConceptLine> concepts,
      Text heading,
      List<Passage> passages) {}

  /** What a passage is of the thing that was found. */
  public enum Role {
    QUOTATION,
    CLAIM,
    MY_READING,
    /** A label of a concept of the note's, where the note itself has other words. */
    LABEL,
    DEFINITION,
    TITLE,
    AUTHOR,
    IMPRINT,
    MY_WORDS
  }

  /**
   * A sentence.
   *
   * @param mine whether the words are the user's and no source's
   */
  public record Passage(Role role, boolean mine, Text text) {}

  /**
   * Words with those that were looked for marked.
   *
   * @param marks in order, and apart from each other
   */
  public record Text(String words, List<Mark> marks) {}

  /** A stretch of a text in chars from 0; {@code end} is exclusive. */
  public record Mark(int start, int end) {}

  /**
   * A page of a book that has the words.
   *
   * @param locator the printed page or plate; empty where there is no number
   * @param cited the locator, or else the place in the file
   * @param noted whether a note of that source is there, with these words or on what they name
   * @param passage the sentence in which they stand
   */
  public record PageLine(
      SourceLine source, Optional<Locator> locator, String cited, boolean noted, Text passage) {}

  /** Whether nothing was found, on pages either. */
  public boolean isEmpty() {
    return hits.isEmpty() && pages.isEmpty();
  }
}
