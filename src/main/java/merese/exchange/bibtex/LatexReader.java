package merese.exchange.bibtex;

import java.text.Normalizer;

/**
 * Reads LaTeX as plain text: what a reader sees printed, in one line, without markup.
 *
 * <p>Guarantees: any text is read, and in time that grows with its length; no command is carried
 * out; a command that is not known leaves its arguments; control characters go; the result is in
 * Normalization Form C. An apostrophe and a hyphen stay those of ASCII.
 */
final class LatexReader {
  /** Deeper arguments in arguments are read without their commands. */
  private static final int DEEPEST = 30;

  private static final int NOTHING = 0;
  private static final int SPACE = 1;
  private static final int LATEX = 2;
  private static final boolean[] IS_TO_READ = new boolean[128];

  static {
    "\\{}~`$".chars().forEach(c -> IS_TO_READ[c] = true);
  }

  /** Signs that are only something else when two stand together. */
  private static final String DOUBLED = "-',<>";

  private final String latex;
  private final int depth;
  private final StringBuilder out = new StringBuilder();
  private final boolean hasMath;
  private boolean math;
  private boolean openQuote;
  private int at;

  private LatexReader(String latex, boolean math, int depth) {
    this.latex = latex;
    this.math = math;
    this.depth = depth;
    this.hasMath = !math && dollars(latex) % 2 == 0;
  }

  static String plain(String latex) {
    int reading = toRead(latex);
    if (reading == NOTHING) {
      return latex;
    }
    String text = reading == SPACE ? latex : new LatexReader(latex, false, 0).read();
    return tidy(Normalizer.normalize(text, Normalizer.Form.NFC));
  }

  /** Most fields are plain words. */
  private static int toRead(String latex) {
    int reading = NOTHING;
    char before = ' ';
    for (int i = 0; i < latex.length(); i++) {
      char c = latex.charAt(i);
      if (c < IS_TO_READ.length && IS_TO_READ[c] || c == before && DOUBLED.indexOf(c) >= 0) {
        return LATEX;
      }
      if (c < ' ' || c >= 0x7F || c == ' ' && before == ' ') {
        reading = SPACE;
      }
      before = c;
    }
    return before == ' ' ? SPACE : reading;
  }

  /** One space for each run of white space, none at the ends, and no control characters. */
  private static String tidy(String text) {
    StringBuilder tidy = new StringBuilder(text.length());
    for (int i = 0; i < text.length(); i++) {
      char c = text.charAt(i);
      if (StoredValue.isSpace(c)) {
        if (!tidy.isEmpty() && tidy.charAt(tidy.length() - 1) != ' ') {
          tidy.append(' ');
        }
      } else if (!Character.isISOControl(c)) {
        tidy.append(c);
      }
    }
    int length = tidy.length();
    return length > 0 && tidy.charAt(length - 1) == ' '
        ? tidy.substring(0, length - 1)
        : tidy.toString();
  }

  private static int dollars(String latex) {
    int count = 0;
    for (int i = 0; i < latex.length(); i++) {
      if (latex.charAt(i) == '\\') {
        i++;
      } else if (latex.charAt(i) == '$') {
        count++;
      }
    }
    return count;
  }

  private String read() {
    while (at < latex.length()) {
      char c = latex.charAt(at);
      if (c == '\\') {
        at++;
        command();
      } else if (math && (c == '^' || c == '_')) {
        at++;
        script(c == '^');
      } else if (!ligature(c)) {
        at++;
        character(c);
      }
    }
    return out.toString();
  }

  private void character(char c) {
    switch (c) {
      case '{', '}' -> {}
      case '~' -> out.append(' ');
      case '$' -> {
        if (hasMath) {
          math = !math;
        } else {
          out.append(c);
        }
      }
      case '`' -> {
        openQuote = true;
        out.append('‘');
      }
      case '\'' -> apostrophe();
      default -> out.append(c);
    }
  }

  /** The end of a quotation if one is open and no letter follows. */
  private void apostrophe() {
    boolean inWord = at < latex.length() && Character.isLetter(latex.charAt(at));
    if (openQuote && !inWord) {
      openQuote = false;
      out.append('’');
    } else {
      out.append(math ? '′' : '\'');
    }
  }

  /** Characters that join into another one when they stand together. */
  private boolean ligature(char c) {
    String joined =
        switch (math ? ' ' : c) {
          case '-' -> next("---") ? "—" : next("--") ? "–" : null;
          case '`' -> next("``") ? "“" : null;
          case '\'' -> next("''") ? "”" : null;
          case ',' -> next(",,") ? "„" : null;
          case '?' -> next("?`") ? "¿" : null;
          case '!' -> next("!`") ? "¡" : null;
          case '<' -> next("<<") ? "«" : null;
          case '>' -> next(">>") ? "»" : null;
          default -> null;
        };
    if (joined == null) {
      return false;
    }
    at += joined.equals("—") ? 3 : 2;
    out.append(joined);
    return true;
  }

  private boolean next(String text) {
    return latex.startsWith(text, at);
  }

  /** The name of the command whose backslash was read, and past the space that ends a word. */
  private String name() {
    int start = at;
    while (at < latex.length() && isLetter(latex.charAt(at))) {
      at++;
    }
    if (at > start) {
      String name = latex.substring(start, at);
      pastSpace();
      return name;
    }
    if (at < latex.length()) {
      at = latex.offsetByCodePoints(at, 1);
    }
    return latex.substring(start, at);
  }

