package merese.change.concepts;

import static merese.change.concepts.Vocabularies.concept;
import static merese.change.concepts.Vocabularies.facet;
import static merese.change.concepts.Vocabularies.files;
import static merese.change.concepts.Vocabularies.get;
import static merese.change.concepts.Vocabularies.matching;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import merese.change.LibraryCheck;
import merese.change.concepts.AatResult.Link;
import merese.change.concepts.AatResult.Question;
import merese.exchange.skos.AatTerms;
import merese.model.Concept;
import merese.model.Concept.Label;
import merese.model.Concept.Match;
import merese.model.Concept.Match.Kind;
import merese.model.Concept.Status;
import merese.store.LibraryFolder;
import merese.testing.DemoLibrary;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Against the terms of the AAT as published; see SOURCES.md beside the table. */
class AatLinksTest {
  private static final Path TABLE = Path.of("src/test/resources/merese/checks/aat-glass-terms.tsv");

  @TempDir private Path folder;

  private static AatTerms terms() {
    try (InputStream in = Files.newInputStream(TABLE)) {
      return AatTerms.read("aat-glass-terms.tsv", in);
    } catch (IOException e) {
      throw new java.io.UncheckedIOException(e);
    }
  }

  private LibraryFolder library(Concept... concepts) {
    return Vocabularies.of(folder, List.of(facet("glass")), concepts);
  }

  private static AatResult plan(LibraryFolder library, String... answers) {
    return AatLinks.plan(library, terms(), answers(answers)).result();
  }

  private static Map<String, String> answers(String... answers) {
    Map<String, String> all = new java.util.LinkedHashMap<>();
    Stream.of(answers)
        .forEach(a -> all.put(a.substring(0, a.indexOf('=')), a.substring(a.indexOf('=') + 1)));
    return all;
  }

  /** Does it, and makes sure that doing it again changes nothing and that the library is sound. */
  private static AatResult apply(LibraryFolder library, String... answers) {
    AatResult result = AatLinks.plan(library, terms(), answers(answers)).apply();
    Map<String, String> after = files(library);
    AatResult again = AatLinks.plan(library, terms(), answers(answers)).apply();
    assertTrue(again.changesNothing(), again::toString);
    assertEquals(after, files(library));
    assertEquals(0, LibraryCheck.of(library).errors());
    return result;
  }

  private static List<Match> one(Kind kind, String id) {
    return List.of(new Match(kind, "http://vocab.getty.edu/aat/" + id));
  }

  @Nested
  class AnExactMatch {
    @Test
    void isMadeWhereThePreferredLabelIsATermOfOneConceptOnly() {
      LibraryFolder library = library(concept("c", "glass", "Cut-Glass"));
      AatResult result = apply(library);
      assertEquals(one(Kind.EXACT_MATCH, "300206355"), get(library, "c").matches());
      assertEquals("our preferred label is the preferred term there", result.links().get(0).why());
    }

    @Test
    void isMadeWhereThatTermIsNotThePreferredOneThere() {
      LibraryFolder library = library(concept("c", "glass", "ice glass"));
      apply(library);
      assertEquals(one(Kind.EXACT_MATCH, "300206380"), get(library, "c").matches());
    }
  }

  @Nested
  class ACloseMatch {
    @Test
    void isMadeWhereAnotherLabelIsThePreferredTermThere() {
      LibraryFolder library = library(concept("c", "glass", "wheel-cut ware", "cut glass"));
      apply(library);
      assertEquals(one(Kind.CLOSE_MATCH, "300206355"), get(library, "c").matches());
    }

    @Test
    void isMadeWhereOurLabelIsLimited() {
      Concept c = concept("c", "glass", "crystal");
      Concept scoped =
          new Concept(
              "c",
              "glass",
              new Label("crystal", Optional.of("trade"), false),
              List.of(),
              List.of(),
              c.definition(),
              List.of(),
              List.of(),
              Optional.empty(),
              Status.COMMON,
              List.of());
      LibraryFolder library = library(scoped);
      apply(library);
      assertEquals(one(Kind.CLOSE_MATCH, "300010814"), get(library, "c").matches());
    }

    @Test
    void isMadeWhereTheTermThereHasAQualifier() {
      LibraryFolder library = library(concept("c", "glass", "Favrile glass"));
      apply(library);
      assertEquals(one(Kind.CLOSE_MATCH, "300206359"), get(library, "c").matches());
    }
  }

