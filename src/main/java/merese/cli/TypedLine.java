package merese.cli;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Predicate;

/**
 * A line of a sitting, taken apart. Beside an open book nobody wants to type quotes: the words
 * before the first option are a place, a term and a quotation, with " | " between them, and what
 * follows an option is its value up to the next option. Quotes may be put round any of them, and
 * keep bars and hyphens in it from meaning anything.
 *
 * @param parts place, term and quotation as far as they were typed; one alone may be either of the
 *     first two
 * @param options as "--date=c. 1790", in their order
 * @param barred whether a bar was typed
 * @param quoted whether the only part stood in quotes
 */
record TypedLine(List<String> parts, List<String> options, boolean barred, boolean quoted) {
  TypedLine {
    parts = List.copyOf(parts);
    options = List.copyOf(options);
  }

  /** What options there are. */
  interface Options {
    /**
     * Whether an option takes a value.
     *
     * @throws CommandException for one that there is not
     */
    boolean takesValue(String name);
  }

  /**
   * A word of the line.
   *
   * @param text without its quotes
   * @param begin where it begins in the line, with its quotes
   */
  private record Word(String text, boolean quoted, int begin, int end) {}

  /**
   * @param isPlace whether a text names a place: without a bar, quotes alone part a place from a
   *     term, and terms may have quotes in them
   */
  static TypedLine of(String line, Options options, Predicate<String> isPlace) {
    List<List<Word>> segments = new ArrayList<>(List.of(new ArrayList<>()));
    List<String> given = new ArrayList<>();
    String option = null;
    List<Word> value = new ArrayList<>();
    for (Word word : words(line)) {
      boolean isOption = !word.quoted() && word.text().length() > 2 && word.text().startsWith("--");
      boolean isBar = !word.quoted() && word.text().equals("|");
      if (!isOption && !isBar) {
        (option == null ? segments.get(segments.size() - 1) : value).add(word);
        continue;
      }
      end(option, value, line, given);
      option = null;
      value = new ArrayList<>();
      if (isBar) {
        segments.add(new ArrayList<>());
      } else if (word.text().indexOf('=') > 0) {
        options.takesValue(word.text().substring(0, word.text().indexOf('=')));
        option = word.text();
      } else if (options.takesValue(word.text())) {
        option = word.text();
      } else {
        given.add(word.text());
      }
    }
    end(option, value, line, given);
    boolean barred = segments.size() > 1;
    List<String> parts = new ArrayList<>();
    for (List<Word> segment : segments) {
      parts.add(text(segment, line));
    }
    List<Word> only = segments.get(0);
    if (!barred && only.isEmpty()) {
      parts.clear();
    } else if (!barred && only.size() > 1) {
      List<String> groups = groups(only, line);
      if (groups.size() > 1 && groups.size() < 4 && isPlace.test(groups.get(0))) {
        parts = groups;
      }
    }
    boolean quoted = !barred && only.size() == 1 && only.get(0).quoted();
    return new TypedLine(parts, given, barred, quoted);
  }

  private static void end(String option, List<Word> value, String line, List<String> given) {
    if (option == null) {
      return;
    }
    int equals = option.indexOf('=');
    String more = text(value, line);
    if (equals > 0) {
      given.add(withoutQuotes(option, equals + 1) + (more.isEmpty() ? "" : " " + more));
    } else if (value.isEmpty()) {
      throw CommandException.wrongUse(option + " says nothing; give it a value after it");
    } else {
      given.add(option + "=" + more);
    }
  }

  private static String withoutQuotes(String option, int from) {
    int last = option.length() - 1;
    boolean quoted = last > from && option.charAt(from) == '"' && option.charAt(last) == '"';
    return quoted ? option.substring(0, from) + option.substring(from + 1, last) : option;
  }

  /** The words as they stand in the line; without quotes where these are round all of it. */
  private static String text(List<Word> words, String line) {
    if (words.isEmpty()) {
      return "";
    } else if (words.size() == 1) {
      return words.get(0).text();
    }
    StringBuilder text = new StringBuilder();
    for (Word word : words) {
      text.append(text.length() == 0 ? "" : " ").append(line, word.begin(), word.end());
    }
    return text.toString();
  }

  /** Each stretch in quotes and each between them. */
  private static List<String> groups(List<Word> words, String line) {
    List<String> groups = new ArrayList<>();
    List<Word> bare = new ArrayList<>();
    for (Word word : words) {
      if (!word.quoted()) {
        bare.add(word);
        continue;
      }
      if (!bare.isEmpty()) {
        groups.add(text(bare, line));
        bare.clear();
      }
      groups.add(word.text());
    }
    if (!bare.isEmpty()) {
      groups.add(text(bare, line));
    }
    return groups;
  }

  private static List<Word> words(String line) {
    List<Word> words = new ArrayList<>();
    int at = 0;
    while (at < line.length()) {
      if (isBlank(line.charAt(at))) {
        at++;
        continue;
      }
      int begin = at;
      char closing = closing(line.charAt(at));
      int close = closing == 0 ? -1 : line.indexOf(closing, at + 1);
      boolean quoted = close > 0 && (close + 1 == line.length() || isBlank(line.charAt(close + 1)));
      if (quoted) {
        at = close + 1;
        words.add(new Word(line.substring(begin + 1, close), true, begin, at));
        continue;
      }
      while (at < line.length() && !isBlank(line.charAt(at))) {
        boolean opens = at > begin + 2 && line.charAt(at) == '"' && line.charAt(at - 1) == '=';
        int end = opens && line.startsWith("--", begin) ? line.indexOf('"', at + 1) : -1;
        at = end < 0 ? at + 1 : end + 1;
      }
      words.add(new Word(line.substring(begin, at), false, begin, at));
    }
    return words;
  }

  /** A typographer's quotes are as printed, and stay. */
  private static char closing(char c) {
    return c == '"' ? '"' : 0;
  }

  private static boolean isBlank(char c) {
    return c == ' ' || c == '\t' || c == '\u00A0';
  }
}
