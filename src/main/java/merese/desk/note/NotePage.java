package merese.desk.note;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import merese.change.notes.NoteTaking.Taken;
import merese.change.notes.NotedAlreadyException;
import merese.change.notes.Sitting;
import merese.change.notes.Suggestions;
import merese.change.notes.TermChoice;
import merese.desk.note.HeldPhotographs.Held;
import merese.desk.web.Frame.Tab;
import merese.desk.web.Page;
import merese.desk.web.Query;
import merese.desk.web.Site;
import merese.desk.web.Typed;
import merese.exchange.picture.PictureCopy;
import merese.model.Locator;
import merese.model.Naming;
import merese.model.Naming.Why;
import merese.shelf.Beginnings.Beginning;
import merese.shelf.Beginnings.Kind;
import merese.shelf.SourceAddress;
import merese.shelf.WritingShelf;

/** Note after note in one source: a form, and beside it what is noted of the page already. */
public final class NotePage implements Page {
  private static final int MOST_SUGGESTED = 9;
  private static final String TITLE = "Take a note";
  private static final String TEMPLATE = "note.jte";

  private final Site site;
  private final HeldPhotographs photographs = new HeldPhotographs();

  public NotePage(Site site) {
    this.site = site;
  }

  @Override
  public void addTo(RoutesConfig routes) {
    routes.get("/note", this::show);
    routes.post("/note", this::take);
    routes.get("/note/beside", this::beside);
    routes.get("/note/terms", this::terms);
    routes.get("/note/terms/{source}", this::termsOfSource);
  }

  /** A choice of the form: its value, and its label. */
  public record Option(String code, String words) {}

  /** What the form has to choose from. */
  public record Lists(List<Option> facets, List<Option> parts, List<Option> pieces) {
    public Lists {
      facets = List.copyOf(facets);
      parts = List.copyOf(parts);
      pieces = List.copyOf(pieces);
    }

    public List<Option> does() {
      return NoteForm.does();
    }
  }

  /**
   * What stands beside the form, with where it leads.
   *
   * @param seen the pages that were looked at; "" where none was yet
   * @param next the address of the next page; empty where it cannot be counted to
   * @param back of the page before
   * @param finish where what was looked through is logged
   * @param list where a list of headings is noted
   */
  public record Beside(
      NotedHere here,
      String seen,
      Optional<String> next,
      Optional<String> back,
      String finish,
      String list) {}

  /** A photograph that came with the form before. */
  public record Photograph(String key, String name, int width, int height) {
    static Photograph of(Held held) {
      PictureCopy picture = held.picture();
      return new Photograph(held.key(), held.name(), picture.width(), picture.height());
    }
  }

  /**
   * Why a form was not taken.
   *
   * @param same the id of the very same note that is there already
   */
  public record Refused(Wrong wrong, List<Choosing> choosing, Optional<String> same) {
    static final Refused NOT = new Refused(Wrong.NOTHING, List.of(), Optional.empty());

    public Refused {
      choosing = List.copyOf(choosing);
    }

    public boolean refuses() {
      return wrong.said() || !choosing.isEmpty();
    }
  }

  /**
   * The page.
   *
   * @param source the one that lies open
   * @param taken the note that was just taken
   */
  public record Model(
      Typed typed,
      Optional<SourceAddress> source,
      Optional<Beside> beside,
      Optional<NotedHere.Line> taken,
      Refused refused,
      Optional<Photograph> photograph,
      Lists lists) {

    private static final Set<String> MORE =
        Set.of(
            "unnamed",
            "text",
            "reading",
            "texts",
            "plates",
            "as",
            "under",
            "shows",
            "corrects",
            "part",
            "piece",
            "picture",
            "object",
            "same",
            "about",
            "photo",
            "by",
            "claim-date",
            "claim-place",
            "claim-maker",
            "claim-method",
            "claim-frequency",
            "claim-copy-warning");

    /** Whether what is rarely needed is shown. */
    public boolean more() {
      return photograph.isPresent()
          || MORE.stream().anyMatch(name -> refused.wrong().isAt(name))
          || MORE.stream().anyMatch(name -> !name.equals("by") && typed.has(name));
    }

    /** The field that is typed into next. */
    public String focus() {
      if (!refused.choosing().isEmpty()) {
        return "meaning";
      } else if (refused.wrong().said() && !refused.wrong().isAt("")) {
        return refused.wrong().field();
      }
      return source.isEmpty() ? "source" : typed.has("at") ? "term" : "at";
    }

    public boolean does(String code) {
      return typed.has("does") ? typed.is("does", code) : code.equals("names");
    }

    /** Where the beginnings of terms are asked for. */
    public String terms() {
      return source.map(s -> "/note/terms/" + Site.encoded(s.key())).orElse("/note/terms");
    }

    /** Whether it came back on another page, with something under More. */
    public boolean turned() {
      return !refused.refuses() && more();
    }

    /** The term that a choice of meanings is for. */
    public String asked() {
      return refused.choosing().isEmpty() ? "" : refused.choosing().get(0).printed();
    }
  }

