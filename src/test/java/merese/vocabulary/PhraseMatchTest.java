package merese.vocabulary;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;
import merese.model.Concept;
import merese.model.Homonym;
import merese.vocabulary.PhraseMatch.LabelKind;
import merese.vocabulary.PhraseMatch.Reason;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Over the starter thesaurus; what a label means is its table's (common practice, no source). */
class PhraseMatchTest {
  private final Thesaurus starter = Vocabularies.starterThesaurus();

  @Nested
  class OneMeaning {
    @ParameterizedTest
    @CsvSource({
      "bladed ring, ring-bladed",
      "bladed neck ring, ring-bladed",
      "KNIFE-EDGED RINGS, ring-bladed",
      "INCISED NECK RINGS, ring-incised",
      "annulated rings, ring-annulated",
      "applied ring, ring-applied",
      "applied neck rings, ring-applied",
      "neck ring, neck-ring",
      "ringed neck, neck-ring",
      "rings, neck-ring",
      "spiral trail, ring-spiral-trail",
      "three rings, ring-set-three",
      "set of three neck rings, ring-set-three",
      "step-cut neck, ring-step-cut",
      "ships decanter, body-ship",
      "color twists, stem-colour-twist",
      "mold blown, form-mould-blown",
      "disk stopper, stopper-disc",
      "bell (body), body-bell",
      "bell bowl, bowl-bell",
      "split, cut-mitre",
    })
    void isClear(String phrase, String id) {
      PhraseMatch match = anywhere(phrase);
      assertEquals(Optional.of(id), match.clear().map(Concept::id));
      assertFalse(match.mustAsk());
    }

    @Test
    void saysWhichLabelItWasAndOfWhatKind() {
      PhraseMatch.Meaning meaning = anywhere("sharp rings").meanings().get(0);
      assertEquals("sharp ring", meaning.labels().get(0).label().text());
      assertEquals(LabelKind.ALTERNATIVE, meaning.labels().get(0).kind());
      assertFalse(meaning.elsewhere());
      assertEquals(
          LabelKind.PREFERRED, anywhere("bladed ring").meanings().get(0).labels().get(0).kind());
    }

    @Test
    void saysWhereTheWordIsAlsoUsedForSomethingElse() {
      PhraseMatch match = anywhere("beak");
      assertEquals(Optional.of("lip-pouring"), match.clear().map(Concept::id));
      assertTrue(match.meanings().get(0).elsewhere());
    }

    @Test
    void namesEveryLabelThatEqualsThePhraseOnce() {
      // "colour twist" and "color twist" fold to the same.
      assertEquals(2, anywhere("colour twist").meanings().get(0).labels().size());
      assertEquals(1, anywhere("bladed ring").meanings().get(0).labels().size());
    }

    @Test
    void aMisspellingKeptAsAHiddenLabelIsFoundAsOne() {
      Concept concept =
          new Concept(
              "a",
              "x",
              Concept.Label.of("gadroon"),
              List.of(),
              List.of(Concept.Label.of("gaderoon")),
              "Invented for a test.",
              List.of(),
              List.of(),
              Optional.empty(),
              Concept.Status.COMMON,
              List.of());
      PhraseMatch match = Vocabularies.of(concept).match("Gaderoons", Optional.empty());
      assertEquals(LabelKind.HIDDEN, match.meanings().get(0).labels().get(0).kind());
    }
  }

  @Nested
  class AWordOfTheRegister {
    @ParameterizedTest
    @CsvSource({
      "triple ring, 'ring-annulated ring-set-three'",
      "Triple Neck Rings, 'ring-annulated ring-set-three'",
      "triple-ringed, 'ring-annulated ring-set-three'",
      "collar, 'neck-ring ring-wavy ring-square string-rim merese metal-collar'",
      "ribbed ring, 'ring-milled ring-vertical'",
      "moulded ring, 'ring-blown ring-milled'",
      "molded, 'form-mould-blown form-pressed'",
      "strawberry diamonds, 'cut-strawberry cut-fine-diamond'",
      "onion, 'body-onion body-shaft-globe'",
      "string, 'string-rim trail'",
    })
    void asksInTheOrderOfTheRegister(String phrase, String ids) {
      PhraseMatch match = anywhere(phrase);
      assertEquals(List.of(ids.split(" ")), ids(match));
      assertEquals(List.of(Reason.IN_REGISTER, Reason.SEVERAL_CONCEPTS), match.reasons());
      assertEquals(Optional.empty(), match.clear());
    }

