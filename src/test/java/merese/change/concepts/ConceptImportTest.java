package merese.change.concepts;

import static merese.change.concepts.Vocabularies.below;
import static merese.change.concepts.Vocabularies.concept;
import static merese.change.concepts.Vocabularies.exported;
import static merese.change.concepts.Vocabularies.facet;
import static merese.change.concepts.Vocabularies.files;
import static merese.change.concepts.Vocabularies.get;
import static merese.change.concepts.Vocabularies.matching;
import static merese.change.concepts.Vocabularies.read;
import static merese.change.concepts.Vocabularies.turtle;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import merese.change.LibraryCheck;
import merese.change.concepts.ConceptResult.Added;
import merese.change.concepts.ConceptResult.Kind;
import merese.change.concepts.ConceptResult.Outcome;
import merese.change.concepts.ConceptResult.Question;
import merese.change.concepts.ConceptResult.There;
import merese.exchange.skos.SkosAddresses;
import merese.exchange.skos.SkosReading;
import merese.model.Concept;
import merese.model.Concept.Label;
import merese.model.Concept.Match;
import merese.model.Concept.Status;
import merese.model.Homonym;
import merese.model.ReceivedRecord;
import merese.store.LibraryException;
import merese.store.LibraryFile;
import merese.store.LibraryFolder;
import merese.testing.DemoLibrary;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class ConceptImportTest {
  @TempDir private Path folder;
  private LibraryFolder library;

  @BeforeEach
  void makeALibrary() {
    library =
        Vocabularies.of(
            folder.resolve("small"),
            List.of(facet("knop"), facet("ring")),
            concept("knop", "knop", "knop", "knob", "boss"),
            below("knop", concept("knop-ball", "knop", "ball knop")),
            concept("neck-ring", "ring", "neck ring", "ringed neck", "collar"));
  }

  private ConceptResult plan(String statements) {
    return plan(statements, ConceptOptions.usual());
  }

  private ConceptResult plan(String statements, ConceptOptions options) {
    return ConceptImport.plan(library, turtle(statements), options).result();
  }

  /** Does it, and makes sure that doing it again changes nothing and that the library is sound. */
  private ConceptResult apply(String statements, ConceptOptions options) {
    SkosReading reading = turtle(statements);
    ConceptImport plan = ConceptImport.plan(library, reading, options);
    ConceptResult result = plan.apply();
    Map<String, String> after = files(library);
    ConceptImport again = ConceptImport.plan(library, reading, options);
    assertTrue(again.result().changesNothing(), () -> again.result().toString());
    again.apply();
    assertEquals(after, files(library));
    assertEquals(0, LibraryCheck.of(library).errors());
    return result;
  }

  private ConceptResult apply(String statements) {
    return apply(statements, ConceptOptions.usual());
  }

  private static ConceptOptions answers(String... keysAndValues) {
    Map<String, String> answers = new java.util.HashMap<>();
    for (int i = 0; i < keysAndValues.length; i += 2) {
      answers.put(keysAndValues[i], keysAndValues[i + 1]);
    }
    return new ConceptOptions(
        Optional.empty(), SkosAddresses.usual(), Optional.empty(), false, answers);
  }

  private static ConceptOptions replacing() {
    return new ConceptOptions(
        Optional.empty(), SkosAddresses.usual(), Optional.empty(), true, Map.of());
  }

  private static ConceptOptions inFacet(String facet) {
    return new ConceptOptions(
        Optional.empty(), SkosAddresses.usual(), Optional.of(facet), false, Map.of());
  }

  private static ConceptOptions inLanguage(String language) {
    return new ConceptOptions(
        Optional.of(language), SkosAddresses.usual(), Optional.of("knop"), false, Map.of());
  }

  @Nested
  class OwnExport {
    @Test
    void changesNothingHere() throws IOException {
      LibraryFolder demo = DemoLibrary.copyTo(folder.resolve("demo"));
      Map<String, String> before = files(demo);
      ConceptImport plan = ConceptImport.plan(demo, read(exported(demo)), ConceptOptions.usual());
      assertTrue(plan.result().changesNothing());
      assertEquals(140, plan.result().there().size());
      for (There there : plan.result().there()) {
        assertEquals(List.of(), there.changes(), there.id());
        assertEquals("same address", there.why());
      }
      assertEquals(List.of(), plan.result().questions());
      assertEquals(List.of(), plan.result().remarks());
      plan.apply();
      assertEquals(before, files(demo));
    }

    @Test
    void makesTheSameFilesElsewhere() throws IOException {
      LibraryFolder demo = DemoLibrary.copyTo(folder.resolve("demo"));
      LibraryFolder empty = Vocabularies.of(folder.resolve("empty"), List.of());
      String written = exported(demo);
      ConceptImport.plan(empty, read(written), ConceptOptions.usual()).apply();
      for (LibraryFile file : demo.scan()) {
        boolean isKey = file.kind() == LibraryFile.Kind.CHARACTERS; // SKOS has nothing for it
        if (file.relative().startsWith("vocabulary/") && !isKey) {
          assertEquals(
              Files.readString(file.path()),
              Files.readString(empty.resolve(file.relative())),
              file.relative());
        }
      }
      assertEquals(
          written.replace("Lantern Street Glass Circle", "Rings and knops"), exported(empty));
    }
  }

  @Nested
  class AConceptThatIsNew {
    @Test
    void isAddedUnderWhatIsBroaderAndLinkedToWhereItIsFrom() {
      ConceptResult result =
          apply(
              "ex:teared a skos:Concept ; skos:prefLabel \"teared knop\"@en ;"
                  + " skos:altLabel \"beaded knop\"@en ; skos:definition \"With tears.\"@en ;"
                  + " skos:broader ex:k . ex:k a skos:Concept ; skos:prefLabel \"knop\"@en .");
      assertEquals(
          List.of(
              new Added(
                  "teared",
                  "teared knop",
                  "https://example.org/glass/teared",
                  "knop",
                  "that of knop",
                  List.of("knop"))),
          result.added());
      Concept added = get(library, "teared");
      assertEquals(List.of("knop"), added.broader());
      assertEquals("With tears.", added.definition());
      assertEquals(List.of(Label.of("beaded knop")), added.alternatives());
      assertEquals(
          List.of(new Match(Match.Kind.EXACT_MATCH, "https://example.org/glass/teared")),
          added.matches());
    }

    @Test
    void takesTheFacetThatItsCollectionNames() {
      ConceptResult result =
          apply(
              "ex:g a skos:Collection ; skos:prefLabel \"Rings\"@en ; skos:member ex:a ."
                  + " ex:a a skos:Concept ; skos:prefLabel \"square ring\"@en .");
      assertEquals("ring", result.added().get(0).facet());
      assertEquals("by its collection “Rings”", result.added().get(0).facetWhy());
    }

    @Test
    void takesTheFacetThatTheUserGives() {
      ConceptResult result =
          apply("ex:a a skos:Concept ; skos:prefLabel \"prunt\"@en .", inFacet("Applied glass"));
      assertEquals("applied-glass", result.added().get(0).facet());
      assertEquals("applied-glass", get(library, "a").facet());
      assertEquals(1, result.facets().size());
    }

    @Test
    void makesAFacetOfItsCollectionWhereNothingElsePlacesIt() {
      ConceptResult result =
          apply(
              "ex:g a skos:Collection ; skos:prefLabel \"Hot décor\"@en ; skos:member ex:a ."
                  + " ex:a a skos:Concept ; skos:prefLabel \"prunt\"@en .");
      assertEquals("hot-decor", result.added().get(0).facet());
    }

    @Test
    void withoutAFacetIsAskedAboutAndWaitedFor() {
      ConceptResult result =
          apply(
              "ex:a a skos:Concept ; skos:prefLabel \"prunt\"@en ; skos:narrower ex:b ."
                  + " ex:b a skos:Concept ; skos:prefLabel \"raspberry prunt\"@en .");
      assertEquals(List.of(), result.added());
      assertEquals(
          List.of("Which facet does “prunt” belong in?"),
          result.questions().stream().map(Question::words).toList());
      assertEquals("raspberry prunt", result.waiting().get(0).label());
    }

    @Test
    void inACircleWithoutAFacetIsAskedAboutToo() {
      ConceptResult result =
          apply(
              "ex:a skos:prefLabel \"one\"@en ; skos:broader ex:b ."
                  + " ex:b skos:prefLabel \"two\"@en ; skos:broader ex:a .");
      assertEquals(2, result.questions().size());
    }

    @Test
    void withoutADefinitionSaysSoAndIsUncertain() {
      ConceptResult result = apply("ex:a skos:broader :knop ; skos:prefLabel \"drop knop\"@en .");
      assertEquals(ConceptImport.UNDEFINED, get(library, "a").definition());
      assertEquals(Status.UNCERTAIN, get(library, "a").status());
      assertEquals(
          List.of("“drop knop” has no definition in the file; its usage is marked uncertain"),
          result.remarks());
      ConceptResult later =
          apply(
              "ex:a skos:broader :knop ; skos:prefLabel \"drop knop\"@en ;"
                  + " skos:definition \"Like a drop.\"@en .");
      assertEquals(Outcome.ADDED, later.changed().get(0).changes().get(0).outcome());
      assertEquals("Like a drop.", get(library, "a").definition());
    }

    @Test
    void getsAnIdThatIsFree() {
      apply(
          "<https://other.example/x#knop> a skos:Concept ; skos:prefLabel \"light switch\"@en ;"
              + " skos:broader :knop .");
      assertEquals("light switch", get(library, "knop-2").preferred().text());
    }

    @Test
    void withANumberForAnAddressIsNamedByItsLabel() {
      apply(
          "<http://x.example/300010175> skos:prefLabel \"Ball’s Égg knop\"@en ; skos:broader :knop .");
      assertEquals("Ball’s Égg knop", get(library, "balls-egg-knop").preferred().text());
    }

    @Test
    void aBroaderThatIsNowhereIsLeftOutWithARemark() {
      ConceptResult result =
          apply(
              "ex:a skos:broader ex:nowhere ; skos:prefLabel \"odd knop\"@en ;"
                  + " skos:definition \"Odd.\"@en .",
              inFacet("knop"));
      assertEquals(
          List.of(
              "“odd knop”: the broader https://example.org/glass/nowhere is neither taken from the"
                  + " file nor here"),
          result.remarks());
      assertEquals(List.of(), get(library, "a").broader());
    }
  }

  @Nested
  class AConceptThatIsThere {
    private There there(String statements) {
      return plan(statements).there().get(0);
    }

    @Test
    void isKnownByItsAddressAndItsNotation() {
      assertEquals("same address", there(":knop a skos:Concept ; skos:prefLabel \"x\"@en .").why());
      There byNotation =
          there("ex:a a skos:Concept ; skos:prefLabel \"x\"@en ; skos:notation \"knop\" .");
      assertEquals("knop", byNotation.id());
      assertEquals("its notation is the id", byNotation.why());
    }

    @Test
    void isKnownByAnExactMatchFromEitherSide() {
      library =
          Vocabularies.of(
              folder.resolve("linked"),
              List.of(facet("knop")),
              matching(
                  concept("a", "knop", "one"),
                  new Match(Match.Kind.EXACT_MATCH, "https://example.org/glass/x")),
              matching(
                  concept("b", "knop", "two"),
                  new Match(Match.Kind.EXACT_MATCH, "http://third.example/2")));
      assertEquals("a", there("ex:x a skos:Concept ; skos:prefLabel \"other\"@en .").id());
      There third =
          there(
              "ex:y a skos:Concept ; skos:prefLabel \"other\"@en ;"
                  + " skos:exactMatch <http://third.example/2> .");
      assertEquals("b", third.id());
      assertEquals("both are exact matches of http://third.example/2", third.why());
      assertEquals(
          "a",
          there("ex:z a skos:Concept ; skos:prefLabel \"other\"@en ; skos:exactMatch :a .").id());
    }

    @Test
    void isKnownByItsPreferredLabelInAnySpelling() {
      There there = there("ex:a a skos:Concept ; skos:prefLabel \"Neck-Rings\"@en .");
      assertEquals("neck-ring", there.id());
      assertEquals("same preferred label", there.why());
    }

    @Test
    void gainsWhatItDoesNotSay() {
      apply(
          ":knop a skos:Concept ; skos:prefLabel \"knop\"@en ; skos:altLabel \"knobs\"@en , \"swelling\"@en ;"
              + " skos:hiddenLabel \"nop\"@en ; skos:closeMatch <urn:other:1> .");
      Concept knop = get(library, "knop");
      assertEquals(
          List.of("knob", "boss", "knobs", "swelling"),
          knop.alternatives().stream().map(Label::text).toList());
      assertEquals(List.of(Label.of("nop")), knop.hidden());
      assertEquals(List.of(new Match(Match.Kind.CLOSE_MATCH, "urn:other:1")), knop.matches());
    }

    @Test
    void keepsWhatItSaysOtherwise() {
      String statements =
          ":knop-ball a skos:Concept ; skos:prefLabel \"bullet knop\"@en ;"
              + " skos:definition \"Another.\"@en ; skos:broader :neck-ring ;"
              + " skos:editorialNote \"Status: uncertain; usage varies\"@en .";
      Concept before = get(library, "knop-ball");
      ConceptResult result = apply(statements);
      Concept after = get(library, "knop-ball");
      assertEquals(before.definition(), after.definition());
      assertEquals(before.broader(), after.broader());
      assertEquals(before.preferred(), after.preferred());
      assertEquals(before.status(), after.status());
      assertEquals(List.of(Label.of("bullet knop")), after.alternatives());
      assertEquals(
          List.of("preferred label", "alternative label", "definition", "broader", "status"),
          result.there().get(0).changes().stream().map(ConceptResult.Change::part).toList());
    }

    @Test
    void takesTheWordOfTheFileWhereTheUserWantsIt() {
      apply(
          ":knop-ball a skos:Concept ; skos:prefLabel \"bullet knop\"@en ;"
              + " skos:definition \"Another.\"@en ; skos:broader :neck-ring ;"
              + " skos:editorialNote \"Status: uncertain; usage varies\"@en .",
          replacing());
      Concept after = get(library, "knop-ball");
      assertEquals("bullet knop", after.preferred().text());
      assertEquals(List.of(Label.of("ball knop")), after.alternatives());
      assertEquals("Another.", after.definition());
      assertEquals(List.of("neck-ring"), after.broader());
      assertEquals(Status.UNCERTAIN, after.status());
    }
  }

  @Nested
  class AWordWithAMeaningHere {
    @Test
    void isAskedAboutAndNotTaken() {
      String statements =
          "ex:m skos:broader :knop ; skos:prefLabel \"merese\"@en ; skos:altLabel \"Collars\"@en ,"
              + " \"wafer\"@en ; skos:definition \"A disc.\"@en .";
      ConceptResult result = apply(statements);
      assertEquals(List.of(Label.of("wafer")), get(library, "m").alternatives());
      Question question = result.questions().get(0);
      assertEquals(Kind.SECOND_MEANING, question.kind());
      assertEquals("“Collars” has a meaning here; should it also mean “merese”?", question.words());
      assertEquals("neck-ring", question.candidates().get(0).id());
      assertEquals(List.of("Collars=take"), question.answers());
    }

    @Test
    void isTakenWhereTheUserSaysSoAndFlaggedOnBothSides() {
      apply(
          "ex:m skos:broader :knop ; skos:prefLabel \"merese\"@en ; skos:altLabel \"collar\"@en ;"
              + " skos:definition \"A disc.\"@en .",
          answers("collar", "take"));
      Label flagged = new Label("collar", Optional.empty(), true);
      assertTrue(get(library, "m").alternatives().contains(flagged));
      assertTrue(get(library, "neck-ring").alternatives().contains(flagged));
    }

    @Test
    void ofTheRegisterIsTakenIntoItToo() {
      library =
          Vocabularies.of(
              folder.resolve("registered"),
              List.of(facet("ring")),
              concept("a", "ring", "first ring"),
              concept("b", "ring", "second ring"));
      library.save(
          library.readHomonyms(),
          List.of(new Homonym("triple ring", List.of("a"), Optional.of("or three"))));
      String statements =
          ":b a skos:Concept ; skos:prefLabel \"second ring\"@en ; skos:altLabel \"triple rings\"@en .";
      assertEquals(1, plan(statements).questions().size());
      apply(statements, answers("triple rings", "take"));
      assertEquals(
          List.of(new Homonym("triple ring", List.of("a", "b"), Optional.of("or three"))),
          library.readHomonyms().value());
    }

    @Test
    void asThePreferredLabelAsksWhetherItIsTheSame() {
      String statements =
          "ex:a a skos:Concept ; skos:prefLabel \"boss\"@en ; skos:broader ex:top ."
              + " ex:below a skos:Concept ; skos:prefLabel \"small boss\"@en ; skos:broader ex:a ."
              + " ex:top a skos:Concept ; skos:prefLabel \"knop\"@en .";
      ConceptResult result = apply(statements);
      assertEquals(Kind.SAME_OR_NEW, result.questions().get(0).kind());
      assertEquals(List.of("boss=knop", "boss=new"), result.questions().get(0).answers());
      assertEquals("boss", result.waiting().get(0).waitsFor());
      assertEquals(List.of(), result.added());

      ConceptResult same = plan(statements, answers("boss", "knop-ball"));
      assertTrue(same.there().stream().anyMatch(one -> one.why().equals("you said so")));

      ConceptResult fresh = apply(statements, answers("boss", "new"));
      assertEquals(2, fresh.added().size());
      assertTrue(get(library, "a").preferred().elsewhere());
      assertTrue(
          get(library, "knop").alternatives().stream()
              .anyMatch(label -> label.text().equals("boss") && label.elsewhere()));
      assertEquals(List.of("a"), get(library, "below").broader());
    }

    @Test
    void twoConceptsOfTheFileAreNotTakenForOneOfTheLibrary() {
      ConceptResult result =
          apply(
              "ex:a a skos:Concept ; skos:prefLabel \"neck ring\"@en ."
                  + " ex:b a skos:Concept ; skos:prefLabel \"neck rings\"@en .");
      assertEquals(1, result.there().size());
      assertEquals(
          "Is “neck rings” one of these, or new? (“neck ring” of the file is that already)",
          result.questions().get(0).words());
    }

    @Test
    void anAnswerThatFitsNoQuestionIsRefused() {
      String statements = "ex:a a skos:Concept ; skos:prefLabel \"knop\"@en .";
      assertEquals(
          "glass=new answers no question: glass.ttl has no concept and no word of that name to ask"
              + " about",
          assertThrows(ChoiceException.class, () -> plan(statements, answers("glass", "new")))
              .getMessage());
      assertEquals(
          "knop=nop: the library has no concept with the id \"nop\"; give one that it has, or"
              + " \"new\"",
          assertThrows(ChoiceException.class, () -> plan(statements, answers("knop", "nop")))
              .getMessage());
    }
  }

  @Nested
  class ACircle {
    @Test
    void amongNewConceptsIsNotClosed() {
      ConceptResult result =
          apply(
              "ex:a a skos:Concept ; skos:prefLabel \"one\"@en ; skos:broader ex:b ."
                  + " ex:b a skos:Concept ; skos:prefLabel \"two\"@en ; skos:broader ex:a .",
              inFacet("knop"));
      assertEquals(
          List.of("“one” is not taken as broader than “two”: it would be its own ancestor"),
          result.circles());
      assertEquals(List.of("b"), get(library, "a").broader());
      assertEquals(List.of(), get(library, "b").broader());
    }

    @Test
    void withTheLibraryIsNotClosedEvenWhereTheFileReplaces() {
      ConceptImport.plan(
              library,
              turtle(
                  ":knop a skos:Concept ; skos:prefLabel \"knop\"@en ; skos:broader :knop-ball ."),
              replacing())
          .apply();
      assertEquals(List.of(), get(library, "knop").broader());
      assertEquals(0, LibraryCheck.of(library).errors());
    }
  }

  @Nested
  class Languages {
    @Test
    void ofTheLibraryAreTakenWithTheirRegionsAndOthersKept() {
      apply(
          "ex:a skos:broader :knop ; skos:prefLabel \"coloured knop\"@en-GB , \"colored knop\"@en-US ,"
              + " \"nodus teinté\"@fr ; skos:altLabel \"tinted knop\" , \"bouton\"@fr ;"
              + " skos:definition \"Of colour.\"@en , \"De couleur.\"@fr .");
      Concept added = get(library, "a");
      assertEquals("coloured knop", added.preferred().text());
      assertEquals(
          List.of("colored knop", "tinted knop"),
          added.alternatives().stream().map(Label::text).toList());
      assertEquals("Of colour.", added.definition());
      ReceivedRecord kept = library.readKept().value().get(0);
      assertEquals("https://example.org/glass/a", kept.id());
      assertEquals(
          List.of("\"nodus teinté\"@fr", "\"bouton\"@fr", "\"De couleur.\"@fr"),
          kept.fields().stream().map(ReceivedRecord.Field::value).toList());
      String written = exported(library);
      assertTrue(written.contains("  skos:prefLabel \"nodus teinté\"@fr"), written);
    }

    @Test
    void thatAreGivenAreTakenInstead() {
      apply(
          "ex:a a skos:Concept ; skos:prefLabel \"nodus\"@fr , \"nodule\"@en .", inLanguage("fr"));
      assertEquals("nodus", get(library, "a").preferred().text());
    }

    @Test
    void aConceptWithoutALabelInThemIsRefusedAndTheOthersTaken() {
      ConceptResult result =
          apply(
              "ex:a a skos:Concept ; skos:prefLabel \"nodus\"@fr , \"Knoten\"@de ."
                  + " ex:b skos:broader :knop ; skos:prefLabel \"odd knop\"@en .");
      assertEquals(
          "https://example.org/glass/a has no preferred label in the language en-GB (some in de,"
              + " fr)",
          result.refused().get(0).what());
      assertEquals(1, result.added().size());
      String rejected = files(library).get(rejectedFile(result));
      assertTrue(rejected.contains("\"nodus\"@fr"), rejected);
      assertEquals(1, read(rejected).concepts().size(), "what is kept of it can be read again");
    }

    private String rejectedFile(ConceptResult result) {
      return library.path().relativize(Path.of(result.mend().orElseThrow())).toString();
    }
  }

  @Test
  void whatHasNoPlaceGoesOutAgainAsItCame() {
    apply(
        "@prefix dct: <http://purl.org/dc/terms/> . ex:a skos:broader :knop ;"
            + " skos:prefLabel \"odd knop\"@en ; skos:historyNote \"Since 1850.\"@en ;"
            + " dct:source \"a book\" ; skos:notation \"K.7\" ; skos:related ex:b ."
            + " ex:b a skos:Concept ; skos:prefLabel \"even ring\"@en ; skos:broader :neck-ring .");
    String written = exported(library);
    for (String line :
        List.of(
            "  skos:historyNote \"Since 1850.\"@en",
            "  <http://purl.org/dc/terms/source> \"a book\"",
            "  skos:notation \"K.7\"",
            "  skos:related <https://example.org/glass/b>")) {
      assertTrue(written.contains(line), line + "\n" + written);
    }
    ConceptImport again = ConceptImport.plan(library, read(written), ConceptOptions.usual());
    assertTrue(
        again.result().there().stream().allMatch(there -> there.changes().isEmpty()),
        again.result()::toString);
  }

  @Test
  void aRefusedConceptIsKeptToBeMended() throws IOException {
    ConceptResult result =
        apply(
            "ex:bad a skos:Concept ; skos:prefLabel \"a\"@en , \"b\"@en ."
                + " ex:good skos:broader :knop ; skos:prefLabel \"good knop\"@en .");
    assertEquals(1, result.added().size());
    Path file = Path.of(result.mend().orElseThrow());
    assertTrue(file.endsWith(Path.of("rejected", "glass.nt")), file::toString);
    assertEquals(3, Files.readString(file, StandardCharsets.UTF_8).lines().count(), file::toString);
  }

  @Test
  void nothingIsWrittenWhereAFileHasChangedMeanwhile() throws IOException {
    ConceptImport plan =
        ConceptImport.plan(
            library,
            turtle(
                "ex:a skos:broader :knop ; skos:prefLabel \"odd knop\"@en ."
                    + " ex:b skos:broader :neck-ring ; skos:prefLabel \"odd ring\"@en ."),
            ConceptOptions.usual());
    Path ring = library.resolve("vocabulary/ring.json");
    Files.writeString(ring, Files.readString(ring).replace("neck ring is", "ring is"));
    Map<String, String> before = files(library);
    assertThrows(LibraryException.class, plan::apply);
    assertEquals(before, files(library));
    assertFalse(Vocabularies.thesaurus(library).concept("a").isPresent());
  }

  @Test
  void aPlanWritesNothing() {
    Map<String, String> before = files(library);
    plan("ex:a skos:broader :knop ; skos:prefLabel \"odd knop\"@en .");
    assertEquals(before, files(library));
  }
}
