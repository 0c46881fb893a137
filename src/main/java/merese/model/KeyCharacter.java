package merese.model;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import merese.model.OwnObject.Observation.Sense;

/**
 * One thing to look for on a piece.
 *
 * @param id what is typed for it: "join"
 * @param label what an answer calls it
 * @param question what to look for, as a question
 * @param look how to look for it
 * @param senses whether it is seen, felt or both
 * @param alsoCalled other words for it in the notes on a piece
 * @param counted true where its value is a number; it then has no values of its own
 * @param values what it may be
 */
public record KeyCharacter(
    String id,
    String label,
    String question,
    String look,
    List<Sense> senses,
    List<String> alsoCalled,
    boolean counted,
    List<Value> values) {
  /** What a kind states of a character that is never found on it. */
  public static final String NEVER = "never";

  /** What is typed for what was looked for and not found. */
  public static final String NOT_FOUND = "not-found";

  private static final Set<String> RESERVED = Set.of(NEVER, NOT_FOUND);

  public KeyCharacter {
    requireId(id, "a character's id");
    Require.text(label, "a character's label");
    Require.text(question, "a character's question");
    Require.text(look, "a character's way of looking");
    senses = List.copyOf(senses);
    alsoCalled = List.copyOf(alsoCalled);
    values = List.copyOf(values);
    Require.that(!senses.isEmpty(), "\"" + id + "\" is neither seen nor felt; add \"senses\"");
    Require.that(
        counted == values.isEmpty(),
        counted
            ? "\"" + id + "\" is counted and has values; leave out the one or the other"
            : "\"" + id + "\" has no values; add them, or \"counted\": true");
    Set<String> ids = new HashSet<>();
    for (Value value : values) {
      Require.that(
          ids.add(value.id()),
          "\"" + id + "\" has the value \"" + value.id() + "\" twice; keep one of the two");
    }
  }

  private static void requireId(String id, String what) {
    Require.text(id, what);
    for (int i = 0; i < id.length(); i++) {
      char c = id.charAt(i);
      Require.that(
          c >= 'a' && c <= 'z' || c >= '0' && c <= '9' || c == '-',
          what + " is \"" + id + "\"; write it in small letters, digits and hyphens");
    }
    Require.that(
        !RESERVED.contains(id), "\"" + id + "\" has a meaning of its own; choose another id");
  }

  /**
   * What a character may be.
   *
   * @param id what is typed for it: "felt"
   * @param label what an answer calls it
   * @param words what the notes on a piece call it
   * @param sense where finding the character by this sense already is this value
   */
  public record Value(String id, String label, List<String> words, Optional<Sense> sense) {
    public Value {
      requireId(id, "a value's id");
      Require.text(label, "a value's label");
      words = List.copyOf(words);
    }
  }

  /** The value of an id. */
  public Optional<Value> value(String id) {
    return values.stream().filter(v -> v.id().equals(id)).findFirst();
  }

  /**
   * Refuses what a kind cannot state of this character: a value it does not have, or no count.
   *
   * @throws IllegalArgumentException with the nearest one
   */
  public void requireStatement(String stated) {
    if (counted) {
      Counts.parse(stated);
    } else if (value(stated).isEmpty()) {
      List<String> ids = valueIds();
      List<String> near = Nearest.to(stated, ids, 1);
      throw new IllegalArgumentException(
          "\""
              + stated
              + "\" is no value of \""
              + id
              + "\"; write one of "
              + String.join(", ", ids)
              + ", or never"
              + (near.isEmpty() ? "" : "; did you mean \"" + near.get(0) + "\"?"));
    }
  }

  /** What its values are called where they are typed; none for a count. */
  public List<String> valueIds() {
    List<String> ids = new ArrayList<>();
    values.forEach(v -> ids.add(v.id()));
    return ids;
  }
}
