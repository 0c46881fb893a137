package merese.exchange.skos;

import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Set;
import merese.model.Concept;
import merese.model.ReceivedRecord;
import merese.vocabulary.Skos;
import merese.vocabulary.SkosGraph;

/**
 * A concept as a file describes it, in all its languages.
 *
 * @param uri its address; a name such as "_:1" for one without
 * @param preferred at most one in a language
 * @param definitions those that are texts
 * @param notations codes, without their datatypes
 * @param broader addresses; what is stated from either end, as are {@code narrower} and {@code
 *     related}
 * @param matches to concepts of other vocabularies
 * @param schemes the schemes it is in
 * @param groups the collections it is directly a member of
 * @param own what an export of ours says in its notes, taken out of them
 * @param rest what has no place above: properties by their addresses, values as N-Triples write
 *     them
 */
public record SkosConcept(
    String uri,
    List<SkosText> preferred,
    List<SkosText> alternative,
    List<SkosText> hidden,
    List<SkosText> definitions,
    List<String> notations,
    List<String> broader,
    List<String> narrower,
    List<String> related,
    List<Concept.Match> matches,
    List<String> schemes,
    List<String> groups,
    Own own,
    List<ReceivedRecord.Field> rest) {

  public SkosConcept {
    preferred = List.copyOf(preferred);
    alternative = List.copyOf(alternative);
    hidden = List.copyOf(hidden);
    definitions = List.copyOf(definitions);
    notations = List.copyOf(notations);
    broader = List.copyOf(broader);
    narrower = List.copyOf(narrower);
    related = List.copyOf(related);
    matches = List.copyOf(matches);
    schemes = List.copyOf(schemes);
    groups = List.copyOf(groups);
    rest = List.copyOf(rest);
  }

  /** Whether it has an address that means the same in every file. */
  public boolean isAddressed() {
    return !uri.startsWith(RdfTerm.BLANK) && !uri.startsWith(SkosReader.NO_BASE);
  }

  /** What is stated of it, as N-Triples, so that a file of them can be read again. */
  public byte[] verbatim() {
    StringBuilder out = new StringBuilder();
    Triples triples = new Triples(new RdfTerm.Resource(uri).printed(), out);
    triples.resource(Skos.TYPE, Skos.CONCEPT);
    preferred.forEach(text -> triples.printed(Skos.PREF_LABEL, text.printed()));
    alternative.forEach(text -> triples.printed(Skos.ALT_LABEL, text.printed()));
    hidden.forEach(text -> triples.printed(Skos.HIDDEN_LABEL, text.printed()));
    definitions.forEach(text -> triples.printed(Skos.DEFINITION, text.printed()));
    notations.forEach(code -> triples.printed(Rdf.NOTATION, Turtle.string(code)));
    broader.forEach(other -> triples.resource(Skos.BROADER, other));
    narrower.forEach(other -> triples.resource(Skos.NARROWER, other));
    related.forEach(other -> triples.resource(Skos.RELATED, other));
    schemes.forEach(scheme -> triples.resource(Skos.IN_SCHEME, scheme));
    for (Concept.Match match : matches) {
      triples.resource(SkosGraph.property(match.kind()), match.uri());
    }
    own.notes().forEach(field -> triples.printed(field.name(), field.value()));
    rest.forEach(field -> triples.printed(field.name(), field.value()));
    return out.toString().getBytes(StandardCharsets.UTF_8);
  }

  private record Triples(String subject, StringBuilder out) {
    void resource(String property, String uri) {
      printed(property, new RdfTerm.Resource(uri).printed());
    }

    void printed(String property, String value) {
      out.append(subject).append(" <").append(Turtle.iri(property)).append("> ");
      out.append(value).append(" .\n");
    }
  }

  /**
   * What our own notes say of a concept.
   *
   * @param lookAlikes by the ids of concepts
   * @param lookAlikeRemark at most one
   * @param status at most one
   * @param elsewhere the labels, as displayed, that are also used for something else
   * @param terms labels, as displayed, whose term is not simply what stands before the brackets
   * @param oddMatches matches whose address is none
   * @param notes the notes themselves, as they came
   */
  public record Own(
      List<Concept.LookAlike> lookAlikes,
      List<String> lookAlikeRemark,
      List<Concept.Status> status,
      Set<String> elsewhere,
      List<Term> terms,
      List<Concept.Match> oddMatches,
      List<ReceivedRecord.Field> notes) {
    /** A label as displayed, and the term in it. */
    public record Term(String displayed, String text) {}

    public Own {
      lookAlikes = List.copyOf(lookAlikes);
      lookAlikeRemark = List.copyOf(lookAlikeRemark);
      status = List.copyOf(status);
      elsewhere = Set.copyOf(elsewhere);
      terms = List.copyOf(terms);
      oddMatches = List.copyOf(oddMatches);
      notes = List.copyOf(notes);
    }
  }
}
