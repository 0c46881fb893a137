package merese.desk.chart;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.util.Optional;
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

  private static Optional<Years> years(String typed) {
    try {
      return typed.isEmpty() ? Optional.empty() : Optional.of(Years.read(typed));
    } catch (IllegalArgumentException e) {
      throw new FormException(e.getMessage());
    }
  }
}
