package merese.desk;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.net.InetAddress;
import java.net.NetworkInterface;
import java.net.Socket;
import java.net.SocketException;
import java.net.http.HttpRequest;
import java.net.http.HttpRequest.BodyPublishers;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Collections;
import java.util.List;
import merese.store.History;
import org.jsoup.nodes.Element;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * Who may ask: the cases are those of the OWASP cheat sheets on cross-site request forgery and on
 * DNS rebinding, from memory.
 */
class GateTest {
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

  @Test
  void listensToThisMachineAlone() throws Exception {
    assertEquals(200, desk.get("/").status());
    for (NetworkInterface each : Collections.list(NetworkInterface.getNetworkInterfaces())) {
      for (InetAddress address : Collections.list(each.getInetAddresses())) {
        if (!address.isLoopbackAddress()) {
          assertFalse(isOpen(address), "open at " + address);
        }
      }
    }
  }

  private boolean isOpen(InetAddress address) {
    try (Socket socket = new Socket(address, desk.port())) {
      return socket.isConnected();
    } catch (IOException e) {
      return false;
    }
  }

  @ParameterizedTest
  @ValueSource(strings = {"glass.example", "127.0.0.1", "localhost:1", "127.0.0.1.example:PORT"})
  void aNameThatIsNotItsOwnIsRefused(String host) throws Exception {
    String named = host.replace("PORT", Integer.toString(desk.port()));
    String answer = raw("GET / HTTP/1.1\r\nHost: " + named + "\r\nConnection: close\r\n\r\n");
    assertTrue(answer.startsWith("HTTP/1.1 403"), answer);
    assertFalse(answer.contains("Lantern Street"), answer);
  }

  @Test
  void itsOwnNamesAreTaken() throws Exception {
    for (String host : List.of("127.0.0.1", "localhost", "[::1]")) {
      String answer =
          raw(
              "GET / HTTP/1.1\r\nHost: "
                  + host
                  + ":"
                  + desk.port()
                  + "\r\nConnection: close\r\n\r\n");
      assertTrue(answer.startsWith("HTTP/1.1 200"), answer);
    }
  }

  @ParameterizedTest
  @ValueSource(
      strings = {"http://glass.example", "null", "https://127.0.0.1:PORT", "http://localhost"})
  void anotherOriginIsRefusedEvenWithTheToken(String origin) throws Exception {
    HttpRequest request =
        undo(desk.token())
            .header("Origin", origin.replace("PORT", Integer.toString(desk.port())))
            .build();
    assertEquals(403, desk.send(request).status());
    assertNothingChanged();
  }

  @Test
  void aPageOfAnotherSiteIsRefusedEvenForReading() throws Exception {
    for (String site : List.of("cross-site", "same-site")) {
      HttpRequest request =
          HttpRequest.newBuilder(desk.uri("/?term=ring&as=json"))
              .header("Sec-Fetch-Site", site)
              .header("Sec-Fetch-Mode", "no-cors")
              .build();
      assertEquals(403, desk.send(request).status());
    }
  }

  @ParameterizedTest
  @ValueSource(strings = {"", "0123456789abcdef", "TOKEN0"})
  void aChangeWithoutTheTokenIsRefused(String token) throws Exception {
    String given = token.replace("TOKEN", desk.token());
    assertEquals(403, desk.send(undo(given).build()).status());
    assertNothingChanged();
  }

  @ParameterizedTest
  @ValueSource(strings = {"PUT", "DELETE", "PATCH", "POST"})
  void noMethodChangesAnythingWithoutTheToken(String method) throws Exception {
    HttpRequest request =
        HttpRequest.newBuilder(desk.uri("/undo")).method(method, BodyPublishers.noBody()).build();
    assertEquals(403, desk.send(request).status());
    assertNothingChanged();
  }

