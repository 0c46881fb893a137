package merese.exchange.skos;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import merese.exchange.UnreadableException;
import merese.model.Concept;
import merese.model.Concept.Label;
import merese.model.Concept.LookAlike;
import merese.model.Concept.Match;
import merese.model.Facet;
import merese.model.Homonym;
import merese.model.ReceivedRecord;
import merese.model.ReceivedRecord.Field;
import merese.store.LibraryFile;
import merese.store.LibraryFolder;
import merese.store.VocabularyFile;
import merese.vocabulary.Thesaurus;
import org.apache.jena.graph.Graph;
import org.apache.jena.graph.NodeFactory;
import org.apache.jena.riot.Lang;
import org.apache.jena.riot.RDFParser;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;

/** The vocabulary as Turtle, read by Apache Jena itself. */
class SkosWriterTest {
  private static final String SKOS = "http://www.w3.org/2004/02/skos/core#";
  private static final Facet RINGS =
      new Facet("ring", Optional.of("ring"), List.of("neck", "of a bottle"));

  static String written(Thesaurus thesaurus, ReceivedRecord... kept) {
    StringWriter out = new StringWriter();
    try {
      new SkosWriter(SkosAddresses.usual(), "Rings \"and\" knops", "en-GB")
          .write(thesaurus, List.of(kept), out);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return out.toString();
  }

  private static Graph graph(String turtle) {
    return RDFParser.create()
        .source(new ByteArrayInputStream(turtle.getBytes(StandardCharsets.UTF_8)))
        .forceLang(Lang.TURTLE)
        .toGraph();
  }

  private static boolean has(String turtle, String subject, String property, String object) {
    return graph(turtle)
        .contains(
            NodeFactory.createURI(SkosAddresses.DEFAULT + subject),
            NodeFactory.createURI(SKOS + property),
            NodeFactory.createURI(object.contains(":") ? object : SkosAddresses.DEFAULT + object));
  }

  private static Thesaurus thesaurus(Concept... concepts) {
    return Thesaurus.of(List.of(RINGS), List.of(concepts), List.of());
  }

  static Concept concept(String id, List<String> broader, LookAlike... lookAlikes) {
    return new Concept(
        id,
        "ring",
        Label.of(id + " label"),
        List.of(),
        List.of(),
        "What " + id + " is.",
        broader,
        List.of(lookAlikes),
        Optional.empty(),
        Concept.Status.COMMON,
        List.of());
  }

  private static Concept labelled(Label preferred, Label... alternatives) {
    return new Concept(
        "a",
        "ring",
        preferred,
        List.of(alternatives),
        List.of(),
        "What it is.",
        List.of(),
        List.of(),
        Optional.empty(),
        Concept.Status.COMMON,
        List.of());
  }

  private static Concept matched(Match... matches) {
    return new Concept(
        "a",
        "ring",
        Label.of("a"),
        List.of(),
        List.of(),
        "What it is.",
        List.of(),
        List.of(),
        Optional.empty(),
        Concept.Status.UNCERTAIN,
        List.of(matches));
  }

  @Nested
  class OfTheDemo {
    private final Thesaurus demo = demo();

    private static Thesaurus demo() {
      LibraryFolder folder = LibraryFolder.open(Path.of("library"));
      List<Facet> facets = new ArrayList<>();
      List<Concept> concepts = new ArrayList<>();
      for (LibraryFile file : folder.scan()) {
        if (file.kind() == LibraryFile.Kind.VOCABULARY) {
          VocabularyFile vocabulary = folder.readVocabulary(file.path()).value();
          facets.add(vocabulary.facet());
          concepts.addAll(vocabulary.concepts());
        }
      }
      return Thesaurus.of(facets, concepts, folder.readHomonyms().value());
    }

    @Test
    void allConditionsOfSkosAreKept() {
      byte[] turtle = written(demo).getBytes(StandardCharsets.UTF_8);
      assertEquals(List.of(), SkosQueries.broken(turtle));
      SkosReading reading = SkosFiles.read("demo.ttl", turtle);
      assertEquals(List.of(), reading.violations());
      assertEquals(List.of(), reading.remarks());
      assertEquals(140, reading.concepts().size());
    }

    @Test
    void nothingIsLeftThatIsNotUnderstoodAgain() {
      SkosReading reading = SkosFiles.read("demo.ttl", written(demo));
      for (SkosConcept concept : reading.concepts()) {
        assertEquals(List.of(), concept.rest(), concept.uri());
      }
      assertEquals(demo.register(), reading.schemes().get(0).register());
    }

    @Test
    void theSameBytesAreWrittenAgain() {
      assertEquals(written(demo), written(demo()));
    }

    /** A line is a statement: one more label is one more line. */
    @Test
    void aChangeOfOneLabelIsAChangeOfOneLine() {
      List<Concept> concepts = new ArrayList<>(demo.concepts());
      Concept knop = concepts.get(10);
      List<Label> labels = new ArrayList<>(knop.alternatives());
      labels.add(Label.of("something else"));
      concepts.set(
          10,
          new Concept(
              knop.id(),
              knop.facet(),
              knop.preferred(),
              labels,
              knop.hidden(),
              knop.definition(),
              knop.broader(),
              knop.lookAlikes(),
              knop.lookAlikeRemark(),
              knop.status(),
              knop.matches()));
      Thesaurus changed = Thesaurus.of(List.copyOf(demo.facets()), concepts, demo.register());
      List<String> before = written(demo).lines().toList();
      List<String> after = new ArrayList<>(written(changed).lines().toList());
      assertEquals(before.size() + 1, after.size());
      after.remove("  skos:altLabel \"something else\"@en-GB ;");
      assertEquals(before, after);
    }

    @Test
    void theNoticeOfTheAatGoesWithItsLinks() {
      assertTrue(written(demo).contains("\"" + AatTerms.LICENCE_NOTICE + "\"@en"));
      assertFalse(written(thesaurus(concept("a", List.of()))).contains(AatTerms.LICENCE_NOTICE));
    }
  }

  @Nested
  class LookAlikes {
    @Test
    void areRelatedAndToldApartUnderBoth() {
      String turtle =
          written(
              thesaurus(
                  concept("a", List.of(), new LookAlike("b", Optional.of("has a join"))),
                  concept("b", List.of())));
      assertTrue(has(turtle, "a", "related", "b"));
      assertTrue(has(turtle, "b", "related", "a"));
      assertTrue(
          turtle.contains("skos:scopeNote \"Mistaken for b label [b]: has a join\"@en"), turtle);
      assertTrue(
          turtle.contains("skos:scopeNote \"a label [a] is mistaken for this: has a join\"@en"),
          turtle);
    }

    /** SKOS Reference, S27: related is disjoint with broaderTransitive. */
    @Test
    void thatAreBroaderAtAnyDistanceAreInTheNoteOnly() {
      String turtle =
          written(
              thesaurus(
                  concept("a", List.of("b"), new LookAlike("c", Optional.empty())),
                  concept("b", List.of("c")),
                  concept("c", List.of(), new LookAlike("b", Optional.of("is wider")))));
      assertEquals(List.of(), SkosQueries.broken(turtle.getBytes(StandardCharsets.UTF_8)));
      assertFalse(turtle.contains("skos:related"), turtle);
      assertTrue(turtle.contains("\"Mistaken for c label [c]\"@en"), turtle);
      assertTrue(turtle.contains("\"Mistaken for b label [b]: is wider\"@en"), turtle);
    }
  }

  @Nested
  class Labels {
    private SkosConcept again(Label preferred, Label... alternatives) {
      String turtle = written(thesaurus(labelled(preferred, alternatives)));
      return SkosFiles.read("a.ttl", turtle).concepts().get(0);
    }

    private void survives(Label label) {
      SkosConcept read = again(label);
      assertEquals(label, OwnLabels.read(read.preferred().get(0).text(), read));
      assertEquals(List.of(), read.rest());
    }

    @Test
    void haveTheirScopeInBrackets() {
      SkosConcept read = again(new Label("bell", Optional.of("body"), false));
      assertEquals("bell (body)", read.preferred().get(0).text());
      survives(new Label("bell", Optional.of("body"), false));
    }

    @Test
    void comeBackWhateverTheirBrackets() {
      survives(Label.of("ring (one)"));
      survives(new Label("ring (one)", Optional.of("two"), true));
      survives(new Label("ring", Optional.of("a (b)"), false));
      survives(new Label("ring", Optional.of("a) (b"), false));
      survives(Label.of("ring (one) two"));
      survives(Label.of("(ring)"));
      survives(Label.of("ring ()"));
    }

    @Test
    void comeBackWhateverTheirCharacters() {
      survives(new Label("a \"b\" \\ c” is “d", Optional.empty(), true));
      survives(Label.of("two\nlines\tand\u0001one"));
      survives(Label.of("\uD83C\uDF77 ring\u2028"));
    }
  }

  @Nested
  class Matches {
    @Test
    void areThoseOfSkos() {
      String turtle =
          written(
              thesaurus(
                  matched(
                      new Match(Match.Kind.EXACT_MATCH, "urn:other:1"),
                      new Match(Match.Kind.BROAD_MATCH, "https://example.org/x?y=1&z#ä"),
                      new Match(Match.Kind.CLOSE_MATCH, "http://vocab.getty.edu/aat/300010175"))));
      assertTrue(has(turtle, "a", "exactMatch", "urn:other:1"), turtle);
      assertTrue(has(turtle, "a", "broadMatch", "https://example.org/x?y=1&z#ä"), turtle);
      assertTrue(turtle.contains("  skos:closeMatch aat:300010175 ;"), turtle);
    }

    @Test
    void withoutAnAddressAreSaidInANote() {
      Match odd = new Match(Match.Kind.NARROW_MATCH, "ring no. 4> <x");
      String turtle = written(thesaurus(matched(odd)));
      SkosConcept read = SkosFiles.read("a.ttl", turtle).concepts().get(0);
      assertEquals(List.of(odd), read.own().oddMatches());
      assertEquals(List.of(), read.matches());
    }
  }

  @Nested
  class Kept {
    private static final String ADDRESS = "https://example.org/glass/a";

    private String with(Field... fields) {
      Concept a = matched(new Match(Match.Kind.EXACT_MATCH, ADDRESS));
      return written(
          thesaurus(a, concept("b", List.of("a"))),
          new ReceivedRecord("skos", "Concept", ADDRESS, List.of(fields)));
    }

    @Test
    void statementsOfAnotherVocabularyGoOutAsTheyCame() {
      String turtle =
          with(
              new Field(SKOS + "prefLabel", "\"bague\"@fr"),
              new Field("http://purl.org/dc/terms/created", "\"1990\"^^<urn:x:year>"));
      assertTrue(turtle.contains("  skos:prefLabel \"bague\"@fr ;"), turtle);
      assertTrue(
          turtle.contains("  <http://purl.org/dc/terms/created> \"1990\"^^<urn:x:year>"), turtle);
    }

    /** SKOS Reference, S13 and S14. */
    @Test
    void labelsOfSeveralVocabulariesKeepTheConditions() {
      String other = "urn:other:a";
      Concept a =
          matched(
              new Match(Match.Kind.EXACT_MATCH, ADDRESS), new Match(Match.Kind.EXACT_MATCH, other));
      String turtle =
          written(
              thesaurus(a),
              new ReceivedRecord(
                  "skos",
                  "Concept",
                  ADDRESS,
                  List.of(
                      new Field(SKOS + "altLabel", "\"anneau\"@fr"),
                      new Field(SKOS + "prefLabel", "\"bague\"@fr"),
                      new Field(SKOS + "prefLabel", "\"ring\"@EN-gb"),
                      new Field(SKOS + "altLabel", "\"a\"@en-gb"))),
              new ReceivedRecord(
                  "skos",
                  "Concept",
                  other,
                  List.of(
                      new Field(SKOS + "prefLabel", "\"anneau\"@fr"),
                      new Field(SKOS + "hiddenLabel", "\"bague\"@FR"))));
      assertEquals(List.of(), SkosQueries.broken(turtle.getBytes(StandardCharsets.UTF_8)));
      assertTrue(turtle.contains("  skos:prefLabel \"bague\"@fr ;"), turtle);
      assertTrue(turtle.contains("  skos:altLabel \"anneau\"@fr"), turtle);
      assertTrue(turtle.contains("  skos:altLabel \"ring\"@EN-gb ;"), turtle);
      assertFalse(turtle.contains("hiddenLabel"), turtle);
    }

    @Test
    void statementsThatAreNoneOrWouldClashAreLeftOut() {
      String turtle =
          with(
              new Field(SKOS + "note", "\"no end"),
              new Field(SKOS + "note", "\"x\" . <urn:x:y> <urn:x:z> \"evil\""),
              new Field("no property", "\"x\""),
              new Field(SKOS + "member", "\"x\""),
              new Field(SKOS + "broader", "<urn:merese:vocabulary:b>"),
              new Field(SKOS + "related", "<urn:merese:vocabulary:b>"),
              new Field(SKOS + "exactMatch", "<urn:x:y>"),
              new Field(
                  "http://www.w3.org/1999/02/22-rdf-syntax-ns#type", "<" + SKOS + "Collection>"));
      assertEquals(with(), turtle);
    }
  }

  @Test
  void aFacetIsACollectionWithItsNounAndItsOptionalWords() {
    SkosGroup group =
        SkosFiles.read("a.ttl", written(thesaurus(concept("a", List.of())))).groups().get(0);
    assertEquals(SkosAddresses.usual().facet("ring"), group.uri());
    assertEquals(RINGS.headNoun(), group.headNoun());
    assertEquals(RINGS.optionalWords(), group.optionalWords());
    assertEquals(List.of(SkosAddresses.usual().concept("a")), group.members());
  }

  @Test
  void theRegisterComesBackFromTheScheme() {
    List<Homonym> register =
        List.of(
            new Homonym("collar", List.of("a", "b"), Optional.of("or a collar; of metal")),
            new Homonym("”odd“", List.of("a"), Optional.empty()));
    Thesaurus thesaurus = Thesaurus.of(List.of(RINGS), List.of(concept("a", List.of())), register);
    assertEquals(register, SkosFiles.read("a.ttl", written(thesaurus)).schemes().get(0).register());
  }

  @Test
  void addressesAreStableAndHoldAnyId() {
    SkosAddresses own = new SkosAddresses("https://example.org/glass/");
    for (String id : List.of("ring-bladed", "facet/ring", "a b%c", "ø", "x.", "-")) {
      assertEquals(Optional.of(id), own.conceptId(own.concept(id)));
      assertEquals(Optional.of(id), own.facetId(own.facet(id)));
      assertEquals(Optional.empty(), own.conceptId(own.facet(id)));
    }
    assertEquals("https://example.org/glass/ring-bladed", own.concept("ring-bladed"));
    assertEquals("https://example.org/glass", own.scheme());
    for (String base : List.of("glass/", "https://example.org/glass", "https://a b/", "", ":")) {
      assertThrows(IllegalArgumentException.class, () -> new SkosAddresses(base), base);
    }
  }

  @Test
  void aLanguageThatIsNoneIsRefused() {
    UnreadableException refused =
        assertThrows(
            UnreadableException.class,
            () -> new SkosWriter(SkosAddresses.usual(), "Rings", "British English"));
    assertEquals(
        "library.json: the language \"British English\" is no language tag; write one such as"
            + " \"en-GB\"",
        refused.getMessage());
  }
}
