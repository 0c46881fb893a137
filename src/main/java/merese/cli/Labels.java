package merese.cli;

import java.util.Set;

/** Keeps the labels of a citation with their numbers: no line ends with "pl.". */
final class Labels {
  private static final Set<String> LABELS =
      Set.of(
          "p.", "pp.", "pl.", "pls", "plate", "plates", "fig.", "figs", "figs.", "no.", "nos",
          "nos.", "lot", "lots", "fol.", "fols", "fols.", "vol.", "vols", "vols.", "col.", "n.",
          "nn.", "para.", "paras", "item", "items", "pattern", "part", "issue", "S.");

  private Labels() {}

  /** The text, with each label kept with its number. */
  static String together(String citation) {
    StringBuilder out = new StringBuilder();
    int at = 0;
    while (at < citation.length()) {
      int space = citation.indexOf(' ', at);
      int end = space < 0 ? citation.length() : space;
      String word = citation.substring(at, end);
      out.append(word);
      if (space >= 0) {
        boolean keeps = isLabel(word) && isNumber(citation, space + 1);
        keeps |= isStartOfLabel(word, citation, space + 1);
        out.append(keeps ? Wrap.together(" ") : " ");
      }
      at = end + 1;
    }
    return out.toString();
  }

  private static boolean isLabel(String word) {
    return LABELS.contains(word.startsWith("(") ? word.substring(1) : word);
  }

  private static boolean isStartOfLabel(String word, String citation, int next) {
    return (word.equals("cat.") && citation.startsWith("no", next))
        || (word.equals("colour") && citation.startsWith("pl", next));
  }

  /** Whether an arabic or roman number starts here. */
  private static boolean isNumber(String citation, int at) {
    int end = citation.startsWith("[", at) ? at + 1 : at;
    if (end < citation.length() && citation.charAt(end) >= '0' && citation.charAt(end) <= '9') {
      return true;
    }
    int start = end;
    while (end < citation.length() && "ivxlcdmIVXLCDM".indexOf(citation.charAt(end)) >= 0) {
      end++;
    }
    return end > start && (end == citation.length() || !Character.isLetter(citation.charAt(end)));
  }
}
