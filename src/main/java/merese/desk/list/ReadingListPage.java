package merese.desk.list;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import merese.answer.ReadingListQuestion.Arrangement;
import merese.citation.Output;
import merese.desk.list.Styles.Style;
import merese.desk.web.Frame.Tab;
import merese.desk.web.Page;
import merese.desk.web.Site;
import merese.model.ForTheUser;
import merese.shelf.Shelf;

/** The sources to cite for features or for a script, in a style; and the same as a file. */
public final class ReadingListPage implements Page {
  static final String PATH = "/reading-list";

  private static final Set<String> PARTS =
      Set.of("script", "by", "consulted", "pictured", "owned", "style", "other", "fit", "out");

  private final Site site;

  public ReadingListPage(Site site) {
    this.site = site;
  }

  @Override
  public void addTo(RoutesConfig routes) {
    routes.get(PATH, this::show);
    routes.get(PATH + "/save", this::save);
  }

  /**
   * The page.
   *
   * @param style the one in force
   * @param problem why there is no list
   * @param answer empty where nothing is asked yet, and with a problem
   */
  public record Model(
      Question asked,
      List<Features.Line> features,
      String style,
      List<Style> styles,
      Optional<String> problem,
      Optional<ListAnswer> answer) {
    public boolean bySource() {
      return problem.isEmpty() && ListAnswer.arrangement(asked) == Arrangement.BY_SOURCE;
    }

    /** The names that the box for another style offers. */
    public List<String> allStyles() {
      return Styles.all();
    }

    /** Where the list can be saved from. */
    public String save(String form) {
      return asked.address(PATH + "/save") + "&as=" + form;
    }
  }

  private void show(Context request) {
    Question asked = asked(request);
    if (Site.wantsJson(request) && !asked.isEmpty()) {
      site.json(
          request,
          site.ask(
              shelf -> ListAnswer.whole(shelf, asked, Output.TEXT).without(ListAnswer.out(asked))));
      return;
    }
    Model model = site.ask(shelf -> model(shelf, asked));
    if (model.problem().isPresent()) {
      site.refuse(request, Tab.READING_LIST, "Reading list", "reading-list.jte", model);
    } else {
      site.show(request, Tab.READING_LIST, "Reading list", "reading-list.jte", model);
    }
  }

  private static Model model(Shelf shelf, Question asked) {
    String style = Styles.asked(shelf, asked);
    List<Style> styles = new ArrayList<>(Styles.offered());
    if (styles.stream().noneMatch(each -> each.name().equals(style))) {
      styles.add(0, new Style(style, style));
    }
    List<Features.Line> features = Features.lines(shelf, asked);
    try {
      Optional<ListAnswer> answer =
          asked.isEmpty() ? Optional.empty() : Optional.of(ListAnswer.of(shelf, asked));
      return new Model(asked, features, style, styles, Optional.empty(), answer);
    } catch (RuntimeException e) {
      if (!(e instanceof ForTheUser)) {
        throw e;
      }
      Optional<String> problem = Optional.of(e.getMessage());
      return new Model(asked, features, style, styles, problem, Optional.empty());
    }
  }

  /** A style that is named in the box is the one chosen from then on. */
  private static Question asked(Context request) {
    Question asked = Question.of(request, PARTS);
    return asked.has("other") ? asked.with("style", asked.get("other")).without("other") : asked;
  }

  private void save(Context request) {
    Question asked = asked(request);
    SavedList saved = site.ask(shelf -> SavedList.of(shelf, asked, request.queryParam("as")));
    request.header("Content-Disposition", "attachment; filename=\"" + saved.name() + "\"");
    request.contentType(saved.type()).result(saved.text());
  }
}
