package merese.desk.note;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import merese.change.notes.Looking;
import merese.change.notes.Looking.Logged;
import merese.change.notes.Looking.Looked;
import merese.change.notes.Sitting;
import merese.desk.note.NotePage.Option;
import merese.desk.web.Frame.Tab;
import merese.desk.web.Page;
import merese.desk.web.Site;
import merese.desk.web.Typed;
import merese.model.Check;
import merese.model.Check.Method;
import merese.model.Check.Result;
import merese.model.Copy;
import merese.model.Locator;
import merese.model.LocatorException;
import merese.shelf.SourceAddress;
import merese.shelf.WritingShelf;

/** Writes down what was looked through, and for what. */
public final class LookedPage implements Page {
  private static final String TITLE = "What was looked through";
  private static final String TEMPLATE = "looked.jte";

  private final Site site;

  public LookedPage(Site site) {
    this.site = site;
  }

  @Override
  public void addTo(RoutesConfig routes) {
    routes.get("/looked", this::show);
    routes.post("/looked", this::log);
  }

  /** The check log of a source, what was written last first. */
  public record Log(SourceAddress source, List<Line> lines) {
    public Log {
      lines = List.copyOf(lines);
    }
  }

  /**
   * A line of a check log.
   *
   * @param label what the concept is called
   * @param extent empty for the whole source
   * @param scope what the looking was limited to
   */
  public record Line(
      String concept,
      String label,
      Optional<Locator> extent,
      Method method,
      Result result,
      Optional<String> scope,
      Optional<LocalDate> on,
      Optional<String> by,
      Optional<String> copy) {
    public String results() {
      return switch (result) {
        case FOUND -> "found";
        case NONE -> "none noted";
        case NOT_IN_LIST -> "not in its list";
        case NO_LIST -> "it has no list";
      };
    }
  }

  /**
   * The page.
   *
   * @param log of the source that is named
   * @param copies of the source, to choose from
   */
  public record Model(
      Typed typed, Optional<Log> log, List<Option> copies, Wrong wrong, List<Choosing> choosing) {
    public Model {
      copies = List.copyOf(copies);
      choosing = List.copyOf(choosing);
    }

    public boolean refused() {
      return wrong.said() || !choosing.isEmpty();
    }

    /** Where noting goes on. */
    public String noting() {
      return log.map(
              l ->
                  "/note?source="
                      + Site.encoded(l.source().key())
                      + NotePage.part("at", typed.get("at")))
          .orElse("/note");
    }

    public String focus() {
      if (wrong.said() && !wrong.isAt("")) {
        return wrong.field();
      }
      return log.isEmpty() ? "source" : typed.has("for") ? "" : "for";
    }
  }

  private void show(Context request) {
    Typed typed = Typed.address(request);
    Model model;
    try {
      model = site.write(shelf -> opened(shelf, typed));
    } catch (RuntimeException e) {
      refuse(request, typed, Wrong.of(e), List.of());
      return;
    }
    if (Site.wantsJson(request) && model.log().isPresent()) {
      site.json(request, model.log().get());
    } else {
      site.show(request, Tab.NOTE, TITLE, TEMPLATE, model);
    }
  }

  private Model opened(WritingShelf shelf, Typed typed) {
    if (!typed.has("source")) {
      return new Model(withBy(typed), Optional.empty(), List.of(), Wrong.NOTHING, List.of());
    }
    Sitting sitting = new Sitting(shelf, Opened.source(shelf, typed), site.clock());
    Typed shown = withBy(typed).with("source", sitting.source().key());
    Optional<Locator> extent = extent(shown);
    if (extent.isPresent() && !shown.has("for")) {
      List<String> words = sitting.lookedForInWords(extent.get(), shown.get("by"));
      shown = shown.with("for", String.join(", ", words));
    }
    return model(shelf, shown, Optional.of(sitting), Wrong.NOTHING, List.of());
  }

  private Typed withBy(Typed typed) {
    return typed.has("by") ? typed : typed.with("by", site.by());
  }

  private static Model model(
      WritingShelf shelf,
      Typed typed,
      Optional<Sitting> sitting,
      Wrong wrong,
      List<Choosing> choosing) {
    List<Option> copies = new ArrayList<>();
    sitting.ifPresent(s -> s.edition().copies().forEach(c -> copies.add(option(c))));
    Optional<Log> log = sitting.map(s -> log(shelf, s));
    return new Model(typed, log, copies, wrong, choosing);
  }

