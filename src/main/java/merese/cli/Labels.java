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

  /** The text, with each label and what stands before it in the same label kept with its number. */
  static String together(String citation) {
    StringBuilder out = new StringBuilder();
    int at = 0;
    while (at < citation.length()) {
      int space = citation.indexOf(' ', at);
      int end = space < 0 ? citation.length() : space;
      String word = citation.substring(at, end);
      out.append(word);
      if (space >= 0) {
        boolean keeps = isLabel(word) || isStartOfLabel(word, citation, space);
        out.append(keeps ? Wrap.together(" ") : " ");
      }
      at = end + 1;
    }
    return out.toString();
  }

  private static boolean isLabel(String word) {
    return LABELS.contains(word.startsWith("(") ? word.substring(1) : word);
  }

  private static boolean isStartOfLabel(String word, String citation, int space) {
    String rest = citation.substring(space + 1);
    return (word.equals("cat.") && rest.startsWith("no"))
        || (word.equals("colour") && rest.startsWith("pl"));
  }
}
