package merese.answer.showing;

import java.util.List;
import java.util.Optional;
import merese.answer.CoverageQuestion;
import merese.answer.Script;

/**
 * What is to be shown, in which order.
 *
 * @param features none with a script
 * @param script empty with features; a script names its own
 */
public record ShowingQuestion(List<CoverageQuestion> features, Optional<Script> script) {
  public ShowingQuestion {
    features = List.copyOf(features);
    if (features.isEmpty() == script.isEmpty()) {
      throw new IllegalArgumentException("either features or a script");
    }
  }
}
