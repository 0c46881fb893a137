package merese.answer.editions;

import java.util.List;
import merese.model.ForTheUser;

/** That the words typed name no work, several, or an edition of another. */
public final class WorkException extends RuntimeException implements ForTheUser {
  private static final long serialVersionUID = 1L;

  private WorkException(String message) {
    super(message);
  }

  static WorkException unknown(String typed, List<String> near) {
    return new WorkException(
        "no work “"
            + typed
            + "”; name one by its id, the key of an edition, or words of its author and title"
            + (near.isEmpty() ? "" : "; near it: " + String.join(", ", near)));
  }

  static WorkException several(String typed, List<String> works) {
    return new WorkException(
        "“" + typed + "” may be several works; name one by its id: " + String.join(", ", works));
  }

  static WorkException otherWork(String edition, List<String> keys) {
    return new WorkException(
        edition + " is no edition of this work; its editions are " + String.join(", ", keys));
  }
}
