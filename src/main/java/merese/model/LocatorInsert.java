package merese.model;

import java.util.List;

/**
 * The labels of leaves known by what they face: "plate facing p. 40", "facing pl. 3", "plates
 * opposite pp. 40 and 48". Common practice, no source.
 */
final class LocatorInsert {
  private static final List<LocatorKind> FACED =
      List.of(LocatorKind.PAGE, LocatorKind.PLATE, LocatorKind.COLOUR_PLATE, LocatorKind.FOLIO);

  private LocatorInsert() {}

  /** The label found, what it faces, and where the number starts. */
  record Match(LocatorLabels.Form form, LocatorKind faced, int end) {}

  /**
   * The insert label at the cursor, which stays; null if there is none.
   *
   * @param leaf the label that stands there, which may be that of the insert; null if there is none
   */
  static Match at(LocatorScanner scanner, LocatorLabels.Match leaf) {
    int start = scanner.at;
    boolean named =
        leaf != null && (leaf.form().kind().isPlate() || leaf.form().kind() == LocatorKind.FIGURE);
    scanner.at = named ? leaf.end() : start;
    scanner.skipSpaces();
    int signBegin = scanner.at;
    boolean faces = takeFacing(scanner);
    String sign = scanner.text.substring(signBegin, scanner.at);
    scanner.skipSpaces();
    LocatorLabels.Match faced = faces ? LocatorLabels.at(scanner, scanner.at) : null;
    int after = scanner.at;
    scanner.at = start;
    if (!faces) {
      return null;
    }
    if (faced == null || !FACED.contains(faced.form().kind())) {
      throw scanner.error(
          after,
          "\"" + sign + "\" is not followed by a page, plate or folio",
          "write \"facing p. 40\" or \"facing pl. 3\"");
    }
    String one = (named ? leaf.form().singular() + " " : "") + sign + " ";
    String several = (named ? leaf.form().plural() + " " : "") + sign + " ";
    LocatorLabels.Form form =
        new LocatorLabels.Form(
            LocatorKind.INSERT,
            one + faced.form().singular(),
            several + faced.form().plural(),
            faced.form().isPlural());
    return new Match(form, faced.form().kind(), faced.end());
  }

  private static boolean takeFacing(LocatorScanner scanner) {
    int start = scanner.at;
    if (!LocatorScanner.isLetter(scanner.peek())) {
      return false;
    }
    if (scanner.takeWord("facing") || scanner.takeWord("opposite")) {
      return true;
    }
    if (scanner.takeWord("opp")) {
      scanner.take('.');
      return true;
    }
    if (scanner.takeWord("to")) {
      scanner.skipSpaces();
      if (scanner.takeWord("face")) {
        return true;
      }
    }
    scanner.at = start;
    return false;
  }

  /** The plural of an insert's label: "plate facing p." becomes "plates facing pp.". */
  static String pluralOf(LocatorLevel.Facing facing) {
    LocatorScanner label = new LocatorScanner(facing.label() + " 1");
    Match match = at(label, LocatorLabels.at(label, 0));
    return match == null ? LocatorKind.INSERT.plural() : match.form().plural();
  }
}
