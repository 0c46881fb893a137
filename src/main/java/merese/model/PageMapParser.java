package merese.model;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import merese.model.PageMap.Part;

/** Reads a {@link PageMap}, part by part. */
final class PageMapParser {
  private static final int LONGEST = 100_000;
  private static final String UNNUMBERED = "unnumbered";
  private static final String AFTER = " after ";
  private static final String EXAMPLE = "write it as in \"15–62 = pp. 1–48\"";
  private static final String OPEN_OPENING = "write the left page, as in \"openings 2 after 7\"";
  private static final List<String> OPENINGS = List.of("openings", "opening");

  /** Words for several, and what one of them is labelled. */
  private static final List<List<String>> SEVERAL =
      List.of(
          List.of("plates", "pl."),
          List.of("pls", "pl."),
          List.of("pages", "p."),
          List.of("pp.", "p."),
          List.of("figures", "fig."),
          List.of("figs", "fig."),
          List.of("folios", "fol."),
          List.of("fols", "fol."));

  private final String text;

  /** A part with where it was typed. */
  private record Typed(Part part, int offset) {}

  PageMapParser(String text) {
    this.text = text;
  }

  PageMap parse() {
    if (text.length() > LONGEST) {
      throw fault(0, "it has more than " + LONGEST + " characters", "leave the pages unnumbered");
    }
    List<Typed> typed = new ArrayList<>();
    int begin = 0;
    while (begin <= text.length()) {
      int end = text.indexOf(';', begin);
      end = end < 0 ? text.length() : end;
      if (!text.substring(begin, end).isBlank()) {
        typed.add(part(begin, end));
      }
      begin = end + 1;
    }
    typed.sort(Comparator.comparingInt(each -> each.part().from()));
    for (int i = 1; i < typed.size(); i++) {
      requireApart(typed.get(i - 1), typed.get(i));
    }
    return new PageMap(typed.stream().map(Typed::part).toList());
  }

  private void requireApart(Typed one, Typed other) {
    Part first = one.part();
    if (other.part().from() <= first.to()) {
      boolean open = first.to() == PageMap.OPEN;
      throw fault(
          Math.max(one.offset(), other.offset()),
          "\""
              + first
              + "\" and \""
              + other.part()
              + "\" both name file page "
              + other.part().from(),
          open
              ? "give the first an end, as in \"63–86 = pl. I–XXIV\""
              : "let each file page stand in one part");
    }
  }

  private Typed part(int begin, int end) {
    int from = skipSpace(begin, end);
    int equals = text.indexOf('=', from);
    if (equals >= 0 && equals < end) {
      return new Typed(equation(from, equals, end), from);
    }
    String typed = text.substring(from, end).strip();
    int after = (typed + " ").toLowerCase(Locale.ROOT).indexOf(AFTER);
    if (after < 0) {
      throw fault(from, "\"" + typed + "\" has no \"=\"", EXAMPLE + ", or \"plates after 62\"");
    }
    int number = from + after + AFTER.length();
    return new Typed(open(from, typed.substring(0, after).strip(), number, end), from);
  }

  /** "15–62 = pp. 1–48". */
  private Part equation(int begin, int equals, int end) {
    int[] pages = filePages(begin, equals);
    int right = skipSpace(equals + 1, end);
    String printed = text.substring(right, end).strip();
    if (printed.isEmpty()) {
      throw fault(
          Math.min(right, end), "nothing stands after \"=\"", "write the page, or \"unnumbered\"");
    }
    if (printed.toLowerCase(Locale.ROOT).equals(UNNUMBERED)) {
      return new Part(pages[0], pages[1], Optional.empty(), UNNUMBERED);
    }
    int word = openingsWord(right, end);
    if (word > 0) {
      return openings(begin, equals, pages, skipSpace(right + word, end), end);
    }
    int count = pages[1] - pages[0] + 1;
    String labelled = labelled(printed, count);
    Locator whole = locator(labelled, right, labelled.length() - printed.length());
    if (whole.count() != count) {
      String remedy = "correct one of the two, so that both have the same length";
      throw fault(
          begin,
          "\""
              + text.substring(begin, equals).strip()
              + "\" is "
              + files(count)
              + ", but \""
              + printed
              + "\" names "
              + whole.count(),
          whole.count() == 2 * count
              ? remedy
                  + "; or, where each file page is an opening of two pages, write \"= "
                  + OPENINGS.get(count == 1 ? 1 : 0)
                  + " "
                  + printed
                  + "\""
              : remedy);
    }
    if (count == 1) {
      return new Part(pages[0], pages[1], Optional.of(whole), labelled);
    }
    int dash = lastDash(labelled);
    Optional<Locator> first = dash < 0 ? Optional.empty() : first(whole, labelled, dash, count);
    if (first.isEmpty()) {
      throw fault(
          right,
          "\"" + printed + "\" is not one run of numbers from the first to the last",
          "give each run a part of its own, as in \"15 = p. 1; 16–18 = pp. 4–6\"");
    }
    String written = labelled.substring(0, dash) + '–' + labelled.substring(dash + 1);
    return new Part(pages[0], pages[1], first, written);
  }