  private void show(Context request) {
    Typed typed = Typed.address(request);
    boolean json = Site.wantsJson(request);
    try {
      site.write(
          shelf -> {
            Model model = opened(shelf, typed);
            if (json && model.beside().isPresent()) {
              site.json(request, model.beside().get().here());
            } else {
              site.show(request, Tab.NOTE, TITLE, TEMPLATE, model);
            }
            return model;
          });
    } catch (RuntimeException e) {
      Refused refused = new Refused(Wrong.of(e), List.of(), Optional.empty());
      refuse(request, typed, refused, Optional.empty());
    }
  }

  private Model opened(WritingShelf shelf, Typed typed) {
    if (!typed.has("source")) {
      return model(shelf, typed, Optional.empty(), Refused.NOT, Optional.empty());
    }
    Sitting sitting = Opened.sitting(shelf, typed, site.clock());
    Typed shown = typed.with("source", sitting.source().key());
    if (typed.has("at")) {
      Locator at = NoteForm.place(sitting, "at", typed.get("at"));
      sitting.open(at.printed());
      shown = shown.with("at", at.printed());
    }
    return model(shelf, shown, Optional.of(sitting), Refused.NOT, Optional.empty());
  }

  private Model model(
      WritingShelf shelf,
      Typed typed,
      Optional<Sitting> sitting,
      Refused refused,
      Optional<Held> held) {
    Typed shown = typed.has("by") ? typed : typed.with("by", site.by());
    return new Model(
        shown,
        sitting.map(Sitting::source),
        sitting.map(open -> beside(shelf, open, shown)),
        sitting.flatMap(open -> NotedHere.line(shelf, open, typed.get("taken"))),
        refused,
        held.map(Photograph::of),
        lists(shelf, sitting));
  }

  private Lists lists(WritingShelf shelf, Optional<Sitting> sitting) {
    List<Option> facets = new ArrayList<>();
    shelf.thesaurus().facets().forEach(f -> facets.add(new Option(f.id(), f.id())));
    List<Option> parts = new ArrayList<>();
    sitting.ifPresent(
        open ->
            open.edition()
                .parts()
                .forEach(p -> parts.add(new Option(p.id(), p.id() + ": " + p.title()))));
    List<Option> pieces = new ArrayList<>();
    site.glance(shown -> shown.objects())
        .forEach(o -> pieces.add(new Option(o.ref(), o.ref() + ": " + o.title())));
    return new Lists(facets, parts, pieces);
  }

  private Beside beside(WritingShelf shelf, Sitting sitting, Typed typed) {
    NotedHere here = NotedHere.of(shelf, sitting);
    String seen = seen(sitting, typed);
    String extent = seen.isEmpty() ? here.at() : seen;
    String by = typed.get("by");
    String finish =
        "/looked?source="
            + Site.encoded(sitting.source().key())
            + part("extent", extent)
            + part("at", here.at())
            + part("by", by.equals(site.by()) ? "" : by);
    String list =
        "/list-of-headings?source="
            + Site.encoded(sitting.source().key())
            + part("at", here.at())
            + part("by", by.equals(site.by()) ? "" : by);
    Typed now = typed.with("seen", seen);
    return new Beside(here, seen, turned(sitting, now, 1), turned(sitting, now, -1), finish, list);
  }

  /** The pages that were looked at; as they were where they are more than one place can name. */
  private static String seen(Sitting sitting, Typed typed) {
    try {
      return sitting.lookedThrough().map(Locator::printed).orElse("");
    } catch (merese.model.LocatorException e) {
      return typed.get("seen");
    }
  }

