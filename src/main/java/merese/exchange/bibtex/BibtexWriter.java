package merese.exchange.bibtex;

import java.io.IOException;
import java.io.Writer;
import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.UnaryOperator;
import merese.exchange.Outgoing;
import merese.exchange.RecordWriter;
import merese.model.Edition;
import merese.model.ReceivedRecord;

/**
 * Writes sources as a .bib file for BibTeX, or for biblatex and biber.
 *
 * <p>Guarantees: the same sources give the same text, sorted by key, with the parents of
 * cross-references last for BibTeX; what comes from a library is literal text, of which nothing is
 * a command to BibTeX or LaTeX; what a source was received with goes out as it came, but for what
 * has been changed since; lines end in a line feed. Entries are written one by one. See {@code
 * LatexText} for what is ASCII and what UTF-8, and bibtex.md for the rest.
 */
public final class BibtexWriter implements RecordWriter {
  private final Flavour flavour;
  private final UnaryOperator<String> labels;
  private final Optional<BibtexKeys> keys;
  private final Collection<String> ids;
  private final Map<String, ReceivedRecord> library = new HashMap<>();

  /**
   * A writer that knows the other sources of a library by their ids alone: what a source takes over
   * from one that is not written is lost.
   *
   * @param ids of all sources of the library, so that a source has the same key in each export
   * @param labels the label of a concept, by its id
   */
  public static BibtexWriter bibtex(Collection<String> ids, UnaryOperator<String> labels) {
    return new BibtexWriter(Flavour.BIBTEX, ids, labels);
  }

  /** The same for biblatex. */
  public static BibtexWriter biblatex(Collection<String> ids, UnaryOperator<String> labels) {
    return new BibtexWriter(Flavour.BIBLATEX, ids, labels);
  }

  private BibtexWriter(Flavour flavour, Collection<String> ids, UnaryOperator<String> labels) {
    this.flavour = flavour;
    this.labels = labels;
    this.ids = List.copyOf(ids);
    this.keys = Optional.empty();
  }

  /**
   * @param labels the label of a concept, by its id
   * @param library all editions, so that a source has the same key in each export, and can take
   *     over what another has that is not written
   */
  public BibtexWriter(Flavour flavour, UnaryOperator<String> labels, Collection<Edition> library) {
    this.flavour = flavour;
    this.labels = labels;
    this.ids = List.of();
    List<String> all = new ArrayList<>();
    Map<String, String> received = new HashMap<>();
    for (Edition edition : library) {
      all.add(edition.key());
      edition.parts().forEach(part -> all.add(edition.key() + "#" + part.id()));
      flavour.named(edition).ifPresent(record -> received.put(edition.key(), record.id()));
      flavour.named(edition).ifPresent(r -> this.library.putIfAbsent(BibtexKeys.folded(r.id()), r));
    }
    this.keys = Optional.of(new BibtexKeys(all, received));
  }

  /**
   * @throws IllegalArgumentException for a source whose id is not among those of the library
   */
  @Override
  public void write(Collection<Outgoing> sources, List<ReceivedRecord> kept, Writer out)
      throws IOException {
    BibtexKeys allKeys = keys.orElseGet(() -> keysOf(sources));
    Map<String, Outgoing> byKey = new LinkedHashMap<>();
    for (Outgoing source : sources) {
      String key = allKeys.of(source.id());
      if (key == null) {
        throw new IllegalArgumentException(source.id() + " is no source of the library");
      }
      byKey.put(key, source);
    }
    new BibOutput(flavour, labels, library, byKey).write(kept, allKeys, new BibFile(out));
  }

  private BibtexKeys keysOf(Collection<Outgoing> sources) {
    Map<String, String> received = new HashMap<>();
    for (Outgoing source : sources) {
      if (source.part().isEmpty()) {
        flavour.named(source.edition()).ifPresent(r -> received.put(source.id(), r.id()));
      }
    }
    return new BibtexKeys(ids, received);
  }
}
