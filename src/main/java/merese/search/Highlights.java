package merese.search;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import merese.search.FindQuery.Node;
import merese.search.FindQuery.Phrase;
import merese.search.FindQuery.Words;

/**
 * Finds again, in the text of a hit, the words that the question looked for. The text is split as
 * for the index, so that a word is marked as it is printed, whatever it folds to.
 */
public final class Highlights {
  private final List<Wanted> wanted = new ArrayList<>();
  private final FoldedText folding = new FoldedText();

  public Highlights(FindQuery asked) {
    for (Node node : asked.sought()) {
      if (node instanceof Phrase phrase) {
        wanted.add(new Wanted(phrase.field(), phrase.folded(), List.of()));
      } else if (node instanceof Words words) {
        words.folded().forEach(w -> wanted.add(new Wanted(words.field(), List.of(w), List.of())));
        if (!words.begun().isEmpty()) {
          wanted.add(new Wanted(words.field(), List.of(), words.begun()));
        }
      }
    }
  }

  /** A stretch of a text, in chars; {@code end} is exclusive. */
  public record Mark(int start, int end) {}

  private record Wanted(Optional<FindField> field, List<String> words, List<String> begun) {
    boolean isLookedForIn(Part part) {
      return field.isEmpty()
          ? part.stands() || begunOrSingle()
          : field.get().indexField().equals(part.field());
    }

    private boolean begunOrSingle() {
      return words.size() <= 1;
    }

    int length() {
      return Math.max(1, words.size());
    }

    boolean standsAt(List<Token> tokens, int at) {
      if (words.isEmpty()) {
        return begun.stream().anyMatch(tokens.get(at).folded()::startsWith);
      }
      for (int i = 0; i < words.size(); i++) {
        if (at + i >= tokens.size() || !tokens.get(at + i).folded().equals(words.get(i))) {
          return false;
        }
      }
      return true;
    }
  }

  private record Token(String folded, int start, int end) {}

  /**
   * Where the words stand in a text of this part, in order and apart from each other: marks with
   * nothing but one space or hyphen between them are one.
   */
  public List<Mark> in(Part part, String text) {
    List<Token> tokens = new ArrayList<>();
    folding.scan(text, (word, start, end) -> tokens.add(new Token(word, start, end)));
    boolean[] marked = new boolean[tokens.size()];
    for (Wanted each : wanted) {
      if (each.isLookedForIn(part)) {
        for (int at = 0; at < tokens.size(); at++) {
          if (each.standsAt(tokens, at)) {
            for (int i = 0; i < each.length(); i++) {
              marked[at + i] = true;
            }
          }
        }
      }
    }
    List<Mark> marks = new ArrayList<>();
    for (int i = 0; i < marked.length; i++) {
      if (marked[i]) {
        add(marks, tokens.get(i), text);
      }
    }
    return marks;
  }

  private static void add(List<Mark> marks, Token token, String text) {
    if (!marks.isEmpty()) {
      Mark last = marks.get(marks.size() - 1);
      String between = text.substring(last.end(), token.start());
      if (between.equals(" ") || between.equals("-")) {
        marks.set(marks.size() - 1, new Mark(last.start(), token.end()));
        return;
      }
    }
    marks.add(new Mark(token.start(), token.end()));
  }

  /** The printed words of a text that fold to one of these. */
  public static List<String> printed(String text, Set<String> folded) {
    List<String> printed = new ArrayList<>();
    new FoldedText()
        .scan(
            text,
            (word, start, end) -> {
              if (folded.contains(word)) {
                printed.add(text.substring(start, end));
              }
            });
    return printed;
  }
}
