package merese.model;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import merese.model.LocatorLevel.Unnumbered;
import merese.model.LocatorNesting.Joint;
import merese.model.LocatorRun.Span;

/**
 * Reads a locator from left to right, label by label. It keeps the runs that are still open, the
 * outermost first, to know what the next one may be inside. Every step moves the cursor on, so it
 * ends on any text.
 */
final class LocatorParser {
  static final int MOST_MEMBERS = 10_000;

  private final LocatorScanner scanner;
  private final LocatorSpanReader spanReader;
  private final LocatorRefusals refusals;
  private final List<LocatorRun> runs = new ArrayList<>();
  private final LocatorNesting nesting = new LocatorNesting();
  private LocatorRun current;
  private boolean excepting;
  private boolean exceptionLabelled;
  private long total;

  LocatorParser(String text) {
    this.scanner = new LocatorScanner(text);
    this.spanReader = new LocatorSpanReader(scanner);
    this.refusals = new LocatorRefusals(scanner);
  }

  Locator parse() {
    String text = scanner.text;
    if (text.isEmpty()) {
      throw scanner.error(0, "it is empty", "write where it stands, such as \"p. 41\"");
    }
    boolean spaceFirst = LocatorScanner.isSpace(text.charAt(0));
    if (spaceFirst || LocatorScanner.isSpace(text.charAt(text.length() - 1))) {
      int offset = spaceFirst ? 0 : text.length() - 1;
      throw scanner.error(offset, "there is a space at its edge", "leave the space out");
    }
    Joint joint = Joint.START;
    while (joint != null) {
      item(joint);
      joint = joint();
    }
    return located(text);
  }

  private Locator located(String text) {
    List<LocatorRun> leaves = new ArrayList<>();
    for (LocatorRun run : runs) {
      if (run.isPlace()) {
        leaves.add(run);
        if (!run.exceptions.isEmpty() && run.places().isEmpty()) {
          throw scanner.error(run.begin, "the exceptions leave nothing", "leave this part out");
        }
      }
    }
    List<LocatorLevel> outer = leaves.get(0).outer;
    LocatorKind outermost = outer.isEmpty() ? leaves.get(0).kind() : outer.get(0).kind();
    return new Locator(text, List.copyOf(leaves), outermost);
  }

  /** What joins this item to the next; null at the end. */
  private Joint joint() {
    int before = scanner.at;
    scanner.skipSpaces();
    if (scanner.atEnd()) {
      return null;
    }
    int sign = scanner.at;
    Joint joint = sign > before || scanner.text.charAt(before - 1) == ')' ? Joint.SPACE : null;
    if (scanner.take(';')) {
      joint = Joint.SEMICOLON;
    } else if (scanner.take(',')) {
      joint = Joint.COMMA;
      scanner.skipSpaces();
    }
    if (joint != Joint.SEMICOLON && joint != null && scanner.takeAnd()) {
      joint = Joint.AND;
    }
    if (joint == null) {
      throw refusals.unexpected(sign);
    }
    scanner.skipSpaces();
    if (scanner.atEnd()) {
      throw scanner.error(sign, "nothing follows " + scanner.excerpt(sign), "leave it out");
    }
    return joint;
  }

  private void item(Joint joint) {
    int begin = scanner.at;
    if (current != null && takeExcept()) {
      return;
    }
    LocatorLabels.Match label = LocatorLabels.at(scanner, begin);
    LocatorInsert.Match insert = LocatorInsert.at(scanner, label);
    if (insert != null) {
      insert(joint, insert);
      return;
    }
    if (label != null) {
      labelled(joint, label);
      return;
    }
    if (startsVolume(joint)) {
      start(Joint.SEMICOLON, bare(LocatorKind.VOLUME), null, begin);
      numbers();
      return;
    }
    boolean listGoesOn = joint == Joint.COMMA || joint == Joint.AND;
    if (listGoesOn && current != null && current.last().fixed() instanceof LocatorLevel.Moment) {
      add(spanReader.moment());
      return;
    }
    boolean time = spanReader.isMoment() && (current == null || !current.mayHaveItems());
    if (listGoesOn && !time && current != null && current.last().fixed() == null) {
      numbers();
      return;
    }
    if (time || joint == Joint.SEMICOLON && spanReader.isMoment()) {
      start(joint, bare(LocatorKind.TIMESTAMP), null, begin);
      add(spanReader.moment());
      return;
    }
    throw startsNumber() && joint != Joint.SPACE
        ? refusals.bareNumber(begin)
        : refusals.unexpected(begin);
  }