  private static boolean isLetter(char c) {
    return c >= 'a' && c <= 'z' || c >= 'A' && c <= 'Z';
  }

  private void pastSpace() {
    while (at < latex.length() && StoredValue.isSpace(latex.charAt(at))) {
      at++;
    }
  }

  private void command() {
    String name = name();
    String accent = LatexSymbols.accent(name);
    String symbol = LatexSymbols.of(name);
    if (accent != null && !(math && name.length() == 1 && "=.".contains(name))) {
      out.append(accented(accent, argument()));
    } else if (symbol != null) {
      out.append(symbol);
    } else if (!name.isEmpty() && !isLetter(name.charAt(0))) {
      sign(name);
    } else {
      word(name);
    }
  }

  private void sign(String sign) {
    switch (sign) {
      case "\\", " ", ",", ";", ":", "\n", "\t" -> out.append(math ? "" : " ");
      case "-", "/", "!", "@", "*", ">" -> {}
      case "(", "[" -> math = true;
      case ")", "]" -> math = false;
      default -> out.append(sign);
    }
  }

  private void word(String name) {
    switch (name) {
      case "mkbibquote", "enquote", "textquote" -> quoted();
      case "noopsort", "NoopSort", "sortnoop", "SortNoop", "hspace", "vspace" -> argument();
      case "printfirst" -> {
        out.append(argument());
        argument();
      }
      case "switchargs" -> {
        String second = argument();
        out.append(argument()).append(second);
      }
      case "href", "texorpdfstring" -> {
        argument();
        out.append(argument());
      }
      case "url", "nolinkurl", "path" -> out.append(WebField.address(rawArgument()));
      case "textsuperscript" -> script(argument(), LatexSymbols::raised);
      case "textsubscript" -> script(argument(), LatexSymbols::lowered);
      case "ensuremath" -> out.append(argument(true));
      case "frac" -> out.append(argument()).append('/').append(argument());
      case "sqrt" -> out.append('√').append(argument());
      case "newline", "par", "quad", "qquad", "space", "linebreak", "and" -> out.append(' ');
      default -> {
        if (math && !next("{") && !name.equals("left") && !name.equals("right")) {
          out.append(name).append(' ');
        }
      }
    }
  }

  private void quoted() {
    boolean starred = next("*");
    at += starred ? 1 : 0;
    out.append(starred ? '‘' : '“').append(argument()).append(starred ? '’' : '”');
  }

  private void script(String text, java.util.function.UnaryOperator<String> small) {
    String mapped = small.apply(text);
    out.append(mapped == null ? text : mapped);
  }

  private void script(boolean raised) {
    String text = argument();
    String mapped = raised ? LatexSymbols.raised(text) : LatexSymbols.lowered(text);
    if (mapped != null) {
      out.append(mapped);
    } else {
      out.append(raised ? '^' : '_').append(text.length() > 1 ? "(" + text + ")" : text);
    }
  }

  private String argument() {
    return argument(math);
  }

  /** What the next group, command or character prints. */
  private String argument(boolean inMath) {
    pastSpace();
    if (next("{")) {
      String inside = rawArgument();
      return depth == DEEPEST
          ? inside.replaceAll("[{}\\\\]", "")
          : new LatexReader(inside, inMath, depth + 1).read();
    }
    if (next("\\")) {
      at++;
      String name = name();
      String accent = LatexSymbols.accent(name);
      String symbol = LatexSymbols.of(name);
      return symbol != null
          ? symbol
          : accent != null && depth < DEEPEST && at < latex.length()
              ? accented(accent, letter())
              : name.length() == 1 && !isLetter(name.charAt(0)) ? name : "";
    }
    return letter();
  }

  private String letter() {
    if (at >= latex.length()) {
      return "";
    }
    if (next("{")) {
      return new LatexReader(rawArgument(), math, DEEPEST).read();
    }
    int end = latex.offsetByCodePoints(at, 1);
    String letter = latex.substring(at, end);
    at = end;
    return letter.equals("}") || letter.equals("$") ? "" : letter;
  }

  /** What stands in the braces that come next, as it stands. */
  private String rawArgument() {
    pastSpace();
    if (!next("{")) {
      return "";
    }
    int open = at;
    int level = 0;
    for (; at < latex.length(); at++) {
      char c = latex.charAt(at);
      level += c == '{' ? 1 : c == '}' ? -1 : 0;
      if (level == 0) {
        at++;
        return latex.substring(open + 1, at - 1);
      }
    }
    return latex.substring(open + 1);
  }

  /** A letter with a mark; an accent alone for nothing. */
  private static String accented(String mark, String text) {
    if (text.isBlank()) {
      return mark.equals("\u0303") ? "~" : mark.equals("\u0302") ? "^" : "";
    }
    int end = text.offsetByCodePoints(0, 1);
    boolean below = mark.charAt(0) >= '\u0323' && mark.charAt(0) <= '\u0331';
    String letter = text.substring(0, end);
    if (!below) {
      letter = letter.equals("ı") ? "i" : letter.equals("ȷ") ? "j" : letter;
    }
    return letter + mark + text.substring(end);
  }
}
