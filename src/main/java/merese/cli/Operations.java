package merese.cli;

import java.util.List;
import java.util.Map;
import java.util.Set;
import merese.model.Nearest;

/** Commands whose first word says what is done, each with options of its own. */
final class Operations {
  private Operations() {}

  /**
   * Refuses an operation that there is not, and an option that does not go with it.
   *
   * @param operations the options of each
   * @param options all that belong to some operation, by what is typed for them
   */
  static void require(
      String operation,
      String typed,
      Map<String, Set<String>> operations,
      Map<String, Given<?>> options) {
    Set<String> allowed = operations.get(operation);
    if (allowed == null) {
      List<String> near = Nearest.to(operation, operations.keySet(), 1);
      throw CommandException.wrongUse(
          "there is no operation '"
              + typed
              + "'; write one of "
              + String.join(", ", operations.keySet())
              + (near.isEmpty() ? "" : "; did you mean " + near.get(0) + "?"));
    }
    options.forEach(
        (option, given) -> {
          if (isGiven(given) && !allowed.contains(option)) {
            throw CommandException.wrongUse(option + " does not go with " + operation);
          }
        });
  }

  static boolean isGiven(Given<?> given) {
    return given.value().isPresent() && !Boolean.FALSE.equals(given.value().get());
  }
}
