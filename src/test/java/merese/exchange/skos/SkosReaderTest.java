package merese.exchange.skos;

import static merese.exchange.skos.SkosFiles.concept;
import static merese.exchange.skos.SkosFiles.read;
import static merese.exchange.skos.SkosFiles.texts;
import static merese.exchange.skos.SkosFiles.turtle;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import merese.exchange.Refused;
import merese.model.Concept.Match;
import merese.model.ReceivedRecord.Field;
import merese.vocabulary.SkosIntegrity.Condition;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;

/** What a file of SKOS is read as; the rules are those of the SKOS Reference (W3C, 2009). */
class SkosReaderTest {
  private static final Path SAME = Path.of("src/test/resources/merese/exchange/skos/read");

  @TestFactory
  Stream<DynamicTest> theSameVocabularyReadsTheSameInEverySyntax() throws IOException {
    byte[] turtle = Files.readAllBytes(SAME.resolve("knops.ttl"));
    SkosReading expected = read("knops.ttl", turtle);
    assertEquals(2, expected.concepts().size());
    try (Stream<Path> files = Files.list(SAME)) {
      List<Path> all = files.sorted().toList();
      assertEquals(4, all.size());
      return all.stream()
          .map(
              file ->
                  DynamicTest.dynamicTest(
                      file.getFileName().toString(),
                      () -> assertEquals(told(expected), told(readFile(file)))));
    }
  }

  /** Without what depends on the order of statements, which JSON-LD does not keep. */
  private static List<String> told(SkosReading reading) {
    return reading.concepts().stream()
        .map(
            c ->
                c.uri()
                    + texts(c.preferred()).stream().sorted().toList()
                    + texts(c.alternative()).stream().sorted().toList()
                    + texts(c.definitions())
                    + c.notations()
                    + c.broader()
                    + c.narrower()
                    + c.matches()
                    + c.schemes()
                    + c.groups())
        .sorted()
        .toList();
  }

  private static SkosReading readFile(Path file) throws IOException {
    return read(file.getFileName().toString(), Files.readAllBytes(file));
  }

  @Test
  void theSyntaxIsKnownByTheBeginningWhereTheNameSaysNothing() throws IOException {
    for (String name : List.of("knops.ttl", "knops.rdf", "knops.jsonld", "knops.nt")) {
      byte[] bytes = Files.readAllBytes(SAME.resolve(name));
      assertEquals(2, read("vocabulary", bytes).concepts().size(), name);
    }
  }

  @Test
  void theSyntaxIsTheOneGiven() throws IOException {
    byte[] bytes = Files.readAllBytes(SAME.resolve("knops.rdf"));
    SkosReader reader = SkosReader.usual().as(SkosSyntax.RDF_XML);
    assertEquals(2, reader.read("knops.txt", new ByteArrayInputStream(bytes)).concepts().size());
  }

  @Nested
  class Relations {
    @Test
    void areSeenFromBothEnds() {
      SkosReading reading =
          turtle(
              "ex:knop skos:narrower ex:ball . ex:ball a skos:Concept . ex:cut skos:related ex:knop .");
      assertEquals(List.of("https://example.org/glass/knop"), concept(reading, "ball").broader());
      assertEquals(List.of("https://example.org/glass/ball"), concept(reading, "knop").narrower());
      assertEquals(List.of("https://example.org/glass/cut"), concept(reading, "knop").related());
      assertEquals(List.of("https://example.org/glass/knop"), concept(reading, "cut").related());
    }

    @Test
    void toAConceptThatTheFileSaysNothingOfAreKeptAsAddresses() {
      SkosReading reading = turtle("ex:ball a skos:Concept ; skos:broader ex:knop .");
      assertEquals(1, reading.concepts().size());
      assertEquals(List.of("https://example.org/glass/knop"), concept(reading, "ball").broader());
    }

    @Test
    void membersOfACollectionAreThoseOfItsListToo() {
      SkosReading reading =
          turtle(
              "ex:g a skos:OrderedCollection ; skos:prefLabel \"knops\"@en ;"
                  + " skos:memberList ( ex:b ex:a ) . ex:a a skos:Concept . ex:b a skos:Concept .");
      SkosGroup group = reading.groups().get(0);
      assertTrue(group.ordered());
      assertEquals(
          List.of("https://example.org/glass/b", "https://example.org/glass/a"), group.members());
      assertEquals(List.of("https://example.org/glass/g"), concept(reading, "a").groups());
      assertEquals(List.of(), reading.remarks());
    }

    @Test
    void aListThatComesRoundToItselfEnds() {
      String rdf = "<http://www.w3.org/1999/02/22-rdf-syntax-ns#";
      SkosReading reading =
          turtle(
              "ex:g skos:memberList _:l . _:l "
                  + rdf
                  + "first> ex:a ; "
                  + rdf
                  + "rest> _:l ."
                  + " ex:a a skos:Concept .");
      assertEquals(List.of("https://example.org/glass/a"), reading.groups().get(0).members());
    }
  }

