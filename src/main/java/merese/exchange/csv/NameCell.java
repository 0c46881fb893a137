package merese.exchange.csv;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import merese.model.Name;

/**
 * A name in a cell: "Family, Given", "Family, Jr, Given" or "Given Family", with small words such
 * as "van der" before the family name as its particle. A society or firm is known by one of its
 * words, such as "Museum" or "Ltd", and otherwise stands in braces; so does a part of a name that
 * would be taken apart wrongly.
 */
final class NameCell {
  /** Words that are in the name of a body and in no person's; common practice, no source. */
  private static final Set<String> BODIES =
      Set.of(
          "museum",
          "museums",
          "society",
          "gallery",
          "galleries",
          "library",
          "university",
          "institute",
          "institution",
          "association",
          "company",
          "co",
          "ltd",
          "limited",
          "inc",
          "plc",
          "council",
          "trust",
          "club",
          "circle",
          "committee",
          "press",
          "sons",
          "brothers",
          "bros",
          "department",
          "corporation",
          "foundation",
          "auctioneers",
          "collection",
          "archives");

  private static final Set<String> SUFFIXES = Set.of("jr", "sr", "ii", "iii", "iv", "esq");

  private NameCell() {}

  static List<Name> read(String cell) {
    List<Name> all = new ArrayList<>();
    for (String each : CellList.split(cell)) {
      all.addAll(names(each));
    }
    return all;
  }

  private static List<Name> names(String text) {
    int and = text.indexOf(" and ");
    if (and > 0 && text.indexOf('{') < 0 && !isBody(text)) {
      String one = text.substring(0, and).strip();
      String other = text.substring(and + 5).strip();
      boolean persons = one.indexOf(' ') > 0 && other.indexOf(' ') > 0;
      List<Name> both = new ArrayList<>();
      if (persons) {
        name(one).ifPresent(both::add);
        both.addAll(names(other));
      } else {
        both.add(new Name.Body(CellList.plain(text)));
      }
      return both;
    }
    return name(text).map(List::of).orElse(List.of());
  }

  private static Optional<Name> name(String text) {
    if (isBraced(text)) {
      return some(inner(text)).map(Name.Body::new);
    }
    List<String> parts = CellList.split(text, ',');
    if (parts.isEmpty()) {
      return Optional.empty();
    }
    String last = parts.get(parts.size() - 1);
    boolean ends = text.endsWith(",") && !text.endsWith("\\,");
    boolean yearsLast = parts.size() > 2 && isYears(last);
    if (isBody(text) || parts.size() > (yearsLast ? 4 : 3)) {
      return some(CellList.plain(text)).map(Name.Body::new);
    }
    if (yearsLast) {
      parts = parts.subList(0, parts.size() - 1);
    }
    if (parts.size() == 1) {
      return ends ? family(parts.get(0), "", "") : inReadingOrder(text);
    }
    String second = parts.get(1);
    if (parts.size() == 2) {
      boolean suffix = ends && isBraced(second);
      return isSuffix(second)
          ? inReadingOrder(parts.get(0)).map(n -> withSuffix(n, plain(second)))
          : family(parts.get(0), suffix ? "" : plain(second), suffix ? plain(second) : "");
    }
    if (isSuffix(second) || isBraced(second)) {
      return family(parts.get(0), plain(parts.get(2)), plain(second));
    }
    return isSuffix(parts.get(2))
        ? family(parts.get(0), plain(second), plain(parts.get(2)))
        : some(CellList.plain(text)).map(Name.Body::new);
  }

  /** The dates of a person, as in the headings of library catalogues: "1901-1980", "b. 1920". */
  private static boolean isYears(String part) {
    for (int i = 0; i < part.length(); i++) {
      if (part.charAt(i) >= '0' && part.charAt(i) <= '9') {
        return part.charAt(0) != '{';
      }
    }
    return false;
  }

  private static Name withSuffix(Name name, String suffix) {
    return name instanceof Name.Person person
        ? new Name.Person(person.family(), person.given(), person.particle(), Optional.of(suffix))
        : name;
  }

  private static boolean isSuffix(String part) {
    return SUFFIXES.contains(part.toLowerCase(Locale.ROOT).replace(".", ""));
  }

