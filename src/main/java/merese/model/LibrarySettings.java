package merese.model;

import java.util.Optional;

/**
 * What a library says of itself.
 *
 * @param format the version of its layout
 * @param style the name of a CSL style
 * @param dateProfile the rules by which dates in words become years
 */
public record LibrarySettings(
    int format,
    String title,
    String language,
    Optional<String> style,
    Optional<DateSettings> dateProfile) {
  /**
   * The layout that this program writes; it reads the older ones as they stand, and carries a
   * library forward at its first change. Format 2 looks as format 1 does: from it on, changes are
   * recorded in the library's history, and a program that knows only format 1 would write behind
   * the history's back.
   */
  public static final int FORMAT = 2;

  public LibrarySettings {
    Require.text(title, "a library's title");
    Require.text(language, "a library's language");
  }
}
