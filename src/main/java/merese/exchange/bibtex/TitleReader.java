package merese.exchange.bibtex;

import java.util.Optional;

/** Titles and subtitles, and titles for what has none. */
record TitleReader(String title, Optional<String> subtitle) {
  /** A supplied title is no longer. */
  private static final int MOST_SUPPLIED = 120;

  private static final String COLON = ": ";

  static TitleReader of(EntryFields fields, String key) {
    Optional<String> title = fields.plain("title");
    if (title.isEmpty()) {
      return new TitleReader(supplied(fields, key), fields.plain("subtitle"));
    }
    return fields.has("subtitle")
        ? new TitleReader(title.get(), fields.plain("subtitle"))
        : split(title.get());
  }

  /** In two at the only colon in it, where the two would be joined with a colon again. */
  private static TitleReader split(String whole) {
    int colon = whole.indexOf(COLON);
    boolean splits =
        colon > 0
            && colon == whole.lastIndexOf(COLON)
            && joint(whole.substring(0, colon)).equals(COLON)
            && colon + COLON.length() < whole.length()
            && !Character.isLowerCase(whole.codePointAt(colon + COLON.length()));
    return splits
        ? new TitleReader(
            whole.substring(0, colon), Optional.of(whole.substring(colon + COLON.length())))
        : new TitleReader(whole, Optional.empty());
  }

  /** What stands between a title and its subtitle. */
  static String joint(String title) {
    return title.endsWith("?") || title.endsWith("!") ? " " : COLON;
  }

  /** In square brackets, as cataloguers have it. */
  private static String supplied(EntryFields fields, String key) {
    String words =
        fields
            .plain("note")
            .or(() -> fields.plain("howpublished"))
            .or(() -> fields.plain("booktitle"))
            .orElse(key.isBlank() ? "untitled" : key);
    boolean cut = words.codePointCount(0, words.length()) > MOST_SUPPLIED;
    String used = cut ? words.substring(0, words.offsetByCodePoints(0, MOST_SUPPLIED)) : words;
    return "[" + used.strip() + (cut ? "…]" : "]");
  }
}
