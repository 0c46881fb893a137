package merese.desk.shelf;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.util.List;
import java.util.Optional;
import merese.change.AddResult;
import merese.change.Adding;
import merese.change.DoubleException;
import merese.change.EntryException;
import merese.change.Made;
import merese.change.SourceField;
import merese.desk.shelf.AddForm.Adds;
import merese.desk.web.FormException;
import merese.desk.web.Frame.Tab;
import merese.desk.web.NotThereException;
import merese.desk.web.Page;
import merese.desk.web.Site;
import merese.desk.web.Typed;
import merese.model.ForTheUser;
import merese.model.SourceKind;
import merese.shelf.Source;
import merese.shelf.Watcher;

/** Adds a source, a further edition of a work, or a copy. */
public final class AddPage implements Page {
  private static final String TEMPLATE = "add.jte";

  private final Site site;

  public AddPage(Site site) {
    this.site = site;
  }

  @Override
  public void addTo(RoutesConfig routes) {
    routes.get("/add", request -> show(request, new AddForm(Typed.address(request), site.clock())));
    routes.post("/add", this::add);
  }

  /** What the form is of, if not of a new work. */
  public record Of(String key, String words) {}

  /**
   * What was wrong.
   *
   * @param field the name of the field that it is of; "" for none
   * @param there the key of the source that this one looks like
   * @param mayBeAsPrinted whether it can be taken as it is printed
   */
  public record Wrong(
      String message, String field, Optional<String> there, boolean mayBeAsPrinted) {}

  /** The page. */
  public record Model(AddForm form, Optional<Of> of, Optional<Wrong> wrong) {
    public List<SourceKind> kinds() {
      return List.of(SourceKind.values());
    }

    public Optional<String> at(AddForm.Field field) {
      return at(field.name());
    }

    public Optional<String> at(String field) {
      return wrong.filter(w -> w.field().equals(field)).map(Wrong::message);
    }

    /** What is wrong with the form as a whole. */
    public Optional<String> problem() {
      return wrong.map(
          w ->
              w.field().isEmpty()
                  ? w.message()
                  : "Nothing was added yet: one field cannot be taken as it is.");
    }

    public boolean asksAsPrinted() {
      return form.typed().has("as-printed") || wrong.filter(Wrong::mayBeAsPrinted).isPresent();
    }

    public boolean asksAnyway() {
      return form.typed().has("anyway") || wrong.flatMap(Wrong::there).isPresent();
    }

    public boolean isWhole() {
      return form.adds() != Adds.SOURCE || form.kind().isPresent();
    }

    public String title() {
      return switch (form.adds()) {
        case SOURCE -> "Add a source";
        case EDITION -> "Add an edition of " + of.orElseThrow().words();
        case COPY -> "Add a copy of " + of.orElseThrow().words();
      };
    }
  }

  private void show(Context request, AddForm form) {
    Model model = new Model(form, of(form), Optional.empty());
    site.show(request, Tab.SHELF, model.title(), TEMPLATE, model);
  }

  private void add(Context request) {
    AddForm form = new AddForm(Typed.form(request), site.clock());
    try {
      Made<AddResult> made = Adding.make(site.library(), form.request(), Watcher.NONE);
      site.leadOn(request, "/shelf/" + Site.encoded(made.result().key()), made.change());
    } catch (EntryException e) {
      String name = FieldWords.name(e.field());
      refuse(request, form, new Wrong(words(e), name, Optional.empty(), e.mayBeAsPrinted()));
    } catch (DoubleException e) {
      String found =
          "It may be there already: " + e.found() + ". Nothing was added. Look at it first.";
      refuse(request, form, new Wrong(found, "", Optional.of(e.key()), false));
    } catch (RuntimeException e) {
      if (!(e instanceof ForTheUser)) {
        throw e;
      }
      boolean key = e.getMessage().startsWith("--key: ");
      String said = e.getMessage().replace("--key: ", "Key: ");
      String field = e instanceof FormException typed ? typed.field().orElse("") : key ? "key" : "";
      refuse(request, form, new Wrong(said, field, Optional.empty(), false));
    }
  }

  private static String words(EntryException e) {
    Optional<SourceField> needed = e.field().needs();
    if (needed.filter(n -> e.reason().contains(n.option())).isPresent()) {
      return "This needs “" + FieldWords.label(needed.get()) + "” as well.";
    }
    return e.reason()
        + (e.mayBeAsPrinted() ? "; if it is printed so, tick “as printed” at the end" : "");
  }

  private void refuse(Context request, AddForm form, Wrong wrong) {
    Model model = new Model(form, of(form), Optional.of(wrong));
    site.refuse(request, Tab.SHELF, model.title(), TEMPLATE, model);
  }

  private Optional<Of> of(AddForm form) {
    if (form.of().isEmpty()) {
      return Optional.empty();
    }
    String name = form.of().get();
    return Optional.of(
        site.ask(
            shelf -> {
              Source source =
                  shelf
                      .findSource(name)
                      .or(() -> shelf.ofWork(name).stream().findFirst())
                      .orElseThrow(
                          () -> new NotThereException("no edition and no work is called " + name));
              return new Of(name, source.reference() + ", " + source.title());
            }));
  }
}
