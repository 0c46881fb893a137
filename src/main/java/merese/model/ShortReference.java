package merese.model;

import java.util.List;
import java.util.Optional;

/**
 * How an answer names a source in a word or two: "Quenby 1949". Plain Java, since every answer
 * prints it.
 */
public final class ShortReference {
  private ShortReference() {}

  /**
   * Family names with their particles, two joined with "and", more shortened to "et al.", then the
   * year as printed ("n.d." for none). A work without an author is named by its editor, a sale
   * catalogue by its house, a price list by its firm, anything else by its title. A facsimile or
   * reprint adds its own year to that of the original: "Quenby 1926, facs. 1977".
   */
  public static String of(Work work, Edition edition) {
    return names(work, edition) + " " + years(edition);
  }

  /** As {@link #of(Work, Edition)}, named by the authors of the part where it has any. */
  public static String of(Work work, Edition edition, Edition.Part part) {
    return (part.authors().isEmpty() ? names(work, edition) : joined(part.authors()))
        + " "
        + years(edition);
  }

  /** The words before the year; what a list files the source under. */
  public static String names(Work work, Edition edition) {
    List<Name> makers = work.makers().stream().map(Contributor::name).toList();
    if (!makers.isEmpty()) {
      return joined(makers);
    }
    Optional<String> house =
        work.kind() == SourceKind.SALE_CATALOGUE
            ? edition.occasion().flatMap(Edition.Occasion::house)
            : edition.archive().flatMap(Edition.Archive::firm);
    return house.filter(name -> !name.isBlank()).orElse(work.title());
  }

  private static String joined(List<Name> names) {
    String first = names.get(0).shortForm();
    return switch (names.size()) {
      case 1 -> first;
      case 2 -> first + " and " + names.get(1).shortForm();
      default -> first + " et al.";
    };
  }

  private static String years(Edition edition) {
    String own = year(edition.imprint());
    if (edition.lineage().isEmpty() || edition.lineage().get().originalYear().isEmpty()) {
      return own;
    }
    int original = edition.lineage().get().originalYear().getAsInt();
    return switch (edition.lineage().get().form()) {
      case FACSIMILE -> original + ", facs. " + own;
      case REPRINT -> original + ", repr. " + own;
      case REVISED, TRANSLATION, TWIN -> own;
    };
  }

  private static String year(Edition.Imprint imprint) {
    return imprint
        .yearPrinted()
        .filter(words -> !words.isBlank())
        .orElseGet(
            () ->
                imprint.year().isPresent() ? Integer.toString(imprint.year().getAsInt()) : "n.d.");
  }
}
