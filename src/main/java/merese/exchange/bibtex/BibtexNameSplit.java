package merese.exchange.bibtex;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.regex.Pattern;

/**
 * Takes one name apart as BibTeX does: First von Last; von Last, First; von Last, Jr, First
 * (bibtex.web 0.99d, "name$" and "von_token_found"). A word is von if its first letter outside
 * braces is small; a special character, <code>{\'e}</code>, counts as a letter.
 *
 * @param first with its words joined by single spaces or hyphens, as the others
 */
record BibtexNameSplit(String first, String von, String last, String jr) {
  private static final Pattern AND = Pattern.compile("(?i)(?:^|\\s)and(?:\\s|$)");
  private static final Set<String> SMALL = Set.of("i", "j", "o", "oe", "ae", "aa", "l", "ss");
  private static final Set<String> LARGE = Set.of("O", "OE", "AE", "AA", "L");

  private record Word(String text, char separator) {}

  static BibtexNameSplit of(String name) {
    List<List<Word>> parts = parts(name);
    List<Word> lead = parts.get(0);
    if (parts.size() == 1) {
      int from = 0;
      while (from < lead.size() - 1 && !isVon(lead.get(from))) {
        from++;
      }
      boolean hasVon = from < lead.size() - 1;
      while (!hasVon && from > 0 && lead.get(from).separator() == '-') {
        from--;
      }
      int to = hasVon ? endOfVon(lead, from) : from;
      return new BibtexNameSplit(
          joined(lead.subList(0, from)),
          joined(lead.subList(from, to)),
          joined(lead.subList(to, lead.size())),
          "");
    }
    int to = endOfVon(lead, 0);
    return new BibtexNameSplit(
        joined(parts.get(parts.size() - 1)),
        joined(lead.subList(0, to)),
        joined(lead.subList(to, lead.size())),
        parts.size() > 2 ? joined(parts.get(1)) : "");
  }

  /** Whether a list of names would be cut inside this. */
  static boolean hasAnd(String latex) {
    return AND.matcher(outsideBraces(latex)).find();
  }

  static boolean hasComma(String latex) {
    return outsideBraces(latex).indexOf(',') >= 0;
  }

  private static String outsideBraces(String latex) {
    StringBuilder out = new StringBuilder();
    int depth = 0;
    for (int i = 0; i < latex.length(); i++) {
      char c = latex.charAt(i);
      depth -= c == '}' ? 1 : 0;
      out.append(depth > 0 || c == '{' || c == '}' ? '.' : c);
      depth += c == '{' ? 1 : 0;
    }
    return out.toString();
  }

  private static List<List<Word>> parts(String name) {
    List<List<Word>> parts = new ArrayList<>(List.of(new ArrayList<>()));
    String outside = outsideBraces(name);
    StringBuilder word = new StringBuilder();
    char separator = ' ';
    for (int i = 0; i <= name.length(); i++) {
      char c = i < name.length() ? outside.charAt(i) : ' ';
      boolean separates = Character.isWhitespace(c) || c == '~' || c == '-';
      if (!separates && c != ',') {
        word.append(name.charAt(i));
        continue;
      }
      if (!word.isEmpty()) {
        parts.get(parts.size() - 1).add(new Word(word.toString(), separator));
        word.setLength(0);
        separator = c == '-' ? '-' : ' ';
      }
      if (c == ',') {
        parts.add(new ArrayList<>());
        separator = ' ';
      }
    }
    return parts;
  }

  private static int endOfVon(List<Word> words, int from) {
    int end = Math.max(from, words.size() - 1);
    while (end > from && !isVon(words.get(end - 1))) {
      end--;
    }
    return end;
  }

  private static String joined(List<Word> words) {
    StringBuilder out = new StringBuilder();
    for (Word word : words) {
      out.append(out.isEmpty() ? "" : word.separator()).append(word.text());
    }
    return out.toString();
  }

  private static boolean isVon(Word word) {
    String text = word.text();
    for (int i = 0; i < text.length(); i++) {
      char c = text.charAt(i);
      if (c == '{') {
        int end = endOfGroup(text, i);
        if (i + 1 < text.length() && text.charAt(i + 1) == '\\') {
          return isSmall(text.substring(i + 2, end));
        }
        i = end;
      } else if (isLetter(c)) {
        return c >= 'a';
      }
    }
    return false;
  }

  private static int endOfGroup(String text, int open) {
    int depth = 0;
    for (int i = open; i < text.length(); i++) {
      depth += text.charAt(i) == '{' ? 1 : text.charAt(i) == '}' ? -1 : 0;
      if (depth == 0) {
        return i;
      }
    }
    return text.length();
  }

  /**
   * @param special what follows the backslash of a special character
   */
  private static boolean isSmall(String special) {
    int end = 0;
    while (end < special.length() && isLetter(special.charAt(end))) {
      end++;
    }
    String command = special.substring(0, end);
    if (SMALL.contains(command) || LARGE.contains(command)) {
      return SMALL.contains(command);
    }
    for (int i = end; i < special.length(); i++) {
      if (isLetter(special.charAt(i))) {
        return special.charAt(i) >= 'a';
      }
    }
    return false;
  }

  private static boolean isLetter(char c) {
    return c >= 'A' && c <= 'Z' || c >= 'a' && c <= 'z';
  }
}
