package merese.exchange.bibtex;

import java.util.List;
import java.util.Optional;
import merese.model.Edition;
import merese.model.ReceivedRecord;

/** The two formats that share a syntax. */
public enum Flavour {
  /** BibTeX 0.99d with its standard styles (O. Patashnik, BibTeXing, 1988). */
  BIBTEX("bibtex"),
  /** biblatex, version 3.17, with its default data model. */
  BIBLATEX("biblatex");

  private final String format;

  Flavour(String format) {
    this.format = format;
  }

  /** The format of received records. */
  public String format() {
    return format;
  }

  /**
   * The record that an edition goes out as. What biblatex reads, BibTeX mostly does not; but a
   * record of BibTeX is one of biblatex too, which knows its types and fields.
   */
  Optional<ReceivedRecord> goesOutAs(Edition edition) {
    Optional<ReceivedRecord> own = received(edition, format);
    return own.isPresent() || this == BIBTEX ? own : received(edition, BIBTEX.format);
  }

  /** The record whose key the edition keeps. */
  Optional<ReceivedRecord> named(Edition edition) {
    return received(edition, format)
        .or(() -> received(edition, this == BIBTEX ? BIBLATEX.format : BIBTEX.format));
  }

  /** Whether a record of a format may go out in this one. */
  boolean takes(ReceivedRecord record) {
    return record.format().equals(format)
        || this == BIBLATEX && record.format().equals(BIBTEX.format);
  }

  private static Optional<ReceivedRecord> received(Edition edition, String format) {
    List<ReceivedRecord> received = edition.received();
    return received.stream().filter(r -> r.format().equals(format)).findFirst();
  }
}
