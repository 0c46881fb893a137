package merese.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.FileTime;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import merese.model.Edition;
import merese.model.Note;
import merese.model.Work;
import merese.store.LibraryFolder;
import merese.store.Stored;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class CheckCommandTest {
  @TempDir private Path folder;
  private Path library;

  @BeforeEach
  void makeALibrary() {
    library = new Shelves(folder).of("rings").resolve("library");
  }

  private Ran check() {
    return Ran.in(library.getParent(), Map.of("COLUMNS", "100"), "check");
  }

  private void change(String file, String old, String with) throws IOException {
    Path path = library.resolve(file);
    String text = Files.readString(path);
    assertTrue(text.contains(old), text);
    Files.writeString(path, text.replace(old, with));
  }

  private static final String HOLDINGS =
      "8 works, 9 editions, 12 notes, 140 concepts and 1 object: ";

  @Test
  void aSoundLibraryIsCountedAndDone() {
    assertEquals(new Ran(0, HOLDINGS + "nothing wrong found.\n", ""), check());
  }

  @Nested
  class AnError {
    @Test
    void isNamedWithItsPlaceAndFailsTheCommand() throws IOException {
      change("works/dunlavin-1990.json", "\"title\"", "\"titel\"");
      Ran ran = check();
      assertEquals(1, ran.code());
      String first = ran.out().lines().findFirst().orElse("");
      assertTrue(first.startsWith("library/works/dunlavin-1990.json:1:1: "), first);
      assertTrue(ran.out().contains("7 works, 8 editions"), ran.out());
      assertEquals("", ran.err());
    }

    @Test
    void inTheVocabularyIsFoundWhereTheConceptStands() throws IOException {
      change(
          "vocabulary/ring.json",
          "\"prefLabel\": \"bladed ring\",",
          "\"prefLabel\": \"bladed ring\",\n      \"hiddenLabels\": [\n        \"bladed ring\"\n"
              + "      ],");
      long line =
          Files.readString(library.resolve("vocabulary/ring.json"))
              .lines()
              .takeWhile(l -> !l.contains("\"id\": \"ring-bladed\""))
              .count();
      assertEquals(
          List.of(
              "library/vocabulary/ring.json:"
                  + (line + 1)
                  + ":13: \"bladed ring\" (en) is both prefLabel and hiddenLabel of ring-bladed;"
                  + " keep it as one of the two",
              HOLDINGS + "1 error."),
          check().out().lines().toList());
    }

    @Test
    void ofAVocabularyInPiecesIsNotFollowedByGuesses() throws IOException {
      change("vocabulary/knop.json", "\"headNoun\"", "headNoun");
      String said = check().out();
      assertTrue(said.startsWith("library/vocabulary/knop.json:"), said);
      assertTrue(said.lines().noneMatch(l -> l.contains("vocabulary/neck")), said);
    }

    @Test
    void inTheSettingsIsOneOfTheProblems() throws IOException {
      change("library.json", "{", "[");
      Ran ran = check();
      assertEquals(1, ran.code());
      assertTrue(ran.out().startsWith("library/library.json:"), ran.out());
    }
  }

  @Nested
  class ACorrection {
    @Test
    void ofAnEditionThatIsNotThereIsAnError() throws IOException {
      change(
          "works/tressick-1954.json",
          "\"stance\": \"names\"",
          "\"stance\": \"corrects\", \"corrects\": {\"edition\": \"nobody-1900\"}");
      Ran ran = check();
      assertEquals(1, ran.code());
      assertTrue(ran.out().contains("nobody-1900"), ran.out());
      assertTrue(ran.out().contains("corrects.edition"), ran.out());
    }

    @Test
    void bySomethingThatDoesNotCorrectIsAnError() throws IOException {
      change(
          "works/tressick-1954.json",
          "\"stance\": \"names\"",
          "\"stance\": \"names\", \"corrects\": {\"edition\": \"tressick-1954\"}");
      Ran ran = check();
      assertEquals(1, ran.code());
      assertTrue(ran.out().contains("belongs to a place with stance \"corrects\""), ran.out());
    }
  }

  @Nested
  class AWarning {
    @Test
    void ofAPlateThatIsRecordedAsTextDoesNotFail() throws IOException {
      change("works/tressick-1954.json", "\"locator\": \"p. 88\"", "\"locator\": \"pl. 88\"");
      Ran ran = check();
      assertEquals(0, ran.code());
      String first = ran.out().lines().findFirst().orElse("");
      assertTrue(first.startsWith("library/works/tressick-1954.json:"), first);
      assertTrue(
          first.contains(": warning: tressick-1954, n1: \"pl. 88\" usually is a picture"), first);
      assertTrue(ran.out().endsWith(HOLDINGS + "1 warning.\n"), ran.out());
    }

    @Test
    void isNotGivenForATextThatSaysWhatAPlateDoesNotShow() throws IOException {
      change("works/haskeld-1983.json", "\"locator\": \"p. 12\"", "\"locator\": \"pl. 12\"");
      assertEquals(HOLDINGS + "nothing wrong found.\n", check().out());
    }

    @Test
    void ofAPageBreakWithoutItsPagesNamesTheConvention() throws IOException {
      change(
          "works/tressick-1954.json",
          "\"id\": \"n1\",",
          "\"id\": \"n1\", \"quotation\": \"a ring | with an edge\",");
      Ran ran = check();
      assertEquals(0, ran.code());
      String first = ran.out().lines().findFirst().orElse("");
      assertTrue(
          first.contains(
              "warning: tressick-1954, n1: in the quotation a page break is marked, and no place in"
                  + " words names 2 pages"),
          first);
      assertTrue(ran.out().contains("\"pp. 41–42\""), ran.out());
    }

    @Test
    void isNotGivenForABarThatTheSourcePrints() throws IOException {
      change(
          "works/tressick-1954.json",
          "\"id\": \"n1\",",
          "\"id\": \"n1\", \"quotation\": \"a ring || with an edge\",");
      assertEquals(HOLDINGS + "nothing wrong found.\n", check().out());
    }

    @Test
    void ofTwoPreferencesForOneConceptSaysWhichCounts() throws IOException {
      change(
          "mine.json",
          "\"preferences\": [",
          "\"preferences\": [{\"concept\": \"ring-bladed\", \"label\": \"blade\"},");
      String first = check().out().lines().findFirst().orElse("");
      assertTrue(
          first.contains("two preferences for ring-bladed, and the first one counts"), first);
    }

    @Test
    void ofAPhotographThatIsNotThereComesOnlyWhereThereIsAFolderOfPictures() throws IOException {
      change(
          "objects/d-1.json",
          "\"title\"",
          "\"photographs\": [{\"id\": \"p1\", \"file\": \"d-1.jpg\"}], \"title\"");
      assertTrue(check().out().endsWith("nothing wrong found.\n"));
      Files.createDirectory(library.resolve("pictures"));
      assertTrue(check().out().contains("there is no file \"d-1.jpg\" in pictures"));
      Files.createFile(library.resolve("pictures/d-1.jpg"));
      assertTrue(check().out().endsWith("nothing wrong found.\n"));
    }

    /** Whole families of photographs may be kept elsewhere. */
    @Test
    void ofAPhotographOfAPieceComesOnlyWhereItsFolderIsThere() throws IOException {
      change(
          "objects/d-1.json",
          "\"title\"",
          "\"photographs\": [{\"id\": \"p1\", \"file\": \"rings/d-1/front.jpg\"}], \"title\"");
      Files.createDirectories(library.resolve("pictures/rings/d-2"));
      assertTrue(check().out().endsWith("nothing wrong found.\n"));
      Files.createDirectory(library.resolve("pictures/rings/d-1"));
      assertTrue(check().out().contains("there is no file \"rings/d-1/front.jpg\" in pictures"));
    }
  }

  @Nested
  class Fixing {
    private Ran fix(String... more) {
      String[] words = new String[2 + more.length];
      words[0] = "check";
      words[1] = "--fix";
      System.arraycopy(more, 0, words, 2, more.length);
      return Ran.in(library.getParent(), Map.of("COLUMNS", "100"), words);
    }

    @Test
    void keepsOneOfWhatStandsTwiceAndSaysSo() throws IOException {
      String check = "{\"concept\": \"ring-wavy\", \"method\": \"read\", \"result\": \"none\"}";
      change(
          "works/dunlavin-1990.json",
          "\"editions\": [",
          "\"alternateTitles\": [\"A\", \"A\"], \"editions\": [");
      change(
          "works/tressick-1954.json",
          "\"notes\": [",
          "\"checks\": [" + check + ", " + check + "], \"notes\": [");
      assertTrue(check().out().endsWith(HOLDINGS + "2 warnings.\n"), check().out());
      Ran ran = fix();
      assertEquals(
          List.of(
              "fixed: library/works/dunlavin-1990.json: the other title \"A\" stood there twice;"
                  + " one of them is kept",
              "fixed: library/works/tressick-1954.json: tressick-1954: the check for ring-wavy stood"
                  + " there twice; one of them is kept",
              HOLDINGS + "nothing wrong found."),
          ran.out().lines().toList());
      assertEquals(
          "There is nothing that could be fixed safely.\n" + HOLDINGS + "nothing wrong found.\n",
          fix().out());
    }

    @Test
    void keepsOneOfTwoNotesThatAreAlikeInAllButTheirIds() throws IOException {
      Path file = library.resolve("works/tressick-1954.json");
      LibraryFolder folder = LibraryFolder.open(library);
      Stored<Work> stored = folder.readWork(file);
      Edition edition = stored.value().editions().get(0);
      List<Note> notes = new ArrayList<>(edition.notes());
      notes.add(notes.get(0).withId("again"));
      folder.save(stored, stored.value().withEditions(List.of(edition.withNotes(notes))));
      assertTrue(check().out().contains("this note says just what"), check().out());
      assertTrue(fix().out().contains("tressick-1954: the note again said word for word what"));
      assertEquals(edition.notes(), folder.readWork(file).value().editions().get(0).notes());
    }

    @Test
    void leavesATermAsItIsPrinted() throws IOException {
      change("works/tressick-1954.json", "\"cut rings\"", "\" cut  rings \"");
      String before = Files.readString(library.resolve("works/tressick-1954.json"));
      fix();
      assertEquals(before, Files.readString(library.resolve("works/tressick-1954.json")));
    }

    @Test
    void takesAwayWhatAKilledSaveHasLeftButNothingOfOthers() throws IOException {
      // no system gives a process so high a number: Linux stops at 2^22 (proc(5))
      Path left = library.resolve("works/.quenby.json.2000000000-k1.tmp");
      Path fresh = library.resolve("works/.quenby.json.2000000000-k2.tmp");
      Path others = library.resolve("works/.swap.tmp");
      for (Path path : List.of(left, fresh, others)) {
        Files.writeString(path, "{");
        if (!path.equals(fresh)) {
          Files.setLastModifiedTime(path, FileTime.from(Instant.parse("2020-01-01T00:00:00Z")));
        }
      }
      assertTrue(check().out().contains(left.getFileName() + ": warning: a save that was killed"));
      assertTrue(fix().out().startsWith("fixed: library/works/" + left.getFileName() + ": "));
      assertFalse(Files.exists(left));
      assertTrue(Files.exists(fresh));
      assertTrue(Files.exists(others));
    }

    @Test
    void isPrintedAsJsonWithWhatRemains() throws IOException {
      JsonNode json = new ObjectMapper().readTree(fix("--json").out());
      assertEquals(0, json.path("mended").size());
      assertEquals(8, json.path("check").path("holdings").path("works").asInt());
    }
  }

  @Test
  void twoLettersThatChangedPlacesAreASlip() throws IOException {
    String note =
        "{\"id\": \"?\", \"namings\": [{\"printed\": \"bladed ?\"}], \"places\": [{\"locator\": \"p. 3\","
            + " \"stance\": \"names\", \"medium\": \"text\"}]}, ";
    change(
        "works/tressick-1954.json",
        "\"notes\": [",
        "\"notes\": [" + note.replace("?", "rnig") + note.replace("?", "ring"));
    assertTrue(
        check().out().contains("\"bladed ring\" is one letter from \"bladed rnig\""),
        check().out());
  }

  @Test
  void aPictureThatIsALinkOutOfTheLibraryIsReported() throws IOException {
    Path pictures = Files.createDirectories(library.resolve("pictures"));
    Path outside = Files.writeString(folder.resolve("outside.jpg"), "x");
    Files.createSymbolicLink(pictures.resolve("link.jpg"), outside);
    change(
        "works/tressick-1954.json",
        "\"locator\": \"p. 88\"",
        "\"photo\": \"link.jpg\", \"locator\": \"p. 88\"");
    assertTrue(
        check().out().contains("\"link.jpg\" is a symbolic link, which is not followed"),
        check().out());
  }

  @Test
  void theSameIsPrintedAsJson() throws IOException {
    change("works/tressick-1954.json", "\"locator\": \"p. 88\"", "\"locator\": \"pl. 88\"");
    Ran ran = Ran.in(library.getParent(), Map.of(), "check", "--json");
    JsonNode problem = new ObjectMapper().readTree(ran.out()).path("problems").path(0);
    assertEquals("library/works/tressick-1954.json", problem.path("file").asText());
    assertEquals("WARNING", problem.path("severity").asText());
  }
}
