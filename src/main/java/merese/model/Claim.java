package merese.model;

import java.util.Optional;

/**
 * What a source asserts. Always somebody's opinion, never a fact of the library.
 *
 * @param words verbatim
 * @param value the same in a form that can be compared: a date as EDTF, a place's name, one of the
 *     methods applied, cut, blown, pressed; empty where nobody has put it so
 * @param hedge "mainly", "only", "probably", as printed
 * @param bracket how the source limits the claim, as printed
 */
public record Claim(
    Kind kind,
    String words,
    Optional<String> value,
    Optional<String> hedge,
    Optional<String> bracket,
    About about,
    Optional<Locator> locator) {
  /** What a claim is of. */
  public enum Kind implements Coded {
    DATE,
    PLACE,
    MAKER,
    METHOD,
    FREQUENCY,
    COPY_WARNING
  }

  /** What a claim is about. */
  public enum About implements Coded {
    FEATURE,
    OBJECT,
    COPIES
  }

  public Claim {
    Require.text(words, "a claim's words");
  }
}
