package merese.desk;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.net.http.HttpRequest;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import merese.desk.RunningDesk.Answer;
import merese.model.Check;
import merese.model.Check.Method;
import merese.model.Check.Result;
import merese.model.Edition;
import merese.store.LibraryFolder;
import org.jsoup.nodes.Document;
import org.jsoup.nodes.Element;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class LookedPageTest {
  private static final String WORK = "works/quenby-neck-and-stopper.json";
  private static final String SOURCE = "quenby-1926";
  private static final int CHECKS = 4;

  @TempDir private Path home;
  private RunningDesk desk;

  @BeforeEach
  void start() throws IOException {
    desk = RunningDesk.onDemo(home);
  }

  @AfterEach
  void stop() {
    assertEquals(List.of(), desk.faults());
    desk.close();
  }

  /** As they are on the disk. */
  private List<Check> checks() {
    LibraryFolder library = LibraryFolder.open(desk.library().path());
    for (Edition edition : library.readWork(library.path().resolve(WORK)).value().editions()) {
      if (edition.key().equals(SOURCE)) {
        return edition.checks();
      }
    }
    throw new AssertionError(SOURCE);
  }

  private Check last() {
    return checks().get(checks().size() - 1);
  }

  private static String problem(Answer answer) {
    assertEquals(422, answer.status());
    return answer.page().selectFirst("#problem").text();
  }

  @Test
  void logsWhatWasLookedThroughAndCanBeTakenBack() throws Exception {
    Answer answer =
        desk.post(
            "/looked",
            "source",
            SOURCE,
            "extent",
            "pp. 38–60",
            "method",
            "read",
            "for",
            "bladed ring, ring-annulated",
            "by",
            "V",
            "copy",
            "quenby-1926-a",
            "scope",
            "necks");
    assertEquals(200, answer.status());
    assertEquals(CHECKS + 2, checks().size());
    Check bladed = checks().get(CHECKS);
    assertEquals("ring-bladed", bladed.concept());
    assertEquals("pp. 38–60", bladed.extent().orElseThrow().printed());
    assertEquals(Method.READ, bladed.method());
    assertEquals(Result.FOUND, bladed.result());
    assertEquals(Optional.of("quenby-1926-a"), bladed.copy());
    assertEquals("necks", bladed.scope().orElseThrow().words());
    assertEquals("ring-annulated", last().concept());
    Document page = answer.page();
    assertTrue(page.selectFirst("table.log tbody tr").text().contains("annulated ring"));
    desk.post("/undo", "number", page.selectFirst(".done input[name=number]").val());
    assertEquals(CHECKS, checks().size());
  }

  @Test
  void whatNoNoteSpeaksOfWasNotFound() throws Exception {
    desk.post(
        "/looked",
        "source",
        SOURCE,
        "extent",
        "pp. 200–201",
        "method",
        "leafed",
        "for",
        "bladed ring",
        "by",
        "V");
    assertEquals(Result.NONE, last().result());
    assertEquals(Method.LEAFED, last().method());
    desk.post(
        "/looked",
        "source",
        SOURCE,
        "method",
        "index-only",
        "for",
        "bladed ring",
        "by",
        "V",
        "list",
        "not-in-list");
    assertEquals(Result.NOT_IN_LIST, last().result());
    assertEquals(Optional.empty(), last().extent());
  }

  @Test
  void aSittingThatIsFinishedHasItsFormFilledIn() throws Exception {
    for (String term : List.of("bladed ring", "annulated ring")) {
      desk.post("/note", "source", SOURCE, "at", "p. 141", "term", term, "by", "V");
    }
    Answer taken =
        desk.post(
            "/note",
            "source",
            SOURCE,
            "at",
            "p. 142",
            "seen",
            "p. 141",
            "term",
            "blown ring",
            "by",
            "V");
    String finish = taken.page().selectFirst("#note-finish").attr("href");
    Document form = desk.get(finish).page();
    assertEquals(SOURCE, form.selectFirst("[name=source]").val());
    assertEquals("pp. 141–142", form.selectFirst("[name=extent]").val());
    assertEquals(
        "neck treatment", form.selectFirst("[name=for]").val()); // a blown ring is a false one
  }

  @Test
  void aWordOfSeveralMeaningsIsAskedFor() throws Exception {
    String[] fields = {
      "source", SOURCE, "method", "read", "for", "bladed ring, triple rings", "by", "V"
    };
    Answer asked = desk.post("/looked", fields);
    assertEquals(422, asked.status());
    assertEquals(CHECKS, checks().size());
    Element choice = asked.page().selectFirst(".choosing input");
    assertEquals("meaning:triple rings", choice.attr("name"));
    assertTrue(asked.page().select(".choosing [value='?']").isEmpty());
    assertTrue(asked.page().selectFirst("[name=method][value=read]").hasAttr("checked"));
    List<String> more = new java.util.ArrayList<>(List.of(fields));
    more.addAll(List.of("meaning:triple rings", "ring-annulated"));
    desk.post("/looked", more.toArray(String[]::new));
    assertEquals("ring-annulated", last().concept());
  }

  @Test
  void whatCannotBeLoggedIsSaidAtItsFieldWithNothingLost() throws Exception {
    String[][] wrong = {
      {"source", "no such book"},
      {"extent", "somewhere"},
      {"method", "smelled"},
      {"for", "no such word"},
      {"for", ""},
      {"by", ""},
    };
    for (String[] each : wrong) {
      String[] fields = {
        "source", SOURCE, "extent", "p. 3", "method", "read", "for", "bladed ring", "by", "V"
      };
      for (int i = 0; i < fields.length; i += 2) {
        fields[i + 1] = fields[i].equals(each[0]) ? each[1] : fields[i + 1];
      }
      Answer answer = desk.post("/looked", fields);
      String said = problem(answer);
      Element box = answer.page().selectFirst("#problem").parent();
      assertFalse(box.select("[name=" + each[0] + "]").isEmpty(), each[0] + ": " + said);
      if (!each[0].equals("extent")) {
        assertEquals("p. 3", answer.page().selectFirst("[name=extent]").val());
      }
      assertTrue(answer.page().selectFirst("form").hasAttr("data-refused"));
    }
    assertTrue(
        problem(
                desk.post(
                    "/looked",
                    "source",
                    SOURCE,
                    "method",
                    "read",
                    "for",
                    "bladed ring",
                    "by",
                    "V",
                    "copy",
                    "no-such-copy"))
            .contains("has no copy \"no-such-copy\""));
    assertEquals(CHECKS, checks().size());
  }

  @Test
  void theLogShowsAllThatTheAnswerHolds() throws Exception {
    String address = "/looked?source=" + SOURCE;
    Document page = desk.get(address).page();
    assertEquals(
        List.of(),
        AllShown.missing(desk.get(address + "&as=json").json(), page, Set.of("lines/result")));
    Document none = desk.get("/looked?source=quenby-1977").page();
    assertTrue(none.selectFirst(".empty").text().contains("Nobody has logged yet"));
    assertEquals(200, desk.get("/looked").status());
    assertEquals(422, desk.get("/looked?source=no+such+book").status());
  }

  @Test
  void withoutItsTokenNothingIsLogged() throws Exception {
    Answer answer =
        desk.send(
            HttpRequest.newBuilder(desk.uri("/looked"))
                .header("Content-Type", "application/x-www-form-urlencoded")
                .POST(
                    HttpRequest.BodyPublishers.ofString(
                        "source=" + SOURCE + "&method=read&for=bladed+ring&by=V"))
                .build());
    assertEquals(403, answer.status());
    assertEquals(CHECKS, checks().size());
  }
}
