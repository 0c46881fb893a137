package merese.time;

import java.util.List;
import merese.time.WordedDate.Asks;
import merese.time.WordedDate.Unread;

/** Words that mean two dates alike often, so that it has to be asked which. */
final class Ambiguous {
  private static final int MONTHS = 12;

  private Ambiguous() {}

  /** What to ask; "unread" where there is nothing to ask. */
  static WordedDate of(DateCursor cursor, DateProfile profile) {
    if (cursor.is("turn")) {
      return turn(cursor, profile);
    }
    Asks hundred = hundred(cursor);
    return hundred == null ? shortened(cursor) : hundred;
  }

  /** "1800s" is ten years to some and a hundred to others. */
  private static Asks hundred(DateCursor cursor) {
    for (int i = 0; !cursor.peek(i).isEmpty(); i++) {
      String token = cursor.peek(i);
      if (token.length() == 5
          && token.endsWith("00s")
          && Ordinals.isNumber(token.substring(0, 4))) {
        String start = token.substring(0, 2);
        return new Asks(List.of(start + "00–" + start + "09", start + "00–" + start + "99"));
      }
    }
    return null;
  }

  /** "Turn of the 19th century" is c. 1800 to some and c. 1900 to others. */
  private static WordedDate turn(DateCursor cursor, DateProfile profile) {
    int century = Ordinals.century(cursor.peek(1));
    if (century > 0 && Ordinals.isCentury(cursor.peek(2)) && cursor.peek(3).isEmpty()) {
      int first = profile.firstYear(century) - profile.centuryFirstYear();
      return new Asks(List.of("c. " + first, "c. " + (first + 100)));
    } else if (cursor.peek(1).equals("century") && cursor.peek(2).isEmpty()) {
      return new Asks(List.of("the turn of which century"));
    }
    return new Unread();
  }

  /** "1810-12" is two years or a month. */
  private static WordedDate shortened(DateCursor cursor) {
    String year = cursor.peek(0);
    String end = cursor.peek(2);
    if (!cursor.peek(1).equals(DateTokens.DASH)
        || cursor.peek(3).length() > 0
        || year.length() != 4
        || end.length() != 2
        || !Ordinals.isNumber(year)
        || !Ordinals.isNumber(end)) {
      return new Unread();
    }
    int last = Integer.parseInt(end);
    return last > 0 && last <= MONTHS && last > Integer.parseInt(year) % 100
        ? new Asks(List.of(year + " to " + year.substring(0, 2) + end, year + "-" + end))
        : new Unread();
  }
}
