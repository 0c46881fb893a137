package merese.desk.look;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import merese.answer.Coverage;
import merese.answer.CoverageQuestion;
import merese.answer.CoverageQuestion.Narrowing;
import merese.answer.CoverageQuestion.Showing;
import merese.answer.CoverageQuestion.Years;
import merese.answer.Covers;
import merese.answer.UnknownConceptException;
import merese.desk.web.FormException;
import merese.desk.web.Frame.Tab;
import merese.desk.web.Page;
import merese.desk.web.Query;
import merese.desk.web.Site;
import merese.model.Homonym;
import merese.model.OwnObject;
import merese.model.SourceKind;
import merese.shelf.Beginnings.Beginning;
import merese.shelf.Shelf;

/** One box, and which sources cover or picture what is typed into it. */
public final class LookUpPage implements Page {

  private static final int MOST_SUGGESTED = 7;
  private static final int MOST_TO_BEGIN_WITH = 8;
  private static final String TITLE = "Look up";
  private static final String TEMPLATE = "lookup.jte";

  private final Site site;

  public LookUpPage(Site site) {
    this.site = site;
  }

  @Override
  public void addTo(RoutesConfig routes) {
    routes.get("/", this::show);
    routes.get("/suggest", this::suggest);
  }

  /**
   * What is asked, as the form shows it again.
   *
   * @param term as typed; "" for nothing yet
   * @param concept the id of the one meaning that is asked for; "" for any
   * @param kind the code of the one kind that is asked for; "" for all
   * @param all whether every source of a large group is shown
   */
  public record Asked(
      String term,
      String concept,
      boolean pictured,
      boolean owned,
      String kind,
      String from,
      String to,
      String place,
      boolean all) {
    /** How many sources of a group are shown. */
    public Showing showing() {
      return all ? Showing.ALL : Showing.USUAL;
    }

    /** The address of the same question with all that each group holds. */
    public String addressOfAll() {
      return addressFor(concept) + "&all=on";
    }

    /** Whether anything beside the term is set. */
    public boolean isNarrowed() {
      return pictured || owned || !(kind + from + to + place).isEmpty();
    }

    /** The address of the same question for one meaning. */
    public String addressFor(String id) {
      return "/?term="
          + Site.encoded(term)
          + "&concept="
          + Site.encoded(id)
          + (pictured ? "&pictured=on" : "")
          + (owned ? "&owned=on" : "")
          + part("kind", kind)
          + part("from", from)
          + part("to", to)
          + part("place", place);
    }

    private static String part(String name, String value) {
      return value.isEmpty() ? "" : "&" + name + "=" + Site.encoded(value);
    }
  }

  /**
   * The page.
   *
   * @param answer empty while nothing is asked
   * @param photographs those of the user's own pieces, by "reference, id"
   * @param words some to begin with, where nothing is asked
   * @param problem what is wrong with the question
   */
  public record Model(
      Asked asked,
      Optional<Coverage> answer,
      Map<String, String> photographs,
      List<String> words,
      List<SourceKind> kinds,
      Optional<String> problem) {
    static Model withoutAnswer(Asked asked, List<String> words, Optional<String> problem) {
      return new Model(asked, Optional.empty(), Map.of(), words, LookUpPage.kinds(), problem);
    }
  }

  private void show(Context request) {
    Asked asked = asked(request);
    boolean asks = !asked.term().isEmpty() || !asked.concept().isEmpty();
    if (asks && Site.wantsJson(request)) {
      CoverageQuestion question = question(asked);
      site.json(request, site.ask(shelf -> Covers.answer(shelf, question)));
      return;
    }
    try {
      if (asks) {
        CoverageQuestion question = question(asked).with(asked.showing());
        Model model = site.ask(shelf -> model(shelf, asked, question));
        String title = asked.term().isEmpty() ? asked.concept() : asked.term();
        site.show(request, Tab.LOOK_UP, title, TEMPLATE, model);
      } else {
        narrowing(asked);
        List<String> words = site.ask(LookUpPage::wordsToBeginWith);
        Model model = Model.withoutAnswer(asked, words, Optional.empty());
        site.show(request, Tab.LOOK_UP, TITLE, TEMPLATE, model);
      }
    } catch (FormException | UnknownConceptException e) {
      Model model = Model.withoutAnswer(asked, List.of(), Optional.of(e.getMessage()));
      site.refuse(request, Tab.LOOK_UP, TITLE, TEMPLATE, model);
    }
  }

