package merese.desk.list;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import merese.answer.Coverage.ConceptLine;
import merese.answer.pull.Pull;
import merese.answer.pull.Pull.Opening;
import merese.answer.pull.PullQuestion;
import merese.answer.pull.Pulls;
import merese.desk.list.Question.Part;
import merese.desk.web.Frame.Tab;
import merese.desk.web.Page;
import merese.desk.web.Site;
import merese.model.ForTheUser;
import merese.shelf.Shelf;

/** Which books and pieces to take from the shelf, and what to open each at. */
public final class PullPage implements Page {
  static final String PATH = "/pull";

  private final Site site;

  public PullPage(Site site) {
    this.site = site;
  }

  @Override
  public void addTo(RoutesConfig routes) {
    routes.get(PATH, this::show);
  }

  /**
   * The page.
   *
   * @param problem why there is no list
   * @param answer empty where nothing is asked yet, and with a problem
   */
  public record Model(
      Question asked,
      List<Features.Line> features,
      Optional<String> problem,
      Optional<Pull> answer) {}

  /** The ids of what is to be seen there; null where nothing is said of it. */
  public static String concepts(Opening opening) {
    return opening.concepts().isEmpty()
        ? null
        : String.join(" ", opening.concepts().stream().map(ConceptLine::id).toList());
  }

  private void show(Context request) {
    Question asked = Question.of(request, Set.of("script"));
    if (Site.wantsJson(request) && !asked.isEmpty()) {
      site.json(request, site.ask(shelf -> Pulls.answer(shelf, question(shelf, asked))));
      return;
    }
    Model model = site.ask(shelf -> model(shelf, asked));
    if (model.problem().isPresent()) {
      site.refuse(request, Tab.PULL, "Pull list", "pull.jte", model);
    } else {
      site.show(request, Tab.PULL, "Pull list", "pull.jte", model);
    }
  }

  private static Model model(Shelf shelf, Question asked) {
    List<Features.Line> features = Features.lines(shelf, asked);
    try {
      Optional<Pull> answer =
          asked.isEmpty()
              ? Optional.empty()
              : Optional.of(Pulls.answer(shelf, question(shelf, asked)));
      return new Model(asked, features, Optional.empty(), answer);
    } catch (RuntimeException e) {
      if (!(e instanceof ForTheUser)) {
        throw e;
      }
      return new Model(asked, features, Optional.of(e.getMessage()), Optional.empty());
    }
  }

  /** A script names its own features, so that those chosen beside it are not asked for. */
  private static PullQuestion question(Shelf shelf, Question asked) {
    return asked.has("script")
        ? new PullQuestion(List.of(), Optional.empty(), Features.script(shelf, asked))
        : new PullQuestion(
            asked.features().stream().map(Part::value).toList(),
            Optional.empty(),
            Optional.empty());
  }
}
