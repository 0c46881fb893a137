package merese.desk.web;

import gg.jte.TemplateEngine;
import gg.jte.output.Utf8ByteOutput;
import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.time.Clock;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.function.Function;
import merese.answer.json.AnswerJson;
import merese.desk.web.Frame.Tab;
import merese.shelf.Shelf;
import merese.shelf.Shortfall;
import merese.shelf.Watcher;
import merese.shelf.WritingShelf;
import merese.store.History;
import merese.store.HistoryEntry;
import merese.store.LibraryException;
import merese.store.LibraryFolder;

/** The desk as its pages know it: the library, and how a page is shown. Safe for many threads. */
public final class Site {
  /** The form field, and the part of an address, that names a change that was just made. */
  public static final String DONE = "done";

  private final LibraryFolder library;
  private final Clock clock;
  private final String by;
  private final Shelves shelves;
  private final TemplateEngine templates;
  private final Assets assets;
  private final String token;
  private final InLibrary inLibrary;

  Site(
      LibraryFolder library,
      Clock clock,
      String by,
      Shelves shelves,
      TemplateEngine templates,
      Assets assets,
      String token) {
    this.library = library;
    this.clock = clock;
    this.by = by;
    this.shelves = shelves;
    this.templates = templates;
    this.assets = assets;
    this.token = token;
    this.inLibrary = new InLibrary(library.path());
  }

  public LibraryFolder library() {
    return library;
  }

  /** In the time zone of whoever notes. */
  public Clock clock() {
    return clock;
  }

  /** Who notes, where a form does not say so. */
  public String by() {
    return by;
  }

  /** Asks a question of the library as it is now. */
  public <T> T ask(Function<Shelf, T> question) {
    return shelves.ask(question);
  }

  /** Asks a question that must be quick, of the library as it was a moment ago. */
  public <T> T glance(Function<Shelf, T> question) {
    return shelves.glance(question);
  }

  /** The next question looks at every file again, however short a time ago one did. */
  public void lookAgain() {
    shelves.changed();
  }

  /** Does something that writes; the shelf is closed afterwards. */
  public <T> T write(Function<WritingShelf, T> work) {
    try (WritingShelf shelf = WritingShelf.open(library, Watcher.NONE)) {
      return work.apply(shelf);
    }
  }

  /** The same for the browser, with a script or for reading by another program. */
  public static boolean wantsJson(Context request) {
    return "json".equals(request.queryParam("as"));
  }

  /** An answer as {@code --json} prints it. */
  public void json(Context request, Object answer) {
    StringWriter text = new StringWriter();
    try (PrintWriter out = new PrintWriter(text)) {
      AnswerJson.print(out, answer);
    }
    request.contentType("application/json; charset=utf-8").result(text.toString());
  }

  /**
   * Shows a page.
   *
   * @param template its file below src/main/jte, which takes a {@link Frame} and a model
   */
  public void show(Context request, Tab tab, String title, String template, Object model) {
    Utf8ByteOutput out = new Utf8ByteOutput();
    templates.render(template, Map.of("frame", frame(request, tab, title), "model", model), out);
    html(request, out);
  }

  /** Shows a part of a page, which a script puts into it. */
  public void part(Context request, String template, Object model) {
    Utf8ByteOutput out = new Utf8ByteOutput();
    templates.render(template, Map.of("token", token, "model", model), out);
    html(request, out);
  }

  private void html(Context request, Utf8ByteOutput out) {
    String page = inLibrary.page(new String(out.toByteArray(), StandardCharsets.UTF_8));
    request.contentType("text/html; charset=utf-8").result(page);
  }

  /** A message for whoever sits at the desk, where there is no page to say it. */
  String said(String message) {
    return inLibrary.words(Remedies.words(message));
  }

  /** The same page with what was wrong; nothing that was typed is lost. */
  public void refuse(Context request, Tab tab, String title, String template, Object model) {
    request.status(HttpStatus.UNPROCESSABLE_CONTENT);
    show(request, tab, title, template, model);
  }

  /**
   * Leads on to a page after a change, so that loading it again does not send the form again.
   *
   * @param change what the history calls the change, to be said on that page
   */
  public void leadOn(Context request, String address, OptionalInt change) {
    shelves.changed();
    String said =
        change.isEmpty()
            ? address
            : address + (address.contains("?") ? "&" : "?") + DONE + "=" + change.getAsInt();
    request.redirect(said, HttpStatus.SEE_OTHER);
  }

  /** Whether a picture is there; a library may name some that are kept elsewhere. */
  public boolean hasPicture(String file) {
    try {
      return Files.isRegularFile(library.picture(file));
    } catch (LibraryException e) {
      return false;
    }
  }

  /** Text as a part of an address, before or after its question mark; "/" stays as it is. */
  public static String encoded(String text) {
    return URLEncoder.encode(text, StandardCharsets.UTF_8).replace("+", "%20").replace("%2F", "/");
  }

  private Frame frame(Context request, Tab tab, String title) {
    List<String> lines = new ArrayList<>();
    Map<String, String> edits = new HashMap<>();
    String name =
        ask(
            shelf -> {
              for (Shortfall shortfall : shelf.shortfalls()) {
                lines.add(words(shortfall));
                EditAddress.of(shortfall.file())
                    .ifPresent(address -> edits.put(words(shortfall), address));
              }
              return shelf.settings().title();
            });
    return new Frame(name, title, tab, token, lines, edits, done(request), assets);
  }

  private String words(Shortfall shortfall) {
    return Remedies.words(shortfall.problems().get(0).toString())
        + " ("
        + shortfall.effect().words()
        + ")";
  }

  private Optional<HistoryEntry> done(Context request) {
    String number = request.queryParam(DONE);
    if (number == null || number.isEmpty() || number.length() > 9) {
      return Optional.empty();
    }
    for (int i = 0; i < number.length(); i++) {
      if (number.charAt(i) < '0' || number.charAt(i) > '9') {
        return Optional.empty();
      }
    }
    return History.of(library).entry(Integer.parseInt(number));
  }
}
