package merese.answer;

import java.text.BreakIterator;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import merese.answer.Found.Mark;
import merese.answer.Found.Passage;
import merese.answer.Found.Role;
import merese.answer.Found.Text;
import merese.answer.HitTexts.HitText;
import merese.search.Highlights;
import merese.search.Part;

/** Cuts texts down to the sentence in which the words stand, and marks the words. */
final class Snippets {
  /** A text up to so many chars is shown whole. */
  private static final int SHORT = 220;

  private static final int MOST_PASSAGES = 4;

  /** What is longer may be cut in the middle. */
  private static final int LONGEST_WORD = 40;

  private final Highlights highlights;

  Snippets(Highlights highlights) {
    this.highlights = highlights;
  }

  /** A text uncut. */
  Text whole(Part part, String words) {
    List<Mark> marks = new ArrayList<>();
    highlights.in(part, words).forEach(m -> marks.add(new Mark(m.start(), m.end())));
    return new Text(words, marks);
  }

  /** Several texts, each in quotation marks. */
  Text joined(Part part, List<String> texts) {
    StringBuilder words = new StringBuilder();
    List<Mark> marks = new ArrayList<>();
    for (String text : texts) {
      if (!text.isEmpty()) {
        words.append(words.length() == 0 ? "“" : ", “");
        for (Mark mark : whole(part, text).marks()) {
          marks.add(new Mark(words.length() + mark.start(), words.length() + mark.end()));
        }
        words.append(text).append('”');
      }
    }
    return new Text(words.toString(), marks);
  }

  /**
   * The texts that have a word that was looked for.
   *
   * @param otherwise the role of the first text to give where none has one; may be null
   */
  List<Passage> marked(List<HitText> texts, Role otherwise) {
    List<Passage> passages = new ArrayList<>();
    for (HitText each : texts) {
      Text text = sentence(whole(each.part(), each.words()));
      if (!text.marks().isEmpty() && passages.size() < MOST_PASSAGES) {
        passages.add(new Passage(each.role(), each.mine(), text));
      }
    }
    if (passages.isEmpty()) {
      for (HitText each : texts) {
        if (each.role() == otherwise) {
          Text text = sentence(new Text(each.words(), List.of()));
          return List.of(new Passage(each.role(), each.mine(), text));
        }
      }
    }
    return passages;
  }

  /** The sentence of a text that has the most marks. */
  static Text sentence(Text text) {
    if (text.words().length() <= SHORT) {
      return text;
    }
    BreakIterator sentences = BreakIterator.getSentenceInstance(Locale.ROOT);
    sentences.setText(text.words());
    int bestStart = 0;
    int bestEnd = 0;
    int most = -1;
    int start = sentences.first();
    for (int end = sentences.next(); end != BreakIterator.DONE; end = sentences.next()) {
      int marks = within(text.marks(), start, end).size();
      if (marks > most) {
        most = marks;
        bestStart = start;
        bestEnd = end;
      }
      start = end;
    }
    return shortened(text, bestStart, bestEnd);
  }

  /** A sentence that is itself too long is cut at spaces around its first mark. */
  private static Text shortened(Text text, int sentenceStart, int sentenceEnd) {
    String words = text.words();
    int start = sentenceStart;
    int end = sentenceEnd;
    if (end - start > SHORT) {
      List<Mark> marks = within(text.marks(), start, end);
      int middle = marks.isEmpty() ? start : marks.get(0).start();
      start = atSpace(words, Math.max(start, middle - SHORT / 3), sentenceStart);
      end = Math.min(sentenceEnd, start + SHORT);
      int space = words.lastIndexOf(' ', end);
      end = end < sentenceEnd && space > Math.max(start, middle + 40) ? space : end;
      end += end < words.length() && Character.isLowSurrogate(words.charAt(end)) ? 1 : 0;
    }
    while (end > start && Character.isWhitespace(words.charAt(end - 1))) {
      end--;
    }
    String before = start > 0 ? "… " : "";
    List<Mark> marks = new ArrayList<>();
    for (Mark mark : within(text.marks(), start, end)) {
      int moved = before.length() - start;
      marks.add(new Mark(mark.start() + moved, mark.end() + moved));
    }
    String after = end < words.strip().length() ? " …" : "";
    return new Text(before + words.substring(start, end) + after, marks);
  }

  private static int atSpace(String words, int near, int first) {
    int space = words.lastIndexOf(' ', near);
    boolean firstWord = space < first && near - first < LONGEST_WORD;
    int start = firstWord ? first : space < first ? near : space + 1;
    return Character.isLowSurrogate(words.charAt(start)) ? start - 1 : start;
  }

  private static List<Mark> within(List<Mark> marks, int start, int end) {
    return marks.stream().filter(m -> m.start() >= start && m.end() <= end).toList();
  }
}
