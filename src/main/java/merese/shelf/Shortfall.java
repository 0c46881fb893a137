package merese.shelf;

import java.util.List;
import merese.store.Problem;

/**
 * A file of the library that answers can't take as it stands. It is remembered until the file, or
 * what it contradicts, has changed.
 *
 * @param file below the library, with slashes
 * @param problems what is wrong in it, at least one
 */
public record Shortfall(String file, List<Problem> problems, Effect effect) {
  public Shortfall {
    problems = List.copyOf(problems);
  }

  /** What it means for an answer. */
  public enum Effect {
    UNREADABLE("nothing of this file is in it"),
    /** It has what another file has already; read again whenever anything changes. */
    REPEATS("nothing of this file is in it"),
    AS_IT_WAS("what this file said before is used"),
    USUAL_SETTINGS("the usual settings are used"),
    OWN_KEY("the program's own key is used"),
    /** It names concepts that are not there; read again whenever the vocabulary changes. */
    UNDEFINED("notes under that name stand for themselves"),
    UNSOUND("broader and narrower may be wrong in it");

    private final String words;

    Effect(String words) {
      this.words = words;
    }

    /** What is to be said of an answer, as in "nothing of this file is in it". */
    public String words() {
      return words;
    }
  }
}
