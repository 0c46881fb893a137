package merese.vocabulary;

import static merese.vocabulary.Vocabularies.concept;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import merese.model.Concept;
import merese.model.Concept.LookAlike;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;

/** Expected values without a source are the starter table's own (common practice, no source). */
class ThesaurusTest {
  private final Thesaurus starter = Vocabularies.starterThesaurus();

  @Test
  void aConceptIsFoundByItsIdAlone() {
    assertEquals("merese", starter.concept("merese").map(c -> c.preferred().text()).orElseThrow());
    assertEquals(Optional.empty(), starter.concept("bladed ring"));
  }

  @Test
  void aFacetIsFoundByItsIdOrItsNounInAnyNumber() {
    assertEquals("ring", starter.facet("RINGS").orElseThrow().id());
    assertEquals("cut", starter.facet("cutting").orElseThrow().id());
    assertEquals(Optional.empty(), starter.facet("handle"));
  }

  @Test
  void aLabelIsDisplayedWithItsScope() {
    assertEquals("bell (body)", display("body-bell"));
    assertEquals("bladed ring", display("ring-bladed"));
  }

  @Nested
  class BroaderAndNarrower {
    @Test
    void everythingNarrowerIsFoundAtAnyDistance() {
      assertEquals(Set.of("ring-facet-cut"), starter.narrower("ring-cut"));
      assertEquals(
          Set.of("ring-split-ribbed", "ring-double", "ring-vertical", "ring-feathered"),
          starter.narrower("ring-split"));
      assertTrue(starter.isBroader("neck-treatment", "ring-feathered"));
    }

    @Test
    void aConceptWithTwoParentsHasTheAncestorsOfBoth() {
      assertEquals(
          Set.of("ring-false", "cut-step", "neck-treatment", "cutting"),
          starter.broader("ring-step-cut"));
      assertTrue(starter.narrower("cutting").contains("ring-step-cut"));
    }

    @Test
    void theNearestComesFirst() {
      assertEquals(
          List.of("ring-split-ribbed", "ring-split", "ring-applied", "neck-ring", "neck-treatment"),
          List.copyOf(starter.broader("ring-vertical")));
    }

    @Test
    void aConceptIsNeitherBroaderNorNarrowerThanItselfButCoversItself() {
      assertFalse(starter.isBroader("ring-cut", "ring-cut"));
      assertTrue(starter.covers("ring-cut", "ring-cut"));
      assertTrue(starter.covers("ring-cut", "ring-facet-cut"));
      assertFalse(starter.covers("ring-facet-cut", "ring-cut"));
    }

    @Test
    void broaderAndNarrowerAreEachOthersConverse() {
      for (Concept a : starter.concepts()) {
        for (String b : starter.narrower(a.id())) {
          assertTrue(starter.broader(b).contains(a.id()), () -> b + " under " + a.id());
        }
      }
    }

    @Test
    void aCycleDoesNotHang() {
      Thesaurus round =
          Vocabularies.of(concept("a", "A", "c"), concept("b", "B", "a"), concept("c", "C", "b"));
      assertEquals(Set.of("b", "c"), round.broader("a"));
      assertEquals(Set.of("b", "c"), round.narrower("a"));
    }

    @Test
    void anUnknownParentIsPassedOver() {
      Thesaurus odd = Vocabularies.of(concept("a", "A", "nowhere"));
      assertEquals(Set.of(), odd.broader("a"));
      assertEquals(Set.of(), odd.narrower("unknown"));
    }

    @Test
    void aChainOfThousandsIsFollowed() {
      List<Concept> chain = new ArrayList<>();
      chain.add(concept("c0", "C0"));
      for (int i = 1; i < 5000; i++) {
        chain.add(concept("c" + i, "C" + i, "c" + (i - 1)));
      }
      Thesaurus deep = Thesaurus.of(List.of(), chain, List.of());
      assertEquals(4999, deep.narrower("c0").size());
      assertEquals(4999, deep.broader("c4999").size());
    }
  }

  @Nested
  class LookAlikesOfAConcept {
    @Test
    void areThoseItStatesAndThoseThatStateIt() {
      assertEquals(
          List.of(
              "ring-bladed / ring-step-cut: many ridges, ground (by ring-bladed)",
              "ring-bladed / knop-bladed: is on a stem (by ring-bladed)",
              "ring-bladed / cut-step: on a neck (by cut-step)",
              "ring-bladed / ring-step-cut: - (by ring-step-cut)"),
          lookAlikes(starter, "ring-bladed"));
    }

