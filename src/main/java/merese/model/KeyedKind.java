package merese.model;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * What one kind may show.
 *
 * @param concept an id of the vocabulary
 * @param allows the characters it speaks of; of all others it is silent
 */
public record KeyedKind(String concept, List<Allowed> allows) {
  public KeyedKind {
    Require.text(concept, "the concept of a kind");
    allows = List.copyOf(allows);
    Set<String> characters = new HashSet<>();
    for (Allowed allowed : allows) {
      Require.that(
          characters.add(allowed.character()),
          "\"" + allowed.character() + "\" is stated twice of \"" + concept + "\"; join the two");
    }
  }

  /** What it states of a character; empty where it is silent. */
  public Optional<Allowed> of(String character) {
    return allows.stream().filter(a -> a.character().equals(character)).findFirst();
  }

  /**
   * What one character may be.
   *
   * @param values ids of values, or {@link Counts} such as "3+"; none where it is never found
   */
  public record Allowed(String character, List<String> values) {
    public Allowed {
      Require.text(character, "the character of a statement");
      values = List.copyOf(values);
    }

    /**
     * Reads "join: felt, through" or "join: never".
     *
     * @throws IllegalArgumentException where the text has no colon or nothing after it
     */
    public static Allowed parse(String text) {
      int colon = text.indexOf(':');
      String character = colon < 0 ? "" : text.substring(0, colon).strip();
      String values = colon < 0 ? "" : text.substring(colon + 1).strip();
      Require.that(
          !character.isEmpty() && !values.isEmpty(),
          "\""
              + text
              + "\" is no statement; write it as in \"join: felt, seen\" or \"join: never\"");
      if (values.equals(KeyCharacter.NEVER)) {
        return new Allowed(character, List.of());
      }
      List<String> all = new ArrayList<>();
      int at = 0;
      while (at <= values.length()) {
        int comma = values.indexOf(',', at);
        int end = comma < 0 ? values.length() : comma;
        all.add(values.substring(at, end).strip());
        at = end + 1;
      }
      return new Allowed(character, all);
    }

    /** As {@link #parse} reads it. */
    public String written() {
      return character + ": " + (values.isEmpty() ? KeyCharacter.NEVER : String.join(", ", values));
    }
  }
}
