package merese.answer;

import java.util.List;
import merese.answer.Coverage.ConceptLine;
import merese.answer.Coverage.SourceLine;
import merese.model.Locator;

/**
 * Words on the pages of one source that no note has yet. Nobody has judged what they say: they are
 * no notes, and counted nowhere.
 *
 * @param names each spelling once, in the order of the pages
 */
public record OnPages(SourceLine source, List<Name> names) {
  /** What stands above such words, wherever they are shown. */
  public static final String TITLE = "Words on the page, not yet noted";

  /**
   * A name as it stands on pages.
   *
   * @param words as printed
   * @param concepts what was asked for, or something narrower, of which it is a name
   * @param narrower whether all of these are narrower than what was asked for
   * @param mayMeanElse whether the words are used for something else as well
   * @param loose whether they are only like the name, with letters taken for others
   * @param at the printed pages and plates, in the order of the text
   * @param unnumbered how the other pages are cited
   */
  public record Name(
      String words,
      List<ConceptLine> concepts,
      boolean narrower,
      boolean mayMeanElse,
      boolean loose,
      List<Locator> at,
      List<String> unnumbered) {}
}
