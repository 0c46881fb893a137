package merese.exchange.bibtex;

import static java.util.Map.entry;

import java.text.Normalizer;
import java.util.Map;

/**
 * How LaTeX spells a character. The commands are those of the LaTeX kernel (LaTeX2e: An unofficial
 * reference manual, "Text symbols" and "Accents"; from memory).
 */
final class LatexLetters {
  /** Combining marks and the accent commands for them. */
  private static final Map<Character, String> ACCENTS =
      Map.ofEntries(
          entry('\u0300', "`"),
          entry('\u0301', "'"),
          entry('\u0302', "^"),
          entry('\u0303', "~"),
          entry('\u0304', "="),
          entry('\u0306', "u"),
          entry('\u0307', "."),
          entry('\u0308', "\""),
          entry('\u030A', "r"),
          entry('\u030B', "H"),
          entry('\u030C', "v"),
          entry('\u0323', "d"),
          entry('\u0327', "c"),
          entry('\u0328', "k"),
          entry('\u0331', "b"));

  private static final Map<Integer, String> OTHERS =
      Map.ofEntries(
          of('\\', "{\\textbackslash}"),
          of('{', "{\\textbraceleft}"),
          of('}', "{\\textbraceright}"),
          of('$', "\\$"),
          of('&', "\\&"),
          of('#', "\\#"),
          of('%', "\\%"),
          of('_', "\\_"),
          of('^', "{\\textasciicircum}"),
          of('~', "{\\textasciitilde}"),
          of('`', "{\\textasciigrave}"),
          of('<', "{\\textless}"),
          of('>', "{\\textgreater}"),
          of('|', "{\\textbar}"),
          of('‘', "`"),
          of('’', "'"),
          of('“', "``"),
          of('”', "''"),
          of('‐', "-"),
          of('‑', "-"),
          of('–', "--"),
          of('—', "---"),
          of('…', "{\\dots}"),
          of('†', "{\\dag}"),
          of('‡', "{\\ddag}"),
          of('§', "{\\S}"),
          of('¶', "{\\P}"),
          of('©', "{\\copyright}"),
          of('£', "{\\pounds}"),
          of('°', "{\\textdegree}"),
          of('×', "{\\texttimes}"),
          of('½', "{\\textonehalf}"),
          of('¼', "{\\textonequarter}"),
          of('¾', "{\\textthreequarters}"),
          of('¡', "{\\textexclamdown}"),
          of('¿', "{\\textquestiondown}"),
          of('ß', "{\\ss}"),
          of('æ', "{\\ae}"),
          of('Æ', "{\\AE}"),
          of('œ', "{\\oe}"),
          of('Œ', "{\\OE}"),
          of('ø', "{\\o}"),
          of('Ø', "{\\O}"),
          of('å', "{\\aa}"),
          of('Å', "{\\AA}"),
          of('ł', "{\\l}"),
          of('Ł', "{\\L}"),
          of('ı', "{\\i}"));

  private LatexLetters() {}

  private static Map.Entry<Integer, String> of(char c, String latex) {
    return entry((int) c, latex);
  }

  static String of(int c) {
    String known = OTHERS.get(c);
    if (known != null) {
      return known;
    }
    return c < 128 ? Character.toString(c) : accented(Character.toString(c));
  }

  private static String accented(String letter) {
    String parts = Normalizer.normalize(letter, Normalizer.Form.NFD);
    String command = parts.length() == 2 ? ACCENTS.get(parts.charAt(1)) : null;
    char base = parts.charAt(0);
    if (command == null || base > 'z' || !Character.isLetter(base)) {
      return letter;
    }
    boolean below = "dckb".contains(command);
    String dotless =
        !below && (base == 'i' || base == 'j') ? "\\" + base : Character.toString(base);
    return Character.isLetter(command.charAt(0))
        ? "{\\" + command + "{" + dotless + "}}"
        : "{\\" + command + dotless + "}";
  }
}