  @Nested
  class AQuestion {
    /** "green glass" is a term of 300210980 and of 300264532. */
    @Test
    void isAskedWhereAWordIsATermOfTwoConcepts() {
      LibraryFolder library = library(concept("c", "glass", "green glass"));
      AatResult result = apply(library);
      assertEquals(List.of(), result.links());
      Question question = result.questions().get(0);
      assertEquals(
          List.of("300210980", "300264532"),
          question.candidates().stream().map(AatResult.Candidate::aatId).toList());
      assertEquals(List.of("c=300210980", "c=300264532", "c=none"), question.answers());
      apply(library, "green glass=300264532");
      assertEquals(one(Kind.EXACT_MATCH, "300264532"), get(library, "c").matches());
    }

    @Test
    void isAskedOfBothWhereTwoOfOursHaveWordsOfOne() {
      LibraryFolder library =
          library(concept("a", "glass", "ice glass"), concept("b", "glass", "crackle glass"));
      AatResult result = apply(library);
      assertEquals(List.of(), result.links());
      assertEquals(
          List.of(
              "the same concept there has words of crackle glass too",
              "the same concept there has words of ice glass too"),
          result.questions().stream().map(Question::words).toList());
      apply(library, "b=300206380", "a=narrow:300206380");
      assertEquals(one(Kind.EXACT_MATCH, "300206380"), get(library, "b").matches());
      assertEquals(one(Kind.NARROW_MATCH, "300206380"), get(library, "a").matches());
    }

    @Test
    void isAskedWhereAnotherOfOursIsLinkedThereAlready() {
      LibraryFolder library =
          library(
              concept("a", "glass", "ice glass"),
              matching(
                  concept("b", "glass", "frosty ware"),
                  new Match(Kind.EXACT_MATCH, "https://vocab.getty.edu/aat/300206380")));
      AatResult result = apply(library);
      assertEquals(1, result.questions().size());
      assertEquals(1, result.there().size());
    }

    @Test
    void isNotAskedAgainOfWhatIsToHaveNoLink() {
      LibraryFolder library = library(concept("c", "glass", "green glass"));
      assertEquals(List.of(), plan(library, "c=none").questions());
    }
  }

  @Nested
  class ALinkThatIsThere {
    @Test
    void isNeverDoubledWhateverItsFormAndKind() {
      for (String uri :
          List.of(
              "http://vocab.getty.edu/aat/300206355",
              "https://vocab.getty.edu/aat/300206355/",
              "http://vocab.getty.edu/page/aat/300206355")) {
        LibraryFolder library =
            Vocabularies.of(
                folder.resolve(Integer.toString(uri.hashCode())),
                List.of(facet("glass")),
                matching(concept("c", "glass", "cut glass"), new Match(Kind.BROAD_MATCH, uri)));
        assertTrue(plan(library).changesNothing(), uri);
        assertTrue(plan(library, "c=300206355").changesNothing(), uri);
      }
    }
  }

  @Nested
  class AnAnswer {
    private void isRefused(LibraryFolder library, String answer, String said) {
      assertEquals(
          said, assertThrows(ChoiceException.class, () -> plan(library, answer)).getMessage());
    }

    @Test
    void thatNamesNothingOfTheLibraryOrTheTableIsRefused() {
      LibraryFolder library = library(concept("c", "glass", "green glass", "bottle glass"));
      isRefused(library, "d=300264532", "d=300264532: the library has no concept \"d\"");
      isRefused(library, "c=300999999", "c=300999999: 300999999 is not in the table");
      isRefused(
          library,
          "c=green",
          "c=green: \"green\" is no number of the thesaurus, such as 300010175");
      isRefused(
          library,
          "c=near:300264532",
          "c=near:300264532: before the number stands exact, close, broad, narrow or related");
    }
  }

  /** The one link of the starter is there; the other word in common is of clay, not of glass. */
  @Test
  void ofTheDemoOnlyTrailIsLeftToAskAbout() throws IOException {
    LibraryFolder demo = DemoLibrary.copyTo(folder.resolve("demo"));
    AatResult result = apply(demo);
    assertEquals(List.<Link>of(), result.links());
    assertEquals(List.of("gadroon"), result.there().stream().map(AatResult.There::id).toList());
    assertEquals(List.of("trail"), result.questions().stream().map(Question::id).toList());
    assertEquals("“trailing” is preferred on neither side", result.questions().get(0).words());
    assertEquals(138, result.without());
    assertEquals(AatTerms.LICENCE_NOTICE, result.licence());
  }
}
