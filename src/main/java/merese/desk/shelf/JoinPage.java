package merese.desk.shelf;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import merese.change.Made;
import merese.change.Merge;
import merese.change.MergePreview;
import merese.change.MergeRequest;
import merese.change.Split;
import merese.change.SplitPreview;
import merese.change.SplitRequest;
import merese.desk.web.Frame.Tab;
import merese.desk.web.Page;
import merese.desk.web.Site;
import merese.desk.web.Typed;
import merese.model.ForTheUser;

/** Makes works one that are one, and makes editions a work of their own; shown first. */
public final class JoinPage implements Page {
  private static final String MERGE = "merge.jte";
  private static final String SPLIT = "split.jte";
  private static final String CHANGED =
      "Nothing was changed: the library has changed since you looked. This is what would be done"
          + " now.";

  private final Site site;

  public JoinPage(Site site) {
    this.site = site;
  }

  @Override
  public void addTo(RoutesConfig routes) {
    routes.get("/merge", this::showMerge);
    routes.post("/merge", this::merge);
    routes.get("/split", this::showSplit);
    routes.post("/split", this::split);
  }

  /** The page that merges. */
  public record Merging(Typed typed, Optional<MergePreview> preview, Optional<String> problem) {
    public List<EffectLines.Group> effects() {
      return EffectLines.of(preview.orElseThrow().effects());
    }

    public String seen() {
      return EffectLines.hash(preview.orElseThrow());
    }
  }

  /** The page that splits. */
  public record Splitting(Typed typed, Optional<SplitPreview> preview, Optional<String> problem) {
    public List<EffectLines.Group> effects() {
      return EffectLines.of(preview.orElseThrow().effects());
    }

    public String seen() {
      return EffectLines.hash(preview.orElseThrow());
    }
  }

  private void showMerge(Context request) {
    Typed typed = Typed.address(request);
    Optional<MergePreview> preview = Optional.empty();
    if (typed.has("keep") && typed.has("others")) {
      try {
        preview = Optional.of(Merge.preview(site.library(), mergeOf(typed)));
      } catch (RuntimeException e) {
        refuse(request, MERGE, new Merging(typed, Optional.empty(), said(e)));
        return;
      }
      if (Site.wantsJson(request)) {
        site.json(request, preview.get());
        return;
      }
    }
    show(request, MERGE, new Merging(typed, preview, Optional.empty()));
  }

  private void merge(Context request) {
    Typed typed = Typed.form(request);
    try {
      Made<MergePreview> made =
          Merge.make(
              site.library(),
              mergeOf(typed),
              preview -> EffectLines.hash(preview).equals(typed.get("seen")));
      if (made.change().isEmpty()) {
        request.status(HttpStatus.CONFLICT);
        Optional<MergePreview> now = Optional.of(made.result());
        show(request, MERGE, new Merging(typed, now, Optional.of(CHANGED)));
        return;
      }
      MergePreview done = made.result();
      String key = done.key().orElse(done.editions().get(0).key());
      site.leadOn(request, "/shelf/" + Site.encoded(key), made.change());
    } catch (RuntimeException e) {
      refuse(request, MERGE, new Merging(typed, Optional.empty(), said(e)));
    }
  }

  private void showSplit(Context request) {
    Typed typed = Typed.address(request);
    Optional<SplitPreview> preview = Optional.empty();
    if (typed.has("keys")) {
      try {
        preview = Optional.of(Split.preview(site.library(), splitOf(typed)));
      } catch (RuntimeException e) {
        refuse(request, SPLIT, new Splitting(typed, Optional.empty(), said(e)));
        return;
      }
      if (Site.wantsJson(request)) {
        site.json(request, preview.get());
        return;
      }
    }
    show(request, SPLIT, new Splitting(typed, preview, Optional.empty()));
  }

  private void split(Context request) {
    Typed typed = Typed.form(request);
    try {
      Made<SplitPreview> made =
          Split.make(
              site.library(),
              splitOf(typed),
              preview -> EffectLines.hash(preview).equals(typed.get("seen")));
      if (made.change().isEmpty()) {
        request.status(HttpStatus.CONFLICT);
        Optional<SplitPreview> now = Optional.of(made.result());
        show(request, SPLIT, new Splitting(typed, now, Optional.of(CHANGED)));
        return;
      }
      String key = made.result().moved().get(0);
      site.leadOn(request, "/shelf/" + Site.encoded(key), made.change());
    } catch (RuntimeException e) {
      refuse(request, SPLIT, new Splitting(typed, Optional.empty(), said(e)));
    }
  }

  private static MergeRequest mergeOf(Typed typed) {
    return new MergeRequest(
        typed.get("keep").strip(), lines(typed.get("others")), typed.has("one-edition"));
  }

  private static SplitRequest splitOf(Typed typed) {
    return new SplitRequest(lines(typed.get("keys")), given(typed, "title"), given(typed, "id"));
  }

  private static List<String> lines(String text) {
    List<String> lines = new ArrayList<>();
    text.lines().map(String::strip).filter(line -> !line.isEmpty()).forEach(lines::add);
    return lines;
  }

  private static Optional<String> given(Typed typed, String name) {
    return Optional.of(typed.get(name).strip()).filter(value -> !value.isEmpty());
  }

  private static Optional<String> said(RuntimeException e) {
    if (!(e instanceof ForTheUser)) {
      throw e;
    }
    return Optional.of(
        e.getMessage()
            .replace("--one-edition: ", "")
            .replace("with --one-edition", "where you tick “the same edition”"));
  }

  private void show(Context request, String template, Object model) {
    site.show(request, Tab.SHELF, template.equals(MERGE) ? "Merge" : "Split", template, model);
  }

  private void refuse(Context request, String template, Object model) {
    site.refuse(request, Tab.SHELF, template.equals(MERGE) ? "Merge" : "Split", template, model);
  }
}