    @ParameterizedTest
    @ValueSource(strings = {"barrel", "etched", "bull's-eye", "Bull’s Eyes"})
    void asksEvenWithASingleConcept(String phrase) {
      PhraseMatch match = anywhere(phrase);
      assertEquals(1, match.meanings().size());
      assertEquals(List.of(Reason.IN_REGISTER), match.reasons());
      assertEquals(Optional.empty(), match.clear());
    }

    @Test
    void bringsItsRemark() {
      assertEquals(
          Optional.of("or a true barrel"), anywhere("barrels").register().orElseThrow().remark());
    }

    @Test
    void addsToWhatLabelsShow() {
      // The register's own meanings first, then what only a label has.
      Thesaurus thesaurus =
          Thesaurus.of(
              List.of(Vocabularies.facet("x")),
              List.of(
                  Vocabularies.concept("a", "button"), Vocabularies.concept("b", "something else")),
              List.of(new Homonym("button", List.of("b"), Optional.empty())));
      PhraseMatch match = thesaurus.match("buttons", Optional.empty());
      assertEquals(List.of("b", "a"), ids(match));
      assertTrue(match.meanings().get(0).inRegister());
      assertEquals(List.of(), match.meanings().get(0).labels());
      assertFalse(match.meanings().get(1).inRegister());
    }

    @Test
    void everyWordOfTheStarterAsks() {
      for (Homonym homonym : starter.register()) {
        PhraseMatch match = anywhere(homonym.word().toUpperCase(Locale.ROOT));
        assertTrue(match.mustAsk(), homonym::word);
        assertTrue(ids(match).containsAll(homonym.concepts()), homonym::word);
      }
    }

    @Test
    void isNotTheWholeOfALongerPhrase() {
      assertEquals(Optional.of("string-rim"), anywhere("string rim").clear().map(Concept::id));
    }
  }

  @Nested
  class ALabelOfSeveralConcepts {
    @Test
    void asksThoughNoRegisterHasIt() {
      Thesaurus thesaurus =
          Vocabularies.of(Vocabularies.concept("a", "boss"), Vocabularies.concept("b", "Bosse"));
      assertEquals(
          Optional.of("a"), thesaurus.match("boss", Optional.empty()).clear().map(Concept::id));
      PhraseMatch shared = anywhere("boss");
      assertEquals(List.of("prunt", "knop"), ids(shared));
      assertEquals(List.of(Reason.SEVERAL_CONCEPTS), shared.reasons());
      assertEquals(Optional.empty(), shared.register());
    }

    @Test
    void everySharedLabelOfTheStarterAsks() {
      for (Concept concept : starter.concepts()) {
        Stream.concat(Stream.of(concept.preferred()), concept.alternatives().stream())
            .forEach(
                label -> {
                  PhraseMatch match = anywhere(label.text());
                  assertTrue(ids(match).contains(concept.id()), label::text);
                  assertTrue(match.meanings().size() == 1 || match.mustAsk(), label::text);
                });
      }
    }
  }

  @Nested
  class APhraseWithoutItsNoun {
    @Test
    void asksWhichLabelItWouldBe() {
      PhraseMatch match = anywhere("bladed");
      assertFalse(match.found());
      assertEquals(List.of(Reason.NOUN_MISSING), match.reasons());
      assertEquals(
          List.of("bladed knop = knop-bladed", "bladed ring = ring-bladed"), completions(match));
    }

