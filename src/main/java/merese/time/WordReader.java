package merese.time;

import java.util.List;
import java.util.Set;
import merese.time.WordedDate.Asks;
import merese.time.WordedDate.Unread;

/** Reads a date in words by its tokens: what stands before dates, between two and behind them. */
final class WordReader {
  private static final Set<String> ABOUT =
      Set.of("c", "ca", "circa", "about", "around", "approximately", "roughly");
  private static final Set<String> UNCERTAIN =
      Set.of("probably", "perhaps", "possibly", "presumably");
  private static final Set<String> WITHIN = Set.of("in", "during", "made");
  private static final List<List<String>> BEFORE =
      List.of(
          List.of("before"), List.of("prior", "to"), List.of("earlier", "than"), List.of("pre"));
  private static final List<List<String>> AFTER =
      List.of(List.of("after"), List.of("later", "than"), List.of("post"));
  private static final List<List<String>> UNTIL =
      List.of(
          List.of("until"),
          List.of("till"),
          List.of("up", "to"),
          List.of("down", "to"),
          List.of("to"),
          List.of("by"),
          List.of("not", "after"),
          List.of("not", "later", "than"),
          List.of("no", "later", "than"));
  private static final List<List<String>> FROM =
      List.of(
          List.of("from"),
          List.of("since"),
          List.of("not", "before"),
          List.of("not", "earlier", "than"),
          List.of("no", "earlier", "than"));
  private static final List<List<String>> ONWARDS =
      List.of(
          List.of("onwards"),
          List.of("onward"),
          List.of("on"),
          List.of("and", "later"),
          List.of("and", "after"),
          List.of("or", "later"),
          List.of("still", "copied"),
          List.of("still", "made"),
          List.of("and", "still", "copied"),
          List.of("and", "still", "made"),
          List.of("to", "present"),
          List.of("to", "present", "day"));
  private static final List<List<String>> THEREABOUTS =
      List.of(
          List.of("or", "so"),
          List.of("or", "thereabouts"),
          List.of("approximately"),
          List.of("roughly"));

  private final DateCursor cursor;
  private final DateProfile profile;
  private final PointReader points;

  WordReader(List<String> tokens, DateProfile profile) {
    this.cursor = new DateCursor(tokens);
    this.profile = profile;
    this.points = new PointReader(cursor, profile);
  }

  WordedDate read() {
    WordedDate asked = Ambiguous.of(cursor, profile);
    if (asked instanceof Asks) {
      return asked;
    }
    Reach reach = whole();
    return reach == null || !cursor.isAtEnd() ? new Unread() : reach.read();
  }

  private Reach whole() {
    if (cursor.is("in") && cursor.peek(1).equals("or")) {
      cursor.acceptAll(List.of("in", "or")); // in or about 1795
    }
    cursor.acceptOneOf(WITHIN);
    boolean uncertain = cursor.acceptOneOf(UNCERTAIN);
    cursor.acceptOneOf(WITHIN);
    Reach reach = dated();
    if (reach != null && cursor.accept("?")) {
      uncertain = true;
    }
    return reach != null && uncertain ? reach.uncertain() : reach;
  }

  private Reach dated() {
    if (cursor.acceptAny(UNTIL)) {
      Reach last = range();
      return last == null ? null : last.until();
    } else if (cursor.acceptAny(FROM)) {
      Reach first = range();
      if (first == null || points.saidRange()) {
        return first;
      }
      cursor.acceptBehindComma(ONWARDS);
      return first.onwards();
    } else if (cursor.acceptAny(BEFORE)) {
      Reach limit = range();
      return limit == null ? null : limit.before();
    } else if (cursor.acceptAny(AFTER)) {
      Reach limit = range();
      return limit == null ? null : limit.after();
    } else if (cursor.accept("between")) {
      Reach first = point();
      return first != null && cursor.accept("and") ? upTo(first, false) : null;
    }
    Reach reach = range();
    return reach != null && cursor.acceptBehindComma(ONWARDS) ? reach.onwards() : reach;
  }

  private Reach range() {
    Reach first = point();
    if (first == null) {
      return null;
    }
    Reach all = first;
    int before = cursor.position();
    if (cursor.accept(DateTokens.DASH)
        || cursor.accept("to")
        || cursor.acceptAll(List.of("up", "to"))
        || cursor.accept("until")
        || cursor.accept("till")) {
      if (cursor.accept("present")) {
        cursor.backTo(before);
      } else {
        all = upTo(first, true);
      }
    } else if (points.isOfCentury()
        && (cursor.accept("or") || cursor.accept("and") || cursor.accept("/"))) {
      boolean later = cursor.is("later") || cursor.is("after") || cursor.is("still");
      if (later) {
        cursor.backTo(before);
      } else {
        all = upTo(first, true);
      }
    }
    if (all == null || points.owesNoun()) {
      return null;
    }
    return cursor.acceptAny(THEREABOUTS) ? all.about(profile.circa()) : all;
  }

  /** The second of two dates; "c." before the first of two years is said of both. */
  private Reach upTo(Reach first, boolean shortened) {
    boolean firstIsYear = points.isYear();
    boolean firstIsAbout = points.isAbout();
    Reach last = shortened && firstIsYear ? points.shortened(first) : null;
    if (last == null) {
      last = point();
    }
    if (last == null) {
      return null;
    }
    points.sayRange();
    if (firstIsAbout && firstIsYear && points.isYear() && !points.isAbout()) {
      last = last.about(profile.circa());
    }
    return first.to(last);
  }

  private Reach point() {
    boolean about = cursor.acceptOneOf(ABOUT);
    return points.read(about);
  }
}
