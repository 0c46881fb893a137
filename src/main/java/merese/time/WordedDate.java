package merese.time;

import java.util.List;
import java.util.Optional;

/** What a date in words says, by a {@link DateProfile}. Nothing is guessed. */
public sealed interface WordedDate {
  /**
   * A date that was read.
   *
   * @param core the plain reading
   * @param outer a generous reading, which holds the core
   * @param edtf the core as EDTF, with "~" at what is approximate; the words say more
   * @param period the period word, as the profile has it
   * @param width why the outer span is wider
   * @param printed whether the years of the core are the ones that the words print
   */
  record Read(
      Span core, Span outer, String edtf, Optional<String> period, Width width, boolean printed)
      implements WordedDate {}

  /** Words that may mean several dates, which has to be asked. */
  record Asks(List<String> choices) implements WordedDate {
    public Asks {
      choices = List.copyOf(choices);
    }
  }

  /** Words that are no date that we can read. */
  record Unread() implements WordedDate {}

  /** Why a generous reading is wider than the plain one. */
  enum Width {
    /** It is not. */
    SAME,
    CIRCA,
    PERIOD,
    /** A part of a century, or one as a whole. */
    CENTURY
  }
}
