package merese.answer;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import merese.model.Locator;
import merese.model.LocatorException;
import merese.model.OwnObject;
import merese.shelf.Shelf;
import merese.shelf.Source;

/**
 * The marks of a plain text that is to be filmed or printed, in their order: {@code [quenby-1949
 * pl. 31]}, {@code [object d-17 photo 3]}, {@code [term ring-bladed]}. Brackets nest. What starts
 * with no key, "object" or "term" is no mark and stays text.
 *
 * @param remarks brackets that stayed text, each with its file and line
 */
public record Script(List<Mark> marks, List<String> remarks) {
  private static final int LONGEST_QUOTE = 40;

  /** What one pair of brackets asks for. */
  public sealed interface Mark {
    /** A place in a source; without a locator, the source as a whole. */
    record OfSource(Source source, Optional<Locator> locator) implements Mark {}

    /** A piece of the user's own; {@code rest} says what of it. */
    record OfObject(OwnObject object, String rest) implements Mark {}

    /** A feature, by its concept's id or by a word. */
    record OfTerm(CoverageQuestion question) implements Mark {}
  }

  /**
   * Reads a script.
   *
   * @param file how messages name it; "" for a text that is no file, of which lines are named alone
   * @throws ScriptException for marks of a source, object or term that cannot be read, all of them
   */
  public static Script read(String text, String file, Shelf shelf) {
    List<Mark> marks = new ArrayList<>();
    List<String> remarks = new ArrayList<>();
    List<String> faults = new ArrayList<>();
    int line = 1;
    for (int at = 0; at < text.length(); at++) {
      char c = text.charAt(at);
      line += c == '\n' ? 1 : 0;
      if (c != '[') {
        continue;
      }
      String place = file.isEmpty() ? "line " + line + ": " : file + ":" + line + ": ";
      int end = closing(text, at);
      if (end < 0) {
        remarks.add(place + "a bracket is not closed and stays text");
        continue;
      }
      String inside = text.substring(at + 1, end).strip();
      try {
        Optional<Mark> mark = mark(inside, place, shelf);
        if (mark.isEmpty()) {
          remarks.add(
              place + "[" + brief(inside) + "] names no source, object or term: stays text");
          continue; // a mark may stand inside it
        }
        marks.add(mark.get());
      } catch (ScriptException e) {
        faults.add(e.getMessage()); // the others are said too
      }
      line += (int) text.substring(at, end).chars().filter(n -> n == '\n').count();
      at = end;
    }
    if (!faults.isEmpty()) {
      throw new ScriptException(String.join("\n", faults));
    }
    return new Script(List.copyOf(marks), List.copyOf(remarks));
  }

  /** Where the bracket that opens here closes, past those inside it; negative where nowhere. */
  private static int closing(String text, int open) {
    int depth = 0;
    for (int at = open; at < text.length(); at++) {
      char c = text.charAt(at);
      depth += c == '[' ? 1 : c == ']' ? -1 : 0;
      if (depth == 0) {
        return at;
      }
    }
    return -1;
  }

  private static Optional<Mark> mark(String inside, String place, Shelf shelf) {
    String first = inside.isEmpty() ? "" : inside.split("\\s+", 2)[0];
    String rest = oneSpaced(inside.substring(first.length()));
    if (first.equals("object")) {
      return Optional.of(object(rest, place, shelf));
    } else if (first.equals("term")) {
      return Optional.of(term(rest, place, shelf));
    }
    return shelf.sources().stream()
        .filter(source -> source.key().equals(first))
        .findFirst()
        .map(source -> new Mark.OfSource(source, locator(rest, place)));
  }

  private static Optional<Locator> locator(String text, String place) {
    try {
      return text.isEmpty() ? Optional.empty() : Optional.of(Locator.parse(text));
    } catch (LocatorException e) {
      throw new ScriptException(place + e.getMessage());
    }
  }

  private static Mark object(String words, String place, Shelf shelf) {
    String ref = words.split(" ", 2)[0];
    for (OwnObject object : shelf.objects()) {
      if (object.ref().equals(ref)) {
        return new Mark.OfObject(object, words.substring(ref.length()).strip());
      }
    }
    throw new ScriptException(
        place + "there is no object \"" + ref + "\"; an object is named by its file in objects/");
  }

  private static Mark term(String words, String place, Shelf shelf) {
    if (words.isEmpty()) {
      throw new ScriptException(place + "[term] names no term; write [term ring-bladed]");
    }
    CoverageQuestion question =
        shelf.thesaurus().concept(words).isPresent()
            ? CoverageQuestion.ofConcept(words)
            : CoverageQuestion.of(words);
    if (Covers.answer(shelf, question).sections().isEmpty()) {
      throw new ScriptException(
          place + "\"" + words + "\" is no word of the vocabulary, and no note prints it");
    }
    return new Mark.OfTerm(question);
  }

  /** With one space for each run of them. */
  private static String oneSpaced(String words) {
    StringBuilder line = new StringBuilder();
    for (int i = 0; i < words.length(); i++) {
      char c = words.charAt(i);
      boolean space = Character.isWhitespace(c);
      boolean again = line.isEmpty() || line.charAt(line.length() - 1) == ' ';
      if (!space || !again) {
        line.append(space ? ' ' : c);
      }
    }
    return line.toString().strip();
  }

  private static String brief(String words) {
    String line = oneSpaced(words);
    return line.length() <= LONGEST_QUOTE ? line : line.substring(0, LONGEST_QUOTE) + "…";
  }
}
