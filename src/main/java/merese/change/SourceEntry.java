package merese.change;

import java.net.URI;
import java.net.URISyntaxException;
import java.time.Clock;
import java.time.LocalDate;
import java.time.Year;
import java.time.format.DateTimeParseException;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import merese.exchange.csv.NameList;
import merese.exchange.identifier.Identifiers;
import merese.model.Contributor;
import merese.model.Contributor.Role;
import merese.model.Edition;
import merese.model.Edition.Archive;
import merese.model.Edition.Container;
import merese.model.Edition.Imprint;
import merese.model.Edition.Occasion;
import merese.model.Edition.Online;
import merese.model.Identifier;
import merese.model.Locator;
import merese.model.LocatorException;
import merese.model.Name;
import merese.model.Nearest;
import merese.model.SourceKind;
import merese.model.Work;

/**
 * A source as it is typed in, field by field. Each value is checked when it is given, so that
 * whoever types can be told at once.
 */
public final class SourceEntry {
  /** A key that no source has; {@link Adding} gives the real one. */
  static final String NO_KEY = "(new)";

  private final Map<SourceField, List<String>> values = new EnumMap<>(SourceField.class);
  private final List<Identifier> identifiers = new ArrayList<>();
  private final boolean asPrinted;
  private final int latest;

  /**
   * @param asPrinted whether a number that fails its check digit is kept, as wrong in print
   * @param clock by which a year may be too late for a source
   */
  public SourceEntry(boolean asPrinted, Clock clock) {
    this.asPrinted = asPrinted;
    this.latest = Year.now(clock).getValue() + 1;
  }

  /**
   * Takes a value.
   *
   * @throws EntryException with nothing taken, where it cannot be one
   */
  public void put(SourceField field, String typed) {
    String value = typed.strip();
    if (value.isEmpty()) {
      throw new EntryException(field, "there is nothing in it");
    }
    check(field, value);
    values.computeIfAbsent(field, f -> new ArrayList<>()).add(value);
  }

  public boolean has(SourceField field) {
    return values.containsKey(field);
  }

  private void check(SourceField field, String value) {
    switch (field) {
      case KIND -> kind(value);
      case YEAR -> requirePast(year(value));
      case URL -> address(value);
      case ACCESSED -> day(value);
      case VOLUMES -> number(field, value);
      case PAGES -> locator(value);
      case ISBN -> identifiers.add(identifier(field, Identifiers.isbn(value)));
      case ISSN -> identifiers.add(identifier(field, Identifiers.issn(value)));
      case DOI -> identifiers.add(identifier(field, Identifiers.doi(value)));
      case AUTHOR, EDITOR, PHOTOGRAPHER, TRANSLATOR, ILLUSTRATOR, ORGANISER, INTERVIEWER ->
          names(field, value);
      default -> {}
    }
  }

  private static SourceKind kind(String typed) {
    List<String> codes = new ArrayList<>();
    for (SourceKind kind : SourceKind.values()) {
      codes.add(kind.code());
      if (kind.code().equalsIgnoreCase(typed) || kind.words().equalsIgnoreCase(typed)) {
        return kind;
      }
    }
    List<String> near = Nearest.to(typed, codes, 2);
    throw new EntryException(
        SourceField.KIND,
        "there is no kind \""
            + typed
            + "\"; "
            + (near.isEmpty()
                ? "it is one of " + String.join(", ", codes)
                : "did you mean " + String.join(" or ", near) + "?"));
  }

  private static int number(SourceField field, String typed) {
    try {
      int number = Integer.parseInt(typed);
      if (number > 0) {
        return number;
      }
    } catch (NumberFormatException e) {
      // said below
    }
    throw new EntryException(field, "\"" + typed + "\" is not a whole number from 1");
  }

