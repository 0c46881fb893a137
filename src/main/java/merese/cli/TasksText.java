package merese.cli;

import java.util.ArrayList;
import java.util.List;
import merese.answer.Coverage.ConceptLine;
import merese.answer.gaps.GapList;
import merese.answer.gaps.GapList.Task;

/** Lays out what is left to look for in the user's own copies, in shelf order. */
final class TasksText {
  private static final String INDENT = "    ";
  private static final int MOST_NAMED = 12;

  private final Page page;

  TasksText(Context context) {
    this.page = new Page(context.out(), context.screen());
  }

  void print(GapList answer) {
    if (answer.tasks().isEmpty()) {
      page.text("Nothing is left to look for in my own copies.");
      return;
    }
    page.text(
        "What is left to look for in "
            + (answer.tasks().size() == 1 ? "1 copy" : answer.tasks().size() + " copies")
            + " of mine, in shelf order ("
            + Page.many(answer.gaps().size(), "concept")
            + " asked for).");
    page.blank();
    for (Task task : answer.tasks()) {
      page.heading(
          (task.shelfMark().isPresent() ? task.shelfMark().get() : "no shelf-mark")
              + "  "
              + task.source().reference()
              + Page.given("  [", task.away(), "]"));
      concepts("not checked", task.notChecked(), answer.gaps().size());
      concepts("index only", task.indexOnly(), answer.gaps().size());
      concepts("word search only", task.wordSearchOnly(), answer.gaps().size());
      concepts("found, not yet noted", task.toNote(), answer.gaps().size());
    }
  }

  private void concepts(String what, List<ConceptLine> concepts, int asked) {
    if (concepts.isEmpty()) {
      return;
    }
    if (concepts.size() == asked && asked > MOST_NAMED) {
      page.hanging(INDENT, what + ": all " + asked);
      return;
    }
    List<String> names = new ArrayList<>();
    for (ConceptLine concept : concepts) {
      names.add(Wrap.together(concept.label()));
    }
    int more = names.size() - MOST_NAMED;
    if (more > 1) {
      names = new ArrayList<>(names.subList(0, MOST_NAMED));
      names.add("and " + more + " more");
    }
    page.hanging(INDENT, what + ": " + String.join("; ", names));
  }
}