    @Test
    void areSymmetricBetweenConceptsWithoutKin() {
      for (Concept one : starter.concepts()) {
        for (LookAlikePair pair : starter.lookAlikes(one.id())) {
          assertTrue(
              starter.lookAlikes(pair.other().id()).stream()
                  .anyMatch(back -> starter.covers(one.id(), back.other().id())),
              () -> pair.other().id() + " does not lead back to " + one.id());
        }
      }
    }

    @Test
    void includeThoseOfNarrowerConcepts() {
      assertTrue(
          lookAlikes(starter, "neck-ring")
              .contains("ring-bladed / knop-bladed: is on a stem (by ring-bladed)"));
      assertTrue(
          lookAlikes(starter, "neck-ring")
              .contains("neck-ring / merese: is on a neck (by merese)"));
    }

    @Test
    void leaveOutTheConceptItselfAndAllThatIsBroaderOrNarrower() {
      for (Concept asked : starter.concepts()) {
        for (LookAlikePair pair : starter.lookAlikes(asked.id())) {
          String other = pair.other().id();
          assertFalse(starter.covers(asked.id(), other), () -> asked.id() + " / " + other);
          assertFalse(starter.covers(other, asked.id()), () -> asked.id() + " / " + other);
          assertTrue(starter.covers(asked.id(), pair.here().id()));
        }
      }
      // The starter states these two pairs between a concept and its own parent.
      assertFalse(others(starter, "stopper-target").contains("stopper-disc"));
      assertFalse(others(starter, "stem-air-twist").contains("stem-mercury-twist"));
    }

    @Test
    void stepCutIsALookAlikeOfBladedAndNotOfCut() {
      // Scenario 3.
      assertTrue(others(starter, "ring-bladed").contains("ring-step-cut"));
      assertFalse(others(starter, "ring-cut").contains("ring-step-cut"));
      assertTrue(others(starter, "ring-cut").contains("ring-incised"));
    }

    @Test
    void doNotFailOnUnknownIds() {
      Thesaurus odd =
          Vocabularies.of(
              Vocabularies.concept(
                  "a",
                  "x",
                  List.of("A"),
                  List.of(),
                  List.of(
                      new LookAlike("nowhere", Optional.empty()),
                      new LookAlike("a", Optional.empty()))));
      assertEquals(List.of(), odd.lookAlikes("a"));
      assertEquals(List.of(), odd.lookAlikes("nowhere"));
    }
  }

  @Nested
  class OccurringInAPrintedTerm {
    @Test
    void needsConsecutiveWholeWords() {
      assertTrue(occurs("triple ring", "a triple-ringed quart"));
      assertTrue(occurs("quart", "a triple-ringed quart"));
      assertFalse(occurs("ring", "string rim"));
      assertFalse(occurs("cut ring", "cut and faceted rings"));
      assertFalse(occurs("cut neck ring", "cut neck"));
      assertFalse(occurs("", "cut neck"));
    }
  }

  @Nested
  class PossibleMeanings {
    @Test
    void aTripleRingedQuartMayHaveOneBandOrThreeRings() {
      // Scenario 2.
      assertEquals(Set.of("ring-annulated", "ring-set-three"), possible("a triple-ringed quart"));
    }

    @Test
    void theOptionalWordMayStandBetween() {
      assertEquals(Set.of("ring-bladed"), possible("with bladed neck rings"));
      assertEquals(Set.of("ring-annulated", "ring-set-three"), possible("a triple-ringed neck"));
    }

    @Test
    void aBareNounCountsWhereNoLongerLabelStandsAroundIt() {
      assertEquals(Set.of("neck-ring"), possible("thick rings"));
      assertEquals(Set.of("neck-ring"), possible("a neck with rings"));
      assertEquals(Set.of("stopper-target"), possible("a ringed disc"));
    }

    @Test
    void aLabelWhoseOnlyNounIsOptionalKeepsIt() {
      assertEquals(Set.of("ring-step-cut"), possible("a step-cut neck"));
      assertFalse(possible("a step-cut jug").contains("ring-step-cut"));
    }