  private static Optional<Name> family(String text, String given, String suffix) {
    int end = particleEnd(text);
    int close = text.charAt(0) == '{' ? CellList.closing(text, 0) : -1;
    boolean bracedParticle = close > 0 && text.startsWith(" ", close + 1);
    if (bracedParticle) {
      end = close + 1;
    }
    String family = plain(text.substring(end).strip());
    String particle = plain(text.substring(0, end).strip());
    return some(family).map(f -> new Name.Person(f, some(given), some(particle), some(suffix)));
  }

  private static Optional<Name> inReadingOrder(String text) {
    int last = lastWord(text);
    int family = last;
    for (int at = 0; at < last; at = nextWord(text, at)) {
      if (isSmall(text, at)) {
        family = at;
        break;
      }
    }
    return family(text.substring(family), plain(text.substring(0, family).strip()), "");
  }

  private static int lastWord(String text) {
    int last = 0;
    for (int at = 0; at < text.length(); at = nextWord(text, at)) {
      last = at;
    }
    return last;
  }

  /** Words in braces are one. */
  private static int nextWord(String text, int from) {
    int i = from;
    if (i < text.length() && text.charAt(i) == '{') {
      i = Math.max(i, CellList.closing(text, i));
    }
    while (i < text.length() && text.charAt(i) != ' ') {
      i++;
    }
    while (i < text.length() && text.charAt(i) == ' ') {
      i++;
    }
    return i;
  }

  /** The end of the small words that a name begins with; 0 where no other word follows. */
  private static int particleEnd(String text) {
    int at = 0;
    while (at < text.length() && isSmall(text, at)) {
      at = nextWord(text, at);
    }
    return at == text.length() ? 0 : at;
  }

  private static boolean isSmall(String text, int at) {
    return Character.isLowerCase(text.codePointAt(at));
  }

  /** Never for a name with braces, which says itself how it is to be read. */
  private static boolean isBody(String text) {
    if (text.indexOf('{') >= 0 || text.indexOf('&') >= 0) {
      return text.indexOf('{') < 0;
    }
    for (int at = 0; at < text.length(); at = nextWord(text, at)) {
      int end = at;
      while (end < text.length() && Character.isLetter(text.charAt(end))) {
        end++;
      }
      boolean capital = Character.isUpperCase(text.codePointAt(at));
      if (capital && BODIES.contains(text.substring(at, end).toLowerCase(Locale.ROOT))) {
        return true;
      }
    }
    return false;
  }

  private static boolean isBraced(String text) {
    return text.length() > 2
        && text.charAt(0) == '{'
        && CellList.closing(text, 0) == text.length() - 1;
  }

  private static String inner(String braced) {
    return CellList.plain(braced.substring(1, braced.length() - 1));
  }

  private static String plain(String part) {
    return isBraced(part) ? inner(part) : CellList.plain(part);
  }

  private static Optional<String> some(String text) {
    return Optional.of(text).filter(t -> !t.isBlank());
  }

  static String written(List<Name> names) {
    return String.join("; ", names.stream().map(NameCell::written).toList());
  }

  /** The plainest form that is read as the same name. */
  private static String written(Name name) {
    String plain = name instanceof Name.Person person ? person(person) : marked(name.full());
    if (read(plain).equals(List.of(name))) {
      return plain;
    }
    return name instanceof Name.Person person ? bracedPerson(person) : braced(name.full());
  }

  private static String person(Name.Person person) {
    String last = person.particle().map(p -> marked(p) + " ").orElse("") + marked(person.family());
    String suffix = person.suffix().map(s -> ", " + marked(s)).orElse("");
    return last + suffix + person.given().map(g -> ", " + marked(g)).orElse(",");
  }

  private static String bracedPerson(Name.Person person) {
    String last = person.particle().map(p -> braced(p) + " ").orElse("") + braced(person.family());
    String suffix = person.suffix().map(s -> ", " + braced(s)).orElse("");
    return last + suffix + person.given().map(g -> ", " + braced(g)).orElse(",");
  }

  private static String braced(String text) {
    return "{" + marked(text) + "}";
  }

  private static String marked(String text) {
    return CellList.marked(text, ";,{}");
  }
}