  /** How long the word "openings" is that stands here; 0 for another. */
  private int openingsWord(int at, int end) {
    for (String word : OPENINGS) {
      int after = at + word.length();
      if (text.regionMatches(true, at, word, 0, word.length())
          && after <= end
          && (after == end || !Character.isLetterOrDigit(text.charAt(after)))) {
        return word.length();
      }
    }
    return 0;
  }

  /**
   * "8–31 = openings 2–49": two printed pages on each page of the file.
   *
   * @param right where the printed pages begin
   */
  private Part openings(int begin, int equals, int[] pages, int right, int end) {
    String printed = text.substring(Math.min(right, end), end).strip();
    String named = text.substring(begin, equals).strip();
    if (printed.isEmpty()) {
      throw fault(
          Math.min(right, end),
          "it does not say which pages the openings show",
          "write the first and the last, as in \"8–31 = openings 2–49\"");
    }
    if (printed.toLowerCase(Locale.ROOT).equals(UNNUMBERED)) {
      throw fault(
          right,
          "an opening has two pages to be cited, and unnumbered leaves have none",
          "write \"" + named + " = unnumbered\"; or, where one side has a number, that page alone");
    }
    int count = pages[1] - pages[0] + 1;
    String labelled = labelled(printed, 2);
    Locator whole = locator(labelled, right, labelled.length() - printed.length());
    if (whole.count() != 2 * count) {
      boolean odd = whole.count() % 2 == 1;
      throw fault(
          begin,
          "\""
              + named
              + "\" is "
              + (count == 1
                  ? "one opening of two pages"
                  : count + " openings, " + 2 * count + " pages")
              + ", but \""
              + printed
              + "\" names "
              + whole.count(),
          odd
              ? "give a page that stands alone a part of its own, as in \"7 = p. 1; 8–31 = openings"
                  + " 2–49\""
              : "correct one of the two");
    }
    int dash = lastDash(labelled);
    Optional<Locator> first = dash < 0 ? Optional.empty() : first(whole, labelled, dash, 2 * count);
    if (count == 1 && first.isEmpty()) {
      return new Part(pages[0], pages[1], Optional.of(whole), labelled, true);
    }
    Optional<Locator> opening = first.flatMap(left -> PageMap.opening(left, 0));
    if (opening.isEmpty()) {
      throw fault(
          right,
          "\"" + printed + "\" is not one run of numbers from the first to the last",
          "give each run a part of its own, as in \"8 = opening 2–3; 9–12 = openings 6–13\"");
    }
    String written = labelled.substring(0, dash) + '–' + labelled.substring(dash + 1);
    return new Part(pages[0], pages[1], opening, written, true);
  }

  /** "plates after 62", "plates I after 62", "openings 2 after 7": to the end of the file. */
  private Part open(int begin, String typed, int number, int end) {
    int[] last = filePages(skipSpace(Math.min(number, end), end), end);
    if (last[0] != last[1]) {
      throw fault(number, "after \"after\" stands more than one page", "write \"plates after 62\"");
    }
    int word = openingsWord(begin, begin + typed.length());
    if (word == 0) {
      return counted(begin, typed, last[0], "write \"plates after 62\"");
    }
    String left = typed.substring(word).strip();
    if (left.isEmpty()) {
      throw fault(begin, "it does not say which page the first opening begins with", OPEN_OPENING);
    }
    int at = skipSpace(begin + word, end);
    Part first = counted(at, labelled(left, 1), last[0], OPEN_OPENING);
    Optional<Locator> opening = PageMap.opening(first.first().get(), 0);
    return new Part(first.from(), first.to(), opening, first.written(), true);
  }

  /**
   * @param last the file page after which the counting begins
   */
  private Part counted(int begin, String counted, int last, String remedy) {
    String label = counted.toLowerCase(Locale.ROOT);
    String first = counted;
    for (List<String> several : SEVERAL) {
      if (label.equals(several.get(0)) || label.startsWith(several.get(0) + " ")) {
        first = several.get(1) + counted.substring(several.get(0).length());
        break;
      }
    }
    boolean numbered = false;
    for (int i = first.indexOf(' '); i > 0 && i < first.length(); i++) {
      numbered |= !Character.isWhitespace(first.charAt(i));
    }
    first = numbered ? first : first + " 1";
    Locator start = locator(first, begin, 0);
    if (start.count() != 1 || lacksNumber(start) || start.stepped(1).isEmpty()) {
      throw fault(begin, "\"" + counted + "\" cannot be counted on", remedy);
    }
    return new Part(last + 1, PageMap.OPEN, Optional.of(start), first);
  }