  /** The year in "1949", "[c. 1926]", "1824–27"; empty for "n.d.". */
  private static OptionalInt year(String typed) {
    for (int i = 0; i + 4 <= typed.length(); i++) {
      boolean alone =
          (i == 0 || !isDigit(typed, i - 1)) && (i + 4 == typed.length() || !isDigit(typed, i + 4));
      if (alone
          && isDigit(typed, i)
          && isDigit(typed, i + 1)
          && isDigit(typed, i + 2)
          && isDigit(typed, i + 3)) {
        return OptionalInt.of(Integer.parseInt(typed.substring(i, i + 4)));
      }
    }
    if (typed.equals("n.d.") || typed.equals("[n.d.]")) {
      return OptionalInt.empty();
    }
    throw new EntryException(
        SourceField.YEAR,
        "there is no year of four digits in \""
            + typed
            + "\"; write one, such as 1949 or \"[c. 1926]\", or n.d. for none");
  }

  /** What is announced may be of the next year. */
  private void requirePast(OptionalInt year) {
    if (year.isPresent() && year.getAsInt() > latest) {
      throw new EntryException(
          SourceField.YEAR,
          year.getAsInt() + " is still to come; look at the source again, or write n.d. for none");
    }
  }

  private static void address(String typed) {
    boolean whole;
    try {
      URI uri = new URI(typed);
      whole = uri.getScheme() != null && uri.getHost() != null;
    } catch (URISyntaxException e) {
      whole = isAddressAllTheSame(typed);
    }
    if (!whole) {
      throw new EntryException(
          SourceField.URL,
          "\"" + typed + "\" is no address on the web; write it as in https://glass.example/rings");
    }
  }

  /** Browsers take more letters in an address than RFC 3986 does, such as | and [. */
  private static boolean isAddressAllTheSame(String typed) {
    return (typed.startsWith("https://") || typed.startsWith("http://"))
        && typed.codePoints().noneMatch(Character::isWhitespace);
  }

  private static void day(String typed) {
    try {
      LocalDate.parse(typed);
    } catch (DateTimeParseException e) {
      throw new EntryException(
          SourceField.ACCESSED, "\"" + typed + "\" is no day; write it as in 2025-03-02");
    }
  }

  private static boolean isDigit(String text, int at) {
    return text.charAt(at) >= '0' && text.charAt(at) <= '9';
  }

  private static Locator locator(String typed) {
    try {
      return Locator.parse(typed);
    } catch (LocatorException e) {
      throw new EntryException(SourceField.PAGES, e.getMessage());
    }
  }

  private Identifier identifier(SourceField field, Identifier read) {
    Optional<String> fault = Identifiers.fault(read);
    if (fault.isEmpty() || asPrinted) {
      return read;
    }
    throw new EntryException(
        field,
        fault.get()
            + Identifiers.rightDigit(read)
                .map(
                    digit ->
                        ": after these digits it would be " + digit + ". Look at the source again")
                .orElse(". Look at the source again"),
        "; if it is printed so, --as-printed keeps it, marked as wrong in print");
  }

  private static List<Name> names(SourceField field, String typed) {
    List<Name> names = NameList.read(typed);
    if (names.isEmpty()) {
      throw new EntryException(field, "there is no name in \"" + typed + "\"");
    }
    return names;
  }

  private Optional<String> text(SourceField field) {
    return all(field).stream().findFirst();
  }

  private List<String> all(SourceField field) {
    return values.getOrDefault(field, List.of());
  }

  /** The kind; empty while it is not given. */
  public Optional<SourceKind> kind() {
    return text(SourceField.KIND).map(SourceEntry::kind);
  }

  /**
   * A work with one edition, neither of them named yet.
   *
   * @param kind where none was given
   * @param title where none was given
   */
  Work work(SourceKind kind, String title) {
    List<Contributor> contributors = new ArrayList<>();
    for (Role role : Role.values()) {
      SourceField field = SourceField.valueOf(role.name());
      for (String typed : all(field)) {
        names(field, typed).forEach(name -> contributors.add(new Contributor(role, name)));
      }
    }
    return new Work(
        NO_KEY,
        kind().orElse(kind),
        text(SourceField.TITLE).orElse(title),
        text(SourceField.SUBTITLE),
        List.of(),
        contributors,
        text(SourceField.LANGUAGE),
        false,
        List.of(edition()),
        List.of());
  }

