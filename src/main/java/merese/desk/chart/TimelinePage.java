package merese.desk.chart;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import merese.answer.CoverageQuestion.Years;
import merese.answer.claims.ClaimTitles;
import merese.answer.claims.Claims;
import merese.answer.claims.ClaimsAnswer;
import merese.answer.claims.ClaimsQuestion;
import merese.desk.chart.Inquiry.Takes;
import merese.desk.web.FormException;
import merese.desk.web.Frame.Tab;
import merese.desk.web.Page;
import merese.desk.web.Query;
import merese.desk.web.Site;

/** Who claims what of a feature, the dates as a drawing. */
public final class TimelinePage implements Page {
  private static final String ADDRESS = "/timeline";

  private final Site site;

  public TimelinePage(Site site) {
    this.site = site;
  }

  @Override
  public void addTo(RoutesConfig routes) {
    routes.get(ADDRESS, this::show);
  }

  /**
   * The page.
   *
   * @param year as typed
   * @param place as typed
   */
  public record Model(Inquiry<View> inquiry, String year, String place) {}

  /** The answer, with what its question makes of the titles over its groups. */
  public record View(ClaimsAnswer answer, ClaimTitles titles) {}

  private void show(Context request) {
    Terms terms = Terms.of(request);
    String year = Query.text(request, "year").orElse("");
    String place = Query.text(request, "place").orElse("");
    if (Site.wantsJson(request)) {
      Inquiry.mustAsk(terms);
      ClaimsQuestion question = question(terms, year, place);
      site.json(request, site.ask(shelf -> Claims.answer(shelf, question)));
      return;
    }
    Inquiry<View> inquiry =
        site.ask(
            shelf ->
                Inquiry.of(
                    shelf,
                    ADDRESS,
                    terms,
                    part("year", year) + part("place", place),
                    Takes.CONCEPTS,
                    asked -> {
                      ClaimsQuestion question = question(terms, year, place);
                      return new View(Claims.answer(asked, question), new ClaimTitles(question));
                    }));
    inquiry.show(site, request, Tab.TIMELINE, "timeline.jte", new Model(inquiry, year, place));
  }

  private static String part(String name, String value) {
    return value.isEmpty() ? "" : "&" + name + "=" + Site.encoded(value);
  }

  private static ClaimsQuestion question(Terms terms, String year, String place) {
    return new ClaimsQuestion(
        terms.all(),
        Optional.empty(),
        Set.of(),
        years(year),
        place.isEmpty() ? Optional.empty() : Optional.of(place));
  }

  /** One year, or two with two dots between, of which one may be left out. */
  private static Optional<Years> years(String typed) {
    if (typed.isEmpty()) {
      return Optional.empty();
    }
    int dots = typed.indexOf("..");
    if (dots < 0) {
      OptionalInt only = year(typed, typed);
      return Optional.of(new Years(only, only));
    }
    String start = typed.substring(0, dots).strip();
    String end = typed.substring(dots + 2).strip();
    OptionalInt from = start.isEmpty() && !end.isEmpty() ? OptionalInt.empty() : year(start, typed);
    OptionalInt to = end.isEmpty() ? OptionalInt.empty() : year(end, typed);
    if (from.isPresent() && to.isPresent() && from.getAsInt() > to.getAsInt()) {
      throw new FormException("\"" + typed + "\" runs backwards; write the earlier year first");
    }
    return Optional.of(new Years(from, to));
  }

  private static OptionalInt year(String part, String whole) {
    try {
      return OptionalInt.of(Integer.parseInt(part));
    } catch (NumberFormatException e) {
      throw new FormException(
          "\"" + whole + "\" is no year or span; write 1795, 1790..1800, ..1800 or 1790..");
    }
  }
}