  private Optional<String> turned(Sitting from, Typed typed, int by) {
    if (from.place().flatMap(place -> place.stepped(by)).isEmpty()) {
      return Optional.empty();
    }
    Typed other =
        typed
            .with("source", from.source().key())
            .with("open", from.page().map(Locator::printed).orElse(""));
    Sitting sitting = from.copy();
    Locator to = sitting.turn(by);
    return Optional.of(address(sitting, to.printed(), other));
  }

  /** The page again, at a place. */
  private String address(Sitting sitting, String at, Typed typed) {
    String by = typed.get("by");
    return "/note?source="
        + Site.encoded(sitting.source().key())
        + part("at", at)
        + part("seen", seen(sitting, typed))
        + part("by", by.equals(site.by()) ? "" : by);
  }

  static String part(String name, String value) {
    return value.isEmpty() ? "" : "&" + name + "=" + Site.encoded(value);
  }

  private void beside(Context request) {
    Typed typed = Typed.address(request);
    Optional<Beside> beside = site.write(shelf -> opened(shelf, typed).beside());
    if (beside.isPresent()) {
      site.part(request, "note/beside.jte", beside.get());
    }
  }

  /** What a form comes to: where it leads. */
  private record Outcome(String address, OptionalInt change, Optional<Taken> taken) {}

  /** What says of one note or one turn only, and is not carried over to another page. */
  private static final Set<String> NOT_CARRIED =
      Set.of("token", "term", "asked", "meaning", "again", "taken", "open");

  /**
   * The form on another page, with all that was typed. It is shown at once, since an address cannot
   * hold pages of text; loading it again turns from the same page once more, and writes nothing.
   */
  private void turn(Context request, Typed typed, int by, Optional<Held> held) {
    Model turned =
        site.write(
            shelf -> {
              Sitting sitting = Opened.sitting(shelf, typed, site.clock());
              sitting.open(NoteForm.place(sitting, "at", typed.get("at")).printed());
              Locator to = sitting.turn(by);
              Typed kept = Typed.NOTHING;
              for (String name : typed.names()) {
                if (!NOT_CARRIED.contains(name)) {
                  kept = kept.with(name, typed.all(name));
                }
              }
              kept =
                  kept.with("source", sitting.source().key())
                      .with("at", to.printed())
                      .with("seen", seen(sitting, typed));
              return model(shelf, kept, Optional.of(sitting), Refused.NOT, held);
            });
    site.show(request, Tab.NOTE, TITLE, TEMPLATE, turned);
  }

  private void take(Context request) {
    Typed typed = Typed.form(request);
    Optional<Held> held = photographs.kept(typed.get("held"));
    List<Choosing> choosing = new ArrayList<>();
    try {
      Optional<Held> photograph = photographs.of(request, typed);
      held = photograph;
      OptionalInt turns = Sitting.turns(typed.get("term").strip());
      if (turns.isPresent()) {
        turn(request, typed, turns.getAsInt(), photograph);
        return;
      }
      Outcome outcome = site.write(shelf -> take(shelf, typed, photograph, choosing));
      if (!choosing.isEmpty()) {
        refuse(request, typed, new Refused(Wrong.NOTHING, choosing, Optional.empty()), held);
        return;
      }
      outcome.taken().flatMap(taken -> photograph).ifPresent(photographs::forget);
      if (Site.wantsJson(request) && outcome.taken().isPresent()) {
        site.json(request, outcome.taken().get());
      } else {
        site.leadOn(request, outcome.address(), outcome.change());
      }
    } catch (NotedAlreadyException e) {
      String words = "this very note is there already (" + e.note() + "); nothing was written";
      refuse(
          request,
          typed,
          new Refused(new Wrong("term", words), List.of(), Optional.of(e.note())),
          held);
    } catch (RuntimeException e) {
      refuse(request, typed, new Refused(Wrong.of(e), List.of(), Optional.empty()), held);
    }
  }

  private Outcome take(
      WritingShelf shelf, Typed typed, Optional<Held> photograph, List<Choosing> choosing) {
    Sitting sitting = Opened.sitting(shelf, typed, site.clock());
    if (!typed.has("at")) {
      throw new WrongFieldException("at", "which page is it? Type it, as in p. 41 or pl. XII");
    }
    NoteForm form = new NoteForm(typed);
    Naming naming = naming(shelf, form, typed, choosing);
    var note = form.note(sitting, naming);
    if (!choosing.isEmpty()) {
      return new Outcome("", OptionalInt.empty(), Optional.empty());
    }
    Optional<PictureCopy> picture = photograph.map(Held::picture);
    Taken taken = sitting.note(note, picture, typed.has("again"));
    String at = taken.notes().get(0).places().get(0).locator().printed();
    String address = address(sitting, at, typed) + part("taken", taken.notes().get(0).id());
    return new Outcome(address, taken.change(), Optional.of(taken));
  }

