package merese.vocabulary;

import static merese.vocabulary.Vocabularies.concept;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import merese.model.Concept;
import merese.model.Concept.LookAlike;
import merese.model.Concept.Match;
import merese.model.Homonym;
import merese.vocabulary.SkosGraph.Literal;
import merese.vocabulary.SkosGraph.Resource;
import merese.vocabulary.SkosGraph.Statement;
import merese.vocabulary.SkosIntegrity.Condition;
import merese.vocabulary.SkosIntegrity.Violation;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class SkosIntegrityTest {
  private static final String SCHEME = "https://vocabulary.invalid/scheme";
  private static final String BASE = "https://vocabulary.invalid/";
  private final Vocabularies starter = Vocabularies.starter();

  @Test
  void theStarterIsSound() {
    assertEquals(
        List.of(), SkosIntegrity.check(starter.facets, starter.concepts, starter.register));
  }

  @Nested
  class TheStarterBrokenOnPurpose {
    private final SkosGraph graph =
        SkosGraph.of(Vocabularies.starterThesaurus(), BASE, SCHEME, "en-GB");

    @Test
    void isSoundBefore() {
      assertEquals(List.of(), SkosIntegrity.check(graph));
    }

    @ParameterizedTest
    @CsvSource({
      "S9, ring-cut, inScheme, ring-bladed",
      "S9, scheme, broader, ring-bladed",
      "S27, ring-facet-cut, related, neck-ring",
      "S27, neck-treatment, relatedMatch, ring-vertical",
      "S37, ring-cut, member, ring-bladed",
      "S37, ring-cut, memberList, ring-bladed",
    })
    void byOneStatement(Condition condition, String subject, String property, String object) {
      Violation violation = only(graph.plus(resource(subject, property, object)));
      assertEquals(condition, violation.condition());
      assertTrue(violation.subjects().toString().contains("vocabulary.invalid/"));
      assertFalse(violation.remedy().isBlank());
    }

    @Test
    void byTwoPreferredLabelsInOneLanguage() {
      Violation violation = only(graph.plus(label("merese", "prefLabel", "wafer ring", "EN-gb")));
      assertEquals(Condition.S14, violation.condition());
      assertEquals(List.of(BASE + "merese"), violation.subjects());
      assertTrue(violation.wrong().contains("\"wafer ring\""), violation::wrong);
    }

    @Test
    void byOneWordAsPreferredAndAsHiddenLabel() {
      Violation violation = only(graph.plus(label("merese", "hiddenLabel", "wafer", "en-GB")));
      assertEquals(Condition.S13, violation.condition());
      assertEquals(
          List.of(),
          SkosIntegrity.check(graph.plus(label("merese", "hiddenLabel", "wafer", "en-US"))));
    }

    @Test
    void byAnExactMatchThatIsABroadMatchByWayOfAThird() {
      SkosGraph matched =
          graph.plus(
              resource("merese", "exactMatch", "other/1"),
              resource("other/2", "exactMatch", "other/1"));
      assertEquals(List.of(), SkosIntegrity.check(matched));
      assertEquals(
          Condition.S46,
          only(matched.plus(resource("merese", "narrowMatch", "other/2"))).condition());
    }

    private static Violation only(SkosGraph graph) {
      List<Violation> violations = SkosIntegrity.check(graph);
      assertEquals(1, violations.size(), violations::toString);
      return violations.get(0);
    }

    private static Statement resource(String subject, String property, String object) {
      return new Statement(BASE + subject, Skos.NAMESPACE + property, new Resource(BASE + object));
    }

    private static Statement label(String subject, String property, String text, String language) {
      return new Statement(
          BASE + subject, Skos.NAMESPACE + property, new Literal(text, Optional.of(language)));
    }
  }

  @Nested
  class AVocabularyOfOurs {
    @Test
    void mustNotHaveACycle() {
      List<Violation> violations =
          check(
              concept("a", "A", "c"),
              concept("b", "B", "a"),
              concept("c", "C", "b"),
              concept("d", "D", "a"),
              concept("e", "E", "e"));
      assertEquals(
          List.of(List.of("a", "c", "b"), List.of("e")),
          violations.stream().map(Violation::subjects).toList());
      assertEquals(Set.of(Condition.BROADER_CYCLE), conditions(violations));
    }

    @Test
    void mustNotNameAConceptThatIsNotThere() {
      List<Violation> violations =
          SkosIntegrity.check(
              List.of(Vocabularies.facet("x")),
              List.of(
                  Vocabularies.concept(
                      "a",
                      "x",
                      List.of("A"),
                      List.of("gone"),
                      List.of(new LookAlike("lost", Optional.empty())))),
              List.of(new Homonym("word", List.of("missing"), Optional.empty())));
      assertEquals(Set.of(Condition.UNKNOWN_CONCEPT), conditions(violations));
      assertEquals(
          List.of(List.of("a", "gone"), List.of("a", "lost"), List.of("word", "missing")),
          violations.stream().map(Violation::subjects).toList());
    }

    @Test
    void mustNotHaveTwoConceptsOfOneIdNorAnUnknownFacet() {
      assertEquals(
          Set.of(Condition.SAME_ID), conditions(check(concept("a", "A"), concept("a", "B"))));
      assertEquals(
          Set.of(Condition.UNKNOWN_FACET),
          conditions(check(Vocabularies.concept("a", "y", List.of("A"), List.of(), List.of()))));
    }

    @Test
    void mustNotGiveOneWordTwice() {
      assertEquals(
          Set.of(Condition.S13),
          conditions(
              check(Vocabularies.concept("a", "x", List.of("A", "A"), List.of(), List.of()))));
    }

    @Test
    void mustNotMatchExactlyWhatItAlsoMatchesBroadly() {
      Match exact = new Match(Match.Kind.EXACT_MATCH, "https://other.invalid/1");
      Match broad = new Match(Match.Kind.BROAD_MATCH, "https://other.invalid/1");
      Concept concept =
          new Concept(
              "a",
              "x",
              Concept.Label.of("A"),
              List.of(),
              List.of(),
              "Invented for a test.",
              List.of(),
              List.of(),
              Optional.empty(),
              Concept.Status.COMMON,
              List.of(exact, broad));
      assertEquals(Set.of(Condition.S46), conditions(check(concept)));
    }

    @Test
    void mayHaveALookAlikeAmongItsAncestors() {
      LookAlike parent = new LookAlike("a", Optional.of("has no edge"));
      assertEquals(
          List.of(),
          check(
              concept("a", "A"),
              Vocabularies.concept("b", "x", List.of("B"), List.of("a"), List.of(parent))));
    }

    @Test
    void ofThousandsIsCheckedThroughAndThrough() {
      List<Concept> many = new ArrayList<>();
      many.add(concept("c0", "label 0"));
      for (int i = 1; i < 5000; i++) {
        LookAlike before = new LookAlike("c" + (i - 1), Optional.empty());
        many.add(
            Vocabularies.concept(
                "c" + i, "x", List.of("label " + i), List.of("c" + i / 4), List.of(before)));
      }
      assertEquals(List.of(), check(many.toArray(new Concept[0])));
      many.set(0, concept("c0", "label 0", "c4999"));
      List<Violation> violations = check(many.toArray(new Concept[0]));
      assertEquals(Set.of(Condition.BROADER_CYCLE), conditions(violations));
      assertEquals(1, violations.size());
    }

    private static List<Violation> check(Concept... concepts) {
      return SkosIntegrity.check(List.of(Vocabularies.facet("x")), List.of(concepts), List.of());
    }
  }

  @Nested
  class TheGraphOfTheStarter {
    private final SkosGraph graph =
        SkosGraph.of(Vocabularies.starterThesaurus(), BASE, SCHEME, "en-GB");

    @Test
    void hasALookAlikeAsRelatedWithItsTest() {
      assertTrue(graph.statements().contains(relation("ring-bladed", "related", "knop-bladed")));
      assertTrue(notes("ring-bladed").contains("Mistaken for bladed knop: is on a stem"));
    }

    @Test
    void hasTheNoteAloneWhereOneIsAnAncestorOfTheOther() {
      assertFalse(
          graph.statements().contains(relation("stopper-disc", "related", "stopper-target")));
      assertTrue(
          notes("stopper-disc").contains("Mistaken for target stopper: raised or cut centre"));
    }

    @Test
    void hasLabelsWithTheirScopeAndAllParents() {
      assertTrue(
          graph
              .statements()
              .contains(
                  new Statement(
                      BASE + "body-bell",
                      Skos.PREF_LABEL,
                      new Literal("bell (body)", Optional.of("en-GB")))));
      assertTrue(graph.statements().contains(relation("ring-step-cut", "broader", "cut-step")));
      assertTrue(graph.statements().contains(relation("ring-step-cut", "broader", "ring-false")));
    }

    private List<String> notes(String id) {
      return graph.statements().stream()
          .filter(s -> s.subject().equals(BASE + id) && s.property().equals(Skos.SCOPE_NOTE))
          .map(s -> ((Literal) s.object()).text())
          .toList();
    }

    private static Statement relation(String subject, String property, String object) {
      return new Statement(BASE + subject, Skos.NAMESPACE + property, new Resource(BASE + object));
    }
  }

  private static Set<Condition> conditions(List<Violation> violations) {
    return violations.stream().map(Violation::condition).collect(Collectors.toSet());
  }
}
