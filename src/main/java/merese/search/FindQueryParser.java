package merese.search;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import merese.search.FindQuery.All;
import merese.search.FindQuery.Any;
import merese.search.FindQuery.Node;
import merese.search.FindQuery.Not;
import merese.search.FindQuery.Phrase;
import merese.search.FindQuery.Required;
import merese.search.FindQuery.Words;
import merese.vocabulary.Folding;

/** Reads a question by recursive descent; every refusal says where. */
final class FindQueryParser {
  private static final int LONGEST = 4000;
  private static final int MOST_PARTS = 60;
  private static final int MOST_WORDS = 200;
  private static final int DEEPEST = 30;
  private static final String QUOTES = "\"“”„";

  /** Words that everything has; in a list of words they say nothing. */
  private static final Set<String> COMMON =
      Set.of(
          "a", "an", "and", "as", "at", "by", "for", "from", "in", "is", "it", "of", "on", "or",
          "the", "to", "was", "were", "with");

  /** British beginnings of words that are indexed in their American spelling. */
  private static final String[][] CUT_SPELLINGS = {
    {"mou", "mol"}, {"moul", "mol"}, {"colou", "color"}, {"centr", "center"}
  };

  private final String text;
  private final FoldedText folding = new FoldedText();
  private int at;
  private int parts;
  private int words;
  private int depth;

  FindQueryParser(String text) {
    this.text = text;
  }

  Node parse() {
    if (text.length() > LONGEST) {
      throw wrong(
          LONGEST,
          "the question has " + text.length() + " characters, and " + LONGEST + " is the most",
          "ask with fewer words");
    }
    List<Node> nodes = new ArrayList<>();
    any(Optional.empty()).ifPresent(nodes::add);
    if (at < text.length()) {
      throw wrong(at, "this bracket closes nothing", "take it out, or open one before it");
    }
    if (nodes.isEmpty()) {
      throw wrong(0, nothing(), "type a word of what you look for");
    }
    requireSought(nodes.get(0));
    return nodes.get(0);
  }

  private String nothing() {
    return text.isBlank()
        ? "there is nothing to look for"
        : "there are only signs here, and no word to look for";
  }

  private void requireSought(Node root) {
    if (excludesOnly(root)) {
      throw wrong(
          Math.min(leadingSpace(), Math.max(0, text.length() - 1)),
          "the question only says what not to find",
          "add a word to look for, as in: ring NOT sharp");
    }
  }

  /** Whether a node alone would find everything but something. */
  private static boolean excludesOnly(Node node) {
    if (node instanceof Not) {
      return true;
    } else if (node instanceof All all) {
      return all.nodes().stream().allMatch(FindQueryParser::excludesOnly);
    } else if (node instanceof Any any) {
      return any.nodes().stream().anyMatch(FindQueryParser::excludesOnly);
    }
    return node instanceof Required required && excludesOnly(required.node());
  }

  private int leadingSpace() {
    int i = 0;
    while (i < text.length() && isSpace(text.charAt(i))) {
      i++;
    }
    return i;
  }

  private Optional<Node> any(Optional<FindField> field) {
    List<Node> nodes = new ArrayList<>();
    all(field).ifPresent(nodes::add);
    skipSpace();
    int sign = at;
    while (takeOperator("OR")) {
      if (nodes.isEmpty()) {
        throw wrong(sign, "OR has nothing before it", "write it between two words, or \"or\"");
      }
      int before = nodes.size();
      all(field).ifPresent(nodes::add);
      if (nodes.size() == before) {
        throw wrong(sign, "OR has nothing after it", "write it between two words, or \"or\"");
      }
      sign = at;
    }
    return nodes.size() < 2 ? nodes.stream().findFirst() : Optional.of(new Any(nodes));
  }

