package merese.model;

import java.time.LocalDate;
import java.util.Optional;

/**
 * That somebody looked through a source for a concept, and how. It counts for everything narrower.
 *
 * @param concept what was looked for
 * @param extent what was looked through; empty for the whole source
 * @param scope what the looking was limited to
 */
public record Check(
    String concept,
    Optional<Locator> extent,
    Method method,
    Result result,
    Optional<Scope> scope,
    Optional<LocalDate> on,
    Optional<String> by,
    Optional<String> copy) {
  /** The same, of a copy that is no longer known. */
  public Check withoutCopy() {
    return new Check(concept, extent, method, result, scope, on, by, Optional.empty());
  }

  /** How it was looked through. */
  public enum Method implements Coded {
    READ,
    LEAFED,
    INDEX_ONLY,
    /** The page text was searched for the names, and nobody has read it. */
    WORD_SEARCH;

    /** The method in the words of an answer. */
    public String words() {
      return this == WORD_SEARCH
          ? "only a word search in its page text, which misses misread words"
          : code().replace('-', ' ');
    }

    /** Whether somebody has looked through the pages themselves. */
    public boolean ofPages() {
      return this == READ || this == LEAFED;
    }
  }

  /** What came of it. */
  public enum Result implements Coded {
    FOUND,
    NONE,
    NOT_IN_LIST,
    NO_LIST
  }

  public Check {
    Require.text(concept, "the concept of a check");
  }
}
