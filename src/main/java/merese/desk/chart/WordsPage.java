package merese.desk.chart;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import merese.answer.concordance.WordUses;
import merese.answer.concordance.WordUsing;
import merese.desk.chart.Inquiry.Takes;
import merese.desk.web.Frame.Tab;
import merese.desk.web.Page;
import merese.desk.web.Site;

/** Which word means what for whom. */
public final class WordsPage implements Page {
  private static final String ADDRESS = "/words";

  private final Site site;

  public WordsPage(Site site) {
    this.site = site;
  }

  @Override
  public void addTo(RoutesConfig routes) {
    routes.get(ADDRESS, this::show);
  }

  private void show(Context request) {
    Terms terms = Terms.of(request);
    if (Site.wantsJson(request)) {
      Inquiry.mustAsk(terms);
      site.json(request, site.ask(shelf -> WordUsing.answer(shelf, terms.all())));
      return;
    }
    Inquiry<WordUses> inquiry =
        site.ask(
            shelf ->
                Inquiry.of(
                    shelf,
                    ADDRESS,
                    terms,
                    "",
                    Takes.FACETS_AND_WORDS,
                    asked -> WordUsing.answer(asked, terms.all())));
    inquiry.show(site, request, Tab.WORDS, "words.jte", inquiry);
  }
}
