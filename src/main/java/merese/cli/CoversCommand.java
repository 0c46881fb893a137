package merese.cli;

import java.util.List;
import merese.answer.Coverage;
import merese.answer.CoverageQuestion;
import merese.answer.CoverageQuestion.Showing;
import merese.answer.Covers;
import merese.answer.json.AnswerJson;
import merese.shelf.Shelf;

/** Which sources cover or picture a feature. */
final class CoversCommand extends LibraryCommand {
  private final Given<List<String>> words =
      optionalWords("TERM", "What to look for, in any book's words.");

  private final CoverageOptions options = new CoverageOptions(this);
  private final Given<Boolean> why = flag("Say why you prefer your own term.", "--why");
  private final Given<Integer> limit =
      option(
          Integer.class,
          "N",
          "Print at most N sources of each group. Without this up to 100 that cover it are"
              + " printed, else the first 20; of another group up to 40, else the first 5.",
          "--limit");
  private final Given<Boolean> json = flag("Print the whole answer as JSON.", "--json");

  CoversCommand(Context context) {
    super(
        context,
        "Say which sources cover or picture a feature, where, and by what name.",
        "merese covers \"bladed ring\" --pictured",
        "merese covers \"triple ring\" --concept ring-annulated",
        "merese covers bladed --facet ring --year 1900..1960");
  }

  @Override
  int run() {
    Showing showing = Showing.USUAL;
    if (limit.value().isPresent()) {
      int most = limit.value().get();
      if (most < 1) {
        throw CommandException.wrongUse("--limit takes a number from 1 up, not " + most);
      }
      showing = Showing.first(most);
    }
    CoverageQuestion question = options.question(words.value().orElse(List.of()));
    try (Shelf shelf = openShelf()) {
      Coverage answer;
      if (json.isSet()) {
        answer = Covers.answer(shelf, question);
        AnswerJson.print(context().out(), answer);
      } else {
        answer = Covers.answer(shelf, question.with(showing));
        new CoverageText(context(), question.narrowing(), why.isSet(), showing).print(answer);
      }
      boolean known = !answer.sections().isEmpty() || !answer.meaningNotStated().isEmpty();
      return known ? ExitCode.DONE : ExitCode.FAILED;
    }
  }
}
