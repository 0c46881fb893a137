package merese.exchange.skos;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import merese.model.Concept;
import merese.model.ReceivedRecord;
import merese.model.ReceivedRecord.Field;
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
          Skos.TOP_CONCEPT_OF,
          Skos.HAS_TOP_CONCEPT,
          Skos.MEMBER,
          Skos.MEMBER_LIST);

  /** The strongest first. */
  private static final List<String> LABELS =
      List.of(Skos.PREF_LABEL, Skos.ALT_LABEL, Skos.HIDDEN_LABEL);

  private final Map<String, ReceivedRecord> byAddress = new HashMap<>();
  private final Map<String, String> byExactMatch = new HashMap<>();
  private final SkosAddresses addresses;
  private final Thesaurus thesaurus;

  private Kept(SkosAddresses addresses, Thesaurus thesaurus) {
    this.addresses = addresses;
    this.thesaurus = thesaurus;
    for (Concept concept : thesaurus.concepts()) {
      for (Concept.Match match : concept.matches()) {
        if (match.kind() == Concept.Match.Kind.EXACT_MATCH) {
          byExactMatch.putIfAbsent(match.uri(), concept.id());
        }
      }
    }
  }

  static Kept of(List<ReceivedRecord> records, SkosAddresses addresses, Thesaurus thesaurus) {
    Kept kept = new Kept(addresses, thesaurus);
    for (ReceivedRecord record : records) {
      if (record.format().equals(FORMAT)) {
        kept.byAddress.putIfAbsent(record.id(), record);
      }
    }
    return kept;
  }

  /**
   * @param language of the library's own labels
   */
  void write(TurtleBlocks out, Concept concept, String language) {
    List<Field> fields = fields(concept);
    labels(out, concept, language, fields);
    for (Field field : fields) {
      Optional<RdfTerm> value = TermReader.read(field.value());
      if (!LABELS.contains(field.name())
          && value.isPresent()
          && Turtle.isAbsoluteIri(field.name())
          && isAllowed(field.name(), value.get(), concept)) {
        out.printed(field.name(), value.get().printed());
      }
    }
  }

  /** What was kept of a concept under its own address, and under those that it is the same as. */
  private List<Field> fields(Concept concept) {
    List<String> addressesOf = new ArrayList<>(List.of(addresses.concept(concept.id())));
    for (Concept.Match match : concept.matches()) {
      if (match.kind() == Concept.Match.Kind.EXACT_MATCH) {
        addressesOf.add(match.uri());
      }
    }
    List<Field> fields = new ArrayList<>();
    for (String address : addressesOf) {
      ReceivedRecord record = byAddress.get(address);
      fields.addAll(record == null ? List.of() : record.fields());
    }
    return fields;
  }

  /**
   * Labels that are kept, from several vocabularies perhaps: one preferred in a language (S14), and
   * each of one kind (S13); the strongest kind comes first.
   */
  private static void labels(
      TurtleBlocks out, Concept concept, String language, List<Field> fields) {
    List<SkosText> written = new ArrayList<>();
    Set<String> preferring = new HashSet<>(Set.of(language.toLowerCase(Locale.ROOT)));
    written.add(SkosText.of(Thesaurus.display(concept.preferred()), language));
    concept.alternatives().forEach(l -> written.add(SkosText.of(Thesaurus.display(l), language)));
    concept.hidden().forEach(l -> written.add(SkosText.of(Thesaurus.display(l), language)));
    for (String property : LABELS) {
      for (Field field : fields) {
        if (field.name().equals(property)
            && TermReader.read(field.value()).orElse(null) instanceof RdfTerm.Literal literal) {
          SkosText text = new SkosText(literal.text(), literal.language());
          if (!ConceptMaker.isIn(written, text)) {
            boolean another = property.equals(Skos.PREF_LABEL) && !preferring.add(text.tag());
            written.add(text);
            out.printed(another ? Skos.ALT_LABEL : property, literal.printed());
          }
        }
      }
    }
  }

  private boolean isAllowed(String property, RdfTerm value, Concept concept) {
    if (OURS.contains(property)) {
      return false;
    }
    if (!(value instanceof RdfTerm.Resource resource)) {
      return true;
    }
    if (property.equals(Skos.RELATED)) {
      Optional<String> other = conceptOf(resource.name());
      return other.isPresent() && !thesaurus.areRelatedByHierarchy(concept.id(), other.get());
    }
    return !resource.name().startsWith(RdfTerm.BLANK)
        && !Rdf.MATCHES.containsKey(property)
        && !(property.equals(Skos.TYPE) && resource.name().startsWith(Skos.NAMESPACE));
  }

  private Optional<String> conceptOf(String uri) {
    Optional<String> own = addresses.conceptId(uri);
    if (own.isPresent()) {
      return own.filter(id -> thesaurus.concept(id).isPresent());
    }
    return Optional.ofNullable(byExactMatch.get(uri));
  }
}
