package merese.exchange.bibtex;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import merese.exchange.identifier.Identifiers;
import merese.model.Edition.Imprint;
import merese.model.Identifier;
import merese.model.Identifier.Scheme;

/**
 * The numbers of a source as fields; those that fail their check are for the note.
 *
 * @param others sentences for what has no field
 */
record Numbers(
    Optional<String> isbn, Optional<String> issn, Optional<String> doi, List<String> others) {
  /** What may stand in a field that is printed as it is, with no character escaped. */
  private static final Pattern DOI =
      Pattern.compile("10\\.[0-9.]+/[A-Za-z0-9\\-._;()/:<>+\\[\\]@!*,=?&]+");

  /**
   * @param isBook whether the entry has a field for ISBNs
   * @param inJournal whether it has one for ISSNs
   */
  static Numbers of(Imprint imprint, boolean isBook, boolean inJournal) {
    List<String> others = new ArrayList<>();
    Optional<String> isbn = field(imprint, Scheme.ISBN, isBook, others);
    Optional<String> issn = field(imprint, Scheme.ISSN, inJournal, others);
    Optional<String> doi = Optional.empty();
    for (String value : right(imprint, Scheme.DOI)) {
      if (doi.isEmpty() && DOI.matcher(value).matches()) {
        doi = Optional.of(value);
      } else {
        others.add("DOI " + value);
      }
    }
    return new Numbers(isbn, issn, doi, others);
  }

  private static Optional<String> field(
      Imprint imprint, Scheme scheme, boolean hasField, List<String> others) {
    List<String> values = right(imprint, scheme);
    if (!hasField) {
      values.forEach(value -> others.add(scheme + " " + value));
    }
    String joined = values.stream().map(LatexText::of).collect(Collectors.joining(", "));
    return Optional.of(joined).filter(j -> hasField && !j.isEmpty());
  }

  private static List<String> right(Imprint imprint, Scheme scheme) {
    return imprint.identifiers(scheme).stream()
        .filter(i -> !isWrong(i))
        .map(Identifier::value)
        .toList();
  }

  /** Whether it is, or is known to be, wrong in print. */
  static boolean isWrong(Identifier identifier) {
    return identifier.wrongInPrint() || Identifiers.fault(identifier).isPresent();
  }
}