  private Model model(Shelf shelf, Asked asked, CoverageQuestion question) {
    Coverage answer = Covers.answer(shelf, question);
    Map<String, String> photographs = new LinkedHashMap<>();
    for (OwnObject object : shelf.objects()) {
      for (OwnObject.Photograph photograph : object.photographs()) {
        if (site.hasPicture(photograph.file())) {
          photographs.put(object.ref() + ", " + photograph.id(), photograph.file());
        }
      }
    }
    return new Model(asked, Optional.of(answer), photographs, List.of(), kinds(), Optional.empty());
  }

  private static List<SourceKind> kinds() {
    return List.of(SourceKind.values());
  }

  /** The words that the user has an opinion on, since those are what they work on. */
  private static List<String> wordsToBeginWith(Shelf shelf) {
    Set<String> words = new LinkedHashSet<>(Noted.labels(shelf));
    shelf.thesaurus().register().stream()
        .map(Homonym::word)
        .filter(word -> Noted.isPrinted(shelf, word))
        .forEach(words::add);
    words.addAll(Noted.labels(shelf, MOST_TO_BEGIN_WITH));
    List<String> first = new ArrayList<>(words);
    return first.subList(0, Math.min(first.size(), MOST_TO_BEGIN_WITH));
  }

  private static Asked asked(Context request) {
    return new Asked(
        Query.text(request, "term").orElse(""),
        Query.text(request, "concept").orElse(""),
        Query.flag(request, "pictured"),
        Query.flag(request, "owned"),
        Query.text(request, "kind").orElse(""),
        Query.text(request, "from").orElse(""),
        Query.text(request, "to").orElse(""),
        Query.text(request, "place").orElse(""),
        Query.flag(request, "all"));
  }

  private static CoverageQuestion question(Asked asked) {
    return new CoverageQuestion(
        given(asked.term()),
        given(asked.concept()),
        Optional.empty(),
        narrowing(asked),
        Showing.ALL);
  }

  /**
   * @throws FormException where a field says nothing that can be asked for
   */
  private static Narrowing narrowing(Asked asked) {
    OptionalInt from = year(asked.from());
    OptionalInt to = year(asked.to());
    if (from.isPresent() && to.isPresent() && from.getAsInt() > to.getAsInt()) {
      throw new FormException("the years run backwards: " + asked.from() + " to " + asked.to());
    }
    Optional<Years> years =
        from.isEmpty() && to.isEmpty() ? Optional.empty() : Optional.of(new Years(from, to));
    return new Narrowing(
        asked.pictured(), asked.owned(), kinds(asked.kind()), years, given(asked.place()));
  }

  private static Optional<String> given(String text) {
    return text.isEmpty() ? Optional.empty() : Optional.of(text);
  }

  private static Set<SourceKind> kinds(String code) {
    for (SourceKind kind : SourceKind.values()) {
      if (kind.code().equals(code)) {
        return Set.of(kind);
      }
    }
    if (!code.isEmpty()) {
      throw new FormException("there is no kind of source \"" + code + "\"");
    }
    return Set.of();
  }

  private static OptionalInt year(String typed) {
    try {
      return typed.isEmpty() ? OptionalInt.empty() : OptionalInt.of(Integer.parseInt(typed));
    } catch (NumberFormatException e) {
      throw new FormException("\"" + typed + "\" is no year; write it as 1926");
    }
  }

  /** What goes on from what is typed; its field is named by "of". */
  private void suggest(Context request) {
    String typed = Query.text(request, "term").or(() -> Query.text(request, "source")).orElse("");
    boolean sourcesOnly = Query.text(request, "source").isPresent();
    List<Beginning> found =
        site.glance(
            shelf -> {
              List<Beginning> all = new ArrayList<>();
              if (!sourcesOnly) {
                all.addAll(shelf.beginnings().terms(typed, MOST_SUGGESTED));
              }
              all.addAll(shelf.beginnings().sources(typed, sourcesOnly ? MOST_SUGGESTED : 3));
              return all;
            });
    site.part(request, "suggestions.jte", found);
  }
}
