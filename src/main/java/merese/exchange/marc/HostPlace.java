package merese.exchange.marc;

import java.util.Locale;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import merese.model.Locator;
import merese.model.LocatorException;

/**
 * Where an article stands in what it is part of (773 $g): "Vol. 10, no. 2 (Feb. 1986), p. 22-38",
 * or one named thing a subfield, as in "volume:10", "pages:22-38".
 */
final class HostPlace {
  private static final String NUMBER = "(?:\\. ?| |(?=[\\dIVXLC]))([^,;:()]+?)\\s*";
  private static final String END = "(?=$|[,;:(]| (?:no|nos|nr|pt|part|issue|heft|p|pp|s)\\b)";
  private static final Pattern VOLUME =
      Pattern.compile(
          "^(?:volume|vol|v|band|bd|tome|tom|t|jahrgang|jahrg|jg|année|anno|year|årg)"
              + NUMBER
              + END,
          Pattern.CASE_INSENSITIVE);
  private static final Pattern ISSUE =
      Pattern.compile(
          "^(?:number|no|nos|nr|n°|nº|issue|heft|h|fasc|num)" + NUMBER + END,
          Pattern.CASE_INSENSITIVE);
  private static final Pattern PART =
      Pattern.compile("^(?:part|pt|teil|partie)" + NUMBER + END, Pattern.CASE_INSENSITIVE);
  private static final Pattern DATE = Pattern.compile("^\\(([^)]*)\\)");
  private static final Pattern COVER = Pattern.compile("cover (\\d{4})");
  private static final Pattern BARE = Pattern.compile("^(\\d{1,4})(?::(\\d{1,4}))?(?=\\s*[,(]|$)");
  private static final Pattern PAGES =
      Pattern.compile(
          "^(?:pages?|pp?|seiten?|s)(?:\\. ?| |(?=[\\[\\d]))(?=[\\[\\divxlc])",
          Pattern.CASE_INSENSITIVE);

  Optional<String> volume = Optional.empty();
  Optional<String> part = Optional.empty();
  Optional<String> issue = Optional.empty();
  OptionalInt coverYear = OptionalInt.empty();
  OptionalInt year = OptionalInt.empty();
  Optional<Locator> pages = Optional.empty();

  static HostPlace of(MarcField host) {
    HostPlace place = new HostPlace();
    for (String text : host.all('g')) {
      if (!place.named(text)) {
        place.read(MarcText.bare(text, true));
      }
    }
    return place;
  }

  private boolean named(String text) {
    int colon = text.indexOf(':');
    String value = text.substring(colon + 1).strip();
    if (colon < 0 || value.isEmpty()) {
      return false;
    }
    switch (text.substring(0, colon).toLowerCase(Locale.ROOT)) {
      case "volume" -> volume = volume.or(() -> Optional.of(value));
      case "number" -> issue = issue.or(() -> Optional.of(value));
      case "part" -> part = part.or(() -> Optional.of(value));
      case "pages" -> pages = pages.or(() -> pages(value));
      case "year" -> year = year.isPresent() ? year : MarcDate.year(value);
      case "day", "month", "extent", "elocationid" -> {}
      default -> {
        return false;
      }
    }
    return true;
  }

  private void read(String text) {
    String rest = text;
    while (!rest.isEmpty() && pages.isEmpty()) {
      Matcher found = numbered(rest);
      if (found != null) {
        rest = after(found.end(), rest);
        continue;
      }
      pages = pages(rest);
      if (pages.isEmpty()) {
        int comma = rest.indexOf(", ");
        rest = comma < 0 ? "" : rest.substring(comma + 2);
      }
    }
  }

  private Matcher numbered(String text) {
    Matcher date = DATE.matcher(text);
    if (date.find()) {
      dated(date.group(1));
      return date;
    }
    Matcher found = match(VOLUME, text, volume);
    if (found != null) {
      volume = Optional.of(found.group(1));
      return found;
    }
    found = match(PART, text, part);
    if (found != null) {
      part = Optional.of(found.group(1));
      return found;
    }
    found = match(ISSUE, text, issue);
    if (found != null) {
      issue = Optional.of(found.group(1));
      return found;
    }
    found = match(BARE, text, volume);
    if (found != null) {
      volume = Optional.of(found.group(1));
      Optional<String> number = Optional.ofNullable(found.group(2));
      issue = issue.or(() -> number);
    }
    return found;
  }

  private static Matcher match(Pattern pattern, String text, Optional<String> already) {
    if (already.isPresent() || !Character.isLetterOrDigit(text.codePointAt(0))) {
      return null;
    }
    Matcher matcher = pattern.matcher(text);
    return matcher.find() ? matcher : null;
  }

  private static String after(int end, String text) {
    String rest = text.substring(end).strip();
    return rest.startsWith(",") || rest.startsWith(":") || rest.startsWith(";")
        ? rest.substring(1).strip()
        : rest;
  }

  private void dated(String words) {
    Matcher cover = COVER.matcher(words);
    if (cover.matches()) {
      coverYear = OptionalInt.of(Integer.parseInt(cover.group(1)));
    } else if (year.isEmpty()) {
      year = MarcDate.year(words);
    }
  }

  /** "p. 22-38" as "pp. 22–38"; empty for what is no place in a source. */
  static Optional<Locator> pages(String text) {
    String words = text.strip();
    Matcher label = PAGES.matcher(words);
    String numbers = label.find() ? words.substring(label.end()) : words;
    boolean unlabelled = !numbers.isEmpty() && "[0123456789".indexOf(numbers.charAt(0)) >= 0;
    if (numbers.length() < words.length() || unlabelled) {
      String dashed = numbers.replaceAll("(?<=[\\w\\]])-(?=[\\w\\[])", "–");
      boolean several = dashed.indexOf('–') >= 0 || dashed.indexOf(',') >= 0;
      return parsed((several ? "pp. " : "p. ") + dashed);
    }
    return numbers.isEmpty() ? Optional.empty() : parsed(words);
  }

  private static Optional<Locator> parsed(String text) {
    try {
      return Optional.of(Locator.parse(text));
    } catch (LocatorException e) {
      return Optional.empty();
    }
  }
}