  private static Option option(Copy copy) {
    String where = copy.holder().orElse("") + copy.shelfMark().map(m -> " " + m).orElse("");
    return new Option(copy.id(), where.isBlank() ? copy.id() : copy.id() + ": " + where.strip());
  }

  private static Log log(WritingShelf shelf, Sitting sitting) {
    List<Line> lines = new ArrayList<>();
    for (Check check : sitting.edition().checks()) {
      lines.add(
          0,
          new Line(
              check.concept(),
              shelf.thesaurus().label(check.concept()),
              check.extent(),
              check.method(),
              check.result(),
              check.scope().map(s -> s.words()),
              check.on(),
              check.by(),
              check.copy()));
    }
    return new Log(sitting.source(), lines);
  }

  private static Optional<Locator> extent(Typed typed) {
    String text = typed.get("extent").strip();
    try {
      return text.isEmpty() ? Optional.empty() : Optional.of(Locator.parse(text));
    } catch (LocatorException e) {
      throw new WrongFieldException("extent", e.getMessage());
    }
  }

  private void log(Context request) {
    Typed typed = Typed.form(request);
    List<Choosing> choosing = new ArrayList<>();
    try {
      Optional<Logged> logged = site.write(shelf -> log(shelf, typed, choosing));
      if (logged.isEmpty()) {
        refuse(request, typed, Wrong.NOTHING, choosing);
      } else if (Site.wantsJson(request)) {
        site.json(request, logged.get());
      } else {
        String address =
            "/looked?source="
                + Site.encoded(logged.get().lines().get(0).source().key())
                + NotePage.part("at", typed.get("at"));
        site.leadOn(request, address, logged.get().change());
      }
    } catch (RuntimeException e) {
      refuse(request, typed, Wrong.of(e), List.of());
    }
  }

  /** Empty where somebody has to choose what was looked for. */
  private Optional<Logged> log(WritingShelf shelf, Typed typed, List<Choosing> choosing) {
    SourceAddress source = Opened.source(shelf, typed);
    Optional<Locator> extent = extent(typed);
    if (!typed.has("method")) {
      throw new WrongFieldException("method", "how was it looked through? Choose one of the three");
    }
    Method method = Codes.of(Method.values(), typed.get("method"), "method");
    NoteForm form = new NoteForm(typed);
    Meaning meaning = new Meaning(shelf, typed, choosing);
    List<String> concepts = new ArrayList<>();
    for (String word : typed.get("for").split("[,\n]", -1)) {
      if (!word.isBlank()) {
        meaning.concept(word.strip(), "for", "meaning:" + word.strip()).ifPresent(concepts::add);
      }
    }
    if (!choosing.isEmpty()) {
      return Optional.empty();
    } else if (concepts.isEmpty()) {
      throw new WrongFieldException(
          "for", "what was looked for? Type a word for it, or several with commas between");
    }
    Optional<Result> list = form.given("list").map(code -> Codes.of(Result.values(), code, "list"));
    Looked looked =
        new Looked(
            List.of(source),
            extent,
            concepts,
            method,
            form.given("scope"),
            list,
            form.given("by").orElseThrow(() -> new WrongFieldException("by", "who looked?")),
            form.given("copy"));
    return Optional.of(new Looking(shelf, site.clock()).log(looked));
  }

  private void refuse(Context request, Typed typed, Wrong wrong, List<Choosing> choosing) {
    if (Site.wantsJson(request)) {
      request.status(HttpStatus.UNPROCESSABLE_CONTENT);
      site.json(request, new NotePage.Refused(wrong, choosing, Optional.empty()));
      return;
    }
    site.refuse(request, Tab.NOTE, TITLE, TEMPLATE, refusedModel(typed, wrong, choosing));
  }

  /** Where not even a shelf can be opened, what was typed is left. */
  private Model refusedModel(Typed typed, Wrong wrong, List<Choosing> choosing) {
    try {
      return site.write(shelf -> model(shelf, typed, known(shelf, typed), wrong, choosing));
    } catch (RuntimeException e) {
      Wrong why = wrong.said() ? wrong : Wrong.of(e);
      return new Model(typed, Optional.empty(), List.of(), why, List.of());
    }
  }

  private Optional<Sitting> known(WritingShelf shelf, Typed typed) {
    try {
      return Optional.of(new Sitting(shelf, Opened.source(shelf, typed), site.clock()));
    } catch (WrongFieldException e) {
      return Optional.empty(); // it is said in the form
    }
  }
}
