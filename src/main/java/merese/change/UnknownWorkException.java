package merese.change;

import java.util.List;
import merese.model.ForTheUser;
import merese.store.Problem;

/** That a word was given for a work or an edition which neither is called by. */
public final class UnknownWorkException extends RuntimeException implements ForTheUser {
  private static final long serialVersionUID = 1L;

  UnknownWorkException(String typed, List<String> near, List<Problem> unread) {
    super(
        "no edition and no work is called "
            + typed
            + (near.isEmpty()
                ? "; an edition is named by its key, a work by its file in works/"
                : "; did you mean " + String.join(" or ", near) + "?")
            + Unread.words(unread));
  }
}
