package merese.model;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;

/** What is the user's own opinion, never a source's: labels preferred or coined, experience. */
public record Mine(
    List<Preference> preferences,
    List<Coinage> coinages,
    List<Experience> experience,
    List<Untraced> untraced) {

  public static final Mine NOTHING = new Mine(List.of(), List.of(), List.of(), List.of());

  public Mine {
    preferences = List.copyOf(preferences);
    coinages = List.copyOf(coinages);
    experience = List.copyOf(experience);
    untraced = List.copyOf(untraced);
  }

  /**
   * The label that heads every answer about a concept.
   *
   * @param reason ambiguous, describes-better, usage, first-learnt, or free words
   */
  public record Preference(
      String concept,
      String label,
      Optional<String> reason,
      List<SetAside> setAside,
      Optional<LocalDate> on) {
    public Preference {
      Require.text(concept, "the concept of a preference");
      Require.text(label, "a preferred label");
      setAside = List.copyOf(setAside);
    }
  }

  /** A label that the user does not use, and why. */
  public record SetAside(String label, Optional<String> reason) {}

  /** A label of the user's own for what no source names. */
  public record Coinage(
      String label,
      String concept,
      Optional<String> coiner,
      Optional<LocalDate> on,
      Optional<String> evidence) {}

  /**
   * What the user has found from pieces handled.
   *
   * @param pieces how many were handled
   * @param until the year to which the experience reaches
   */
  public record Experience(
      String concept, Claim.Kind kind, String words, OptionalInt pieces, OptionalInt until) {}

  /** A word met somewhere, its source forgotten: listed as a gap, never cited. */
  public record Untraced(String word, Optional<String> words, Optional<LocalDate> on) {}
}
