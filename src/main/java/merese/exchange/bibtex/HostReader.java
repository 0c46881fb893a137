package merese.exchange.bibtex;

import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import java.util.regex.Pattern;
import merese.model.Edition.Container;
import merese.model.Locator;
import merese.model.LocatorException;

/** The journal or book that an entry stands in. */
final class HostReader {
  /** Types that are whole in themselves; their booktitle is for entries that inherit from them. */
  private static final Set<String> WHOLE =
      Set.of(
          "book",
          "booklet",
          "collection",
          "manual",
          "mvbook",
          "mvcollection",
          "mvproceedings",
          "mvreference",
          "periodical",
          "proceedings",
          "reference",
          "thesis",
          "phdthesis",
          "mastersthesis");

  private static final int LONGEST_PAGES = 500;

  private static final Pattern BARE_PAGES = Pattern.compile("[0-9]+.*|(?i)[ivxlcdm]+\\b.*");
  private static final Pattern SEVERAL = Pattern.compile(".*[–,-].*");

  private HostReader() {}

  /** Whether an entry of a type is taken for a whole, whatever it says that it is in. */
  static boolean isWhole(String type) {
    return WHOLE.contains(type);
  }

  static Optional<Container> of(String type, EntryFields fields, OptionalInt coverYear) {
    if (isWhole(type)) {
      return Optional.empty();
    }
    Optional<String> journal =
        fields.whole("journaltitle", "journalsubtitle").or(() -> fields.plain("journal"));
    Optional<String> book = fields.whole("booktitle", "booksubtitle");
    boolean inJournal = journal.isPresent() && (type.equals("article") || book.isEmpty());
    return (inJournal ? journal : book)
        .map(
            title ->
                new Container(
                    title,
                    Optional.empty(),
                    fields.plain("volume"),
                    fields.plain("part"),
                    inJournal ? fields.plain("number", "issue") : Optional.empty(),
                    coverYear,
                    fields.plain("pages").flatMap(HostReader::pages)));
  }

  /** A hyphen or dash between page numbers is a dash. */
  private static Optional<Locator> pages(String printed) {
    String dashed = printed.replaceAll("(?<=\\w) ?[-–—] ?(?=\\w)", "–");
    if (!BARE_PAGES.matcher(dashed).matches()) {
      return locator(printed);
    }
    return locator((SEVERAL.matcher(dashed).matches() ? "pp. " : "p. ") + dashed);
  }

  private static Optional<Locator> locator(String text) {
    if (text.length() > LONGEST_PAGES) {
      return Optional.empty();
    }
    try {
      return Optional.of(Locator.parse(text));
    } catch (LocatorException e) {
      return Optional.empty(); // stays in the received record
    }
  }
}
