package merese.desk.shelf;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.util.List;
import merese.answer.holdings.Holdings;
import merese.answer.holdings.Holdings.Section;
import merese.answer.holdings.HoldingsQuestion;
import merese.answer.holdings.HoldingsQuestion.Order;
import merese.answer.holdings.Listing;
import merese.desk.web.FormException;
import merese.desk.web.Frame.Tab;
import merese.desk.web.Page;
import merese.desk.web.Query;
import merese.desk.web.Site;

/** All sources, in one of several orders. */
public final class ShelfPage implements Page {
  private final Site site;

  public ShelfPage(Site site) {
    this.site = site;
  }

  @Override
  public void addTo(RoutesConfig routes) {
    routes.get("/shelf", this::show);
  }

  /** The page. */
  public record Model(Holdings answer) {
    public List<Order> orders() {
      return List.of(Order.values());
    }

    /** The address of another page or order of what is asked. */
    public String address(Order by, int page) {
      return "/shelf?by="
          + by.code()
          + (answer.find().isEmpty() ? "" : "&find=" + Site.encoded(answer.find()))
          + (page == 1 ? "" : "&page=" + page);
    }

    /** The id of a heading, the same on each page that it is on. */
    public String anchor(Section section) {
      for (int i = 0; i < answer.divisions().size(); i++) {
        if (answer.divisions().get(i).label().equals(section.label())) {
          return "at-" + i;
        }
      }
      throw new IllegalStateException(section.label());
    }

    /** An order in the words of its link. */
    public String words(Order order) {
      return switch (order) {
        case AUTHOR -> "author";
        case YEAR -> "year";
        case KIND -> "kind of source";
        case MARK -> "shelf-mark";
      };
    }
  }

  private void show(Context request) {
    HoldingsQuestion question =
        new HoldingsQuestion(
            order(Query.text(request, "by").orElse(Order.AUTHOR.code())),
            Query.text(request, "find").orElse(""),
            number(Query.text(request, "page").orElse("1")));
    Holdings answer = site.ask(shelf -> Listing.answer(shelf, question));
    if (Site.wantsJson(request)) {
      site.json(request, answer);
      return;
    }
    site.show(request, Tab.SHELF, "Shelf", "shelf.jte", new Model(answer));
  }

  private static Order order(String code) {
    for (Order order : Order.values()) {
      if (order.code().equals(code)) {
        return order;
      }
    }
    throw new FormException(
        "the shelf has no order \"" + code + "\"; it has author, year, kind and mark");
  }

  private static int number(String typed) {
    try {
      return Integer.parseInt(typed);
    } catch (NumberFormatException e) {
      throw new FormException("\"" + typed + "\" is no number of a page");
    }
  }
}
