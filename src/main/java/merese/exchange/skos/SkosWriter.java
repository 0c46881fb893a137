package merese.exchange.skos;

import java.io.IOException;
import java.io.Writer;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import merese.exchange.UnreadableException;
import merese.model.Concept;
import merese.model.Facet;
import merese.model.Homonym;
import merese.model.ReceivedRecord;
import merese.vocabulary.Skos;
import merese.vocabulary.SkosGraph;
import merese.vocabulary.SkosIntegrity;
import merese.vocabulary.Thesaurus;

/**
 * Writes a vocabulary in SKOS, as Turtle. The same vocabulary gives the same bytes; one statement
 * stands on a line, so that a difference shows what changed.
 *
 * <p>One concept scheme holds all concepts. A facet is a group and no concept, so it is a
 * collection, with its concepts as members; the top concepts of the scheme are those with nothing
 * broader. What SKOS has no property for is said in notes that {@link SkosReader} reads back:
 *
 * <ul>
 *   <li>a scope stands in brackets behind its label; that a label is also used for something else
 *       is an editorial note, as are a status, a facet's noun and optional words, and the register
 *       of homonyms (at the scheme);
 *   <li>look-alikes are {@code related}, unless one is broader than the other (S27), and each of
 *       the two has a scope note with the test.
 * </ul>
 *
 * <p>A vocabulary that is sound by {@link SkosIntegrity} keeps all conditions of SKOS. Where a
 * match leads to the Art &amp; Architecture Thesaurus, its licence notice is written at the scheme.
 */
public final class SkosWriter {
  private static final String AAT_PREFIX = "aat";
  private static final String DCT = "http://purl.org/dc/terms/";
  private static final String RIGHTS = DCT + "rights";

  private final SkosAddresses addresses;
  private final String title;
  private final String language;

  /**
   * @param title of the vocabulary; the library's
   * @param language of all labels and definitions, a BCP 47 tag
   * @throws UnreadableException where the language is no tag
   */
  public SkosWriter(SkosAddresses addresses, String title, String language) {
    if (!Turtle.isLanguageTag(language)) {
      throw new UnreadableException(
          "library.json",
          "the language \"" + language + "\" is no language tag",
          "write one such as \"en-GB\"");
    }
    this.addresses = addresses;
    this.title = title;
    this.language = language;
  }

  /**
   * @param kept what earlier imports kept of concepts and has no place in a vocabulary: records of
   *     the format "skos", each under the concept's address
   */
  public void write(Thesaurus thesaurus, List<ReceivedRecord> kept, Writer out) throws IOException {
    new Writing(thesaurus, Kept.of(kept, addresses, thesaurus)).write(out);
  }

  /** The statements of one vocabulary. */
  private final class Writing {
    private final Thesaurus thesaurus;
    private final Kept kept;
    private final Map<String, List<Concept>> statedElsewhere = new LinkedHashMap<>();

    private Writing(Thesaurus thesaurus, Kept kept) {
      this.thesaurus = thesaurus;
      this.kept = kept;
      for (Concept concept : thesaurus.concepts()) {
        for (Concept.LookAlike other : concept.lookAlikes()) {
          statedElsewhere.computeIfAbsent(other.concept(), id -> new ArrayList<>()).add(concept);
        }
      }
    }

    private void write(Writer out) throws IOException {
      TurtleBlocks blocks = new TurtleBlocks();
      blocks.prefix("", addresses.base());
      if (hasAatMatch()) {
        blocks.prefix(AAT_PREFIX, AatTerms.ADDRESS);
        blocks.prefix("dct", DCT);
      }
      blocks.prefix("skos", Skos.NAMESPACE);
      scheme(blocks);
      for (Facet facet : thesaurus.facets()) {
        facet(blocks, facet);
      }
      for (Concept concept : thesaurus.concepts()) {
        concept(blocks, concept);
      }
      out.write(blocks.text());
    }

    private void scheme(TurtleBlocks out) {
      out.begin(addresses.scheme(), Skos.CONCEPT_SCHEME);
      text(out, Skos.PREF_LABEL, title);
      if (hasAatMatch()) {
        note(out, RIGHTS, AatTerms.LICENCE_NOTICE);
      }
      for (Homonym homonym : thesaurus.register()) {
        note(out, Rdf.EDITORIAL_NOTE, OwnNotes.asks(homonym));
      }
      out.end();
    }

    private void facet(TurtleBlocks out, Facet facet) {
      out.begin(addresses.facet(facet.id()), Skos.COLLECTION);
      text(out, Skos.PREF_LABEL, facet.id());
      out.literal(Rdf.NOTATION, facet.id(), Optional.empty());
      facet.headNoun().ifPresent(noun -> note(out, Rdf.EDITORIAL_NOTE, OwnNotes.headNoun(noun)));
      for (String word : facet.optionalWords()) {
        note(out, Rdf.EDITORIAL_NOTE, OwnNotes.mayBeLeftOut(word));
      }
      for (Concept concept : thesaurus.concepts()) {
        if (concept.facet().equals(facet.id())) {
          out.resource(Skos.MEMBER, addresses.concept(concept.id()));
        }
      }
      out.end();
    }

