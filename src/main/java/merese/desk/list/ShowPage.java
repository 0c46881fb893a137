package merese.desk.list;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import merese.answer.CoverageQuestion.Narrowing;
import merese.answer.showing.Showing;
import merese.answer.showing.Showing.Called;
import merese.answer.showing.Showing.Seen;
import merese.answer.showing.Showing.Slide;
import merese.answer.showing.ShowingQuestion;
import merese.answer.showing.Showings;
import merese.desk.web.FormException;
import merese.desk.web.Frame.Tab;
import merese.desk.web.Page;
import merese.desk.web.Site;
import merese.model.ForTheUser;
import merese.shelf.Shelf;

/** One feature after another, large enough to be filmed or projected. */
public final class ShowPage implements Page {
  static final String PATH = "/show";

  private static final String AT = "at";
  private static final String CHOOSING = "choose";

  private final Site site;

  public ShowPage(Site site) {
    this.site = site;
  }

  @Override
  public void addTo(RoutesConfig routes) {
    routes.get(PATH, this::show);
  }

  /**
   * The page where it is chosen what is shown.
   *
   * @param problem why it cannot be shown
   */
  public record Choice(
      Question asked,
      List<Features.Line> features,
      List<String> remarks,
      Optional<String> problem) {}

  /**
   * What is on the screen.
   *
   * @param at from 1
   * @param present the pictures that are in the library's folder
   * @param missing pictures that the library names and that are kept elsewhere
   */
  public record Model(
      Question asked,
      Slide slide,
      int at,
      int of,
      List<Seen> present,
      List<Seen> missing,
      String caution) {
    private static final int MOST_WORDS = 8;
    private static final int MOST_PICTURES = 4;

    /** As many words as can be read from across a room, those of most books. */
    public List<Called> names() {
      return slide.names().subList(0, Math.min(MOST_WORDS, slide.names().size()));
    }

    public List<Called> moreNames() {
      return slide.names().subList(names().size(), slide.names().size());
    }

    /** The further words with who prints them, in one line. */
    public String moreWords() {
      List<String> words = new ArrayList<>();
      for (Called each : moreNames()) {
        words.add("“" + each.word() + "” " + String.join("; ", each.references()));
      }
      return String.join("; ", words);
    }

    /** As many pictures as are large enough side by side; one of the user's own is among them. */
    public List<Seen> pictured() {
      List<Seen> shown =
          new ArrayList<>(present.subList(0, Math.min(MOST_PICTURES, present.size())));
      if (shown.size() < present.size() && shown.stream().noneMatch(Seen::own)) {
        present.stream().filter(Seen::own).findFirst().ifPresent(own -> shown.set(3, own));
      }
      return shown;
    }

    public List<Seen> morePictures() {
      List<Seen> more = new ArrayList<>(present);
      pictured().forEach(more::remove);
      return more;
    }

    /** The further pictures in one line. */
    public String moreSeen() {
      List<String> seen = new ArrayList<>();
      for (Seen each : morePictures()) {
        seen.add(
            each.reference()
                + ", "
                + each.at()
                + each.words().map(words -> ": " + words).orElse("")
                + " ("
                + each.file()
                + ")");
      }
      return String.join("; ", seen);
    }

    public String address(int other) {
      return asked.with(AT, Integer.toString(other)).address(PATH);
    }

    /** Where it is chosen what is shown. */
    public String leave() {
      return asked.without(AT).with(CHOOSING, "on").address(PATH);
    }
  }

  private void show(Context request) {
    Question asked = Question.of(request, Set.of("script", AT, CHOOSING));
    Question lasting = asked.without(CHOOSING);
    if (Site.wantsJson(request) && !asked.isEmpty()) {
      site.json(request, site.ask(shelf -> showing(shelf, asked)));
      return;
    }
    if (asked.isEmpty()) {
      choose(request, lasting, List.of(), Optional.empty());
      return;
    }
    Showing showing;
    try {
      showing = site.ask(shelf -> showing(shelf, asked));
    } catch (RuntimeException e) {
      if (!(e instanceof ForTheUser)) {
        throw e;
      }
      choose(request, lasting, List.of(), Optional.of(e.getMessage()));
      return;
    }
    if (asked.has(CHOOSING)) {
      choose(request, lasting, showing.remarks(), Optional.empty());
    } else if (showing.slides().isEmpty()) {
      List<String> remarks = new ArrayList<>(showing.remarks());
      String problem =
          remarks.isEmpty() ? "the script names no source, object or term" : remarks.remove(0);
      choose(request, lasting, remarks, Optional.of(problem));
    } else {
      show(request, lasting, showing);
    }
  }

  private void choose(
      Context request, Question asked, List<String> remarks, Optional<String> problem) {
    List<Features.Line> features = site.ask(shelf -> Features.lines(shelf, asked));
    Choice choice = new Choice(asked, features, remarks, problem);
    if (problem.isPresent()) {
      site.refuse(request, Tab.SHOW, "Show", "choose-show.jte", choice);
    } else {
      site.show(request, Tab.SHOW, "Show", "choose-show.jte", choice);
    }
  }

  private void show(Context request, Question asked, Showing showing) {
    int at = Math.min(at(asked), showing.slides().size());
    Slide slide = showing.slides().get(at - 1);
    List<Seen> present = new ArrayList<>();
    List<Seen> missing = new ArrayList<>();
    for (Seen each : slide.pictures()) {
      (site.hasPicture(each.file()) ? present : missing).add(each);
    }
    Model model =
        new Model(asked, slide, at, showing.slides().size(), present, missing, showing.caution());
    site.show(request, Tab.SHOW, slide.heading(), "show.jte", model);
  }

  /** Where a picture is loaded from. */
  public static String picture(Seen seen) {
    List<String> names = new ArrayList<>();
    for (String name : seen.file().split("/", -1)) {
      names.add(Site.encoded(name).replace("+", "%20"));
    }
    return "/pictures/" + String.join("/", names);
  }

  private static int at(Question asked) {
    try {
      return asked.has(AT) ? Math.max(1, Integer.parseInt(asked.get(AT))) : 1;
    } catch (NumberFormatException e) {
      throw new FormException("\"" + asked.get(AT) + "\" is no number of what is shown");
    }
  }

  /** A script names its own features, so that those chosen beside it are not asked for. */
  private static Showing showing(Shelf shelf, Question asked) {
    ShowingQuestion question =
        asked.has("script")
            ? new ShowingQuestion(List.of(), Features.script(shelf, asked))
            : new ShowingQuestion(
                Features.questions(shelf, asked, Narrowing.NONE), Optional.empty());
    return Showings.answer(shelf, question);
  }
}