  private Optional<Node> all(Optional<FindField> field) {
    List<Node> nodes = new ArrayList<>();
    List<Node> common = new ArrayList<>();
    boolean and = false;
    while (true) {
      skipSpace();
      int sign = at;
      if (takeOperator("AND")) {
        if (nodes.isEmpty() && common.isEmpty()) {
          throw wrong(sign, "AND has nothing before it", "write it between two words, or \"and\"");
        }
        if (atEndOfList()) {
          throw wrong(sign, "AND has nothing after it", "write it between two words, or \"and\"");
        }
        and = true;
        continue;
      }
      if (atEndOfList()) {
        break;
      }
      Optional<Node> node = signed(field);
      if (node.isPresent()) {
        (isCommon(node.get()) ? common : nodes).add(node.get());
      }
    }
    if (nodes.stream().allMatch(FindQueryParser::excludesOnly)) {
      nodes.addAll(0, common);
    }
    if (nodes.isEmpty()) {
      return Optional.empty();
    }
    boolean single = nodes.size() == 1 && !(nodes.get(0) instanceof Required);
    return Optional.of(
        single ? nodes.get(0) : new All(nodes, !and && depth == 0 && field.isEmpty()));
  }

  private boolean atEndOfList() {
    skipSpace();
    return at >= text.length() || text.charAt(at) == ')' || isOperator("OR");
  }

  private static boolean isCommon(Node node) {
    return node instanceof Words words
        && words.begun().isEmpty()
        && words.field().isEmpty()
        && COMMON.containsAll(words.folded());
  }

  private Optional<Node> signed(Optional<FindField> field) {
    int sign = at;
    if (takeOperator("NOT") || takeSign('-')) {
      Optional<Node> node = atEndOfList() ? Optional.empty() : item(field);
      String shown = text.charAt(sign) == '-' ? "-" : "NOT";
      return Optional.of(
          new Not(
              node.orElseThrow(
                  () ->
                      wrong(sign, shown + " has no word after it", "name the word to leave out"))));
    }
    if (takeSign('+')) {
      return item(field).map(Required::new);
    }
    return item(field);
  }

  private Optional<Node> item(Optional<FindField> field) {
    char c = text.charAt(at);
    if (c == '(') {
      return brackets(field);
    }
    if (QUOTES.indexOf(c) >= 0) {
      return Optional.of(phrase(field));
    }
    return word(field);
  }

  private Optional<Node> brackets(Optional<FindField> field) {
    int open = at++;
    if (++depth > DEEPEST) {
      throw wrong(open, "brackets within brackets, " + depth + " deep", "ask more simply");
    }
    Optional<Node> inside = any(field);
    if (at >= text.length()) {
      throw wrong(open, "this bracket is never closed", "close it with ) after the last word");
    }
    at++;
    depth--;
    if (inside.isEmpty()) {
      throw wrong(open, "there is no word between these brackets", "take them out");
    }
    return inside;
  }

  private Node phrase(Optional<FindField> field) {
    int open = at++;
    while (at < text.length() && QUOTES.indexOf(text.charAt(at)) < 0) {
      at++;
    }
    if (at >= text.length()) {
      throw wrong(
          open,
          "this quotation mark is never closed",
          "put another after the last word that belongs together");
    }
    String inside = text.substring(open + 1, at++);
    if (field.isPresent() && !field.get().isText()) {
      return new FindConditions(this, text).of(field.get(), inside.strip(), open + 1);
    }
    List<String> folded = count(open, folding.words(inside));
    if (folded.isEmpty()) {
      throw wrong(
          open, "there is no word between these quotation marks", "put the words between them");
    }
    return new Phrase(open, at, field, folded);
  }

