package merese.answer.identify;

import java.util.List;
import merese.answer.Coverage.ConceptLine;
import merese.answer.identify.Identification.KeyLine;
import merese.answer.identify.Identification.ValueLine;

/**
 * What can be looked at.
 *
 * @param kinds what the key tells apart
 */
public record CharacterList(KeyLine key, List<Line> characters, List<ConceptLine> kinds) {
  /**
   * A character.
   *
   * @param values none where it is counted
   * @param kinds how many kinds the key speaks of it for
   */
  public record Line(
      String id,
      String label,
      String question,
      String look,
      String senses,
      List<ValueLine> values,
      int kinds) {}
}
