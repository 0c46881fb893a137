package merese.exchange.bibtex;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import merese.model.Edition.Imprint;
import merese.model.Identifier;
import merese.model.Identifier.Scheme;

/**
 * The DOI and the ISSNs of a source as fields; those that are wrong in print are for the note.
 *
 * @param issn only where it is that of a journal
 * @param others sentences for what has no field
 */
record Numbers(Optional<String> issn, Optional<String> doi, List<String> others) {
  /** What may stand in a field that is printed as it is, with no character escaped. */
  private static final Pattern DOI =
      Pattern.compile("10\\.[0-9.]+/[A-Za-z0-9\\-._;()/:<>+\\[\\]@!*,=?&]+");

  static Numbers of(Imprint imprint, boolean inJournal) {
    List<String> others = new ArrayList<>();
    List<String> issns = right(imprint, Scheme.ISSN);
    if (!inJournal) {
      issns.forEach(issn -> others.add("ISSN " + issn));
    }
    String joined = issns.stream().map(LatexText::of).collect(Collectors.joining(", "));
    Optional<String> issn = Optional.of(joined).filter(i -> inJournal && !i.isEmpty());
    Optional<String> doi = Optional.empty();
    for (String value : right(imprint, Scheme.DOI)) {
      if (doi.isEmpty() && DOI.matcher(value).matches()) {
        doi = Optional.of(value);
      } else {
        others.add("DOI " + value);
      }
    }
    return new Numbers(issn, doi, others);
  }

  private static List<String> right(Imprint imprint, Scheme scheme) {
    return imprint.identifiers(scheme).stream()
        .filter(i -> !i.wrongInPrint())
        .map(Identifier::value)
        .toList();
  }
}