  private Optional<Node> word(Optional<FindField> field) {
    int start = at;
    while (at < text.length() && isInWord(text.charAt(at))) {
      if (text.charAt(at) == ':' && isName(start, at)) {
        return Optional.of(field(start));
      }
      at++;
    }
    String typed = text.substring(start, at);
    if (field.isPresent() && !field.get().isText()) {
      return Optional.of(new FindConditions(this, text).of(field.get(), typed, start));
    }
    int star = typed.indexOf('*');
    if (star < 0) {
      List<String> folded = count(start, folding.words(typed));
      return folded.isEmpty()
          ? Optional.empty()
          : Optional.of(new Words(start, at, field, folded, List.of()));
    }
    List<String> folded = new ArrayList<>(count(start, folding.words(typed.substring(0, star))));
    if (folded.isEmpty()) {
      throw wrong(
          start + star,
          "a word that starts with * cannot be looked for",
          "put the first letters before it, as in: knife*");
    }
    if (!Folding.key(typed.substring(star)).isEmpty()) {
      throw wrong(
          start + star,
          "* stands for the end of a word, and letters follow it",
          "end the word with it: " + typed.substring(0, star) + "*");
    }
    folded.remove(folded.size() - 1);
    return Optional.of(new Words(start, at, field, folded, begun(typed.substring(0, star))));
  }

  /** What the folded form of a word may begin with whose printed form begins as the text ends. */
  private List<String> begun(String typed) {
    int[] last = new int[1];
    folding.scan(typed, (word, start, end) -> last[0] = start);
    String letters = typed.substring(last[0]);
    String whole = Folding.word(letters);
    String open = Folding.word(letters + "q"); // no number to take off
    open = open.substring(0, open.length() - 1);
    Set<String> begun = new LinkedHashSet<>(List.of(whole, open));
    for (String[] spelling : CUT_SPELLINGS) {
      if (open.endsWith(spelling[0])) {
        begun.add(open.substring(0, open.length() - spelling[0].length()) + spelling[1]);
      }
    }
    return List.copyOf(begun);
  }

  private Node field(int start) {
    String name = text.substring(start, at);
    FindField field =
        FindField.named(name)
            .orElseThrow(
                () ->
                    wrong(
                        start,
                        "there is no field \"" + name + "\"",
                        NearNames.remedy(name, FindField.codes())
                            + "; for a colon in the text itself, use quotation marks"));
    int colon = at++;
    skipSpace();
    if (at >= text.length() || text.charAt(at) == ')') {
      throw wrong(colon, field.code() + ": has no value", "put a word right after the colon");
    }
    return item(Optional.of(field))
        .orElseThrow(
            () ->
                wrong(colon, field.code() + ": has no value", "put a word right after the colon"));
  }

  private boolean isName(int from, int to) {
    for (int i = from; i < to; i++) {
      if (!Character.isLetter(text.charAt(i))) {
        return false;
      }
    }
    return to > from;
  }

  private List<String> count(int start, List<String> folded) {
    words += folded.size();
    if (++parts > MOST_PARTS || words > MOST_WORDS) {
      throw wrong(
          start,
          "the question has too many words",
          "ask for at most " + MOST_PARTS + ", or put quotation marks around a whole passage");
    }
    return folded;
  }

  private boolean takeSign(char sign) {
    if (text.charAt(at) == sign
        && at + 1 < text.length()
        && startsWord(text.codePointAt(at + 1))
        && (at == 0 || !Character.isLetterOrDigit(text.charAt(at - 1)))) {
      at++;
      return true;
    }
    return false;
  }

  private static boolean startsWord(int c) {
    return Character.isLetterOrDigit(c) || c == '(' || QUOTES.indexOf(c) >= 0;
  }

  private boolean isOperator(String word) {
    int end = at + word.length();
    return text.startsWith(word, at) && (end >= text.length() || !isInWord(text.charAt(end)));
  }

  private boolean takeOperator(String word) {
    skipSpace();
    if (!isOperator(word)) {
      return false;
    }
    at += word.length();
    return true;
  }

  private void skipSpace() {
    while (at < text.length() && isSpace(text.charAt(at))) {
      at++;
    }
  }

  private static boolean isInWord(char c) {
    return !isSpace(c) && c != '(' && c != ')' && QUOTES.indexOf(c) < 0;
  }

  private static boolean isSpace(char c) {
    return Character.isWhitespace(c) || Character.isSpaceChar(c) || Character.isISOControl(c);
  }

  FindQueryException wrong(int offset, String problem, String remedy) {
    return new FindQueryException(text, offset, problem, remedy);
  }
}
