package merese.model;

import java.util.HashMap;
import java.util.Map;

/**
 * The labels people type, each with its singular and plural. Phrases are compared without case,
 * full stops, and regardless of spaces or hyphens between words. "ff." is refused, because it may
 * mean folios or "following". The spellings are common practice, no source; those with "col. pl."
 * are read as colour plates, while "col." alone always is a column.
 */
final class LocatorLabels {
  private static final int MOST_WORDS = 3;
  private static final Map<String, Form> FORMS = new HashMap<>();

  /** A label in both numbers, and which of the two was typed. */
  record Form(LocatorKind kind, String singular, String plural, boolean isPlural) {}

  /** A label found in the text, which ends before the offset. */
  record Match(Form form, int end) {}

  static {
    add(LocatorKind.PAGE, "p.", "pp.");
    add(LocatorKind.PAGE, "page", "pages");
    add(LocatorKind.VOLUME, "vol.", "vols");
    add(LocatorKind.VOLUME, "volume", "volumes");
    add(LocatorKind.PART, "part", "parts");
    add(LocatorKind.PART, "pt.", "pts");
    for (String colour : new String[] {"colour", "color", "coloured", "colored", "col."}) {
      add(LocatorKind.COLOUR_PLATE, colour.concat(" pl."), colour.concat(" pls"));
      add(LocatorKind.COLOUR_PLATE, colour.concat(" plate"), colour.concat(" plates"));
    }
    add(LocatorKind.PLATE, "pl.", "pls");
    add(LocatorKind.PLATE, "plate", "plates");
    add(LocatorKind.FIGURE, "fig.", "figs");
    add(LocatorKind.FIGURE, "figure", "figures");
    for (String catalogue : new String[] {"cat.", "catalogue", "catalog"}) {
      add(LocatorKind.CATALOGUE_NUMBER, catalogue.concat(" no."), catalogue.concat(" nos"));
      add(LocatorKind.CATALOGUE_NUMBER, catalogue.concat(" number"), catalogue.concat(" numbers"));
    }
    add(LocatorKind.CATALOGUE_NUMBER, "cat.", "cats");
    add(LocatorKind.NUMBER, "no.", "nos");
    add(LocatorKind.NUMBER, "number", "numbers");
    addCounted(LocatorKind.NUMBER, "entry", "entries");
    addCounted(LocatorKind.LOT, "lot", "lots");
    addCounted(LocatorKind.PATTERN, "pattern", "patterns");
    addCounted(LocatorKind.ITEM, "item", "items");
    addCounted(LocatorKind.PHOTO, "photo", "photos");
    addCounted(LocatorKind.PHOTO, "photograph", "photographs");
    add(LocatorKind.FOLIO, "fol.", "fols");
    add(LocatorKind.FOLIO, "folio", "folios");
    add(LocatorKind.FOLIO, "f.", "fols");
    add(LocatorKind.COLUMN, "col.", "cols");
    add(LocatorKind.COLUMN, "column", "columns");
    add(LocatorKind.NOTE, "n.", "nn.");
    add(LocatorKind.NOTE, "note", "notes");
    add(LocatorKind.NOTE, "fn.", "fns");
    add(LocatorKind.NOTE, "footnote", "footnotes");
    add(LocatorKind.CAPTION, "caption", "captions");
    add(LocatorKind.PARAGRAPH, "para.", "paras");
    add(LocatorKind.PARAGRAPH, "paragraph", "paragraphs");
    add(LocatorKind.PARAGRAPH, "§", "§§");
    add(LocatorKind.PARAGRAPH, "¶", "¶¶");
    add(LocatorKind.FRONTISPIECE, "frontispiece", "frontispieces");
    add(LocatorKind.FRONTISPIECE, "frontis.", "frontispieces");
    addEndpaper(LocatorKind.FRONT_ENDPAPER, "front");
    addEndpaper(LocatorKind.BACK_ENDPAPER, "back");
    addEndpaper(LocatorKind.BACK_ENDPAPER, "rear");
  }

