package merese.answer.pull;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import merese.model.Locator;
import merese.model.LocatorKind;
import merese.model.LocatorLevel;
import merese.model.LocatorNumber;

/**
 * What is printed, as one says it aloud in English: "plate twelve, figure three" for "pl. XII, fig.
 * 3". How trade and libraries say these things is common practice, no source.
 */
public final class Spoken {
  private Spoken() {}

  /** A cardinal number from 0 up: "two hundred and fourteen". */
  public static String number(long value) {
    return SpokenNumber.of(value);
  }

  /**
   * A year from 1 up: "nineteen twenty-six", "eighteen hundred", "nineteen oh five", "two thousand
   * and nine".
   */
  public static String year(int year) {
    return SpokenNumber.year(year);
  }

  /**
   * A place or several, in physical order and without those excepted: "pages forty-one to
   * forty-three", "folio twelve recto", "the plate facing page forty", "three minutes and fifteen
   * seconds".
   */
  public static String locator(Locator locator) {
    List<List<LocatorLevel>> places = new ArrayList<>();
    for (Locator member : locator.members()) {
      places.add(member.levels());
    }
    List<String> groups = new ArrayList<>();
    int at = 0;
    while (at < places.size()) {
      int end = at + 1;
      while (end < places.size() && sharesAllButTheLast(places.get(at), places.get(end))) {
        end++;
      }
      groups.add(group(places.subList(at, end)));
      at = end;
    }
    return joined(groups);
  }

  private static boolean sharesAllButTheLast(List<LocatorLevel> a, List<LocatorLevel> b) {
    if (a.size() != b.size()) {
      return false;
    }
    int last = a.size() - 1;
    for (int i = 0; i < last; i++) {
      if (!a.get(i).sameAs(b.get(i))) {
        return false;
      }
    }
    return isCounted(a.get(last))
        && isCounted(b.get(last))
        && a.get(last).kind() == b.get(last).kind()
        && isPreliminary(a.get(last)) == isPreliminary(b.get(last));
  }

  private static boolean isCounted(LocatorLevel level) {
    return level instanceof LocatorLevel.Numbered numbered && !numbered.numeral().counted();
  }

  private static boolean isPreliminary(LocatorLevel level) {
    return level.kind() == LocatorKind.PAGE
        && level.number().isPresent()
        && level.number().get().style().isRoman();
  }

  /** Places that differ in their last number alone. */
  private static String group(List<List<LocatorLevel>> places) {
    List<LocatorLevel> first = places.get(0);
    int last = first.size() - 1;
    List<String> words = new ArrayList<>();
    for (LocatorLevel level : first.subList(0, last)) {
      words.add(level(level));
    }
    words.add(places.size() == 1 ? level(first.get(last)) : several(places, last));
    return String.join(", ", words);
  }

  private static String several(List<List<LocatorLevel>> places, int last) {
    List<String> stretches = new ArrayList<>();
    int at = 0;
    while (at < places.size()) {
      int end = at;
      while (end + 1 < places.size()
          && follows(places.get(end).get(last), places.get(end + 1).get(last))) {
        end++;
      }
      if (end - at < 2) {
        for (; at <= end; at++) {
          stretches.add(numberAndPosition(places.get(at).get(last)));
        }
      } else {
        stretches.add(
            numberAndPosition(places.get(at).get(last))
                + " to "
                + numberAndPosition(places.get(end).get(last)));
      }
      at = end + 1;
    }
    LocatorLevel level = places.get(0).get(last);
    return plural(level.kind()) + (isPreliminary(level) ? " roman " : " ") + joined(stretches);
  }