  @Nested
  class Labels {
    @Test
    void ofEveryLanguageAreRead() {
      SkosConcept knop =
          concept(
              turtle(
                  "ex:knop a skos:Concept ; skos:prefLabel \"knop\"@en , \"bouton\"@fr , \"Nodus\" ;"
                      + " skos:hiddenLabel \"nop\"@en-GB ."),
              "knop");
      assertEquals(List.of("knop@en", "bouton@fr", "Nodus"), texts(knop.preferred()));
      assertEquals(List.of("nop@en-GB"), texts(knop.hidden()));
    }

    /** SKOS Reference, S55–S57: a label resource entails the plain label. */
    @Test
    void thatAreResourcesAreRead() {
      SkosReading reading =
          turtle(
              "@prefix xl: <http://www.w3.org/2008/05/skos-xl#> . ex:knop a skos:Concept ;"
                  + " xl:prefLabel ex:l1 ; xl:altLabel [ xl:literalForm \"knob\"@en ] ."
                  + " ex:l1 a xl:Label ; xl:literalForm \"knop\"@en .");
      assertEquals(List.of("knop@en"), texts(concept(reading, "knop").preferred()));
      assertEquals(List.of("knob@en"), texts(concept(reading, "knop").alternative()));
      assertEquals(List.of(), concept(reading, "knop").rest());
      assertEquals(List.of(), reading.remarks());
    }

    @Test
    void withoutAnythingThatMakesAConceptAreRefusedAndSaidToBe() {
      SkosReading reading = turtle("ex:knop skos:prefLabel \"knop\"@en .");
      assertEquals(List.of(), reading.concepts());
      Refused refused = reading.refused().get(0).refused();
      assertEquals(
          "https://example.org/glass/knop has labels, and nothing says that it is a concept",
          refused.what());
      assertEquals("state that it is one: a skos:Concept", refused.remedy());
    }
  }

  @Nested
  class WhatHasNoPlace {
    @Test
    void isKeptUnderItsOwnName() {
      SkosConcept knop =
          concept(
              turtle(
                  "@prefix dct: <http://purl.org/dc/terms/> . ex:knop a skos:Concept ;"
                      + " skos:historyNote \"first 1850\"@en ; dct:created 1990 ;"
                      + " skos:notation \"K1\"^^ex:code ; skos:scopeNote \"Only of stems.\"@en ."),
              "knop");
      assertEquals(List.of("K1"), knop.notations());
      assertEquals(
          List.of(
              new Field("http://www.w3.org/2004/02/skos/core#historyNote", "\"first 1850\"@en"),
              new Field(
                  "http://purl.org/dc/terms/created",
                  "\"1990\"^^<http://www.w3.org/2001/XMLSchema#integer>"),
              new Field(
                  "http://www.w3.org/2004/02/skos/core#notation",
                  "\"K1\"^^<https://example.org/glass/code>"),
              new Field("http://www.w3.org/2004/02/skos/core#scopeNote", "\"Only of stems.\"@en")),
          knop.rest());
    }

    @Test
    void isCountedWhereItIsAboutSomethingElse() {
      SkosReading reading =
          turtle("ex:knop a skos:Concept . ex:me <http://xmlns.com/foaf/0.1/name> \"I\" .");
      assertEquals(
          "1 statement is about something that is no concept, collection or scheme; left out",
          reading.remarks().get(0).words());
    }
  }

  @Nested
  class Addresses {
    @Test
    void thatAreRelativeAreResolvedAgainstTheBaseOfTheFile() {
      SkosReading reading = turtle("@base <https://example.org/b/> . <knop> a skos:Concept .");
      assertEquals("https://example.org/b/knop", reading.concepts().get(0).uri());
      assertTrue(reading.concepts().get(0).isAddressed());
    }

    @Test
    void thatAreRelativeWithoutABaseIdentifyNothingOutsideTheFile() {
      SkosConcept knop = turtle("<knop> a skos:Concept .").concepts().get(0);
      assertEquals(SkosReader.NO_BASE + "knop", knop.uri());
      assertFalse(knop.isAddressed());
    }

    @Test
    void thatAreRelativeAreResolvedAgainstTheBaseThatIsGiven() throws IOException {
      byte[] bytes =
          (SkosFiles.PREFIXES + "<knop> a skos:Concept .").getBytes(StandardCharsets.UTF_8);
      SkosReading reading =
          SkosReader.usual()
              .withBase("https://example.org/c/")
              .read("glass.ttl", new ByteArrayInputStream(bytes));
      assertEquals("https://example.org/c/knop", reading.concepts().get(0).uri());
      assertThrows(IllegalArgumentException.class, () -> SkosReader.usual().withBase("no address"));
    }

