package merese.answer.written;

import java.util.ArrayList;
import java.util.List;

/** How plain text is broken into lines. */
public interface Breaking {
  /** Not at all: as a file has it, whose reader may be of any width. */
  Breaking NONE = Breaking::unbroken;

  /**
   * The text in lines.
   *
   * @param first what the first line starts with
   * @param hanging what every later line starts with
   */
  List<String> lines(String words, String first, String hanging);

  /** A citation in lines, of which none should end with a label such as "pl.". */
  default List<String> citation(String citation, String first, String hanging) {
    return lines(citation, first, hanging);
  }

  /** Only where the words themselves have a line's end; with one space for each run of them. */
  private static List<String> unbroken(String words, String first, String hanging) {
    List<String> lines = new ArrayList<>();
    for (String line : Harmless.words(words).split("\n")) {
      StringBuilder kept = new StringBuilder();
      for (String word : line.split("[ \t]+", -1)) {
        kept.append(kept.isEmpty() || word.isEmpty() ? "" : " ").append(word);
      }
      lines.add((lines.isEmpty() ? first : hanging) + kept);
    }
    return lines;
  }
}
