package merese.answer.gaps;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import merese.answer.Coverage.ConceptLine;
import merese.answer.Coverage.SourceLine;
import merese.answer.SourceLines;
import merese.answer.gaps.GapList.Gap;
import merese.answer.gaps.GapList.Looked;
import merese.answer.gaps.GapList.Task;
import merese.model.Copy;
import merese.shelf.Source;

/** What is left to look for in each of the user's copies. */
final class Tasks {
  private static final class Todo {
    final List<ConceptLine> notChecked = new ArrayList<>();
    final List<ConceptLine> indexOnly = new ArrayList<>();
    final List<ConceptLine> wordSearchOnly = new ArrayList<>();
    final List<ConceptLine> toNote = new ArrayList<>();
  }

  private final SourceLines lines;
  private final Map<String, Source> owned = new LinkedHashMap<>();
  private final Map<String, Todo> todo = new LinkedHashMap<>();

  Tasks(SourceLines lines, List<Source> sources) {
    this.lines = lines;
    for (Source source : sources) {
      if (source.owned()) {
        owned.put(source.key(), source);
      }
    }
  }

  void add(Gap gap) {
    ConceptLine concept = new ConceptLine(gap.heading().id(), gap.heading().label());
    for (SourceLine source : gap.notChecked()) {
      of(source).notChecked.add(concept);
    }
    for (Looked looked : gap.indexOnly()) {
      of(looked.source()).indexOnly.add(concept);
    }
    for (Looked looked : gap.wordSearchOnly()) {
      of(looked.source()).wordSearchOnly.add(concept);
    }
    for (Looked looked : gap.toNote()) {
      of(looked.source()).toNote.add(concept);
    }
  }

  private Todo of(SourceLine source) {
    return todo.computeIfAbsent(source.key(), k -> new Todo());
  }

  /** By shelf-mark, numbers in it by value; copies without one or away from their shelf last. */
  List<Task> inShelfOrder() {
    List<Task> tasks = new ArrayList<>();
    for (Source source : owned.values()) {
      Todo left = todo.get(source.key());
      if (left != null) {
        tasks.add(
            new Task(
                lines.of(source),
                shelfMark(source),
                source.whereabouts(),
                left.notChecked,
                left.indexOnly,
                left.wordSearchOnly,
                left.toNote));
      }
    }
    tasks.sort(Tasks::compare);
    return tasks;
  }

  private static Optional<String> shelfMark(Source source) {
    for (Copy copy : source.edition().copies()) {
      if (copy.own() && copy.shelfMark().isPresent()) {
        return copy.shelfMark();
      }
    }
    return Optional.empty();
  }

  private static int compare(Task a, Task b) {
    if (a.away().isPresent() != b.away().isPresent()) {
      return a.away().isPresent() ? 1 : -1;
    } else if (a.shelfMark().isEmpty() || b.shelfMark().isEmpty()) {
      return Boolean.compare(a.shelfMark().isEmpty(), b.shelfMark().isEmpty());
    }
    return compareMarks(a.shelfMark().get(), b.shelfMark().get());
  }

  private static int compareMarks(String a, String b) {
    int i = 0;
    int j = 0;
    while (i < a.length() && j < b.length()) {
      int endA = endOfNumber(a, i);
      int endB = endOfNumber(b, j);
      int order =
          endA > i && endB > j
              ? compareNumbers(a.substring(i, endA), b.substring(j, endB))
              : Character.compare(a.charAt(i), b.charAt(j));
      if (order != 0) {
        return order;
      }
      i = Math.max(endA, i + 1);
      j = Math.max(endB, j + 1);
    }
    return Integer.compare(a.length() - i, b.length() - j);
  }

  private static int endOfNumber(String text, int from) {
    int end = from;
    while (end < text.length() && text.charAt(end) >= '0' && text.charAt(end) <= '9') {
      end++;
    }
    return end;
  }

  private static int compareNumbers(String a, String b) {
    String one = a.substring(leadingZeros(a));
    String other = b.substring(leadingZeros(b));
    return one.length() == other.length()
        ? one.compareTo(other)
        : Integer.compare(one.length(), other.length());
  }

  private static int leadingZeros(String number) {
    int zeros = 0;
    while (zeros < number.length() - 1 && number.charAt(zeros) == '0') {
      zeros++;
    }
    return zeros;
  }
}
