package merese.cli;

import java.util.ArrayList;
import java.util.List;
import merese.change.concepts.AatResult;
import merese.change.concepts.AatResult.Candidate;
import merese.change.concepts.AatResult.Link;
import merese.change.concepts.AatResult.Question;
import merese.change.concepts.AatResult.There;

/** Lays out the links to the Art &amp; Architecture Thesaurus that are made, or would be. */
final class AatLinksText {
  private static final int SHOWN = 30;
  private static final int WIDEST_ID = 22;

  /** Terms of a concept there; it may have dozens. */
  private static final int TERMS = 6;

  private final Page page;
  private final boolean all;
  private final boolean done;

  /**
   * @param all whether long sections are printed to their end
   * @param done whether this has been written
   */
  AatLinksText(Page page, boolean all, boolean done) {
    this.page = page;
    this.all = all;
    this.done = done;
  }

  void print(AatResult result) {
    page.text(counts(result));
    links(result.links());
    questions(result.questions());
    if (all) {
      there(result.there());
    }
    page.blank();
    page.text(result.licence());
    page.blank();
  }

  private String counts(AatResult result) {
    List<String> counts = new ArrayList<>();
    counts.add(
        Page.many(result.links().size(), done ? "link" : "new link") + (done ? " made" : ""));
    counts.add(result.there().size() + " there already");
    counts.add(Page.many(result.questions().size(), "question"));
    counts.add(Page.many(result.without(), "concept") + " without a word in common");
    return String.join(", ", counts) + ".";
  }

  private void links(List<Link> links) {
    if (links.isEmpty()) {
      return;
    }
    page.blank();
    page.heading(done ? "Linked" : "New links");
    int wide = wide(links.stream().map(Link::id).toList());
    for (Link link : shown(links)) {
      Page.Columns columns = page.columns("  ", link.id(), wide);
      columns.line(link.label() + ": " + link.definition());
      columns.line(link.kind().code().replace('-', ' ') + " " + named(link.to()));
      columns.line("(" + link.why() + ")");
    }
    rest(links);
  }

  private void questions(List<Question> questions) {
    if (questions.isEmpty()) {
      return;
    }
    page.blank();
    page.heading("Questions: " + questions.size());
    for (Question question : shown(questions)) {
      page.hanging("  ? ", question.label() + ": " + question.definition());
      page.hanging("    ", "(" + question.words() + ")");
      for (Candidate candidate : question.candidates()) {
        page.hanging("    ", named(candidate));
      }
      List<String> answers = new ArrayList<>();
      question.answers().forEach(answer -> answers.add(Wrap.together("--choose " + answer)));
      page.hanging("    ", String.join(" or ", answers));
    }
    rest(questions);
  }

  private void there(List<There> links) {
    if (links.isEmpty()) {
      return;
    }
    page.blank();
    page.heading("There already");
    int wide = wide(links.stream().map(There::id).toList());
    for (There link : links) {
      page.columns("  ", link.id(), wide)
          .line(link.label() + ": " + link.kind().code().replace('-', ' ') + " " + link.uri());
    }
  }

  private static String named(Candidate concept) {
    List<String> terms = concept.terms();
    boolean more = terms.size() > TERMS;
    String others = more ? " and " + (terms.size() - TERMS) + " more" : "";
    String facet = concept.facet().isEmpty() ? "" : " (" + concept.facet() + ")";
    return concept.aatId()
        + facet
        + ": "
        + String.join(", ", more ? terms.subList(0, TERMS) : terms)
        + others;
  }

  private <T> List<T> shown(List<T> items) {
    return all || items.size() <= SHOWN ? items : items.subList(0, SHOWN);
  }

  private void rest(List<?> items) {
    int more = items.size() - shown(items).size();
    if (more > 0) {
      page.text("  … and " + more + " more; --all prints them");
    }
  }

  private static int wide(List<String> ids) {
    int wide = 0;
    for (String id : ids) {
      wide = Math.max(wide, Wrap.columns(id));
    }
    return Math.min(wide, WIDEST_ID);
  }
}