  private boolean takeExcept() {
    int begin = scanner.at;
    if (!LocatorScanner.isLetter(scanner.peek())) {
      return false;
    }
    boolean found = scanner.takeWord("except") || scanner.takeWord("excepting");
    if (!found && scanner.takeWord("but")) {
      scanner.skipSpaces();
      found = scanner.takeWord("not");
    }
    if (!found) {
      scanner.at = begin;
      return false;
    }
    if (!current.hasRange()) {
      throw scanner.error(
          begin, "\"except\" does not follow a range", "write \"pls 3–9 except 5\"");
    }
    excepting = true;
    scanner.skipSpaces();
    LocatorLabels.Match label = LocatorLabels.at(scanner, scanner.at);
    exceptionLabelled = label != null;
    if (label != null && label.form().kind() != current.kind()) {
      throw scanner.error(
          scanner.at,
          "what is excepted is not a " + kindName(current.kind()),
          "except only what the range counts: \"pls 3–9 except 5\"");
    }
    scanner.at = label == null ? scanner.at : label.end();
    scanner.skipSpaces();
    numbers();
    return true;
  }

  private void insert(Joint joint, LocatorInsert.Match match) {
    int begin = scanner.at;
    LocatorRun leaf = current;
    boolean follows = leaf != null && (joint == Joint.COMMA || joint == Joint.SPACE);
    boolean places = follows && isPlacedLeaf(leaf, match);
    if (places) {
      nesting.close(leaf);
    }
    start(joint, match.form(), match.faced(), begin);
    scanner.at = match.end();
    scanner.skipSpaces();
    numbers();
    if (places && current.isOne()) {
      nesting.placeIn(current, leaf);
    }
  }

  /** "pl. 9 facing p. 40" places the plate, as long as it is not held by a page already. */
  private boolean isPlacedLeaf(LocatorRun leaf, LocatorInsert.Match match) {
    boolean bound = false;
    for (LocatorLevel level : leaf.outer) {
      bound |= level.kind() != LocatorKind.VOLUME && level.kind() != LocatorKind.PART;
    }
    return leaf.kind().isPlate()
        && !leaf.holdsOthers
        && !bound
        && !match.form().singular().startsWith(leaf.label.singular());
  }

  private void labelled(Joint joint, LocatorLabels.Match match) {
    int begin = scanner.at;
    LocatorKind kind = match.form().kind();
    boolean more = excepting && exceptionLabelled && joint != Joint.SEMICOLON;
    if (more && current.kind() == kind) {
      scanner.at = match.end();
      scanner.skipSpaces();
      numbers();
      return;
    }
    start(joint, match.form(), null, begin);
    scanner.at = match.end();
    int afterLabel = scanner.at;
    scanner.skipSpaces();
    if (kind.mayLackNumber() && !startsNumber() && !startsLetter()) {
      scanner.at = afterLabel;
      String typed = scanner.text.substring(begin, afterLabel);
      add(Span.of(new Unnumbered(kind, typed, ""), begin));
    } else {
      numbers();
    }
  }

  private static LocatorLabels.Form bare(LocatorKind kind) {
    return new LocatorLabels.Form(kind, "", "", false);
  }

  private void start(Joint joint, LocatorLabels.Form form, LocatorKind faced, int begin) {
    current = nesting.start(joint, form, faced, begin);
    excepting = false;
    runs.add(current);
  }

