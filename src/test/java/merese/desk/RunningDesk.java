package merese.desk;

import static org.junit.jupiter.api.Assertions.assertEquals;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.Closeable;
import java.io.IOException;
import java.net.URI;
import java.net.URLEncoder;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import merese.store.LibraryFolder;
import merese.testing.DemoLibrary;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Document;

/** A desk that a test has started on any free port, and how it is asked. */
public final class RunningDesk implements Closeable {
  private static final Clock DAY =
      Clock.fixed(Instant.parse("2025-03-02T10:00:00Z"), ZoneOffset.UTC);

  private final LibraryFolder library;
  private final List<String> faults = new ArrayList<>();
  private final Desk desk;
  private final HttpClient client = HttpClient.newHttpClient();

  private RunningDesk(LibraryFolder library) {
    this.library = library;
    this.desk = Desk.start(new DeskSettings(library, 0, DAY, "V", faults::add));
  }

  /** On a copy of the demo library in a folder. */
  public static RunningDesk onDemo(Path folder) throws IOException {
    return new RunningDesk(DemoLibrary.copyTo(folder));
  }

  public static RunningDesk on(LibraryFolder library) {
    return new RunningDesk(library);
  }

  public LibraryFolder library() {
    return library;
  }

  /** With a slash at its end. */
  public String address() {
    return desk.address();
  }

  public int port() {
    return desk.port();
  }

  /** Faults of the program that it has told of. */
  public List<String> faults() {
    return faults;
  }

  /**
   * What came back.
   *
   * @param address of the page that it was led on to, from the first slash
   */
  public record Answer(int status, String address, String text) {
    public Document page() {
      return Jsoup.parse(text);
    }

    public JsonNode json() throws IOException {
      return new ObjectMapper().readTree(text);
    }
  }

  /**
   * @param path from the first slash
   */
  public Answer get(String path) throws IOException, InterruptedException {
    return send(HttpRequest.newBuilder(uri(path)).build());
  }

  /**
   * Sends a form with its token, and follows to where that leads.
   *
   * @param fields names and values in turn
   */
  public Answer post(String path, String... fields) throws IOException, InterruptedException {
    StringBuilder body = new StringBuilder("token=").append(token());
    for (int i = 0; i < fields.length; i += 2) {
      body.append('&').append(encoded(fields[i])).append('=').append(encoded(fields[i + 1]));
    }
    Answer answer =
        send(
            HttpRequest.newBuilder(uri(path))
                .header("Content-Type", "application/x-www-form-urlencoded")
                .POST(HttpRequest.BodyPublishers.ofString(body.toString()))
                .build());
    if (answer.status() != 303) {
      return answer;
    }
    Answer next = get(answer.address());
    return new Answer(next.status(), answer.address(), next.text());
  }

  /**
   * Takes back what a page says was just done, as its button does: what is changed behind the
   * desk's back, it notices a second later only.
   */
  public void takeBack(Answer done) throws IOException, InterruptedException {
    String number = done.page().selectFirst(".done input[name=number]").val();
    Answer answer = post("/undo", "number", number);
    assertEquals(200, answer.status(), answer.text());
  }

  /** Sends what a test has made itself. */
  public Answer send(HttpRequest request) throws IOException, InterruptedException {
    HttpResponse<String> response =
        client.send(request, HttpResponse.BodyHandlers.ofString(StandardCharsets.UTF_8));
    String location = response.headers().firstValue("Location").orElse(request.uri().getRawPath());
    String address =
        location.startsWith("http") ? location.substring(desk.address().length() - 1) : location;
    return new Answer(response.statusCode(), address, response.body());
  }

  public URI uri(String path) {
    return URI.create(desk.address() + path.substring(1));
  }

  public String token() throws IOException, InterruptedException {
    return get("/").page().selectFirst("meta[name=merese-token]").attr("content");
  }

  public static String encoded(String text) {
    return URLEncoder.encode(text, StandardCharsets.UTF_8);
  }

  @Override
  public void close() {
    desk.close();
  }
}
