package merese.desk.shelf;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import java.util.List;
import java.util.Optional;
import merese.change.Made;
import merese.change.Removal;
import merese.change.RemovalPreview;
import merese.change.RemovalRequest;
import merese.desk.web.Frame.Tab;
import merese.desk.web.Page;
import merese.desk.web.Site;
import merese.desk.web.Typed;
import merese.model.ForTheUser;

/** Shows what would go and what needs it, and then takes it out. */
public final class RemovePage implements Page {
  private static final String TEMPLATE = "remove.jte";
  private static final String CHANGED =
      "Nothing was removed: the library has changed since you looked. This is what would go now.";

  private final Site site;

  public RemovePage(Site site) {
    this.site = site;
  }

  @Override
  public void addTo(RoutesConfig routes) {
    routes.get("/remove", this::show);
    routes.post("/remove", this::remove);
  }

  /**
   * The page.
   *
   * @param preview empty while nothing is named, or where it cannot be taken out
   */
  public record Model(Typed typed, Optional<RemovalPreview> preview, Optional<String> problem) {
    public List<EffectLines.Group> effects() {
      return EffectLines.of(preview.orElseThrow().effects());
    }

    public String seen() {
      return EffectLines.hash(preview.orElseThrow());
    }

    /** The preview in which the references go as well. */
    public String clearing() {
      StringBuilder address = new StringBuilder("/remove?clear=on");
      for (String name : List.of("name", "note", "check", "extent", "copy")) {
        if (typed.has(name)) {
          address.append('&').append(name).append('=').append(Site.encoded(typed.get(name)));
        }
      }
      return address.toString();
    }
  }

  private void show(Context request) {
    Typed typed = Typed.address(request);
    if (!typed.has("name")) {
      show(request, new Model(typed, Optional.empty(), Optional.empty()));
      return;
    }
    RemovalPreview preview;
    try {
      preview = Removal.preview(site.library(), request(typed));
    } catch (RuntimeException e) {
      refuse(request, typed, e);
      return;
    }
    if (Site.wantsJson(request)) {
      site.json(request, preview);
      return;
    }
    show(request, new Model(typed, Optional.of(preview), Optional.empty()));
  }

  private void remove(Context request) {
    Typed typed = Typed.form(request);
    Made<RemovalPreview> made;
    boolean piece;
    try {
      piece = site.library().findObject(typed.get("name").strip()).isPresent();
      made =
          Removal.make(
              site.library(),
              request(typed),
              preview -> EffectLines.hash(preview).equals(typed.get("seen")));
    } catch (RuntimeException e) {
      refuse(request, typed, e);
      return;
    }
    if (made.change().isEmpty()) {
      request.status(HttpStatus.CONFLICT);
      show(request, new Model(typed, Optional.of(made.result()), Optional.of(CHANGED)));
    } else {
      site.leadOn(request, leadsTo(typed, piece), made.change());
    }
  }

  /** A source stays where a part of it goes. */
  private static String leadsTo(Typed typed, boolean piece) {
    if (piece) {
      return "/pieces";
    }
    boolean part = typed.has("note") || typed.has("copy") || typed.has("check");
    return part ? "/shelf/" + Site.encoded(typed.get("name").strip()) : "/shelf";
  }

  private static RemovalRequest request(Typed typed) {
    return new RemovalRequest(
        typed.get("name").strip(),
        given(typed, "note"),
        given(typed, "check"),
        given(typed, "extent"),
        given(typed, "copy"),
        typed.has("clear"));
  }

  private static Optional<String> given(Typed typed, String name) {
    return Optional.of(typed.get(name).strip()).filter(value -> !value.isEmpty());
  }

  private void show(Context request, Model model) {
    site.show(request, Tab.SHELF, "Remove", TEMPLATE, model);
  }

  private void refuse(Context request, Typed typed, RuntimeException e) {
    if (!(e instanceof ForTheUser)) {
      throw e;
    }
    Optional<String> said =
        Optional.of(
            e.getMessage()
                .replace(
                    "--clear-references takes these references away as well",
                    "They can be taken away as well")
                .replace("say which with --extent", "say which by its extent"));
    site.refuse(request, Tab.SHELF, "Remove", TEMPLATE, new Model(typed, Optional.empty(), said));
  }
}