  @Test
  void aFormOfAnEarlierStartIsShownAndOnePressSendsIt() throws Exception {
    String typed = "A \"ring\" <b>&</b>";
    String labels = "new one\nnew other";
    String body =
        "token=0123&facet=ring&definition="
            + RunningDesk.encoded(typed)
            + "&alternative="
            + RunningDesk.encoded(labels)
            + "&id=ring-new&label=new+ring+for+a+test";
    HttpRequest.Builder sent =
        HttpRequest.newBuilder(desk.uri("/vocabulary"))
            .header("Content-Type", "application/x-www-form-urlencoded")
            .POST(BodyPublishers.ofString(body));
    String own = "http://127.0.0.1:" + desk.port();
    for (String origin : List.of("http://glass.example", "null")) {
      RunningDesk.Answer foreign = desk.send(sent.copy().header("Origin", origin).build());
      assertEquals(403, foreign.status());
      assertFalse(foreign.text().contains("<form"), foreign.text());
    }
    assertFalse(desk.send(sent.copy().build()).text().contains("<form"));

    RunningDesk.Answer again = desk.send(sent.copy().header("Origin", own).build());
    assertEquals(403, again.status());
    assertFalse(again.text().contains("<b>&"), "it is escaped");
    assertNothingChanged();
    Element form = again.page().selectFirst("form#again");
    assertEquals("/vocabulary", form.attr("action"));
    assertEquals(desk.token(), form.selectFirst("[name=token]").val());
    assertEquals(typed, form.selectFirst("[name=definition]").val());
    assertEquals(labels, form.selectFirst("[name=alternative]").val());
    assertTrue(form.text().contains("new ring for a test"), form.text());

    StringBuilder pressed = new StringBuilder();
    for (Element field : form.select("input")) {
      pressed.append(pressed.isEmpty() ? "" : "&").append(field.attr("name")).append('=');
      pressed.append(RunningDesk.encoded(field.val()));
    }
    HttpRequest press =
        HttpRequest.newBuilder(desk.uri(form.attr("action")))
            .header("Content-Type", "application/x-www-form-urlencoded")
            .header("Origin", own)
            .POST(BodyPublishers.ofString(pressed.toString()))
            .build();
    assertEquals(303, desk.send(press).status());
    assertEquals(1, History.of(desk.library()).lines().size());
  }

  @Test
  void aFileOfAnEarlierStartIsNamedAndNotKept() throws Exception {
    String body =
        "--x\r\nContent-Disposition: form-data; name=\"term\"\r\n\r\nwrythen\r\n--x\r\n"
            + "Content-Disposition: form-data; name=\"photo\"; filename=\"a.jpg\"\r\n"
            + "Content-Type: image/jpeg\r\n\r\nletters\r\n--x--\r\n";
    HttpRequest sent =
        HttpRequest.newBuilder(desk.uri("/note"))
            .header("Content-Type", "multipart/form-data; boundary=x")
            .header("Origin", "http://127.0.0.1:" + desk.port())
            .POST(BodyPublishers.ofString(body))
            .build();
    RunningDesk.Answer again = desk.send(sent);
    assertEquals(403, again.status());
    assertEquals("wrythen", again.page().selectFirst("#again [name=term]").val());
    assertEquals("multipart/form-data", again.page().selectFirst("#again").attr("enctype"));
    assertTrue(again.page().selectFirst(".wrong").text().contains("a.jpg"), again.text());
    assertFalse(again.text().contains("letters"), again.text());
    assertNothingChanged();
  }

  private HttpRequest.Builder undo(String token) {
    return HttpRequest.newBuilder(desk.uri("/undo"))
        .header("Content-Type", "application/x-www-form-urlencoded")
        .POST(BodyPublishers.ofString("token=" + token));
  }

  private void assertNothingChanged() {
    assertEquals(List.of(), History.of(desk.library()).lines());
  }

