package merese.cli;

import java.util.ArrayList;
import java.util.List;
import merese.change.notes.Suggestions;
import merese.vocabulary.Thesaurus;
import picocli.CommandLine.Model.OptionSpec;

/** How a line of a sitting may go on from where it is: what is asked for there decides. */
final class SittingCompletion {
  private final Context context;
  private final Suggestions suggestions;
  private final Thesaurus thesaurus;
  private boolean off;

  SittingCompletion(Context context, Suggestions suggestions, Thesaurus thesaurus) {
    this.context = context;
    this.suggestions = suggestions;
    this.thesaurus = thesaurus;
  }

  /**
   * A word, or several, in the place of what is begun.
   *
   * @param about what it is; null where the word says it
   */
  record Ending(String word, String about) {}

  /** Nothing is completed in the answer to a question. */
  void turnOff(boolean isOff) {
    off = isOff;
  }

  /** Where what is begun begins: after the last bar or option. */
  static int begin(String line) {
    int at = line.length();
    while (at > 0 && !startsOption(line, at) && !isBarBefore(line, at)) {
      at--;
    }
    if (startsOption(line, at)) {
      int blank = line.indexOf(' ', at);
      return blank < 0 ? at : skipBlanks(line, blank);
    }
    return skipBlanks(line, at);
  }

  private static boolean startsOption(String line, int at) {
    return line.startsWith("--", at) && (at == 0 || line.charAt(at - 1) == ' ');
  }

  private static boolean isBarBefore(String line, int at) {
    return line.charAt(at - 1) == '|'
        && (at == 1 || line.charAt(at - 2) == ' ')
        && (at == line.length() || line.charAt(at) == ' ');
  }

  private static int skipBlanks(String line, int from) {
    int at = from;
    while (at < line.length() && line.charAt(at) == ' ') {
      at++;
    }
    return at;
  }

  /**
   * @param line up to the cursor
   */
  List<Ending> endings(String line) {
    if (off) {
      return List.of();
    }
    int begin = begin(line);
    String begun = line.substring(begin);
    List<Ending> endings = new ArrayList<>();
    if (begun.startsWith("-")) {
      for (OptionSpec option : new NoteLine(context).all()) {
        if (option.longestName().startsWith(begun)) {
          endings.add(new Ending(option.longestName(), null));
        }
      }
      return endings;
    }
    String before = line.substring(0, begin).strip();
    int blank = before.lastIndexOf(' ');
    String option = before.substring(blank + 1);
    if (option.startsWith("--")) {
      values(option, begun, endings);
    } else if (before.isEmpty()) {
      add(suggestions.terms(begun), endings);
      add(suggestions.places(begun), endings);
      for (String word : SittingCommand.WORDS) {
        if (!begun.isEmpty() && word.startsWith(begun)) {
          endings.add(new Ending(word, null));
        }
      }
    } else {
      add(suggestions.terms(begun), endings);
    }
    return endings;
  }

  private void values(String option, String begun, List<Ending> endings) {
    switch (option) {
      case "--as" -> {
        for (String id : suggestions.concepts(begun)) {
          endings.add(new Ending(id, thesaurus.label(id)));
        }
      }
      case "--text", "--plate" -> add(suggestions.places(begun), endings);
      case "--part" -> add(suggestions.parts(begun), endings);
      case "--why" -> addBegun(begun, List.of("text", "picture", "my-reading"), endings);
      case "--shows" ->
          addBegun(begun, List.of("example", "detail", "profile", "process"), endings);
      case "--about" -> addBegun(begun, List.of("feature", "object", "copies"), endings);
      default -> {
        OptionSpec found = new NoteLine(context).spec().findOption(option);
        if (found != null && found.arity().max() == 0) {
          add(suggestions.terms(begun), endings);
        }
      }
    }
  }

  private static void addBegun(String begun, List<String> words, List<Ending> endings) {
    for (String word : words) {
      if (word.startsWith(begun)) {
        endings.add(new Ending(word, null));
      }
    }
  }

  private static void add(List<String> words, List<Ending> endings) {
    words.forEach(word -> endings.add(new Ending(word, null)));
  }
}
