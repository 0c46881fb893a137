package merese.desk.look;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import merese.answer.Find;
import merese.answer.Found;
import merese.answer.Found.Mark;
import merese.answer.Found.Role;
import merese.answer.Found.Text;
import merese.desk.web.Frame.Tab;
import merese.desk.web.Page;
import merese.desk.web.Query;
import merese.desk.web.Site;
import merese.search.FindQueryException;

/** Words, wherever the library has them: quotations, claims, records, the vocabulary, own words. */
public final class FindPage implements Page {
  private static final int USUALLY = 20;
  private static final int MOST = 500;

  private final Site site;

  public FindPage(Site site) {
    this.site = site;
  }

  @Override
  public void addTo(RoutesConfig routes) {
    routes.get("/find", this::show);
  }

  /**
   * The page.
   *
   * @param words as typed; "" for nothing yet
   * @param limit how many hits are shown at most
   */
  public record Model(String words, int limit, Optional<Found> answer, Optional<String> problem) {
    /** The same question with more of what it finds; empty where all is shown. */
    public Optional<String> more() {
      boolean all =
          answer.isEmpty()
              || limit == MOST
              || answer.get().hits().size() >= answer.get().withAll() + answer.get().withSome()
                  && answer.get().pages().size() >= answer.get().allPages();
      int next = Math.min(MOST, 5 * limit);
      return all
          ? Optional.empty()
          : Optional.of("/find?words=" + Site.encoded(words) + "&limit=" + next);
    }
  }

  /** A stretch of a text, with the words that were looked for marked. */
  public record Stretch(String words, boolean marked) {}

  /** A text in stretches. */
  public static List<Stretch> stretches(Text text) {
    List<Stretch> stretches = new ArrayList<>();
    int at = 0;
    for (Mark mark : text.marks()) {
      stretches.add(new Stretch(text.words().substring(at, mark.start()), false));
      stretches.add(new Stretch(text.words().substring(mark.start(), mark.end()), true));
      at = mark.end();
    }
    stretches.add(new Stretch(text.words().substring(at), false));
    stretches.removeIf(each -> each.words().isEmpty());
    return stretches;
  }

  /** What a passage is, in words. */
  public static String lead(Role role) {
    return switch (role) {
      case QUOTATION -> "quoted";
      case CLAIM -> "claims";
      case MY_READING -> "my reading";
      case LABEL -> "label";
      case DEFINITION -> "definition";
      case TITLE -> "title";
      case AUTHOR -> "author";
      case IMPRINT -> "imprint";
      case MY_WORDS -> "my words";
    };
  }

  private void show(Context request) {
    String words = Query.text(request, "words").orElse("");
    int limit = limit(Query.text(request, "limit").orElse(""));
    if (words.isEmpty()) {
      page(request, new Model(words, limit, Optional.empty(), Optional.empty()));
      return;
    }
    try {
      Found found = site.ask(shelf -> Find.answer(shelf, words, limit));
      if (Site.wantsJson(request)) {
        site.json(request, found);
      } else {
        page(request, new Model(words, limit, Optional.of(found), Optional.empty()));
      }
    } catch (FindQueryException e) {
      Model model = new Model(words, limit, Optional.empty(), Optional.of(e.getMessage()));
      site.refuse(request, Tab.FIND, "Find words", "find.jte", model);
    }
  }

  private void page(Context request, Model model) {
    site.show(request, Tab.FIND, "Find words", "find.jte", model);
  }

  /** What is no number, or out of bounds, is as if nothing were said. */
  private static int limit(String typed) {
    try {
      int limit = typed.isEmpty() ? USUALLY : Integer.parseInt(typed);
      return limit < 1 || limit > MOST ? USUALLY : limit;
    } catch (NumberFormatException e) {
      return USUALLY;
    }
  }
}