    @Test
    void theRegisterAddsToTheLabels() {
      assertEquals(
          Set.of("neck-ring", "ring-wavy", "ring-square", "string-rim", "merese", "metal-collar"),
          possible("a thin collar"));
    }

    @Test
    void theLongestOccurrenceComesFirstAndSaysWhereItIs() {
      PossibleMeaning first =
          starter.possibleMeanings("cruet, applied neck rings, ball stopper").get(0);
      assertEquals("ring-applied", first.concept().id());
      assertEquals(1, first.start());
      assertEquals(3, first.length());
      PossibleMeaning last =
          starter.possibleMeanings("cruet, triple neck rings, ball stopper").get(0);
      assertEquals(1, last.start());
      assertEquals(3, last.length());
    }

    @Test
    void everyConceptIsPossibleForItsOwnLabels() {
      for (Concept concept : starter.concepts()) {
        List<Concept.Label> labels = new ArrayList<>(concept.alternatives());
        labels.add(concept.preferred());
        for (Concept.Label label : labels) {
          String printed = "Lot 12, the " + label.text().toUpperCase(Locale.ROOT) + ", chipped";
          assertTrue(possible(printed).contains(concept.id()), label::text);
        }
      }
    }

    @Test
    void nothingIsPossibleForNothing() {
      assertEquals(Set.of(), possible(""));
      assertEquals(Set.of(), possible("a very fine quart"));
    }

    private Set<String> possible(String printed) {
      Set<String> ids = new TreeSet<>();
      starter.possibleMeanings(printed).forEach(meaning -> ids.add(meaning.concept().id()));
      return ids;
    }
  }

  @Nested
  class NearTerms {
    @Test
    void aSlipOfThePenIsFound() {
      assertEquals("ring-bladed", nearest("bladde ring"));
      assertEquals("ring-annulated", nearest("anulated ring"));
      assertEquals("stem-mercury-twist", nearest("mercurry twist"));
      assertEquals("gadroon", nearest("gadrooned"));
    }

    @Test
    void sharedWordsAreFoundInAnyOrder() {
      assertEquals("prunt-raspberry", nearest("prunt like a raspberry"));
      assertTrue(List.of("ring-bladed", "knop-bladed").contains(nearest("sharp bladed thing")));
    }

    @Test
    void theNounOfAFacetIsNoLikeness() {
      assertEquals(List.of(), starter.nearTerms("zigzagged neck ring of unknown sort", 5));
    }

    @Test
    void eachConceptComesOnceAndNoMoreThanAsked() {
      List<NearTerm> near = starter.nearTerms("diamond", 4);
      assertEquals(4, near.size());
      assertEquals(4, near.stream().map(term -> term.concept().id()).distinct().count());
      for (int i = 1; i < near.size(); i++) {
        assertTrue(near.get(i - 1).nearness() >= near.get(i).nearness());
      }
      assertEquals(near, starter.nearTerms("diamond", 4));
    }

    @Test
    void distanceCountsAnExchangeOfNeighboursOnce() {
      // Optimal string alignment; the third value, 3 and not 2, is what tells it from
      // Damerau's own distance (from memory).
      assertEquals(3, merese.model.Slips.between("kitten", "sitting"));
      assertEquals(1, merese.model.Slips.between("ring", "rnig"));
      assertEquals(3, merese.model.Slips.between("ca", "abc"));
      assertEquals(4, merese.model.Slips.between("", "ring"));
    }

    private String nearest(String phrase) {
      return starter.nearTerms(phrase, 3).get(0).concept().id();
    }
  }

  private String display(String id) {
    return Thesaurus.display(starter.concept(id).orElseThrow().preferred());
  }

  private static boolean occurs(String phrase, String printed) {
    return Thesaurus.occurs(Folding.words(phrase), Folding.words(printed));
  }

  private static List<String> lookAlikes(Thesaurus thesaurus, String id) {
    return thesaurus.lookAlikes(id).stream()
        .map(
            pair ->
                pair.here().id()
                    + " / "
                    + pair.other().id()
                    + ": "
                    + pair.test().orElse("-")
                    + " (by "
                    + pair.statedBy().id()
                    + ")")
        .toList();
  }

  private static Set<String> others(Thesaurus thesaurus, String id) {
    Set<String> ids = new TreeSet<>();
    thesaurus.lookAlikes(id).forEach(pair -> ids.add(pair.other().id()));
    return ids;
  }
}
