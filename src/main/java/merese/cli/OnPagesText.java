package merese.cli;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import merese.answer.Coverage.ConceptLine;
import merese.answer.OnPages;
import merese.answer.OnPages.Name;
import merese.model.Locator;

/** Lays out the words on pages that no note has yet: a source a line, with the pages. */
final class OnPagesText {
  private static final String INDENT = "    ";
  private static final int WIDEST_REFERENCE = 26;
  private static final int MOST_PAGES = 12;

  private final Page page;

  OnPagesText(Page page) {
    this.page = page;
  }

  /**
   * @param all how many sources there are
   */
  void print(List<OnPages> sources, int all) {
    if (sources.isEmpty()) {
      return;
    }
    page.heading(OnPages.TITLE);
    int wide = 0;
    for (OnPages source : sources) {
      wide = Math.max(wide, Wrap.columns(source.source().reference()));
    }
    for (OnPages source : sources) {
      Page.Columns columns =
          page.columns(INDENT, source.source().reference(), Math.min(wide, WIDEST_REFERENCE));
      for (Name name : source.names()) {
        columns.line(
            "“" + MarkedText.clean(name.words()) + "”" + remarks(name) + ": " + pages(name));
      }
    }
    if (sources.size() < all) {
      page.hanging(INDENT, "and " + (all - sources.size()) + " more");
    }
    page.text("Counted nowhere above; merese sweep shows each in its sentence.");
    page.blank();
  }

  /** What somebody has to know before they trust the words. */
  private static String remarks(Name name) {
    List<String> narrower = new ArrayList<>();
    if (name.narrower()) {
      for (ConceptLine concept : name.concepts()) {
        narrower.add(concept.label());
      }
    }
    return remarks(String.join(", ", narrower), name.mayMeanElse(), name.loose());
  }

  /**
   * @param narrower what the words name that is narrower; "" where they name what was asked for
   */
  static String remarks(String narrower, boolean mayMeanElse, boolean loose) {
    List<String> remarks = new ArrayList<>();
    if (!narrower.isEmpty()) {
      remarks.add(narrower);
    }
    if (mayMeanElse) {
      remarks.add("may mean something else");
    }
    if (loose) {
      remarks.add("perhaps misread");
    }
    return remarks.isEmpty() ? "" : " (" + String.join("; ", remarks) + ")";
  }

  /** Two pages that lie open on one page of the file are one place, and stand as one. */
  private static List<String> numbered(List<Locator> at) {
    List<Locator> sorted = new ArrayList<>(at);
    Collections.sort(sorted);
    List<String> pages = new ArrayList<>();
    List<Locator> single = new ArrayList<>();
    for (Locator each : sorted) {
      if (each.count() == 1) {
        single.add(each);
      } else {
        addTogether(single, pages);
        pages.add(Wrap.together(each.printed()));
      }
    }
    addTogether(single, pages);
    return pages;
  }

  /** Adds single pages, those of one kind under one label, and forgets them. */
  private static void addTogether(List<Locator> single, List<String> to) {
    for (String each : Locator.inPhysicalOrder(single)) {
      to.add(Wrap.together(each));
    }
    single.clear();
  }

  private static String pages(Name name) {
    List<Locator> at = name.at().subList(0, Math.min(MOST_PAGES, name.at().size()));
    List<String> pages = numbered(at);
    int left = Math.max(0, MOST_PAGES - at.size());
    List<String> unnumbered = name.unnumbered();
    for (String each : unnumbered.subList(0, Math.min(left, unnumbered.size()))) {
      pages.add(Wrap.together(each));
    }
    int more = name.at().size() + unnumbered.size() - MOST_PAGES;
    return String.join("; ", pages) + (more > 0 ? " and " + Page.many(more, "page") + " more" : "");
  }
}