    @Test
    void ofBlankNodesAreNamesThatTheFileAloneDecides() {
      String text = "[] a skos:Concept ; skos:broader [ a skos:Concept ] .";
      assertEquals(
          List.of("_:1", "_:2"), turtle(text).concepts().stream().map(SkosConcept::uri).toList());
      assertEquals(turtle(text), turtle(text));
      assertFalse(turtle(text).concepts().get(0).isAddressed());
    }
  }

  /** What becomes of a concept that breaks a condition; the others are as they would be alone. */
  @Nested
  class IntegrityConditions {
    private static final String GOOD = " ex:good a skos:Concept ; skos:prefLabel \"good\"@en .";

    private SkosReading with(String bad) {
      SkosReading alone = turtle(GOOD);
      SkosReading reading = turtle(bad + GOOD);
      assertEquals(concept(alone, "good"), concept(reading, "good"));
      return reading;
    }

    private void isRefused(String bad, Condition condition) {
      SkosReading reading = with(bad);
      assertEquals(1, reading.refused().size(), reading::toString);
      assertEquals(1, reading.concepts().size());
      Refused refused = reading.refused().get(0).refused();
      assertTrue(refused.what().endsWith("(" + condition + ")"), refused.what());
      String kept = new String(refused.verbatim(), StandardCharsets.UTF_8);
      assertFalse(kept.isEmpty());
      assertEquals(1, read("mended.nt", kept).refused().size(), kept);
    }

    @Test
    void twoPreferredLabelsRefuseIt() {
      isRefused("ex:bad a skos:Concept ; skos:prefLabel \"a\"@en , \"b\"@EN .", Condition.S14);
    }

    @Test
    void beingASchemeTooRefusesIt() {
      isRefused("ex:bad a skos:Concept , skos:ConceptScheme .", Condition.S9);
    }

    @Test
    void beingACollectionTooRefusesIt() {
      isRefused("ex:bad a skos:Concept , skos:Collection .", Condition.S37);
    }

    @Test
    void aLabelOfTwoKindsIsTakenAsTheStronger() {
      SkosReading reading =
          with(
              "ex:bad a skos:Concept ; skos:prefLabel \"a\"@en ; skos:altLabel \"a\"@en , \"b\"@en ;"
                  + " skos:hiddenLabel \"a\"@en , \"b\"@en , \"c\"@en .");
      SkosConcept bad = concept(reading, "bad");
      assertEquals(List.of("a@en"), texts(bad.preferred()));
      assertEquals(List.of("b@en"), texts(bad.alternative()));
      assertEquals(List.of("c@en"), texts(bad.hidden()));
      assertTrue(
          reading.remarks().stream()
              .anyMatch(
                  r -> r.words().endsWith("(S13); taken once, as the stronger kind of label")),
          reading::toString);
    }

    @Test
    void relatedAndBroaderAtOnceLeavesTheHierarchy() {
      SkosReading reading =
          with(
              "ex:bad a skos:Concept ; skos:broader ex:mid ; skos:related ex:top ."
                  + " ex:mid skos:broader ex:top . ex:top a skos:Concept .");
      assertEquals(List.of(), concept(reading, "bad").related());
      assertEquals(List.of(), concept(reading, "top").related());
      assertEquals(List.of("https://example.org/glass/mid"), concept(reading, "bad").broader());
      assertEquals(Condition.S27, reading.violations().get(0).condition());
    }

    @Test
    void matchesThatContradictEachOtherAreNotTaken() {
      SkosReading reading =
          with(
              "ex:bad a skos:Concept ; skos:exactMatch <urn:other:1> ;"
                  + " skos:broadMatch <urn:other:1> ; skos:closeMatch <urn:other:2> .");
      assertEquals(
          List.of(new Match(Match.Kind.CLOSE_MATCH, "urn:other:2")),
          concept(reading, "bad").matches());
      assertEquals(Condition.S46, reading.violations().get(0).condition());
    }
  }

  @Test
  void whatIsOddAndCanBeTakenIsRemarkedOnInWords() {
    SkosReading reading =
        turtle(
            "ex:a a skos:Concept ; skos:prefLabel \"a\"@abcdefghijk ; skos:closeMatch <urn:x> .");
    assertEquals(
        List.of(
            "line 3: \"abcdefghijk\" is no language tag; taken as it stands",
            "line 3: the address <urn:x> is not well formed; taken as it stands"),
        reading.remarks().stream().map(SkosReading.Remark::words).toList());
  }

  @Test
  void namedGraphsAreReadAsOneAndSaidToBe() {
    SkosReading reading =
        read(
            "g.jsonld",
            """
            {"@context": {"skos": "http://www.w3.org/2004/02/skos/core#"},
             "@id": "https://example.org/g",
             "@graph": [{"@id": "https://example.org/a", "@type": "skos:Concept", "skos:prefLabel": "a"}]}
            """);
    assertEquals(1, reading.concepts().size());
    assertEquals(
        "2 statements stand in named graphs; read as if they did not",
        reading.remarks().get(0).words());
  }
}
