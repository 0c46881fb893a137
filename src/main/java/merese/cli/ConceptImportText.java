package merese.cli;

import java.util.ArrayList;
import java.util.List;
import merese.change.concepts.ConceptResult;
import merese.change.concepts.ConceptResult.Added;
import merese.change.concepts.ConceptResult.Candidate;
import merese.change.concepts.ConceptResult.Change;
import merese.change.concepts.ConceptResult.Kind;
import merese.change.concepts.ConceptResult.NewFacet;
import merese.change.concepts.ConceptResult.Question;
import merese.change.concepts.ConceptResult.There;
import merese.change.concepts.ConceptResult.Waiting;
import merese.exchange.Refused;

/** Lays out what an import of concepts does, or would do. */
final class ConceptImportText {
  /** Of each section, where not all is wanted. */
  private static final int SHOWN = 30;

  private static final int WIDEST_ID = 22;

  private final Page page;
  private final boolean all;
  private final boolean done;

  /**
   * @param all whether long sections are printed to their end
   * @param done whether this has been written
   */
  ConceptImportText(Page page, boolean all, boolean done) {
    this.page = page;
    this.all = all;
    this.done = done;
  }

  void print(ConceptResult result) {
    page.text(counts(result));
    added(result);
    there(
        done ? "There before, and added to: " : "There already, with something to add: ",
        result.changed());
    List<There> unchanged = result.unchanged();
    there(
        "There already, and the file says otherwise: ",
        unchanged.stream().filter(one -> !one.changes().isEmpty()).toList());
    if (all) {
      there(
          "There already, nothing to add: ",
          unchanged.stream().filter(one -> one.changes().isEmpty()).toList());
    }
    lines(done ? "Register of homonyms" : "Register of homonyms, would say", result.register());
    questions(result.questions());
    waiting(result.waiting());
    lines("Circles, not made", result.circles());
    refused(result.refused());
    remarks(result);
    page.blank();
  }

  private String counts(ConceptResult result) {
    List<String> counts = new ArrayList<>();
    count(counts, result.added().size(), done ? "added" : "new");
    count(counts, result.changed().size(), done ? "added to" : "with something to add");
    count(counts, result.unchanged().size(), "unchanged");
    count(counts, result.waiting().size(), "waiting");
    count(counts, result.refused().size(), "refused");
    String concepts = counts.isEmpty() ? "no concept" : String.join(", ", counts);
    int asked = result.questions().size();
    return result.file()
        + ": "
        + concepts
        + (asked > 0 ? "; " + Page.many(asked, "question") : "")
        + ".";
  }

  private static void count(List<String> counts, int count, String what) {
    if (count > 0) {
      counts.add(counts.isEmpty() ? Page.many(count, "concept") + " " + what : count + " " + what);
    }
  }

  private void added(ConceptResult result) {
    List<Added> items = result.added();
    if (items.isEmpty()) {
      return;
    }
    page.blank();
    page.heading((done ? "Added: " : "New: ") + Page.many(items.size(), "concept"));
    for (NewFacet facet : shown(result.facets())) {
      page.hanging("  ", "+ facet " + facet.id() + " (" + facet.why() + ")");
    }
    rest(result.facets());
    int wide = wide(items.stream().map(Added::id).toList());
    for (Added item : shown(items)) {
      Page.Columns columns = page.columns("  ", item.id(), wide);
      String below =
          item.broader().isEmpty() ? "" : ", under " + String.join(" and ", item.broader());
      columns.line(item.label() + below);
      columns.line("facet " + item.facet() + ", " + item.facetWhy());
    }
    rest(items);
  }

  private void there(String heading, List<There> items) {
    if (items.isEmpty()) {
      return;
    }
    page.blank();
    page.heading(heading + Page.many(items.size(), "concept"));
    int wide = wide(items.stream().map(There::id).toList());
    for (There item : shown(items)) {
      Page.Columns columns = page.columns("  ", item.id(), wide);
      columns.line(item.label() + ": " + item.why());
      for (Change change : item.changes()) {
        columns.line(change(change));
      }
    }
    rest(items);
  }

  private static String change(Change change) {
    String part = change.part() + ": ";
    return switch (change.outcome()) {
      case ADDED -> "+ " + part + change.theirs();
      case REPLACED -> "± " + part + "“" + change.ours() + "” → “" + change.theirs() + "”";
      case STAYS ->
          "≠ " + part + "“" + change.ours() + "” stays; the file has “" + change.theirs() + "”";
    };
  }

  private void questions(List<Question> questions) {
    if (questions.isEmpty()) {
      return;
    }
    page.blank();
    page.heading("Questions: " + questions.size());
    for (Question question : shown(questions)) {
      page.hanging("  ? ", question.words());
      int wide = wide(question.candidates().stream().map(Candidate::id).toList());
      for (Candidate candidate : question.candidates()) {
        page.columns("    ", candidate.id(), wide)
            .line(candidate.label() + ": " + candidate.definition());
      }
      List<String> answers = new ArrayList<>();
      question.answers().forEach(answer -> answers.add(answer(question, answer)));
      page.hanging("    ", String.join(" or ", answers));
    }
    rest(questions);
  }

  private static String answer(Question question, String answer) {
    if (question.kind() == Kind.WHICH_FACET) {
      return Wrap.together(answer + " NAME");
    }
    boolean quoted =
        answer.chars().anyMatch(c -> !Character.isLetterOrDigit(c) && c != '-' && c != '=');
    return Wrap.together("--choose " + (quoted ? "\"" + answer + "\"" : answer));
  }

  private void waiting(List<Waiting> waiting) {
    if (waiting.isEmpty()) {
      return;
    }
    page.blank();
    page.heading("Waiting for an answer: " + Page.many(waiting.size(), "concept"));
    for (Waiting one : shown(waiting)) {
      page.hanging("  ", one.label() + ", below “" + one.waitsFor() + "”");
    }
    rest(waiting);
  }

  private void refused(List<Refused> records) {
    if (records.isEmpty()) {
      return;
    }
    page.blank();
    page.heading("Refused: " + Page.many(records.size(), "concept"));
    for (Refused record : shown(records)) {
      String remedy = record.remedy().isEmpty() ? "" : "; " + record.remedy();
      page.hanging("  ", record.what() + remedy);
    }
    rest(records);
  }

  private void remarks(ConceptResult result) {
    List<String> remarks = new ArrayList<>(result.remarks());
    if (result.kept() > 0) {
      remarks.add(
          "what has no place in the vocabulary is kept for an export, of "
              + Page.many(result.kept(), "concept"));
    }
    lines("Remarks", remarks.stream().map(remark -> "⚠ " + remark).toList());
  }

  private void lines(String heading, List<String> lines) {
    if (lines.isEmpty()) {
      return;
    }
    page.blank();
    page.heading(heading);
    for (String line : shown(lines)) {
      page.hanging("  ", line);
    }
    rest(lines);
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