  private static boolean lacksNumber(Locator locator) {
    return locator.levels().get(locator.levels().size() - 1).kind().mayLackNumber();
  }

  /** Numbers alone are pages. */
  private static String labelled(String printed, int count) {
    boolean bare = true;
    for (int i = 0; i < printed.length(); i++) {
      char c = printed.charAt(i);
      boolean roman = "ivxlcdmIVXLCDM".indexOf(c) >= 0;
      bare &= roman || Character.isDigit(c) || isDash(c) || c == '[' || c == ']' || c == ' ';
    }
    return bare ? (count > 1 ? "pp. " : "p. ") + printed : printed;
  }

  /** The first of a run; empty where the locator is none. */
  private static Optional<Locator> first(Locator whole, String labelled, int dash, int count) {
    List<Locator> members = whole.members();
    String head = labelled.substring(0, dash).strip();
    String typed = head.lastIndexOf('[') > head.lastIndexOf(']') ? head + "]" : head;
    try {
      Locator first = members.get(0);
      Optional<Locator> last = first.stepped(count - 1);
      boolean run =
          Locator.parse(typed).isWithin(first)
              && last.isPresent()
              && last.get().equals(members.get(count - 1));
      return run ? Optional.of(first) : Optional.empty();
    } catch (LocatorException e) {
      return Optional.empty();
    }
  }

  /**
   * @param added how many chars stand before the typed text
   */
  private Locator locator(String labelled, int at, int added) {
    try {
      return Locator.parse(labelled);
    } catch (LocatorException e) {
      int offset = Math.min(text.length(), at + Math.max(0, e.offset() - added));
      throw fault(offset, e.problem(), e.remedy());
    }
  }

  /** One file page or a range of them, between two offsets. */
  private int[] filePages(int begin, int end) {
    int at = begin;
    for (String word : List.of("file", "pages", "page")) {
      if (text.regionMatches(true, at, word, 0, word.length())) {
        at = skipSpace(at + word.length(), end);
      }
    }
    int first = numberEnd(at, end);
    int from = number(at, first, begin, end);
    int dash = skipSpace(first, end);
    if (dash == end) {
      return new int[] {from, from};
    }
    if (!isDash(text.charAt(dash))) {
      throw notAFilePage(begin, end);
    }
    int second = skipSpace(dash + 1, end);
    int last = numberEnd(second, end);
    int to = number(second, last, begin, end);
    if (skipSpace(last, end) != end) {
      throw notAFilePage(begin, end);
    }
    if (to < from) {
      throw fault(
          at,
          "the file pages \"" + from + "–" + to + "\" run backwards",
          "put the smaller number first");
    }
    return new int[] {from, to};
  }

  private int number(int begin, int end, int partBegin, int partEnd) {
    if (begin == end) {
      throw notAFilePage(partBegin, partEnd);
    }
    int value = 0;
    for (int i = begin; i < end; i++) {
      value = Math.min(PageMap.LARGEST + 1, value * 10 + (text.charAt(i) - '0'));
    }
    if (value == 0 || value > PageMap.LARGEST) {
      throw fault(
          begin,
          "there is no file page " + text.substring(begin, end),
          value == 0 ? "the first page of a file is 1" : "correct the number");
    }
    return value;
  }

  private PageMapException notAFilePage(int begin, int end) {
    String typed = text.substring(Math.min(begin, end), end).strip();
    return fault(
        Math.min(begin, text.length()),
        typed.isEmpty()
            ? "a page of the file is missing"
            : "\"" + typed + "\" is no page of the file",
        "write its number counted from 1, as in \"7\" or \"15–62\"");
  }

  private int numberEnd(int begin, int end) {
    int at = begin;
    while (at < end && text.charAt(at) >= '0' && text.charAt(at) <= '9') {
      at++;
    }
    return at;
  }

  private int skipSpace(int begin, int end) {
    int at = begin;
    while (at < end && Character.isWhitespace(text.charAt(at))) {
      at++;
    }
    return at;
  }

  private static int lastDash(String text) {
    return Math.max(text.lastIndexOf('-'), text.lastIndexOf('–'));
  }

  private static boolean isDash(char c) {
    return c == '-' || c == '–';
  }

  private static String files(int count) {
    return count == 1 ? "one file page" : count + " file pages";
  }

  private PageMapException fault(int offset, String problem, String remedy) {
    return new PageMapException(text, offset, problem, remedy);
  }
}