  private LocatorLabels() {}

  private static void addCounted(LocatorKind kind, String singular, String plural) {
    add(kind, singular, plural);
    add(kind, singular.concat(" no."), singular.concat(" nos"));
    add(kind, singular.concat(" number"), singular.concat(" numbers"));
  }

  private static void addEndpaper(LocatorKind kind, String where) {
    for (String paper : new String[] {" endpaper", " end-paper", " free endpaper"}) {
      add(kind, where.concat(paper), where.concat(paper).concat("s"));
    }
  }

  private static void add(LocatorKind kind, String singular, String plural) {
    FORMS.putIfAbsent(bare(plural), new Form(kind, singular, plural, true));
    FORMS.put(bare(singular), new Form(kind, singular, plural, false));
  }

  /** The longest label at the offset, with its capital kept; null if there is none. */
  static Match at(LocatorScanner scanner, int begin) {
    Match longest = null;
    StringBuilder phrase = new StringBuilder();
    int end = begin;
    for (int words = 0; words < MOST_WORDS; words++) {
      String word = wordOrSign(scanner, end);
      if (word.isEmpty()) {
        break;
      }
      phrase.append(words == 0 ? "" : " ").append(LocatorScanner.folded(word));
      end += word.length();
      boolean hasStop = end < scanner.text.length() && scanner.text.charAt(end) == '.';
      end += hasStop ? 1 : 0;
      Form form = FORMS.get(phrase.toString());
      if (form != null && (word.length() > 1 || hasStop || numberFollows(scanner, end, word))) {
        longest = new Match(capital(form, scanner.text.charAt(begin)), end);
      }
      int next = afterGap(scanner, end);
      if (next == end && !hasStop) {
        break;
      }
      end = next;
    }
    return longest;
  }

  /** The plural of a singular label that was typed, or the plural of the kind. */
  static String pluralOf(LocatorKind kind, String singular) {
    Form form = FORMS.get(bare(LocatorScanner.folded(singular)));
    if (form == null || form.kind() != kind || singular.isEmpty()) {
      return kind.plural();
    }
    return capital(form, singular.charAt(0)).plural();
  }

  private static String wordOrSign(LocatorScanner scanner, int begin) {
    String text = scanner.text;
    int end = begin;
    while (end < text.length()
        && end < begin + 2
        && (text.charAt(end) == '§' || text.charAt(end) == '¶')) {
      end++;
    }
    return end > begin ? text.substring(begin, end) : scanner.wordAt(begin);
  }

  /** A letter alone may be the suffix of a list ("9e, f"), so a label of one needs a number. */
  private static boolean numberFollows(LocatorScanner scanner, int end, String word) {
    int next = end;
    while (next < scanner.text.length() && LocatorScanner.isSpace(scanner.text.charAt(next))) {
      next++;
    }
    if (next >= scanner.text.length()) {
      return false;
    }
    char c = scanner.text.charAt(next);
    boolean roman = next > end && RomanNumeral.value(scanner.wordAt(next)) > 0;
    return LocatorScanner.isDigit(c) || c == '[' || roman || !Character.isLetter(word.charAt(0));
  }

  private static int afterGap(LocatorScanner scanner, int begin) {
    int end = begin;
    while (end < scanner.text.length()
        && (LocatorScanner.isSpace(scanner.text.charAt(end)) || scanner.text.charAt(end) == '-')) {
      end++;
    }
    return end;
  }

  private static Form capital(Form form, char first) {
    if (!Character.isUpperCase(first)) {
      return form;
    }
    return new Form(form.kind(), capital(form.singular()), capital(form.plural()), form.isPlural());
  }

  private static String capital(String label) {
    return Character.toUpperCase(label.charAt(0)) + label.substring(1);
  }

  private static String bare(String label) {
    StringBuilder out = new StringBuilder(label.length());
    for (int i = 0; i < label.length(); i++) {
      char c = label.charAt(i);
      if (c != '.') {
        out.append(c == '-' ? ' ' : c);
      }
    }
    return out.toString();
  }
}