  Edition edition() {
    return new Edition(
        NO_KEY,
        imprint(),
        Optional.empty(),
        container(),
        occasion(),
        archive(),
        online(),
        Optional.empty(),
        List.of(),
        List.of(),
        List.of(),
        List.of(),
        List.of());
  }

  private Imprint imprint() {
    Optional<String> year = text(SourceField.YEAR);
    OptionalInt number = year.map(SourceEntry::year).orElse(OptionalInt.empty());
    boolean plain = number.isPresent() && year.get().equals(Integer.toString(number.getAsInt()));
    Optional<String> statement = text(SourceField.STATEMENT);
    Optional<String> volumes = text(SourceField.VOLUMES);
    return new Imprint(
        statement,
        statement.map(SourceEntry::editionNumber).orElse(OptionalInt.empty()),
        number,
        plain ? Optional.empty() : year,
        all(SourceField.PLACE),
        text(SourceField.PUBLISHER),
        volumes.isPresent()
            ? OptionalInt.of(number(SourceField.VOLUMES, volumes.get()))
            : OptionalInt.empty(),
        text(SourceField.SERIES),
        identifiers,
        text(SourceField.NOTED_AS));
  }

  /** The number that a statement such as "2nd edn, revised" begins with. */
  private static OptionalInt editionNumber(String statement) {
    int end = 0;
    while (end < statement.length() && end < 3 && isDigit(statement, end)) {
      end++;
    }
    String rest = statement.substring(end);
    boolean ordinal =
        end > 0
            && (rest.startsWith("st ")
                || rest.startsWith("nd ")
                || rest.startsWith("rd ")
                || rest.startsWith("th ")
                || rest.startsWith(". "));
    return ordinal
        ? OptionalInt.of(Integer.parseInt(statement.substring(0, end)))
        : OptionalInt.empty();
  }

  private Optional<Container> container() {
    Optional<String> title = text(SourceField.IN);
    return title.map(
        in ->
            new Container(
                in,
                text(SourceField.SOCIETY),
                text(SourceField.VOLUME),
                Optional.empty(),
                text(SourceField.ISSUE),
                OptionalInt.empty(),
                text(SourceField.PAGES).map(SourceEntry::locator)));
  }

  private Optional<Occasion> occasion() {
    Occasion occasion =
        new Occasion(
            text(SourceField.HOUSE),
            text(SourceField.CITY),
            text(SourceField.DATES),
            text(SourceField.SALE_CODE),
            text(SourceField.CONSIGNOR),
            all(SourceField.VENUE));
    Occasion nothing =
        new Occasion(
            Optional.empty(),
            Optional.empty(),
            Optional.empty(),
            Optional.empty(),
            Optional.empty(),
            List.of());
    return Optional.of(occasion).filter(o -> !o.equals(nothing));
  }

  private Optional<Archive> archive() {
    Optional<String> repository = text(SourceField.REPOSITORY);
    return repository.map(
        at ->
            new Archive(
                at,
                text(SourceField.REFERENCE),
                text(SourceField.FIRM),
                text(SourceField.FOLIATED_BY),
                text(SourceField.DEGREE)));
  }

  private Optional<Online> online() {
    Optional<String> url = text(SourceField.URL);
    return url.map(at -> new Online(at, text(SourceField.ACCESSED), Optional.empty()));
  }

  /**
   * Makes sure that nothing lacks what it cannot stand without.
   *
   * @throws EntryException that names it
   */
  public void requireWhole() {
    for (SourceField field : values.keySet()) {
      if (field.needs().filter(needed -> !has(needed)).isPresent()) {
        throw new EntryException(field, "needs " + field.needs().get().option() + " as well");
      }
    }
  }
}
