package merese.desk.chart;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.util.Optional;
import merese.answer.Coverage.Heading;
import merese.answer.Coverage.SourceLine;
import merese.answer.concordance.Concordance;
import merese.answer.concordance.ConcordanceQuestion;
import merese.answer.concordance.Concording;
import merese.answer.concordance.Standings;
import merese.answer.concordance.Standings.Line;
import merese.answer.concordance.Standings.Standing;
import merese.desk.chart.Inquiry.Takes;
import merese.desk.web.Frame.Tab;
import merese.desk.web.NotThereException;
import merese.desk.web.Page;
import merese.desk.web.Query;
import merese.desk.web.Site;
import merese.shelf.Shelf;

/** What each source calls each of some concepts, sources by concepts. */
public final class ConcordancePage implements Page {
  private static final String ADDRESS = "/concordance";

  private final Site site;

  public ConcordancePage(Site site) {
    this.site = site;
  }

  @Override
  public void addTo(RoutesConfig routes) {
    routes.get(ADDRESS, this::show);
    routes.get(ADDRESS + "/cell", this::cell);
  }

  /** The answer, and where the sources stand that it has nothing of. */
  public record View(Concordance answer, Standings standings) {}

  /** What stands behind one cell. */
  public record CellModel(Terms terms, SourceLine source, Heading concept, Standing standing) {}

  private void show(Context request) {
    Terms terms = Terms.of(request);
    if (Site.wantsJson(request)) {
      Inquiry.mustAsk(terms);
      site.json(request, site.ask(shelf -> Concording.answer(shelf, question(terms))));
      return;
    }
    Inquiry<View> inquiry =
        site.ask(
            shelf ->
                Inquiry.of(shelf, ADDRESS, terms, "", Takes.FACETS, asked -> view(asked, terms)));
    inquiry.show(site, request, Tab.CONCORDANCE, "concordance.jte", inquiry);
  }

  private static ConcordanceQuestion question(Terms terms) {
    return new ConcordanceQuestion(terms.all(), Optional.empty());
  }

  private static View view(Shelf shelf, Terms terms) {
    Concordance answer = Concording.answer(shelf, question(terms));
    return new View(answer, Standings.of(shelf, answer));
  }

  /** What one cell holds: a page of its own, or, for a script, its part alone. */
  private void cell(Context request) {
    Terms terms = Terms.of(request);
    Inquiry.mustAsk(terms);
    String source = Query.text(request, "source").orElse("");
    String column = Query.text(request, "column").orElse("");
    CellModel model = site.ask(shelf -> cell(view(shelf, terms), terms, source, column));
    if (Query.flag(request, "part")) {
      site.part(request, "concordancenotes.jte", model);
    } else {
      String title = model.source().reference() + ": " + model.concept().label();
      site.show(request, Tab.CONCORDANCE, title, "concordancecell.jte", model);
    }
  }

  private static CellModel cell(View view, Terms terms, String source, String column) {
    for (Line line : view.standings().lines()) {
      if (line.source().key().equals(source)) {
        for (int i = 0; i < line.standings().size(); i++) {
          Heading concept = view.standings().concepts().get(i);
          if (concept.id().equals(column)) {
            return new CellModel(terms, line.source(), concept, line.standings().get(i));
          }
        }
      }
    }
    throw new NotThereException(
        "the concordance of \""
            + terms
            + "\" has no cell for \""
            + source
            + "\" and \""
            + column
            + "\"; begin at the concordance itself");
  }
}