    private void concept(TurtleBlocks out, Concept concept) {
      out.begin(addresses.concept(concept.id()), Skos.CONCEPT);
      out.resource(Skos.IN_SCHEME, addresses.scheme());
      if (concept.broader().isEmpty()) {
        out.resource(Skos.TOP_CONCEPT_OF, addresses.scheme());
      }
      out.literal(Rdf.NOTATION, concept.id(), Optional.empty());
      text(out, Skos.PREF_LABEL, Thesaurus.display(concept.preferred()));
      concept.alternatives().forEach(l -> text(out, Skos.ALT_LABEL, Thesaurus.display(l)));
      concept.hidden().forEach(l -> text(out, Skos.HIDDEN_LABEL, Thesaurus.display(l)));
      text(out, Skos.DEFINITION, concept.definition());
      concept.broader().forEach(id -> out.resource(Skos.BROADER, addresses.concept(id)));
      related(out, concept);
      lookAlikes(out, concept);
      matches(out, concept);
      labelNotes(out, concept);
      OwnNotes.status(concept.status()).ifPresent(s -> note(out, Rdf.EDITORIAL_NOTE, s));
      kept.write(out, concept, language);
      out.end();
    }

    private void related(TurtleBlocks out, Concept concept) {
      List<String> others = new ArrayList<>();
      concept.lookAlikes().forEach(other -> others.add(other.concept()));
      statedBy(concept).forEach(other -> others.add(other.id()));
      for (String other : others) {
        if (thesaurus.concept(other).isPresent()
            && !thesaurus.areRelatedByHierarchy(concept.id(), other)) {
          out.resource(Skos.RELATED, addresses.concept(other));
        }
      }
    }

    private void lookAlikes(TurtleBlocks out, Concept concept) {
      for (Concept.LookAlike other : concept.lookAlikes()) {
        String id = other.concept();
        note(out, Skos.SCOPE_NOTE, OwnNotes.mistakenFor(id, thesaurus.label(id), other.test()));
      }
      for (Concept stating : statedBy(concept)) {
        for (Concept.LookAlike pair : stating.lookAlikes()) {
          if (pair.concept().equals(concept.id()) && !stating.id().equals(concept.id())) {
            String named = Thesaurus.display(stating.preferred());
            String note = OwnNotes.isMistaken(stating.id(), named, pair.test());
            note(out, Skos.SCOPE_NOTE, note);
          }
        }
      }
      concept
          .lookAlikeRemark()
          .ifPresent(remark -> note(out, Skos.SCOPE_NOTE, OwnNotes.howToTell(remark)));
    }

    /** Each concept that names this one as a look-alike, once. */
    private List<Concept> statedBy(Concept concept) {
      return statedElsewhere.getOrDefault(concept.id(), List.of()).stream().distinct().toList();
    }

    private void matches(TurtleBlocks out, Concept concept) {
      for (Concept.Match match : concept.matches()) {
        if (Turtle.isAbsoluteIri(match.uri())) {
          out.resource(SkosGraph.property(match.kind()), match.uri());
        }
      }
      for (Concept.Match match : concept.matches()) {
        if (!Turtle.isAbsoluteIri(match.uri())) {
          note(out, Rdf.EDITORIAL_NOTE, OwnNotes.matchWithoutAddress(match));
        }
      }
    }

    private void labelNotes(TurtleBlocks out, Concept concept) {
      List<Concept.Label> labels = new ArrayList<>();
      labels.add(concept.preferred());
      labels.addAll(concept.alternatives());
      labels.addAll(concept.hidden());
      for (Concept.Label label : labels) {
        String displayed = Thesaurus.display(label);
        if (!OwnNotes.isPlain(label)) {
          note(out, Rdf.EDITORIAL_NOTE, OwnNotes.term(displayed, label.text()));
        }
        if (label.elsewhere()) {
          note(out, Rdf.EDITORIAL_NOTE, OwnNotes.elsewhere(displayed));
        }
      }
    }

    private boolean hasAatMatch() {
      for (Concept concept : thesaurus.concepts()) {
        for (Concept.Match match : concept.matches()) {
          if (AatTerms.idOf(match.uri()).isPresent()) {
            return true;
          }
        }
      }
      return false;
    }

    private void text(TurtleBlocks out, String property, String text) {
      out.literal(property, text, Optional.of(language));
    }

    private void note(TurtleBlocks out, String property, String text) {
      out.literal(property, text, Optional.of(OwnNotes.LANGUAGE));
    }
  }
}
