package merese.search;

import java.util.Locale;

/** What a hit is. The order is that of hits which are otherwise equal. */
public enum HitKind {
  SOURCE,
  NOTE,
  CONCEPT,
  /** One of the user's own pieces. */
  PIECE,
  /** A coinage, a preference, an experience or an untraced word of the user's. */
  MINE,
  /** A page of a book, whose words are no note. */
  PAGE;

  String code() {
    return name().toLowerCase(Locale.ROOT);
  }
}
