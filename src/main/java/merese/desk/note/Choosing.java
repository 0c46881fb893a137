package merese.desk.note;

import java.util.List;
import merese.change.notes.TermChoice;
import merese.change.notes.TermChoice.Choice;
import merese.desk.web.Typed;

/**
 * A term that somebody has to choose a meaning of.
 *
 * @param reason why they have to
 * @param field the name of the field that takes the choice
 * @param why the name of the field that says what it rests on; "" where nothing asks for that
 * @param open whether the meaning may be left open
 */
public record Choosing(
    String printed, String reason, List<Choice> choices, String field, String why, boolean open) {
  /** What the field holds where the meaning is left open; no id of a concept is like it. */
  public static final String LEFT_OPEN = "?";

  public Choosing {
    choices = List.copyOf(choices);
  }

  static Choosing of(String printed, TermChoice choice, String field, String why, boolean open) {
    return new Choosing(printed, choice.reason(), choice.choices(), field, why, open);
  }

  /** The code of what the choice rests on, as it stands in the form now. */
  public String restsOn(Typed typed) {
    return typed.has(why) ? typed.get(why) : merese.model.Naming.Why.MY_READING.code();
  }
}
