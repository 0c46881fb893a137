package merese.cli;

import java.util.List;
import merese.answer.written.Breaking;

/**
 * Breaks text at the width of a screen, and no citation between a label and its number.
 *
 * @param width in columns
 */
record ScreenBreaking(int width) implements Breaking {
  @Override
  public List<String> lines(String words, String first, String hanging) {
    return Wrap.lines(words, width, first, hanging);
  }

  @Override
  public List<String> citation(String citation, String first, String hanging) {
    return lines(Labels.together(citation), first, hanging);
  }
}
