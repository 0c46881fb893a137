package merese.exchange.skos;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import merese.model.Concept;
import merese.model.ReceivedRecord;
import merese.vocabulary.Skos;
import merese.vocabulary.Thesaurus;

/**
 * What was kept of concepts, put back into what is written of them, as far as it does not break a
 * condition of SKOS by what the library says now.
 */
final class Kept {
  static final String FORMAT = "skos";

  /** What the library itself says; a kept record has no say in it. */
  private static final Set<String> OURS =
      Set.of(
          Skos.BROADER,
          Skos.NARROWER,
          Skos.BROADER_TRANSITIVE,
          Skos.NARROWER_TRANSITIVE,
          Skos.IN_SCHEME,
          Skos.TOP_CONCEPT_OF);

  private final Map<String, ReceivedRecord> byAddress = new HashMap<>();
  private final SkosAddresses addresses;

  private Kept(SkosAddresses addresses) {
    this.addresses = addresses;
  }

  static Kept of(List<ReceivedRecord> records, SkosAddresses addresses) {
    Kept kept = new Kept(addresses);
    for (ReceivedRecord record : records) {
      if (record.format().equals(FORMAT)) {
        kept.byAddress.putIfAbsent(record.id(), record);
      }
    }
    return kept;
  }

  void write(TurtleBlocks out, Concept concept, Thesaurus thesaurus) {
    write(out, concept, addresses.concept(concept.id()), thesaurus);
    for (Concept.Match match : concept.matches()) {
      if (match.kind() == Concept.Match.Kind.EXACT_MATCH) {
        write(out, concept, match.uri(), thesaurus);
      }
    }
  }

  private void write(TurtleBlocks out, Concept concept, String address, Thesaurus thesaurus) {
    ReceivedRecord record = byAddress.get(address);
    if (record == null) {
      return;
    }
    for (ReceivedRecord.Field field : record.fields()) {
      Optional<RdfTerm> value = TermReader.read(field.value());
      if (value.isPresent()
          && Turtle.isAbsoluteIri(field.name())
          && !OURS.contains(field.name())
          && isAllowed(field.name(), value.get(), concept, thesaurus)) {
        out.printed(field.name(), value.get().printed());
      }
    }
  }

  private boolean isAllowed(String property, RdfTerm value, Concept concept, Thesaurus thesaurus) {
    if (value instanceof RdfTerm.Resource resource) {
      if (property.equals(Skos.RELATED)) {
        Optional<String> other = conceptOf(resource.name(), thesaurus);
        return other.isPresent() && !thesaurus.areRelatedByHierarchy(concept.id(), other.get());
      }
      return !resource.name().startsWith(RdfTerm.BLANK)
          && !Rdf.MATCHES.containsKey(property)
          && !(property.equals(Skos.TYPE) && resource.name().startsWith(Skos.NAMESPACE));
    }
    return !property.equals(Skos.DEFINITION) || value instanceof RdfTerm.Literal;
  }

  private Optional<String> conceptOf(String uri, Thesaurus thesaurus) {
    Optional<String> own = addresses.conceptId(uri);
    if (own.isPresent()) {
      return own.filter(id -> thesaurus.concept(id).isPresent());
    }
    for (Concept concept : thesaurus.concepts()) {
      if (concept.matches().contains(new Concept.Match(Concept.Match.Kind.EXACT_MATCH, uri))) {
        return Optional.of(concept.id());
      }
    }
    return Optional.empty();
  }
}
