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
  /** The layout that this program reads and writes. */
  public static final int FORMAT = 1;

  public LibrarySettings {
    Require.text(title, "a library's title");
    Require.text(language, "a library's language");
  }
}
