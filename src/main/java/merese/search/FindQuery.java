package merese.search;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * A question in words, read. All words are folded as the index's are.
 *
 * @param text as it was typed
 */
public record FindQuery(String text, Node root) {

  /**
   * Reads a question.
   *
   * <p>Words that stand side by side are all looked for; what has only some of them comes after
   * what has them all. {@code AND}, {@code OR}, {@code NOT}, {@code +}, {@code -}, brackets, words
   * in quotation marks and {@code field:} bind, with NOT before AND before OR.
   *
   * @throws FindQueryException where it can mean nothing
   */
  public static FindQuery parse(String text) {
    return new FindQuery(text, new FindQueryParser(text).parse());
  }

  /** A part of a question; {@code start} and {@code end} are its place in the text, in chars. */
  public sealed interface Node {}

  /**
   * Words that must each be there, in any order, such as those of "knife-edged"; mostly one.
   *
   * @param field empty for anywhere
   * @param folded the whole words
   * @param begun what one more word may begin with; empty where no word is cut short
   */
  public record Words(
      int start, int end, Optional<FindField> field, List<String> folded, List<String> begun)
      implements Node {}

  /** Words that must stand one after another. */
  public record Phrase(int start, int end, Optional<FindField> field, List<String> folded)
      implements Node {}

  /** A field with a value that is no text; {@code start} is the place of the value. */
  public record Condition(int start, int end, FindField field, String value) implements Node {}

  /**
   * Everything in it must be there.
   *
   * @param loose whether its bare words only should be there, as in a plain list of words
   */
  public record All(List<Node> nodes, boolean loose) implements Node {}

  /** At least one of them must be there. */
  public record Any(List<Node> nodes) implements Node {}

  public record Not(Node node) implements Node {}

  /** With a plus sign: must be there even in a plain list of words. */
  public record Required(Node node) implements Node {}

  /** The words that are looked for, without those that are excluded. */
  public List<Node> sought() {
    List<Node> sought = new ArrayList<>();
    seek(root, sought);
    return sought;
  }

  private static void seek(Node node, List<Node> sought) {
    if (node instanceof All all) {
      all.nodes().forEach(n -> seek(n, sought));
    } else if (node instanceof Any any) {
      any.nodes().forEach(n -> seek(n, sought));
    } else if (node instanceof Required required) {
      seek(required.node(), sought);
    } else if (node instanceof Words || node instanceof Phrase) {
      sought.add(node);
    }
  }
}