  @Test
  void everyAnswerSaysWhatABrowserMayLoadAndNothingOfAServer() throws Exception {
    String answer =
        raw(
            "GET /?term=ring HTTP/1.1\r\nHost: 127.0.0.1:"
                + desk.port()
                + "\r\nConnection: close\r\n\r\n");
    assertTrue(answer.contains("script-src 'self';"), answer);
    assertTrue(answer.contains("frame-ancestors 'none'"), answer);
    assertTrue(answer.contains("X-Content-Type-Options: nosniff"), answer);
    assertFalse(answer.contains("unsafe-"), answer);
    assertFalse(answer.contains("Server:"), answer);
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "/pictures/../library.json",
        "/pictures/..%2flibrary.json",
        "/pictures/..%2f..%2f..%2f..%2fetc%2fpasswd",
        "/pictures/%2e%2e/library.json",
        "/pictures/..%5clibrary.json",
        "/pictures/x.jpg%00.png",
        "/pictures//etc/passwd",
        "/pictures/C:%5cwindows%5cwin.ini",
        "/assets/x/..%2f..%2f..%2fmerese%2fcli%2fMain.class",
        "/assets/x/Main.class",
        "/shelf/..%2f..%2flibrary",
        "/vocabulary/..%2f..%2flibrary",
        "/pieces/..%2f..%2flibrary"
      })
  void noAddressLeadsToAFileOfItsOwn(String path) throws Exception {
    String answer =
        raw(
            "GET "
                + path
                + " HTTP/1.1\r\nHost: 127.0.0.1:"
                + desk.port()
                + "\r\nConnection: close\r\n\r\n");
    assertTrue(answer.startsWith("HTTP/1.1 4"), answer.lines().findFirst().orElse(""));
    assertFalse(answer.contains("\"format\""), answer);
    assertFalse(answer.contains("root:"), answer);
  }

  @Test
  void aPictureIsShownAndALinkOutOfTheFolderIsNot() throws Exception {
    Path pictures = Files.createDirectories(desk.library().path().resolve("pictures/x"));
    Files.write(pictures.resolve("a.png"), new byte[] {1, 2, 3});
    Files.writeString(home.resolve("secret.png"), "secret");
    Files.createSymbolicLink(pictures.resolve("b.png"), home.resolve("secret.png"));
    assertEquals(200, desk.get("/pictures/x/a.png").status());
    RunningDesk.Answer linked = desk.get("/pictures/x/b.png");
    assertEquals(404, linked.status());
    assertFalse(linked.text().contains("secret"), linked.text());
  }

  @Test
  void aGigabyteIsRefusedBeforeItIsRead() throws Exception {
    String answer =
        raw(
            "POST /undo HTTP/1.1\r\nHost: 127.0.0.1:"
                + desk.port()
                + "\r\nContent-Type: multipart/form-data; boundary=x\r\n"
                + "Content-Length: 1073741824\r\n\r\n--x\r\n");
    assertTrue(answer.startsWith("HTTP/1.1 413"), answer);
    assertEquals(200, desk.get("/").status());
  }

  /** The client does not say how much it will send, and does not stop. */
  @Test
  void aGigabyteInPiecesIsRefusedOnTheWay() throws Exception {
    try (Socket socket = new Socket(InetAddress.getLoopbackAddress(), desk.port())) {
      socket.setSoTimeout(30_000);
      OutputStream out = socket.getOutputStream();
      out.write(
          ascii(
              "POST /undo HTTP/1.1\r\nHost: 127.0.0.1:"
                  + desk.port()
                  + "\r\nContent-Type: multipart/form-data; boundary=x\r\n"
                  + "Transfer-Encoding: chunked\r\n\r\n"));
      byte[] head =
          ascii(
              "--x\r\nContent-Disposition: form-data; name=\"photo\"; filename=\"a.jpg\"\r\n\r\n");
      chunk(out, head);
      byte[] megabyte = new byte[1 << 20];
      int sent = 0;
      try {
        while (sent < 1024) {
          chunk(out, megabyte);
          sent++;
        }
      } catch (SocketException e) {
        // It hung up, which is what is wanted.
      }
      assertTrue(sent < 300, "it took " + sent + " MB");
    }
    assertEquals(200, desk.get("/").status());
  }

  private static void chunk(OutputStream out, byte[] bytes) throws IOException {
    out.write(ascii(Integer.toHexString(bytes.length) + "\r\n"));
    out.write(bytes);
    out.write(ascii("\r\n"));
  }

  /** Sends bytes as they are, which no client of good manners would. */
  private String raw(String request) throws IOException {
    try (Socket socket = new Socket(InetAddress.getLoopbackAddress(), desk.port())) {
      socket.setSoTimeout(30_000);
      socket.getOutputStream().write(ascii(request));
      InputStream in = socket.getInputStream();
      return new String(in.readAllBytes(), StandardCharsets.UTF_8);
    }
  }

  private static byte[] ascii(String text) {
    return text.getBytes(StandardCharsets.ISO_8859_1);
  }
}
