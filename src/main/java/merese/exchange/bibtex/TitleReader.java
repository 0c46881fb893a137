package merese.exchange.bibtex;

import java.util.Optional;
import merese.exchange.SuppliedTitle;

/**
 * Titles and subtitles, and titles for what has none.
 *
 * @param isSupplied whether the entry has no title of its own
 */
record TitleReader(String title, Optional<String> subtitle, boolean isSupplied) {
  private static final String COLON = ": ";

  static TitleReader of(EntryFields fields, String key) {
    Optional<String> title = fields.plain("title");
    if (title.isEmpty()) {
      return new TitleReader(supplied(fields, key), fields.plain("subtitle"), true);
    }
    return fields.has("subtitle")
        ? new TitleReader(title.get(), fields.plain("subtitle"), false)
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
            whole.substring(0, colon), Optional.of(whole.substring(colon + COLON.length())), false)
        : new TitleReader(whole, Optional.empty(), false);
  }

  /** What stands between a title and its subtitle. */
  static String joint(String title) {
    return title.endsWith("?") || title.endsWith("!") ? " " : COLON;
  }

  private static String supplied(EntryFields fields, String key) {
    return SuppliedTitle.of(
        fields
            .plain("note")
            .or(() -> fields.plain("howpublished"))
            .or(() -> fields.plain("booktitle")),
        key);
  }
}