  private static Naming naming(
      WritingShelf shelf, NoteForm form, Typed typed, List<Choosing> choosing) {
    String term = form.term();
    Optional<String> facet = form.given("under");
    // A choice belongs to the term that it was shown for.
    boolean chosen = typed.has("meaning") && typed.get("asked").strip().equals(term);
    Meaning meaning = new Meaning(shelf, chosen ? typed : typed.with("meaning", ""), choosing);
    if (!chosen && form.given("as").isPresent()) {
      TermChoice choice = TermChoice.named(shelf, form.given("as").get());
      if (choice.mustChoose()) {
        List<String> ids = choice.choices().stream().map(TermChoice.Choice::words).toList();
        throw new WrongFieldException(
            "as", choice.reason() + "; type the id of one:\n" + String.join("\n", ids));
      }
      String concept =
          choice
              .naming()
              .concept()
              .orElseThrow(() -> new WrongFieldException("as", choice.noWord()));
      return TermChoice.chosen(shelf, term, concept, meaning.why("why").orElse(Why.MY_READING));
    }
    return meaning.of(term, facet, "meaning", "why");
  }

  private void refuse(Context request, Typed typed, Refused refused, Optional<Held> held) {
    if (Site.wantsJson(request)) {
      request.status(HttpStatus.UNPROCESSABLE_CONTENT);
      site.json(request, refused);
      return;
    }
    site.refuse(request, Tab.NOTE, TITLE, TEMPLATE, refusedModel(typed, refused, held));
  }

  /** Where not even a shelf can be opened, what was typed is left. */
  private Model refusedModel(Typed typed, Refused refused, Optional<Held> held) {
    try {
      return site.write(shelf -> model(shelf, typed, known(shelf, typed), refused, held));
    } catch (RuntimeException e) {
      Wrong wrong = refused.wrong().said() ? refused.wrong() : Wrong.of(e);
      return new Model(
          typed,
          Optional.empty(),
          Optional.empty(),
          Optional.empty(),
          new Refused(wrong, List.of(), Optional.empty()),
          held.map(Photograph::of),
          new Lists(List.of(), List.of(), List.of()));
    }
  }

  /** As much of what a form names as can be found. */
  private Optional<Sitting> known(WritingShelf shelf, Typed typed) {
    try {
      Sitting sitting = Opened.sitting(shelf, typed, site.clock());
      try {
        if (typed.has("at")) {
          sitting.open(NoteForm.place(sitting, "at", typed.get("at")).printed());
        }
      } catch (WrongFieldException e) {
        return Optional.of(sitting); // it is said in the form
      }
      return Optional.of(sitting);
    } catch (WrongFieldException e) {
      return Optional.empty(); // the same
    }
  }

  private void terms(Context request) {
    String begun = Query.text(request, "term").orElse("");
    List<Beginning> found = site.glance(shelf -> shelf.beginnings().terms(begun, MOST_SUGGESTED));
    site.part(request, "suggestions.jte", found);
  }

  private void termsOfSource(Context request) {
    String begun = Query.text(request, "term").orElse("");
    Typed source = Typed.NOTHING.with("source", request.pathParam("source"));
    List<Beginning> found =
        site.write(
            shelf -> {
              Sitting sitting = Opened.sitting(shelf, source, site.clock());
              return beginnings(new Suggestions(sitting), begun);
            });
    site.part(request, "suggestions.jte", found);
  }

  private static List<Beginning> beginnings(Suggestions suggestions, String begun) {
    Set<String> printed = suggestions.printed();
    List<Beginning> found = new ArrayList<>();
    for (String term : suggestions.terms(begun.toLowerCase(Locale.ROOT))) {
      if (found.size() < MOST_SUGGESTED) {
        boolean here = printed.contains(term);
        found.add(
            new Beginning(
                here ? Kind.PRINTED : Kind.CONCEPT, term, "", here ? "in this source" : ""));
      }
    }
    return found;
  }
}
