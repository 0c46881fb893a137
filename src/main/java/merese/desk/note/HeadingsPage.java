package merese.desk.note;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import merese.change.notes.HeadingList;
import merese.change.notes.NoteTaking;
import merese.change.notes.NoteTaking.Taken;
import merese.change.notes.NotedAlreadyException;
import merese.change.notes.Sitting;
import merese.change.notes.TypedNote;
import merese.change.notes.TypedNote.Doing;
import merese.desk.note.NotePage.Option;
import merese.desk.note.NotePage.Refused;
import merese.desk.web.Frame.Tab;
import merese.desk.web.Page;
import merese.desk.web.Site;
import merese.desk.web.Typed;
import merese.model.Locator;
import merese.model.Naming;
import merese.shelf.WritingShelf;

/** A source's own list of kinds: a note of each heading, all or none. */
public final class HeadingsPage implements Page {
  private static final String TITLE = "A source’s own list of headings";
  private static final String TEMPLATE = "headings.jte";

  private final Site site;

  public HeadingsPage(Site site) {
    this.site = site;
  }

  @Override
  public void addTo(RoutesConfig routes) {
    routes.get("/list-of-headings", this::show);
    routes.post("/list-of-headings", this::take);
  }

  /** The page. */
  public record Model(Typed typed, Refused refused, List<Option> facets) {
    public Model {
      facets = List.copyOf(facets);
    }

    public String focus() {
      if (refused.wrong().said() && !refused.wrong().isAt("")) {
        return refused.wrong().field();
      }
      return !typed.has("source") ? "source" : !typed.has("at") ? "at" : "headings";
    }

    /** Where notes are taken one by one. */
    public String noting() {
      return typed.has("source")
          ? "/note?source="
              + Site.encoded(typed.get("source"))
              + NotePage.part("at", typed.get("at"))
          : "/note";
    }
  }

  private void show(Context request) {
    site.show(request, Tab.NOTE, TITLE, TEMPLATE, model(Typed.address(request), Refused.NOT));
  }

  private Model model(Typed typed, Refused refused) {
    List<Option> facets = new ArrayList<>();
    site.glance(shelf -> shelf.thesaurus().facets())
        .forEach(f -> facets.add(new Option(f.id(), f.id())));
    Typed shown = typed.has("by") ? typed : typed.with("by", site.by());
    return new Model(shown, refused, facets);
  }

  private void take(Context request) {
    Typed typed = Typed.form(request);
    List<Choosing> choosing = new ArrayList<>();
    try {
      Optional<Taken> taken = site.write(shelf -> take(shelf, typed, choosing));
      if (taken.isEmpty()) {
        refuse(request, typed, new Refused(Wrong.NOTHING, choosing, Optional.empty()));
      } else if (Site.wantsJson(request)) {
        site.json(request, taken.get());
      } else {
        Taken list = taken.get();
        String address =
            "/note?source="
                + Site.encoded(list.source().key())
                + "&at="
                + Site.encoded(list.notes().get(0).places().get(0).locator().printed());
        site.leadOn(request, address, list.change());
      }
    } catch (NotedAlreadyException e) {
      String words =
          "one of these notes is there already (" + e.note() + "); none of the list was written";
      Wrong wrong = new Wrong("headings", words);
      refuse(request, typed, new Refused(wrong, List.of(), Optional.of(e.note())));
    } catch (RuntimeException e) {
      refuse(request, typed, new Refused(Wrong.of(e), List.of(), Optional.empty()));
    }
  }

  /** Empty where somebody has to choose what a heading means. */
  private Optional<Taken> take(WritingShelf shelf, Typed typed, List<Choosing> choosing) {
    Sitting sitting = Opened.sitting(shelf, typed, site.clock());
    NoteForm form = new NoteForm(typed);
    if (!typed.has("at")) {
      throw new WrongFieldException("at", "where is the list? Type it, as in p. 24");
    }
    Locator at = NoteForm.place(sitting, "at", typed.get("at"));
    List<List<String>> headings = HeadingList.of(typed.get("headings").replace("\r\n", "\n"), "\n");
    if (headings.isEmpty()) {
      throw new WrongFieldException("headings", "the list has no headings; write one a line");
    }
    String by =
        form.given("by").orElseThrow(() -> new WrongFieldException("by", "who takes the notes?"));
    Optional<String> facet = form.given("under");
    Meaning meaning = new Meaning(shelf, typed, choosing);
    List<TypedNote> notes = new ArrayList<>();
    for (List<String> names : headings) {
      List<Naming> namings = new ArrayList<>();
      for (String name : names) {
        namings.add(meaning.of(name, facet, "meaning:" + name, "why:" + name));
      }
      notes.add(note(namings, at, listing(typed), by));
    }
    return choosing.isEmpty()
        ? Optional.of(
            new NoteTaking(shelf, site.clock()).list(sitting.source(), notes, typed.has("again")))
        : Optional.empty();
  }

  private static Doing listing(Typed typed) {
    return switch (typed.get("does")) {
      case "drawing" -> Doing.LISTS_WITH_DRAWINGS;
      case "photo" -> Doing.LISTS_WITH_PHOTOS;
      default -> Doing.LISTS;
    };
  }

  private static TypedNote note(List<Naming> namings, Locator at, Doing listing, String by) {
    TypedNote.Where where =
        new TypedNote.Where(
            at.printed(),
            listing,
            Optional.empty(),
            List.of(),
            List.of(),
            Optional.empty(),
            Optional.empty(),
            Optional.empty());
    return new TypedNote(
        namings,
        where,
        List.of(),
        Optional.empty(),
        Optional.empty(),
        Optional.empty(),
        Optional.empty(),
        by);
  }

  private void refuse(Context request, Typed typed, Refused refused) {
    if (Site.wantsJson(request)) {
      request.status(HttpStatus.UNPROCESSABLE_CONTENT);
      site.json(request, refused);
      return;
    }
    site.refuse(request, Tab.NOTE, TITLE, TEMPLATE, model(typed, refused));
  }
}