    @Test
    void asksEvenWhereThereIsOneSuchLabel() {
      PhraseMatch match = anywhere("annulated neck");
      assertEquals(List.of("annulated ring = ring-annulated"), completions(match));
      assertTrue(match.mustAsk());
    }

    @Test
    void mayLackTheOptionalWordThatIsItsNoun() {
      PhraseMatch match = anywhere("prism cut");
      assertFalse(match.found());
      assertEquals(List.of("prism-cut neck = ring-step-cut"), completions(match));
    }

    @Test
    void isCompletedByTheRegisterToo() {
      assertEquals(
          List.of(
              "milled ring = ring-milled",
              "milled ring = ring-vertical",
              "milled ring = ring-feathered"),
          completions(anywhere("milled")));
    }

    @Test
    void thatIsALabelAsItStandsKeepsItsMeaningAndShowsTheRest() {
      PhraseMatch match = anywhere("split");
      assertEquals(List.of("split ring = ring-split"), completions(match));
      assertFalse(match.mustAsk());
    }

    @Test
    void thatNothingCompletesIsUnknown() {
      PhraseMatch match = anywhere("zigzag");
      assertFalse(match.found());
      assertFalse(match.mustAsk());
      assertEquals(List.of(), match.completions());
    }
  }

  @Nested
  class AFacetGiven {
    @ParameterizedTest
    @CsvSource({
      "bladed, ring, ring-bladed",
      "bladed, knops, knop-bladed",
      "bladed ring, ring, ring-bladed",
      "bladed neck, ring, ring-bladed",
      "step-cut, ring, ring-step-cut",
      "neck, ring, neck-ring",
      "step, cutting, cut-step",
      "fine diamonds, cut, cut-fine-diamond",
      "split, ring, ring-split",
      "bell, bowl, bowl-bell",
      "merese, knop, merese",
    })
    void suppliesTheNoun(String phrase, String facet, String id) {
      assertEquals(Optional.of(id), within(phrase, facet).clear().map(Concept::id));
    }

    @Test
    void leavesOutOtherFacets() {
      assertFalse(within("bladed knop", "ring").found());
      assertFalse(within("Prussian", "bowl").found());
    }

    @Test
    void doesNotAnswerWhatTheRegisterAsks() {
      PhraseMatch bell = within("bell", "body");
      assertEquals(List.of("body-bell"), ids(bell));
      assertEquals(List.of(Reason.IN_REGISTER), bell.reasons());
      assertEquals(List.of("ring-annulated", "ring-set-three"), ids(within("triple", "ring")));
      assertTrue(within("triple", "ring").mustAsk());
      assertEquals(List.of("merese"), ids(within("collar", "knop")));
      assertTrue(within("collar", "knop").mustAsk());
    }

    @Test
    void thatNobodyKnowsFindsNothing() {
      assertFalse(within("bladed ring", "handle").found());
    }
  }

  @ParameterizedTest
  @ValueSource(strings = {"", " ", "—", "?"})
  void aPhraseWithoutWordsMeansNothing(String phrase) {
    assertFalse(anywhere(phrase).found());
    assertFalse(anywhere(phrase).mustAsk());
    assertFalse(within(phrase, "ring").found());
  }

  @Test
  void theNeckRingIsNotEverything() {
    assertEquals(List.of("neck-ring"), ids(anywhere("neck ring")));
    assertFalse(anywhere("neck").found());
  }

  private PhraseMatch anywhere(String phrase) {
    return starter.match(phrase, Optional.empty());
  }

  private PhraseMatch within(String phrase, String facet) {
    return starter.match(phrase, Optional.of(facet));
  }

  private static List<String> ids(PhraseMatch match) {
    return match.meanings().stream().map(meaning -> meaning.concept().id()).toList();
  }

  private static List<String> completions(PhraseMatch match) {
    return match.completions().stream().map(c -> c.phrase() + " = " + c.concept().id()).toList();
  }
}
