package merese.cli;

import java.util.List;
import merese.answer.gaps.GapList;
import merese.answer.gaps.Gaps;
import merese.answer.gaps.GapsQuestion;
import merese.answer.json.AnswerJson;
import merese.shelf.Shelf;

/** What is not known, and what nobody has looked for. */
final class GapsCommand extends LibraryCommand {
  private final Given<List<String>> words =
      optionalWords("TERM", "A concept's id, a word for it or a facet; none for all of them.");

  private final Given<Boolean> owned =
      flag("Only my own copies: what is left to look for in each, in shelf order.", "--owned");
  private final Given<Boolean> json = flag("Print the whole answer as JSON.", "--json");

  GapsCommand(Context context) {
    super(
        context,
        "Say what no source names or pictures, where that was checked and where not.",
        "merese gaps \"spiral neck trail\"",
        "merese gaps ring --owned");
  }

  @Override
  int run() {
    GapsQuestion question = new GapsQuestion(words.value().orElse(List.of()), owned.isSet());
    try (Shelf shelf = openShelf()) {
      GapList answer = Gaps.answer(shelf, question);
      if (json.isSet()) {
        AnswerJson.print(context().out(), answer);
      } else if (owned.isSet()) {
        new TasksText(context()).print(answer);
      } else {
        new GapsText(context()).print(answer);
      }
      boolean found = owned.isSet() ? !answer.tasks().isEmpty() : !answer.gaps().isEmpty();
      return found ? ExitCode.DONE : ExitCode.FAILED;
    }
  }
}