  /** Whether nothing can stand between the two. */
  private static boolean follows(LocatorLevel a, LocatorLevel b) {
    LocatorNumber one = a.number().orElseThrow();
    LocatorNumber next = b.number().orElseThrow();
    if (!one.prefix().equals(next.prefix())
        || !one.decimals().isEmpty()
        || !next.decimals().isEmpty()
        || !a.position().isEmpty()) {
      return false;
    }
    boolean plain = one.suffix().isEmpty() && next.suffix().isEmpty();
    if (one.side() == LocatorNumber.Side.RECTO) {
      return plain && next.side() == LocatorNumber.Side.VERSO && next.value() == one.value();
    } else if (one.side() == LocatorNumber.Side.VERSO) {
      return plain && next.side() == LocatorNumber.Side.RECTO && next.value() == one.value() + 1;
    }
    boolean lettered = one.suffix().length() == 1 && next.suffix().length() == 1;
    return plain
        ? next.side() == LocatorNumber.Side.NONE && next.value() == one.value() + 1
        : lettered
            && next.value() == one.value()
            && next.suffix().charAt(0) == one.suffix().charAt(0) + 1;
  }

  private static String level(LocatorLevel level) {
    if (level instanceof LocatorLevel.Moment moment) {
      return moment(moment) + position(level);
    } else if (level instanceof LocatorLevel.Facing facing) {
      String leaf = facing.label().startsWith("pl") ? "the plate facing " : "the leaf facing ";
      String page =
          facing.numeral().style().isRoman() && facing.faced() == LocatorKind.PAGE
              ? " roman "
              : " ";
      return leaf
          + singular(facing.faced())
          + page
          + SpokenNumber.of(facing.numeral())
          + position(level);
    } else if (level.number().isEmpty()) {
      return unnumbered(level.kind()) + position(level);
    }
    String counted = level.number().get().counted() ? ", which bears no number: count to it" : "";
    return singular(level.kind())
        + (isPreliminary(level) ? " roman " : " ")
        + numberAndPosition(level)
        + counted;
  }

  private static String numberAndPosition(LocatorLevel level) {
    return SpokenNumber.of(level.number().orElseThrow()) + position(level);
  }

  private static String position(LocatorLevel level) {
    return level.position().isEmpty() ? "" : ", " + level.position();
  }

  private static String moment(LocatorLevel.Moment moment) {
    return moment.from() == moment.to()
        ? time(moment.from())
        : "from " + time(moment.from()) + " to " + time(moment.to());
  }

  /** A moment of a film: "three minutes and fifteen seconds". */
  private static String time(int seconds) {
    List<String> words = new ArrayList<>();
    count(seconds / 3600, "hour").ifPresent(words::add);
    count(seconds / 60 % 60, "minute").ifPresent(words::add);
    count(seconds % 60, "second").ifPresent(words::add);
    return words.isEmpty() ? "the very beginning" : joined(words);
  }

  private static Optional<String> count(int many, String unit) {
    return many == 0
        ? Optional.empty()
        : Optional.of(SpokenNumber.of(many) + " " + unit + (many == 1 ? "" : "s"));
  }

  /** "one", "one and two", "one, two and three". */
  static String joined(List<String> words) {
    int last = words.size() - 1;
    return last < 1
        ? String.join("", words)
        : String.join(", ", words.subList(0, last)) + " and " + words.get(last);
  }

  private static String unnumbered(LocatorKind kind) {
    return switch (kind) {
      case FRONT_ENDPAPER -> "the front endpaper";
      case BACK_ENDPAPER -> "the back endpaper";
      case FRONTISPIECE -> "the frontispiece";
      case CAPTION -> "the caption";
      default -> "the " + singular(kind);
    };
  }

  private static String singular(LocatorKind kind) {
    return switch (kind) {
      case VOLUME -> "volume";
      case PART -> "part";
      case PAGE -> "page";
      case PLATE -> "plate";
      case FIGURE -> "figure";
      case COLOUR_PLATE -> "colour plate";
      case CATALOGUE_NUMBER -> "catalogue number";
      case NUMBER -> "number";
      case LOT -> "lot";
      case PATTERN -> "pattern";
      case ITEM -> "item";
      case FOLIO -> "folio";
      case COLUMN -> "column";
      case PARAGRAPH -> "paragraph";
      case NOTE -> "note";
      case CAPTION -> "caption";
      case PHOTO -> "photograph";
      case INSERT -> "leaf";
      case TIMESTAMP -> "moment";
      case FRONT_ENDPAPER, BACK_ENDPAPER -> "endpaper";
      case FRONTISPIECE -> "frontispiece";
    };
  }

  private static String plural(LocatorKind kind) {
    return singular(kind) + "s";
  }
}
