package merese.desk;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayOutputStream;
import java.io.DataOutputStream;
import java.io.IOException;
import java.net.http.HttpRequest;
import java.net.http.HttpRequest.BodyPublishers;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import java.util.zip.CRC32;
import java.util.zip.DeflaterOutputStream;
import merese.desk.RunningDesk.Answer;
import merese.model.Edition;
import merese.model.Work;
import merese.store.LibraryFile;
import merese.store.LibraryFolder;
import merese.testing.HostileLibrary;
import merese.testing.SmallLibrary;
import org.jsoup.nodes.Attribute;
import org.jsoup.nodes.Document;
import org.jsoup.nodes.Element;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What somebody could put into a library, a form or an address to make the desk do their work. */
class DeskAttacksTest {
  private static final String SCRIPT = "\"'><script>alert(1)</script><img src=x onerror=alert(1)>";

  /** Pages and the parts of their addresses that take text. */
  private static final List<String> ADDRESSES =
      List.of(
          "/?term=*",
          "/?concept=*",
          "/?term=ring&place=*",
          "/?term=ring&kind=*",
          "/?term=ring&from=*",
          "/find?words=*",
          "/find?words=ring&limit=*",
          "/suggest?term=*",
          "/suggest?source=*",
          "/concordance?term=*",
          "/concordance?term=ring&facet=*",
          "/timeline?term=*",
          "/timeline?concept=*",
          "/timeline?term=ring&year=*",
          "/words?term=*",
          "/witnesses?term=*",
          "/witnesses?concept=*",
          "/shelf?by=*",
          "/shelf?find=*",
          "/shelf/*",
          "/add?edition-of=*",
          "/add?copy-of=*",
          "/add?kind=*",
          "/edit/source/*",
          "/edit/piece/*",
          "/edit/vocabulary/*",
          "/edit/*/x",
          "/remove?source=*",
          "/vocabulary?find=*",
          "/vocabulary?facet=*",
          "/vocabulary/*",
          "/pieces/*",
          "/identify?object=*",
          "/identify?ridges=*",
          "/note?source=*",
          "/note?source=quenby-1926&at=*",
          "/looked?source=*",
          "/changes?from=*",
          "/reading-list?term=*",
          "/reading-list?concept=*",
          "/reading-list?concept=ring-bladed&style=*",
          "/reading-list?concept=ring-bladed&out=*",
          "/reading-list?script=*",
          "/reading-list/save?as=*&concept=ring-bladed",
          "/pull?term=*",
          "/pull?concept=*",
          "/show?concept=*",
          "/show?concept=ring-bladed&at=*",
          "/pictures/*",
          "/assets/x/*");

  @TempDir private Path home;

  @Test
  void aLibraryFullOfScriptsIsShownAsText() throws Exception {
    SmallLibrary hostile = HostileLibrary.make();
    LibraryFolder library = hostile.write(home);
    try (RunningDesk desk = RunningDesk.on(library)) {
      List<String> pages =
          new ArrayList<>(
              List.of(
                  "/",
                  "/?concept=ring-bladed",
                  "/shelf",
                  "/shelf?by=kind",
                  "/vocabulary",
                  "/pieces",
                  "/changes",
                  "/check",
                  "/concordance?term=ring",
                  "/words?term=ring",
                  "/timeline?concept=ring-bladed",
                  "/witnesses?concept=ring-bladed",
                  "/reading-list?concept=ring-bladed",
                  "/pull?concept=ring-bladed",
                  "/show?concept=ring-bladed"));
      for (Work work : hostile.works()) {
        for (Edition edition : work.editions()) {
          String key = RunningDesk.encoded(edition.key()).replace("+", "%20");
          pages.add("/shelf/" + key);
          pages.add("/note?source=" + key);
          pages.add("/edit/source/" + key);
        }
      }
      for (String page : pages) {
        Answer answer = desk.get(page);
        assertTrue(answer.status() < 500, page + " gave " + answer.status());
        assertEquals(List.of(), faults(answer.page()), page);
      }
      assertEquals(List.of(), desk.faults());
    }
  }