  private void numbers() {
    if (current.spans.isEmpty()) {
      current.numbersBegin = scanner.at;
    }
    List<Span> before =
        excepting && !current.exceptions.isEmpty() ? current.exceptions : current.spans;
    Span previous = before.isEmpty() ? null : before.get(before.size() - 1);
    Span span = spanReader.span(current, previous);
    current.repeatsLabel |= spanReader.repeatsLabel();
    if (excepting) {
      except(span);
    } else {
      add(span);
    }
  }

  private void except(Span exception) {
    total(exception);
    for (LocatorNumber end : List.of(exception.from(), exception.to())) {
      if (!current.names(exceptionOf(exception, end))) {
        throw scanner.error(
            exception.begin(),
            "\"" + end.printed() + "\" is not in the range it is excepted from",
            "except only what the range holds; write what follows with its label after \";\"");
      }
    }
    current.exceptions.add(exception);
    current.end = scanner.at;
  }

  private static Span exceptionOf(Span span, LocatorNumber number) {
    return Span.of(number, number, span.begin()).in(span.whole(), span.joint());
  }

  private void add(Span span) {
    total(span);
    current.spans.add(position(span));
    current.end = scanner.at;
  }

  private void total(Span span) {
    total += span.size();
    if (total > MOST_MEMBERS || total < 0) {
      throw scanner.error(
          span.begin(),
          "it names more than " + MOST_MEMBERS + " places",
          "check the numbers, or name the first and the last place only");
    }
  }

  private Span position(Span span) {
    int before = scanner.at;
    scanner.skipSpaces();
    int begin = scanner.at;
    if (!scanner.take('(')) {
      scanner.at = before;
      return span;
    }
    int end = scanner.text.indexOf(')', begin);
    String words = end < 0 ? "" : scanner.text.substring(begin + 1, end);
    boolean clean = words.indexOf('(') < 0 && !hasControl(words);
    if (words.isBlank() || !clean) {
      throw scanner.error(
          begin, "the position is empty, nested or not closed", "write \"fig. 3 (top left)\"");
    }
    scanner.at = end + 1;
    return span.at(words);
  }

  private static boolean hasControl(String words) {
    for (int i = 0; i < words.length(); i++) {
      if (Character.isISOControl(words.charAt(i))) {
        return true;
      }
    }
    return false;
  }

  private boolean startsNumber() {
    char c = scanner.peek();
    String word = scanner.word();
    boolean roman = !word.isEmpty() && RomanNumeral.lengthIn(word) == word.length();
    boolean prefixed = word.length() == 1 && LocatorScanner.isDigit(scanner.peek(1));
    return LocatorScanner.isDigit(c) || c == '[' || roman || prefixed;
  }

  private boolean startsLetter() {
    return scanner.word().length() == 1
        && scanner.peek(1) != '.'
        && LocatorLabels.at(scanner, scanner.at) == null;
  }

  /** A roman numeral in capitals before a comma and a label is a volume: "II, p. 13". */
  private boolean startsVolume(Joint joint) {
    String word = scanner.word();
    boolean roman =
        !word.isEmpty()
            && Character.isUpperCase(word.charAt(0))
            && RomanNumeral.lengthIn(word) == word.length();
    boolean mayStart = joint == Joint.START || joint == Joint.SEMICOLON || nesting.isInBareVolume();
    if (!roman || !mayStart) {
      return false;
    }
    int next = scanner.at + word.length();
    if (next >= scanner.text.length() || scanner.text.charAt(next) != ',') {
      return false;
    }
    do {
      next++;
    } while (next < scanner.text.length() && LocatorScanner.isSpace(scanner.text.charAt(next)));
    LocatorLabels.Match label = LocatorLabels.at(scanner, next);
    return label != null && label.form().kind() != LocatorKind.VOLUME;
  }

  private static String kindName(LocatorKind kind) {
    return kind.name().toLowerCase(Locale.ROOT).replace('_', ' ');
  }
}
