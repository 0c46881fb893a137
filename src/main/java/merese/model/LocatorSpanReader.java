package merese.model;

import java.util.List;
import merese.model.LocatorLevel.Moment;
import merese.model.LocatorNumber.Side;
import merese.model.LocatorNumber.Style;
import merese.model.LocatorRun.Span;

/** Reads one number or range at the cursor, or a moment of a film, up to its position in words. */
final class LocatorSpanReader {
  private static final int SECONDS = 60;
  private static final int MOST_HOURS = 9_999;

  private final LocatorScanner scanner;
  private final LocatorNumberReader numbers;
  private boolean repeatsLabel;

  LocatorSpanReader(LocatorScanner scanner) {
    this.scanner = scanner;
    this.numbers = new LocatorNumberReader(scanner);
  }

  /** Whether a range has had its label before both its ends, as in "p. 41–p. 43". */
  boolean repeatsLabel() {
    return repeatsLabel;
  }

  /** A number with the whole it is an item of, if it is one. */
  private record Itemised(LocatorNumber whole, String joint, LocatorNumber number) {}

  /** Reads what follows a label, or goes on with a list whose last span is given. */
  Span span(LocatorRun run, Span previous) {
    int begin = scanner.at;
    LocatorKind counted = run.faced == null ? run.kind() : run.faced;
    boolean plate = run.mayHaveItems();
    boolean bracket = scanner.take('[');
    Itemised first = itemised(counted, plate, previous, bracket);
    LocatorNumber from = first.number();
    if (bracket && scanner.take(']')) {
      bracket = false;
      from = sideAfterBracket(counted, from);
    }
    LocatorNumber to = from;
    int before = scanner.at;
    if (scanner.takeRangeSign()) {
      LocatorLabels.Match again = LocatorLabels.at(scanner, scanner.at);
      if (again != null && again.form().kind() == counted) {
        repeatsLabel = true;
        scanner.at = again.end();
        scanner.skipSpaces();
      }
      int secondBegin = scanner.at;
      boolean second = scanner.take('[');
      Span start = Span.of(from, from, begin).in(first.whole(), first.joint());
      Itemised last = itemised(counted, plate, start, bracket || second);
      to = LocatorRange.completed(scanner, secondBegin, from, last.number());
      lettersOnly(counted, secondBegin, from, to);
      if (!sameWhole(first.whole(), last.whole())) {
        throw scanner.error(
            secondBegin, "the range runs from one plate into another", "give two ranges");
      }
      if ((bracket || second) && !scanner.take(']')) {
        throw openBracket(before);
      }
      if (second) {
        to = sideAfterBracket(counted, to);
      }
    } else if (bracket) {
      throw openBracket(begin);
    }
    return Span.of(from, to, begin).in(first.whole(), first.joint());
  }

  /** Refuses a range of letters in which one, printed alone, means a numeral or a leaf's side. */
  private void lettersOnly(LocatorKind kind, int offset, LocatorNumber from, LocatorNumber to) {
    if (!from.style().isLetter() && (from.value() != to.value() || to.suffix().isEmpty())) {
      return;
    }
    for (LocatorNumber number : LocatorRange.expanded(from, to)) {
      if (!LocatorNumberReader.readsBack(kind, number)) {
        throw scanner.error(
            offset,
            "\""
                + number.printed()
                + "\" in the range \""
                + from.printed()
                + "–"
                + to.printed()
                + "\" may be a letter or a numeral or side",
            "list the letters, with commas");
      }
    }
  }

  private static boolean sameWhole(LocatorNumber a, LocatorNumber b) {
    if (a == null || b == null) {
      return a == null && b == null;
    }
    return LocatorOrder.compareNumbers(a, b) == 0;
  }

  private LocatorException openBracket(int offset) {
    return scanner.error(offset, "the square bracket is not closed", "write \"p. [12]\"");
  }

  private LocatorNumber sideAfterBracket(LocatorKind kind, LocatorNumber number) {
    String word = scanner.word();
    Side side = LocatorNumberReader.side(word);
    if (kind != LocatorKind.FOLIO || side == Side.NONE || number.side() != Side.NONE) {
      return number;
    }
    scanner.at += word.length();
    return number.withSide(side).withPrinted(number.printed() + word);
  }

  private Itemised itemised(
      LocatorKind kind, boolean mayHaveItems, Span previous, boolean bracket) {
    LocatorNumber before = previous == null ? null : previous.to();
    LocatorNumber number = numbers.read(kind, before, bracket);
    if (!mayHaveItems) {
      return new Itemised(null, "", number);
    }
    boolean colon = scanner.peek() == ':' && Character.isLetterOrDigit(scanner.peek(1));
    if (colon) {
      scanner.at++;
      return new Itemised(number, ":", numbers.read(LocatorKind.ITEM, null, bracket));
    }
    if (kind.isPlate() && number.decimals().size() == 1) {
      return pointed(number);
    }
    boolean goesOn =
        previous != null && previous.whole() != null && previous.to().style() == number.style();
    return goesOn
        ? new Itemised(previous.whole(), previous.joint(), number)
        : new Itemised(null, "", number);
  }

  /** "plate 151.3" is item 3 of plate 151. */
  private static Itemised pointed(LocatorNumber number) {
    String printed = number.printed();
    int point = printed.indexOf('.');
    LocatorNumber whole =
        number.withDecimals(List.of()).withSuffix("").withPrinted(printed.substring(0, point));
    LocatorNumber item =
        LocatorNumber.unprinted(Style.ARABIC, "", number.decimals().get(0))
            .withSuffix(number.suffix())
            .withPrinted(printed.substring(point + 1));
    return new Itemised(whole, ".", item);
  }

  /** Whether a time stands at the cursor: digits, a colon, digits. */
  boolean isMoment() {
    int ahead = 0;
    while (LocatorScanner.isDigit(scanner.peek(ahead))) {
      ahead++;
    }
    return ahead > 0
        && scanner.peek(ahead) == ':'
        && LocatorScanner.isDigit(scanner.peek(ahead + 1));
  }

  /** Reads 03:15, 1:02:03, or a stretch 03:15–03:40. */
  Span moment() {
    int begin = scanner.at;
    int from = time();
    int to = from;
    if (scanner.takeRangeSign()) {
      int second = scanner.at;
      to = time();
      if (to < from) {
        throw scanner.error(second, "the stretch runs backwards", "put the earlier time first");
      }
    }
    String typed = scanner.text.substring(begin, scanner.at);
    return Span.of(new Moment(from, to, typed, ""), begin);
  }

  private int time() {
    int begin = scanner.at;
    int parts = 0;
    int seconds = 0;
    do {
      int start = scanner.at;
      int value = 0;
      while (LocatorScanner.isDigit(scanner.peek()) && value <= MOST_HOURS) {
        value = value * 10 + scanner.peek() - '0';
        scanner.at++;
      }
      int digits = scanner.at - start;
      boolean wrong = digits == 0 || value > MOST_HOURS;
      if (wrong || parts > 0 && (digits != 2 || value >= SECONDS)) {
        throw notATime(begin);
      }
      seconds = seconds * SECONDS + value;
      parts++;
    } while (scanner.peek() == ':' && scanner.take(':'));
    if (parts < 2 || parts > 3) {
      throw notATime(begin);
    }
    return seconds;
  }

  private LocatorException notATime(int begin) {
    return scanner.error(
        begin,
        scanner.excerpt(begin) + " is not a time",
        "write minutes and seconds, 03:15, or hours too, 1:02:03");
  }
}