  @Test
  void aScriptInEveryFieldOfANoteIsShownAsText() throws Exception {
    try (RunningDesk desk = RunningDesk.onDemo(home)) {
      Document form = desk.get("/note?source=haskeld-1983&at=p.+90").page();
      List<String> fields = new ArrayList<>();
      for (Element field : form.select("form.note-form [name]")) {
        String name = field.attr("name");
        boolean text =
            field.is("textarea")
                || field.is("input")
                    && !Set.of("radio", "checkbox", "file", "hidden").contains(field.attr("type"));
        if (text && !Set.of("source", "at", "as", "corrects", "texts", "plates").contains(name)) {
          fields.addAll(List.of(name, SCRIPT));
        }
      }
      assertTrue(fields.size() > 20, "fields of the form: " + fields);
      fields.addAll(List.of("source", "haskeld-1983", "at", "p. 90", "does", "names"));
      Answer answer = desk.post("/note", fields.toArray(String[]::new));
      assertTrue(answer.status() == 200 || answer.status() == 422, "status " + answer.status());
      assertEquals(List.of(), faults(answer.page()));
      for (String page :
          List.of("/shelf/haskeld-1983", "/note?source=haskeld-1983&at=p.+90", "/changes", "/")) {
        assertEquals(List.of(), faults(desk.get(page).page()), page);
      }
      assertEquals(List.of(), desk.faults());
    }
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "../../../../../../etc/passwd",
        "..\\..\\..\\library.json",
        "/etc/passwd",
        "../library",
        "x\u0000.json",
        "%2e%2e%2flibrary.json",
        "file:///etc/passwd",
        "\"'><script>alert(1)</script><img src=x onerror=alert(1)>"
      })
  void noPartOfAnAddressLeadsAstray(String text) throws Exception {
    try (RunningDesk desk = RunningDesk.onDemo(home)) {
      Set<String> before = tree();
      for (String address : ADDRESSES) {
        Answer answer =
            desk.get(address.replace("*", RunningDesk.encoded(text).replace("+", "%20")));
        assertTrue(answer.status() < 500, address + " gave " + answer.status());
        assertFalse(answer.text().contains("root:"), address);
        assertFalse(answer.text().contains("\"dateProfile\""), address);
        assertEquals(List.of(), faults(answer.page()), address);
      }
      for (String action : actions(desk)) {
        List<String> fields = new ArrayList<>();
        for (String name :
            List.of(
                "source", "at", "term", "ref", "file", "name", "key", "concept", "id", "text",
                "facet", "number", "back", "object", "held", "place", "to", "label")) {
          fields.addAll(List.of(name, text));
        }
        Answer answer = desk.post(action, fields.toArray(String[]::new));
        assertTrue(answer.status() < 500, action + " gave " + answer.status());
        assertFalse(answer.text().contains("root:"), action);
        assertEquals(List.of(), faults(answer.page()), action);
      }
      assertEquals(before, tree(), "no file came or went");
      assertEquals(List.of(), desk.faults());
    }
  }

  /** Where the forms of the pages lead to that change something. */
  private static Set<String> actions(RunningDesk desk) throws Exception {
    Set<String> actions = new TreeSet<>();
    for (String page :
        List.of(
            "/note?source=haskeld-1983",
            "/looked?source=haskeld-1983",
            "/changes",
            "/check",
            "/add",
            "/edit/source/haskeld-1983",
            "/remove?source=haskeld-1983",
            "/vocabulary",
            "/vocabulary/ring-bladed",
            "/pieces",
            "/pieces/d-3")) {
      for (Element form : desk.get(page).page().select("form[method=post]")) {
        actions.add(form.attr("action"));
      }
    }
    assertTrue(actions.size() > 6, "forms: " + actions);
    return actions;
  }

  /**
   * All files of the home folder but those that questions make: the index, and marks of writing.
   */
  private Set<String> tree() throws IOException {
    try (Stream<Path> files = Files.walk(home)) {
      Set<String> names = new TreeSet<>();
      for (Path file : files.toList()) {
        String name = home.relativize(file).toString();
        if (!name.startsWith("index") && !name.contains("/.")) {
          names.add(name);
        }
      }
      return names;
    }
  }

  /** 50,000 by 50,000 pixels in a few hundred kilobytes: ten gigabytes where it is unpacked. */
  @Test
  void aPictureThatWouldFillTheMemoryIsRefused() throws Exception {
    byte[] bomb = emptyPng(50_000);
    assertTrue(bomb.length < 1 << 20, "it is small: " + bomb.length);
    try (RunningDesk desk = RunningDesk.onDemo(home)) {
      assertRefused(desk, bomb, "bomb.png", "million");
    }
  }

  @Test
  void whatIsNoPictureIsRefusedWhateverItIsCalled() throws Exception {
    String drawing = "<svg xmlns=\"http://www.w3.org/2000/svg\"><script>alert(1)</script></svg>";
    String page = "<html><script>alert(1)</script></html>";
    try (RunningDesk desk = RunningDesk.onDemo(home)) {
      assertRefused(desk, drawing.getBytes(StandardCharsets.UTF_8), "plate.jpg", "no picture");
      assertRefused(desk, page.getBytes(StandardCharsets.UTF_8), "../../../x.png", "no picture");
    }
  }

  private void assertRefused(RunningDesk desk, byte[] file, String name, String why)
      throws Exception {
    Set<String> before = tree();
    String token = desk.token();
    ByteArrayOutputStream body = new ByteArrayOutputStream();
    part(body, "token", token);
    part(body, "source", "haskeld-1983");
    part(body, "at", "pl. 3");
    part(body, "term", "bladed ring");
    part(body, "does", "photo");
    text(
        body,
        "--x\r\nContent-Disposition: form-data; name=\"photo\"; filename=\""
            + name
            + "\"\r\nContent-Type: image/png\r\n\r\n");
    body.write(file);
    text(body, "\r\n--x--\r\n");
    Answer answer =
        desk.send(
            HttpRequest.newBuilder(desk.uri("/note"))
                .header("Content-Type", "multipart/form-data; boundary=x")
                .POST(BodyPublishers.ofByteArray(body.toByteArray()))
                .build());
    assertEquals(422, answer.status());
    assertTrue(answer.page().text().contains(why), answer.page().text());
    assertEquals("bladed ring", answer.page().selectFirst("[name=term]").attr("value"));
    assertEquals(before, tree(), "nothing is kept of it");
    assertEquals(List.of(), faults(answer.page()));
    assertEquals(List.of(), desk.faults());
  }

  private static void part(ByteArrayOutputStream body, String name, String value)
      throws IOException {
    text(
        body,
        "--x\r\nContent-Disposition: form-data; name=\"" + name + "\"\r\n\r\n" + value + "\r\n");
  }

  private static void text(ByteArrayOutputStream body, String text) throws IOException {
    body.write(text.getBytes(StandardCharsets.UTF_8));
  }

  /** A PNG of one bit a pixel, all black, as its specification has it (ISO/IEC 15948). */
  private static byte[] emptyPng(int side) throws IOException {
    ByteArrayOutputStream png = new ByteArrayOutputStream();
    DataOutputStream out = new DataOutputStream(png);
    out.write(new byte[] {(byte) 0x89, 'P', 'N', 'G', '\r', '\n', 0x1A, '\n'});
    ByteArrayOutputStream head = new ByteArrayOutputStream();
    DataOutputStream header = new DataOutputStream(head);
    header.writeInt(side);
    header.writeInt(side);
    header.write(new byte[] {1, 0, 0, 0, 0});
    chunk(out, "IHDR", head.toByteArray());
    ByteArrayOutputStream packed = new ByteArrayOutputStream();
    try (DeflaterOutputStream rows = new DeflaterOutputStream(packed)) {
      byte[] row = new byte[1 + (side + 7) / 8];
      for (int i = 0; i < side; i++) {
        rows.write(row);
      }
    }
    chunk(out, "IDAT", packed.toByteArray());
    chunk(out, "IEND", new byte[0]);
    return png.toByteArray();
  }

  private static void chunk(DataOutputStream out, String type, byte[] data) throws IOException {
    byte[] name = type.getBytes(StandardCharsets.US_ASCII);
    CRC32 sum = new CRC32();
    sum.update(name);
    sum.update(data);
    out.writeInt(data.length);
    out.write(name);
    out.write(data);
    out.writeInt((int) sum.getValue());
  }

  /** Whatever in a page would run, or load from elsewhere. */
  private static List<String> faults(Document page) {
    List<String> faults = new ArrayList<>();
    for (Element element : page.getAllElements()) {
      boolean ours = element.attr("src").startsWith("/assets/");
      if (element.is("script") && (!ours || !element.data().isBlank())) {
        faults.add(element.outerHtml());
      }
      if (element.is("iframe, object, embed, base, style, meta[http-equiv=refresh]")) {
        faults.add(element.outerHtml());
      }
      for (Attribute attribute : element.attributes()) {
        String value = attribute.getValue().strip().toLowerCase(java.util.Locale.ROOT);
        boolean leads = Set.of("href", "src", "action", "formaction").contains(attribute.getKey());
        boolean outside = leads && !value.startsWith("/") && !value.startsWith("#");
        boolean harmless = value.startsWith("https://") || value.startsWith("http://");
        if (attribute.getKey().startsWith("on")
            || attribute.getKey().equals("style")
            || outside && !(element.is("a") && harmless) && !value.startsWith("?")) {
          faults.add(element.tagName() + " " + attribute);
        }
      }
    }
    return faults;
  }

  /** That the hostile library is there at all. */
  @Test
  void theHostileLibraryIsRead() throws Exception {
    LibraryFolder library = HostileLibrary.make().write(home);
    long works =
        library.scan().stream().filter(file -> file.kind() == LibraryFile.Kind.WORK).count();
    assertTrue(works > 20, works + " works");
  }
}
