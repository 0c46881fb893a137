package merese.desk.chart;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.util.Optional;
import merese.answer.witnesses.Witnesses;
import merese.answer.witnesses.WitnessesQuestion;
import merese.answer.witnesses.Witnessing;
import merese.desk.chart.Inquiry.Takes;
import merese.desk.web.Frame.Tab;
import merese.desk.web.Page;
import merese.desk.web.Site;

/** Who repeats whom, and how many sources are left that speak for themselves. */
public final class WitnessesPage implements Page {
  private static final String ADDRESS = "/witnesses";

  private final Site site;

  public WitnessesPage(Site site) {
    this.site = site;
  }

  @Override
  public void addTo(RoutesConfig routes) {
    routes.get(ADDRESS, this::show);
  }

  private void show(Context request) {
    Terms terms = Terms.of(request);
    WitnessesQuestion question = new WitnessesQuestion(terms.all(), Optional.empty());
    if (Site.wantsJson(request)) {
      Inquiry.mustAsk(terms);
      site.json(request, site.ask(shelf -> Witnessing.answer(shelf, question)));
      return;
    }
    Inquiry<Witnesses> inquiry =
        site.ask(
            shelf ->
                Inquiry.of(
                    shelf,
                    ADDRESS,
                    terms,
                    "",
                    Takes.CONCEPTS,
                    asked -> Witnessing.answer(asked, question)));
    inquiry.show(site, request, Tab.WITNESSES, "witnesses.jte", inquiry);
  }
}
