package merese.desk;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.List;
import java.util.regex.Pattern;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

@DisplayName("What a page says to do")
class RemediesTest {
  /** A command of the terminal, or one of its options. */
  private static final Pattern TERMINAL =
      Pattern.compile(
          "merese (add|check|cite|coin|concept|edit|history|list|looked|merge|new|note|object"
              + "|prefer|pull|reading-list|remove|show|split|undo)\\b|(^|\\W)--[a-z]");

  private static final List<List<String>> REFUSED =
      List.of(
          List.of("/vocabulary", "label", "x", "definition", "X.", "broader", "zzyzx"),
          List.of("/vocabulary", "label", "x", "definition", "X.", "facet", "zzyzx"),
          List.of("/vocabulary", "label", "x", "definition", "X."),
          List.of("/vocabulary", "label", "x", "definition", "X.", "newFacet", "ring"),
          List.of("/vocabulary", "label", "bladed ring", "definition", "X.", "facet", "ring"),
          List.of("/vocabulary/ring-bladed/merge", "into", "zzyzx"),
          List.of("/vocabulary/ring-bladed/prefer", "label", "zzyzx"),
          List.of("/vocabulary/ring-bladed/look-alike", "other", "ring-applied"),
          List.of("/vocabulary/ring-bladed/coin", "label", "x", "object", "zzyzx"),
          List.of("/vocabulary/ring-bladed/rename", "label", "bladed ring", "id", "Ring X"),
          List.of("/vocabulary/ring-bladed/rename", "label", "plain ring", "id", "ring-bladed"),
          List.of("/pieces", "ref", "d-17", "title", "Again"),
          List.of("/pieces/d-17/evidence", "concept", "zzyzx"),
          List.of("/pieces/d-17/evidence", "concept", "ring-plain", "photo", "p99"),
          List.of("/add", "kind", "monograph", "title", "Necks", "year", "1931", "key", "A B"),
          List.of("/add", "kind", "monograph", "title", "Necks", "isbn", "978"),
          List.of("/note", "source", "quenby-1926", "at", "p. 3", "term", "x", "object", "zzyzx"),
          List.of("/note", "source", "zzyzx", "at", "p. 3", "term", "x"));

  private static final List<String> ASKED =
      List.of(
          "/reading-list?concept=ring-bladed&other=zzyzx",
          "/show?script=%5Bobject+zzyzx%5D",
          "/show?term=zzyzx",
          "/shelf/zzyzx",
          "/pieces/zzyzx",
          "/vocabulary/zzyzx",
          "/identify?object=zzyzx",
          "/edit/source/zzyzx");

  private static void assertOfTheDesk(String request, String words) {
    assertFalse(TERMINAL.matcher(words).find(), request + ": " + words);
  }

  @Test
  void isSaidInTheWordsOfTheDesk(@TempDir Path home) throws Exception {
    try (RunningDesk desk = RunningDesk.onDemo(home)) {
      for (List<String> request : REFUSED) {
        String[] fields = request.subList(1, request.size()).toArray(String[]::new);
        RunningDesk.Answer answer = desk.post(request.get(0), fields);
        assertEquals(422, answer.status(), request.toString());
        assertOfTheDesk(request.toString(), answer.page().selectFirst("main").text());
      }
      for (String address : ASKED) {
        RunningDesk.Answer answer = desk.get(address);
        assertTrue(answer.status() == 422 || answer.status() == 404, address + answer.status());
        assertOfTheDesk(address, answer.page().selectFirst("main").text());
      }
      assertOfTheDesk("/check", desk.get("/check").page().selectFirst("main").text());
      String all =
          desk.get("/reading-list").page().select("#styles option").eachAttr("value").toString();
      assertTrue(all.contains("apa") && all.length() > 5_000);
      String two =
          desk.get("/show?script=a%0A%5Bobject+zz%5D%0A%0A%5Bterm+zzyzx+q%5D")
              .page()
              .selectFirst("#problem")
              .wholeText();
      assertTrue(two.contains("line 2: ") && two.contains("line 4: "), two);
      assertEquals(List.of(), desk.faults());
    }
  }
}
