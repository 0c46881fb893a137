package merese.answer.editions;

import java.util.Optional;
import merese.model.Locator;

/**
 * What to say of a work's editions.
 *
 * @param work its id, the key of one of its editions, or words of its author and title
 * @param from where somebody else's citation says that a picture is
 * @param edition the key of the edition that this citation is of; empty for any
 */
public record EditionsQuestion(String work, Optional<Locator> from, Optional<String> edition) {
  public static EditionsQuestion of(String work) {
    return new EditionsQuestion(work, Optional.empty(), Optional.empty());
  }
}
